"""Coaches described by answers: as usual for their shape, or drawn at random."""

from itertools import combinations

import numpy as np

from wintertight.coach.card import Card
from wintertight.coach.intake.answers import Answer, Answers
from wintertight.coach.intake.draft import ROOM_FT
from wintertight.coach.intake.questions import QUESTIONS, Question
from wintertight.units import FOOT_M

LOW = "-10 degF"
USUAL_CHANCE = 0.6
"""How often a drawn coach has what is usual for its shape [1]; invented."""

LEFT_OPEN = 0.1
"""How often a question is left open [1]; invented."""


def looked_at(shape: str) -> Answers:
    """Give the answers of a coach of one shape that has what is usual, and nothing more."""
    return completed(Answers().with_answer("shape", shape).with_answer("design low", LOW))


def completed(answers: Answers) -> Answers:
    """Give answers with every open question answered: as usual, and nothing more."""
    for question in QUESTIONS.values():
        if not answers.known(question.key) and question.asked_if(answers):
            answers = answers.with_answer(question.key, _usual(question, answers))
    return answers


def drawn(seed: int, *, left_open: float = LEFT_OPEN) -> Answers:
    """Draw a coach that may exist: often with what is usual, sometimes with anything else."""
    rng = np.random.default_rng(seed)
    answers = Answers()
    for question in QUESTIONS.values():
        if question.asked_if(answers) and rng.random() >= left_open:
            answers = answers.with_answer(question.key, _drawn(question, answers, rng))
    return answers


def crowded(card: Card) -> str:
    """Name two fittings that stand in one place, or a line shorter than its span; "" if none."""
    placed = {f.id: f.at for f in card.fittings if f.at is not None}
    for (one, here), (other, there) in combinations(placed.items(), 2):
        if here.distance_m(there) <= 0.9 * ROOM_FT * FOOT_M:
            return f"{one} and {other} stand in one place"
    for line in card.lines:
        ends = placed[line.start.fitting], placed[line.end.fitting]
        if line.length.value < ends[0].distance_m(ends[1]):
            return f"{line.id} is too short"
    return ""


def _usual(question: Question, answers: Answers) -> Answer:
    if question.form == "several":
        return ()
    if question.form == "yes or no":
        return "yes" if question.key == "city inlet" else "no"
    if question.key == "length":
        return f"{answers.shape.length_ft:g} ft"
    if question.key == "fresh tank":
        return f"{answers.shape.fresh_gal:g} gal"
    return answers.best(question.key)


def _drawn(question: Question, answers: Answers, rng: np.random.Generator) -> Answer:
    usual = answers.shape.usual.get(question.key)
    if question.form == "one":
        if usual and rng.random() < USUAL_CHANCE:
            return usual
        return question.choices[rng.integers(len(question.choices))]
    if question.form == "several":
        return tuple(choice for choice in question.choices if rng.random() < 0.3)
    if question.form == "yes or no":
        return "yes" if rng.random() < 0.5 or question.key == "city inlet" else "no"
    return _drawn_quantity(question, answers, rng)


def _drawn_quantity(question: Question, answers: Answers, rng: np.random.Generator) -> str:
    if question.key == "length":
        return f"{answers.shape.length_ft * rng.uniform(0.85, 1.15):.0f} ft"
    if question.key == "fresh tank":
        return f"{answers.shape.fresh_gal * rng.uniform(0.6, 1.4):.0f} gal"
    return f"{rng.integers(-30, 26)} degF"

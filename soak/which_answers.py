"""Which answers move gallons and verdict most, and what the order of the questions is worth."""

import sys
from collections.abc import Iterator
from multiprocessing import get_context
from pathlib import Path

from tests.intake.described import completed, drawn, looked_at
from tests.unit.procedure.demo_coach import PINK, celsius
from wintertight.coach.intake.answers import Answer, Answers
from wintertight.coach.intake.made import made_card
from wintertight.coach.intake.order import next_question
from wintertight.coach.intake.questions import QUESTIONS, Question, Stage
from wintertight.procedure.plan import plan_coach
from wintertight.units import GALLON_M3

PAGE = Path(__file__).resolve().parents[1] / "docs" / "questions.md"
LOW_DEGF = -10.0
SHAPES = ("short travel trailer", "fifth wheel, two baths", "camper van", "cab-over motorhome")
COACHES = 6
SHOWN = (1, 2, 4, 6, 8, 12, 16, 20, 24)
STAGES: tuple[Stage, ...] = ("phone", "walk-around")

HEAD = """# Which answers matter

This page is written by `make soak`; do not edit it.

## What each answer moves

{shapes} coaches as usual for their shape, planned by their own pump to {low:g} °F:
{names}. One
answer at a time is changed to every other choice: by how many gallons the plan moves at most, on
the middle of its band; how often the verdict is another one; and how many parts are *unproven* for
no other reason than that the question was left open, at most.

| question | asked | gallons, at most | another verdict | parts unproven while open |
|---|---|---:|---:|---:|
"""

ORDER = """
## What the order is worth

{coaches} drawn coaches whose adviser knows everything, asked one question after another; after each
the coach is planned, with what is still open left open. Parts that are then *unproven*, on average:
in the order of `wintertight coach new`, which asks next what would settle most, and in the order in
which the questions stand in their table.

| after questions | settling most | in the table's order |
|---:|---:|---:|
"""


def which_answers() -> int:
    """Write the page; give exit status 1 if the order is worth nothing."""
    jobs = [(shape, key) for key in QUESTIONS if key != "shape" for shape in SHAPES]
    runs = [(seed, settling) for seed in range(COACHES) for settling in (True, False)]
    with get_context("fork").Pool(2) as pool:
        moved = pool.map(_moved, jobs, chunksize=1)
        open_after = pool.map(_asked, runs, chunksize=1)
    rows: dict[str, list[tuple[float, int, int, int]]] = {key: [] for _, key in jobs}
    for (_, key), found in zip(jobs, moved, strict=True):
        rows[key].append(found)
    text = HEAD.format(shapes=len(SHAPES), names="; ".join(SHAPES), low=LOW_DEGF)
    text += "".join(_row(QUESTIONS[key], found) for key, found in _most_first(rows))
    text += ORDER.format(coaches=COACHES)
    means = {
        settling: [
            sum(_after(line, n) for line in mine) / COACHES
            for mine in [[o for (_, s), o in zip(runs, open_after, strict=True) if s == settling]]
            for n in SHOWN
        ]
        for settling in (True, False)
    }
    for n, settling, table in zip(SHOWN, means[True], means[False], strict=True):
        text += f"| {n} | {settling:.1f} | {table:.1f} |\n"
    PAGE.write_text(text, encoding="utf-8")
    sys.stdout.write(text)
    return int(sum(means[True]) >= sum(means[False]))


def _after(unproven: list[int], n: int) -> int:
    return unproven[min(n, len(unproven)) - 1]


def _most_first(
    rows: dict[str, list[tuple[float, int, int, int]]],
) -> list[tuple[str, list[tuple[float, int, int, int]]]]:
    def weight(item: tuple[str, list[tuple[float, int, int, int]]]) -> tuple[float, float]:
        return max(f[3] for f in item[1]), max(f[0] for f in item[1])

    return sorted(rows.items(), key=weight, reverse=True)


def _row(question: Question, found: list[tuple[float, int, int, int]]) -> str:
    gallons, others = max(f[0] for f in found), sum(f[1] for f in found)
    tried, open_parts = sum(f[2] for f in found), max(f[3] for f in found)
    verdicts = f"{others} of {tried}"
    return f"| {question.key} | {question.stage} | {gallons:.1f} | {verdicts} | {open_parts} |\n"


def _moved(job: tuple[str, str]) -> tuple[float, int, int, int]:
    """Give most gallons moved, other verdicts, answers tried, and parts unproven while open."""
    shape, key = job
    base = looked_at(shape)
    question = QUESTIONS[key]
    if not question.asked_if(base):
        return 0.0, 0, 0, 0
    gallons, verdict, unproven = _planned(base)
    most, others, tried = 0.0, 0, 0
    for answer in _other(question, base):
        there, said, _ = _planned(completed(base.with_answer(key, answer)))
        most, others, tried = max(most, abs(there - gallons)), others + (said != verdict), tried + 1
    return most, others, tried, max(0, _planned(base.without(key))[2] - unproven)


def _other(question: Question, base: Answers) -> Iterator[Answer]:
    given = base.given[question.key]
    if question.form == "several":
        yield from ((choice,) for choice in question.choices)
    elif question.form == "one":
        yield from (choice for choice in question.choices if choice != given)
    elif question.form == "yes or no":
        yield "no" if given == "yes" else "yes"
    elif question.key == "length":
        yield from (f"{factor * base.shape.length_ft:.0f} ft" for factor in (0.85, 1.15))
    elif question.key == "fresh tank":
        yield from (f"{factor * base.shape.fresh_gal:.0f} gal" for factor in (0.6, 1.4))
    else:
        yield from ("-30 degF", "20 degF")


def _planned(answers: Answers) -> tuple[float, str, int]:
    """Give gallons, verdict and unproven parts."""
    card = made_card(answers, "Q-1", "asked")
    low_degC = celsius(LOW_DEGF)
    if card.site is not None and card.site.design_low_degC is not None:
        low_degC = card.site.design_low_degC
    plan = plan_coach(card, PINK, low_degC)
    unproven = sum(part.safe is None for part in plan.parts)
    return plan.antifreeze.p50 / GALLON_M3, plan.verdict, unproven


def _asked(run: tuple[int, bool]) -> list[int]:
    """Give the parts that are unproven after each question of one talk."""
    seed, settling = run
    truth = completed(drawn(seed, left_open=0.0))
    answers, unproven, moot = Answers(), list[int](), frozenset[str]()
    for stage in STAGES:
        while (question := _chosen(answers, moot, stage, settling=settling)) is not None:
            answer = truth.given.get(question.key)
            if answer is None:  # asked too early: another answer would have made it needless
                moot |= {question.key}
                continue
            answers = answers.with_answer(question.key, answer)
            unproven.append(_planned(answers)[2])
    return unproven


def _chosen(
    answers: Answers, moot: frozenset[str], stage: Stage, *, settling: bool
) -> Question | None:
    if settling:
        return next_question(answers, moot, stage)
    waiting = (q for q in QUESTIONS.values() if q.stage == stage and q.asked_if(answers))
    return next((q for q in waiting if not answers.known(q.key) and q.key not in moot), None)

"""Answers typed in French: names, letters, accents, and what is no answer."""

import pytest

from wintertight.coach.intake.answers import Answer
from wintertight.coach.intake.questions import QUESTIONS
from wintertight.coach.intake.reading import Misread, NotUnderstood, read_answer
from wintertight.coach.intake.talk import begun, said
from wintertight.wording.catalogue import catalogue
from wintertight.wording.intake import answer_words, misread_line

FRENCH = answer_words("fr")


@pytest.mark.parametrize("key", QUESTIONS)
def test_a_choice_is_typed_as_it_is_offered(key: str) -> None:
    """Guards that each choice is understood by its French name, also in capitals."""
    question = QUESTIONS[key]
    for choice in question.choices:
        name = catalogue("fr")["choice"][f"{key}: {choice}"]
        meant = choice if question.form == "one" else (choice,)
        assert read_answer(question, name, FRENCH) == meant
        assert read_answer(question, name.upper(), FRENCH) == meant


@pytest.mark.parametrize(
    ("key", "typed", "answer"),
    [
        ("shape", "3", "truck camper"),
        ("shape", "fourgon", "camper van"),
        ("shape", "caravane a sellette, deux", "fifth wheel, two baths"),
        ("heater", "aucun", "no heater"),
        ("heater", "16", "tank of 16 gal"),
        ("heater", "serpentin", "hydronic coil"),
        ("bypass", "aucun", "no bypass"),
        ("low points", "deux", "two"),
        ("low points", "aucun", "none"),
        ("belly", "ouvert", "open"),
        ("heater tank", "acier inoxydable", "stainless steel"),
        ("appliances", "machine à glaçons et lave-vaisselle", ("ice maker", "dishwasher")),
        ("appliances", "machine a glacons, machine à laver", ("ice maker", "washer")),
        ("tub", "aucune", ()),
        ("tub", "rien", ()),
        ("sprayer", "O", "yes"),
        ("sprayer", "Oui", "yes"),
        ("sprayer", "n", "no"),
        ("length", "8.2 m", "8.2 m"),
    ],
)
def test_what_is_meant_in_french_is_read(key: str, typed: str, answer: Answer) -> None:
    """Guards French beginnings, lists, yes and no, with accents and without."""
    assert read_answer(QUESTIONS[key], typed, FRENCH) == answer


@pytest.mark.parametrize(
    ("key", "typed", "why"),
    [
        ("shape", "caravane", "several fit"),
        ("sprayer", "peut-être", "yes or no"),
        ("tub", "aucune, baignoire", "none or some"),
        ("pipe", "plomb", "no such choice"),
        ("length", "8,2 m", "no quantity"),
        ("length", "8", "unit missing"),
    ],
)
def test_what_is_no_answer_in_french_is_told(key: str, typed: str, why: Misread) -> None:
    """Guards that a slip is named, and that its French sentence says what to type."""
    with pytest.raises(NotUnderstood) as caught:
        read_answer(QUESTIONS[key], typed, FRENCH)
    assert caught.value.key == why
    assert "apez" in misread_line(caught.value, QUESTIONS[key], "fr")


def test_a_question_stays_open_in_french() -> None:
    """Guards that "nobody has looked" can be typed as it is said, with either apostrophe."""
    for typed in ("-", "pas vu", "personne n'a regardé", "Personne n\u2019a regarde"):
        talk, reply = said(begun("phone"), typed, FRENCH)
        assert (reply.what, reply.noted, reply.answer) == ("asked", "shape", None)
        assert talk.left_open == {"shape"}


def test_the_crossroads_take_french_letters() -> None:
    """Guards that the talk goes on with "o", ends its questions with "n", and no other letter."""
    talk = begun("phone")
    while talk.at != "go on":
        talk, _ = said(talk, "-", FRENCH)
    assert said(talk, "n", FRENCH)[0].at == "write"
    assert said(talk, "o", FRENCH)[0].stage == "walk-around"
    assert said(talk, "x", FRENCH)[1].what == "not understood"

"""Every question has its words, and every word its question."""

import ast
from string import Formatter
from typing import get_args

import pytest

from tests.unit.wording.emitted import PACKAGE, literals
from wintertight.coach.intake.answers import Answers
from wintertight.coach.intake.questions import QUESTIONS, Question
from wintertight.coach.intake.reading import IN_ENGLISH, Misread, NotUnderstood, read_answer
from wintertight.coach.intake.talk import Crossroads, begun, resumed, said
from wintertight.wording.catalogue import LANGUAGES, catalogue
from wintertight.wording.english import ENGLISH
from wintertight.wording.intake import (
    KEYED,
    answer_name,
    answer_words,
    asked_lines,
    coach_name,
    misread_line,
    noted_line,
    summary_lines,
    why_asked,
)

POINTS = {*QUESTIONS, *get_args(Crossroads)}
LONGEST = 92


@pytest.mark.parametrize("subject", ["question", "where", "why asked"])
def test_every_point_of_a_talk_has_its_words(subject: str) -> None:
    """Guards that nothing is asked without a place to look and a reason, and nothing is left."""
    again = {"write: again"} if subject == "question" else set()
    assert set(ENGLISH[subject]) == POINTS | again


def test_every_subject_and_choice_has_its_name() -> None:
    """Guards that each choice that is offered can be read, and that none is left over."""
    assert set(ENGLISH["asked about"]) == set(QUESTIONS)
    offered = {f"{q.key}: {choice}" for q in QUESTIONS.values() for choice in q.choices}
    assert set(ENGLISH["choice"]) == offered


def test_every_misreading_has_its_sentence() -> None:
    """Guards that no slip is answered with silence, and no sentence is left over."""
    assert set(ENGLISH["not understood"]) == set(get_args(Misread))


def test_every_phrase_between_the_questions_is_said() -> None:
    """Guards that no phrase stays behind when its use goes."""
    said_keys: set[str] = set()
    for file in ("wording/intake.py", "cli/intake.py"):
        for node in ast.walk(ast.parse((PACKAGE / file).read_text("utf-8"))):
            if isinstance(node, ast.Call):
                for given in node.args:
                    said_keys |= literals(given)
    forms = {f"prompt {q.form}" for q in QUESTIONS.values()}
    stages = {f"stage {q.stage}" for q in QUESTIONS.values()}
    assert set(ENGLISH["talk"]) - {"yes", "no"} <= said_keys | forms | stages
    assert forms | stages | {"yes", "no"} <= set(ENGLISH["talk"])


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("subject", ["where", "why asked", "question", "not understood"])
def test_what_is_read_at_the_phone_is_whole(subject: str, language: str) -> None:
    """Guards that each is a sentence, and that a place to look is one line."""
    for key, text in catalogue(language)[subject].items():
        assert text[0].isupper() or text[0] in "'{<¿«", key
        assert text[-1] in ".?-}", key
        assert subject not in {"where", "question"} or len(text) <= LONGEST, key


def test_only_what_is_given_is_named() -> None:
    """Guards that no question, place or reason has a name in braces that nobody fills in."""
    named = {
        (subject, key, name)
        for subject in ("question", "where", "why asked", "asked about", "choice")
        for key, text in ENGLISH[subject].items()
        for _, name, _, _ in Formatter().parse(text)
        if name
    }
    assert named == {("question", "write: again", "file")}


@pytest.mark.parametrize("key", QUESTIONS)
@pytest.mark.parametrize("why", get_args(Misread))
def test_every_slip_can_be_said(key: str, why: Misread) -> None:
    """Guards that each sentence on a slip can be said at each question and at a crossroads."""
    question: Question = QUESTIONS[key]
    dimension = question.dimension or "length"
    slip = NotUnderstood("so\x1b[1m", why, question.choices[:2], dimension, (1.0, 2.0))
    for system in ("us", "metric"):
        line = misread_line(slip, question, system=system)
        assert "{" not in line
        assert line.isprintable()
    assert misread_line(NotUnderstood("x", "yes or no"), None) == (
        "'x' is neither yes nor no. Type y or n."
    )


def test_limits_are_told_in_units() -> None:
    """Guards what is said of a length and of a night that nobody believes."""
    for key, typed, told in (
        ("length", "90 ft", "90 ft is hard to believe: expected 6 ft to 48 ft. Look again."),
        ("design low", "50F", "50F is hard to believe: expected -76 °F to 32 °F. Look again."),
        ("length", "27", "27 of what? Type it with its unit, like 27 ft."),
    ):
        others = frozenset(QUESTIONS) - {key}
        talk = resumed(Answers(), others, "phone")
        assert talk.at == QUESTIONS[key]
        _, reply = said(talk, typed)
        assert reply.why is not None
        assert misread_line(reply.why, QUESTIONS[key]) == told


def test_a_summary_says_what_open_means() -> None:
    """Guards that a summary tells known, open, unproven and guessed apart."""
    answers = Answers().with_answer("shape", "teardrop").with_answer("tub", ())
    talk = resumed(answers, frozenset(), "phone")
    lines = list(summary_lines(talk, answers, "c.toml"))
    assert lines[:2] == ["Known:", "  kind of coach: teardrop"]
    unproven = next(line for line in lines if line.startswith("Nobody has looked for:"))
    assert "ice maker" in unproven
    assert "none is taken for absent" in unproven
    guessed = next(line for line in lines if line.startswith("Guessed"))
    assert "water heater" in guessed
    assert "coldest night" not in guessed
    assert lines[-1] == (
        "No coldest night is known: each plan must be told one,"
        " like: wintertight plan c.toml --low=-20F"
    )
    cold = answers.with_answer("design low", "-20F")
    assert "coldest night" not in list(summary_lines(talk, cold, "c.toml"))[-1]


def test_nothing_and_everything_known_are_told() -> None:
    """Guards both ends of a summary."""
    assert next(iter(summary_lines(begun(), Answers(), "c"))) == "Nothing is known yet."
    given = {
        key: "27 ft" if key == "length" else "-20F" if key == "design low" else "40 gal"
        if q.form == "quantity" else () if q.form == "several" else "yes"
        if q.form == "yes or no" else q.choices[0]
        for key, q in QUESTIONS.items()
    }  # fmt: skip
    answers = Answers(given)
    talk = resumed(answers, frozenset(), "walk-around")
    assert list(summary_lines(talk, answers, "c"))[-1] == "Nothing is left open."


def test_what_was_understood_is_told() -> None:
    """Guards the line after each answer, by which a slip of the finger is seen."""
    assert noted_line("tub", ("tub", "whirlpool")) == "Noted: tub: tub and whirlpool, with jets."
    assert noted_line("tub", ()) == "Noted: tub: none."
    assert noted_line("sprayer", "yes") == "Noted: sprayer at the toilet: yes."
    assert noted_line("length", "27 ft") == "Noted: length: 27 ft."
    assert noted_line("length", None) == "Left open: length."
    assert answer_name(QUESTIONS["pipe"], "PEX").startswith("PEX")


def test_a_question_shows_number_place_and_choices() -> None:
    """Guards what stands on the screen: which question, where to look, choices by digits."""
    lines = list(asked_lines(begun()))
    assert lines[0] == "Question 1 of 8, on the phone"
    assert lines[1:3] == [ENGLISH["question"]["shape"], ENGLISH["where"]["shape"]]
    assert lines[3] == "   1  tent trailer"
    assert len(lines) == 3 + len(QUESTIONS["shape"].choices)
    assert why_asked(begun()) == ENGLISH["why asked"]["shape"]
    at_end = resumed(Answers(), frozenset(QUESTIONS), "walk-around")
    assert next(iter(asked_lines(at_end))) == ENGLISH["question"]["write"]
    assert "c.toml" in next(iter(asked_lines(at_end, again="c.toml")))


def test_a_coach_is_named_by_what_is_known() -> None:
    """Guards the name of a coach that nobody has named."""
    assert coach_name(Answers()) == ""
    short = Answers().with_answer("shape", "toy hauler")
    assert coach_name(short) == "Toy hauler"
    assert coach_name(short.with_answer("length", "34 ft")) == "Toy hauler, 34 ft"


def test_english_is_read_alike_with_and_without_a_catalogue() -> None:
    """Guards that files of answers, read without words of a language, are read as the talk is."""
    assert answer_words("en") == IN_ENGLISH


@pytest.mark.parametrize("language", [language for language in LANGUAGES if language != KEYED])
@pytest.mark.parametrize("key", QUESTIONS)
def test_what_is_offered_can_be_typed(key: str, language: str) -> None:
    """Guards that each choice is understood by the name it is offered by, with or without case."""
    question, words = QUESTIONS[key], answer_words(language)
    for choice in question.choices:
        name = catalogue(language)["choice"][f"{key}: {choice}"]
        answer = choice if question.form == "one" else (choice,)
        assert read_answer(question, name.upper(), words) == answer
    if question.form == "several":
        for none in words.none:
            assert read_answer(question, none, words) == ()


@pytest.mark.parametrize("language", LANGUAGES)
def test_what_is_said_can_be_typed(language: str) -> None:
    """Guards that "yes", "no" and "none" are read as they are said and as they are prompted for."""
    words, talk = answer_words(language), catalogue(language)["talk"]
    prompted = [letter for letter in talk["prompt yes or no"] if letter.isalpha()]
    assert (prompted[0], prompted[-1]) == (min(words.yes, key=len), min(words.no, key=len))
    assert read_answer(QUESTIONS["sprayer"], talk["yes"], words) == "yes"
    assert read_answer(QUESTIONS["sprayer"], talk["no"], words) == "no"
    assert read_answer(QUESTIONS["tub"], talk["none"], words) == ()
    assert not words.yes & (words.no | words.none)
    assert not words.unseen & words.none


@pytest.mark.parametrize(
    ("key", "typed", "answer"),
    [
        ("shape", "GOTA", "teardrop"),
        ("shape", "quinta rueda, dos", "fifth wheel, two baths"),
        ("shape", "5", "long bunkhouse trailer"),
        ("heater", "ningún", "no heater"),
        ("heater", "16", "tank of 16 gal"),
        ("low points", "dos", "two"),
        ("belly", "cerrado, y caliente", "closed and heated"),
        ("appliances", "maquina de hielo y lavadora", ("ice maker", "washer")),
        (
            "appliances",
            "Máquina, despachador e lavav",
            ("ice maker", "door dispenser", "dishwasher"),
        ),
        ("tub", "Ninguna", ()),
        ("sprayer", "Sí", "yes"),
        ("sprayer", "S", "yes"),
    ],
)
def test_spanish_is_read(key: str, typed: str, answer: str | tuple[str, ...]) -> None:
    """Guards Spanish answers as people type them: short, without accents, joined by "y"."""
    assert read_answer(QUESTIONS[key], typed, answer_words("es")) == answer


@pytest.mark.parametrize(
    ("key", "typed", "why"),
    [
        ("sprayer", "yes", "yes or no"),
        ("belly", "closed", "no such choice"),
        ("tub", "tina y ninguna", "none or some"),
        ("shape", "quinta", "several fit"),
    ],
)
def test_spanish_slips_are_told(key: str, typed: str, why: Misread) -> None:
    """Guards that in Spanish nothing is taken for an English word."""
    with pytest.raises(NotUnderstood) as slip:
        read_answer(QUESTIONS[key], typed, answer_words("es"))
    assert slip.value.key == why


def test_a_talk_in_spanish_leaves_open_and_says_yes() -> None:
    """Guards the words of a whole talk: not looked at, back, no, yes."""
    words = answer_words("es")
    talk = begun()
    for _ in range(8):
        talk, reply = said(talk, "Nadie ha mirado", words)
        assert reply.what == "asked"
    assert said(talk, "<", words)[0].left_open != talk.left_open
    talk = said(talk, "no", words)[0]
    assert said(talk, "y", words)[1].what == "not understood"
    assert said(talk, "sí", words)[0].at == "card"

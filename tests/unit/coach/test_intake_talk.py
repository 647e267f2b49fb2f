from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from wintertight.coach.intake.kept import Kept, kept_text, read_kept
from wintertight.coach.intake.questions import QUESTIONS, Question, Stage, standing
from wintertight.coach.intake.talk import Talk, begun, count, resumed, said

MOVES = st.lists(st.tuples(st.integers(0, 9), st.integers(0, 20)), max_size=60)


def typed_at(talk: Talk, what: int, which: int) -> str:
    """Give a line for where a talk stands: mostly an answer, sometimes open, back or nonsense."""
    at = talk.at
    typed = ("-", "<", ("?", "!", "", "zzz")[which % 4])
    if what < len(typed):
        return typed[what]
    if not isinstance(at, Question):
        # Not to the end: a talk that has ended takes no line.
        return "y" if at == "go on" and which % 2 else "?"
    if at.form == "quantity":
        return {"length": "27 ft", "temperature": "-20F", "volume": "40 gal"}[str(at.dimension)]
    if at.form == "several" and which % 3 == 0:
        return "none"
    choices = at.choices or ("no", "yes")
    return choices[which % len(choices)]


def walked(moves: list[tuple[int, int]], stage: Stage = "phone") -> list[Talk]:
    """Give every state of a talk."""
    states = [begun(stage)]
    for what, which in moves:
        states.append(said(states[-1], typed_at(states[-1], what, which))[0])
    return states


@given(MOVES)
def test_back_restores_exactly_what_was(moves: list[tuple[int, int]]) -> None:
    """Guards that "<" after any answer gives the very state before it, its own way back too."""
    for before, after in zip(states := walked(moves), states[1:], strict=False):
        if after.before == before:
            back, reply = said(after, "<")
            assert back == before
            assert reply.what == "asked"


@given(MOVES)
def test_a_talk_taken_up_stands_where_it_stood(moves: list[tuple[int, int]]) -> None:
    """Guards that answers, what is open and the stage are enough to go on at the same point."""
    talk = walked(moves)[-1]
    again = resumed(talk.answers, talk.left_open, talk.stage)
    assert replace(again, before=None) == replace(talk, before=None)


@given(MOVES)
def test_a_talk_taken_up_can_go_back_to_its_beginning(moves: list[tuple[int, int]]) -> None:
    """Guards that the way back is there after a talk was taken up, step by step."""
    talk = walked(moves)[-1]
    again = resumed(talk.answers, talk.left_open, talk.stage)
    steps = 0
    while again.before is not None:
        again, steps = said(again, "<")[0], steps + 1
    assert again == begun()
    assert steps >= len(standing(talk.answers).given)


@given(MOVES)
def test_what_is_kept_is_read_back(moves: list[tuple[int, int]]) -> None:
    """Guards that a file of answers holds all of a talk but its way back."""
    talk = walked(moves)[-1]
    kept = Kept(talk.answers, talk.left_open, talk.stage)
    assert read_kept(kept_text(kept)) == kept


@given(MOVES)
def test_the_count_never_passes_its_end(moves: list[tuple[int, int]]) -> None:
    """Guards "question 3 of 8" at every point."""
    for talk in walked(moves):
        number, of = count(talk)
        assert (1 <= number <= of) if isinstance(talk.at, Question) else (number, of) == (0, 0)


def test_everything_left_open_ends_at_the_card() -> None:
    """Guards that a talk of which nothing is known still comes to its end."""
    talk, asked = begun("walk-around"), 0
    while isinstance(talk.at, Question):
        talk, asked = said(talk, "-")[0], asked + 1
    assert talk.at == "write"
    assert asked == len(talk.left_open) < len(QUESTIONS)
    assert said(talk, "y")[0].at == "card"
    assert said(talk, "n")[0].at == "later"


def test_stopping_after_the_phone_leaves_the_rest_open() -> None:
    """Guards that no walk-around is needed for a card."""
    talk = begun()
    while talk.at != "go on":
        talk, _ = said(talk, "not looked at")
    stopped, _ = said(talk, "no")
    assert (stopped.at, stopped.stage) == ("write", "phone")
    around, _ = said(talk, "yes")
    assert isinstance(around.at, Question)
    assert around.at.stage == around.stage == "walk-around"
    assert said(stopped, "<")[0] == talk


@pytest.mark.parametrize(
    ("typed", "what"),
    [("?", "help"), ("!", "summary"), ("", "not understood"), ("<", "not understood")],
)
def test_what_is_no_answer_moves_nothing(typed: str, what: str) -> None:
    """Guards that help, a summary and a slip leave the talk where it is."""
    talk = begun()
    after, reply = said(talk, typed)
    assert after is talk
    assert reply.what == what


@pytest.mark.parametrize("typed", ["-", "3", "", "maybe"])
def test_a_crossroads_needs_yes_or_no(typed: str) -> None:
    """Guards that a card is never written on anything but a yes."""
    talk = resumed(begun().answers, frozenset(QUESTIONS), "walk-around")
    assert talk.at == "write"
    after, reply = said(talk, typed)
    assert after is talk
    assert reply.what == "not understood"

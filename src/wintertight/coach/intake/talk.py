"""The talk that describes a coach, as states that follow each other; it prints nothing.

A talk stands at one point: a question, or one of two crossroads - whether to go on with the
walk-around, and whether to write the card. What is typed leads to the next point, or leaves it
where it is:

    ?   why the question matters        <   back, and everything is as it was there
    -   not looked at; it stays open    !   what is known and what is open so far
"""

from dataclasses import dataclass, replace
from typing import Literal

from wintertight.coach.intake.answers import Answer, Answers
from wintertight.coach.intake.order import askable, next_question
from wintertight.coach.intake.questions import Question, Stage
from wintertight.coach.intake.reading import (
    IN_ENGLISH,
    NotUnderstood,
    Words,
    plain,
    read_answer,
    read_yes,
)

Crossroads = Literal["go on", "write"]
End = Literal["card", "later"]
What = Literal["asked", "help", "summary", "not understood", "ended"]

HELP, BACK, SO_FAR = "?", "<", "!"


@dataclass(frozen=True, slots=True)
class Talk:
    """Where a talk stands.

    Attributes:
        answers: every answer given, also those that do not count any more.
        left_open: keys of the questions that were not looked at.
        stage: how far the talk goes: on the phone only, or around the coach as well.
        at: the question that is asked, the crossroads, or how the talk ended.
        before: where it stood before the last answer; None at the beginning.
    """

    answers: Answers
    left_open: frozenset[str]
    stage: Stage
    at: Question | Crossroads | End
    before: "Talk | None" = None


@dataclass(frozen=True, slots=True)
class Reply:
    """What comes of what was typed.

    Attributes:
        what: the next point is asked; help or a summary is wanted; it was not understood; the
            talk has ended.
        noted: key of the question that was answered or left open by it; "" if none was.
        answer: how the answer was understood; None where the question was left open.
        why: why it was not understood.
    """

    what: What
    noted: str = ""
    answer: Answer | None = None
    why: NotUnderstood | None = None


def begun(stage: Stage = "phone") -> Talk:
    """Give the beginning of a talk; around the coach the phone's questions come first as well."""
    return _at_next(Talk(Answers(), frozenset(), stage, "write"))


def resumed(answers: Answers, left_open: frozenset[str], stage: Stage) -> Talk:
    """Take a talk up where it was left.

    The order of the questions follows from the answers alone, so the way back is found again by
    going the way once more.

    Args:
        answers: every answer given.
        left_open: keys of the questions that were not looked at.
        stage: how far the talk had gone.

    Returns:
        The talk at its first open question, or at the crossroads behind the last one.
    """
    talk = begun("phone")
    while True:
        at = talk.at
        if isinstance(at, Question) and answers.known(at.key):
            talk = _answered(talk, at, answers.given[at.key])
        elif isinstance(at, Question) and at.key in left_open:
            talk = _left_open(talk, at)
        elif at == "go on" and stage == "walk-around":
            talk = _at_next(replace(talk, stage=stage, before=talk))
        else:
            break
    return _at_next(replace(talk, answers=answers, left_open=left_open, stage=stage))


def said(talk: Talk, text: str, words: Words = IN_ENGLISH) -> tuple[Talk, Reply]:
    """Take one line.

    Args:
        talk: where the talk stands; it has not ended.
        text: what was typed.
        words: what is typed in the language of the talk.

    Returns:
        Where it stands now - the same, unless it was an answer, "-" or "<" - and what comes of it.
    """
    line = plain(text)
    if line in {HELP, SO_FAR}:
        return talk, Reply("summary" if line == SO_FAR else "help")
    try:
        return _moved(talk, text, line, words)
    except NotUnderstood as why:
        return talk, Reply("not understood", why=why)


def _moved(talk: Talk, text: str, line: str, words: Words) -> tuple[Talk, Reply]:
    question = talk.at
    if line == BACK:
        return _back(talk, text), Reply("asked")
    if not isinstance(question, Question):
        return _at_crossroads(talk, text, line, words)
    if line in words.unseen:
        return _left_open(talk, question), Reply("asked", question.key)
    answer = read_answer(question, text, words)
    return _answered(talk, question, answer), Reply("asked", question.key, answer)


def count(talk: Talk) -> tuple[int, int]:
    """Give the number of the question that is asked, and how many its stage has at this coach."""
    if not isinstance(talk.at, Question):
        return 0, 0
    every = askable(talk.answers, talk.at.stage)
    done = [q for q in every if talk.answers.known(q.key) or q.key in talk.left_open]
    return len(done) + 1, len(every)


def _back(talk: Talk, text: str) -> Talk:
    if talk.before is None:
        raise NotUnderstood(text, "no way back")
    return talk.before


def _at_crossroads(talk: Talk, text: str, line: str, words: Words) -> tuple[Talk, Reply]:
    if line in words.unseen:
        raise NotUnderstood(text, "cannot stay open")
    yes = read_yes(text, words) == "yes"
    if talk.at == "go on":
        on: Stage = "walk-around" if yes else "phone"
        ahead = replace(talk, stage=on, before=talk)
        return (_at_next(ahead) if yes else replace(ahead, at="write")), Reply("asked")
    return replace(talk, at="card" if yes else "later", before=talk), Reply("ended")


def _answered(talk: Talk, question: Question, answer: Answer) -> Talk:
    return _at_next(
        replace(
            talk,
            answers=talk.answers.with_answer(question.key, answer),
            left_open=talk.left_open - {question.key},
            before=talk,
        )
    )


def _left_open(talk: Talk, question: Question) -> Talk:
    return _at_next(replace(talk, left_open=talk.left_open | {question.key}, before=talk))


def _at_next(talk: Talk) -> Talk:
    """Put a talk at the next open question of its stages, or at the crossroads behind them."""
    on_the_phone = next_question(talk.answers, talk.left_open, "phone")
    if on_the_phone is not None:
        return replace(talk, at=on_the_phone)
    if talk.stage == "phone":
        return replace(talk, at="go on")
    around = next_question(talk.answers, talk.left_open, "walk-around")
    return replace(talk, at="write" if around is None else around)


def open_keys(talk: Talk) -> tuple[str, ...]:
    """Give the keys of all questions that have a sense at this coach and no answer yet."""
    every = (*askable(talk.answers, "phone"), *askable(talk.answers, "walk-around"))
    return tuple(question.key for question in every if not talk.answers.known(question.key))

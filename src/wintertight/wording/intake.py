"""The talk that describes a coach, as text: questions, help, what was noted, and the summary."""

import shlex
from collections.abc import Iterator

from wintertight.coach.card import Card
from wintertight.coach.faults import printable
from wintertight.coach.intake.answers import Answer, Answers
from wintertight.coach.intake.questions import QUESTIONS, Question
from wintertight.coach.intake.reading import EXAMPLES, NotUnderstood, Words, plain
from wintertight.coach.intake.talk import Talk, count, open_keys
from wintertight.coach.intake.unseen import UNSEEN
from wintertight.units import System, in_words
from wintertight.wording.catalogue import say
from wintertight.wording.names import kind_name
from wintertight.wording.spoken import listed


def asked_lines(talk: Talk, language: str = "en", again: str = "") -> Iterator[str]:
    """Give what stands on the screen where the talk stands now; the prompt is not among it.

    Args:
        talk: where it stands; it has not ended.
        language: two letters.
        again: the card that would be replaced, if there is one.

    Yields:
        Lines.
    """
    at = talk.at
    if not isinstance(at, Question):
        key = "write: again" if at == "write" and again else at
        yield say("question", key, language, file=again)
        yield say("where", at, language)
        return
    number, of = count(talk)
    stage = say("talk", f"stage {at.stage}", language)
    yield say("talk", "heading", language, number=str(number), of=str(of), stage=stage)
    yield say("question", at.key, language)
    yield say("where", at.key, language)
    for place, choice in enumerate(at.choices, start=1):
        name = choice_name(at, choice, language)
        yield say("talk", "choice", language, number=f"{place:2d}", choice=name)


def prompt(talk: Talk, language: str = "en") -> str:
    """Give what stands in front of where somebody types."""
    form = talk.at.form if isinstance(talk.at, Question) else "yes or no"
    return say("talk", f"prompt {form}", language)


def why_asked(talk: Talk, language: str = "en") -> str:
    """Give why it matters what is asked now."""
    key = talk.at.key if isinstance(talk.at, Question) else talk.at
    return say("why asked", key, language)


KEYED = "en"
"""In this language choices are typed by their keys; in every other by what they are called."""


def answer_words(language: str = "en") -> Words:
    """Give the words by which answers are read in a language."""
    names = (
        {}
        if language == KEYED
        else {
            question.key: {c: choice_name(question, c, language) for c in question.choices}
            for question in QUESTIONS.values()
        }
    )
    return Words(
        yes=_typed("yes", language),
        no=_typed("no", language),
        none=_typed("none", language),
        unseen=_typed("unseen", language),
        between=_typed("between", language),
        names=names,
    )


def _typed(key: str, language: str) -> frozenset[str]:
    return frozenset(plain(word) for word in say("typed", key, language).split(", "))


def noted_line(key: str, answer: Answer | None, language: str = "en") -> str:
    """Give how an answer was understood, or that the question stays open."""
    subject = say("asked about", key, language)
    if answer is None:
        return say("talk", "noted open", language, subject=subject)
    said = answer_name(QUESTIONS[key], answer, language)
    return say("talk", "noted", language, subject=subject, answer=said)


def choice_name(question: Question, choice: str, language: str = "en") -> str:
    """Give what a choice is called."""
    return say("choice", f"{question.key}: {choice}", language)


def answer_name(question: Question, answer: Answer, language: str = "en") -> str:
    """Give an answer in words."""
    if isinstance(answer, tuple):
        names = (choice_name(question, choice, language) for choice in answer)
        return listed(names, language) or say("talk", "none", language)
    if question.form == "yes or no":
        return say("talk", answer, language)
    return answer if question.form == "quantity" else choice_name(question, answer, language)


def misread_line(
    why: NotUnderstood, at: Question | None, language: str = "en", system: System = "us"
) -> str:
    """Give why a line was not understood, and what to type instead.

    Args:
        why: what is wrong.
        at: the question that was asked; None at a crossroads.
        language: two letters.
        system: "us" or "metric".

    Returns:
        One line.
    """
    choices = (choice_name(at, choice, language) for choice in why.choices) if at else ()
    limits = {}
    if why.dimension is not None and why.key == "outside":
        least, most = (in_words(value, why.dimension, system) for value in why.within)
        limits = {"least": least, "most_size": most}
    return say(
        "not understood",
        why.key,
        language,
        typed=why.typed,
        choices=listed(choices, language),
        most=str(len(at.choices)) if at else "",
        example=EXAMPLES[why.dimension] if why.dimension is not None else "",
        **limits,
    )


SIZES = frozenset({"length", "fresh tank"})
"""What the card guesses by the shape alone, where nobody has said."""


def summary_lines(talk: Talk, counting: Answers, file: str, language: str = "en") -> Iterator[str]:
    """Give what is known, what is left open, and what that means for every plan.

    Args:
        talk: where the talk stands.
        counting: the answers that count.
        file: the card that is to be written.
        language: two letters.

    Yields:
        Lines, which may be long.
    """
    known = [key for key in QUESTIONS if counting.known(key)]
    yield say("talk", "known" if known else "nothing known", language)
    for key in known:
        said = answer_name(QUESTIONS[key], counting.given[key], language)
        subject = say("asked about", key, language)
        yield say("talk", "known line", language, subject=subject, answer=said)
    still_open = open_keys(talk)
    if not still_open:
        yield say("talk", "nothing open", language)
        return
    yield say("talk", "open", language, subjects=_subjects(still_open, language))
    kinds = [kind for key in still_open for kind in QUESTIONS[key].settles]
    if kinds:
        named = listed((kind_name(kind, language) for kind in kinds), language)
        yield say("talk", "open kinds", language, kinds=named)
    guessed = [key for key in still_open if key in {*UNSEEN, *SIZES, *counting.shape.usual}]
    if guessed:
        yield say("talk", "guessed", language, subjects=_subjects(guessed, language))
    if not counting.known("design low"):
        yield say("talk", "no low", language, file=file)


def _subjects(keys: tuple[str, ...] | list[str], language: str) -> str:
    return listed((say("asked about", key, language) for key in keys), language)


def coach_name(answers: Answers, language: str = "en") -> str:
    """Give a name for a coach that nobody has named: its shape and its length; "" if unknown."""
    if not answers.known("shape"):
        return ""
    shape = choice_name(QUESTIONS["shape"], answers.best("shape"), language)
    shape = shape[:1].upper() + shape[1:]
    if not answers.known("length"):
        return shape
    return say("talk", "name", language, shape=shape, length=answers.best("length"))


def written_line(card: Card, file: str, language: str = "en") -> str:
    """Give that a card was written, and the command that comes next, with what it must be told."""
    told_low = card.site is not None and card.site.design_low_degC is not None
    return say(
        "talk",
        "written",
        language,
        file=file,
        path=shlex.quote(file),
        product="" if card.antifreeze is not None else say("talk", "which product", language),
        low="" if told_low else say("talk", "which low", language),
    )


def head_lines(source: str, language: str = "en") -> tuple[str, ...]:
    """Give the comment that stands first on a card made from answers.

    Args:
        source: name of the file of answers.
        language: two letters.

    Returns:
        Lines without the sign of a comment.
    """
    return say("talk", "head", language, file=printable(source)), say("talk", "head 2", language)


def talk_line(key: str, language: str = "en", **params: str) -> str:
    """Give one of the lines between the questions."""
    return say("talk", key, language, **params)

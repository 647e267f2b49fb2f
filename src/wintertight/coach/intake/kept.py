"""Answers kept in a JSON file, so that a talk which breaks off goes on where it stood.

{"schema": "wintertight/answers/1", "answers": {"shape": "teardrop", "length": "10 ft"},
 "left_open": ["design low"], "stage": "phone"}
"""

import json
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from difflib import get_close_matches
from os import PathLike
from pathlib import Path
from typing import Any, cast, get_args

from wintertight.coach.faults import printable
from wintertight.coach.intake.answers import Answer, Answers
from wintertight.coach.intake.questions import QUESTIONS, Question, Stage
from wintertight.coach.intake.reading import NotUnderstood, read_answer
from wintertight.coach.read_json import read_json
from wintertight.coach.read_toml import read_file
from wintertight.coach.write_file import reason_of, swap_in
from wintertight.errors import CardError, InputError, Place

SCHEMA = "wintertight/answers/1"
STAGES: tuple[Stage, ...] = get_args(Stage)

_FIELDS = ("schema", "answers", "left_open", "stage")
_EXPECTED = f'expected an object: {{"schema": "{SCHEMA}", "answers": {{...}}}}'


@dataclass(frozen=True, slots=True)
class Kept:
    """What a file of answers holds.

    Attributes:
        answers: every answer given.
        left_open: keys of the questions that were not looked at.
        stage: how far the talk had gone.
    """

    answers: Answers
    left_open: frozenset[str] = frozenset()
    stage: Stage = "phone"


def beside(card: Path) -> Path:
    """Give the place of the answers that a card was made from."""
    return card.with_name(f"{card.stem}.answers.json") if card.name else card


def load_kept(path: str | PathLike[str]) -> Kept:
    """Read a file of answers.

    Args:
        path: the file, UTF-8, at most 4 MB.

    Returns:
        What it holds.

    Raises:
        UnreadableFile: missing, a folder, not UTF-8, too large or nested too deep.
        SyntaxFault: not JSON.
        CardError: another format, an unknown field, question or choice, or an answer that the
            question does not have.
    """
    return read_kept(read_file(path), str(path))


def read_kept(text: str, name: str = "answers") -> Kept:
    """Read answers from the text of their file; errors as in ``load_kept``."""
    raw = _object(text, name)
    if raw.get("schema") != SCHEMA:
        raise _wrong(name, "schema", f'expected "{SCHEMA}": is this a file of answers?')
    strange = [key for key in raw if key not in _FIELDS]
    if strange:
        message = f"no such field here; expected {', '.join(_FIELDS)}"
        raise _wrong(name, strange[0], message)
    given, left, stage = raw.get("answers"), raw.get("left_open", []), raw.get("stage", STAGES[0])
    if not isinstance(given, dict):
        raise _wrong(name, "answers", 'expected an object: {"shape": "teardrop"}')
    if not isinstance(left, list):
        raise _wrong(name, "left_open", "expected a list of questions")
    if stage not in STAGES:
        raise _wrong(name, "stage", f"expected one of {', '.join(STAGES)}")
    answers = Answers()
    for key, answer in given.items():
        place = f"answers.{key}"
        answers = answers.with_answer(key, _answer(_asked(key, name, place), answer, name, place))
    open_keys = {_asked(key, name, f"left_open[{n}]").key for n, key in enumerate(left, start=1)}
    return Kept(answers, frozenset(open_keys) - set(answers.given), cast("Stage", stage))


def kept_text(kept: Kept) -> str:
    """Give what the file of these answers says."""
    given = {
        key: list(answer) if isinstance(answer, tuple) else answer
        for key, answer in kept.answers.given.items()
    }
    content = {
        "schema": SCHEMA,
        "answers": given,
        "left_open": [key for key in QUESTIONS if key in kept.left_open],
        "stage": kept.stage,
    }
    return json.dumps(content, indent=1, ensure_ascii=False, allow_nan=False) + "\n"


def put(path: Path, text: str) -> None:
    """Write a text beside its place, then move it there: what stood there stays until then.

    Args:
        path: where it is to be; a link is followed.
        text: all of it.

    Raises:
        InputError: it cannot be written.
    """
    try:
        swap_in(path, text.encode("utf-8"))
    except (OSError, ValueError) as error:
        message = f"cannot be written: {reason_of(error)}"
        raise InputError(message, Place(str(path))) from error


def _object(text: str, name: str) -> dict[str, Any]:
    raw = read_json(text, name)
    if not isinstance(raw, dict):
        raise CardError(_EXPECTED, Place(name))
    return raw


def _asked(key: object, name: str, place: str) -> Question:
    if isinstance(key, str) and key in QUESTIONS:
        return QUESTIONS[key]
    message = "no question is called so"
    if isinstance(key, str):
        message = f"no question is called '{key}'{_nearest(key, QUESTIONS)}"
    raise _wrong(name, place, message)


def _answer(question: Question, raw: object, name: str, place: str) -> Answer:
    """Read one answer as it is kept: whole keys, no numbers of choices, and a unit."""
    if question.form == "several":
        if not isinstance(raw, list):
            raise _wrong(name, place, 'expected a list of choices, such as ["tub"], or []')
        chosen = [_choice(question.choices, one, name, place) for one in raw]
        return tuple(choice for choice in question.choices if choice in chosen)
    if question.form == "quantity":
        return _quantity(question, raw, name, place)
    choices = ("yes", "no") if question.form == "yes or no" else question.choices
    return _choice(choices, raw, name, place)


def _quantity(question: Question, raw: object, name: str, place: str) -> Answer:
    try:
        if isinstance(raw, str):
            return read_answer(question, raw)
    except NotUnderstood as why:
        if why.key == "outside":
            raise _wrong(name, place, f"'{raw}' is outside what is believed of it") from None
    message = f"expected a {question.dimension} with its unit, in quotes"
    raise _wrong(name, place, message)


def _choice(choices: Iterable[str], raw: object, name: str, place: str) -> str:
    known = tuple(choices)
    if isinstance(raw, str) and raw in known:
        return raw
    said = f"'{raw}'" if isinstance(raw, str) else "this"
    near = _nearest(raw, known) if isinstance(raw, str) else ""
    raise _wrong(name, place, f"{said} is no choice here{near or f'; expected {_one_of(known)}'}")


def _one_of(known: tuple[str, ...]) -> str:
    return ", ".join(f"'{choice}'" for choice in known)


def _nearest(word: str, known: Iterable[str] | Mapping[str, object]) -> str:
    found = get_close_matches(word, list(known), n=1, cutoff=0.6)
    return f"; did you mean '{found[0]}'?" if found else ""


def _wrong(name: str, field: str, message: str) -> CardError:
    return CardError(printable(message), Place(name, None, printable(field)))

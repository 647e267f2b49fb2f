"""The record of a job: what was really done, as the bay wrote it down."""

import json
from datetime import datetime
from os import PathLike
from typing import Any, Literal

from pydantic import BaseModel, ConfigDict, Field, ValidationError, model_validator

from wintertight.coach.faults import faults_of, field_named, printable
from wintertight.coach.read_toml import read_file
from wintertight.errors import Place, RecordError, SyntaxFault, UnreadableFile

DEEPEST = 32
"""Deepest nesting of a record that is read."""

Result = Literal["done", "skipped", "failed", "not on this coach"]
ReadingKind = Literal[
    "freezing point", "glycol share", "pressure", "temperature", "looks pink"
]


class Entry(BaseModel):
    """What every table of a record has in common: frozen, and no field is unknown."""

    model_config = ConfigDict(frozen=True, extra="forbid", allow_inf_nan=False)


class Reading(Entry):
    """One reading of an instrument or an eye."""

    kind: ReadingKind
    value: float | bool | None = None
    unit: str | None = None
    sd: float | None = Field(None, ge=0.0)


class Event(Entry):
    """One thing that was done, or was not."""

    id: str
    seq: int
    device: str | None = None
    step: str | None = None
    action: str | None = None
    part: str | None = None
    setting: str | None = None
    result: Result
    why: str | None = None
    at_s: float | None = Field(None, ge=0.0)
    first_colour_s: float | None = Field(None, ge=0.0)
    run_on_s: float | None = Field(None, ge=0.0)
    volume_m3: float | None = Field(None, ge=0.0)
    jugs_left: float | None = Field(None, ge=0.0)
    reading: Reading | None = None

    @model_validator(mode="before")
    @classmethod
    def _says_what(cls, raw: Any) -> Any:
        if isinstance(raw, dict) and not raw.get("step") and not raw.get("action"):
            message = "expected a step or an action: what was done?"
            raise ValueError(message)
        return raw


class Record(Entry):
    """The record of one job."""

    format: Literal["wintertight/record/1"] = Field(alias="schema")
    card_hash: str | None = None
    engine: str | None = None
    started: datetime | None = None
    product: str | None = None
    events: tuple[Event, ...]

    def in_order(self) -> tuple[Event, ...]:
        """Give the events in the order of their device's count, each id once."""
        once = {event.id: event for event in sorted(self.events, key=lambda e: (e.seq, e.id))}
        return tuple(sorted(once.values(), key=lambda e: (e.seq, e.id)))


def load_record(path: str | PathLike[str]) -> Record:
    """Read a record from a JSON file.

    Args:
        path: the file, UTF-8, at most 4 MB, nested at most 32 deep.

    Returns:
        The record.

    Raises:
        UnreadableFile: missing, a folder, not UTF-8, too large or nested too deep.
        SyntaxFault: not JSON.
        RecordError: a field is missing, unknown or wrong.
    """
    return read_record(read_file(path), str(path))


def read_record(text: str, name: str = "record") -> Record:
    """Read a record from its text; errors as in ``load_record``."""
    try:
        raw = json.loads(text)
    except json.JSONDecodeError as error:
        message = f"not JSON: {error.msg.lower()}"
        raise SyntaxFault(message, Place(name, error.lineno)) from error
    except RecursionError as error:
        message = f"nested too deep; expected at most {DEEPEST} levels"
        raise UnreadableFile(message, Place(name)) from error
    if _depth(raw) > DEEPEST:
        message = f"nested too deep; expected at most {DEEPEST} levels"
        raise UnreadableFile(message, Place(name))
    try:
        return Record.model_validate(raw)
    except ValidationError as error:
        fault = faults_of(error, Record)[0]
        place = Place(name, None, printable(field_named(fault.path, raw)))
        raise RecordError(printable(fault.message), place) from None


def _depth(raw: object) -> int:
    """Give how deep lists and objects are nested, without recursion."""
    deepest, level = 0, [raw]
    while level:
        deepest += 1
        level = [
            inner
            for outer in level
            if isinstance(outer, dict | list)
            for inner in (outer.values() if isinstance(outer, dict) else outer)
        ]
    return deepest - 1

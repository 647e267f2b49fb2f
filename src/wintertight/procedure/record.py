"""The record of a job: what was really done, as the bay wrote it down."""

from datetime import datetime
from os import PathLike
from typing import Annotated, Any, Literal, TypeVar, get_args

from pydantic import (
    BaseModel,
    ConfigDict,
    Field,
    StrictBool,
    StrictFloat,
    StrictInt,
    ValidationError,
    model_validator,
)

from wintertight.coach.card import card_error
from wintertight.coach.faults import faults_of, field_named, printable
from wintertight.coach.read_json import read_json
from wintertight.coach.read_toml import read_file
from wintertight.errors import Place, RecordError

LONGEST_S = 366.0 * 86400.0
"""Longest time any job is taken to last [s]."""

MOST_M3 = 10.0
"""Most fluid one event is taken to speak of [m3]."""

Result = Literal["done", "skipped", "failed", "not on this coach"]
ReadingKind = Literal[
    "freezing point",
    "glycol share",
    "pressure",
    "temperature",
    "looks pink",
    "freeze sample",
    "share eaten",
]
Instrument = Literal[
    "refractometer", "hydrometer", "test strip", "freezer", "gauge", "thermometer", "eye"
]

REPLACE_ANODE = "replace anode"
"""An action that a record may hold and no plan asks for."""

Seconds = Annotated[StrictFloat | None, Field(ge=0.0, le=LONGEST_S)]


class Entry(BaseModel):
    """What every table of a record has in common: frozen, and no field is unknown."""

    model_config = ConfigDict(frozen=True, extra="forbid", allow_inf_nan=False)


class Reading(Entry):
    """One reading of an instrument or an eye.

    Attributes:
        kind: what was read.
        value: what was shown; of a freeze sample the temperature of the freezer.
        unit: unit of the value.
        sd: standard deviation of the value, in its unit; None where nobody said.
        instrument: what it was read with; None where nobody said.
        zeroed: whether a refractometer was zeroed on water before; None where nobody said.
        of: "jug" where a cup from the fresh jug was read, else it is of a part.
        looked: how a freeze sample looked.
    """

    kind: ReadingKind
    value: StrictBool | StrictFloat | None = None
    unit: str | None = None
    sd: StrictFloat | None = Field(default=None, ge=0.0)
    instrument: Instrument | None = None
    zeroed: StrictBool | None = None
    of: Literal["jug"] | None = None
    looked: Literal["liquid", "slush", "solid"] | None = None


class Event(Entry):
    """One thing that was done, or was not."""

    id: str
    seq: StrictInt
    device: str | None = None
    step: str | None = None
    action: str | None = None
    part: str | None = None
    setting: str | None = None
    result: Result
    why: str | None = None
    at_s: Seconds = None
    first_colour_s: Seconds = None
    run_on_s: Seconds = None
    volume_m3: StrictFloat | None = Field(default=None, ge=0.0, le=MOST_M3)
    jugs_left: StrictFloat | None = Field(default=None, ge=0.0)
    reading: Reading | None = None

    @model_validator(mode="before")
    @classmethod
    def _says_what(cls, raw: Any) -> Any:
        if isinstance(raw, dict) and not raw.get("step") and not raw.get("action"):
            message = "expected a step or an action: what was done?"
            raise card_error(message)
        return raw


class Record(Entry):
    """The record of one job."""

    format: Literal["wintertight/record/1"] = Field(alias="schema")
    card_hash: str | None = None
    engine: str | None = None
    started: datetime | None = None
    product: str | None = None
    method: str | None = None
    events: tuple[Event, ...]

    def in_order(self) -> tuple[Event, ...]:
        """Give the events in the order of their count, each id once.

        Equal counts of several devices follow their clocks, then the devices' names; those of one
        device stay as it wrote them.
        """
        once = {event.id: event for event in self.events}
        return tuple(sorted(once.values(), key=_when))


def _when(event: Event) -> tuple[int, float, str]:
    at = event.at_s if event.at_s is not None else LONGEST_S
    return event.seq, at, event.device or ""


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
    record = read_entries(Record, text, name, '"events": [...]')
    _check_ids(record, name)
    return record


Kind = TypeVar("Kind", bound=Entry)


def read_entries(model: type[Kind], text: str, name: str, example: str) -> Kind:
    """Read a JSON file of one of the formats that the bay writes.

    Args:
        model: what it holds; its field ``format`` names the format.
        text: the text of the file.
        name: what to call it in an error.
        example: what comes after its schema, for the message.

    Returns:
        What it says.

    Raises:
        UnreadableFile: nested too deep.
        SyntaxFault: not JSON.
        RecordError: a field is missing, unknown or wrong.
    """
    raw = read_json(text, name)
    if not isinstance(raw, dict):
        (schema,) = get_args(model.model_fields["format"].annotation)
        message = f'expected an object: {{"schema": "{schema}", {example}}}'
        raise RecordError(message, Place(name))
    try:
        return model.model_validate(raw)
    except ValidationError as error:
        fault = faults_of(error, model)[0]
        place = Place(name, None, printable(field_named(fault.path, raw)))
        raise RecordError(printable(fault.message), place) from None


def _check_ids(record: Record, name: str) -> None:
    """Refuse an id that stands for two different events; one sent twice is no harm."""
    seen: dict[str, Event] = {}
    for event in record.events:
        if seen.setdefault(event.id, event) != event:
            message = f"a second event, and a different one, has the id '{printable(event.id)}'"
            raise RecordError(message, Place(name, None, f"events[{printable(event.id)}].id"))

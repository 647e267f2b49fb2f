"""What was found in spring: which parts had burst, how the cracks look, what the winter was."""

from datetime import date
from os import PathLike
from typing import Annotated, Any, Literal

from pydantic import BeforeValidator, Field, StrictBool

from wintertight.coach.card import card_error
from wintertight.coach.quantity import DegreesCelsius
from wintertight.coach.read_toml import read_file
from wintertight.procedure.record import Entry, read_entries

Crack = Literal["fresh", "limed", "unknown"]

MOST_BURST = 200
"""Most parts one file may name."""


def _day(raw: Any) -> date:
    try:
        return date.fromisoformat(raw)
    except (TypeError, ValueError):
        message = 'expected a day in quotes, such as "2026-04-11"'
        raise card_error(message) from None


Day = Annotated[date, BeforeValidator(_day)]


class Burst(Entry):
    """One part that had burst.

    Attributes:
        part: id of the line or fitting.
        crack: fresh; limed, which is scale or stain in the crack; or unknown.
        worn: whether it was brittle, corroded or worn through; None where nobody said.
        note: anything else worth knowing.
    """

    part: str = Field(description="id of a line or fitting of the card")
    crack: Crack = "unknown"
    worn: StrictBool | None = None
    note: str | None = None


class Found(Entry):
    """What was found.

    Attributes:
        found: the day.
        burst: the parts.
        lowest_degC: lowest temperature the coach saw [degC]; None where not known.
        water_since: outlets at which water ran after the coach was winterized; None where not
            known, none where somebody asked and there were none.
        heated: compartments said to have stayed heated all winter; None where nobody said.
    """

    format: Literal["wintertight/found/1"] = Field(alias="schema", description="this format")
    found: Day = Field(description='the day, such as "2026-04-11"')
    burst: tuple[Burst, ...] = Field(
        min_length=1, max_length=MOST_BURST, description="the parts that had burst"
    )
    lowest_degC: DegreesCelsius | None = Field(default=None, alias="lowest")
    water_since: tuple[str, ...] | None = None
    heated: tuple[str, ...] | None = None


def load_found(path: str | PathLike[str]) -> Found:
    """Read what was found from a JSON file; errors as in ``record.load_record``."""
    return read_found(read_file(path), str(path))


def read_found(text: str, name: str = "found") -> Found:
    """Read what was found from its text; errors as in ``record.load_record``."""
    return read_entries(Found, text, name, '"found": "2026-04-11", "burst": [...]')

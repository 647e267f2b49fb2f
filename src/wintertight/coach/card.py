"""The coach's card: what this coach has, where it is, and how sure we are of each value.

The names in these classes are SI and words of the trade; the alias of a field is how the card's
TOML file spells it. Fields are read here; whether they make plumbing together is asked in
`wintertight.coach.plumbing`.
"""

import hashlib
import json
from collections.abc import Mapping
from dataclasses import dataclass
from difflib import get_close_matches
from functools import cached_property
from types import MappingProxyType
from typing import Annotated, Any, Literal, Self

from pydantic import (
    AfterValidator,
    BaseModel,
    BeforeValidator,
    ConfigDict,
    Field,
    StrictBool,
    StrictInt,
    StringConstraints,
    WithJsonSchema,
    model_validator,
)
from pydantic_core import PydanticCustomError

from wintertight.coach.kind_fields import FIELD_KINDS, kinds_with
from wintertight.coach.kinds import KINDS
from wintertight.coach.position import Position
from wintertight.coach.quantity import (
    DegreesCelsius,
    Flow,
    Length,
    Metres,
    MetresAboveZero,
    Pressure,
    Quantity,
    Seconds,
    Volume,
)
from wintertight.coach.tubing import bore as bore_of

SCHEMA = "wintertight/card/1"

Seen = Literal["present", "absent", "not looked at"]
PositionUse = Literal["normal", "antifreeze", "heater bypass", "city water", "tank fill", "flush"]
Access = Literal["in view", "behind a panel", "sealed"]
HeaterTank = Literal["steel with anode", "aluminum", "stainless steel"]
HeatSource = Literal["burner", "element", "coolant"]
CoachKind = Literal[
    "travel trailer",
    "fifth wheel",
    "folding trailer",
    "park trailer",
    "truck camper",
    "camper van",
    "motorhome",
    "bus",
    "other",
]

Text = Annotated[str, StringConstraints(min_length=1, max_length=400, strip_whitespace=True)]


def _nominal(size: str) -> str:
    return size.removesuffix("in").removesuffix('"').strip()


Size = Annotated[Text, AfterValidator(_nominal)]
Id = Annotated[str, StringConstraints(pattern=r"^[A-Za-z0-9][A-Za-z0-9_-]{0,63}$")]


def card_error(message: str, within: str | int = "") -> PydanticCustomError:
    """Make the error pydantic carries for a wrong field; `within` is the key at fault."""
    return PydanticCustomError("WT-120", "{text}", {"text": message, "within": within})


def nearest(name: str, names: Mapping[str, object] | frozenset[str]) -> str:
    """Give "; did you mean 'x'?" for the name most like this one, or nothing."""
    found = get_close_matches(name, list(names), n=1, cutoff=0.6)
    return f"; did you mean '{found[0]}'?" if found else ""


def _known_kind(kind: str) -> str:
    if kind not in KINDS:
        message = f"no kind of fitting is called '{kind}'{nearest(kind, KINDS)}"
        raise card_error(message)
    return kind


KindName = Annotated[str, AfterValidator(_known_kind), Field(json_schema_extra={"enum": [*KINDS]})]


@dataclass(frozen=True, slots=True)
class End:
    """One end of a line: a fitting, and the port of it where the line joins ("" if unnamed)."""

    fitting: str
    port: str = ""

    def __str__(self) -> str:
        """Spell it as a card does: pump.out, or suction-tee."""
        return f"{self.fitting}.{self.port}" if self.port else self.fitting

    @classmethod
    def read(cls, raw: object) -> Self:
        """Read "fitting" or "fitting.port"."""
        if isinstance(raw, cls):
            return raw
        if not isinstance(raw, str) or not raw:
            message = 'expected a fitting, or a fitting and its port: "pump.out"'
            raise card_error(message)
        fitting, _, port = raw.partition(".")
        return cls(fitting, port)


LineEnd = Annotated[
    End,
    BeforeValidator(End.read),
    WithJsonSchema({"type": "string", "examples": ["suction-tee", "pump.out"]}),
]


class Part(BaseModel):
    """What every table of a card has in common: it is frozen, and knows all of its fields."""

    model_config = ConfigDict(frozen=True, extra="forbid", validate_default=False)


class Coach(Part):
    """What kind of coach this is."""

    kind: CoachKind = Field(description="kind of coach")
    length: Length | None = Field(default=None, description="length over all")
    height: Length | None = Field(
        default=None, description="height on its wheels, with what stands on its roof"
    )
    year: StrictInt | None = Field(default=None, ge=1900, le=2100, description="model year")
    floor_above_ground: Length | None = Field(default=None, description="height of the floor")
    vin: Text | None = Field(default=None, description="vehicle identification number")
    note: Text | None = Field(default=None, description="anything else worth knowing")


class Site(Part):
    """Where the coach spends the winter."""

    name: Text = Field(description="what the place is called")
    design_low_degC: DegreesCelsius | None = Field(
        None, alias="design_low", description="coldest temperature to be safe at"
    )
    power: StrictBool | None = Field(default=None, description="is there mains power")
    water: StrictBool | None = Field(default=None, description="is there a water supply")
    dump: StrictBool | None = Field(
        default=None, description="is there a place to empty waste tanks"
    )
    note: Text | None = Field(default=None, description="anything else worth knowing")


class Antifreeze(Part):
    """What it is to be filled with."""

    product: Text = Field(description="name of the product in the shop's list")


class LookedFor(Part):
    """What somebody looked for and did not find."""

    absent: tuple[KindName, ...] = Field(default=(), description="kinds this coach does not have")


class LineDefaults(Part):
    """What is true of every line that does not say otherwise."""

    size: Size | None = Field(default=None, description="nominal size")
    material: Text | None = Field(default=None, description="what the tube is made of")


class Compartment(Part):
    """A room, cabinet or belly that has one temperature."""

    id: Id = Field(description="unique name of the compartment")
    name: Text | None = Field(default=None, description="what people call it")
    heated: StrictBool = Field(description="does the furnace keep it warm")
    closed: StrictBool | None = Field(
        default=None, description="is it closed in all round, so that no wind gets at what is in it"
    )
    note: Text | None = Field(default=None, description="anything else worth knowing")


class NamedPosition(Part):
    """A position of a many-way valve: which of its ports are joined."""

    name: Text = Field(description="what is written at the handle")
    joins: tuple[tuple[str, str], ...] = Field(description="pairs of ports that are joined")
    use: PositionUse | None = Field(default=None, description="what this position is for")


class Reached(Part):
    """How one gets at what is on the card; nothing of it changes what a plan proves."""

    panel: Text | None = Field(default=None, description="which panel is in front of it, and where")
    screws: StrictInt | None = Field(default=None, ge=0, le=200, description="screws of that panel")
    photo: Text | None = Field(default=None, description="file name of a picture of it")
    opening_s: Seconds | None = Field(
        default=None, alias="opening", description="how long it takes to get at it and back"
    )


class Fitting(Reached):
    """Anything that is not a plain length of tube."""

    id: Id = Field(description="unique name of the fitting")
    kind: KindName = Field(description="kind of fitting")
    name: Text | None = Field(default=None, description="what people call it")
    role: Text | None = Field(default=None, description="what a valve is for")
    seen: Seen = Field(default="present", description="was it looked for, and found")
    at: Position | None = Field(default=None, description="from the front, road side, and floor")
    at_within_m: MetresAboveZero = Field(
        default=0.1, alias="at_within", description="how far off each of the three may be"
    )
    compartment: Id | None = Field(default=None, description="id of the compartment it is in")
    access: Access | None = Field(default=None, description="how it can be reached")
    volume: Volume | None = Field(default=None, description="what it holds")
    flow: Flow | None = Field(default=None, description="open flow of a pump")
    cut_off: Pressure | None = Field(default=None, description="pressure at which a pump stops")
    tank: HeaterTank | None = Field(default=None, description="what a heater's tank is made of")
    heat: tuple[HeatSource, ...] = Field(default=(), description="what heats it")
    only: Literal["hot", "cold"] | None = Field(default=None, description="the one side it has")
    drains_to: Id | None = Field(default=None, description="id of the trap or tank below it")
    positions: tuple[NamedPosition, ...] = Field(
        default=(), description="what its handle can be set to"
    )
    makers_steps: tuple[Text, ...] = Field(
        default=(), description="its maker's own steps for winter"
    )
    note: Text | None = Field(default=None, description="anything else worth knowing")

    @model_validator(mode="after")
    def _only_its_own_fields(self) -> Self:
        for field, kinds in FIELD_KINDS.items():
            if field in self.model_fields_set and self.kind not in kinds:
                message = f"a {self.kind} has no '{field}'; it belongs to a {kinds_with(field)}"
                raise card_error(message, field)
        if self.at is None and self.seen == "present" and KINDS[self.kind].wetted:
            message = f"'at' is missing: where is the {self.kind}?"
            raise card_error(message)
        return self

    @property
    def ports(self) -> tuple[str, ...]:
        """Ports this fitting has: those of its kind, or its only side."""
        return (self.only,) if self.only else KINDS[self.kind].ports


class Line(Reached):
    """A length of tube between two fittings."""

    id: Id = Field(description="unique name of the line")
    start: LineEnd = Field(alias="from", description="fitting, and its port, at one end")
    end: LineEnd = Field(alias="to", description="fitting, and its port, at the other end")
    size: Size = Field(description="nominal size; may stand in line_defaults")
    material: Text = Field(description="what it is made of; may stand in line_defaults")
    length: Length = Field(description="developed length")
    bore: Length | None = Field(
        default=None, description="inside diameter, for a hose or tube that no standard lists"
    )
    bends: StrictInt = Field(default=0, ge=0, le=500, description="elbows and couplings inside it")
    volume: Volume | None = Field(default=None, description="what it holds, where that was learned")
    compartment: Id | None = Field(default=None, description="id of the compartment it runs in")
    start_height_m: Metres | None = Field(
        default=None, alias="from_height", description="height of this end, if not its fitting's"
    )
    end_height_m: Metres | None = Field(
        default=None, alias="to_height", description="height of that end, if not its fitting's"
    )
    lowest_m: Metres | None = Field(default=None, alias="low", description="lowest height along it")
    highest_m: Metres | None = Field(
        default=None, alias="high", description="highest height along it"
    )
    access: Access | None = Field(default=None, description="how it can be reached")
    note: Text | None = Field(default=None, description="anything else worth knowing")

    @property
    def largest_bore_m(self) -> float:
        """Bore that counts for fluid needed and water at risk [m]."""
        return self.bore.high if self.bore else bore_of(self.size, self.material).largest_bore_m

    @property
    def middle_bore_m(self) -> float:
        """Bore that is most likely [m]."""
        return self.bore.value if self.bore else bore_of(self.size, self.material).middle_bore_m


class Card(Part):
    """One coach: all that is known of its plumbing."""

    format: Literal["wintertight/card/1"] = Field(alias="schema", description="this format")
    id: Id = Field(description="the shop's number of the coach")
    name: Text = Field(description="what people call the coach")
    coach: Coach = Field(description="what kind of coach this is")
    site: Site | None = Field(default=None, description="where it spends the winter")
    antifreeze: Antifreeze | None = Field(default=None, description="what it is to be filled with")
    looked_for: LookedFor = Field(
        default=LookedFor(), description="what was looked for and not found"
    )
    line_defaults: LineDefaults = Field(default=LineDefaults(), description="what most lines are")
    compartments: tuple[Compartment, ...] = Field(
        default=(), alias="compartment", description="rooms"
    )
    fittings: tuple[Fitting, ...] = Field(alias="fitting", description="all fittings")
    lines: tuple[Line, ...] = Field(default=(), alias="line", description="all lines")

    @model_validator(mode="before")
    @classmethod
    def _fill_in_line_defaults(cls, raw: Any) -> Any:
        if not isinstance(raw, Mapping):
            return raw
        defaults, lines = raw.get("line_defaults"), raw.get("line")
        if not isinstance(defaults, Mapping) or not isinstance(lines, list | tuple):
            return raw
        known = {key: defaults[key] for key in LineDefaults.model_fields if key in defaults}
        filled = [{**known, **line} if isinstance(line, Mapping) else line for line in lines]
        return {**raw, "line": filled}

    @cached_property
    def fitting(self) -> Mapping[str, Fitting]:
        """Fittings by id."""
        return MappingProxyType({fitting.id: fitting for fitting in self.fittings})

    @cached_property
    def line(self) -> Mapping[str, Line]:
        """Lines by id."""
        return MappingProxyType({line.id: line for line in self.lines})

    @cached_property
    def compartment(self) -> Mapping[str, Compartment]:
        """Compartments by id."""
        return MappingProxyType({room.id: room for room in self.compartments})

    @cached_property
    def card_hash(self) -> str:
        """Hash of the card's meaning, "sha256:" and 64 hexadecimal digits.

        The order of fittings, lines and compartments, comments, notes, and the spelling of units
        do not change it.
        """
        text = json.dumps(meaning(self), sort_keys=True, separators=(",", ":"), ensure_ascii=True)
        return f"sha256:{hashlib.sha256(text.encode()).hexdigest()}"


HOW_TO_REACH = tuple(Reached.model_fields)
"""Fields that say how one gets at a fitting or a line."""

_NO_MEANING = frozenset({"note", "line_defaults", *HOW_TO_REACH})
_UNORDERED = frozenset({"fittings", "lines", "compartments", "absent", "heat", "positions"})


def meaning(value: object, field: str = "") -> object:
    """Give plain data that is equal for two cards, or values of a field, which mean the same."""
    if isinstance(value, BaseModel):
        pairs = {name: getattr(value, name) for name in type(value).model_fields}
        known = {k: v for k, v in pairs.items() if v is not None and k not in _NO_MEANING}
        return {name: meaning(inner, name) for name, inner in known.items()}
    if isinstance(value, tuple):
        items = [meaning(inner) for inner in value]
        return sorted(items, key=json.dumps) if field in _UNORDERED else items
    if isinstance(value, float):
        return f"{value + 0.0:.9g}"
    if isinstance(value, Quantity):
        return [meaning(value.value), value.how, meaning(value.spread)]
    if isinstance(value, Position):
        return [meaning(value.along_m), meaning(value.across_m), meaning(value.height_m)]
    return str(value) if isinstance(value, End) else value

"""Where a coach is worked on: the shop's bay and lot, a storage yard, an owner's driveway.

What a place has is written down once, in the shop's list. What is left out there is taken as such
a place usually is; that is common practice, and the record says which values were taken so. Which
methods are possible there is judged in `wintertight.procedure.place`.
"""

import math
from collections.abc import Mapping
from dataclasses import dataclass, field, fields, replace
from types import MappingProxyType
from typing import Annotated, Any, Literal, Self, get_args

from pydantic import BeforeValidator, Field, StrictBool, WithJsonSchema, model_validator
from pydantic_core import PydanticCustomError

from wintertight.coach.card import Part, Text, card_error
from wintertight.coach.quantity import MetresAboveZero, fault, read_plain
from wintertight.units import FOOT_M

PlaceKind = Literal["bay", "lot", "yard", "driveway"]
PlacePower = Literal["mains", "generator", "none"]

PLACE_KINDS: tuple[PlaceKind, ...] = get_args(PlaceKind)

STEEPEST = 0.15
"""A floor steeper than this is taken for a slip of the pen [1]; common practice."""


@dataclass(frozen=True, slots=True)
class Place:
    """One place of work, and what it has.

    Attributes:
        name: what people call it.
        kind: bay, lot, yard or driveway.
        power: mains, a generator, or none: then there is the coach's own battery only.
        water: is there a supply of town water?
        dump: is there a place to empty waste tanks?
        compressor: is a compressor at hand, with its regulator and its fitting for the inlet?
        lets_water_out: may clean water run off, to the ground or down a floor drain?
        catches_antifreeze: can antifreeze that drips or spills be caught?
        indoors: is it under a roof with walls, where no engine may run?
        heated: is it kept warm?
        slope_along: rise of the floor towards the rear of a coach that stands there as usual, per
            run [1]; a nose that stands high is negative. None where nobody has measured.
        slope_across: rise of the floor away from the road side of that coach, per run [1]; None
            where nobody has measured.
        door_height_m: clear height of the door or gate on the way in [m]. None: there is none, or
            indoors nobody has measured it.
        assumed: fields that nobody wrote down, taken as such a place usually is.
    """

    name: str
    kind: PlaceKind
    power: PlacePower
    water: bool
    dump: bool
    compressor: bool
    lets_water_out: bool
    catches_antifreeze: bool
    indoors: bool
    heated: bool
    slope_along: float | None = None
    slope_across: float | None = None
    door_height_m: float | None = None
    assumed: frozenset[str] = field(default=frozenset())


_HAS = tuple(
    f.name
    for f in fields(Place)
    if f.name not in {"name", "kind", "slope_along", "slope_across", "assumed"}
)
"""What a place has by its kind where nobody says otherwise; a slope is never assumed."""

_USUAL: Mapping[PlaceKind, Place] = MappingProxyType(
    {
        "bay": Place(
            name="bay",
            kind="bay",
            power="mains",
            water=True,
            dump=True,
            compressor=True,
            lets_water_out=True,
            catches_antifreeze=True,
            indoors=True,
            heated=True,
            door_height_m=14.0 * FOOT_M,
        ),
        "lot": Place(
            name="lot",
            kind="lot",
            power="generator",
            water=True,
            dump=True,
            compressor=True,
            lets_water_out=True,
            catches_antifreeze=False,
            indoors=False,
            heated=False,
        ),
        "yard": Place(
            name="yard",
            kind="yard",
            power="none",
            water=False,
            dump=False,
            compressor=False,
            lets_water_out=True,
            catches_antifreeze=False,
            indoors=False,
            heated=False,
        ),
        "driveway": Place(
            name="driveway",
            kind="driveway",
            power="mains",
            water=True,
            dump=False,
            compressor=False,
            lets_water_out=True,
            catches_antifreeze=False,
            indoors=False,
            heated=False,
        ),
    }
)
"""What a place of each kind usually has: common practice. A door of 14 ft is a common bay's."""


def usual_place(kind: PlaceKind, name: str = "") -> Place:
    """Give a place of a kind about which nothing else is known.

    Args:
        kind: bay, lot, yard or driveway.
        name: what people call it; the kind's own name where empty.

    Returns:
        The place as such places usually are; everything it has is marked as assumed.

    Example:
        >>> usual_place("yard").power, usual_place("yard").slope_along is None
        ('none', True)

    Sources: common-practice.
    """
    return replace(_USUAL[kind], name=name or kind, assumed=frozenset(_HAS))


def _read_slope(raw: object) -> float:
    """Read a rise per run, which may fall: "2 %", "-1.5 %"."""
    plain, falls = raw, False
    if isinstance(raw, str):
        text = raw.strip().replace("\u2212", "-")
        plain, falls = text.removeprefix("-"), text.startswith("-")
    elif isinstance(raw, int | float) and not isinstance(raw, bool):
        plain, falls = abs(raw), raw < 0.0
    try:
        value = read_plain(plain, "share")
    except PydanticCustomError:
        value = math.inf
    if value > STEEPEST:
        message = f'expected a slope up to {STEEPEST:.0%} either way, such as "2 %" or "-1.5 %"'
        raise fault(message)
    return 0.0 - value if falls else value


Slope = Annotated[
    float,
    BeforeValidator(_read_slope),
    WithJsonSchema({"type": "string", "examples": ["2 %", "-1.5 %"]}),
]


class WrittenPlace(Part):
    """A place as the shop's list writes it; what is left out is as usual for its kind."""

    name: Text = Field(description="what people call the place")
    kind: PlaceKind = Field(description="bay, lot, yard or driveway")
    power: PlacePower | None = Field(default=None, description="mains, generator or none")
    water: StrictBool | None = Field(default=None, description="is there town water")
    dump: StrictBool | None = Field(default=None, description="can waste tanks be emptied")
    compressor: StrictBool | None = Field(default=None, description="is a compressor at hand")
    lets_water_out: StrictBool | None = Field(
        default=None, description="may clean water run off, to the ground or a floor drain"
    )
    catches_antifreeze: StrictBool | None = Field(
        default=None, description="can antifreeze that drips or spills be caught"
    )
    indoors: StrictBool | None = Field(default=None, description="does it have roof and walls")
    heated: StrictBool | None = Field(default=None, description="is it kept warm")
    slope_along: Slope | None = Field(
        default=None, description="rise of the floor towards the rear of a coach that stands there"
    )
    slope_across: Slope | None = Field(
        default=None, description="rise of the floor away from that coach's road side"
    )
    door_height: MetresAboveZero | None = Field(
        default=None, description="clear height of the door or gate"
    )

    @model_validator(mode="after")
    def _warm_places_have_walls(self) -> Self:
        place = self.place()
        if place.heated and not place.indoors:
            at = "heated" if self.heated else "indoors"
            message = "a place that is kept warm is indoors; expected indoors = true with it"
            raise card_error(message, at)
        return self

    def place(self) -> Place:
        """Give the place it describes."""
        written: dict[str, Any] = {
            name: value
            for name in type(self).model_fields
            if (value := getattr(self, name)) is not None and name != "door_height"
        }
        if self.door_height is not None:
            written["door_height_m"] = self.door_height
        elif self.indoors is False:
            # Nobody drives through the door of a place that has no walls.
            written["door_height_m"] = None
        if self.indoors is False and self.heated is None:
            written["heated"] = False
        assumed = frozenset(_HAS) - set(written)
        return replace(_USUAL[self.kind], **written, assumed=assumed)

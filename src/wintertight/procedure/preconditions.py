"""What is looked at on the lot before a coach gets its slot, and what that slot has to wait for.

Each thing is either found wrong or not looked at yet; what was found right is not told. Not looked
at is never taken for right: what would block the slot when wrong blocks it until it was looked at.
Times are common practice of the trade, but for the fresh tank, whose drain is computed.
"""

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from types import MappingProxyType
from typing import Literal

from wintertight.coach.card import Card, Fitting
from wintertight.coach.kinds import KINDS
from wintertight.coach.place import Place
from wintertight.errors import ChoiceError
from wintertight.flow.fittings.supply import TANK_HEEL
from wintertight.procedure.methods.table import FIRST_AID, METHODS
from wintertight.procedure.place import BY_COMPRESSOR, EMPTIES_WASTE, FILLING, ON_THE_PUMP
from wintertight.procedure.tank_drain import drain_time_s

Weight = Literal["blocks", "advises"]
Found = Literal["wrong", "to check"]
Slides = Literal["none", "out", "in"]
Value = float | str

KEYS: Mapping[str, tuple[str, ...]] = MappingProxyType(
    {
        "already frozen": (),
        "keys": (),
        "slides": (),
        "battery": (),
        "battery frozen": ("freezes_degC",),
        "waste tanks": (),
        "heater hot": (),
        "fresh tank": ("volume_m3",),
        "appliance": (),
    }
)
"""Every key of a precondition, and the names of its parameters."""

CHECK_S: Mapping[str, float] = MappingProxyType(
    {
        "already frozen": 600.0,
        "keys": 60.0,
        "slides": 60.0,
        "battery": 120.0,
        "battery frozen": 120.0,
        "waste tanks": 60.0,
        "heater hot": 60.0,
        "fresh tank": 60.0,
        "appliance": 60.0,
    }
)
"""Hands-on time of looking at it [s]; common practice."""

MEND_S: Mapping[str, float] = MappingProxyType(
    {
        "already frozen": 1200.0,
        "keys": 300.0,
        "slides": 300.0,
        "battery": 300.0,
        "battery frozen": 600.0,
        "waste tanks": 1200.0,
        "heater hot": 60.0,
        "fresh tank": 60.0,
        "appliance": 300.0,
    }
)
"""Hands-on time of putting it right [s]; common practice."""

DAY_S = 86400.0

CHARGES_S = 4.0 * 3600.0
"""Time a flat battery takes on a charger until it carries a job [s]; common practice."""

COOLS_S = 4.0 * 3600.0
"""Time a tank heater takes to cool by itself until it can be opened [s]; common practice."""

COOLED_THROUGH_S = 900.0
"""The same with cold town water run through it at a hot tap [s]; common practice."""

THAWS_S = DAY_S
"""Least time a frozen coach takes to thaw [s]: a day or two; common practice."""

FREEZING_DEGC = 0.0
"""Air at or below this may have frozen water in a coach that nobody heats [degC]."""

FLAT_BATTERY_FREEZES_DEGC = (20.0 - 32.0) / 1.8
"""Temperature near which a discharged flooded battery freezes [degC]: +20 F; common practice."""

SLIDES_NEVER = frozenset({"folding trailer", "truck camper", "camper van"})
"""Kinds of coach on which a slide-out is rare; common practice. Nobody is sent to look for one."""


@dataclass(frozen=True, slots=True)
class AsArrived:
    """What is known of a coach on the lot; None where nobody has looked.

    Attributes:
        keys: are all keys there?
        slides: are its slides out or in, or has it none?
        battery_charged: does the battery hold its charge?
        battery_flooded: has it liquid acid? A sealed one of another sort freezes elsewhere.
        waste_share: how full the fullest waste tank is [1].
        heat_off_s: time since the water heater was turned off [s]; infinite if it was not on.
        fresh_share: how full the fresh tank is [1].
        appliances_empty: are clothes, dishes and ice out of the machines?
        coldest_degC: coldest air since it was last heated or left its owner [degC].
        frozen: was it looked at for ice: did any turn up?
    """

    keys: bool | None = None
    slides: Slides | None = None
    battery_charged: bool | None = None
    battery_flooded: bool | None = None
    waste_share: float | None = None
    heat_off_s: float | None = None
    fresh_share: float | None = None
    appliances_empty: bool | None = None
    coldest_degC: float | None = None
    frozen: bool | None = None


NOT_LOOKED = AsArrived()
"""A coach at which nobody has looked yet."""


@dataclass(frozen=True, slots=True)
class Precondition:
    """One thing that is put right, or looked at, before the slot.

    Attributes:
        key: one of `KEYS`.
        weight: does the slot wait for it, or is it only advised?
        found: wrong, or still to be looked at.
        part: id of the fitting it is about; "" where it is about the coach.
        hands_s: hands-on time [s].
        waits_s: how long it then takes by itself [s]; at worst, where it is still to be looked at.
        params: what the sentence needs, by the names in `KEYS`.
    """

    key: str
    weight: Weight
    found: Found
    part: str = ""
    hands_s: float = 0.0
    waits_s: float = 0.0
    params: Mapping[str, Value] = field(default_factory=lambda: MappingProxyType({}))


@dataclass(frozen=True, slots=True)
class _Asked:
    card: Card
    method: str
    arrived: AsArrived
    place: Place | None

    def of_kind(self, *kinds: str) -> tuple[Fitting, ...]:
        """Give the fittings of some kinds that are there, or may be."""
        return tuple(f for f in self.card.fittings if f.kind in kinds and f.seen != "absent")

    def say(
        self,
        key: str,
        right: bool | None,  # noqa: FBT001 - what was found, None for not looked at
        weight: Weight = "blocks",
        part: str = "",
        waits_s: float = 0.0,
        **params: Value,
    ) -> Iterator[Precondition]:
        """Give a precondition unless it was found right."""
        if right is True:
            return
        found: Found = "to check" if right is None else "wrong"
        hands_s = CHECK_S[key] if right is None else MEND_S[key]
        yield Precondition(key, weight, found, part, hands_s, waits_s, MappingProxyType(params))


def preconditions(
    card: Card,
    method: str,
    arrived: AsArrived = NOT_LOOKED,
    place: Place | None = None,
) -> tuple[Precondition, ...]:
    """Say what has to be looked at or put right on the lot before a coach gets its slot.

    Args:
        card: the coach's card.
        method: one of the names in `wintertight.procedure.methods.table`.
        arrived: what is known of the coach as it stands there.
        place: where it will be worked on; None where that is not known yet.

    Returns:
        What was not found right, in the order in which it is looked at.

    Raises:
        ChoiceError: no method has this name.

    Sources: common-practice; calculated (drain of the fresh tank).
    """
    if method not in METHODS:
        message = f"no method is called '{method}'; expected one of {', '.join(METHODS)}"
        raise ChoiceError(message)
    asked = _Asked(card, method, arrived, place)
    return tuple(found for rule in _RULES for found in rule(asked))


def thaw_is_due(found: Iterable[Precondition]) -> bool:
    """Say whether a coach was found frozen: then "thaw" comes before any other method."""
    return any(p.key == "already frozen" and p.found == "wrong" for p in found)


def slot_waits_s(found: Iterable[Precondition]) -> float:
    """Give how long the slot waits at most: one pair of hands, then the longest of all waits.

    Args:
        found: what `preconditions` gave.

    Returns:
        The time [s]; 0 where nothing blocks.
    """
    blocking = [p for p in found if p.weight == "blocks"]
    return sum(p.hands_s for p in blocking) + max((p.waits_s for p in blocking), default=0.0)


def _frozen(asked: _Asked) -> Iterator[Precondition]:
    """A coach that stood in frost is taken as frozen until somebody has looked."""
    if asked.method in FIRST_AID:
        return
    coldest, frozen = asked.arrived.coldest_degC, asked.arrived.frozen
    if frozen is None and coldest is not None and coldest > FREEZING_DEGC:
        return
    frost = coldest is not None and coldest <= FREEZING_DEGC
    weight: Weight = "blocks" if frozen or frost else "advises"
    right = None if frozen is None else not frozen
    yield from asked.say("already frozen", right, weight, waits_s=THAWS_S)


def _keys(asked: _Asked) -> Iterator[Precondition]:
    yield from asked.say("keys", asked.arrived.keys)


def _slides(asked: _Asked) -> Iterator[Precondition]:
    slides = asked.arrived.slides
    if slides is None and asked.card.coach.kind in SLIDES_NEVER:
        return
    yield from asked.say("slides", None if slides is None else slides != "in")


def _battery(asked: _Asked) -> Iterator[Precondition]:
    """The pump hangs on the battery where the coach cannot be plugged in."""
    arrived = asked.arrived
    plugged_in = asked.place is not None and asked.place.power != "none"
    needed = asked.method in ON_THE_PUMP and bool(asked.of_kind("demand pump"))
    weight: Weight = "blocks" if needed and not plugged_in else "advises"
    yield from asked.say("battery", arrived.battery_charged, weight, waits_s=CHARGES_S)
    # A frozen one must be neither charged nor jumped, whatever it is wanted for.
    cold = arrived.coldest_degC is not None and arrived.coldest_degC <= FLAT_BATTERY_FREEZES_DEGC
    if cold and arrived.battery_charged is not True and arrived.battery_flooded is not False:
        yield from asked.say(
            "battery frozen", None, weight, waits_s=DAY_S, freezes_degC=FLAT_BATTERY_FREEZES_DEGC
        )


def _waste(asked: _Asked) -> Iterator[Precondition]:
    if asked.method not in EMPTIES_WASTE or not asked.of_kind("gray tank", "black tank"):
        return
    share = asked.arrived.waste_share
    yield from asked.say("waste tanks", None if share is None else share <= TANK_HEEL)


def _heater(asked: _Asked) -> Iterator[Precondition]:
    off_s = asked.arrived.heat_off_s
    whole_s = COOLS_S
    if asked.place is not None and asked.place.water:
        whole_s = COOLED_THROUGH_S
    rest_s = whole_s if off_s is None else min(max(COOLS_S - off_s, 0.0), whole_s)
    right = None if off_s is None else off_s >= COOLS_S
    for heater in asked.of_kind("tank heater"):
        yield from asked.say("heater hot", right, part=heater.id, waits_s=rest_s)


def _fresh_tank(asked: _Asked) -> Iterator[Precondition]:
    share = asked.arrived.fresh_share
    right = None if share is None else share <= TANK_HEEL
    for tank in asked.of_kind("fresh tank"):
        volume_m3 = tank.volume.value if tank.volume else KINDS[tank.kind].hollow_m3
        waits_s = drain_time_s(volume_m3, 1.0 if share is None else share)
        yield from asked.say(
            "fresh tank", right, part=tank.id, waits_s=waits_s, volume_m3=volume_m3
        )


def _appliances(asked: _Asked) -> Iterator[Precondition]:
    """A machine that runs a cycle of antifreeze must be empty; ice is only in the way."""
    fills = asked.method in FILLING | BY_COMPRESSOR
    for machine in asked.of_kind("washer", "dishwasher", "ice maker", "door dispenser"):
        cycles = machine.kind in {"washer", "dishwasher"}
        weight: Weight = "blocks" if cycles and fills else "advises"
        yield from asked.say("appliance", asked.arrived.appliances_empty, weight, part=machine.id)


_RULES: tuple[Callable[[_Asked], Iterator[Precondition]], ...] = (
    _frozen,
    _keys,
    _slides,
    _battery,
    _waste,
    _heater,
    _fresh_tank,
    _appliances,
)

"""What is readable on a card, and yet deserves a word.

A finding is a key and its parameters; the sentence is made where the language is known. None of
them refuses a card.
"""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field
from types import MappingProxyType

from wintertight.coach.card import Card, Fitting, Line
from wintertight.coach.kind_fields import SINKS, TWO_SIDED
from wintertight.coach.kinds import ASKED_FOR
from wintertight.coach.vin import FIRST_YEAR, has_right_check_digit, has_vin_shape, vin_check_digit

Value = str | float | int

KEYS: Mapping[str, tuple[str, ...]] = MappingProxyType(
    {
        "nobody has looked": ("kind",),
        "not looked at": ("kind",),
        "no trap": ("kind",),
        "no way to waste": ("kind",),
        "no shut-off": (),
        "several heaters": ("count",),
        "no bypass": (),
        "heater not isolated": ("missing",),
        "no low point": (),
        "no antifreeze inlet": (),
        "no tank suction": (),
        "valve without role": (),
        "no site": (),
        "design low missing": (),
        "design low implausible": ("design_low_degC",),
        "design low above freezing": ("design_low_degC",),
        "no product": (),
        "heights inconsistent": ("lowest_m", "highest_m"),
        "sag longer than line": ("length_m", "needed_m"),
        "outside the coach": ("along_m", "length_m"),
        "vin has a wrong shape": ("vin",),
        "vin check digit": ("vin", "expected"),
    }
)
"""Every key of a finding, and the names of its parameters."""

COLDEST_DEGC = -60.0
WARMEST_DEGC = 20.0
"""A design low outside these is taken for a slip of the pen; common practice."""


@dataclass(frozen=True, slots=True)
class Finding:
    """Something worth a word.

    Attributes:
        key: one of `KEYS`.
        part: id of the fitting or line; "" where it concerns the coach.
        params: what the sentence needs, by the names in `KEYS`.
    """

    key: str
    part: str = ""
    params: Mapping[str, Value] = field(default_factory=lambda: MappingProxyType({}))


def findings(card: Card) -> tuple[Finding, ...]:
    """Give everything on a card that deserves a word, in a fixed order of subjects.

    Args:
        card: a card whose plumbing was checked.

    Returns:
        The findings.
    """
    return tuple(finding for rule in _RULES for finding in rule(card))


def _finding(key: str, part: str = "", **params: Value) -> Finding:
    return Finding(key, part, MappingProxyType(params))


def present(card: Card, *kinds: str) -> list[Fitting]:
    """Give the fittings that were found, of these kinds or of any."""
    return [f for f in card.fittings if f.seen == "present" and (not kinds or f.kind in kinds)]


def _has_role(card: Card, role: str) -> bool:
    return any(fitting.role == role for fitting in present(card))


def _everything_looked_for(card: Card) -> Iterator[Finding]:
    listed = {fitting.kind for fitting in card.fittings} | set(card.looked_for.absent)
    for kind in ASKED_FOR:
        if kind not in listed:
            yield _finding("nobody has looked", kind=kind)
    for fitting in card.fittings:
        if fitting.seen == "not looked at":
            yield _finding("not looked at", fitting.id, kind=fitting.kind)


def _sinks_have_traps(card: Card) -> Iterator[Finding]:
    for sink in present(card, *SINKS):
        below = card.fitting.get(sink.drains_to or "")
        if below is None or below.kind != "trap" or below.seen == "absent":
            yield _finding("no trap", sink.id, kind=sink.kind)
    for trap in present(card, "trap"):
        if trap.drains_to is None:
            yield _finding("no way to waste", trap.id, kind=trap.kind)


def _outside_shower_has_shut_off(card: Card) -> Iterator[Finding]:
    """A shut-off without which no water gets to a side, for each side that the shower has."""
    for shower in present(card, "outside shower"):
        if not all(shut_off_before(card, shower.id, port) for port in shower.ports):
            yield _finding("no shut-off", shower.id)


def shut_off_before(card: Card, fitting_id: str, port: str) -> bool:
    """Tell whether some one shut-off keeps all water from a fitting.

    Args:
        card: the card.
        fitting_id: what stands at the end of a branch.
        port: its side, "" where it has only one.

    Returns:
        Whether there is a branch shut-off without which no water gets there.
    """
    valves = [f.id for f in present(card) if f.role == "branch shut-off"]
    begin = {line.id for line in card.lines if _joins(line, fitting_id, port)}
    return any(not _is_fed(card, begin, {fitting_id, valve}) for valve in valves)


def _is_fed(card: Card, lines: set[str], shut: set[str]) -> bool:
    """Follow lines from a branch back; tell whether water comes in without passing what is shut."""
    reached, edge = set(shut), set(lines)
    while edge:
        ends = {end.fitting for i in edge for end in (card.line[i].start, card.line[i].end)}
        fresh = ends - reached
        reached |= fresh
        if any(card.fitting[name].kind in COMES_IN for name in fresh):
            return True
        through = {name for name in fresh if card.fitting[name].kind not in TWO_SIDED}
        edge = {line.id for line in card.lines if {line.start.fitting, line.end.fitting} & through}
    return False


COMES_IN = frozenset({"demand pump", "city inlet"})
"""Where water comes into the lines."""


def _joins(line: Line, fitting_id: str, port: str | None = None) -> bool:
    ends = (line.start, line.end)
    return any(end.fitting == fitting_id and port in {None, end.port} for end in ends)


def _heater_can_be_bypassed(card: Card) -> Iterator[Finding]:
    heaters = present(card, "tank heater")
    if len(heaters) > 1:
        yield _finding("several heaters", heaters[1].id, count=len(heaters))
    for heater in present(card, "tank heater", "on-demand heater")[:1]:
        by_position = any(p.use == "heater bypass" for f in present(card) for p in f.positions)
        if by_position:
            continue
        if not _has_role(card, "heater bypass"):
            yield _finding("no bypass", heater.id)
        for role in ("heater cold", "heater hot"):
            if not _has_role(card, role) and _has_role(card, "heater bypass"):
                yield _finding("heater not isolated", heater.id, missing=role)


def _can_be_drained_and_filled(card: Card) -> Iterator[Finding]:
    if not present(card, "low point"):
        yield _finding("no low point")
    by_position = any(p.use == "antifreeze" for f in present(card) for p in f.positions)
    inlet = _has_role(card, "antifreeze inlet") or bool(present(card, "antifreeze hose"))
    if not inlet and not by_position:
        yield _finding("no antifreeze inlet")
    # Where the hose goes on the pump's own inlet, the tank's line is off it.
    if inlet and not by_position and not _has_role(card, "tank suction"):
        yield _finding("no tank suction")
    for valve in present(card, "ball valve"):
        if valve.role is None:
            yield _finding("valve without role", valve.id)


def _site_is_told(card: Card) -> Iterator[Finding]:
    low = card.site.design_low_degC if card.site is not None else None
    if card.site is None:
        yield _finding("no site")
    if low is None:
        yield _finding("design low missing")
    elif not COLDEST_DEGC <= low <= WARMEST_DEGC:
        yield _finding("design low implausible", design_low_degC=low)
    elif low > 0.0:
        yield _finding("design low above freezing", design_low_degC=low)
    if card.antifreeze is None:
        yield _finding("no product")


def _heights_agree(card: Card) -> Iterator[Finding]:
    for line in card.lines:
        ends = _end_heights_m(card, line)
        low = line.lowest_m if line.lowest_m is not None else min(ends, default=None)
        high = line.highest_m if line.highest_m is not None else max(ends, default=None)
        if low is None or high is None:
            continue
        if low > min(ends, default=high) or high < max(ends, default=low) or low > high:
            yield _finding("heights inconsistent", line.id, lowest_m=low, highest_m=high)
            continue
        needed = _length_up_and_down_m(ends, low, high)
        if line.length.high < needed - _SLACK_M:
            length = line.length.value
            yield _finding("sag longer than line", line.id, length_m=length, needed_m=needed)


_SLACK_M = 0.15
"""Heights are read to about half a foot [m]; common practice."""


def _end_heights_m(card: Card, line: Line) -> tuple[float, ...]:
    told = (line.start_height_m, line.end_height_m)
    fittings = (card.fitting[line.start.fitting], card.fitting[line.end.fitting])
    heights = [
        height if height is not None else (fitting.at.height_m if fitting.at else None)
        for height, fitting in zip(told, fittings, strict=True)
    ]
    return tuple(height for height in heights if height is not None)


def _length_up_and_down_m(ends: tuple[float, ...], low: float, high: float) -> float:
    """Give the shortest way from end to end that touches the lowest and the highest place [m]."""
    if len(ends) < 2:  # noqa: PLR2004 - a line has two ends
        return high - low
    first, last = sorted(ends)
    return (high - low) + (first - low) + (high - last)


def _stands_within_the_coach(card: Card) -> Iterator[Finding]:
    if card.coach.length is None:
        return
    length = card.coach.length.high
    for fitting in present(card):
        if fitting.at is not None and not -_SLACK_M <= fitting.at.along_m <= length:
            along = fitting.at.along_m
            yield _finding("outside the coach", fitting.id, along_m=along, length_m=length)


def _vin_is_right(card: Card) -> Iterator[Finding]:
    vin, year = card.coach.vin, card.coach.year
    if vin is None or (year is not None and year < FIRST_YEAR):
        return
    if not has_vin_shape(vin):
        yield _finding("vin has a wrong shape", vin=vin)
    elif not has_right_check_digit(vin):
        yield _finding("vin check digit", vin=vin, expected=vin_check_digit(vin))


_RULES: tuple[Callable[[Card], Iterator[Finding]], ...] = (
    _everything_looked_for,
    _sinks_have_traps,
    _outside_shower_has_shut_off,
    _heater_can_be_bypassed,
    _can_be_drained_and_filled,
    _site_is_told,
    _heights_agree,
    _stands_within_the_coach,
    _vin_is_right,
)

"""The five causes of a burst part, each weighed by itself against the record of the fall.

A cause is supported only where a line of the record, a finding or the engine says so; where the
record leaves something out that would settle it, it is open.
"""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from types import MappingProxyType
from typing import Literal

from wintertight.cold.burst import VERDICT_MARGIN_K
from wintertight.procedure.as_done import AsDone
from wintertight.procedure.found import Burst, Found
from wintertight.procedure.missed import RANK
from wintertight.procedure.record import Event, Record
from wintertight.proof.claims import NOTHING, PartProof

CauseName = Literal["missed", "used", "older", "colder", "wear"]
Weight = Literal["supported", "against", "open"]

WEIGHTS: Mapping[str, Weight] = MappingProxyType(
    {
        "missed: skipped": "supported",
        "missed: not recorded": "supported",
        "missed: elsewhere": "supported",
        "missed: gap": "supported",
        "missed: as planned": "supported",
        "missed: observed": "supported",
        "missed: proven": "against",
        "missed: unproven": "open",
        "missed: mild": "open",
        "missed: nothing recorded": "open",
        "missed: no proof": "open",
        "used: touched": "supported",
        "used: none": "against",
        "used: untouched": "against",
        "used: pumped": "open",
        "used: below": "open",
        "used: shut": "open",
        "used: no frost": "open",
        "used: not known": "open",
        "older: limed": "supported",
        "older: fresh": "against",
        "older: not known": "open",
        "colder: burst": "supported",
        "colder: not colder": "against",
        "colder: held": "against",
        "colder: margin": "open",
        "colder: unproven": "open",
        "colder: already open": "open",
        "colder: heated": "open",
        "colder: not known": "open",
        "colder: no proof": "open",
        "wear: worn": "supported",
        "wear: sound": "against",
        "wear: not known": "open",
    }
)
"""What each finding does to its cause; a cause is named before the colon."""

SAME_K = 1e-6
"""Temperatures closer than this are the same [K]."""


@dataclass(frozen=True, slots=True)
class NotDone:
    """A step that the record does not show as done.

    Attributes:
        n: its number in the plan.
        step: its id.
        result: what the record says of it; None where it does not speak of it.
        event: id of the record's line that says so.
    """

    n: int
    step: str
    result: str | None
    event: str | None


@dataclass(frozen=True, slots=True)
class Cause:
    """One cause, weighed.

    Attributes:
        name: which of the five.
        key: key of the sentence; ``WEIGHTS`` has its weight.
        params: what the sentence needs.
        steps: steps that were not done, where that is the finding.
    """

    name: CauseName
    key: str
    params: Mapping[str, float | str] = field(default_factory=lambda: NOTHING)
    steps: tuple[NotDone, ...] = ()

    @property
    def weight(self) -> Weight:
        """Whether it is supported, spoken against, or open."""
        return WEIGHTS[self.key]


@dataclass(frozen=True, slots=True)
class Water:
    """Where water came that ran after the coach was winterized.

    Attributes:
        touched: parts that it reached from the city inlet.
        shut: parts that no longer hold once the taps are shut after it.
        below: waste tanks into which what it reached drains.
        pumped: parts that it would have reached from the fresh tank.
    """

    touched: frozenset[str] = frozenset()
    shut: frozenset[str] = frozenset()
    below: frozenset[str] = frozenset()
    pumped: frozenset[str] = frozenset()


@dataclass(frozen=True, eq=False)
class Case:
    """Everything that the causes of one coach are weighed by.

    Attributes:
        done: the proof of the fall, and the plan it was done by.
        record: the record itself.
        found: what was found.
        undone: numbers of the plan's steps that were not done, by the parts they are done to.
        undone_anywhere: numbers of all steps of the plan that do something and were not done.
        fall: proof of each part of interest at the design low.
        planned: the same, had all been done as planned.
        at_lowest: the same as done, at the lowest temperature the coach saw; empty if not known.
        unmargined: the same without the margin of a verdict.
        water: where water came after the fall; None if not known.
        warm: parts in rooms that were said to have stayed heated.
    """

    done: AsDone
    record: Record
    found: Found
    undone: Mapping[str, tuple[int, ...]]
    undone_anywhere: tuple[int, ...]
    fall: Mapping[str, PartProof]
    planned: Mapping[str, PartProof]
    at_lowest: Mapping[str, PartProof]
    unmargined: Mapping[str, PartProof]
    water: Water | None
    warm: frozenset[str]


def weigh(case: Case, burst: Burst) -> tuple[Cause, ...]:
    """Weigh the five causes of one part.

    Args:
        case: what they are weighed by.
        burst: the part, and how its crack looks.

    Returns:
        The causes, always the same five in the same order.
    """
    return (
        _missed(case, burst.part),
        _used(case, burst.part),
        Cause("older", f"older: {_CRACKS[burst.crack]}"),
        _colder(case, burst.part),
        Cause("wear", f"wear: {_WORN[burst.worn]}"),
    )


_CRACKS = MappingProxyType({"limed": "limed", "fresh": "fresh", "unknown": "not known"})
_WORN: Mapping[bool | None, str] = MappingProxyType(
    {True: "worn", False: "sound", None: "not known"}
)


def _missed(case: Case, part: str) -> Cause:
    """Weigh whether something was left out in the fall."""
    proof = case.fall.get(part)
    low: dict[str, float | str] = {"low_degC": case.done.plan.low_degC}
    if not case.record.events:
        return Cause("missed", "missed: nothing recorded")
    if proof is None:
        return Cause("missed", "missed: no proof")
    if proof.safe is True:
        return Cause("missed", "missed: proven", low)
    coldest = case.at_lowest.get(part)
    if coldest is not None and (coldest.safe is True or _no_frost(case)):
        more = {"lowest_degC": case.found.lowest_degC or 0.0}
        return Cause("missed", "missed: mild", {**low, **more})
    if proof.reason == "observed otherwise":
        return Cause("missed", "missed: observed", {**low, "cause": proof.params["cause"]})
    key, steps = _left_out(case, part, proof)
    return Cause("missed", key, low, steps)


def _left_out(case: Case, part: str, proof: PartProof) -> tuple[str, tuple[NotDone, ...]]:
    """Give why a part is not proven: steps not done there, or elsewhere, or none that is known."""
    worse = RANK[case.planned[part].safe] > RANK[proof.safe]
    here = tuple(_not_done(case, case.undone.get(part, ()))) if worse else ()
    if here:
        skipped = any(step.result is not None for step in here)
        return "missed: skipped" if skipped else "missed: not recorded", here
    if proof.safe is None:
        return "missed: unproven", ()
    if not worse:
        return "missed: as planned", ()
    elsewhere = tuple(_not_done(case, case.undone_anywhere))
    return "missed: elsewhere" if elsewhere else "missed: gap", elsewhere


def _no_frost(case: Case) -> bool:
    """Tell whether not even water froze."""
    lowest = case.found.lowest_degC
    return lowest is not None and lowest - VERDICT_MARGIN_K > 0.0


def _not_done(case: Case, numbers: Iterable[int]) -> Iterator[NotDone]:
    """Give steps that were not done, with what the record says of them."""
    ids = {planned.n: planned.step.id for planned in case.done.planned.steps}
    said = {event.step: event for event in case.record.in_order() if event.step is not None}
    for n in numbers:
        event: Event | None = said.get(ids[n])
        yield NotDone(n, ids[n], event.result if event else None, event.id if event else None)


def _used(case: Case, part: str) -> Cause:
    """Weigh whether water has run there since."""
    water = case.water
    if water is None:
        return Cause("used", "used: not known")
    if not case.found.water_since:
        return Cause("used", "used: none")
    if part in water.touched and _no_frost(case):
        return Cause("used", "used: no frost", {"lowest_degC": case.found.lowest_degC or 0.0})
    sets = (
        ("touched", water.touched),
        ("shut", water.shut),
        ("below", water.below),
        ("pumped", water.pumped),
    )
    where = next((key for key, parts in sets if part in parts), "untouched")
    return Cause("used", f"used: {where}")


def _colder(case: Case, part: str) -> Cause:
    """Weigh whether it got colder than what the fall was meant for."""
    lowest, low = case.found.lowest_degC, case.done.plan.low_degC
    if lowest is None:
        return Cause("colder", "colder: not known")
    params: dict[str, float | str] = {"lowest_degC": lowest, "low_degC": low}
    if lowest >= low - SAME_K:
        return Cause("colder", "colder: not colder", params)
    return Cause("colder", f"colder: {_at_lowest(case, part)}", params)


def _at_lowest(case: Case, part: str) -> str:
    """Give what the engine says of a part that it got colder around than it was meant for."""
    proof = case.fall.get(part)
    if proof is None:
        return "no proof"
    if part in case.warm:
        return "heated"
    if proof.safe is not True:
        return "already open"
    at_lowest = case.at_lowest[part].safe
    if at_lowest is False:
        # Beyond doubt only if it bursts without the margin that every verdict keeps.
        return "burst" if case.unmargined[part].safe is False else "margin"
    return "held" if at_lowest else "unproven"

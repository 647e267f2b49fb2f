"""Something burst: which of five causes does the record of the fall support?

A step was missed, water has run since, the crack is older, it got colder than the design low, or
the part was worn. Each is weighed by itself: the record and what was found support it, speak
against it, or leave it open. Several may be supported, and none need be. What supports a cause does
not prove it, and no cause is a person: the record says what was done, not who is to blame.
"""

from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass, replace
from typing import Literal

from wintertight.coach.card import Card
from wintertight.coach.faults import printable
from wintertight.cold.burst import VERDICT_MARGIN_K
from wintertight.errors import ChoiceError, Place, RecordError
from wintertight.fluids.product import Product
from wintertight.procedure.as_done import AsDone, prove_record, proved_at
from wintertight.procedure.causes import Case, Cause, CauseName, Water, weigh
from wintertight.procedure.found import Burst, Found
from wintertight.procedure.hindsight.doubts import with_doubts
from wintertight.procedure.hindsight.explanations import Explanation
from wintertight.procedure.hindsight.look_back import look_back
from wintertight.procedure.missed import RANK
from wintertight.procedure.plan import Plan
from wintertight.procedure.record import Record
from wintertight.procedure.undone import undone_at, undone_steps
from wintertight.procedure.winter_use import WinterUse, after_use, parts_pumped, use_named
from wintertight.proof.claims import PartProof
from wintertight.proof.judge import Bench, prove_parts

Explained = Literal["supported", "open", "not explained"]
LookKey = Literal["not relieved", "sealed", "attested", "assumed", "no reading", "computed", "worn"]

STRENGTH = "reading glycol share"
"""Evidence of a reading that says how strong a content is; no other kind of reading does."""


@dataclass(frozen=True, eq=False)
class BurstPart:
    """One part that had burst.

    Attributes:
        burst: what was found at it.
        fall: its proof as the record left it, at the design low; None where there is none.
        at_lowest: the same at the lowest temperature the coach saw; None where not known.
        causes: the five causes.
        look_at: keys of what its claim rests on, where the record does not explain it.
    """

    burst: Burst
    fall: PartProof | None
    at_lowest: PartProof | None
    causes: tuple[Cause, ...]
    look_at: tuple[LookKey, ...]

    @property
    def supported(self) -> tuple[CauseName, ...]:
        """Causes that are supported."""
        return tuple(cause.name for cause in self.causes if cause.weight == "supported")

    @property
    def explained(self) -> Explained:
        """Whether a cause is supported, or some are open, or the record does not explain it."""
        if self.supported:
            return "supported"
        known = (cause for cause in self.causes if cause.name != "wear")
        return "not explained" if all(c.weight == "against" for c in known) else "open"


@dataclass(frozen=True, eq=False)
class Incident:
    """What burst, and what the record has to say of it.

    Attributes:
        done: the proof of the fall.
        found: what was found.
        parts: the parts that had burst, in the order of the file.
    """

    done: AsDone
    found: Found
    parts: tuple[BurstPart, ...]


def weigh_incident(  # noqa: PLR0913, PLR0917 - a coach, its record, what was found, and names
    card: Card,
    record: Record,
    found: Found,
    product: Product,
    low_degC: float,
    name: str = "record",
    found_name: str = "found",
) -> Incident:
    """Weigh the causes of every part that had burst.

    Args:
        card: the coach's card.
        record: what was done in the fall.
        found: what was found in spring.
        product: what the coach was filled with.
        low_degC: design low [degC].
        name: what to call the record in an error.
        found_name: what to call the other file in an error.

    Returns:
        The parts with their causes.

    Raises:
        RecordError: the record is of another card or names what does not exist, or what was found
            is at no part of the card, or before the record.
        ChoiceError: the coach cannot be planned.
    """
    use = _checked(card, record, found, found_name)
    done = prove_record(card, record, product, low_degC, name)
    known = {part.id for part in done.plan.parts} | {*card.fitting, *card.line}
    for n, burst in enumerate(found.burst, start=1):
        if burst.part not in known:
            message = f"no part of this coach is called '{burst.part}'"
            raise _fault(message, f"burst[{n}].part", found_name)
    done, told = look_back(done, product)
    case = _case(card, done, record, found, use, told.doubts if told else {})
    return Incident(done, found, tuple(_burst_part(case, burst) for burst in found.burst))


def _burst_part(case: Case, burst: Burst) -> BurstPart:
    fall = case.fall.get(burst.part)
    part = BurstPart(burst, fall, case.at_lowest.get(burst.part), weigh(case, burst), ())
    if part.explained != "not explained" or fall is None:
        return part
    return replace(part, look_at=tuple(_rests_on(burst, fall)))


def _rests_on(burst: Burst, proof: PartProof) -> Iterator[LookKey]:
    """Give what a claim rests on that somebody can still look at, the weakest first."""
    kinds = {evidence.kind for evidence in proof.evidence}
    if proof.pocket == "relieved" and not proof.relieved:
        yield "not relieved"
    if proof.pocket == "sealed":
        yield "sealed"
    if "assumed" in kinds:
        yield "assumed"
    if "attested" in kinds:
        yield "attested"
    if all(evidence.key != STRENGTH for evidence in proof.evidence):
        yield "no reading"
    if "computed" in kinds:
        yield "computed"
    if burst.worn is None:
        yield "worn"


# ---- what the causes are weighed by --------------------------------------------------------


def _case(  # noqa: PLR0913, PLR0917 - a coach, its record, and what was found
    card: Card,
    done: AsDone,
    record: Record,
    found: Found,
    use: WinterUse | None,
    doubts: Mapping[str, Explanation],
) -> Case:
    """Work out everything that the causes are weighed by, for the parts that had burst."""
    proven = {part.id for part in done.plan.parts}
    stands = {b.part: _stands_for(card, b.part, proven) for b in found.burst}
    undone = undone_at(done.plan, done.planned)
    lowest = found.lowest_degC

    def at(low_degC: float) -> Mapping[str, PartProof]:
        return _proofs(stands, with_doubts(proved_at(done, low_degC), doubts))

    at_lowest = {} if lowest is None else at(lowest)
    fall = _proofs(stands, done.plan.parts)
    cold = done.plan.low_degC if lowest is None else lowest
    return Case(
        done=done,
        record=record,
        found=found,
        undone={
            part: tuple(sorted({n for one in some for n in undone.get(one, ())}))
            for part, some in stands.items()
        },
        undone_anywhere=tuple(s.n for s in undone_steps(done.plan, done.planned) if s.step.actions),
        fall=fall,
        planned=_proofs(stands, done.planned.parts),
        at_lowest=at_lowest,
        unmargined={} if lowest is None else at(lowest + VERDICT_MARGIN_K),
        water=None if use is None else _water(done.plan, stands, use, cold, at_lowest or fall),
        warm=frozenset(part for part in stands if _room(card, part) in set(found.heated or ())),
    )


def _water(
    plan: Plan,
    stands: Mapping[str, tuple[str, ...]],
    use: WinterUse,
    cold_degC: float,
    was: Mapping[str, PartProof],
) -> Water:
    """Work out where water came that ran after the fall, and what no longer holds after it."""
    if not use.ran:
        return Water()
    card, network, end = plan.card, plan.careful.network, plan.careful.end
    after, wet = after_use(card, network, end, use)
    again = _proofs(stands, prove_parts(Bench(card, network, after, cold_degC, plan.product)))

    def reached(parts: frozenset[str]) -> frozenset[str]:
        return frozenset(part for part, some in stands.items() if not parts.isdisjoint(some))

    return Water(
        touched=reached(wet),
        shut=frozenset(p for p in again if was[p].safe is True and again[p].safe is not True),
        below=reached(_and_below(card, wet)),
        pumped=reached(parts_pumped(card, network, end, use)),
    )


def _stands_for(card: Card, part: str, proven: Collection[str]) -> tuple[str, ...]:
    """Give the part; for a fitting without a proof of its own, such as a tee, also its lines."""
    if part in proven:
        return (part,)
    return (part, *(k.id for k in card.lines if part in {k.start.fitting, k.end.fitting}))


def _proofs(
    stands: Mapping[str, tuple[str, ...]], parts: tuple[PartProof, ...]
) -> Mapping[str, PartProof]:
    """Give the proof of each part: the least safe of those that stand for it."""
    proofs = {part.id: part for part in parts}
    theirs = {part: [proofs[i] for i in some if i in proofs] for part, some in stands.items()}
    return {part: min(own, key=lambda p: RANK[p.safe]) for part, own in theirs.items() if own}


def _and_below(card: Card, parts: frozenset[str]) -> frozenset[str]:
    """Add the traps and tanks into which fittings drain."""
    below = {card.fitting[p].drains_to or p for p in parts if p in card.fitting}
    return parts if below <= parts else _and_below(card, parts | below)


def _room(card: Card, part: str) -> str | None:
    here = card.fitting.get(part.partition("/")[0]) or card.line.get(part)
    return None if here is None else here.compartment


# ---- what was found, checked ---------------------------------------------------------------


def _fault(message: str, where: str, name: str) -> RecordError:
    return RecordError(printable(message), Place(name, None, where))


def _checked(card: Card, record: Record, found: Found, name: str) -> WinterUse | None:
    """Refuse what cannot be, before anything is worked out; give the use of the winter."""
    if record.started is not None and found.found < record.started.date():
        message = f"expected a day after the record, which is of {record.started.date()}"
        raise _fault(message, "found", name)
    seen: set[str] = set()
    for n, burst in enumerate(found.burst, start=1):
        if burst.part in seen:
            message = f"'{burst.part}' is named a second time"
            raise _fault(message, f"burst[{n}].part", name)
        seen.add(burst.part)
    for n, room in enumerate(found.heated or (), start=1):
        if room not in card.compartment:
            there = ", ".join(card.compartment) or "none"
            message = f"no compartment is called '{room}'; there is {there}"
            raise _fault(message, f"heated[{n}]", name)
    if found.water_since is None:
        return None
    ran: list[str] = []
    for n, outlet in enumerate(found.water_since, start=1):
        try:
            ran += use_named(card, [outlet], []).ran
        except ChoiceError as error:
            raise _fault(error.message, f"water_since[{n}]", name) from None
    return WinterUse(tuple(dict.fromkeys(ran)))

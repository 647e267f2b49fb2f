"""The proof of what was really done: a record goes through the same engine as the plan."""

from collections.abc import Mapping
from dataclasses import dataclass, replace

from wintertight.coach.card import Card
from wintertight.coach.findings import findings
from wintertight.cold.burst import survives
from wintertight.errors import Place, RecordError
from wintertight.fluids.contents import Contents
from wintertight.fluids.glycol import liquidus_glycol, volume_share_glycol
from wintertight.fluids.product import Product
from wintertight.flow.build import build_network
from wintertight.flow.case import BEST
from wintertight.flow.replay import Trace, replay
from wintertight.flow.running import Until
from wintertight.flow.state import arriving_state
from wintertight.procedure.bands import Band, draw, fill_draws, handling_draws
from wintertight.procedure.plan import Plan, plan_coach, refused_orders
from wintertight.procedure.record import Event, Reading, Record
from wintertight.procedure.steps import PlannedStep, Step
from wintertight.proof.claims import Evidence, PartProof, verdict_of
from wintertight.proof.judge import Bench, prove_parts

SIGMAS = 2.0
"""A reading counts with so many standard deviations on its doubtful side [1]."""


@dataclass(frozen=True, eq=False)
class AsDone:
    """What a record proves.

    Attributes:
        plan: the same object as a plan, for what was really done.
        planned: the plan it was done by.
        unknown: ids of steps the record does not speak of; they count as not done.
        done: the steps that were done, in the order of the record.
    """

    plan: Plan
    planned: Plan
    unknown: tuple[str, ...]
    done: tuple[Step, ...]


def prove_record(
    card: Card,
    record: Record,
    product: Product,
    low_degC: float,
    name: str = "record",
) -> AsDone:
    """Prove what was really done.

    Args:
        card: the coach's card.
        record: what was done.
        product: what it was filled with.
        low_degC: design low [degC].
        name: what to call the record in an error.

    Returns:
        The proof. A step the record does not speak of was not done: unknown is never safe.

    Raises:
        RecordError: the record is of another card, or names a step or part that does not exist.
        ChoiceError: the coach cannot be planned.
    """
    if record.card_hash is not None and record.card_hash != card.card_hash:
        message = (
            f"the record is of another state of the card; expected {card.card_hash[:19]}...,"
            f" got {record.card_hash[:19]}..."
        )
        raise RecordError(message, Place(name, None, "card_hash"))
    planned = plan_coach(card, product, low_degC)
    by_id = {p.step.id: p for p in planned.steps}
    events = record.in_order()
    pairs = [(event, _step_of(event, by_id, name)) for event in events]
    done = tuple(_as_recorded(e, s) for e, s in pairs if e.result == "done")
    careful = planned.careful.network
    trace = replay(careful, arriving_state(careful), [a for s in done for a in s.actions])
    parts = prove_parts(Bench(card, careful, trace.end, low_degC, product))
    parts = tuple(_with_evidence(part, pairs, low_degC, product) for part in parts)
    best_network = build_network(card, BEST)
    best = replay(
        best_network, arriving_state(best_network), [a for s in done for a in s.actions]
    )
    steps = _steps_as_done(planned, done, pairs, best)
    used = fill_draws(draw(card), best, steps, 1.0 - product.contents().water)
    plan = replace(
        planned,
        verdict=verdict_of(parts),
        steps=steps,
        parts=parts,
        antifreeze=Band.of(used.antifreeze_m3),
        duration=Band.of(used.running_s + handling_draws(steps)),
        refused=refused_orders(card, careful, arriving_state(careful), done),
        findings=findings(card),
        balance=trace.balance,
        careful=trace,
        best=best,
    )
    spoken_of = {step.id for _, step in pairs}
    unknown = tuple(i for i, p in by_id.items() if i not in spoken_of and p.step.actions)
    return AsDone(plan, planned, unknown, done)


def _step_of(event: Event, by_id: Mapping[str, PlannedStep], name: str) -> Step:
    """Give the step an event speaks of: by its id, or by its action and part."""
    if event.step is not None:
        planned = by_id.get(event.step)
        if planned is not None:
            return planned.step
        message = f"no step is called '{event.step}'; expected a step of this coach's plan"
        raise RecordError(message, Place(name, None, f"events[{event.id}].step"))
    for planned in by_id.values():
        step = planned.step
        if step.key == event.action and (event.part is None or event.part == step.part):
            return step
    message = f"no step does '{event.action}' to '{event.part or 'anything'}'"
    raise RecordError(message, Place(name, None, f"events[{event.id}].action"))


def _as_recorded(event: Event, step: Step) -> Step:
    """Give the step with the run it really had."""
    if step.outlet is None or (event.run_on_s is None and event.volume_m3 is None):
        return step
    until = Until(run_on_s=event.run_on_s, volume_m3=event.volume_m3)
    if event.volume_m3 is not None:
        until = Until(volume_m3=event.volume_m3)
    actions = tuple(replace(a, until=until) if a.verb == "run" else a for a in step.actions)
    return replace(step, actions=actions)


def _steps_as_done(
    planned: Plan,
    done: tuple[Step, ...],
    pairs: list[tuple[Event, Step]],
    best: Trace,
) -> tuple[PlannedStep, ...]:
    seen = {m.action.part: m.outcome.run for m in best.moments if m.outcome.run}
    recorded = {step.id: event for event, step in pairs}
    kept = {p.step.id: p for p in planned.steps}
    found = []
    for n, step in enumerate(done, start=1):
        event = recorded[step.id]
        before = kept[step.id]
        run_on = event.run_on_s if event.run_on_s is not None else before.run_on_s
        run = seen[step.outlet] if step.outlet else None
        found.append(replace(before, n=n, step=step, run=run, run_on_s=run_on))
    return tuple(found)


def _with_evidence(
    part: PartProof,
    pairs: list[tuple[Event, Step]],
    low_degC: float,
    product: Product,
) -> PartProof:
    """Add what people ticked and what instruments read; a weaker reading decides."""
    for event, step in pairs:
        if _part_of(step.part) != part.id:
            continue
        if event.result == "done" and step.actions:
            more = Evidence("attested", "done as recorded", {"step": step.id})
            part = replace(part, evidence=(*part.evidence, more))
        if event.reading is not None:
            part = _with_reading(part, event.reading, low_degC, product)
    return part


def _part_of(control: str) -> str:
    """Give the part a control or outlet belongs to: kitchen.hot is the kitchen's."""
    return control.partition(".")[0].partition("/")[0]


def _with_reading(
    part: PartProof,
    reading: Reading,
    low_degC: float,
    product: Product,
) -> PartProof:
    """Let a reading speak on the doubtful side of its own uncertainty.

    It can take a claim away, and never carry one further than the engine does: of two rival results
    the less safe one counts.
    """
    share = _glycol_share(reading)
    if share is None:
        return replace(
            part, evidence=(*part.evidence, Evidence("measured", f"reading {reading.kind}"))
        )
    weak = max(0.0, share - SIGMAS * _share_sd(reading, share))
    evidence = Evidence("measured", "reading glycol share", {"share": share, "weakest": weak})
    part = replace(part, evidence=(*part.evidence, evidence))
    if weak >= part.worst.glycol:
        return part
    contents = Contents(glycol=weak)
    found = survives(
        contents, low_degC, part.pocket, relieved=part.relieved, product=product
    )
    if found.safe is True:
        return part
    return replace(
        part,
        worst=contents,
        freezing_point_degC=found.freezing_point_degC,
        ice_fraction=found.ice_fraction,
        claim="unproven",
        safe=found.safe,
        reason="reading is too weak",
        params={"share": share, "weakest": weak},
    )


def _glycol_share(reading: Reading) -> float | None:
    """Give a reading as glycol's share of the volume [1]; None where it says nothing of it."""
    if reading.value is None or isinstance(reading.value, bool):
        return None
    if reading.kind == "glycol share":
        return reading.value / 100.0 if reading.unit in {"%", "vol%", "percent"} else reading.value
    if reading.kind == "freezing point":
        return volume_share_glycol(liquidus_glycol(min(0.0, _celsius(reading))))
    return None


def _celsius(reading: Reading) -> float:
    value = float(reading.value or 0.0)
    fahrenheit = (reading.unit or "degC") in {"degF", "F", "°F"}
    return (value - 32.0) / 1.8 if fahrenheit else value


def _share_sd(reading: Reading, share: float) -> float:
    """Give the standard deviation of a reading as glycol share [1]; a usual one where not said."""
    usual = 0.01
    if reading.sd is None:
        return usual
    if reading.kind == "glycol share":
        return reading.sd / 100.0 if reading.unit in {"%", "vol%", "percent"} else reading.sd
    degrees = reading.sd / 1.8 if reading.unit in {"degF", "F", "°F"} else reading.sd
    warmer = min(0.0, _celsius(reading) + degrees)
    return abs(share - volume_share_glycol(liquidus_glycol(warmer)))


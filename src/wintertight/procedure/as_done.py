"""The proof of what was really done: a record goes through the same engine as the plan."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace

from wintertight.coach.card import Card
from wintertight.coach.edit import without_fitting
from wintertight.coach.faults import printable
from wintertight.coach.findings import findings
from wintertight.errors import Place, RecordError
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.replay import Trace
from wintertight.flow.state import arriving_state
from wintertight.flow.until import Until
from wintertight.fluids.product import Product
from wintertight.procedure.added import added_step
from wintertight.procedure.bands import Band, fill_draws, handling_draws
from wintertight.procedure.filled import fill_as_done
from wintertight.procedure.fresh_jug import is_of_jug, jug_readings
from wintertight.procedure.handling import HANDLING_S
from wintertight.procedure.instruments import check_reading
from wintertight.procedure.methods.table import FIRST_AID, METHODS
from wintertight.procedure.plan import Plan, plan_coach, refused_orders
from wintertight.procedure.readings import with_reading
from wintertight.procedure.record import REPLACE_ANODE, Event, Reading, Record
from wintertight.procedure.steps import PlannedStep, Step, part_of
from wintertight.proof.claims import Evidence, PartProof, verdict_of
from wintertight.proof.judge import Bench

Pairs = tuple[tuple[Event, Step], ...]


@dataclass(frozen=True, eq=False)
class AsDone:
    """What a record proves.

    Attributes:
        plan: the same object as a plan, for what was really done.
        planned: the plan it was done by.
        unknown: ids of steps the record does not speak of; they count as not done.
        done: the steps that were done, in the order of the record.
        events: every event, with its step as recorded.
        not_here: parts the record says are not on this coach, taken off the card.
        still_here: parts it says so of that cannot be taken off; they count as not done.
    """

    plan: Plan
    planned: Plan
    unknown: tuple[str, ...]
    done: tuple[Step, ...]
    events: Pairs
    not_here: tuple[str, ...] = ()
    still_here: tuple[str, ...] = ()


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
    as_on_card = plan_coach(card, product, low_degC, _method_of(record, name))
    card, not_here, still_here = _without_missing(card, record, as_on_card, name)
    planned = plan_coach(card, product, low_degC, as_on_card.method) if not_here else as_on_card
    by_id = {p.step.id: p for p in planned.steps}
    careful = planned.careful.network
    pairs = tuple(
        (event, _as_recorded(event, by_id, careful, product, name))
        for event in record.in_order()
        if event.action != REPLACE_ANODE
        if event.step is None or event.step in by_id or not _is_gone(event, as_on_card, not_here)
    )
    for event, _ in pairs:
        check_reading(event, name)
    done_pairs = tuple((event, step) for event, step in pairs if event.result == "done")
    done = tuple(step for _, step in done_pairs)
    jugs = jug_readings(pairs)
    filled = fill_as_done(card, careful, done, low_degC, product, jugs=jugs)
    trace, best, poured = filled.trace, filled.best, filled.bench.product or product
    parts = _with_evidence(filled.parts, pairs, filled.bench, poured, jugs)
    steps = tuple(_steps_as_done(by_id, done_pairs, best))
    used = fill_draws(filled.drawn, best, 1.0 - product.contents().water)
    blowing_s = sum(m.outcome.seconds for m in best.moments if m.action.verb == "blow")
    plan = replace(
        planned,
        verdict=verdict_of(parts),
        steps=steps,
        parts=parts,
        antifreeze=Band.of(used.antifreeze_m3),
        duration=Band.of(used.running_s + blowing_s + handling_draws(steps)),
        refused=refused_orders(card, careful, arriving_state(careful), done),
        findings=findings(card),
        balance=trace.balance,
        careful=trace,
        best=best,
        held_in=filled.held,
    )
    spoken_of = {step.id for _, step in pairs}
    unknown = tuple(i for i, p in by_id.items() if i not in spoken_of and p.step.actions)
    return AsDone(plan, planned, unknown, done, pairs, not_here, still_here)


def _without_missing(
    card: Card, record: Record, planned: Plan, name: str
) -> tuple[Card, tuple[str, ...], tuple[str, ...]]:
    """Take off the card what the record says is not on this coach."""
    by_id = {p.step.id: p for p in planned.steps}
    said = [
        part_of(event.part or _step_of(event, by_id, name).part)
        for event in record.in_order()
        if event.result == "not on this coach"
    ]
    not_here, still_here = list[str](), list[str]()
    for part in dict.fromkeys(said):
        edited = without_fitting(card, part)
        (still_here if edited is None else not_here).append(part)
        card = edited or card
    return card, tuple(not_here), tuple(still_here)


def _is_gone(event: Event, planned: Plan, not_here: tuple[str, ...]) -> bool:
    """Tell whether an event is about a part that was taken off the card."""
    steps = (p.step for p in planned.steps if p.step.id == event.step)
    return any(part_of(event.part or step.part) in not_here for step in steps)


def proved_at(done: AsDone, low_degC: float) -> tuple[PartProof, ...]:
    """Prove the same job, done as it was, at another cold.

    Args:
        done: the proof at the design low it was done for.
        low_degC: the other cold [degC].

    Returns:
        The proof of each part. What was not written down, such as how long an outlet ran on, is
        taken as planned for the design low, not for the other cold.
    """
    plan, jugs = done.plan, jug_readings(done.events)
    network = plan.careful.network
    filled = fill_as_done(plan.card, network, done.done, low_degC, plan.product, jugs=jugs)
    poured = filled.bench.product or plan.product
    return _with_evidence(filled.parts, done.events, filled.bench, poured, jugs)


def _method_of(record: Record, name: str) -> str:
    """Give the method a record is of; what is first aid proves nothing."""
    if record.method is None:
        return "pump"
    known = [method for method in METHODS if method not in FIRST_AID]
    if record.method not in known:
        message = f"expected a method that winterizes, one of {', '.join(known)}"
        raise RecordError(message, Place(name, None, "method"))
    return record.method


def _as_recorded(
    event: Event,
    by_id: Mapping[str, PlannedStep],
    network: CoachNetwork,
    product: Product,
    name: str,
) -> Step:
    """Give the step an event speaks of, with the setting and the run it really had."""
    added = added_step(event, network, product, name)
    if added is not None:
        return replace(added, id=f"added:{event.id}")
    step = _step_of(event, by_id, name)
    if event.setting is not None and step.setting and event.setting != step.setting:
        step = _set_otherwise(event, step, network, name)
    if step.outlet is None or (event.run_on_s is None and event.volume_m3 is None):
        return step
    until = Until(run_on_s=event.run_on_s)
    if event.volume_m3 is not None:
        until = Until(volume_m3=event.volume_m3)
    actions = tuple(replace(a, until=until) if a.verb == "run" else a for a in step.actions)
    return replace(step, actions=actions)


def _step_of(event: Event, by_id: Mapping[str, PlannedStep], name: str) -> Step:
    """Give the step an event speaks of: by its id, or by its action and part."""
    if event.step is not None:
        planned = by_id.get(event.step)
        if planned is None:
            message = f"no step is called '{event.step}'; expected a step of this coach's plan"
            raise _fault(event, "step", message, name)
        if not _is_done_to(planned.step, event.part):
            message = f"the step '{event.step}' is not done to '{event.part}'"
            raise _fault(event, "part", message, name)
        return planned.step
    found = [
        p.step
        for p in by_id.values()
        if p.step.key == event.action and _is_done_to(p.step, event.part)
    ]
    exact = [step for step in found if step.part == event.part] or found
    if len(exact) == 1:
        return exact[0]
    if exact:
        parts = ", ".join(step.part for step in exact)
        message = f"several steps do '{event.action}'; expected a part: {parts}"
        raise _fault(event, "part", message, name)
    message = f"no step does '{event.action}' to '{event.part or 'anything'}'"
    raise _fault(event, "action", message, name)


def _is_done_to(step: Step, part: str | None) -> bool:
    """Tell whether a part is one the step is done to; a reading may be taken anywhere."""
    if part is None or not step.part or part == step.part:
        return True
    return part in {a.part for a in step.actions} | {part_of(a.part) for a in step.actions}


def _set_otherwise(event: Event, step: Step, network: CoachNetwork, name: str) -> Step:
    """Give the step with one control set to what the record says instead."""
    part = event.part or step.part
    control = network.controls.get(part)
    theirs = [a for a in step.actions if a.verb == "set" and a.part == part]
    if control is None or not theirs or event.setting not in control.settings:
        message = f"expected the setting '{step.setting}', got '{event.setting}'"
        raise _fault(event, "setting", message, name)
    setting = event.setting or ""
    swapped = tuple(replace(a, setting=setting) if a in theirs else a for a in step.actions)
    return replace(step, actions=swapped, setting=setting)


def _fault(event: Event, field: str, message: str, name: str) -> RecordError:
    where = f"events[{printable(event.id)}].{field}"
    return RecordError(printable(message), Place(name, None, where))


def _steps_as_done(
    by_id: Mapping[str, PlannedStep], done: Pairs, best: Trace
) -> Iterator[PlannedStep]:
    moments = iter(best.moments)
    for n, (event, step) in enumerate(done, start=1):
        runs = [m.outcome.run for m in (next(moments) for _ in step.actions) if m.outcome.run]
        before = by_id.get(step.id) or PlannedStep(n, step, handling_s=HANDLING_S[step.key])
        run_on = event.run_on_s if event.run_on_s is not None else before.run_on_s
        run = runs[0] if step.outlet else None
        yield replace(before, n=n, step=step, run=run, run_on_s=run_on)


def _with_evidence(
    parts: tuple[PartProof, ...],
    pairs: Pairs,
    bench: Bench,
    product: Product,
    jugs: tuple[Reading, ...],
) -> tuple[PartProof, ...]:
    """Add what people ticked and what instruments read; a weaker reading decides."""
    proofs = {part.id: part for part in parts}
    last_tap = ""
    for event, step in pairs:
        ticked = event.result == "done" and step.actions
        if ticked and step.outlet and bench.network.controls[step.outlet].thing == "tap":
            last_tap = step.outlet
        part = proofs.get(part_of(step.part))
        if ticked and part is not None:
            more = Evidence("attested", "done as recorded", {"step": step.id})
            proofs[part.id] = replace(part, evidence=(*part.evidence, more))
        if event.reading is None or is_of_jug(event.reading, step):
            continue
        for read in _read_parts(event.part or step.part or last_tap, bench.card):
            if read in proofs:
                proofs[read] = with_reading(
                    proofs[read], event.reading, bench.low_degC, product, jugs
                )
    return tuple(proofs.values())


def _read_parts(outlet: str, card: Card) -> Iterator[str]:
    """Give the parts a reading at an outlet speaks of: it, and the line that ends there.

    What a line holds is never stronger than what came out of its tap.
    """
    yield part_of(outlet)
    for line in card.lines:
        if outlet and outlet in {str(line.start), str(line.end)}:
            yield line.id

"""A winterized coach that is used: what that undoes, and what makes it good again.

Water that has run since voids what was said of every part it touched, whatever may still be in it.
A toilet flushed from a jug, or a basin emptied by hand, touches no line, but thins what stands in
the trap and the tank below. Made good again is what was touched, and nothing else.
"""

from collections.abc import Iterator
from dataclasses import dataclass, replace

from wintertight.coach.card import Card
from wintertight.errors import ChoiceError
from wintertight.flow.actions import Action
from wintertight.flow.air.supply import AirSupply
from wintertight.flow.build import build_network
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.replay import Trace, replay
from wintertight.flow.state import State
from wintertight.flow.until import Until
from wintertight.fluids.contents import Contents
from wintertight.fluids.product import Product
from wintertight.procedure.held_in import Before
from wintertight.procedure.job import Job
from wintertight.procedure.methods.drain_only import work_out_emptying
from wintertight.procedure.methods.filling import work_out_filling
from wintertight.procedure.methods.pump_steps import pump_job
from wintertight.procedure.methods.table import METHODS
from wintertight.procedure.methods.worked import Asked, Worked, actions_of
from wintertight.procedure.phases.make_safe import make_safe
from wintertight.procedure.phases.setting import set_handles
from wintertight.procedure.plan import Plan, check_choice, planned_as
from wintertight.procedure.roles import Roles
from wintertight.procedure.run_on import way_to
from wintertight.procedure.walking import walking_order
from wintertight.proof.claims import Evidence, PartProof, Verdict, verdict_of
from wintertight.proof.judge import prove_parts
from wintertight.units import GALLON_M3

RUN_M3 = 1.0 * GALLON_M3
"""Water that is taken to have run at each tap that was used [m3]: a gallon; common practice."""

JUG_M3 = 1.0e-3
"""Water of one flush from a jug, or of one basin emptied by hand [m3]; common practice."""

FILLING = ("pump", "air-then-pump")
"""Methods after which a coach is made good again by running antifreeze."""


@dataclass(frozen=True, slots=True)
class WinterUse:
    """How a coach was used after it was winterized.

    Attributes:
        ran: controls of the outlets at which water has run.
        flushed: pools below the fittings that were flushed, or emptied into, from a jug.
    """

    ran: tuple[str, ...] = ()
    flushed: tuple[str, ...] = ()


@dataclass(frozen=True, eq=False)
class UsedSince:
    """What its use has undone, and the plan that makes it good again.

    Attributes:
        use: how it was used.
        parts: the proof of each part after the use.
        voided: parts of which nothing can be said any more, though something could before.
        verdict: on the coach as it stands after the use.
        again: the plan that makes good what was touched.
    """

    use: WinterUse
    parts: tuple[PartProof, ...]
    voided: tuple[str, ...]
    verdict: Verdict
    again: Plan


def use_named(card: Card, ran: list[str], flushed: list[str]) -> WinterUse:
    """Find what was used by the ids of its fittings.

    Args:
        card: the coach's card.
        ran: fittings, or single sides such as kitchen.cold, at which water has run.
        flushed: fittings that were flushed from a jug.

    Returns:
        The use.

    Raises:
        ChoiceError: there is no such outlet, or nothing below such a fitting.
    """
    network = build_network(card)
    outlets: list[str] = []
    for name in ran:
        found = [o for o in network.outlets if name in {o, network.controls[o].part}]
        if not found:
            message = f"this coach has no outlet '{name}' at which water could have run"
            raise ChoiceError(message)
        outlets += found
    pools: list[str] = []
    for name in flushed:
        fitting = card.fitting.get(name)
        below = fitting.drains_to if fitting is not None else None
        if below is None or below not in network.pools:
            message = f"nothing on the card is below '{name}' that could be flushed from a jug"
            raise ChoiceError(message)
        pools.append(below)
    return WinterUse(tuple(dict.fromkeys(outlets)), tuple(dict.fromkeys(pools)))


def used_since(  # noqa: PLR0913 - a coach, a job and a use
    card: Card,
    product: Product,
    low_degC: float,
    use: WinterUse,
    method: str = "pump",
    *,
    air: AirSupply | None = None,
    with_missed_steps: bool = False,
) -> UsedSince:
    """Work out what a use has undone, and how it is made good.

    Args:
        card: the coach's card.
        product: what it was, and is again, filled with.
        low_degC: design low [degC].
        use: how it was used.
        method: how it was winterized; one that fills it.
        air: the compressor at hand; a small one where None.
        with_missed_steps: also leave each step of the new plan out once.

    Returns:
        What was undone, and the plan that makes it good.

    Raises:
        ChoiceError: the method does not fill the coach, or the coach has no inlet.
    """
    check_choice(method, product)
    if method not in FILLING:
        message = f"after '{method}' a coach that was used is done again as a whole"
        raise ChoiceError(message)
    asked = Asked.of(card, product, low_degC, air)
    worked = METHODS[method](asked)
    network = asked.careful
    water = tuple(_actions(card, network, use))
    trace = replay(network, worked.trace.end, water)
    touched = _touched(network, trace, use)
    its_parts = _parts_of(network, touched)
    parts = tuple(_void(part, its_parts) for part in prove_parts(asked.bench(trace.end)))
    was = {part.id: part.safe for part in worked.parts}
    voided = tuple(p.id for p in parts if p.safe is not True and was[p.id] is True)
    held = worked.held_in
    used = replace(
        asked,
        earlier=(*actions_of(worked.steps), *water),
        before=Before(worked.trace.end, trace.end, {**held.shares, **held.pools}),
    )
    again = _run_again(used, trace.end, touched) if use.ran else _poured_again(used)
    planned = planned_as(method, used, again, with_missed_steps=with_missed_steps)
    return UsedSince(use, parts, voided, verdict_of(parts), planned)


def _run_again(used: Asked, state: State, touched: frozenset[str]) -> Worked:
    """Work out the job that fills again what was touched, through as few outlets as will do."""
    job = pump_job(used.card, used.careful, used.product)
    early = (*make_safe(job), *set_handles(job))
    set_up = replay(used.careful, state, actions_of(early)).end
    return work_out_filling(used, job, early, _outlets_for(job, set_up, touched))


def _poured_again(used: Asked) -> Worked:
    """Work out the job that makes traps and tanks strong again and runs nothing."""
    job = Job(used.card, used.careful, used.product)
    return work_out_emptying(used, job, (), only_pour=True)


def _actions(card: Card, network: CoachNetwork, use: WinterUse) -> Iterator[Action]:
    """Give what somebody does who uses a winterized coach: shut the taps, water on, open one."""
    roles = Roles(card, network)
    cities = roles.of_kind("city inlet")
    if use.ran and not cities:
        message = "this coach has no city inlet from which water could have run"
        raise ChoiceError(message)
    if use.ran:
        hose = f"{cities[0].id}/hose"
        yield from (Action("set", tap, "shut") for tap in roles.taps)
        for valve, name in roles.positions("city water"):
            yield Action("set", valve.id, name)
        yield Action("set", hose, "on")
        yield from (Action("run", o, until=Until(volume_m3=RUN_M3)) for o in use.ran)
        yield Action("set", hose, "off")
    for pool in use.flushed:
        yield Action("pour", pool, contents=Contents.all_water(), volume_m3=JUG_M3)


def _touched(network: CoachNetwork, trace: Trace, use: WinterUse) -> frozenset[str]:
    """Give the links and pools that water has reached."""
    found = set(use.flushed)
    for moment in trace.moments:
        if moment.outcome.run is not None:
            found |= set(moment.outcome.run.way)
            outlet = network.outlets[moment.outcome.run.outlet]
            found.add(network.links[outlet.link].drops_to or "")
    return frozenset(found)


def _parts_of(network: CoachNetwork, touched: frozenset[str]) -> frozenset[str]:
    """Give the parts to which links and pools belong."""
    return touched | {network.links[k].part for k in touched if k in network.links}


def after_use(
    card: Card, network: CoachNetwork, state: State, use: WinterUse
) -> tuple[State, frozenset[str]]:
    """Let water come in at the city inlet, as whoever uses a winterized coach will have done.

    Args:
        card: the coach's card.
        network: the coach.
        state: it, as it was left in autumn.
        use: how it was used since.

    Returns:
        The coach after it, taps shut; and the lines, fittings and pools that water has reached.

    Raises:
        ChoiceError: the coach has no inlet.
    """
    trace = replay(network, state, _actions(card, network, use))
    return trace.end, _parts_of(network, _touched(network, trace, use))


def parts_pumped(card: Card, network: CoachNetwork, state: State, use: WinterUse) -> frozenset[str]:
    """Give the parts through which the same water would have come from the fresh tank.

    Args:
        card: the coach's card.
        network: the coach.
        state: it, as it was left in autumn.
        use: how it was used since.

    Returns:
        Ids of lines and fittings; none where the coach has no pump with a fresh tank.
    """
    roles = Roles(card, network)
    if not roles.of_kind("demand pump") or not roles.of_kind("fresh tank"):
        return frozenset()
    taps = dict.fromkeys(roles.taps, "shut")
    valves = {v.id: "along" for v in roles.valves("tank suction")}
    jugs = {v.id: "across" for v in roles.valves("antifreeze inlet")}
    turned = {v.id: name for v, name in roles.positions("normal")}
    switches = dict.fromkeys(roles.controls("switch"), "on")
    state = state.with_settings({**taps, **valves, **jugs, **turned, **switches})
    ways = (way_to(network, state, outlet) for outlet in use.ran)
    return _parts_of(network, frozenset[str]().union(*ways))


def _void(part: PartProof, touched: frozenset[str]) -> PartProof:
    """Void what was said of a part that water has touched."""
    if part.safe is not True or part.id not in touched:
        return part
    more = Evidence("assumed", "water has run since")
    return replace(
        part,
        safe=None,
        claim="unproven",
        reason="water has run since",
        params={},
        evidence=(*part.evidence, more),
    )


def _outlets_for(job: Job, state: State, touched: frozenset[str]) -> frozenset[str]:
    """Give the outlets through which everything that was touched is filled again, few of them."""
    network, enters = job.network, job.enters_by
    order = walking_order(network, state, network.sources[enters.source].node)
    ways = {outlet: way_to(network, state, outlet) for outlet in order}
    left = {k for k in touched if k in network.links and network.links[k].holding != "nothing"}
    found: set[str] = set()
    while left and order:
        best = max(order, key=lambda outlet: len(ways[outlet] & left))
        if not ways[best] & left:
            break
        found.add(best)
        left -= ways[best]
    return frozenset(found)

"""What comes of a mistake: which parts are worse off, and what the bay would see.

The technician who made a mistake does not know it: taps run until colour that stays and then on by
the count on the sheet; an outlet that shows none is given up at the limit. As with missed steps,
both jobs are worked out in larger strides and judged without the verdict's margin.
"""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import lru_cache
from itertools import takewhile
from typing import Literal

import numpy as np

from wintertight.cold.burst import VERDICT_MARGIN_K
from wintertight.flow.fittings.workbench import AIR
from wintertight.flow.replay import Trace, replay
from wintertight.flow.state import arriving_state
from wintertight.flow.until import OutletRun
from wintertight.fluids.product import Product
from wintertight.procedure.missed import RANK, hazards_met, in_strides
from wintertight.procedure.mistaken import with_mistake
from wintertight.procedure.mistakes import Mistake, possible_mistakes
from wintertight.procedure.plan import Plan
from wintertight.proof.claims import PartProof
from wintertight.proof.judge import Bench, prove_parts

SignKey = Literal[
    "nothing comes",
    "never clears",
    "stays pale",
    "late",
    "early",
    "sputters",
    "trickles",
    "runs elsewhere",
]

Outcome = Literal["same", "gap", "unproven", "hazard"]

WORST_FIRST: tuple[Outcome, ...] = ("hazard", "gap", "unproven", "same")

NOTICED_S = 5.0
"""A first colour that comes so much later or sooner than on the sheet is noticed [s]; common
practice."""

NOTICED_SHARE = 0.25
"""... and at least by so much of what the sheet says [1]; common practice."""

PALE = 0.90
"""Share of what usually comes out last below which it is paler [1]: seen in a cup beside the jug,
never at the tap; common practice."""

TRICKLE = 0.5
"""Share of the usual flow below which a tap is seen to run slowly [1]; common practice."""

SPUTTER = 0.10
"""Share of air, beyond the usual, in what comes out of an outlet that spits [1]; common
practice."""


@dataclass(frozen=True, slots=True)
class Sign:
    """One thing that would be seen in the bay.

    Attributes:
        key: what is seen.
        at: the outlet or part at which it is seen.
        share: "stays pale": strength of what comes out last over that of the supply;
            "trickles": flow over the usual one [1]; else None.
        seconds: "late" and "early": by how much first colour is [s]; else None.
    """

    key: SignKey
    at: str
    share: float | None = None
    seconds: float | None = None


@dataclass(frozen=True, slots=True)
class MistakeOutcome:
    """What comes of a mistake.

    Attributes:
        outcome: the same, a gap, unproven, or a hazard.
        parts: parts that are worse off, the one with most water left first.
        bursting: those of them that would burst; nobody could vouch for the others.
        water_m3: water left in the parts, beyond what the product brings along [m3].
        signs: what would be seen in the bay.
        jugs: containers begun more than usual; fewer where negative [1].
        more_m3: product drawn and poured more than usual; less where negative [m3]; on the careful
            side as every number here.
        crosses: parts through which hot and cold run together while another outlet is open.
        hazard: key of the hazard, if that is the outcome.
    """

    outcome: Outcome
    parts: tuple[str, ...] = ()
    bursting: tuple[str, ...] = ()
    water_m3: float = 0.0
    signs: tuple[Sign, ...] = ()
    jugs: int = 0
    more_m3: float = 0.0
    crosses: tuple[str, ...] = ()
    hazard: str | None = None

    @property
    def noticed(self) -> bool:
        """Whether anyone would notice at the outlets; that it stays pale, nobody does."""
        return any(sign.key != "stays pale" for sign in self.signs)


def outcomes_of(plan: Plan) -> tuple[tuple[Mistake, MistakeOutcome], ...]:
    """Do a planned job once with each mistake that is possible at its coach.

    Args:
        plan: the plan of the job.

    Returns:
        The mistakes with what comes of them: the worst first, and of those alike the ones nobody
        would notice, and those from which most parts suffer.
    """
    found = [(mistake, outcome_of(plan, mistake)) for mistake in possible_mistakes(plan)]
    return tuple(sorted(found, key=lambda both: _goodness(both[1])))


def _goodness(outcome: MistakeOutcome) -> tuple[int, bool, int]:
    return WORST_FIRST.index(outcome.outcome), outcome.noticed, -len(outcome.parts)


def outcome_of(plan: Plan, mistake: Mistake) -> MistakeOutcome:
    """Do a planned job with one mistake in it.

    Args:
        plan: the plan of the job.
        mistake: one of the mistakes possible at its coach.

    Returns:
        What comes of it, compared with the job done rightly.
    """
    usual, parts = _as_planned(plan)
    trace = mistaken_trace(plan, mistake)
    product = _product_used(plan.product, mistake)
    was = {part.id: part.safe for part in parts}
    after = prove_parts(_bench(plan, trace, product))
    left = {p.id: _water_left_m3(p, product) for p in after if RANK[p.safe] < RANK[was[p.id]]}
    worse = sorted((p for p in after if p.id in left), key=lambda p: -left[p.id])
    met = hazards_met(plan.card, trace.network, trace.start, trace)
    hazards = met - hazards_met(plan.card, usual.network, usual.start, usual)
    used, before = (_jug_volume_m3(t) for t in (trace, usual))
    size = plan.product.container_m3
    return MistakeOutcome(
        outcome="hazard" if hazards else _outcome(worse),
        parts=tuple(p.id for p in worse),
        bursting=tuple(p.id for p in worse if p.safe is False),
        water_m3=sum(left.values()),
        signs=tuple(_signs(usual, trace)),
        jugs=int(np.ceil(used / size)) - int(np.ceil(before / size)),
        more_m3=used - before,
        crosses=tuple(sorted(_crossings(trace) - _crossings(usual))),
        hazard=min(hazards) if hazards else None,
    )


def mistaken_trace(plan: Plan, mistake: Mistake) -> Trace:
    """Replay a planned job with one mistake in it.

    Args:
        plan: the plan of the job.
        mistake: what is wrong.

    Returns:
        The trace, from the coach as it arrives; what came before the mistake is taken over from
        the job done rightly.
    """
    usual, _ = _as_planned(plan)
    steps, network = with_mistake(plan.steps, usual.network, mistake)
    actions = [action for step in steps for action in step.actions]
    if network is not usual.network:
        return replay(network, arriving_state(network), actions)
    pairs = zip(actions, usual.moments, strict=False)  # a mistake may add actions
    same = takewhile(lambda both: both[0] == both[1].action, pairs)
    alike = tuple(moment for _, moment in same)
    begin = alike[-1].state if alike else usual.start
    rest = replay(network, begin, actions[len(alike) :])
    return Trace(network, usual.start, (*alike, *rest.moments))


@lru_cache(maxsize=4)
def _as_planned(plan: Plan) -> tuple[Trace, tuple[PartProof, ...]]:
    """Give the job done rightly, worked out in the same strides."""
    network = in_strides(plan.careful.network)
    actions = [action for p in plan.steps for action in p.step.actions]
    trace = replay(network, arriving_state(network), actions)
    return trace, prove_parts(_bench(plan, trace, plan.product))


def _bench(plan: Plan, trace: Trace, product: Product) -> Bench:
    low = plan.low_degC + VERDICT_MARGIN_K
    return Bench(plan.card, trace.network, trace.end, low, product)


def _product_used(product: Product, mistake: Mistake) -> Product:
    """Give the product by which parts are judged: of the wrong one only the rating is known."""
    if mistake.key != "wrong product":
        return product
    return replace(product, glycol=None, ethanol=None)


def _water_left_m3(part: PartProof, product: Product) -> float:
    """Give the water in a part that is not the product's own [m3]."""
    full, held = product.contents(), part.mean
    bought = held.glycol + held.ethanol + held.rated
    own = bought * full.water / (1.0 - full.water)
    return part.volume_m3 * max(0.0, held.water - own)


def _outcome(worse: list[PartProof]) -> Outcome:
    if not worse:
        return "same"
    return "gap" if any(part.safe is False for part in worse) else "unproven"


def _jug_volume_m3(trace: Trace) -> float:
    """Give how much was drawn from jugs and poured [m3]."""
    given = [m.action.contents for m in trace.moments]
    liquids = [liquid for contents in given if contents and (liquid := contents.liquid())]
    strength = max((1.0 - liquid.water for liquid in liquids), default=0.0)
    came = trace.end.books.came_in - trace.start.books.came_in
    return float(came[1:-1].sum()) / strength if strength else 0.0


def _signs(usual: Trace, trace: Trace) -> Iterator[Sign]:
    """Tell what is different in the bay, outlet by outlet, and then at other places."""
    before, after = _runs(usual), _runs(trace)
    for outlet, runs in after.items():
        if outlet in before:
            yield from _signs_at(before[outlet], runs)
    elsewhere: dict[str, None] = {}
    for outlet, runs in after.items():
        spout = trace.network.outlets[outlet].link
        for link in runs[-1].way:
            if trace.network.links[link].is_outlet and link != spout:
                elsewhere[trace.network.links[link].part] = None
    yield from (Sign("runs elsewhere", part) for part in elsewhere)


def _crossings(trace: Trace) -> set[str]:
    """Give the parts through which hot and cold ran together while another outlet was open.

    A heater joins them too, and is meant to; a tempering valve does while it lets out mixed.
    """
    found = set()
    for run in (runs[-1] for runs in _runs(trace).values()):
        touched: dict[str, set[str]] = {}
        for link in (trace.network.links[name] for name in run.way):
            touched.setdefault(link.part, set()).update((link.start, link.end))
        for part, nodes in touched.items():
            spouts = any(n.endswith((AIR, ".mixed")) for n in nodes)
            both = {f"{part}.hot", f"{part}.cold"} <= nodes
            if both and not spouts and part not in trace.network.heater_ports:
                found.add(part)
    return found


def _runs(trace: Trace) -> dict[str, list[OutletRun]]:
    """Give what was seen at each outlet that was run for colour, that run last."""
    for_colour: dict[str, OutletRun] = {}
    other: dict[str, list[OutletRun]] = {}
    for moment in trace.moments:
        run, until = moment.outcome.run, moment.action.until
        if run and until and until.run_on_s is not None:
            for_colour[run.outlet] = run
        elif run:
            other.setdefault(run.outlet, []).append(run)
    return {outlet: [*other.get(outlet, []), run] for outlet, run in for_colour.items()}


def _signs_at(usual_runs: list[OutletRun], runs: list[OutletRun]) -> Iterator[Sign]:
    """Tell what is different at one outlet."""
    usual, run = usual_runs[-1], runs[-1]
    if usual.first_colour_s is None:
        return
    if run.volume_m3 <= 0.0:
        yield Sign("nothing comes", run.outlet)
        return
    if run.first_colour_s is None:
        yield Sign("never clears", run.outlet)
    else:
        if len(runs) == len(usual_runs):  # else the outlet had colour before
            yield from _colour_signs(usual.first_colour_s, run.first_colour_s, run.outlet)
        if run.strength < PALE * usual.strength:
            yield Sign("stays pale", run.outlet, share=run.strength)
    if run.flow_m3_s < TRICKLE * usual.flow_m3_s:
        yield Sign("trickles", run.outlet, share=run.flow_m3_s / usual.flow_m3_s)
    more_air_m3 = sum(r.air_m3 for r in runs) - sum(r.air_m3 for r in usual_runs)
    if more_air_m3 > SPUTTER * sum(r.volume_m3 for r in runs):
        yield Sign("sputters", run.outlet)


def _colour_signs(usual_s: float, colour_s: float, outlet: str) -> Iterator[Sign]:
    later = colour_s - usual_s
    if abs(later) > max(NOTICED_S, NOTICED_SHARE * usual_s):
        yield Sign("late" if later > 0.0 else "early", outlet, seconds=abs(later))

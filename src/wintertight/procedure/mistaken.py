"""A job with one mistake in it: the same steps with other actions, at times on another network.

Where a hand set something wrongly only the actions change. Where the coach itself is at fault, or
where something matters that a job done rightly never meets (the open plug hole of a heater, a pump
that loses its prime), the network does.
"""

from collections.abc import Callable, Iterable, Mapping
from dataclasses import replace
from types import MappingProxyType

from wintertight.flow.actions import Action
from wintertight.flow.coach_network import CoachNetwork, Gate, Link
from wintertight.flow.losses import (
    GALLON_PER_MINUTE,
    GRAVITY,
    WATER_DENSITY,
)
from wintertight.flow.until import Until
from wintertight.fluids.contents import Contents
from wintertight.procedure.mistakes import Mistake
from wintertight.procedure.plug_holes import with_plug_holes
from wintertight.procedure.steps import PlannedStep, Step
from wintertight.units import PSI_PA

PRIME_LOST = 0.5
"""Share of air in what is drawn from which a small pump builds no pressure and draws only air [1];
common practice."""

GIVE_UP_S = 20.0
"""How long beyond the time on the sheet anyone waits for colour while antifreeze runs to the ground
[s]; common practice."""

GIVE_UP_SHARE = 0.25
"""... and for at least so much of that time [1]; common practice."""

CARTRIDGE_SHARE = 0.3
"""Share of a filter housing that its cartridge and core take up: nothing flushes it [1]; common
practice."""

CARTRIDGE_LOSS_M = 5.0 * PSI_PA / (WATER_DENSITY * GRAVITY)
"""Head lost in a cartridge in use at three gallons per minute [m]; common practice."""

BOWL_M = 0.15
"""How far a cartridge hangs down into its bowl, below the ports [m]; common practice."""

HANDLES_SET = frozenset({"make safe", "set"})
"""Phases in which controls are set as they stand while the coach is filled."""

Steps = tuple[Step, ...]


def with_mistake(
    planned: Iterable[PlannedStep], network: CoachNetwork, mistake: Mistake
) -> tuple[Steps, CoachNetwork]:
    """Give a job with a mistake in it.

    Args:
        planned: the steps of the job done rightly, in order, with their numbers.
        network: the coach.
        mistake: what is wrong.

    Returns:
        The steps with what is really done, and the network; the very same one where the mistake
        changes only actions.
    """
    sheet = tuple(planned)
    steps = (p.step for p in sheet)
    done = tuple(replace(step, actions=()) if step.id in mistake.skips else step for step in steps)
    done = _set_wrongly(done, mistake.sets)
    worn = NETWORKS.get(mistake.key)
    wrong = worn(network, mistake) if worn else network
    if mistake.hole:
        wrong = with_plug_holes(wrong, mistake.hole)
        done = tuple(_given_up(step, p) for step, p in zip(done, sheet, strict=True))
    if mistake.key == "jug ran dry":
        product = _product_of(done)
        done = tuple(_dry_at(step, mistake, product) for step in done)
    if mistake.key in GIVEN:
        done = tuple(_given_otherwise(step, mistake) for step in done)
    return done, wrong


def _set_wrongly(steps: Steps, sets: Mapping[str, str]) -> Steps:
    """Set controls otherwise than the steps say; what no step sets is set with the jug's hose."""
    named = {
        action.part
        for step in steps
        if step.phase in HANDLES_SET
        for action in step.actions
        if action.verb == "set"
    }
    extra = tuple(Action("set", c, setting) for c, setting in sets.items() if c not in named)
    found = []
    for step in steps:
        actions = step.actions
        if step.phase in HANDLES_SET:
            actions = tuple(
                replace(a, setting=sets[a.part]) if a.verb == "set" and a.part in sets else a
                for a in actions
            )
        if step.key == "draw from jug":
            actions = (*extra, *actions)
        found.append(replace(step, actions=actions) if actions != step.actions else step)
    return tuple(found)


# ---- what is drawn and poured -----------------------------------------------------------------


def _leaky(contents: Contents, mistake: Mistake) -> Contents:
    air = float(mistake.params["share"])
    return Contents.all_air() if air >= PRIME_LOST else _thinned(contents, 1.0 - air, air)


def _past_the_tank(contents: Contents, mistake: Mistake) -> Contents:
    return Contents.all_air() if mistake.circumstance == "empty" else contents


def _weak(contents: Contents, mistake: Mistake) -> Contents:
    return _thinned(contents, 1.0 - float(mistake.params["share"]), 0.0)


def _unknown(contents: Contents, _mistake: Mistake) -> Contents:
    """Give a product of which only the rating is known, whatever it is."""
    return Contents(rated=1.0 - contents.air)


def _thinned(contents: Contents, by: float, air: float) -> Contents:
    return Contents(contents.glycol * by, contents.ethanol * by, contents.rated * by, air)


GIVEN: Mapping[str, tuple[frozenset[str], Callable[[Contents, Mistake], Contents]]] = (
    MappingProxyType(
        {
            "tank valve half open": (frozenset({"feed"}), _past_the_tank),
            "suction leak": (frozenset({"feed"}), _leaky),
            "weak product": (frozenset({"feed", "pour"}), _weak),
            "wrong product": (frozenset({"feed", "pour"}), _unknown),
        }
    )
)
"""By key of the mistake: what is drawn, or drawn and poured, and what that really is."""


def _given_otherwise(step: Step, mistake: Mistake) -> Step:
    verbs, given = GIVEN[mistake.key]
    actions = tuple(
        replace(a, contents=given(a.contents, mistake)) if a.verb in verbs and a.contents else a
        for a in step.actions
    )
    return replace(step, actions=actions) if actions != step.actions else step


def _product_of(steps: Steps) -> Action | None:
    """Give the action that puts the hose into the jug."""
    feeds = (a for step in steps for a in step.actions if a.verb == "feed")
    return next(feeds, None)


def _dry_at(step: Step, mistake: Mistake, product: Action | None) -> Step:
    """Let the jug run dry at one outlet: air is drawn until the next jug is there.

    Where ``after_m3`` is given the outlet has let out that much when it happens, and is run until
    colour afterwards. Else it happens at the end of its run, and nobody runs it again.
    """
    if step.outlet != mistake.part or product is None:
        return step
    run = next(a for a in step.actions if a.verb == "run")
    dry = (
        replace(product, contents=Contents.all_air()),
        replace(run, until=Until(seconds=float(mistake.params["seconds"]))),
        product,
    )
    if "after_m3" not in mistake.params:
        return replace(step, actions=(run, *dry))
    first = replace(run, until=Until(volume_m3=float(mistake.params["after_m3"])))
    return replace(step, actions=(first, *dry, run))


def _given_up(step: Step, sheet: PlannedStep) -> Step:
    """Let an outlet whose colour is overdue be given up, as the antifreeze runs to the ground.

    One whose colour came in time still gets all of its run-on.
    """
    if step.outlet is None or sheet.run is None:
        return step
    due_s = sheet.run.first_colour_s or 0.0
    longest_s = waits_s(due_s) + (sheet.run_on_s or 0.0)
    actions = tuple(
        replace(a, until=replace(a.until, seconds=longest_s)) if a.until else a
        for a in step.actions
    )
    return replace(step, actions=actions)


def waits_s(due_s: float) -> float:
    """Give how long anyone waits for colour that is due after ``due_s`` [s]."""
    return due_s + max(GIVE_UP_S, GIVE_UP_SHARE * due_s)


# ---- the coach at fault -----------------------------------------------------------------------


def _never(control: str) -> Gate:
    """Give a gate at a control that no setting opens."""
    return Gate(control, frozenset())


def _with_links(
    network: CoachNetwork, *links: Link, heights_m: Mapping[str, float] = MappingProxyType({})
) -> CoachNetwork:
    return replace(
        network,
        links=MappingProxyType({**network.links, **{link.id: link for link in links}}),
        heights_m=MappingProxyType({**network.heights_m, **heights_m}),
    )


def _draws_only_air(network: CoachNetwork, mistake: Mistake) -> CoachNetwork:
    """Let nothing come from the jug while air comes past the valve of an empty tank.

    At the same suction the flow goes with one over the root of the density: through the same valve
    air would come 29 times as fast as liquid. A half-turned valve resists 24 times as much as the
    open one of the jug, so there is six times as much air as liquid: far beyond ``PRIME_LOST``.
    """
    if mistake.circumstance != "empty":
        return network
    jugs = [s for name, s in network.sources.items() if _goes_into_jugs(network, name)]
    shut = (replace(network.links[j.link], gate=_never(j.id)) for j in jugs)
    return _with_links(network, *shut)


def _goes_into_jugs(network: CoachNetwork, source: str) -> bool:
    control = network.controls.get(source)
    return control is not None and "in the jug" in control.settings


def _cartridge_in(network: CoachNetwork, mistake: Mistake) -> CoachNetwork:
    """Leave a cartridge in its housing: it resists, and what it soaked up is not flushed."""
    housing = network.links[mistake.part]
    core = f"{mistake.part}(core)"
    resistance = housing.resistance_s2_m5 + CARTRIDGE_LOSS_M / (3.0 * GALLON_PER_MINUTE) ** 2
    soaked = replace(
        housing,
        id=f"{mistake.part}(cartridge)",
        end=core,
        volume_m3=CARTRIDGE_SHARE * housing.volume_m3,
        gate=_never(f"{mistake.part}/cartridge"),
    )
    around = replace(
        housing,
        volume_m3=(1.0 - CARTRIDGE_SHARE) * housing.volume_m3,
        resistance_s2_m5=resistance,
    )
    below = network.heights_m[housing.start] - BOWL_M
    return _with_links(network, around, soaked, heights_m={core: below})


def _one_sided(network: CoachNetwork, mistake: Mistake) -> CoachNetwork:
    """Shut the cold side of a tempering valve: fed with nothing warm, it stands on full hot."""
    cold = network.links[f"{mistake.part}:cold"]
    return _with_links(network, replace(cold, gate=_never(next(iter(network.controls)))))


def _let_back(network: CoachNetwork, mistake: Mistake) -> CoachNetwork:
    """Let a check valve pass both ways."""
    return _with_links(network, replace(network.links[mistake.part], one_way=False))


NETWORKS: Mapping[str, Callable[[CoachNetwork, Mistake], CoachNetwork]] = MappingProxyType(
    {
        "tank valve half open": _draws_only_air,
        "cartridge left in": _cartridge_in,
        "tempering valve one-sided": _one_sided,
        "failed check": _let_back,
    }
)
"""What is different about the coach, by key of the mistake."""

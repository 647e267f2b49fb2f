"""A plan as plain text for a screen of 80 to 100 columns: what matters first."""

from collections.abc import Iterator
from textwrap import wrap

from wintertight.documents.open_parts import open_groups
from wintertight.documents.outlet_notes import outlet_notes
from wintertight.documents.proof_screen import proof_screen
from wintertight.documents.screen_blocks import (
    every_part,
    head,
    joined,
    open_parts,
    summary,
    worth_knowing,
    wrapped,
)
from wintertight.documents.shown_cautions import shown_cautions
from wintertight.procedure.plan import Plan
from wintertight.procedure.steps import PHASES, PlannedStep
from wintertight.units import System, in_words
from wintertight.wording.catalogue import say
from wintertight.wording.names import part_name
from wintertight.wording.places import place_text, precondition_text
from wintertight.wording.plans import bring_line, hold_line, minutes_line
from wintertight.wording.reaching import reach_texts
from wintertight.wording.spoken import about
from wintertight.wording.steps import caution, step_text

LEAST_NAME, MOST_NAME = 30, 45
"""Columns of an outlet's name: as the longest one needs, within these."""


def plan_screen(  # noqa: PLR0913 - a plan and how to say it
    plan: Plan,
    language: str = "en",
    system: System = "us",
    *,
    all_parts: bool = False,
    recorded: bool = False,
    planned: Plan | None = None,
) -> str:
    """Give a plan, or the proof of what was done, as text.

    Args:
        plan: the plan, or the proof of what was done in the form of a plan.
        language: two letters.
        system: "us" or "metric".
        all_parts: name every part, not only those that are not proven.
        recorded: whether it speaks of what was done.
        planned: for what was done, the plan it was done by; without it nothing is said of what
            was not done.

    Returns:
        Lines of at most ``WIDTH`` columns, with a line feed at the end.
    """
    if recorded:
        return proof_screen(plan, planned, language, system, all_parts=all_parts)
    groups = open_groups(plan, language, system)
    return joined(
        (
            head(plan, language, system, recorded=False),
            _needs(plan, language, system),
            _before(plan, language, system),
            *(_phase(plan, phase, language, system) for phase in PHASES),
            open_parts(groups, "not proven", language),
            worth_knowing(plan, language, system, recorded=False),
            summary(plan, language),
            every_part(plan, language, system) if all_parts else (),
        )
    )


def _needs(plan: Plan, language: str, system: System) -> Iterator[str]:
    hold = hold_line(plan, language, system)
    if hold is not None:
        yield wrapped(hold)
    bring = bring_line(plan.buy, language, system)
    yield wrapped(f"{bring} {minutes_line(plan.duration.p50, language, plan.method)}")


def _before(plan: Plan, language: str, system: System) -> Iterator[str]:
    """Give what the place means, and what comes before the slot, where the place is known."""
    if plan.place is None:
        return
    yield wrapped(place_text(plan.place, plan.hindrances, language, system))
    yield ""
    yield say("place", "before", language)
    for found in plan.preconditions:
        yield wrapped(precondition_text(found, plan.card, language, system), "  -  ")


def _phase(plan: Plan, phase: str, language: str, system: System) -> Iterator[str]:
    steps = [s for s in plan.steps if s.step.phase == phase]
    if not steps:
        return
    yield say("phase", phase, language)
    if any(s.run for s in steps):
        yield wrapped(say("label", "how to count", language), "     ")
        yield _run_heading(plan, language)
    cautions, ways = shown_cautions(plan.steps), outlet_notes(plan, language)
    for step in steps:
        if step.run is None or step.run.first_colour_s is None:
            yield wrapped(step_text(step, plan.card, language, system), f"{step.n:3d}  ")
        else:
            yield from _run_row(plan, step, step.run.first_colour_s, language, system)
            if ways.get(step.n):
                yield wrapped(say("phrase", "note", language, note=ways[step.n]), "     ")
        for reach in reach_texts(step.step, plan.card, language, system):
            yield wrapped(say("phrase", "note", language, note=reach), "     ")
        for key in cautions[step.n]:
            yield wrapped(caution(key, language), "     ! ")


def _run_heading(plan: Plan, language: str) -> str:
    outlet, colour, run_on = (
        say("label", k, language) for k in ("outlet", "first colour", "run on")
    )
    return f"     {outlet:<{_name_width(plan, language)}} {colour:<16} {run_on:<10}".rstrip()


def _run_row(
    plan: Plan, planned: PlannedStep, colour_s: float, language: str, system: System
) -> Iterator[str]:
    width = _name_width(plan, language)
    *above, name = wrap(part_name(plan.card, planned.step.part, language), width)
    colour = about(colour_s, language)
    run_on = in_words(planned.run_on_s or 0.0, "time", system)
    mark = say("label", "time this one", language) if planned.telling else ""
    leads = iter((f"{planned.n:3d}  ", *("     " for _ in above)))
    for line in above:
        yield next(leads) + line
    yield f"{next(leads)}{name:<{width}} {colour:<16} {run_on:<10} {mark}".rstrip()


def _name_width(plan: Plan, language: str) -> int:
    names = (part_name(plan.card, s.step.part, language) for s in plan.steps if s.run)
    return min(MOST_NAME, max((LEAST_NAME, *map(len, names))))

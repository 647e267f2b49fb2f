"""The proof of what was done as plain text for a screen: what holds, what does not, what to do."""

from collections.abc import Iterable, Iterator

from wintertight.documents.open_parts import open_groups
from wintertight.documents.screen_blocks import (
    every_part,
    head,
    joined,
    open_parts,
    summary,
    worth_knowing,
    wrapped,
)
from wintertight.procedure.plan import Plan
from wintertight.procedure.steps import PHASES
from wintertight.procedure.undone import undone_at, undone_steps
from wintertight.units import System
from wintertight.wording.catalogue import say
from wintertight.wording.plans import used_line
from wintertight.wording.steps import step_text

NAME_WIDTH = 30


def proof_screen(  # noqa: PLR0913 - a proof and how to say it
    plan: Plan,
    planned: Plan | None = None,
    language: str = "en",
    system: System = "us",
    *,
    all_parts: bool = False,
    told: Iterable[str] = (),
) -> str:
    """Give the proof of what was done as text.

    Args:
        plan: the proof, in the form of a plan.
        planned: the plan it was done by; without it nothing is said of what was not done.
        language: two letters.
        system: "us" or "metric".
        all_parts: name every part, not only those that are not proven.
        told: lines of what the record tells beyond what it says.

    Returns:
        Lines of at most ``WIDTH`` columns, with a line feed at the end.
    """
    missing = undone_at(plan, planned) if planned else {}
    groups = open_groups(plan, language, system, undone=missing)
    return joined(
        (
            head(plan, language, system, recorded=True),
            (wrapped(used_line(plan, language, system)),),
            _done(plan, planned, language),
            _not_done(plan, planned, language, system) if planned else (),
            told,
            open_parts(groups, "not proven as recorded", language),
            worth_knowing(plan, language, system, recorded=True),
            summary(plan, language),
            every_part(plan, language, system) if all_parts else (),
        )
    )


def _done(plan: Plan, planned: Plan | None, language: str) -> Iterator[str]:
    """Count the steps that were done, phase by phase."""
    yield say("label", "done", language)
    for phase in PHASES:
        asked = _ids(planned, phase) if planned else frozenset()
        done = _ids(plan, phase)
        count = str(len(done))
        if asked:
            count = say("phrase", "some done", language, done=count, all=str(len(asked)))
        if asked or done:
            yield f"     {say('phase', phase, language):<{NAME_WIDTH}} {count}"


def _not_done(plan: Plan, planned: Plan, language: str, system: System) -> Iterator[str]:
    """Name the steps that were not done, by their numbers on the job sheet."""
    missing = undone_steps(plan, planned)
    if missing:
        yield say("label", "not done", language)
    for step in missing:
        yield wrapped(step_text(step, planned.card, language, system), f"{step.n:3d}  ")


def _ids(plan: Plan, phase: str) -> frozenset[str]:
    return frozenset(s.step.id for s in plan.steps if s.step.phase == phase)

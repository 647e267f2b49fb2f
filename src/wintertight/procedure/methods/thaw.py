"""A coach that may have frozen already: neither pump nor air, warm first, then test by section.

Nobody can vouch for any part of it before it has been looked at and has held pressure. So no claim
is made: what the coach needs next is planned when it is thawed and tight, and how long that takes
is open.
"""

from collections.abc import Iterator
from dataclasses import replace

from wintertight.flow.actions import Action
from wintertight.flow.replay import replay
from wintertight.flow.state import ICE, arriving_state
from wintertight.procedure.held_in import held_in
from wintertight.procedure.job import Job, own_pump, step
from wintertight.procedure.methods.worked import Asked, Worked, actions_of
from wintertight.procedure.phases.emptying import caps_back, open_everything, open_handles
from wintertight.procedure.phases.make_safe import make_safe
from wintertight.procedure.phases.setting import HEATERS_WITH_PLUGS, close_up
from wintertight.procedure.steps import Step
from wintertight.proof.claims import Evidence, PartProof
from wintertight.proof.judge import prove_parts
from wintertight.units import PSI_PA

TEST_PA = 15.0 * PSI_PA
"""Pressure of the first test of a thawed section [Pa]: 15 psi, far below use; common practice."""

TEST_S = 600.0
"""How long it is held and looked at [s]; common practice."""


def work_out(asked: Asked) -> Worked:
    """Work out first aid for a coach that may have frozen.

    Args:
        asked: the coach.

    Returns:
        The job; every part of it is unproven at its end.
    """
    job = Job(asked.card, asked.careful, asked.product, own_pump(asked.card, asked.careful))
    steps = tuple(_steps(job))
    frozen = replace(arriving_state(asked.careful), marks=frozenset({ICE}))
    trace = replay(asked.careful, frozen, actions_of(steps))
    bench = asked.bench(trace.end)
    parts = tuple(_may_be_cracked(part) for part in prove_parts(bench))
    held = held_in(asked.drawn, bench, trace, asked.best, parts)
    return Worked(steps, (), trace, parts, held)


def _may_be_cracked(part: PartProof) -> PartProof:
    if part.reason in {"nobody has looked", "not looked at", "no model"}:
        return part
    return replace(
        part,
        claim="unproven",
        safe=None,
        reason="may be cracked",
        params={},
        evidence=(*part.evidence, Evidence("assumed", "may be cracked")),
        look_at=True,
    )


def _steps(job: Job) -> Iterator[Step]:
    yield from make_safe(job)
    yield from _in_thaw(open_handles(job))
    yield from _in_thaw(open_everything(job))
    yield step(
        "warm it", "thaw", Action("thaw"), setting="warm", cautions=("no flame",)
    )  # fmt: skip
    yield step("let it thaw out", "thaw", Action("drain"))
    yield step("look for cracks", "thaw", setting="looked at")
    yield from _in_thaw(caps_back(job))
    yield from close_up(job, heaters=HEATERS_WITH_PLUGS, filled=False)
    yield from _tests(job)


def _in_thaw(steps: Iterator[Step]) -> Iterator[Step]:
    """Give steps of the draining as steps of the thawing."""
    return (replace(found, phase="thaw") for found in steps)


def _tests(job: Job) -> Iterator[Step]:
    """Give a test for each section that valves and taps cut off: branches first, then all."""
    cities = job.roles.of_kind("city inlet")
    if not cities:
        return
    hose = f"{cities[0].id}/hose"
    branches = job.roles.valves("branch shut-off")
    shut = [Action("set", valve.id, "across") for valve in branches]
    yield step(
        "test trunk",
        "test",
        *shut,
        Action("set", hose, "on"),
        Action("set", hose, "off"),
        part=cities[0].id,
        setting="tested",
        cautions=("stop at a leak",),
        pressure_Pa=TEST_PA,
        seconds=TEST_S,
    )
    for valve in branches:
        yield step(
            "test branch",
            "test",
            Action("set", valve.id, "along"),
            Action("set", hose, "on"),
            Action("set", hose, "off"),
            part=valve.id,
            setting="tested",
            cautions=("stop at a leak",),
            pressure_Pa=TEST_PA,
            seconds=TEST_S,
        )
    yield step("plan anew", "finish", setting="to do")

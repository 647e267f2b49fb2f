"""Pump off, pockets relieved, traps topped up, and the proof taken."""

from collections.abc import Iterator, Mapping
from dataclasses import replace

from wintertight.coach.kinds import KINDS
from wintertight.flow.actions import Action
from wintertight.procedure.job import BY_HAND, Job, step
from wintertight.procedure.steps import Step

CUP_M3 = 0.25e-3
"""What is poured into a trap or a sump at a time [m3]; about one cup; common practice."""


def finish(job: Job, cups: Mapping[str, int]) -> Iterator[Step]:
    """Give the steps after the last outlet; ``cups`` says how many each trap or sump needs."""
    yield _stop(job)
    yield from close_diverters(job)
    yield leave_taps_open(job)
    if job.enters_by.setting == BY_HAND:
        yield from _empty_bowls(job, "strainer")
        yield from relieve(job, "filter housing")
    else:
        yield from relieve(job, "filter housing", "strainer")
    yield from top_up(job, cups)
    yield step("take reading", "finish", setting="reading", cautions=("pink proves little",))
    yield hang_tag()


def finish_empty(job: Job, cups: Mapping[str, int]) -> Iterator[Step]:
    """Give the last steps of a job that leaves the lines empty: all stays open."""
    yield from close_diverters(job)
    yield leave_taps_open(job, *job.roles.low_points)
    yield from work_pedals(job)
    yield from _empty_bowls(job, "filter housing", "strainer")
    yield from top_up(job, cups)
    yield hang_tag()


def pour_only(job: Job, cups: Mapping[str, int]) -> Iterator[Step]:
    """Give the last steps of a job that only makes traps and tanks strong again."""
    yield from top_up(job, cups)
    yield hang_tag()


def _empty_bowls(job: Job, *kinds: str) -> Iterator[Step]:
    """Give a step for each bowl: it keeps its water where nothing but air went through."""
    for bowl in job.roles.of_kind(*kinds):
        yield step(
            "empty bowl",
            "finish",
            Action("set", f"{bowl.id}/bowl", "off"),
            Action("set", f"{bowl.id}/bowl", "loose"),
            part=bowl.id,
            setting="a quarter turn loose",
        )


def _stop(job: Job) -> Step:
    """Give the step that stops whatever pushes."""
    enters = job.enters_by
    if enters.setting == BY_HAND:
        part = job.network.controls[enters.control].part
        off = Action("set", enters.control, "off")
        return step("hand pump off", "finish", off, part=part, setting="off")
    off = Action("set", f"{job.pump}/switch", "off")
    return step("pump off", "finish", off, part=job.pump or "", setting="off")


def close_diverters(job: Job) -> Iterator[Step]:
    """Give the steps that set diverters back."""
    for diverter in job.roles.controls("diverter"):
        yield step(
            "close diverter",
            "finish",
            Action("set", diverter, "off"),
            part=diverter,
            setting="off",
        )


def leave_taps_open(job: Job, *also: str) -> Step:
    """Give the step that leaves every tap open, and some other controls."""
    return step(
        "leave taps open",
        "finish",
        *(Action("set", tap, "open") for tap in (*job.roles.taps, *job.roles.heads, *also)),
        setting="open",
    )


def work_pedals(job: Job) -> Iterator[Step]:
    """Give the steps that let the pressure out of toilet valves."""
    for fitting in job.card.fittings:
        if fitting.seen == "present" and KINDS[fitting.kind].relief == "hold toilet pedal":
            yield step(
                "work pedal",
                "finish",
                Action("relieve", fitting.id),
                part=fitting.id,
                setting="worked once",
            )


def relieve(job: Job, *bowls: str) -> Iterator[Step]:
    """Give the steps that open what is rigid, such as these bowls: slush needs room to grow."""
    yield from work_pedals(job)
    for bowl in job.roles.of_kind(*bowls):
        yield step(
            "loosen bowl",
            "finish",
            Action("set", f"{bowl.id}/bowl", "loose"),
            part=bowl.id,
            setting="a quarter turn loose",
        )
    if not job.has_bypass and job.supply is not None:
        for heater in job.roles.of_kind("tank heater"):
            lifted = step(
                "open relief",
                "finish",
                Action("set", f"{heater.id}/relief", "open"),
                part=heater.id,
                setting="relief lever open",
            )
            yield replace(lifted, id=f"open-relief-again:{heater.id}")


def top_up(job: Job, cups: Mapping[str, int]) -> Iterator[Step]:
    """Give the steps that pour antifreeze into traps and sumps, so many cups each."""
    contents = job.product.contents()
    for pool, count in cups.items():
        yield step(
            "pour a cup",
            "finish",
            Action("pour", pool, contents=contents, volume_m3=count * CUP_M3),
            part=pool,
            setting="poured in",
            cautions=("waste antifreeze",),
            cups=float(count),
        )


def hang_tag() -> Step:
    """Give the last step."""
    return step("hang tag", "finish", setting="tag at the main tap")


def hang_tag_for_the_night() -> Step:
    """Give the last step of a job whose claim expires."""
    return step("hang tag for the night", "finish", setting="tag at the main tap")

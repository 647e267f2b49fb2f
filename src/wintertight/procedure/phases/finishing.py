"""Pump off, pockets relieved, traps topped up, and the proof taken."""

from collections.abc import Iterator, Mapping

from wintertight.coach.kinds import KINDS
from wintertight.flow.actions import Action
from wintertight.procedure.job import Job, step
from wintertight.procedure.steps import Step

CUP_M3 = 0.25e-3
"""What is poured into a trap or a sump at a time [m3]; about one cup; common practice."""


def finish(job: Job, cups: Mapping[str, int]) -> Iterator[Step]:
    """Give the steps after the last outlet; ``cups`` says how many each trap or sump needs."""
    yield step(
        "pump off", "finish", Action("set", f"{job.pump}/switch", "off"), part=job.pump,
        setting="off",
    )  # fmt: skip
    for diverter in job.roles.controls("diverter"):
        yield step(
            "close diverter",
            "finish",
            Action("set", diverter, "off"),
            part=diverter,
            setting="off",
        )
    yield step(
        "leave taps open",
        "finish",
        *(Action("set", tap, "open") for tap in (*job.roles.taps, *job.roles.heads)),
        setting="open",
    )
    for fitting in job.card.fittings:
        if fitting.seen == "present" and KINDS[fitting.kind].relief == "hold toilet pedal":
            yield step(
                "work pedal",
                "finish",
                Action("relieve", fitting.id),
                part=fitting.id,
                setting="worked once",
            )
    for bowl in job.roles.of_kind("filter housing", "strainer"):
        yield step(
            "loosen bowl",
            "finish",
            Action("set", f"{bowl.id}/bowl", "loose"),
            part=bowl.id,
            setting="a quarter turn loose",
        )
    if not job.has_bypass:
        for heater in job.roles.of_kind("tank heater"):
            yield step(
                "open relief",
                "finish",
                Action("set", f"{heater.id}/relief", "open"),
                part=heater.id,
                setting="relief lever open",
            )
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
    yield step("take reading", "finish", setting="reading", cautions=("pink proves little",))
    yield step("hang tag", "finish", setting="tag at the main tap")

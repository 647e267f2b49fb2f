"""Freeze hold: drained and opened in a quarter of an hour, for a cold night and no longer.

What gravity leaves in so short a job freezes later than at once, and how much later is worked out:
that is when the claim expires. It is first aid before a cold night, and no winterizing.
"""

from collections.abc import Iterator

from wintertight.coach.kinds import KINDS
from wintertight.cold.hold import Place, Wet, held_for
from wintertight.flow.actions import Action
from wintertight.flow.air.claims import BODY_M3
from wintertight.flow.replay import replay
from wintertight.flow.state import State
from wintertight.procedure.held_in import held_in
from wintertight.procedure.job import Job, own_pump, step
from wintertight.procedure.methods.worked import Asked, Worked, actions_of
from wintertight.procedure.phases.emptying import (
    empty_tank_line,
    hold_open,
    open_everything,
    open_handles,
)
from wintertight.procedure.phases.finishing import hang_tag_for_the_night, relieve
from wintertight.procedure.phases.make_safe import make_safe
from wintertight.procedure.steps import Step
from wintertight.proof.claims import PartProof
from wintertight.proof.judge import prove_parts

LEAST_M3 = 1e-9
"""Water that is less is not worth a clock [m3]."""


def work_out(asked: Asked) -> Worked:
    """Work out a freeze hold.

    Args:
        asked: the coach, and the cold to come.

    Returns:
        The job, and when its claim expires.
    """
    job = Job(asked.card, asked.careful, asked.product, own_pump(asked.card, asked.careful))
    steps = tuple(_steps(job))
    trace = replay(asked.careful, asked.arrives(asked.careful), actions_of(steps))
    bench = asked.bench(trace.end)
    parts = prove_parts(bench)
    held = held_in(asked.drawn, bench, trace, asked.best, parts)
    clock = held_for(_wet(asked, trace.end, parts), asked.start_degC, asked.low_degC)
    return Worked(steps, (), trace, parts, held, clock)


def _steps(job: Job) -> Iterator[Step]:
    """Give the few steps there is time for."""
    yield from make_safe(job)
    yield from empty_tank_line(job)
    yield from open_handles(job)
    yield from open_everything(job, caps=False)
    yield step("let it drain", "drain", Action("drain"))
    yield from hold_open(job)
    yield from _carry_in(job)
    yield from relieve(job, "filter housing", "strainer")
    yield hang_tag_for_the_night()


def _carry_in(job: Job) -> Iterator[Step]:
    """Give the step that carries in what hangs loose outside; what sits in a line takes longer."""
    loose = tuple(job.roles.controls("body", lambda fitting: not KINDS[fitting.kind].wetted))
    if loose:
        yield step(
            "carry in",
            "drain",
            *(Action("set", body, "removed") for body in loose),
            setting="removed",
        )


def _wet(asked: Asked, state: State, parts: tuple[PartProof, ...]) -> Iterator[Wet]:
    """Give what still holds water that would burst it, or of which nobody knows.

    A small body whose own end stands open gives what freezes in it out there (common practice).
    """
    network = asked.careful
    for part in parts:
        if part.safe is True or part.volume_m3 * part.worst.water <= LEAST_M3:
            continue
        links = network.links_of.get(part.id, ())
        ends = [k for k in links if k.is_outlet and k.gate is not None]
        open_ended = bool(ends) and all(
            k.gate is not None and state.settings[k.gate.control] in k.gate.passes for k in ends
        )
        if open_ended and part.volume_m3 <= len(ends) * BODY_M3:
            continue
        bores = [k.bore_m for k in links if k.way == "pipe"]
        gives = part.pocket == "open" or (part.pocket == "relieved" and part.relieved)
        yield Wet(part.id, part.volume_m3, _place(asked, part.id), min(bores, default=0.0), gives)


def _place(asked: Asked, part: str) -> Place:
    """Tell where a part is; what nobody has called closed in counts as outside."""
    owner = part.partition("/")[0]
    where = asked.card.line.get(owner) or asked.card.fitting.get(owner)
    room = asked.card.compartment.get(where.compartment or "") if where else None
    if room is None:
        return "outside"
    return "indoors" if room.heated else "closed" if room.closed else "outside"

"""How a coach was left by what a record says was done: its heaters, and what is to be set back."""

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Literal

from wintertight.coach.card import Fitting
from wintertight.flow.actions import Action
from wintertight.flow.state import arriving_state
from wintertight.procedure.as_done import AsDone
from wintertight.procedure.chances import AS_RECORDED
from wintertight.procedure.hazards import Situation
from wintertight.procedure.hindsight.look_back import Hindsight
from wintertight.procedure.put_back import set_otherwise
from wintertight.proof.claims import PartProof

Sort = Literal[
    "plug in", "lever down", "back in place", "cartridge in", "bowl tight", "set back", "shut"
]

SORTS: Mapping[str, Sort] = MappingProxyType(
    {
        "plug": "plug in",
        "relief lever": "lever down",
        "body": "back in place",
        "cartridge": "cartridge in",
        "filter": "cartridge in",
        "bowl": "bowl tight",
        "handle": "set back",
        "named handle": "set back",
        "hose": "set back",
        "diverter": "set back",
        "line end": "set back",
        "tap": "shut",
        "valve": "shut",
        "head": "shut",
        "drain": "shut",
        "gate": "shut",
        "cap": "shut",
        "check": "shut",
        "lever": "shut",
        "rinse inlet": "shut",
        "valve of a machine": "shut",
    }
)
"""What is done, before water comes, with each thing that a hand has set otherwise than in use."""

HEATERS = ("tank heater", "on-demand heater", "hydronic coil")
"""Kinds of fittings that are ruined by heat without water."""

Content = Literal["empty", "antifreeze"]


@dataclass(frozen=True, slots=True)
class HeaterLeft:
    """How a heater was left; what is not recorded, or is in doubt, is None or False.

    Attributes:
        part: the heater.
        heat_off: whether all that heats it was turned off, and still is.
        content: "empty" or full of "antifreeze", where that is proven.
        bypassed: whether handles that were set cut it off from every pump and inlet.
        plug: "in" or "out", where a hand set it.
    """

    part: str
    heat_off: bool
    content: Content | None
    bypassed: bool
    plug: str | None


@dataclass(frozen=True, slots=True)
class SetBack:
    """What is to be done before water comes, and where."""

    sort: Sort
    parts: tuple[str, ...]


def went_as_recorded(told: Hindsight | None) -> bool:
    """Tell whether nothing that was timed, counted or read speaks for something else."""
    return told is None or told.causes[0].explanation.cause == AS_RECORDED


def heaters_left(done: AsDone, told: Hindsight | None = None) -> tuple[HeaterLeft, ...]:
    """Give how each heater was left.

    Args:
        done: what the record proves.
        told: what it tells beyond; None where that is nothing.

    Returns:
        One entry for each heater that is there. A thing is said only where a step that was done
        set it and it still stands so; a bypass only where nothing observed speaks for a mistake.
    """
    trusted = went_as_recorded(told)
    proofs = {part.id: part for part in done.plan.parts}
    touched = {a.part for step in done.done for a in step.actions if a.verb == "set"}
    return tuple(
        HeaterLeft(
            part=heater.id,
            heat_off=_is_off(done, heater, touched),
            content=_content(proofs.get(heater.id)),
            bypassed=trusted and _is_bypassed(done, heater),
            plug=_stands(done, f"{heater.id}/plug", touched),
        )
        for heater in done.plan.card.fittings
        if heater.kind in HEATERS and heater.seen == "present"
    )


def set_backs(done: AsDone) -> tuple[SetBack, ...]:
    """Give what stands otherwise than in use, by what is done about it before water comes.

    Args:
        done: what the record proves.

    Returns:
        In the order of ``SORTS``; fittings in the order of the card.
    """
    found: dict[Sort, dict[str, None]] = {}
    for control in set_otherwise(done.plan):
        sort = SORTS.get(control.thing)
        if sort is not None:
            found.setdefault(sort, {})[control.part] = None
    order = list(dict.fromkeys(SORTS.values()))
    return tuple(SetBack(sort, tuple(found[sort])) for sort in sorted(found, key=order.index))


def holds_antifreeze(done: AsDone) -> bool:
    """Tell whether antifreeze is left anywhere that water will run through."""
    held = (part.mean for part in done.plan.parts)
    return any(c.glycol + c.ethanol + c.rated > 0.0 for c in held)


def _is_off(done: AsDone, heater: Fitting, touched: set[str]) -> bool:
    """Tell whether heat was turned off and not on again; by its tick, where no source is known."""
    if not heater.heat:
        return any(step.key == "heat off" and step.part == heater.id for step in done.done)
    return all(_stands(done, f"{heater.id}/{s}", touched) == "off" for s in heater.heat)


def _stands(done: AsDone, control: str, touched: set[str]) -> str | None:
    """Give how a control stands at the end, if a hand has set it."""
    return done.plan.careful.end.settings.get(control) if control in touched else None


def _content(proof: PartProof | None) -> Content | None:
    if proof is None or proof.safe is not True:
        return None
    if proof.claim in {"drained", "swept"}:
        return "empty"
    return "antifreeze" if proof.claim == "filled" else None


def _is_bypassed(done: AsDone, heater: Fitting) -> bool:
    """Tell whether a heater is cut off now, and was not on arrival: what was done has done it."""
    trace = done.plan.careful
    if heater.id not in trace.network.links:
        return False
    arrived = arriving_state(trace.network)
    before, after = (
        Situation(done.plan.card, trace.network, state, Action("drain")).cut_off(heater.id)
        for state in (arrived, trace.end)
    )
    return after and not before

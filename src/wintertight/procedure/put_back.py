"""What stands otherwise at the end of a job than in use: it is put back in spring."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from types import MappingProxyType

from wintertight.flow.coach_network import Control
from wintertight.procedure.plan import Plan

SORTS: tuple[str, ...] = (
    "plug in",
    "lever down",
    "back in place",
    "cartridge in",
    "bowl tight",
    "by its maker",
    "hose back",
    "shut",
    "handle",
    "heater handle",
    "heat",
)
"""What is done to put a thing back, in the order in which it is done."""

_SORT_OF: Mapping[str, str] = MappingProxyType(
    {
        "plug": "plug in",
        "relief lever": "lever down",
        "body": "back in place",
        "cartridge": "cartridge in",
        "filter": "cartridge in",
        "bowl": "bowl tight",
        "maker's steps": "by its maker",
        "hose": "hose back",
        "tap": "shut",
        "valve": "shut",
        "drain": "shut",
        "head": "shut",
        "rinse inlet": "shut",
        "cap": "shut",
        "line end": "shut",
        "gate": "shut",
        "check": "shut",
        "lever": "shut",
        "diverter": "handle",
        "handle": "handle",
        "named handle": "handle",
        "burner": "heat",
        "element": "heat",
        "coolant": "heat",
    }
)
"""What is done with each thing that a hand sets; what is not here needs nothing done."""

AT_THE_HEATER = frozenset({"heater cold", "heater hot", "heater bypass"})
"""Roles of valves that are set back only when the lines are rinsed."""


@dataclass(frozen=True, slots=True)
class PutBack:
    """One thing to put back.

    Attributes:
        sort: what is done; one of ``SORTS``.
        control: what is set.
        part: the fitting it belongs to.
        setting: how it stands in use.
    """

    sort: str
    control: str
    part: str
    setting: str


def set_otherwise(plan: Plan) -> Iterator[Control]:
    """Give the controls that stand otherwise at the end of a job than as found."""
    end = plan.careful.end.settings
    for control in plan.careful.network.controls.values():
        if end[control.id] != control.as_found:
            yield control


def put_back(plan: Plan) -> tuple[PutBack, ...]:
    """Give everything that stands otherwise at the end of a job than before it.

    Args:
        plan: the plan.

    Returns:
        One entry a control, in the order of ``SORTS``, then in that of the card.
    """
    found = [
        PutBack(
            _sort(plan, control.part, control.thing), control.id, control.part, control.as_found
        )
        for control in set_otherwise(plan)
        if control.thing in _SORT_OF
    ]
    return tuple(sorted(found, key=lambda back: SORTS.index(back.sort)))


def _sort(plan: Plan, part: str, thing: str) -> str:
    fitting = plan.card.fitting[part]
    named = any(position.use == "heater bypass" for position in fitting.positions)
    if thing in {"handle", "named handle"} and (fitting.role in AT_THE_HEATER or named):
        return "heater handle"
    return _SORT_OF[thing]

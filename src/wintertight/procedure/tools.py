"""What has to be at hand for a job, by its steps; common practice of the trade."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from types import MappingProxyType

from wintertight.procedure.plan import Plan
from wintertight.procedure.steps import PlannedStep

NOTHING: Mapping[str, float | str] = MappingProxyType({})

TOOLS: tuple[str, ...] = (
    "watch",
    "bucket",
    "screwdriver",
    "plug wrench",
    "bowl wrench",
    "blunt tool",
    "bridge hose",
    "jug hose",
    "hand pump",
    "compressor",
    "eyes",
    "test hose",
    "cup",
    "reading",
    "sewer gloves",
    "tag",
)
"""Key of each tool, in the order in which they are listed."""

OF_STEP: Mapping[str, tuple[str, ...]] = MappingProxyType(
    {
        "plug out": ("plug wrench",),
        "open low points": ("bucket",),
        "caps off": ("bucket",),
        "cartridge out": ("bowl wrench", "bucket"),
        "empty bowl": ("bucket",),
        "empty waste tanks": ("sewer gloves",),
        "drain panel": ("blunt tool",),
        "hand pump on": ("hand pump",),
        "air on": ("compressor", "eyes"),
        "run outlet": ("watch",),
        "blow outlet": ("watch",),
        "test trunk": ("test hose",),
        "pour a cup": ("cup",),
        "take reading": ("reading",),
        "hang tag": ("tag",),
        "hang tag for the night": ("tag",),
    }
)
"""What each step takes, whatever it is done to."""

INTO_A_BUCKET = frozenset({"low point", "capped tee", "prepared stub", "membrane filter"})
"""Kinds whose outlet runs into a bucket."""


@dataclass(frozen=True, slots=True)
class Tool:
    """One thing to have at hand.

    Attributes:
        key: one of ``TOOLS``.
        parts: parts of the coach it is for, in the order of the steps; none where it is for all.
        params: ``regulator_Pa`` or ``pressure_Pa``, what its regulator is set to [Pa].
    """

    key: str
    parts: tuple[str, ...] = ()
    params: Mapping[str, float | str] = field(default_factory=lambda: NOTHING)


def tools_of(plan: Plan) -> tuple[Tool, ...]:
    """Give what has to be at hand for the steps of a plan, each thing once.

    Args:
        plan: the plan.

    Returns:
        The tools, in the order of ``TOOLS``.
    """
    found: dict[str, list[PlannedStep]] = {}
    for planned in plan.steps:
        for key in _keys(planned, plan):
            found.setdefault(key, []).append(planned)
    return tuple(_tool(key, found[key]) for key in TOOLS if key in found)


def _tool(key: str, steps: list[PlannedStep]) -> Tool:
    params = {
        name: value
        for planned in steps
        for name, value in planned.step.params.items()
        if name in {"regulator_Pa", "pressure_Pa"}
    }
    parts = tuple(dict.fromkeys(planned.step.part for planned in steps if planned.step.part))
    return Tool(key, parts, MappingProxyType(params))


def _keys(planned: PlannedStep, plan: Plan) -> Iterator[str]:
    step = planned.step
    yield from OF_STEP.get(step.key, ())
    kind = str(step.params.get("kind", ""))
    if kind in INTO_A_BUCKET:
        yield "bucket"
    if kind == "city inlet" or step.params.get("pressed") == "yes":
        yield "blunt tool"
    if step.params.get("bridged") == "yes":
        yield "bridge hose"
    if step.key == "draw from jug":
        where = plan.card.fitting[step.part.partition("/")[0]]
        if where.kind in {"city inlet", "demand pump", "strainer"}:
            yield "jug hose"
    for action in step.actions:
        fitting = plan.card.fitting.get(action.part.partition("/")[0].partition(".")[0])
        if fitting is not None and fitting.screws:
            yield "screwdriver"

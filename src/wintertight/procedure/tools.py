"""What has to be at hand for a job, by its steps; common practice of the trade."""

from collections.abc import Callable, Iterator, Mapping
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

SPARES: tuple[str, ...] = ("thread tape", "anode rod", "bowl seal", "cap", "screen washer")
"""Key of each small part that the work may find worn out, in the order in which they are listed."""

INTO_A_BUCKET = frozenset({"low point", "capped tee", "prepared stub", "membrane filter"})
"""Kinds whose outlet runs into a bucket."""


@dataclass(frozen=True, slots=True)
class Thing:
    """One thing to have at hand.

    Attributes:
        key: one of ``TOOLS`` or of ``SPARES``.
        parts: parts of the coach it is for, in the order of the steps; none where it is for all.
        params: one of ``REGULATOR``, what its regulator is set to [Pa].
    """

    key: str
    parts: tuple[str, ...] = ()
    params: Mapping[str, float | str] = field(default_factory=lambda: NOTHING)


_Need = tuple[str, tuple[str, ...]]
"""Key of a thing, and parts of the coach that it is for."""

REGULATOR = frozenset({"regulator_Pa", "pressure_Pa"})
"""What a step says of the regulator of its tool."""


def tools_of(plan: Plan) -> tuple[Thing, ...]:
    """Give what has to be at hand for the steps of a plan, each thing once.

    Args:
        plan: the plan.

    Returns:
        The tools, in the order of ``TOOLS``.
    """
    return _things(plan, TOOLS, _tools)


def spares_of(plan: Plan) -> tuple[Thing, ...]:
    """Give the small parts that the steps of a plan may find worn out, each once.

    Args:
        plan: the plan.

    Returns:
        The parts, in the order of ``SPARES``.
    """
    return _things(plan, SPARES, _spares)


def _things(
    plan: Plan, order: tuple[str, ...], of_step: Callable[[PlannedStep, Plan], Iterator[_Need]]
) -> tuple[Thing, ...]:
    needs: dict[str, dict[str, None]] = {}
    params: dict[str, dict[str, float | str]] = {}
    for planned in plan.steps:
        said = {k: v for k, v in planned.step.params.items() if k in REGULATOR}
        for key, parts in of_step(planned, plan):
            needs.setdefault(key, {}).update(dict.fromkeys(filter(None, parts)))
            params.setdefault(key, {}).update(said)
    return tuple(
        Thing(key, tuple(needs[key]), MappingProxyType(params[key]))
        for key in order
        if key in needs
    )


def _tools(planned: PlannedStep, plan: Plan) -> Iterator[_Need]:
    for key in _tool_keys(planned, plan):
        yield key, (planned.step.part,)


def _tool_keys(planned: PlannedStep, plan: Plan) -> Iterator[str]:
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


def _spares(planned: PlannedStep, plan: Plan) -> Iterator[_Need]:
    step = planned.step
    own = (step.part,)
    if step.key == "plug out":
        yield "thread tape", own
        if step.params.get("anode") == "yes":
            yield "anode rod", own
    if step.key in {"empty bowl", "cartridge out"}:
        yield "bowl seal", own
    if step.key == "caps off":
        yield "cap", tuple(action.part.partition("/")[0] for action in step.actions)
    turned = (plan.card.fitting.get(action.part.partition("/")[0]) for action in step.actions)
    inlets = dict.fromkeys(f.id for f in turned if f is not None and f.kind == "city inlet")
    if inlets and step.phase == "drain":
        yield "screen washer", tuple(inlets)

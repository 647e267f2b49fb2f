"""The steps of a job as its owner reads them: handles one by one, like steps put together."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from types import MappingProxyType
from typing import Literal

from wintertight.coach.card import Card
from wintertight.procedure.plan import Plan
from wintertight.procedure.steps import PlannedStep
from wintertight.units import System
from wintertight.wording.catalogue import say
from wintertight.wording.names import part_name
from wintertight.wording.spoken import begun, counted, listed
from wintertight.wording.steps import how_to_open, step_text

Stands = Literal["along", "across", "named"]

SET_AND_SET_BACK = frozenset({"work positions", "drain panel"})
"""Steps that turn a handle and turn it back; their sentence says how."""

ABOVE_THE_HANDLES = frozenset({"open handles", "open shut-off", "set bypass"})
"""Steps of which nothing is left to say once their handles are told."""

TOGETHER = frozenset({"pour a cup", "hold open", "loosen bowl", "empty bowl", "take out"})
"""Steps of one kind that may be put together."""


@dataclass(frozen=True, slots=True)
class HandleSet:
    """How one handle is set.

    Attributes:
        name: what it is called.
        stands: along or across its pipe, or at a position that is written there.
        setting: the same in words.
    """

    name: str
    stands: Stands
    setting: str

    def said(self, language: str = "en") -> str:
        """Give name and setting in a row."""
        return f"{say('guide', 'handle', language, name=self.name)} {self.setting}"


def handles_of(planned: PlannedStep, card: Card, language: str = "en") -> tuple[HandleSet, ...]:
    """Give how each handle of a step is set; none where it is set back in the same step."""
    if planned.step.key in SET_AND_SET_BACK:
        return ()
    return tuple(
        handle_set(card, action.part, action.setting, language)
        for action in planned.step.actions
        if action.verb == "set" and is_handle(card, action.part)
    )


def is_handle(card: Card, control: str) -> bool:
    """Tell whether a control is a handle of a valve or of a panel."""
    fitting = card.fitting.get(control)
    return fitting is not None and (bool(fitting.positions) or fitting.kind == "ball valve")


def handle_set(card: Card, control: str, setting: str, language: str = "en") -> HandleSet:
    """Give how one handle is set, in words."""
    name = part_name(card, control, language)
    if setting in {"along", "across"}:
        stands: Stands = "along" if setting == "along" else "across"
        return HandleSet(name, stands, say("setting", setting, language))
    written = {position.name for position in card.fitting[control].positions}
    position = setting if setting in written else say("setting", setting, language)
    return HandleSet(name, "named", say("guide", "set to", language, position=position))


def above_handles(planned: PlannedStep, card: Card, language: str, system: System) -> str:
    """Give what stands above the handles of a step, or all of a step that sets none."""
    if not handles_of(planned, card, language):
        return owner_text(planned, card, language, system)
    return say("guide step", planned.step.key, language)


def below_handles(planned: PlannedStep, card: Card, language: str, system: System) -> str:
    """Give what is left to do once the handles of a step are set; "" where that is nothing."""
    if not handles_of(planned, card, language):
        return ""
    if planned.step.key in ABOVE_THE_HANDLES:
        hose = planned.step.params.get("hose") == "yes"
        return say("guide step", "hose", language) if hose else ""
    return owner_text(planned, card, language, system)


def owner_text(planned: PlannedStep, card: Card, language: str, system: System) -> str:
    """Give the sentence of a step without its handles, and without the name of a product."""
    params = dict(planned.step.params)
    if "product" in params:
        params["product"] = say("guide", "antifreeze", language)
    actions = tuple(a for a in planned.step.actions if not is_handle(card, a.part))
    bare = replace(planned.step, params=MappingProxyType(params), actions=actions)
    return step_text(replace(planned, step=bare), card, language, system)


# ---- like steps put together ---------------------------------------------------------------


def can_follow(before: PlannedStep, planned: PlannedStep, card: Card) -> bool:
    """Tell whether a step may be put together with the one before it."""
    return _sort(before, card) is not None and _sort(before, card) == _sort(planned, card)


def _sort(planned: PlannedStep, card: Card) -> tuple[str, ...] | None:
    """Give what steps that go together have in common; None for a step that stays alone."""
    step = planned.step
    kind = str(step.params.get("kind", ""))
    if step.key not in TOGETHER or kind == "city inlet" or step.params.get("bridged") == "yes":
        return None
    if step.key == "hold open" and not how_to_open(step):
        return None
    fitting = card.fitting.get(step.part)
    if step.key == "take out" and fitting is not None and fitting.kind == "membrane filter":
        return None
    return (step.key,)


def numbers(steps: Sequence[PlannedStep], language: str = "en") -> str:
    """Give the numbers of steps that follow each other: "12", or "12 to 18"."""
    first, last = str(steps[0].n), str(steps[-1].n)
    if first == last:
        return first
    return say("guide group", "numbers", language, first=first, last=last)


def together(steps: Sequence[PlannedStep], card: Card, language: str = "en") -> str:
    """Give one sentence for steps of one kind."""
    key = steps[0].step.key
    items = say("guide group", "between", language).join(
        say(
            "guide group",
            f"{key} item",
            language,
            part=part_name(card, planned.step.part, language),
            how=how_to_open(planned.step, language),
            cups=counted(int(float(planned.step.params.get("cups", 0.0))), "cups", language),
        )
        for planned in steps
    )
    return begun(say("guide group", key, language, items=items))


def not_into(plan: Plan, language: str = "en") -> str:
    """Give where antifreeze must not get in at this coach."""
    card = plan.card
    found: dict[str, list[str]] = {key: [] for key in NOT_INTO}
    bypassed = any(s.step.key == "set bypass" for s in plan.steps)
    for fitting in card.fittings:
        if fitting.kind == "fresh tank" and fitting.seen == "present":
            found["tank"].append(fitting.id)
    for planned in plan.steps:
        key = _WHERE.get(planned.step.key, "")
        done_to = card.fitting.get(planned.step.part)
        coil = done_to is not None and done_to.kind == "hydronic coil"
        if key and (key != "bypassed" or (bypassed and not coil)):
            found[key].append(planned.step.part)
    places = [
        say(
            "guide caution",
            key,
            language,
            parts=listed((part_name(card, part, language) for part in parts), language),
        )
        for key, parts in found.items()
        if parts or key in EVERYWHERE
    ]
    between = say("guide group", "between", language)
    return say("guide caution", "not into", language, places=between.join(places))


NOT_INTO = ("tank", "bypassed", "cartridge", "taken out", "drinking", "ground")
"""Where antifreeze must not get in, in the order in which it is told."""

EVERYWHERE = frozenset({"drinking", "ground"})
"""Those of them that are true of every coach."""

_WHERE: Mapping[str, str] = MappingProxyType(
    {
        "heat off": "bypassed",
        "cartridge out": "cartridge",
        "fridge filter out": "cartridge",
        "take out": "taken out",
    }
)
"""By the key of the step that sees to it."""


def then_side(control: str, language: str = "en") -> str:
    """Give the second side of a tap whose sides share a row: "then hot side"."""
    return say("guide group", f"then {control.rpartition('.')[2]}", language)

"""The pictures of a plan: what each step turns, where the front is, and how it ends."""

import math
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Literal

from wintertight.coach.card import Card, Fitting
from wintertight.coach.kinds import ROLES
from wintertight.documents.drawing.picture import Pattern, Picture
from wintertight.documents.drawing.pictures import close_up, contents_picture, whole_coach
from wintertight.documents.drawing.scene import shown
from wintertight.documents.drawing.svg_text import svg_text
from wintertight.procedure.fronts import LineContent, at_first_colour
from wintertight.procedure.plan import Plan
from wintertight.procedure.steps import PlannedStep, part_of
from wintertight.proof.claims import PartProof
from wintertight.wording.catalogue import say
from wintertight.wording.names import part_name
from wintertight.wording.spoken import begun
from wintertight.wording.steps import step_text

TURNED = frozenset(ROLES)
"""Kinds of fitting with a handle that is set."""

NEAR_M = 1.0
"""Valves of one step that stand nearer than this to each other are in one picture [m]."""

_HELD: Mapping[LineContent, Pattern] = {
    "antifreeze": "antifreeze", "weak": "mixed", "water": "water", "air": "air",
}  # fmt: skip

_CLAIMED: Mapping[str, Pattern] = {
    "filled": "antifreeze",
    "drained": "air",
    "swept": "air",
    "removed": "air",
    "kept warm": "water",
}


Shows = Literal["coach", "handles", "front", "end"]
"""What a picture of a plan shows: the whole coach, how handles stand, where the antifreeze is when
a telling outlet shows colour, or how the job ends."""


@dataclass(frozen=True, slots=True)
class StepPicture:
    """A picture of a plan, drawn once for every paper that shows it.

    Attributes:
        picture: what is drawn.
        shows: what it is about.
        svg: its SVG text.
        step: number of the step it belongs to; None where it is of the whole job.
    """

    picture: Picture
    shows: Shows
    svg: str
    step: int | None = None


def _drawn(picture: Picture, shows: Shows, step: int | None = None) -> StepPicture:
    return StepPicture(picture, shows, svg_text(picture), step)


def plan_pictures(plan: Plan, language: str = "en") -> tuple[StepPicture, ...]:
    """Draw all pictures of a plan.

    Args:
        plan: the plan.
        language: two letters.

    Returns:
        The whole coach, then in the order of the steps what each turns and where the front is at
        telling outlets, then the end.
    """
    found = [_drawn(whole_coach(plan.card, language), "coach")]
    for planned in plan.steps:
        found += _handles(plan, planned, language)
        front = front_picture(plan, planned, language) if planned.telling else None
        if front is not None:
            found.append(_drawn(front, "front", planned.n))
    return (*found, end_drawn(plan, language))


def end_drawn(plan: Plan, language: str = "en") -> StepPicture:
    """Draw how a plan, or what a record proves, ends."""
    return _drawn(end_picture(plan, language), "end")


def handle_pictures(plan: Plan, language: str = "en") -> tuple[StepPicture, ...]:
    """Draw how handles must stand, for each step that turns one."""
    return tuple(shown for planned in plan.steps for shown in _handles(plan, planned, language))


def _handles(plan: Plan, planned: PlannedStep, language: str) -> list[StepPicture]:
    return [_drawn(one, "handles", planned.n) for one in _turned(plan, planned, language)]


def _turned(plan: Plan, planned: PlannedStep, language: str) -> Iterator[Picture]:
    settings, back = settings_of(plan.card, planned), set_back_of(plan.card, planned)
    groups = _near([plan.card.fitting[part] for part in settings])
    beside = tuple(f.id for f in shown(plan.card) if f.kind != "tee")
    for place, group in enumerate(groups):
        name = f"step-{planned.n}" + (f"-{place + 1}" if len(groups) > 1 else "")
        title = say(
            "drawing",
            "step",
            language,
            n=str(planned.n),
            text=step_text(planned, plan.card, language),
        )
        parts = tuple(f.id for f in group)
        yield close_up(
            plan.card, name, title, parts, settings, back=back, beside=beside, language=language
        )


def settings_of(card: Card, planned: PlannedStep) -> Mapping[str, str]:
    """Give how a step sets the handles it turns, by id of the fitting: while its work is done."""
    return {part: settings[0] for part, settings in _set(card, planned).items()}


def set_back_of(card: Card, planned: PlannedStep) -> Mapping[str, str]:
    """Give how a step leaves the handles that it sets more than once, by id of the fitting."""
    return {
        part: settings[-1] for part, settings in _set(card, planned).items() if len(settings) > 1
    }


def _set(card: Card, planned: PlannedStep) -> Mapping[str, list[str]]:
    """Give the settings of each handle that a step turns, one after the other."""
    found: dict[str, list[str]] = {}
    for action in planned.step.actions:
        turned = card.fitting.get(action.part) if action.verb == "set" else None
        if turned is not None and turned.kind in TURNED and turned.at is not None:
            found.setdefault(action.part, []).append(action.setting)
    return found


def _near(fittings: list[Fitting]) -> list[list[Fitting]]:
    """Part fittings into groups whose members hang together by short distances."""
    groups: list[list[Fitting]] = []
    for fitting in fittings:
        close = [g for g in groups if any(_distance_m(fitting, other) < NEAR_M for other in g)]
        merged = [other for group in close for other in group]
        groups = [g for g in groups if g not in close]
        groups.append([*merged, fitting])
    return groups


def _distance_m(one: Fitting, other: Fitting) -> float:
    if one.at is None or other.at is None:
        return math.inf
    return one.at.distance_m(other.at)


def front_picture(plan: Plan, planned: PlannedStep, language: str = "en") -> Picture | None:
    """Draw what each line holds when colour first shows at the outlet of a step.

    Args:
        plan: the plan.
        planned: a step that runs an outlet until colour.
        language: two letters.

    Returns:
        The picture, by the replay at best values; None where no colour comes.
    """
    outlet = planned.step.outlet or ""
    held = at_first_colour(plan.best, plan.product, outlet)
    if not held:
        return None
    card = plan.card
    patterns: dict[str, Pattern] = {line.id: _HELD[held.get(line.id, "air")] for line in card.lines}
    about = part_of(outlet)
    name = begun(part_name(card, outlet, language))
    meaning = {
        pattern: say("drawing", f"pattern {pattern}", language) for pattern in _HELD.values()
    }
    return contents_picture(
        card,
        f"front-{planned.n}",
        say("drawing", "front at", language, n=str(planned.n), part=name),
        patterns,
        {about: say("drawing", "colour here", language)},
        meaning,
        bold=frozenset({about}),
        small=True,
        language=language,
    )


def end_picture(plan: Plan, language: str = "en") -> Picture:
    """Draw what is claimed of each part at the end of a plan.

    Args:
        plan: the plan.
        language: two letters.

    Returns:
        The picture: lines by their claims, fittings named with theirs, what is open in bold.
    """
    card = plan.card
    worst = _worst(plan.parts)
    patterns: dict[str, Pattern] = {line.id: _pattern_of(worst.get(line.id)) for line in card.lines}
    names, bold = {}, set()
    for fitting in shown(card):
        proof = worst.get(fitting.id)
        if fitting.kind == "tee" or proof is None:
            continue
        pattern = _pattern_of(proof)
        word = say("drawing", f"pattern {pattern}", language)
        if pattern in {"unproven", "gap"}:
            bold.add(fitting.id)
        else:
            word = say("drawing", f"claim {proof.claim}", language)
        part = begun(part_name(card, fitting.id, language))
        names[fitting.id] = say("drawing", "claimed", language, part=part, claim=word)
    meaning: dict[Pattern, str] = {
        "antifreeze": say("drawing", "claim filled", language),
        "air": say("drawing", "pattern air", language),
        "water": say("drawing", "claim kept warm", language),
        "unproven": say("drawing", "pattern unproven", language),
        "gap": say("drawing", "pattern gap", language),
    }
    return contents_picture(
        card,
        "end",
        say("drawing", "end", language, coach=card.name),
        patterns,
        names,
        meaning,
        settings=plan.careful.end.settings,
        bold=frozenset(bold),
        language=language,
    )


def _worst(parts: tuple[PartProof, ...]) -> Mapping[str, PartProof]:
    """Give the proof that counts of each part, what is in it among it: the worst."""
    found: dict[str, PartProof] = {}
    for proof in parts:
        part = part_of(proof.id)
        if part not in found or _badness(proof) > _badness(found[part]):
            found[part] = proof
    return found


def _badness(proof: PartProof) -> int:
    return {True: 0, None: 1, False: 2}[proof.safe]


def _pattern_of(proof: PartProof | None) -> Pattern:
    if proof is None or proof.safe is None:
        return "unproven"
    return _CLAIMED[proof.claim] if proof.safe else "gap"

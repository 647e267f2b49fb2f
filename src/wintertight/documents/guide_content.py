"""What stands on an owner's guide, as plain data for its template."""

from collections.abc import Iterator, Mapping, Sequence
from typing import Any

import wintertight
from wintertight.documents.card_digits import card_digits
from wintertight.documents.guide_density import Density
from wintertight.documents.open_parts import open_groups
from wintertight.documents.outlet_notes import outlet_notes
from wintertight.documents.shown_cautions import shown_cautions
from wintertight.documents.stretches import stretches
from wintertight.procedure.plan import Plan
from wintertight.procedure.steps import PlannedStep
from wintertight.units import System, in_words
from wintertight.wording.at_hand import tools_line
from wintertight.wording.catalogue import say
from wintertight.wording.names import part_name
from wintertight.wording.owner_guide import (
    buy_lines,
    check_lines,
    flame_cautions,
    never_heading,
    never_lines,
    never_means,
    off_lines,
    shop_lines,
    spring_heading,
    spring_lines,
    void_lines,
)
from wintertight.wording.owner_steps import (
    above_handles,
    below_handles,
    can_follow,
    handles_of,
    not_into,
    numbers,
    then_side,
    together,
)
from wintertight.wording.plans import hold_line, minutes_line, verdict_of_plan, warnings
from wintertight.wording.spoken import about, begun
from wintertight.wording.steps import caution, how_to_open, step_why

Plain = dict[str, Any]

MOST_NAMES = 8
"""So many parts with one remedy are named; the rest is counted."""

PICTURE_AT: Mapping[str, str] = {"set bypass": "bypass", "draw from jug": "way in"}
"""Name of the picture that belongs to a step, by the step's key."""


def guide_content(  # noqa: PLR0913, PLR0917 - a plan and how to say it
    plan: Plan,
    language: str,
    paper: str,
    system: System,
    density: Density,
    pictures: frozenset[str] = frozenset(),
) -> Plain:
    """Give everything that stands on the owner's guide of a plan.

    Args:
        plan: the plan.
        language: two letters.
        paper: "us-letter" or "a4".
        system: "us" or "metric".
        density: how closely it is set.
        pictures: names of the pictures that there are.

    Returns:
        Plain data; the same plan gives the same data.
    """
    words = ("heading", "buy", "check", "off", "open", "shop", "void", "mind", "tap", "colour")
    labels = {word: say("guide", word, language) for word in (*words, "count", "blow")}
    labels["colon"] = say("label", "colon", language)
    labels["semicolon"] = say("phrase", "semicolon", language)
    digits = card_digits(plan.card)
    engine = say("label", "engine", language, version=wintertight.__version__)
    card = f"{say('label', 'card', language)} {digits}"
    return {
        "lang": language,
        "paper": paper,
        "size_pt": density.size_pt,
        "run_in": density.run_in,
        "labels": labels,
        "title": say("guide", "title", language, id=plan.card.id),
        "coach": f"{plan.card.id}  {plan.card.name}",
        "verdict": " ".join(_verdict(plan, language, system)),
        "how": say("guide", "how", language, method=say("method", plan.method, language)),
        "minutes": minutes_line(plan.duration.p50, language, plan.method),
        "buy": list(buy_lines(plan, language, system)),
        "tools": tools_line(plan, language, system),
        "checks": list(check_lines(plan, language, system)),
        "off": list(off_lines(plan, language)),
        "phases": list(_Steps(plan, language, system, density, pictures).phases()),
        "never": {
            "heading": never_heading(plan, language),
            "means": never_means(plan, language),
            "checks": list(never_lines(plan, language, system)),
        },
        "open": list(_open_parts(plan, language, system)),
        "shop": list(shop_lines(plan, language)),
        "void": list(void_lines(plan, language, system)),
        "spring": {
            "heading": spring_heading(plan, language),
            "lines": list(spring_lines(plan, language)),
        },
        "limits": say("guide", "limits", language, engine=engine),
        "card": card,
        "page_of": say("label", "page", language, page="<", pages=">"),
    }


def _verdict(plan: Plan, language: str, system: System) -> Iterator[str]:
    yield verdict_of_plan(plan, language, system)
    hold = hold_line(plan, language, system)
    if hold is not None:
        yield hold


def _open_parts(plan: Plan, language: str, system: System) -> Iterator[list[str]]:
    """Give names and remedy of parts that are not proven, the worst first, then warnings."""
    for group in open_groups(plan, language, system):
        yield [f"{group.named(MOST_NAMES, language)} ({group.word})", group.settle]
    for warning in warnings(plan, language, system):
        yield ["", warning]


# ---- steps ---------------------------------------------------------------------------------


class _Steps:
    """The steps of one plan, said in one way."""

    def __init__(
        self,
        plan: Plan,
        language: str,
        system: System,
        density: Density,
        pictures: frozenset[str],
    ) -> None:
        self._plan = plan
        self._language = language
        self._system = system
        self._density = density
        self._pictures = pictures
        self._cautions = shown_cautions(plan.steps)
        self._notes = outlet_notes(plan, language)

    def phases(self) -> Iterator[Plain]:
        """Give the phases of the job as they follow, with their steps; taps stand in tables."""
        for phase, parted in stretches(self._plan.steps, lambda s: bool(s.run or s.blow)):
            yield {
                "heading": say("phase", phase, self._language),
                "blocks": [
                    self._table(some) if tabled else {"rows": self._rows(some)}
                    for tabled, some in parted
                ],
            }

    def _rows(self, steps: Sequence[PlannedStep]) -> list[Plain]:
        return [self._row(some) for some in self._gathered(steps)]

    def _gathered(self, steps: Sequence[PlannedStep]) -> list[list[PlannedStep]]:
        """Put steps of one kind together where there is no room for each."""
        found: list[list[PlannedStep]] = []
        for planned in steps:
            joins = (
                self._density.together
                and found
                and can_follow(found[-1][-1], planned, self._plan.card)
            )
            if joins:
                found[-1].append(planned)
            else:
                found.append([planned])
        return found

    def _row(self, steps: Sequence[PlannedStep]) -> Plain:
        plan, language, first = self._plan, self._language, steps[0]
        alone = len(steps) == 1
        handles = handles_of(first, plan.card, language) if alone else ()
        picture = PICTURE_AT.get(first.step.key, "")
        return {
            "n": numbers(steps, language),
            "text": above_handles(first, plan.card, language, self._system)
            if alone
            else together(steps, plan.card, language),
            "handles": [
                {
                    "name": say("guide", "handle", language, name=handle.name),
                    "stands": handle.stands,
                    "setting": handle.setting,
                }
                for handle in handles
            ],
            "then": below_handles(first, plan.card, language, self._system) if alone else "",
            "why": step_why(first.step, language) if self._density.whys else "",
            "cautions": [c for planned in steps for c in self._minded(planned)],
            "picture": self._picture(picture) if picture in self._pictures else None,
        }

    def _picture(self, name: str) -> Plain:
        caption = say("guide", f"{name} picture", self._language)
        return {"name": name, "caption": caption, "alt": caption}

    def _minded(self, planned: PlannedStep) -> Iterator[str]:
        """Give what to mind at a step: as on the job sheet, and what an owner may not know."""
        language, key = self._language, planned.step.key
        for known in self._cautions[planned.n]:
            yield caution(known, language)
        if key == "heat off":
            yield say("guide caution", "heat stays off", language)
        if key in {"draw from jug", "hand pump on"}:
            yield not_into(self._plan, language)
            for burns in flame_cautions(self._plan):
                yield say("buying", burns, language)

    # ---- taps ------------------------------------------------------------------------------

    def _table(self, steps: Sequence[PlannedStep]) -> Plain:
        plan, language = self._plan, self._language
        blows = steps[0].blow is not None
        kind = ": blow" if blows else ""
        first = begun(part_name(plan.card, steps[0].step.part, language))
        return {
            "blows": blows,
            "first": say("guide", f"first{kind}", language, tap=first),
            "rounds": say("guide", f"rounds{kind}", language),
            "taps": [self._tap(some) for some in self._sided(steps)],
        }

    def _sided(self, steps: Sequence[PlannedStep]) -> list[list[PlannedStep]]:
        """Put the two sides of a tap together where there is no room for each."""
        found: list[list[PlannedStep]] = []
        for planned in steps:
            before = found[-1][-1].step.part if found else ""
            part, _, side = planned.step.part.rpartition(".")
            same = side in {"hot", "cold"} and before.rpartition(".")[0] == part
            if self._density.pairs and same and len(found[-1]) == 1:
                found[-1].append(planned)
            else:
                found.append([planned])
        return found

    def _tap(self, steps: Sequence[PlannedStep]) -> Plain:
        plan, language = self._plan, self._language
        first, *more = (planned.step.part for planned in steps)
        return {
            "n": numbers(steps, language),
            "names": [
                begun(part_name(plan.card, first, language)),
                *(then_side(control, language) for control in more),
            ],
            "colours": [self._colour(s) for s in steps],
            "counts": [self._count(s) for s in steps],
            "notes": list(dict.fromkeys(note for s in steps for note in self._told(s))),
            "cautions": [c for s in steps for c in self._minded(s)],
        }

    def _colour(self, planned: PlannedStep) -> str:
        if planned.run is None:
            return ""
        return about(planned.run.first_colour_s, self._language)

    def _count(self, planned: PlannedStep) -> str:
        if planned.blow is not None:
            bursts = planned.blow.work.bursts
            seconds = planned.blow.work.seconds if bursts else None
            return about(seconds, self._language)
        return in_words(planned.run_on_s or 0.0, "time", self._system)

    def _told(self, planned: PlannedStep) -> Iterator[str]:
        """Give what stands in brackets behind the name of an outlet."""
        language, run = self._language, planned.run
        way = self._notes.get(planned.n, how_to_open(planned.step, language))
        if way:
            yield way
        if planned.blow is not None and not planned.blow.work.bursts:
            yield say("guide", "not cleared", language)
        if run is not None and run.first_colour_s is None:
            volume = in_words(run.volume_m3, "volume", self._system)
            yield say("guide", "no colour", language, volume=volume)
        elif planned.step.outlet in self._plan.never_clear:
            yield say("guide", "weak here", language)

"""What stands on a job sheet, as plain data for its template."""

from collections.abc import Iterator
from typing import Any

import wintertight
from wintertight.documents.card_digits import card_digits
from wintertight.documents.open_parts import open_groups
from wintertight.documents.outlet_notes import outlet_notes
from wintertight.documents.shown_cautions import shown_cautions
from wintertight.documents.stretches import stretches
from wintertight.procedure.missed import matter_most
from wintertight.procedure.plan import Plan
from wintertight.procedure.steps import PlannedStep
from wintertight.units import System, in_words
from wintertight.wording.at_hand import things
from wintertight.wording.catalogue import catalogue, say
from wintertight.wording.names import part_name
from wintertight.wording.places import place_text, precondition_text
from wintertight.wording.plans import (
    bring_line,
    hold_line,
    minutes_line,
    notes,
    verdict_of_plan,
)
from wintertight.wording.spoken import about, begun
from wintertight.wording.steps import caution, step_text

Plain = dict[str, Any]

MOST_NAMES = 6
"""So many parts with one remedy are named on the sheet; the screen names more."""

MOST_JUG_BOXES = 14
"""More jugs than this are written down as a number."""


def sheet_content(plan: Plan, language: str, paper: str, system: System) -> Plain:
    """Give everything that stands on the job sheet of a plan."""
    labels = {key: text for key, text in catalogue(language)["label"].items() if "{" not in text}
    digits = card_digits(plan.card)
    jugs = plan.buy.count + plan.buy.spare
    return {
        "lang": language,
        "paper": paper,
        "labels": labels,
        "title": f"{labels['job sheet']} {plan.card.id}",
        "coach": f"{plan.card.id}  {plan.card.name}",
        "verdict": " ".join(_verdict(plan, language, system)),
        "bring": bring_line(plan.buy, language, system),
        "minutes": minutes_line(plan.duration.p50, language, plan.method),
        "fields": list(_fields(plan, language, system)),
        "phases": list(_Steps(plan, language, system).phases()),
        "asks_reading": any(s.step.key == "take reading" for s in plan.steps),
        "asks_jugs": jugs > 0,
        "jugs": jugs if jugs <= MOST_JUG_BOXES else 0,
        "open": list(_open_parts(plan, language, system)),
        "before": _before(plan, language, system),
        "at_hand_heading": say("at hand", "heading", language),
        "at_hand": list(_at_hand(plan, language, system)),
        "notes": list(notes(plan, language, system)),
        "engine": say("label", "engine", language, version=wintertight.__version__),
        "card": f"{labels['card']} {digits}",
        "page_of": say("label", "page", language, page="<", pages=">"),
    }


def _before(plan: Plan, language: str, system: System) -> Plain | None:
    """Give what the place means, and what comes before the slot, where the place is known."""
    if plan.place is None:
        return None
    return {
        "heading": say("place", "before", language),
        "place": place_text(plan.place, plan.hindrances, language, system),
        "checks": [precondition_text(p, plan.card, language, system) for p in plan.preconditions],
    }


def _at_hand(plan: Plan, language: str, system: System) -> Iterator[Plain]:
    for subject in ("tool", "spare"):
        named = [text for _, text in things(plan, subject, language, system)]
        if named:
            yield {"lead": say("at hand", subject, language), "things": named}


def _verdict(plan: Plan, language: str, system: System) -> Iterator[str]:
    yield verdict_of_plan(plan, language, system)
    hold = hold_line(plan, language, system)
    if hold is not None:
        yield hold


def _fields(plan: Plan, language: str, system: System) -> Iterator[list[str]]:
    site = plan.card.site.name if plan.card.site else say("label", "no site", language)
    yield [say("label", "site", language), site]
    low = in_words(plan.low_degC, "temperature", system)
    yield [say("label", "design low", language), low]
    yield [say("label", "method", language), begun(say("method", plan.method, language))]


# ---- steps ---------------------------------------------------------------------------------


class _Steps:
    """The steps of one plan, said in one way."""

    def __init__(self, plan: Plan, language: str, system: System) -> None:
        self._plan = plan
        self._language = language
        self._system = system
        self._cautions = shown_cautions(plan.steps)
        self._musts = never_skip(plan)
        self._ways = outlet_notes(plan, language)

    def phases(self) -> Iterator[Plain]:
        """Give the phases of the job as they follow; outlets stand in tables."""
        for phase, parted in stretches(self._plan.steps, lambda s: s.run is not None):
            yield {
                "heading": say("phase", phase, self._language),
                "blocks": [
                    {"outlets": [self._outlet(s) for s in some]}
                    if tabled
                    else {"steps": [self._step(s) for s in some]}
                    for tabled, some in parted
                ],
            }

    def _step(self, planned: PlannedStep) -> Plain:
        text = step_text(planned, self._plan.card, self._language, self._system)
        return {"text": text, **self._marked(planned)}

    def _outlet(self, planned: PlannedStep) -> Plain:
        run = planned.run
        return {
            "name": begun(part_name(self._plan.card, planned.step.part, self._language)),
            "how": self._ways.get(planned.n, ""),
            "colour": about(run.first_colour_s if run else None, self._language),
            "run_on": in_words(planned.run_on_s or 0.0, "time", self._system),
            "telling": planned.telling,
            **self._marked(planned),
        }

    def _marked(self, planned: PlannedStep) -> Plain:
        """Give what every step carries: number, cautions, and whether it must not be skipped."""
        return {
            "n": planned.n,
            "cautions": [caution(key, self._language) for key in self._cautions[planned.n]],
            "must": planned.n in self._musts,
        }


def never_skip(plan: Plan) -> frozenset[int]:
    """Give the numbers of the few steps whose loss would cost most: hazards, then silent gaps."""
    hazards = {s.n for s in plan.steps if s.if_missed and s.if_missed.outcome == "hazard"}
    return frozenset(hazards | set(matter_most(plan.steps)))


# ---- what is open, and what is worth knowing -----------------------------------------------


def _open_parts(plan: Plan, language: str, system: System) -> Iterator[list[str]]:
    """Give names and remedy of parts that are not proven, the worst first."""
    for group in open_groups(plan, language, system):
        yield [f"{group.named(MOST_NAMES, language)} ({group.word})", group.settle]

"""Days in a bay that EPANET stands in for: what a technician would write down of each.

Coaches are drawn by another law than the product draws them: lengths and hollows evenly within
their spread, the pump and the technician's habits evenly too. EPANET fills them in plug flow. What
is written down has errors: a second on every time, a tenth of a gallon on the jugs, a hundredth on
every cup that is read. Colour that is there when the tap opens is not timed but called "at once".
"""

import itertools
import json
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cached_property
from pathlib import Path
from typing import Any

import numpy as np

from tests.engines.bay_twin import Filled, drawn_card, fill_there
from tests.unit.documents.demo_plans import demo_plan
from wintertight.procedure.chances import AS_RECORDED, CROSSES
from wintertight.procedure.hindsight.cups import cups_of
from wintertight.procedure.hindsight.diagnosis import VOLUME_WITHIN, weigh
from wintertight.procedure.hindsight.doubts import spoken_for
from wintertight.procedure.hindsight.explanations import (
    CAUSE_OF,
    Explanation,
    possible_explanations,
)
from wintertight.procedure.hindsight.foreseen import Foreseen, Rehearsal
from wintertight.procedure.hindsight.learning import Visit, learn
from wintertight.procedure.hindsight.look_back import Cause, by_cause
from wintertight.procedure.hindsight.observed import Observed, observe
from wintertight.procedure.mistakes import Mistake, possible_mistakes
from wintertight.procedure.record import Event
from wintertight.procedure.steps import Step
from wintertight.units import GALLON_M3

TIMED_SD_S, COUNTED_SD_GALLON, READ_SD = 1.0, 0.1, 0.01
AT_ONCE_S = 0.5

FARTHEST_S = 60.0
"""The farthest hot tap gives the cup [s]; one that takes longer has a heater to rinse first."""

MADE = (
    "heater left open",
    "bypass shut",
    "shower crossing",
    "pause button",
    "low point left open",
    "branch left shut",
    "weak product",
)
"""Mistakes that are made here, all that EPANET can make of those that are asked for."""

Pairs = tuple[tuple[Event, Step], ...]


@dataclass(frozen=True)
class Made:
    """One thing that goes wrong: its name, the cause that is to be found, and how it is made."""

    name: str
    cause: str
    mistakes: tuple[Mistake | None, ...] = (None,)
    skips: frozenset[str] = frozenset()


class Bay:
    """One coach of the demo, its plan, and what each explanation lets one expect."""

    def __init__(self, name: str, folder: Path) -> None:
        """Plan it; all fillings of one bay write into one folder."""
        self.plan = demo_plan(name)
        self.folder = folder
        self.by_id = {p.step.id: p for p in self.plan.steps}
        self.taps = [
            p.step.outlet
            for p in self.plan.steps
            if p.step.outlet and self.plan.careful.network.controls[p.step.outlet].thing == "tap"
        ]
        due_s = {p.step.outlet: p.run.first_colour_s or 0.0 for p in self.plan.steps if p.run}
        hot = [tap for tap in self.taps if tap.endswith(".hot") and due_s[tap] < FARTHEST_S]
        self.hot = max(hot, key=lambda tap: due_s[tap])

    @cached_property
    def rehearsal(self) -> Rehearsal:
        """The job, to be done over."""
        strength = 1.0 - self.plan.product.contents().water
        return Rehearsal.of(self.plan.card, self.plan.steps, strength)

    @cached_property
    def foreseen(self) -> tuple[Foreseen, ...]:
        """What each explanation lets one expect."""
        steps = [p.step for p in self.plan.steps]
        possible = possible_explanations(self.plan, steps, [self.hot])
        return tuple(self.rehearsal.foresee(each) for each in possible)

    def made(self) -> Iterator[Made]:
        """Give what can go wrong at this coach: nothing first."""
        yield Made("nothing wrong", "as recorded")
        for kind in CROSSES[:1]:
            skips = frozenset(
                p.step.id
                for p in self.plan.steps
                if p.step.outlet
                and self.plan.card.fitting[p.step.outlet.partition(".")[0]].kind == kind
            )
            if skips:
                yield Made(f"forgotten {kind}", "forgotten outlet", skips=skips)
        possible = [
            m for m in possible_mistakes(self.plan) if m.key in MADE and m.circumstance != "drained"
        ]
        groups: dict[str, list[Mistake]] = {}
        for mistake in possible:
            cause = CAUSE_OF[mistake.key]
            place = "" if cause in {"wrong bypass", "weak product"} else f", {mistake.part}"
            groups.setdefault(f"{cause}{place}", []).append(mistake)
        for name, mistakes in groups.items():
            yield Made(name, CAUSE_OF[mistakes[0].key], tuple(mistakes))

    def days(self, made: Made, rng: np.random.Generator) -> Iterator[Observed]:
        """Give what is observed on one day after another, each with another coach."""
        for mistake in itertools.cycle(made.mistakes):
            day = Day(self, rng)
            yield self.observed(day.events(mistake, made.skips, rng))

    def observed(self, pairs: Pairs) -> Observed:
        """Collect the observations of a record."""
        network, product = self.plan.careful.network, self.plan.product
        cups = cups_of(pairs, network, product)
        return observe(pairs, self.by_id, product.container_m3, cups)

    def doubted(self, observed: Observed) -> bool:
        """Tell whether some explanation is likely enough to doubt parts by."""
        return bool(spoken_for(weigh(self.foreseen, observed)))

    def causes(self, observed: Observed) -> tuple[Cause, ...]:
        """Rank the causes by what was observed."""
        return by_cause(weigh(self.foreseen, observed))


class Day:
    """One coach and one technician."""

    def __init__(self, bay: Bay, rng: np.random.Generator) -> None:
        """Draw them."""
        self.bay = bay
        self.card = drawn_card(bay.plan.card, rng)
        self.counting = rng.uniform(0.8, 1.2)
        self.seeing_s = rng.uniform(0.0, 2.0)
        self.pump = rng.uniform(0.9, 1.1)

    def events(
        self, mistake: Mistake | None, skips: frozenset[str], rng: np.random.Generator
    ) -> Pairs:
        """Do the job once, by EPANET, and write it down; what was forgotten is ticked too."""
        counting = self.counting * rng.uniform(0.93, 1.07)
        filled = self.fill(counting, mistake, skips)
        return tuple(written_down(self, filled, counting, mistake, rng))

    def fill(
        self, counting: float, mistake: Mistake | None = None, skips: frozenset[str] = frozenset()
    ) -> Filled:
        """Let EPANET fill the coach."""
        return fill_there(
            self.bay.plan,
            self.card,
            self.bay.folder,
            mistake,
            skips=skips,
            counting=counting,
            seeing_s=self.seeing_s,
            pump=self.pump,
        )

    def used_m3(self, filled: Filled) -> float:
        """Give what a filling took from the jugs, the cups poured included [m3]."""
        steps = (p.step for p in self.bay.plan.steps)
        poured = sum(a.volume_m3 for s in steps for a in s.actions if a.verb == "pour")
        return filled.drawn_m3 + poured


def written_down(
    day: Day, filled: Filled, counting: float, mistake: Mistake | None, rng: np.random.Generator
) -> Iterator[tuple[Event, Step]]:
    """Write a record, step by step, with the errors of watch, jugs and refractometer."""
    bay, seen = day.bay, {s.outlet: s for s in filled.seen}
    product = bay.plan.product
    share = product.glycol or 0.0
    weak = mistake is not None and mistake.key == "weak product"
    jug = share * (1.0 - float(mistake.params["share"])) if mistake and weak else share
    brought = float(np.ceil(day.used_m3(filled) / product.container_m3)) + 1.0
    for planned in bay.plan.steps:
        step, more = planned.step, dict[str, Any]()
        run = seen.get(step.outlet or "")
        if run is not None and run.first_colour_s is None:
            more["result"] = "failed"
        elif run is not None and planned.telling:
            more |= _timed(run.first_colour_s or 0.0, day.seeing_s, rng)
            ran_on_s = counting * (planned.run_on_s or 0.0) + day.seeing_s
            more["run_on_s"] = max(0.5, ran_on_s + rng.normal(0.0, TIMED_SD_S))
        if step.key == "draw from jug":
            more |= {"jugs_left": brought, "reading": _cup(jug, rng)}
        if step.key == "take reading":
            used = day.used_m3(filled) + rng.normal(0.0, COUNTED_SD_GALLON * GALLON_M3)
            strength = seen[bay.hot].strength if bay.hot in seen else 0.0
            cup = _cup(share * strength, rng)
            left = max(0.0, brought - used / product.container_m3)
            more |= {"part": bay.hot, "jugs_left": left, "reading": cup}
        entry = {"id": str(planned.n), "seq": planned.n, "step": step.id, "result": "done"}
        yield Event.model_validate_json(json.dumps({**entry, **more})), step


def _timed(colour_s: float, seeing_s: float, rng: np.random.Generator) -> Mapping[str, float]:
    if colour_s < AT_ONCE_S:
        return {"first_colour_s": 0.0}
    written = colour_s + 0.5 * seeing_s + rng.normal(0.0, TIMED_SD_S)
    return {"first_colour_s": max(0.1, written)}


def _cup(share: float, rng: np.random.Generator) -> dict[str, Any]:
    value = float(np.clip(share + rng.normal(0.0, READ_SD), 0.0, 1.0))
    return {
        "kind": "glycol share",
        "value": value,
        "unit": "1",
        "instrument": "refractometer",
        "zeroed": True,
    }


def teach(bay: Bay, coaches: int) -> dict[int, tuple[float, int]]:
    """Learn from one and from three visits to many coaches; compare with the visit after that.

    Gives, by visits, how wide the band of gallons is over what the plan printed, and how many
    times it holds what EPANET then uses.
    """
    rng = np.random.default_rng(20_261_130)
    usual = bay.rehearsal.foresee(Explanation(AS_RECORDED, chance=1.0))
    used = np.sum(usual.step_m3, axis=0)
    used = used * (1.0 + VOLUME_WITHIN * rng.standard_normal(len(used)))
    printed = bay.plan.antifreeze.p95 - bay.plan.antifreeze.p05
    widths: dict[int, list[float]] = {1: [], 3: []}
    hits = dict.fromkeys(widths, 0)
    for _ in range(coaches):
        day = Day(bay, rng)
        visits = [Visit(bay.observed(day.events(None, frozenset(), rng)), usual) for _ in range(3)]
        truth_m3 = day.used_m3(day.fill(day.counting * rng.uniform(0.93, 1.07)))
        for count, found in widths.items():
            learned = learn(visits[:count], {"gallons": used})
            assert learned is not None
            after = learned.quantities["gallons"].after
            found.append((after.p95 - after.p05) / printed)
            hits[count] += after.p05 <= truth_m3 <= after.p95
    return {count: (float(np.mean(widths[count])), hits[count]) for count in widths}

"""Run a course of every coach, on the careful side, and print what was seen as JSON."""

import json
import sys
from dataclasses import replace
from functools import cache
from math import nan
from pathlib import Path
from types import MappingProxyType

from tests.engines.fleet import CARDS, drawing
from wintertight.coach.load import load_card
from wintertight.flow.actions import Action
from wintertight.flow.build import build_network
from wintertight.flow.case import CAREFUL
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.course import lay_course, rules_for
from wintertight.flow.kernels.compiled import COMPILED
from wintertight.flow.replay import Trace, replay
from wintertight.flow.state import State, arriving_state
from wintertight.flow.until import Until
from wintertight.fluids.contents import Contents
from wintertight.procedure.missed import in_strides

PINK = Contents(glycol=0.499)
RUN_ON_S = 4.0
LIMIT_M3 = 2e-3


@cache
def ready(path: Path) -> tuple[CoachNetwork, State, list[str], str]:
    """Give a coach on the careful side, drawing glycol, its outlets in turn, and its source.

    Accumulators breathe between two runs, which a course does not know: they are left out.
    """
    here = drawing(path)
    coach = replace(build_network(load_card(path), CAREFUL), breathers=())
    state = arriving_state(coach).with_settings(dict(here.state.settings))
    state = state.with_feed(here.source, PINK)
    some = {
        link: state.held[link] for link, spec in coach.links.items() if spec.holding != "nothing"
    }
    return coach, replace(state, held=MappingProxyType(some)), here.outlets, here.source


def course_of(path: Path) -> dict[str, list[float]]:
    """Run the course of a coach and give what was seen, row by row."""
    coach, state, outlets, source = ready(path)
    course = lay_course(coach, state, outlets, source)
    seen = course.run(rules_for(len(outlets), PINK, run_on_s=RUN_ON_S, limit_m3=LIMIT_M3))
    return {
        "colour_s": seen.colour_s.tolist(),
        "volume_m3": seen.volume_m3.tolist(),
        "seconds": seen.seconds.tolist(),
        **{f"in {link}": mean.tolist() for link, mean in seen.means.items()},
    }


def replay_of(path: Path, *, strides: bool = False) -> Trace:
    """Do the same by a replay, closely or in the long strides of a missed step."""
    coach, state, outlets, _ = ready(path)
    coach = in_strides(coach) if strides else coach
    until = Until(run_on_s=RUN_ON_S, limit_m3=LIMIT_M3)
    return replay(coach, state, [Action("run", outlet, until=until) for outlet in outlets])


def seen_in(trace: Trace) -> dict[str, list[float]]:
    """Give what was seen in a replay, row by row, and what every link holds at its end."""
    runs = [m.outcome.run for m in trace.moments if m.outcome.run]
    return {
        "colour_s": [nan if run.first_colour_s is None else run.first_colour_s for run in runs],
        "volume_m3": [run.volume_m3 for run in runs],
        "seconds": [run.seconds for run in runs],
        "strength": [run.strength for run in runs],
        "air_m3": [run.air_m3 for run in runs],
        **{f"in {link}": held.mean().tolist() for link, held in trace.end.held.items()},
    }


def main() -> None:
    """Print what each coach's course gave, and what its replays gave."""
    found = {path.stem: course_of(path) for path in CARDS}
    for path in CARDS:
        for strides in (False, True):
            found[f"{path.stem} {strides}"] = seen_in(replay_of(path, strides=strides))
    found["compiled"] = {"yes": [float(COMPILED)]}
    json.dump(found, sys.stdout)


if __name__ == "__main__":
    main()

"""Run a course of every coach, on the careful side, and print what was seen as JSON."""

import json
import sys
from dataclasses import replace
from functools import cache
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


def plain_replay(path: Path) -> Trace:
    """Do the same with the plain engine."""
    coach, state, outlets, _ = ready(path)
    until = Until(run_on_s=RUN_ON_S, limit_m3=LIMIT_M3)
    return replay(coach, state, [Action("run", outlet, until=until) for outlet in outlets])


def main() -> None:
    """Print what each coach's course gave."""
    found = {path.stem: course_of(path) for path in CARDS}
    found["compiled"] = {"yes": [float(COMPILED)]}
    json.dump(found, sys.stdout)


if __name__ == "__main__":
    main()

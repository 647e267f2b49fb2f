"""Time courses against EPANET's runs of the same coaches, in this process, and compare both."""

import sys
import tempfile
from collections.abc import Callable
from contextlib import ExitStack
from dataclasses import replace
from pathlib import Path
from types import MappingProxyType

import numpy as np
import numpy.typing as npt

from bench.timing import best_ms
from tests.engines.coach_twin import PINK, WATER_M2_S, hollow_twin, settled_fronts
from tests.engines.epanet_twin import crossing_time, opened_for_fronts
from tests.engines.fleet import CARDS, Drawing, drawing
from wintertight.flow.actions import Action
from wintertight.flow.course import Course, lay_course, rules_for
from wintertight.flow.hydraulics import steady_flow
from wintertight.flow.kernels.compiled import COMPILED
from wintertight.flow.replay import replay
from wintertight.flow.state import arriving_state, with_outlet_open
from wintertight.flow.steady import PipeNetwork
from wintertight.flow.until import Until

EACH_S = 30
WHOLE_M3 = 1.0
"""More than any outlet lets out meanwhile: nothing changes the flow, so it is looked at once."""

FINE_S = 0.05
"""Seconds between two samples where fronts are compared [s]."""

SLOW = 20.0
"""EPANET mixes over its steps of a second: where fronts are compared, a second is so many steps."""

Bools = npt.NDArray[np.bool_]


def displaced(here: Drawing) -> Drawing:
    """Give a coach whose every hollow is displaced, as EPANET knows it."""
    links = {
        name: replace(link, holding="plug") if link.holding == "vessel" else link
        for name, link in here.coach.links.items()
    }
    coach = replace(here.coach, links=MappingProxyType(links))
    fresh = arriving_state(coach)
    state = replace(here.state, held=fresh.held, pools=fresh.pools, books=fresh.books)
    return replace(here, coach=coach, state=state)


def laid(here: Drawing, outlets: list[str] | None = None) -> Course:
    """Lay the course of a coach with EPANET's law of friction."""
    return lay_course(
        here.coach, here.state, outlets or here.outlets, here.source, friction="epanet"
    )


def run_of(course: Course) -> Callable[[], npt.NDArray[np.float64]]:
    """Give a call that runs a course and gives the strength at each outlet, each second."""
    rules = rules_for(
        len(course.outlets),
        PINK,
        seconds=float(EACH_S),
        viscosity_m2_s=WATER_M2_S,
        chunk_m3=WHOLE_M3,
    )
    return lambda: course.run(rules, samples=EACH_S).series


def open_there(here: Drawing, twin: PipeNetwork, outlet: str) -> Bools:
    """Tell which links of the copy are open: those that move."""
    state = with_outlet_open(here.coach, here.state, outlet)
    flow = steady_flow(here.coach, state, friction="epanet", viscosity_m2_s=WATER_M2_S).flow_m3_s
    moving = dict(zip(here.coach.links, flow != 0.0, strict=True))
    return np.array([moving[name.removeprefix("hollow ")] for name in twin.link_ids])


def there(here: Drawing, stack: ExitStack) -> Callable[[], object]:
    """Give a call in which EPANET runs every outlet, files read beforehand."""
    twin = hollow_twin(here.coach)
    supply = {here.coach.sources[here.source].node: 1.0}
    solves = [
        stack.enter_context(
            opened_for_fronts(
                twin,
                open_there(here, twin, outlet),
                WATER_M2_S,
                Path(stack.enter_context(tempfile.TemporaryDirectory())),
                supply=supply,
                duration_s=float(EACH_S),
            )
        )
        for outlet in here.outlets
    ]
    return lambda: [solve() for solve in solves]


def fronts_apart_s(here: Drawing) -> float:
    """Give the largest difference in when half of what arrives has arrived at an outlet [s]."""
    twin, worst = hollow_twin(here.coach), 0.0
    for outlet in here.outlets:
        course = laid(here, [outlet])
        rules = rules_for(
            1,
            PINK,
            seconds=float(EACH_S),
            viscosity_m2_s=WATER_M2_S,
            chunk_m3=WHOLE_M3,
            each_s=FINE_S,
        )
        ours = course.run(rules, samples=round(EACH_S / FINE_S)).series[0]
        if ours.max() <= 0.0:
            continue
        link = here.coach.links[here.coach.outlets[outlet].link]
        watched = link.start if link.holding == "nothing" else f"after {link.id}"
        with tempfile.TemporaryDirectory() as folder:
            times, seen = settled_fronts(
                twin,
                open_there(here, twin, outlet),
                WATER_M2_S,
                Path(folder),
                supply={here.coach.sources[here.source].node: 1.0},
                watch=[watched],
                duration_s=float(EACH_S),
                slow=SLOW,
            )
        arrived = FINE_S * int(np.flatnonzero(ours > 0.5 * ours.max())[0])
        worst = max(worst, abs(arrived - crossing_time(times, seen[watched], 0.5 * ours.max())))
    return worst


def apart_from_plain(here: Drawing) -> float:
    """Give the largest difference of what a replay lets out and leaves [litres, shares]."""
    actions = [Action("run", o, until=Until(seconds=float(EACH_S))) for o in here.outlets]
    trace = replay(here.coach, here.state, actions)
    course = lay_course(here.coach, here.state, here.outlets, here.source)
    rules = rules_for(len(course.outlets), PINK, seconds=float(EACH_S), viscosity_m2_s=WATER_M2_S)
    seen = course.run(rules)
    out = np.array([m.outcome.run.volume_m3 for m in trace.moments if m.outcome.run])
    left = max(
        float(np.abs(trace.end.held[link].mean() - mean).max()) for link, mean in seen.means.items()
    )
    return max(1e3 * float(np.abs(out - seen.volume_m3).max()), left)


def main() -> None:
    """Print a line for displaced hollows and one for stirred vessels."""
    how = "compiled" if COMPILED else "plain"
    ours = {"displaced": 0.0, "stirred": 0.0}
    theirs, count, apart, from_plain = 0.0, 0, 0.0, 0.0
    for path in CARDS:
        stirred = drawing(path).with_one_viscosity()
        plug = displaced(stirred)
        count += len(plug.outlets)
        ours["displaced"] += best_ms(run_of(laid(plug)))
        ours["stirred"] += best_ms(run_of(laid(stirred)))
        with ExitStack() as stack:
            theirs += best_ms(there(plug, stack))
        apart = max(apart, fronts_apart_s(plug))
        from_plain = max(from_plain, apart_from_plain(stirred))
    lines = [
        f"{count} outlets of {len(CARDS)} coaches, {EACH_S} s each, vessels {kind}, {how}: "
        f"{took:.1f} ms; EPANET {theirs:.1f} ms, ratio {took / theirs:.3f}, "
        f"{theirs / took:.1f} times as fast"
        for kind, took in ours.items()
    ]
    lines.append(
        f"the same, {how}: fronts at most {apart:.2f} s from EPANET's; volumes and contents at "
        f"most {from_plain:.1e} from the replay's"
    )
    sys.stdout.write("\n".join(lines) + "\n")


if __name__ == "__main__":
    main()

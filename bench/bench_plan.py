"""A whole plan of the demo coach, and one replay of it against EPANET's in the same run."""

import tempfile
import time
from collections.abc import Callable, Iterator
from contextlib import ExitStack
from pathlib import Path

from tests.engines.epanet_twin import opened_for_fronts
from wintertight.coach.load import load_card
from wintertight.flow.actions import Action, with_outlet_open
from wintertight.flow.build import build_network
from wintertight.flow.case import PLUG
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.hydraulics import passes, pipe_network
from wintertight.flow.replay import replay
from wintertight.flow.state import State, arriving_state
from wintertight.flow.until import Until
from wintertight.fluids.contents import Contents
from wintertight.fluids.product import Product
from wintertight.procedure.plan import plan_coach

CARD = Path(__file__).parents[1] / "src/wintertight/demo/cards/middle-travel-trailer.toml"
ROUNDS = 5
EACH_S = 30.0
WATER_M2_S = 1.3e-6
DRAWING = {
    "jug-hose": "in the jug",
    "jug-valve": "along",
    "tank-valve": "across",
    "heater-cold-valve": "across",
    "heater-hot-valve": "across",
    "bypass-valve": "along",
    "pump/switch": "on",
}


def best_ms(work: Callable[[], object]) -> float:
    """Give the shortest time over some rounds, the first of which warms up [ms]."""
    times = []
    for _ in range(ROUNDS + 1):
        begin = time.perf_counter()
        work()
        times.append(time.perf_counter() - begin)
    return 1e3 * min(times[1:])


def drawing(coach: CoachNetwork) -> State:
    """Give the coach as it draws from the jug, past its heater."""
    state = arriving_state(coach)
    for control, setting in DRAWING.items():
        state = state.with_setting(control, setting)
    return state.with_feed("jug-hose", Contents(glycol=0.5))


def measure() -> Iterator[str]:
    """Give a line for the plan, and one for the replay beside the other engine."""
    card = load_card(CARD)
    pink = Product("pink", 0.5, 0.0, -45.6, -12.2, 0.003785)
    whole = best_ms(lambda: plan_coach(card, pink, -23.3))
    yield f"whole plan of the demo coach, without missed steps, warm: {whole:.0f} ms"
    coach = build_network(card, PLUG)
    state = drawing(coach)
    actions = [Action("run", outlet, until=Until(seconds=EACH_S)) for outlet in coach.outlets]
    ours = best_ms(lambda: replay(coach, state, actions))
    network = pipe_network(coach)
    with ExitStack() as stack:
        solves = []
        for outlet in coach.outlets:
            folder = Path(stack.enter_context(tempfile.TemporaryDirectory()))
            solve = opened_for_fronts(
                network,
                passes(coach, with_outlet_open(coach, state, outlet)),
                WATER_M2_S,
                folder,
                supply={coach.sources["jug-hose"].node: 1.0},
                duration_s=EACH_S,
            )
            solves.append(stack.enter_context(solve))
        theirs = best_ms(lambda: [solve() for solve in solves])
    yield (
        f"replay of {len(actions)} outlets, {EACH_S:.0f} s each, plug flow, viscosity as it "
        f"changes: {ours:.0f} ms; EPANET, one viscosity, looks each second: {theirs:.1f} ms, "
        f"ratio {ours / theirs:.1f}"
    )

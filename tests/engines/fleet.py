"""Every coach of the demo as it draws from the jug, every outlet shut: where comparisons begin."""

from dataclasses import dataclass, replace
from functools import cache
from pathlib import Path

from tests.engines.coach_twin import PINK, WATER_M2_S
from wintertight.coach.load import load_card
from wintertight.flow.build import build_network
from wintertight.flow.case import PLUG
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.state import State, arriving_state
from wintertight.fluids.product import Product
from wintertight.procedure.methods.pump_steps import pump_job, steps_before_filling

CARDS = sorted((Path(__file__).parents[2] / "src/wintertight/demo/cards").glob("*.toml"))
WATERY = Product("water of another name", None, None, None, None, 1e-3)


@dataclass(frozen=True)
class Drawing:
    """A coach drawing from the jug, every outlet shut."""

    coach: CoachNetwork
    state: State
    source: str

    @property
    def outlets(self) -> list[str]:
        """Every outlet, but the inlet that the jug's hose is on."""
        through = self.coach.controls[self.source].part
        return [o for o in self.coach.outlets if self.coach.controls[o].part != through]

    def with_one_viscosity(self) -> "Drawing":
        """Give it as another engine can know it: one viscosity, no accumulator that breathes."""
        case = replace(self.coach.case, viscosity_m2_s=WATER_M2_S)
        return replace(self, coach=replace(self.coach, case=case, breathers=()))


@cache
def drawing(path: Path) -> Drawing:
    """Give a coach as its own plan sets it before the first outlet is run."""
    card = load_card(path)
    coach = build_network(card, PLUG)
    job = pump_job(card, coach, WATERY)
    state = arriving_state(coach)
    for step in steps_before_filling(job):
        for action in step.actions:
            if action.verb == "set":
                state = state.with_setting(action.part, action.setting)
    return Drawing(coach, state.with_feed(job.enters_by.source, PINK), job.enters_by.source)

"""Coaches ready to be filled, each made once, to go round their outlets in any order."""

from functools import cache

from tests.unit.procedure.demo_coach import DEMO, PINK, celsius
from wintertight.coach.load import load_card
from wintertight.procedure.orders import Round, ready_to_fill

LOW = celsius(-10.0)

FEW = ("kitchen.cold", "kitchen.hot", "toilet", "shower.cold", "shower.hot")
"""Outlets of the small trailer, nearest first; few enough that all their orders can be tried."""


@cache
def ready(name: str = "small-trailer", low_degC: float = LOW) -> Round:
    """Give a bundled coach with the pump on."""
    return ready_to_fill(load_card(DEMO / "cards" / f"{name}.toml"), PINK, low_degC)

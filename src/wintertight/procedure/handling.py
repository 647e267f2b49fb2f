"""Hands-on time of each kind of step, beside the running of fluid; common practice, no source."""

from collections.abc import Mapping
from types import MappingProxyType

HANDLING_S: Mapping[str, float] = MappingProxyType(
    {
        "heat off": 60.0,
        "pressure off": 60.0,
        "open shut-off": 20.0,
        "open bypass to drain": 20.0,
        "open taps": 60.0,
        "open tank drain": 45.0,
        "open low points": 120.0,
        "open relief": 45.0,
        "plug out": 150.0,
        "open handles": 60.0,
        "caps off": 60.0,
        "caps on": 60.0,
        "let it drain": 300.0,
        "hold open": 30.0,
        "work positions": 90.0,
        "empty bowl": 60.0,
        "drain panel": 60.0,
        "open rinse inlet": 45.0,
        "cartridge out": 150.0,
        "take out": 180.0,
        "carry in": 90.0,
        "fridge filter out": 90.0,
        "clear ice maker": 300.0,
        "maker's steps": 600.0,
        "run pump dry": 30.0,
        "empty waste tanks": 240.0,
        "shut everything": 90.0,
        "set bypass": 60.0,
        "close heater": 120.0,
        "draw from jug": 90.0,
        "open diverter": 15.0,
        "close diverter": 15.0,
        "pump on": 15.0,
        "air on": 180.0,
        "blow outlet": 20.0,
        "air off": 45.0,
        "run outlet": 20.0,
        "hand pump on": 120.0,
        "pump off": 15.0,
        "hand pump off": 30.0,
        "leave taps open": 60.0,
        "work pedal": 10.0,
        "loosen bowl": 30.0,
        "pour a cup": 25.0,
        "warm it": 1200.0,
        "let it thaw out": 1800.0,
        "look for cracks": 1200.0,
        "test trunk": 900.0,
        "test branch": 720.0,
        "plan anew": 0.0,
        "take reading": 180.0,
        "hang tag": 60.0,
        "hang tag for the night": 30.0,
        "added setting": 20.0,
        "added run": 20.0,
        "added pour": 25.0,
    }
)
"""Best value by key of step [s]."""

HANDLING_SPREAD = 0.30
"""Standard deviation of the logarithm of a step's handling time [1]; common practice."""

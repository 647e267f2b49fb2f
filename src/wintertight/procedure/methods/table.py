"""The methods by name, and how each is worked out."""

from collections.abc import Mapping
from types import MappingProxyType

from wintertight.procedure.methods import (
    air,
    air_then_pump,
    drain_only,
    hand_pump,
    hold,
    pump,
    thaw,
)
from wintertight.procedure.methods.worked import WorkOut

FIRST_AID = frozenset({"thaw"})
"""Methods that are no choice among others: they are for a coach on which others are refused."""

METHODS: Mapping[str, WorkOut] = MappingProxyType(
    {
        "pump": pump.work_out,
        "hand-pump": hand_pump.work_out,
        "air": air.work_out,
        "air-then-pump": air_then_pump.work_out,
        "drain": drain_only.work_out,
        "hold": hold.work_out,
        "thaw": thaw.work_out,
    }
)
"""Every method, by name."""

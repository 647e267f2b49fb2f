"""The kinds of fitting a coach may have, as one table.

A kind fixes the ports of a fitting, how its hollow takes up what flows through it, and whether a
frozen content could grow somewhere. Every hollow and every pocket carries its source; most are
common practice of the trade, and each card may give its own volume.

Pockets (what a hollow does when slush grows in it):
  open      an open end, a compliant wall or air above: the burst criterion suffices
  relieved  rigid, but the procedure opens it: the burst criterion suffices once that was done
  sealed    rigid and never opened: the content must not freeze at all, or it must be empty
"""

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Literal

Pocket = Literal["open", "relieved", "sealed"]
Mixing = Literal["none", "displaced", "stirred", "vessel"]

LITRE = 1e-3
"""One litre [m3]."""


@dataclass(frozen=True, slots=True)
class Kind:
    """What is true of every fitting of one kind.

    Attributes:
        ports: names of the places where lines join; ``("",)`` is one unnamed place where any
            number of lines may join.
        hollow_m3: usual content [m3]; 0 where it holds nothing worth counting.
        mixing: how the hollow takes up what flows through: displaced (plug), stirred, or a vessel
            that is drained rather than flushed.
        pocket: what it does when slush grows in it.
        relief: key of the relieving action that makes it a relieved pocket, if any.
        outlets: ports from which fluid leaves to the open when the fitting is opened.
        wetted: False for things that never hold potable water under pressure.
        source: key of the source for hollow and pocket.
    """

    ports: tuple[str, ...] = ("",)
    hollow_m3: float = 0.0
    mixing: Mixing = "none"
    pocket: Pocket = "open"
    relief: str | None = None
    outlets: tuple[str, ...] = ()
    wetted: bool = True
    source: str = "common-practice"


_TAP = Kind(
    ports=("hot", "cold"),
    hollow_m3=0.03 * LITRE,
    mixing="displaced",
    pocket="relieved",
    relief="leave tap open",
    outlets=("hot", "cold"),
)


def _one_outlet(litres: float, relief: str) -> Kind:
    """Give a fixture with one line and one outlet."""
    return Kind(
        hollow_m3=litres * LITRE,
        mixing="displaced",
        pocket="relieved",
        relief=relief,
        outlets=("",),
    )


def _dead_end(litres: float) -> Kind:
    """Give the end of a line that goes nowhere, and can be opened."""
    return Kind(hollow_m3=litres * LITRE, mixing="displaced", outlets=("",))


def _removed(litres: float) -> Kind:
    """Give what is taken out for the winter, with a hose in its place."""
    return Kind(ports=("in", "out"), hollow_m3=litres * LITRE, mixing="displaced")


KINDS: Mapping[str, Kind] = MappingProxyType(
    {
        # joints
        "tee": Kind(),
        "manifold": Kind(),
        "capped tee": _dead_end(0.01),
        "prepared stub": _dead_end(0.02),
        # supply
        "fresh tank": Kind(mixing="vessel", hollow_m3=150 * LITRE),
        "antifreeze hose": Kind(),
        "strainer": Kind(
            ports=("in", "out"),
            hollow_m3=0.06 * LITRE,
            mixing="stirred",
            pocket="relieved",
            relief="loosen strainer bowl",
        ),
        "demand pump": Kind(
            ports=("in", "out"),
            hollow_m3=0.12 * LITRE,
            mixing="stirred",
            pocket="relieved",
            relief="unload pump",
        ),
        "filter housing": Kind(
            ports=("in", "out"),
            hollow_m3=0.9 * LITRE,
            mixing="stirred",
            pocket="relieved",
            relief="loosen filter bowl",
        ),
        "accumulator": Kind(hollow_m3=0.7 * LITRE, mixing="stirred"),
        "softener": _removed(20.0),
        "UV sleeve": _removed(0.8),
        "membrane filter": Kind(hollow_m3=8.0 * LITRE, mixing="vessel", outlets=("",)),
        "pressure regulator": Kind(hollow_m3=0.1 * LITRE, wetted=False),
        "supply hose": Kind(hollow_m3=1.0 * LITRE, wetted=False),
        "outside filter": Kind(hollow_m3=1.0 * LITRE, wetted=False),
        "city inlet": Kind(
            hollow_m3=0.02 * LITRE,
            mixing="displaced",
            pocket="open",
            outlets=("",),
        ),
        # valves
        "ball valve": Kind(
            ports=("a", "b"),
            hollow_m3=0.005 * LITRE,
            mixing="displaced",
            pocket="relieved",
            relief="half-turn valve",
        ),
        "check valve": Kind(ports=("in", "out"), hollow_m3=0.005 * LITRE, mixing="displaced"),
        "three-way valve": Kind(
            ports=("common", "left", "right"),
            hollow_m3=0.005 * LITRE,
            mixing="displaced",
        ),
        "service panel": Kind(
            ports=("tank", "inlet", "pump", "system"),
            hollow_m3=0.01 * LITRE,
            mixing="displaced",
        ),
        "tempering valve": Kind(
            ports=("hot", "cold", "mixed"),
            hollow_m3=0.03 * LITRE,
            mixing="displaced",
        ),
        "low point": Kind(
            hollow_m3=0.005 * LITRE,
            mixing="displaced",
            outlets=("",),
        ),
        # heat
        "tank heater": Kind(
            ports=("cold", "hot"),
            hollow_m3=22.7 * LITRE,
            mixing="vessel",
            pocket="relieved",
            relief="open heater",
        ),
        "on-demand heater": Kind(ports=("cold", "hot"), hollow_m3=1.2 * LITRE, mixing="displaced"),
        "hydronic coil": Kind(ports=("cold", "hot"), hollow_m3=0.6 * LITRE, mixing="displaced"),
        # fixtures
        "kitchen tap": _TAP,
        "lavatory tap": _TAP,
        "shower": _TAP,
        "tub": _TAP,
        "outside shower": _TAP,
        "outside kitchen": _TAP,
        "spray port": _one_outlet(0.03, "leave spray open"),
        "whirlpool": _TAP,
        "recirculating diverter": Kind(ports=("hot", "cold")),
        "bidet sprayer": _one_outlet(0.15, "leave spray open"),
        "gravity toilet": _one_outlet(0.04, "hold toilet pedal"),
        "vacuum toilet": _one_outlet(0.06, "hold toilet pedal"),
        "macerating toilet": _one_outlet(0.06, "hold toilet pedal"),
        "cassette toilet": _one_outlet(0.06, "hold toilet pedal"),
        # appliances
        "ice maker": Kind(outlets=("",)),
        "door dispenser": Kind(hollow_m3=1.0 * LITRE, mixing="displaced", outlets=("",)),
        "fridge filter": Kind(ports=("in", "out"), hollow_m3=0.4 * LITRE, mixing="stirred"),
        "washer": Kind(
            ports=("hot", "cold"),
            hollow_m3=0.03 * LITRE,
            mixing="displaced",
            outlets=("hot", "cold"),
        ),
        "dishwasher": Kind(hollow_m3=0.03 * LITRE, mixing="displaced", outlets=("",)),
        # waste side
        "trap": Kind(hollow_m3=0.25 * LITRE, mixing="stirred", wetted=False),
        "gray tank": Kind(mixing="vessel", hollow_m3=120 * LITRE, wetted=False),
        "black tank": Kind(mixing="vessel", hollow_m3=120 * LITRE, wetted=False),
        "tank rinse": Kind(hollow_m3=0.2 * LITRE, wetted=False),
        "macerator": Kind(hollow_m3=0.5 * LITRE, wetted=False),
    }
)

ASKED_FOR: tuple[str, ...] = (
    "accumulator",
    "bidet sprayer",
    "capped tee",
    "city inlet",
    "dishwasher",
    "door dispenser",
    "fridge filter",
    "hydronic coil",
    "ice maker",
    "macerator",
    "manifold",
    "membrane filter",
    "on-demand heater",
    "outside kitchen",
    "outside shower",
    "prepared stub",
    "recirculating diverter",
    "service panel",
    "softener",
    "spray port",
    "tank rinse",
    "tempering valve",
    "three-way valve",
    "tub",
    "UV sleeve",
    "washer",
    "whirlpool",
)
"""Kinds whose absence must be said on the card: unlisted means nobody has looked."""

ROLES: Mapping[str, tuple[str, ...]] = MappingProxyType(
    {
        "ball valve": (
            "tank suction",
            "antifreeze inlet",
            "heater cold",
            "heater hot",
            "heater bypass",
            "branch shut-off",
        ),
        "three-way valve": ("pump suction", "heater cold", "heater hot"),
        "service panel": ("pump suction",),
    }
)
"""What a valve is for, where the planner must know."""

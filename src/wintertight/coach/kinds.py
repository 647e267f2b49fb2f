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
    modelled: bool = True
    source: str = "common-practice"


_TAP = Kind(
    ports=("hot", "cold"),
    hollow_m3=0.03 * LITRE,
    mixing="displaced",
    pocket="relieved",
    relief="leave tap open",
    outlets=("hot", "cold"),
)

KINDS: Mapping[str, Kind] = MappingProxyType(
    {
        # joints
        "tee": Kind(),
        "manifold": Kind(modelled=False),
        "capped tee": Kind(modelled=False),
        "prepared stub": Kind(modelled=False),
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
        "accumulator": Kind(modelled=False),
        "softener": Kind(ports=("in", "out"), modelled=False),
        "UV sleeve": Kind(ports=("in", "out"), modelled=False),
        "membrane filter": Kind(ports=("in", "out"), modelled=False),
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
        "check valve": Kind(
            ports=("in", "out"), hollow_m3=0.005 * LITRE, mixing="displaced", pocket="sealed"
        ),
        "three-way valve": Kind(ports=("common", "left", "right"), modelled=False),
        "service panel": Kind(ports=("tank", "city", "pump", "system"), modelled=False),
        "tempering valve": Kind(ports=("hot", "cold", "mixed"), modelled=False),
        "low point": Kind(
            hollow_m3=0.005 * LITRE,
            mixing="displaced",
            outlets=("",),
        ),
        # heat
        "tank heater": Kind(
            ports=("cold", "hot"), hollow_m3=22.7 * LITRE, mixing="vessel", pocket="sealed"
        ),
        "on-demand heater": Kind(ports=("cold", "hot"), modelled=False),
        "hydronic coil": Kind(ports=("cold", "hot"), modelled=False),
        # fixtures
        "kitchen tap": _TAP,
        "lavatory tap": _TAP,
        "shower": _TAP,
        "tub": _TAP,
        "outside shower": _TAP,
        "outside kitchen": Kind(ports=("hot", "cold"), modelled=False),
        "spray port": Kind(modelled=False),
        "whirlpool": Kind(ports=("hot", "cold"), modelled=False),
        "recirculating diverter": Kind(ports=("hot", "cold"), modelled=False),
        "bidet sprayer": Kind(modelled=False),
        "gravity toilet": Kind(
            hollow_m3=0.04 * LITRE,
            mixing="displaced",
            pocket="relieved",
            relief="hold toilet pedal",
            outlets=("",),
        ),
        "vacuum toilet": Kind(modelled=False),
        "macerating toilet": Kind(modelled=False),
        "cassette toilet": Kind(modelled=False),
        # appliances
        "ice maker": Kind(modelled=False),
        "door dispenser": Kind(modelled=False),
        "fridge filter": Kind(ports=("in", "out"), modelled=False),
        "washer": Kind(ports=("hot", "cold"), modelled=False),
        "dishwasher": Kind(modelled=False),
        # waste side
        "trap": Kind(hollow_m3=0.25 * LITRE, mixing="stirred", wetted=False),
        "gray tank": Kind(mixing="vessel", hollow_m3=120 * LITRE, wetted=False),
        "black tank": Kind(mixing="vessel", hollow_m3=120 * LITRE, wetted=False),
        "tank rinse": Kind(modelled=False),
        "macerator": Kind(modelled=False, wetted=False),
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
    }
)
"""What a valve is for, where the planner must know."""

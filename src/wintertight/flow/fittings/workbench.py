"""What is being built, and the few shapes of which all fittings are made."""

from dataclasses import dataclass, field

from wintertight.coach.card import Card, Fitting
from wintertight.coach.kinds import KINDS
from wintertight.coach.quantity import Quantity
from wintertight.flow.case import Case
from wintertight.flow.coach_network import (
    Breather,
    Control,
    Gate,
    Holding,
    Link,
    Opening,
    Outlet,
    Pool,
    Source,
)
from wintertight.flow.losses import emitter_resistance, fitting_resistance

AIR = "(air)"
"""Suffix of the node of open air behind an outlet."""


@dataclass(slots=True)
class Workbench:
    """A network under construction."""

    card: Card
    case: Case
    links: dict[str, Link] = field(default_factory=dict)
    controls: dict[str, Control] = field(default_factory=dict)
    sources: dict[str, Source] = field(default_factory=dict)
    outlets: dict[str, Outlet] = field(default_factory=dict)
    openings: list[Opening] = field(default_factory=list)
    pools: dict[str, Pool] = field(default_factory=dict)
    heights_m: dict[str, float] = field(default_factory=dict)
    heater_ports: dict[str, tuple[str, str]] = field(default_factory=dict)
    breathers: list[Breather] = field(default_factory=list)
    unmodelled: list[str] = field(default_factory=list)

    def control(self, fitting: Fitting, thing: str, settings: str, suffix: str = "") -> str:
        """Add a control; the first of its settings is how it is found; give its id."""
        return self.control_of(fitting, thing, tuple(settings.split(" | ")), suffix)

    def control_of(
        self, fitting: Fitting, thing: str, settings: tuple[str, ...], suffix: str = ""
    ) -> str:
        """Add a control from a tuple of settings; give its id."""
        name = fitting.id + suffix
        self.controls[name] = Control(name, fitting.id, thing, settings, settings[0])
        return name

    def hollow_m3(self, fitting: Fitting) -> float:
        """Give what a fitting holds [m3]: the card's value, or the usual one of its kind."""
        usual = KINDS[fitting.kind].hollow_m3
        if fitting.volume is None and usual == 0.0:
            return 0.0
        return self.case.volume_m3(fitting.volume or Quantity.known(usual, "guessed"))

    def holding(self, fitting: Fitting) -> Holding:
        """Give how a flow-through fitting holds its content."""
        mixing = KINDS[fitting.kind].mixing
        if mixing == "none" or self.hollow_m3(fitting) == 0.0:
            return "nothing"
        return "plug" if mixing == "displaced" or self.case.mixing == "plug" else "vessel"

    def pool_below(self, fitting: Fitting) -> str:
        """Give the trap or tank a fitting drains to; "" where there is none that is known."""
        below = self.card.fitting.get(fitting.drains_to or "")
        return below.id if below is not None and below.seen == "present" else ""

    def joint(self, fitting: Fitting) -> None:
        """Add a place where lines join, and nothing else."""
        self.heights_m[fitting.id] = height_of(fitting)

    def through(
        self,
        fitting: Fitting,
        gate: Gate | None = None,
        *,
        one_way: bool = False,
        loss: str = "",
    ) -> Link:
        """Add the one link of a fitting with two ports."""
        first, second = fitting.ports
        start, end = f"{fitting.id}.{first}", f"{fitting.id}.{second}"
        self.heights_m[start] = self.heights_m[end] = height_of(fitting)
        link = Link(
            id=fitting.id,
            part=fitting.id,
            start=start,
            end=end,
            resistance_s2_m5=fitting_resistance(loss or fitting.kind),
            one_way=one_way,
            holding=self.holding(fitting),
            volume_m3=self.hollow_m3(fitting),
            gate=gate,
        )
        self.links[link.id] = link
        return link

    def source(  # noqa: PLR0913 - a source in all its parts
        self,
        fitting: Fitting,
        gate: Gate,
        head_m: float,
        suffix: str,
        name: str,
        *,
        joins: str = "",
    ) -> None:
        """Join a node of fixed head [m] to a fitting's node, or to another one."""
        node, link = f"{name}(source)", f"{fitting.id}{suffix}"
        self.heights_m[node] = height_of(fitting)
        self.links[link] = Link(
            id=link,
            part=fitting.id,
            start=node,
            end=joins or fitting.id,
            resistance_s2_m5=fitting_resistance("source"),
            one_way=True,
            gate=gate,
        )
        self.sources[name] = Source(name, node, link, head_m)

    def outlet(self, fitting: Fitting, port: str, gate: Gate, pool: str) -> None:
        """Add an outlet from a fitting's node to the open air, holding the fitting's body."""
        node = f"{fitting.id}.{port}" if port else fitting.id
        self.heights_m[node] = self.heights_m[node + AIR] = height_of(fitting)
        volume = self.hollow_m3(fitting) if KINDS[fitting.kind].mixing == "displaced" else 0.0
        link = Link(
            id=node + "(outlet)",
            part=fitting.id,
            start=node,
            end=node + AIR,
            resistance_s2_m5=emitter_resistance(fitting.kind),
            one_way=True,
            holding="plug" if volume else "nothing",
            volume_m3=volume,
            gate=gate,
            drops_to=pool,
        )
        self.links[link.id] = link
        opens = tuple((gate.control, setting) for setting in sorted(gate.passes)[:1])
        self.outlets[gate.control] = Outlet(gate.control, opens, link.id, node)
        self.openings.append(Opening(node, height_of(fitting), gate))

    def simple_outlet(self, fitting: Fitting, thing: str, settings: str, opened: str) -> None:
        """Add a fitting with one line that ends in an outlet."""
        name = self.control(fitting, thing, settings)
        self.outlet(fitting, "", Gate(name, frozenset({opened})), self.pool_below(fitting))


def height_of(fitting: Fitting) -> float:
    """Give the height of a fitting above the floor.

    Args:
        fitting: the fitting.

    Returns:
        Height [m]; 0 where the card gives no place.
    """
    return fitting.at.height_m if fitting.at else 0.0

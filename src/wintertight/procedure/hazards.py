"""Orders that are refused: one table of (action, state) and why.

A hazard never depends on how the rest of the job goes: it is asked before each action is done.
"""

from collections.abc import Callable
from dataclasses import dataclass

from wintertight.coach.card import Card
from wintertight.flow.actions import Action
from wintertight.flow.coach_network import CoachNetwork, Gate, Link
from wintertight.flow.state import ICE, State
from wintertight.flow.stream import AIR

BURNS_AT = 0.20
"""Share of ethanol from which a product counts as one that can catch fire [1].

30 % flashes near 29 degC; a fifth keeps clear of that. Sources: health-canada-ethylene-glycol is
for the other poison; the flash point is published, the fifth is our margin.
"""

FULL_ENOUGH = 0.5
"""Share of liquid below which a heater counts as empty [1]."""


PUSHES = frozenset({"on", "hand pump", "air line"})
"""Settings of a switch or a hose that put pressure on a coach's lines."""


@dataclass(frozen=True, slots=True)
class Situation:
    """What a rule may look at: the coach, how it stands, and what is about to be done."""

    card: Card
    network: CoachNetwork
    state: State
    action: Action

    def stands(self, control: str) -> str | None:
        """Give how a control stands; None if there is none."""
        return self.state.settings.get(control)

    def sets(self, thing: str, setting: str) -> str | None:
        """Give the fitting whose ``thing`` is about to be put to a setting."""
        control = self.network.controls.get(self.action.part)
        if self.action.verb != "set" or control is None or control.thing != thing:
            return None
        return control.part if self.action.setting == setting else None

    def heats(self, heater: str) -> bool:
        """Tell whether a heat source of a heater is on."""
        return any(
            self.state.settings[c.id] == "on"
            for c in self.network.controls.values()
            if c.part == heater and c.thing in {"burner", "element", "coolant"}
        )

    def under_pressure(self, part: str) -> bool:
        """Tell whether a fitting may stand under pressure: pushed, or cut off from what is open."""
        pushed = any(
            c.thing in {"switch", "hose"} and self.stands(c.id) in PUSHES
            for c in self.network.controls.values()
        )
        return pushed or not self._vented(part)

    def cut_off(self, heater: str) -> bool:
        """Tell whether no open way leads from a heater to any of the coach's pumps and inlets."""
        link = self.network.links[heater]
        reached, grew = {link.start, link.end}, True
        while grew:
            fresh = {
                node
                for k in self.network.links.values()
                if k.id != heater and self._lets_by(k) and reached & {k.start, k.end}
                for node in (k.start, k.end)
            } - reached
            reached |= fresh
            grew = bool(fresh)
        fed_from = {k.end for k in self.network.links.values() if k.way == "pump"}
        fed_from |= {self.network.links[s.link].end for s in self.network.sources.values()}
        return not reached & fed_from

    def _vented(self, part: str) -> bool:
        """Tell whether water under pressure in a fitting finds a way out, as everything stands."""
        reached = {n for k in self.network.links_of.get(part, ()) for n in (k.start, k.end)}
        reached |= set(self.network.heater_ports.get(part, ()))
        ways = [
            way
            for k in self.network.links.values()
            if self._lets_by(k)
            for way in ((k.start, k.end), (k.end, k.start))[: 1 if k.one_way else 2]
        ]
        grew = True
        while grew:
            fresh = {there for here, there in ways if here in reached} - reached
            reached |= fresh
            grew = bool(fresh)
        return any(o.node in reached and self._passes(o.gate) for o in self.network.openings)

    def _lets_by(self, link: Link) -> bool:
        # A pump's own check lets water through forwards even while it stands.
        return link.gate is None or link.way == "pump" or self._passes(link.gate)

    def _passes(self, gate: Gate) -> bool:
        return self.state.settings[gate.control] in gate.passes


Rule = Callable[[Situation], bool]


@dataclass(frozen=True, slots=True)
class Hazard:
    """One refused order.

    Attributes:
        key: key of the sentence.
        applies: whether an action in a state is such an order.
    """

    key: str
    applies: Rule


def _plug_under_pressure(s: Situation) -> bool:
    heater = s.sets("plug", "out")
    return heater is not None and s.under_pressure(heater)


def _plug_while_hot(s: Situation) -> bool:
    heater = s.sets("plug", "out")
    return heater is not None and s.heats(heater)


def _heat_without_water(s: Situation) -> bool:
    for source in ("burner", "element"):
        heater = s.sets(source, "on")
        if heater is None:
            continue
        held = s.state.held[heater].mean()
        out = s.stands(f"{heater}/plug") == "out"
        if out or held[AIR] > 1.0 - FULL_ENOUGH or s.cut_off(heater):
            return True
    return False


def _drains_while_heated(s: Situation) -> bool:
    if s.action.verb != "drain":
        return False
    return any(
        s.stands(f"{heater}/plug") == "out" and s.heats(heater) for heater in s.network.heater_ports
    )


def _spirit_by_a_flame(s: Situation) -> bool:
    contents = s.action.contents
    if contents is None or contents.ethanol < BURNS_AT:
        return False
    return any(c.thing == "burner" and s.stands(c.id) == "on" for c in s.network.controls.values())


def _bowl_under_pressure(s: Situation) -> bool:
    bowl = s.sets("bowl", "off") or s.sets("bowl", "loose")
    # A strainer sits before the pump, whose check keeps the pressure away from it.
    if bowl is None or s.card.fitting[bowl].kind == "strainer":
        return False
    return s.under_pressure(bowl)


def _pressure_on_ice(s: Situation) -> bool:
    if ICE not in s.state.marks:
        return False
    control = s.network.controls.get(s.action.part)
    pushes = control is not None and control.thing in {"switch", "hose"}
    turned_on = s.action.verb == "set" and pushes and s.action.setting in PUSHES
    return turned_on or s.action.verb in {"run", "blow"}


def _heat_on_ice(s: Situation) -> bool:
    control = s.network.controls.get(s.action.part)
    if ICE not in s.state.marks or s.action.verb != "set" or control is None:
        return False
    return control.thing in {"burner", "element", "coolant"} and s.action.setting == "on"


HAZARDS: tuple[Hazard, ...] = (
    Hazard("plug under pressure", _plug_under_pressure),
    Hazard("plug while hot", _plug_while_hot),
    Hazard("heat without water", _heat_without_water),
    Hazard("heater drained while heated", _drains_while_heated),
    Hazard("spirit by a flame", _spirit_by_a_flame),
    Hazard("bowl under pressure", _bowl_under_pressure),
    Hazard("pressure on ice", _pressure_on_ice),
    Hazard("heat on ice", _heat_on_ice),
)
"""Every refused order the engine can see coming."""

NEVER_IN_A_POTABLE_LINE = frozenset({"ethylene glycol"})
"""Words that refuse a product by its name. Sources: health-canada-ethylene-glycol."""


def hazard_of(card: Card, network: CoachNetwork, state: State, action: Action) -> str | None:
    """Give the key of the hazard an action would be, or None.

    Args:
        card: the coach's card.
        network: the coach.
        state: how it stands before the action.
        action: what is about to be done.

    Returns:
        Key of the first rule that applies.
    """
    situation = Situation(card, network, state, action)
    return next((h.key for h in HAZARDS if h.applies(situation)), None)


def product_refused(name: str) -> bool:
    """Tell whether a product must never be used, by its name."""
    plain = " ".join(name.lower().replace("-", " ").split())
    return any(word in plain for word in NEVER_IN_A_POTABLE_LINE) and "propylene" not in plain

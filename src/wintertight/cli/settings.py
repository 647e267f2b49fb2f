"""Sets a coach as the options of ``flow`` ask: where water comes from, what is open, each valve."""

from typing import TYPE_CHECKING

from wintertight.cli.asked import hint, one_of
from wintertight.errors import ChoiceError, Place

if TYPE_CHECKING:
    from wintertight.coach.card import Card
    from wintertight.flow.coach_network import CoachNetwork
    from wintertight.flow.state import State


def with_source(
    card: "Card", network: "CoachNetwork", state: "State", wanted: str | None
) -> tuple[str, "State"]:
    """Let water come from the pump or from the town main.

    Args:
        card: the coach.
        network: it.
        state: how it is set.
        wanted: pump, city or hand; None takes the first there is.

    Returns:
        The source, and the coach set to it.

    Raises:
        ChoiceError: the coach has no such source.
    """
    there = _sources(card, network)
    if wanted not in {*there, None}:
        has = f"it has {one_of(there)}" if there else "it has none"
        message = f"this coach has no source '{wanted}' that could be modelled; {has}"
        raise ChoiceError(message, Place(field="--source"))
    if not there:
        message = "this coach has no source: neither a pump with a fresh tank nor a city inlet"
        raise ChoiceError(message, Place(field="--source"))
    used = wanted or next(iter(there))
    for control, setting in there[used].items():
        state = state.with_setting(control, setting)
    return used, state


def _sources(card: "Card", network: "CoachNetwork") -> dict[str, dict[str, str]]:
    """Give what is to be set for each source that this coach has."""
    there: dict[str, dict[str, str]] = {}
    present = [f for f in card.fittings if f.seen == "present"]
    kinds = {f.kind for f in present}
    if {"demand pump", "fresh tank"} <= kinds:
        valves = {f.id: "along" for f in present if f.role == "tank suction"}
        switches = {c.id: "on" for c in network.controls.values() if c.thing == "switch"}
        there["pump"] = {**valves, **switches}
    inlets = [f.id for f in present if f.kind == "city inlet"]
    if inlets:
        there["city"] = {f"{inlet}/hose": "on" for inlet in inlets}
        there["hand"] = {f"{inlet}/hose": "hand pump" for inlet in inlets}
    return there


def opened(card: "Card", network: "CoachNetwork", state: "State", names: list[str]) -> "State":
    """Open outlets by the id of their fitting (all its sides) or of one side.

    Args:
        card: the coach.
        network: it.
        state: how it is set.
        names: ids, such as kitchen or kitchen.hot.

    Returns:
        The coach with them open.

    Raises:
        ChoiceError: there is no such outlet.
    """
    for name in names:
        found = [
            outlet
            for control, outlet in network.outlets.items()
            if name in {control, network.controls[control].part}
        ]
        if not found:
            raise ChoiceError(_no_outlet(card, network, name), Place(field="--open"))
        for outlet in found:
            state = state.with_settings(dict(outlet.opens))
    return state


def _no_outlet(card: "Card", network: "CoachNetwork", name: str) -> str:
    fittings = dict.fromkeys(network.controls[control].part for control in network.outlets)
    if name in network.unmodelled:
        return f"'{name}' is a {card.fitting[name].kind}, of which there is no model yet"
    if name in card.fitting and name not in fittings:
        kind = card.fitting[name].kind
        return f"'{name}' is a {kind} and lets nothing out{hint('', fittings)}"
    return f"this coach has no outlet '{name}'{hint(name, [*fittings, *network.outlets])}"


def set_as_asked(network: "CoachNetwork", state: "State", orders: list[str]) -> "State":
    """Set valves and whatever else can be set.

    Args:
        network: the coach.
        state: how it is set.
        orders: VALVE=SETTING each.

    Returns:
        The coach so set.

    Raises:
        ChoiceError: there is no such valve, or it cannot be set so.
    """
    for order in orders:
        name, sign, setting = (word.strip() for word in order.partition("="))
        if not sign:
            message = f"expected VALVE=SETTING, such as tank-valve=along, not '{order}'"
            raise ChoiceError(message, Place(field="--set"))
        control = _control(network, name)
        known = network.controls[control].settings
        if setting not in known:
            message = f"'{control}' can be {one_of(known)}, not '{setting}'"
            raise ChoiceError(message, Place(field="--set"))
        state = state.with_setting(control, setting)
    return state


def _control(network: "CoachNetwork", name: str) -> str:
    """Give a control by its own id, or by its fitting's where that has only one."""
    if name in network.controls:
        return name
    found = [c.id for c in network.controls.values() if c.part == name]
    if len(found) == 1:
        return found[0]
    if found:
        message = f"'{name}' has several things to set; expected {one_of(found)}"
    else:
        message = f"nothing called '{name}' can be set{hint(name, network.controls)}"
    raise ChoiceError(message, Place(field="--set"))

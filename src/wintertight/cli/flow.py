"""``wintertight flow``: which way water goes, and how fast, as the coach is set."""

# ruff: noqa: PLC0415 - heavy layers load only with their command, so that help stays quick

import math
from typing import TYPE_CHECKING, Annotated, Any

import typer

from wintertight.cli.answer import Answer, columns, json_text
from wintertight.cli.asked import choice
from wintertight.cli.options import AsJson, CardFile
from wintertight.cli.settings import opened, set_as_asked, with_source
from wintertight.units import in_words

if TYPE_CHECKING:
    from wintertight.coach.card import Card
    from wintertight.flow.coach_network import CoachNetwork
    from wintertight.flow.state import State

SCHEMA = "wintertight/flow/1"
SOURCES = ("pump", "city", "hand")
WATER_DEGC = 20.0
SHOWN_M3_S = 1e-8
"""A flow below this [m3/s] is not worth a row: a glass in eight hours."""
NOT_REACHED = "shut off from every source and from the open air"


def flow(  # noqa: PLR0913 - one parameter for each option
    *,
    card: CardFile,
    outlets: Annotated[
        list[str],
        typer.Option(
            "--open",
            metavar="FITTING[,FITTING]",
            help="opens both sides of a tap; kitchen.hot opens one",
        ),
    ],
    settings: Annotated[
        list[str] | None,
        typer.Option(
            "--set",
            metavar="VALVE=along|across|NAME",
            help="sets a valve or anything else that can be set; again for another",
        ),
    ] = None,
    more: Annotated[list[str] | None, typer.Argument(hidden=True)] = None,
    source: Annotated[
        str | None,
        typer.Option("--source", metavar="pump|city|hand", help="where the water comes from"),
    ] = None,
    as_json: AsJson = False,
) -> Answer:
    """Give the steady flow of water at 20 °C through every line, with some outlets open."""
    from wintertight.coach.load import load_card
    from wintertight.flow.build import build_network
    from wintertight.flow.state import arriving_state

    wanted = None if source is None else choice(source, "--source", SOURCES)
    read = load_card(card)
    network = build_network(read)
    state = arriving_state(network)
    used, state = with_source(read, network, state, wanted)
    state = opened(read, network, state, _parted(outlets))
    state = set_as_asked(network, state, _parted([*(settings or []), *(more or [])]))
    found = {"source": used, **steady(read, network, state)}
    return Answer(json_text(SCHEMA, found) if as_json else _tables(found))


def _parted(written: list[str]) -> list[str]:
    return [word.strip() for text in written for word in text.split(",")]


def steady(card: "Card", network: "CoachNetwork", state: "State") -> dict[str, Any]:
    """Give flows and pressures by the keys of the command's JSON.

    Args:
        card: the coach.
        network: it, as best known.
        state: how it is set.

    Returns:
        Flows [m3/s], positive from the first end of a line to the other; pressures above that of
        the air [Pa], None where nothing holds one.
    """
    from wintertight.flow.hydraulics import pipe_network, steady_flow
    from wintertight.flow.losses import GRAVITY
    from wintertight.fluids.water import density_water, viscosity_water

    density = density_water(WATER_DEGC)
    nu = viscosity_water(WATER_DEGC) / density
    found = steady_flow(network, state, viscosity_m2_s=nu)
    flows = dict(zip(network.links, (float(q) for q in found.flow_m3_s), strict=True))
    nodes = pipe_network(network).node_ids
    pressures = {
        node: _finite(density * GRAVITY * (float(head) - network.heights_m[node]))
        for node, head in zip(nodes, found.head_m, strict=True)
    }
    lines = {line.id for line in card.lines}
    outlets = {name: flows[outlet.link] for name, outlet in network.outlets.items()}
    return {
        "card_hash": card.card_hash,
        "coach": {"id": card.id, "name": card.name},
        "water_degC": WATER_DEGC,
        "settings": dict(state.settings),
        "flows_m3_s": {k: q for k, q in flows.items() if k in lines},
        "fitting_flows_m3_s": {k: q for k, q in flows.items() if k not in lines},
        "outlet_flows_m3_s": {name: q for name, q in outlets.items() if q},
        "pressures_Pa": pressures,
        "why_null": {node: NOT_REACHED for node, pressure in pressures.items() if pressure is None},
        "not_modelled": list(network.unmodelled),
    }


def _finite(value: float) -> float | None:
    return value if math.isfinite(value) else None


def _tables(found: dict[str, Any]) -> str:
    running = [
        (line, in_words(abs(q), "flow", "us"), in_words(abs(q), "flow", "metric"))
        for line, q in {**found["outlet_flows_m3_s"], **found["flows_m3_s"]}.items()
        if abs(q) > SHOWN_M3_S
    ]
    ends = len(found["outlet_flows_m3_s"])
    parts = [f"{found['coach']['name']}, water from the {found['source']} at {WATER_DEGC:g} °C"]
    if not running:
        return f"{parts[0]}\nNothing moves."
    table = columns(running).splitlines()
    parts += ["", "Out of", *table[:ends], "", "Through", *table[ends:]]
    still = len(found["flows_m3_s"]) - (len(running) - ends)
    parts += ["", f"Nothing moves in the other {still} lines."] if still else []
    if found["not_modelled"]:
        parts.append(f"No model yet, taken as shut: {', '.join(found['not_modelled'])}.")
    return "\n".join(parts)

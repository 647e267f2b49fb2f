"""Coaches laid by hand, a few links each, for tests that follow every drop."""

from collections.abc import Iterable, Mapping
from types import MappingProxyType

from wintertight.flow.case import BEST, Case
from wintertight.flow.coach_network import (
    CoachNetwork,
    Control,
    Gate,
    Link,
    Opening,
    Outlet,
    Pool,
    Source,
)

HALF_INCH_M = 0.0123
LITRE = 1e-3


def pipe(name: str, start: str, end: str, length_m: float = 1.0, **more: object) -> Link:
    """Lay a line of half-inch tube that holds a tenth of a litre a metre."""
    sizes: dict[str, object] = {
        "way": "pipe",
        "bore_m": HALF_INCH_M,
        "roughness_m": 1.5e-6,
        "holding": "plug",
        "volume_m3": 1e-4 * length_m,
        **more,
    }
    return Link(name, name, start, end, length_m=length_m, **sizes)  # type: ignore[arg-type]


def valve(name: str, start: str, end: str, **more: object) -> Link:
    """Lay a valve that a control of its name opens."""
    gate = Gate(name, frozenset({"open"}))
    sizes: dict[str, object] = {"resistance_s2_m5": 1e6, "gate": gate, **more}
    return Link(name, name, start, end, **sizes)  # type: ignore[arg-type]


def outlet(name: str, start: str, pool: str = "", resistance: float = 1e9) -> Link:
    """Lay an outlet that a control of its name opens."""
    return valve(
        f"{name}(outlet)",
        start,
        f"{start} air",
        resistance_s2_m5=resistance,
        one_way=True,
        gate=Gate(name, frozenset({"open"})),
        drops_to=pool,
    )


def laid(  # noqa: PLR0913 - what a coach consists of
    links: Iterable[Link],
    *,
    sources: Mapping[str, tuple[str, float]] = MappingProxyType({}),
    heights_m: Mapping[str, float] = MappingProxyType({}),
    openings: Iterable[tuple[str, str]] = (),
    pools: Iterable[Pool] = (),
    heater_ports: Mapping[str, tuple[str, str]] = MappingProxyType({}),
    things: Mapping[str, str] = MappingProxyType({}),
    case: Case = BEST,
) -> CoachNetwork:
    """Put a coach together.

    Args:
        links: its links; each gate makes a control, found shut.
        sources: node a source joins and its head [m], by name.
        heights_m: heights of nodes [m]; 0 where not given.
        openings: (node, control that opens it).
        pools: traps and tanks.
        heater_ports: as in the network.
        things: what a control sets, where it is no valve.
        case: which side to take.

    Returns:
        The network.
    """
    every = {link.id: link for link in links}
    found = {}
    for name, (node, head_m) in sources.items():
        every[f"{name}/end"] = Link(
            f"{name}/end", name, f"{name}(source)", node, resistance_s2_m5=1e6, one_way=True
        )
        found[name] = Source(name, f"{name}(source)", f"{name}/end", head_m)
    openings = list(openings)
    names = {k.gate.control: None for k in every.values() if k.gate}
    names.update({control: None for _, control in openings})
    nodes = {n for k in every.values() for n in (k.start, k.end)}
    nodes.update(node for node, _ in openings)
    heights = dict.fromkeys(sorted(nodes), 0.0) | dict(heights_m)
    for link in every.values():
        if link.is_outlet:
            heights[link.end] = heights[link.start]
    return CoachNetwork(
        links=MappingProxyType(every),
        controls=MappingProxyType(
            {n: Control(n, n, things.get(n, "valve"), ("shut", "open"), "shut") for n in names}
        ),
        sources=MappingProxyType(found),
        outlets=MappingProxyType(
            {
                k.gate.control: Outlet(k.gate.control, ((k.gate.control, "open"),), k.id, k.start)
                for k in every.values()
                if k.is_outlet and k.gate
            }
        ),
        openings=tuple(
            Opening(node, heights[node], Gate(control, frozenset({"open"})))
            for node, control in openings
        ),
        pools=MappingProxyType({p.part: p for p in pools}),
        heights_m=MappingProxyType(heights),
        unmodelled=(),
        case=case,
        heater_ports=MappingProxyType(dict(heater_ports)),
    )

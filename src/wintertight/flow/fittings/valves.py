"""What turns, and what lets pass one way only."""

from wintertight.coach.card import Fitting
from wintertight.flow.coach_network import Gate, Link
from wintertight.flow.fittings.workbench import Workbench, height_of
from wintertight.flow.losses import fitting_resistance

FOUND_SHUT = frozenset({"antifreeze inlet", "heater bypass"})
"""Roles of valves that stand across while a coach is in use."""


def build_ball_valve(bench: Workbench, fitting: Fitting) -> None:
    """Add a two-way valve: its handle along the pipe is open, across it is shut."""
    order = "across | along | half" if fitting.role in FOUND_SHUT else "along | across | half"
    name = bench.control(fitting, "handle", order)
    bench.through(fitting, Gate(name, frozenset({"along", "half"}), "half"))


def build_check_valve(bench: Workbench, fitting: Fitting) -> None:
    """Add a valve that lets pass from its in to its out only."""
    bench.through(fitting, one_way=True)


def build_many_way(bench: Workbench, fitting: Fitting) -> None:
    """Add a valve with named positions, each of which joins pairs of its ports.

    Its body is one cavity, which whatever passes flushes; it is counted with the first passage of
    the position that the antifreeze takes.
    """
    found = [p for p in fitting.positions if p.use == "normal"] or list(fitting.positions)
    names = (found[0].name, *(p.name for p in fitting.positions if p is not found[0]))
    name = bench.control_of(fitting, "named handle", names)
    wanted = [p for p in fitting.positions if p.use in {"antifreeze", "heater bypass"}] or found
    flushed = frozenset(wanted[0].joins[0]) if wanted[0].joins else frozenset()
    for port in fitting.ports:
        bench.heights_m[f"{fitting.id}.{port}"] = height_of(fitting)
    pairs = {frozenset(pair): pair for p in fitting.positions for pair in p.joins}
    for pair, (first, second) in sorted(pairs.items(), key=lambda item: sorted(item[0])):
        passes = frozenset(
            p.name for p in fitting.positions if pair in {frozenset(j) for j in p.joins}
        )
        holds = pair == flushed
        bench.links[f"{fitting.id}:{first}-{second}"] = Link(
            id=f"{fitting.id}:{first}-{second}",
            part=fitting.id,
            start=f"{fitting.id}.{first}",
            end=f"{fitting.id}.{second}",
            resistance_s2_m5=fitting_resistance("many-way valve"),
            holding="plug" if holds else "nothing",
            volume_m3=bench.hollow_m3(fitting) if holds else 0.0,
            gate=Gate(name, passes),
        )


def build_tempering_valve(bench: Workbench, fitting: Fitting) -> None:
    """Add a valve that mixes hot and cold: a crossover between them that nobody sees."""
    for port in fitting.ports:
        bench.heights_m[f"{fitting.id}.{port}"] = height_of(fitting)
    for port in ("hot", "cold"):
        bench.links[f"{fitting.id}:{port}"] = Link(
            id=f"{fitting.id}:{port}",
            part=fitting.id,
            start=f"{fitting.id}.{port}",
            end=f"{fitting.id}.mixed",
            resistance_s2_m5=fitting_resistance("tempering valve"),
            holding="plug",
            volume_m3=bench.hollow_m3(fitting) / 2.0,
        )


def build_diverter(bench: Workbench, fitting: Fitting) -> None:
    """Add a diverter that sends hot back into cold while water warms up."""
    name = bench.control(fitting, "diverter", "off | recirculate")
    bench.through(fitting, Gate(name, frozenset({"recirculate"})), loss="tempering valve")


def build_low_point(bench: Workbench, fitting: Fitting) -> None:
    """Add a drain at a low point."""
    bench.simple_outlet(fitting, "valve", "shut | open", "open")


def build_dead_end(bench: Workbench, fitting: Fitting) -> None:
    """Add a capped tee or a prepared stub: it can be opened, or its water stays."""
    bench.simple_outlet(fitting, "cap", "on | off", "off")

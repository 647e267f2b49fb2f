"""Plumbing at random, as plain data, and the coach that is laid from it."""

import random
from dataclasses import dataclass, field, replace
from types import MappingProxyType

from tests.unit.flow.laid_coach import laid, pipe, valve
from wintertight.flow.coach_network import CoachNetwork, Link
from wintertight.flow.letting_out import refill
from wintertight.flow.state import ONLY_AIR, State, arriving_state
from wintertight.flow.tilt import Tilt

BORES_M = (0.0043, 0.007, 0.0089, 0.012, 0.012, 0.012, 0.012, 0.012, 0.017, 0.0219)
STEPS_M = (0.0, 0.05, -0.05)
SLOPES = (0.0, 0.0, 0.02, -0.02, 0.01)


@dataclass(frozen=True)
class Run:
    """A way from one place to another: a line, a valve, a check valve or a heater's inside."""

    name: str
    a: str
    b: str
    kind: str = "line"
    length_m: float = 0.0
    bore_m: float = 0.0
    sag_m: float | None = None
    hump_m: float | None = None
    is_open: bool = True
    holds_air: bool = False


@dataclass
class Plumbing:
    """A coach as plain data: places (x, y, z) [m], runs, openings, a slope of the floor."""

    places: dict[str, tuple[float, float, float]] = field(default_factory=dict)
    runs: list[Run] = field(default_factory=list)
    mouths: dict[str, bool] = field(default_factory=dict)
    slope: tuple[float, float] = (0.0, 0.0)
    heater: bool = False

    def height_m(self, node: str) -> float:
        """Give the height of a place above the level ground [m]."""
        x, y, z = self.places[node]
        return z + self.slope[0] * x + self.slope[1] * y

    @property
    def tilt(self) -> Tilt:
        """The slope as the product takes it."""
        return Tilt(*self.slope)


def grid(rng: random.Random, low: float, high: float) -> float:
    """Give a height on a grid of 5 cm, so that equal heights are common [m]."""
    return round(rng.uniform(low, high) / 0.05) * 0.05


def plumbing(seed: int) -> Plumbing:
    """Draw one coach: trunks near the floor, risers to taps, drops to low points, loops."""
    rng = random.Random(seed)  # noqa: S311 - a fixed draw, no secret
    drawn = Plumbing(slope=(rng.choice(SLOPES), rng.choice(SLOPES)))
    count = rng.randint(4, 8)
    names = [f"n{i}" for i in range(count)]
    for name in names:
        level = rng.choice([(0.0, 0.3), (0.0, 0.3), (0.3, 0.8), (0.8, 1.5)])
        drawn.places[name] = (rng.uniform(0, 8), rng.uniform(0, 2.4), grid(rng, *level))
    pairs = [(rng.choice(names[:i]), names[i]) for i in range(1, count)]
    for _ in range(rng.randint(0, 3)):
        one, other = rng.sample(names, 2)
        pairs.append((one, other))
    for i, (a, b) in enumerate(pairs):
        _lay(rng, drawn, f"l{i}", *((a, b) if rng.random() < 0.5 else (b, a)))
    if rng.random() < 0.3:
        _heat(rng, drawn, rng.choice(names), rng.choice(names))
    ends = [n for n in names if sum(n in {r.a, r.b} for r in drawn.runs) == 1] or names
    for name in rng.sample(ends, min(len(ends), rng.randint(1, 4))):
        drawn.mouths[name] = rng.random() < 0.85
    for name in rng.sample(names, rng.randint(0, 2)):
        drawn.mouths.setdefault(name, rng.random() < 0.85)
    # A drop to the open air below the lowest place, as a low point is.
    foot = min(names, key=drawn.height_m)
    x, y, z = drawn.places[foot]
    drawn.places["low"] = (x, y, z - 0.25)
    if rng.random() < 0.8:
        drawn.runs.append(Run("drop", foot, "low", length_m=0.3, bore_m=0.012))
        drawn.mouths["low"] = rng.random() < 0.9
    return drawn


def _lay(rng: random.Random, drawn: Plumbing, name: str, a: str, b: str) -> None:
    """Lay one line, now and then with a valve at its beginning."""
    chance = rng.random()
    if chance < 0.25:
        x, y, z = drawn.places[a]
        kind = "check" if chance < 0.1 else "valve"
        drawn.places[f"{name}v"] = (x, y, z + (rng.choice(STEPS_M) if kind == "check" else 0.0))
        is_open = kind == "check" or rng.random() < 0.7
        drawn.runs.append(Run(f"{name}k", a, f"{name}v", kind, is_open=is_open))
        a = f"{name}v"
    low, high = sorted((drawn.places[a][2], drawn.places[b][2]))
    drawn.runs.append(
        Run(
            name,
            a,
            b,
            length_m=high - low + rng.uniform(0.2, 4.0),
            bore_m=rng.choice(BORES_M),
            sag_m=low - rng.choice([0.005, 0.05, 0.1, 0.2]) if rng.random() < 0.2 else None,
            hump_m=high + rng.choice([0.05, 0.1, 0.3]) if rng.random() < 0.15 else None,
            holds_air=rng.random() < 0.05,
        )
    )


def _heat(rng: random.Random, drawn: Plumbing, cold: str, hot: str) -> None:
    """Put a heater between two places, each with a short line to its port."""
    drawn.heater = True
    base = grid(rng, 0.0, 0.3)
    for port, above, node in (("cold", 0.1, cold), ("hot", 0.3, hot)):
        drawn.places[port] = (4.0, 1.0, base + above)
        length = abs(base + above - drawn.places[node][2]) + 0.5
        drawn.runs.append(Run(f"{port}-line", node, port, length_m=length, bore_m=0.012))
    drawn.places["plug"], drawn.places["relief"] = (4.0, 1.0, base), (4.0, 1.0, base + 0.35)
    drawn.mouths["plug"], drawn.mouths["relief"] = rng.random() < 0.6, rng.random() < 0.5
    drawn.runs.append(Run("heater", "cold", "hot", "heater", is_open=not drawn.mouths["plug"]))


def coach_of(drawn: Plumbing) -> tuple[CoachNetwork, State]:
    """Lay the coach of some plumbing, full of water, with its controls as drawn."""
    links: list[Link] = []
    for run in drawn.runs:
        if run.kind == "line":
            shape = {"bore_m": run.bore_m, "lowest_m": run.sag_m, "highest_m": run.hump_m}
            links.append(pipe(run.name, run.a, run.b, run.length_m, **shape))
        else:
            more: dict[str, object] = {"holding": "plug", "volume_m3": 1e-5}
            if run.kind == "check":
                level = drawn.places[run.a][2] == drawn.places[run.b][2]
                holding = "plug" if level else "nothing"
                more |= {"one_way": True, "gate": None, "holding": holding}
            more |= {"holding": "vessel", "volume_m3": 2e-2} if run.kind == "heater" else {}
            links.append(valve(run.name, run.a, run.b, **more))
    network = laid(
        links,
        heights_m={node: z for node, (_, _, z) in drawn.places.items()},
        openings=[(node, f"mouth {node}") for node in drawn.mouths],
        heater_ports={"heater": ("plug", "relief")} if drawn.heater else {},
    )
    places = {node: (x, y) for node, (x, y, _) in drawn.places.items()}
    network = replace(network, places_m=MappingProxyType(places))
    state = arriving_state(network)
    for control in network.controls:
        run_open = any(r.name == control and r.is_open for r in drawn.runs)
        mouth = drawn.mouths.get(control.removeprefix("mouth "), False)
        if run_open or mouth:
            state = state.with_setting(control, "open")
    for run in drawn.runs:
        if run.holds_air:
            state = refill(state, run.name, ONLY_AIR * 0.9, "drained")
    return network, state

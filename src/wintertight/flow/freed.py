"""What one more opening would let out: for the planner, and for "open X too: it frees Y cups"."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from itertools import combinations

from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.draining import Drained, drain_by_gravity
from wintertight.flow.state import State
from wintertight.flow.tilt import Tilt

LEAST_M3 = 1e-6
"""What is less is not worth an opening [m3]: a thousandth of a litre."""

VALVES = frozenset({"handle", "named handle"})
"""What a hand turns to join two lines."""


@dataclass(frozen=True, slots=True)
class Freed:
    """What an opening frees.

    Attributes:
        control: what is opened.
        setting: what it is set to.
        links: links that give up water for it, by name.
        volume_m3: how much less stays, on the careful side [m3]; the film on walls not counted.
    """

    control: str
    setting: str
    links: tuple[str, ...]
    volume_m3: float


@dataclass(frozen=True, slots=True)
class _Choice:
    """One thing that can be opened, with all that must stand so for it."""

    control: str
    setting: str
    settings: Mapping[str, str]
    is_mouth: bool


def freed_by(network: CoachNetwork, state: State, tilt: Tilt | None = None) -> list[Freed]:
    """Tell what each further tap, low point, plug or valve would free, one at a time.

    Args:
        network: the coach.
        state: how its controls stand; lines that stand full count as full.
        tilt: slope of the floor; level where None.

    Returns:
        What each frees [m3], the most first; an opening that frees nothing is left out. What needs
        two openings at once, such as a vent and a low point, is found by `best_openings`.
    """
    before = drain_by_gravity(network, state, tilt)
    found = [
        _freed(choice, before, drain_by_gravity(network, opened, tilt))
        for choice in _choices(network, state)
        for opened in [state.with_settings(choice.settings)]
    ]
    worth = [freed for freed in found if freed.volume_m3 >= LEAST_M3]
    return sorted(worth, key=lambda freed: (-freed.volume_m3, freed.control, freed.setting))


def best_openings(network: CoachNetwork, state: State, tilt: Tilt | None = None) -> list[Freed]:
    """Give what to open, in turn, until nothing more comes out: the best each time.

    Where no single opening frees anything, the best two are opened together: the first of them then
    stands in the list with no volume of its own.

    Args:
        network: the coach.
        state: how its controls stand.
        tilt: slope of the floor; level where None.

    Returns:
        The openings in turn, each with what it frees after those before it [m3].
    """
    turn: list[Freed] = []
    while True:
        single = next(iter(freed_by(network, state, tilt)), None)
        added = [single] if single else _best_pair(network, state, tilt)
        if not added:
            return turn
        turn += added
        for freed in added:
            state = state.with_settings(_settings_for(network, freed.control, freed.setting))


def _best_pair(network: CoachNetwork, state: State, tilt: Tilt | None) -> list[Freed]:
    before = drain_by_gravity(network, state, tilt)
    best: list[Freed] = []
    mouths = [choice for choice in _choices(network, state) if choice.is_mouth]
    for one, other in combinations(mouths, 2):
        opened = state.with_settings({**one.settings, **other.settings})
        freed = _freed(other, before, drain_by_gravity(network, opened, tilt))
        if freed.volume_m3 >= max(LEAST_M3, best[1].volume_m3 + LEAST_M3 if best else 0.0):
            best = [Freed(one.control, one.setting, (), 0.0), freed]
    return best


def _freed(choice: _Choice, before: Drained, after: Drained) -> Freed:
    less = {link: kept - after.most_m3.get(link, 0.0) for link, kept in before.most_m3.items()}
    links = tuple(sorted(link for link, volume in less.items() if volume > LEAST_M3 / 10.0))
    more = sum(v for link, v in after.most_m3.items() if link not in before.most_m3)
    return Freed(choice.control, choice.setting, links, sum(less.values()) - more)


def _choices(network: CoachNetwork, state: State) -> Iterator[_Choice]:
    """Give everything that can be opened further than it is."""
    for control, setting, is_mouth in dict.fromkeys(_openable(network)):
        settings = _settings_for(network, control, setting)
        if any(state.settings[name] != wanted for name, wanted in settings.items()):
            yield _Choice(control, setting, settings, is_mouth)


def _openable(network: CoachNetwork) -> Iterator[tuple[str, str, bool]]:
    for outlet in network.outlets.values():
        yield outlet.control, dict(outlet.opens)[outlet.control], True
    for opening in network.openings:
        if opening.gate.control not in network.outlets:
            for setting in sorted(opening.gate.passes):
                yield opening.gate.control, setting, True
    for link in network.links.values():
        gate = link.gate
        if gate and network.controls[gate.control].thing in VALVES:
            for setting in sorted(gate.passes - {gate.half}):
                yield gate.control, setting, False


def _settings_for(network: CoachNetwork, control: str, setting: str) -> dict[str, str]:
    outlet = network.outlets.get(control)
    return dict(outlet.opens) if outlet else {control: setting}

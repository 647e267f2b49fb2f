"""A coach worked out by hand, with its arithmetic; the same one stands in docs/model.md.

Every line holds 0.1 L a metre. Places by height above the floor, and from the front in brackets:

  K 1.20 m (2 m)   kitchen tap           H 0.50 m (6 m)   top of the wheel arch
  A 0.20 m (2 m)   tee                   R 0.10 m (7 m)   tee behind it
  P -0.15 m (2 m)  low point             S 1.60 m (7 m)   shower tap
  B 0.20 m (5 m)   tee                   W 0.80 m (7 m)   capped stub for a washer
  L 1.00 m (5 m)   lavatory tap

  Lines: K-A 2.0 m, A-P 0.5 m, A-B 3.0 m, L-B 1.6 m, B-H 3.0 m, H-R 2.0 m, S-R 3.0 m, W-R 1.4 m.
"""

from dataclasses import replace
from types import MappingProxyType

import pytest

from tests.unit.flow.laid_coach import laid, pipe
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.draining import Drained, drain_by_gravity
from wintertight.flow.freed import best_openings, freed_by
from wintertight.flow.state import State, arriving_state
from wintertight.flow.tilt import Tilt

LITRE = 1e-3
MOUTHS = ("low point", "kitchen", "lavatory", "shower", "cap")


def coach() -> CoachNetwork:
    """Lay the coach of the drawing above."""
    lines = {"KA": 2.0, "AP": 0.5, "AB": 3.0, "LB": 1.6, "BH": 3.0, "HR": 2.0, "SR": 3.0, "WR": 1.4}
    heights = {"K": 1.2, "A": 0.2, "P": -0.15, "B": 0.2, "L": 1.0}
    heights |= {"H": 0.5, "R": 0.1, "S": 1.6, "W": 0.8}
    along = {"K": 2.0, "A": 2.0, "P": 2.0, "B": 5.0, "L": 5.0}
    along |= {"H": 6.0, "R": 7.0, "S": 7.0, "W": 7.0}
    network = laid(
        [pipe(name, name[0], name[1], length) for name, length in lines.items()],
        heights_m=heights,
        openings=[(n, name) for n, name in zip("PKLSW", MOUTHS, strict=True)],
    )
    return replace(network, places_m=MappingProxyType({n: (x, 0.0) for n, x in along.items()}))


def standing(*shut: str) -> State:
    """Give the coach full of water with everything open but what is named."""
    settings = dict.fromkeys(MOUTHS, "open")
    return arriving_state(coach()).with_settings(settings | dict.fromkeys(shut, "shut"))


def litres(drained: Drained) -> dict[str, tuple[float, float]]:
    """Give the least and the most that stays in each line that is not empty [L]."""
    return {
        k: (round(drained.least_m3[k] / LITRE, 4), round(most / LITRE, 4))
        for k, most in drained.most_m3.items()
        if most > 1e-9
    }


def test_spill_levels() -> None:
    """Guards the first pass, by hand."""
    assert drain_by_gravity(coach(), standing("cap")).spill_m == pytest.approx(
        {
            "P": -0.15,  # open itself
            "A": 0.2,  # down to P: its own height
            "K": 1.2,  # open itself
            "B": 0.2,  # level to A
            "L": 1.0,  # open itself
            "H": 0.5,  # down to B: its own height
            "R": 0.5,  # over H; out at S it would be 1.6
            "S": 1.6,  # open itself
            "W": 0.8,  # down to R and over H: max(0.8, 0.5)
        }
    )


def test_level_floor_and_a_capped_stub() -> None:
    """Guards both passes and what stays, by hand."""
    drained = drain_by_gravity(coach(), standing("cap"))
    assert litres(drained) == {
        # Level: nobody can tell. Its 0.1 x 3.0 m stay, or nothing.
        "AB": (0.0, 0.3),
        # Falls 0.3 m to B, but no air comes to H: hung on both legs it stays, or nothing does.
        "BH": (0.0, 0.3),
        # R lies 0.4 m under its spill level of 0.5 and H just reaches it: all of 0.1 x 2.0 m. If a
        # centimetre does no harm, (0.49 - 0.10) / 0.40 = 0.975 of it.
        "HR": (0.195, 0.2),
        # Air from S pushes it down to 0.5: (0.5 - 0.1) / 1.5 of 0.1 x 3.0 m = 0.08 L stay; or
        # (0.49 - 0.1) / 1.5 of it = 0.078 L.
        "SR": (0.078, 0.08),
        # Capped: no air, all of 0.1 x 1.4 m.
        "WR": (0.14, 0.14),
    }
    classes = {kind: set[str]() for kind in ("drained", "uncertain", "trapped")}
    for line, kind in drained.drainage.items():
        classes[kind].add(line)
    assert classes == {
        "drained": {"KA", "AP", "LB"},
        "uncertain": {"AB", "BH"},
        "trapped": {"HR", "SR", "WR"},
    }


def test_the_floor_slopes_one_in_fifty() -> None:
    """Guards a tilt, by hand: a metre towards the rear is 2 cm up or down."""
    # Rear high: A 0.20 + 0.04 = 0.24, B 0.20 + 0.10 = 0.30. AB falls 0.06 on 3.0 m, 2 in 100.
    assert "AB" not in litres(drain_by_gravity(coach(), standing(), Tilt(along=0.02)))
    # Rear low: A 0.16, B 0.10. B lies 0.06 under A: all of AB, or (0.15 - 0.10) / 0.06 of 0.3 L.
    # LB from 0.90 down to 0.10: 0.06 / 0.80 of 0.16 L = 0.012 L, or 0.05 / 0.80 of it = 0.010 L.
    low = litres(drain_by_gravity(coach(), standing(), Tilt(along=-0.02)))
    assert (low["AB"], low["LB"]) == ((0.25, 0.3), (0.01, 0.012))


def test_what_one_more_opening_frees() -> None:
    """Guards what a planner is told to open, by hand."""
    # Cap off: WR keeps (0.5 - 0.1) / 0.7 of 0.14 L = 0.08 L, so that 0.06 L come out.
    (cap,) = freed_by(coach(), standing("cap"))
    assert (cap.control, cap.setting, cap.links) == ("cap", "open", ("WR",))
    assert cap.volume_m3 == pytest.approx(0.06 * LITRE)
    # Kitchen and shower shut: KA 0.2 L hangs, as AP 0.05 L does. SR 0.3 L hangs but for the 0.08.
    freed = freed_by(coach(), standing("kitchen", "shower"))
    assert [(f.control, round(f.volume_m3 / LITRE, 4)) for f in freed] == [
        ("kitchen", 0.25),
        ("shower", 0.22),
    ]


def test_two_openings_that_free_nothing_alone() -> None:
    """Guards a coach all shut: a low point needs a vent, and a vent a low point."""
    assert freed_by(coach(), standing(*MOUTHS)) == []
    turn = best_openings(coach(), standing(*MOUTHS))
    # With the low point, the kitchen lets 0.2 + 0.05 L out, the shower 0.22 L, the lavatory 0.16 L.
    # In at the shower and out at the cap go 0.8 / 1.5 of 0.3 L, the part of SR above W: 0.16 L.
    assert [(f.control, round(f.volume_m3 / LITRE, 4)) for f in turn] == [
        ("low point", 0.0),
        ("kitchen", 0.25),
        ("shower", 0.22),
        ("lavatory", 0.16),
        ("cap", 0.06),
    ]
    assert sum(f.volume_m3 for f in turn) == pytest.approx(0.69 * LITRE)


def test_a_sag_holds_a_puddle() -> None:
    """Guards the puddle of a sag: a line of 2 m from 1.0 m over -0.1 m up to its end at 0.0 m."""
    network = laid(
        [pipe("line", "top", "foot", 2.0, lowest_m=-0.1)],
        heights_m={"top": 1.0},
        openings=[("foot", "low point"), ("top", "tap")],
    )
    state = arriving_state(network).with_settings({"low point": "open", "tap": "open"})
    drained = drain_by_gravity(network, state)
    # It goes down 1.1 m and up 0.1 m at one slope; under 0.0 m lie 0.1 + 0.1 of these 1.2 m.
    assert drained.drainage == {"line": "trapped"}
    assert drained.most_m3["line"] == pytest.approx(0.2 * LITRE * 0.2 / 1.2)
    assert drained.least_m3["line"] == pytest.approx(0.2 * LITRE * 0.18 / 1.2)


def test_the_end_of_a_line_may_lie_beside_its_fitting() -> None:
    """Guards a line that leaves its fitting lower than it: the height on the card counts."""
    network = laid(
        [pipe("line", "top", "foot", 2.0, end_m=-0.3)],
        heights_m={"top": 1.0},
        openings=[("foot", "low point"), ("top", "tap")],
    )
    state = arriving_state(network).with_settings({"low point": "open", "tap": "open"})
    # From 1.0 m down to -0.3 m and straight up to 0.0 m: 0.3 of 1.3 m lie under its way out.
    drained = drain_by_gravity(network, state)
    assert drained.most_m3["line"] == pytest.approx(0.2 * LITRE * 0.3 / 1.3)

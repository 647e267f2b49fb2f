"""What a heater costs that cannot be bypassed: the demo's old trailer, and the same one mended."""

import pytest

from tests.unit.procedure.demo_coach import DEMO, GALLON_M3, planned, swapped

pytestmark = pytest.mark.long

PLAIN = (DEMO / "cards" / "no-bypass-trailer.toml").read_text(encoding="utf-8")

VALVE = '\n[[fitting]]\nid = "{id}"\nkind = "ball valve"\nrole = "heater {role}"\nat = {at}\n'
LINE = '\n[[line]]\nid = "{id}"\nfrom = "{start}"\nto = "{end}"\nlength = "{length}"\n'

MENDED = (
    swapped(
        'to = "heater.cold"\nlength = { measured = "1.4 ft" }\nbends = 1\n',
        'to = "into"\nlength = "5 in"\n',
        swapped(
            'from = "heater.hot"\nto = "heater-hot-tee"\nlength = { measured = "1.6 ft" }\n',
            'from = "heater.hot"\nto = "out-of"\nlength = "11 in"\n',
            PLAIN,
        ),
    )
    + VALVE.format(id="into", role="cold", at='["16.4 ft", "1.4 ft", "0.3 ft"]')
    + VALVE.format(id="out-of", role="hot", at='["16.4 ft", "1.4 ft", "1.15 ft"]')
    + VALVE.format(id="across", role="bypass", at='["16 ft", "1.5 ft", "0.6 ft"]')
    + LINE.format(id="into-b", start="into", end="heater.cold", length="11 in")
    + LINE.format(id="out-b", start="out-of", end="heater-hot-tee", length="6 in")
    + LINE.format(id="across-a", start="heater-cold-tee", end="across", length="5 in")
    + LINE.format(id="across-b", start="across", end="heater-hot-tee", length="5 in")
)
"""The same coach with the three valves of a bypass."""


def test_a_bypass_saves_the_content_of_the_heater() -> None:
    """Guards the gallons a heater swallows: its own six, and what mixes in it at most one more."""
    spent = planned(text=PLAIN).antifreeze.p50 / GALLON_M3
    mended = planned(text=MENDED).antifreeze.p50 / GALLON_M3
    assert 6.0 * (1.0 - 0.042) < spent - mended < 7.0  # a quart stays below the plug


@pytest.mark.parametrize(("text", "claim"), [(PLAIN, "filled"), (MENDED, "drained")])
def test_the_heater_is_safe_either_way(text: str, claim: str) -> None:
    """Guards that a heater is filled and left open where it cannot be left out, else drained."""
    plan = planned(text=text)
    heater = next(part for part in plan.parts if part.id == "heater")
    assert plan.verdict == "safe"
    assert (heater.claim, heater.safe) == (claim, True)
    steps = [s.step.key for s in plan.steps]
    assert ("close heater" in steps) == (claim == "filled")
    assert ("set bypass" in steps) == (claim == "drained")


def test_filling_the_heater_takes_minutes() -> None:
    """Guards that the hot tap the heater fills through is told to take its time: air comes out."""
    plan = planned(text=PLAIN)
    first = next(s for s in plan.steps if (s.step.outlet or "").endswith(".hot"))
    assert first.run is not None
    assert first.run.first_colour_s is not None
    # Six gallons through a kitchen tap of 1.8 gal/min or a little more take three to five minutes.
    assert 180.0 < first.run.first_colour_s < 300.0

"""What was done, and what was written down beside it."""

from typing import Any

import pytest

from tests.unit.documents.demo_plans import demo_card, plan_of
from wintertight.procedure.record import Event, Reading
from wintertight.wording.deeds import deed_text, noted_text, reading_text, result_text


def event(**more: Any) -> Event:
    """Give an event."""
    return Event.model_validate({"id": "e", "seq": 1, "action": "x", "result": "done", **more})


def test_every_step_of_a_plan_has_its_deed() -> None:
    """Guards that a step is told as something done, in one short line, without holes."""
    for planned in plan_of().steps:
        said = deed_text(event(), planned.step, demo_card())
        assert said[0].isupper()
        assert not said.endswith((".", ":"))
        assert "{" not in said
        assert len(said) < 160


def test_handles_are_named_as_they_were_set() -> None:
    """Guards that a record says which handles stand how."""
    step = next(p.step for p in plan_of().steps if p.step.key == "set bypass")
    assert deed_text(event(), step, demo_card()) == (
        "Heater bypassed: Handle across the pipe (shut): valve into the heater and valve out of the"
        " heater. Handle along the pipe (open): bypass valve"
    )


def test_a_part_that_is_not_there_is_still_named() -> None:
    """Guards events of parts taken off the card, and of an anode rod that was replaced."""
    gone = event(step="run-outlet:toilet", action=None, result="not on this coach")
    assert deed_text(gone, None, demo_card()) == "Toilet"
    replaced = event(action="replace anode", part="heater")
    assert deed_text(replaced, None, demo_card()) == "Anode rod of the water heater replaced"


def test_what_was_not_done_is_printed_large() -> None:
    """Guards that only "done" is in small letters."""
    results = ("done", "skipped", "failed", "not on this coach")
    said = [result_text(event(result=result)) for result in results]
    assert said == ["done", "SKIPPED", "FAILED", "NOT ON THIS COACH"]


@pytest.mark.parametrize(
    ("more", "said"),
    [
        ({}, ""),
        ({"first_colour_s": 0.0, "run_on_s": 80.0}, "colour at once; run on 1 min 20 s"),
        ({"first_colour_s": 7.0, "volume_m3": 0.002}, "colour after 7 s; 0.5 gal"),
        ({"jugs_left": 1.0}, "1 jug left"),
        ({"jugs_left": 0.5, "why": "the last"}, "0.5 jugs left; \u201cthe last\u201d"),
        ({"setting": "half"}, "set: half way"),
        ({"setting": "WINTER"}, "set: WINTER"),
        ({"setting": "along"}, ""),
    ],
)
def test_everything_written_down_is_told(more: dict[str, Any], said: str) -> None:
    """Guards times, volumes, jugs, reasons, and a setting that was not asked for."""
    assert noted_text(event(**more), asked="along") == said


def test_the_device_is_told_where_there_are_several() -> None:
    """Guards that it is known who wrote what, where that can be in doubt."""
    written = event(device="tablet 2", jugs_left=2.0)
    assert noted_text(written, with_device=True) == "2 jugs left; tablet 2"
    assert noted_text(written) == "2 jugs left"


@pytest.mark.parametrize(
    ("reading", "said"),
    [
        (
            Reading(
                kind="glycol share", value=36.0, unit="%", instrument="refractometer", zeroed=True
            ),
            "36 % glycol (refractometer, zeroed on water)",
        ),
        (Reading(kind="glycol share", value=0.36), "36 % glycol"),
        (
            Reading(kind="glycol share", value=0.36, unit="1", sd=0.02, of="jug"),
            "jug: 36 % glycol (give or take 2 %)",
        ),
        (
            Reading(kind="glycol share", value=31.0, unit="vol%", zeroed=False),
            "31 % glycol (not zeroed)",
        ),
        (Reading(kind="freezing point", value=-18.0), "freezes at -18 °C"),
        (
            Reading(kind="freezing point", value=9.2, unit="degF", instrument="hydrometer"),
            "freezes at 9.2 °F (hydrometer)",
        ),
        (
            Reading(
                kind="freeze sample", value=0.0, unit="degF", instrument="freezer", looked="slush"
            ),
            "sample slush at 0 °F (freezer)",
        ),
        (Reading(kind="pressure", value=40.0, unit="psi", instrument="gauge"), "40 psi (gauge)"),
        (Reading(kind="looks pink", value=True, instrument="eye"), "looks pink (by eye)"),
        (Reading(kind="looks pink", value=False), "does not look pink"),
        (Reading(kind="looks pink"), "looked at for colour"),
        (Reading(kind="temperature"), "no value"),
        (Reading(kind="share eaten", value=30.0, unit="%"), "30 % of the anode rod eaten"),
    ],
)
def test_a_reading_is_told_as_it_was_read(reading: Reading, said: str) -> None:
    """Guards that value, unit and instrument are those of the record, and none lacks its unit."""
    assert reading_text(reading) == said

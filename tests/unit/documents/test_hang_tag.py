"""The hang tag: it promises only what is proven, and says big what is open."""

import json
import re
from dataclasses import replace
from functools import cache

import pytest

from tests.recorded_jobs import LINK, alternatives, demo_job, job_with, read, words
from tests.unit.documents.demo_plans import long_named_card
from wintertight.cold.hold import HeldFor
from wintertight.documents.hang_tag import hang_tag_pdf
from wintertight.documents.printed_text import MINUS
from wintertight.documents.recorded_job import RecordedJob
from wintertight.documents.typeset import PAPERS, Paper
from wintertight.errors import ChoiceError
from wintertight.units import System

pytestmark = pytest.mark.long

GOOD, BAD = "small-trailer-good", "small-trailer-bad"
SIZES = {"us-letter": (288, 432), "a4": (298, 420)}

ELEMENT_ON = json.dumps({"action": "set", "part": "heater/element", "setting": "on"})
PLUG_IN = json.dumps({"action": "set", "part": "heater/plug", "setting": "in"})
BYPASS_SHUT = json.dumps({"action": "set", "part": "bypass-valve", "setting": "across"})


@cache
def tag(job: RecordedJob, size: Paper = "us-letter", system: System = "us") -> str:
    """Give the words of a tag."""
    return words(hang_tag_pdf(job, "en", size, system))


def test_a_proven_coach_is_promised_its_cold() -> None:
    """Guards what a good tag says: cold, void, heater, what comes first, day and card."""
    text = tag(demo_job(GOOD))
    for told in (
        "Protected as recorded to -10 °F VOID ONCE WATER RUNS",
        "Water heater: heat off, bypassed, empty, plug OUT.",
        "Plug back into: water heater.",
        "Relief lever down: water heater.",
        "Rinse every outlet until it runs clear before anybody drinks.",
        "Water heater: full of water, and a hot tap runs solid. Never empty or bypassed.",
        "2025-10-09",
        "Antifreeze by the coach's own pump",
        "Heron pink -50",
        "449e172a15",
        "Technician",
        "The coach's manual and local code come first.",
    ):
        assert told in text
    assert "NOT FINISHED" not in text
    assert not re.search(r"\bsafe\b", text)


def test_what_is_open_stands_there_instead() -> None:
    """Guards that a doubted coach gets no promise, but what would settle it."""
    text = tag(demo_job(BAD))
    assert "NOT FINISHED Do not count on it in a frost before this is settled:" in text
    assert "Not proven to -10 °F" in text
    assert "speak for the outside shower ticked, and probably never run" in text
    assert "Protected" not in text
    assert "bypassed, " not in text


def test_a_step_left_out_is_open() -> None:
    """Guards that a gap is named with the number of the step that was not done."""
    text = tag(job_with(left_out=("run-outlet:toilet",)))
    assert "NOT FINISHED" in text
    assert re.search(r"Step \d+ was not done: do it now", text)


def test_heat_that_was_not_turned_off_is_told() -> None:
    """Guards that nothing unrecorded is said of a heater, and that its hazards are open."""
    job = job_with(left_out=("heat-off",))
    assert job.done.plan.verdict == "safe"
    text = tag(job)
    assert "NOT FINISHED" in text
    assert "heat NOT recorded as off" in text
    assert "heater: heat off" not in text
    assert "Protected" not in text
    assert text.count("drained with its heat on") == 1


def test_heat_that_was_turned_on_again_is_told() -> None:
    """Guards that the last state counts, not the tick before it."""
    text = tag(job_with(ELEMENT_ON))
    assert "heat NOT recorded as off" in text
    assert "heated empty or bypassed" in text


def test_a_plug_put_back_is_in() -> None:
    """Guards that the tag says how the plug stands now."""
    text = tag(job_with(PLUG_IN))
    assert "plug IN" in text
    assert "Plug back into" not in text


def test_a_bypass_set_back_is_none() -> None:
    """Guards that a heater is called bypassed only while its valves cut it off."""
    assert "bypassed, empty" in tag(job_with())
    opened = [
        json.dumps({"action": "set", "part": valve, "setting": "along"})
        for valve in ("heater-cold-valve", "heater-hot-valve")
    ]
    assert "bypassed, empty" not in tag(job_with(*opened, BYPASS_SHUT))


def test_a_card_that_the_record_contradicts_is_open() -> None:
    """Guards that a part said not to be there, and needed on the card, is no finished job."""
    job = job_with()
    spoilt = replace(job, done=replace(job.done, still_here=("filter",)))
    text = tag(spoilt)
    assert "NOT FINISHED" in text
    assert "the card says it is: filter housing. Put the card right." in text


def test_a_hold_is_for_a_night() -> None:
    """Guards that first aid before a cold night is never taken for winterizing."""
    job = job_with()
    held = HeldFor(start_degC=10.0, outdoor_degC=-20.0, parts=(("pump", 3600.0),))
    plan = replace(job.done.plan, hold=held)
    text = tag(replace(job, done=replace(job.done, plan=plan)))
    assert "NOT FINISHED" in text
    assert "A freeze hold is for one cold night, not for a winter." in text


@pytest.mark.parametrize("size", PAPERS)
@pytest.mark.parametrize("name", [GOOD, BAD])
def test_one_small_page(size: Paper, name: str) -> None:
    """Guards that a tag is one page of its size."""
    (page,) = read(hang_tag_pdf(demo_job(name, LINK), "en", size)).pages
    assert tuple(round(float(x)) for x in page.mediabox[2:]) == SIZES[size]


def test_long_names_fit() -> None:
    """Guards that a tag of a coach with long names is still one page, and nothing runs over."""
    card = long_named_card().model_copy(update={"name": "a very long name of a coach, " * 5})
    job = job_with(left_out=("run-outlet", "loosen", "set-bypass"), link=LINK)
    plan = replace(job.done.plan, card=card)
    crowded = replace(job, card=card, done=replace(job.done, plan=plan))
    (page,) = read(hang_tag_pdf(crowded)).pages
    lowest: list[float] = []

    def note(text: str, cm: list[float], matrix: list[float], *_: object) -> None:
        if text.strip().startswith((MINUS, "Before", "Heater")):
            lowest.append(matrix[5] * cm[3] + cm[5])

    page.extract_text(visitor_text=note)
    text = words(hang_tag_pdf(crowded))
    assert "more: see the winter record." in text
    assert min(lowest) > 90.0


def test_metric() -> None:
    """Guards the other units."""
    assert "-23.3 °C" in tag(demo_job(GOOD), "a4", "metric")


def test_the_same_record_gives_the_same_tag() -> None:
    """Guards that the same job gives the same bytes."""
    assert hang_tag_pdf(demo_job(GOOD, LINK)) == hang_tag_pdf(demo_job(GOOD, LINK))


def test_it_can_be_read_aloud() -> None:
    """Guards that it is tagged, titled and names its language, and that the code has words."""
    made = hang_tag_pdf(demo_job(GOOD, LINK))
    pdf = read(made)
    assert pdf.metadata is not None
    assert pdf.metadata.title == "Tag HL-118"
    assert str(pdf.root_object["/Lang"]) == "en"
    assert b"<pdfuaid:part>1</pdfuaid:part>" in made
    assert alternatives(made) == [f"QR code of the coach's page: {LINK}"]
    assert alternatives(hang_tag_pdf(demo_job(GOOD))) == []


def test_a_day_that_nobody_wrote_down_is_left_blank() -> None:
    """Guards that no day is made up."""
    assert not re.search(r"\d{4}-\d\d-\d\d", tag(job_with()))


def test_a_paper_that_is_not_there_is_named() -> None:
    """Guards that a wrong choice is an error that says which there are."""
    with pytest.raises(ChoiceError, match="expected one of us-letter, a4"):
        hang_tag_pdf(job_with(), paper="a3")

"""Papers of every bundled record: what went wrong never gets a tag that reassures."""

import re

import pytest

from tests.demo_records import COACHES, NAMES
from tests.recorded_jobs import LINK, demo_job, read, words
from wintertight.documents.hang_tag import hang_tag_pdf
from wintertight.documents.typeset import PAPERS, Paper
from wintertight.documents.winter_record import winter_record_pdf
from wintertight.units import System, in_words
from wintertight.wording.names import part_name
from wintertight.wording.spoken import begun


@pytest.mark.parametrize("coach", COACHES)
def test_a_bad_record_gets_no_promise(coach: str) -> None:
    """Guards that no tag of a job that went wrong, in whatever way, promises a temperature."""
    job = demo_job(f"{coach}-bad", LINK)
    text = words(hang_tag_pdf(job))
    assert "NOT FINISHED" in text
    assert re.search(r"N(OT|ot) (protected|proven) to", text)
    assert "Protected as recorded" not in text
    assert "VOID" not in text
    assert "bypassed, empty" not in text
    record = words(winter_record_pdf(job))
    assert "Not finished: what is open, and what would settle it" in record
    assert "Protected as recorded" not in record


@pytest.mark.parametrize("coach", COACHES)
def test_a_good_record_is_promised_its_design_low_and_no_more(coach: str) -> None:
    """Guards that the promise is the design low of the card, and void once water runs."""
    job = demo_job(f"{coach}-good", LINK)
    low = in_words(job.done.plan.low_degC, "temperature", "us")
    text = words(hang_tag_pdf(job))
    assert f"Protected as recorded to {low} VOID ONCE WATER RUNS" in text
    assert set(re.findall(r"-?\d+ °F", text)) == {low}
    assert "NOT FINISHED" not in text
    assert "Not finished" not in words(winter_record_pdf(job))


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("name", NAMES)
def test_every_tag_is_one_page_and_every_record_names_all_parts(name: str, paper: Paper) -> None:
    """Guards that nothing is cut, on either paper, in either system of units."""
    job = demo_job(name, LINK)
    system: System = "metric" if paper == "a4" else "us"
    assert len(read(hang_tag_pdf(job, "en", paper, system)).pages) == 1
    pdf = winter_record_pdf(job, "en", paper, system)
    assert 2 <= len(read(pdf).pages) <= 4
    text = words(pdf)
    for part in job.done.plan.parts:
        assert begun(part_name(job.done.plan.card, part.id)) in text, part.id

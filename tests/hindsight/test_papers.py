"""Papers of every bundled record: what went wrong never gets a tag that reassures."""

import re

import pytest

from tests.demo_records import COACHES
from tests.recorded_jobs import LINK, demo_job, read, words
from wintertight.documents.hang_tag import hang_tag_pdf
from wintertight.documents.recorded_job import RecordedJob
from wintertight.documents.winter_record import winter_record_pdf
from wintertight.units import in_words
from wintertight.wording.names import part_name
from wintertight.wording.spoken import begun


def record_and_tag(job: RecordedJob) -> tuple[str, str]:
    """Give what both papers say, once nothing is cut off them in either size and system."""
    for pages in (
        read(hang_tag_pdf(job)).pages,
        read(hang_tag_pdf(job, "en", "a4", "metric")).pages,
    ):
        assert len(pages) == 1
    found = winter_record_pdf(job), winter_record_pdf(job, "en", "a4", "metric")
    for pdf in found:
        assert 2 <= len(read(pdf).pages) <= 4
        text = words(pdf)
        for part in job.done.plan.parts:
            assert begun(part_name(job.done.plan.card, part.id)) in text, part.id
    return words(found[0]), words(hang_tag_pdf(job))


@pytest.mark.parametrize("coach", COACHES)
def test_a_bad_record_gets_no_promise(coach: str) -> None:
    """Guards that no tag of a job that went wrong, in whatever way, promises a temperature."""
    record, tag = record_and_tag(demo_job(f"{coach}-bad", LINK))
    assert "NOT FINISHED" in tag
    assert re.search(r"N(OT|ot) (protected|proven) to", tag)
    assert "Protected as recorded" not in tag
    assert "VOID" not in tag
    assert "bypassed, empty" not in tag
    assert "Not finished: what is open, and what would settle it" in record
    assert "Protected as recorded" not in record


@pytest.mark.parametrize("coach", COACHES)
def test_a_good_record_is_promised_its_design_low_and_no_more(coach: str) -> None:
    """Guards that the promise is the design low of the card, and void once water runs."""
    job = demo_job(f"{coach}-good", LINK)
    low = in_words(job.done.plan.low_degC, "temperature", "us")
    record, tag = record_and_tag(job)
    assert f"Protected as recorded to {low} VOID ONCE WATER RUNS" in tag
    assert set(re.findall(r"-?\d+ °F", tag)) == {low}
    assert "NOT FINISHED" not in tag
    assert "Not finished" not in record

"""The winter record: everything that was written down, every part, and what is open."""

import re
from dataclasses import replace
from functools import cache

import pytest

from tests.recorded_jobs import LINK, alternatives, demo_job, job_with, read, words
from wintertight.documents.drawing.of_plan import end_picture
from wintertight.documents.plan_sources import sources_of
from wintertight.documents.printed_text import printed
from wintertight.documents.recorded_job import RecordedJob, warm_side
from wintertight.documents.typeset import PAPERS, Paper
from wintertight.documents.winter_record import winter_record_pdf
from wintertight.errors import ChoiceError
from wintertight.procedure.plan import Refused
from wintertight.sources import cite
from wintertight.units import System, celsius_to_fahrenheit, fahrenheit_to_celsius, in_words
from wintertight.wording.names import part_name
from wintertight.wording.spoken import begun

pytestmark = pytest.mark.long

GOOD, BAD = "small-trailer-good", "on-demand-van-bad"
SIZES = {"us-letter": (612, 792), "a4": (595, 842)}


@cache
def paper(name: str, size: Paper = "us-letter", system: System = "us", link: str = "") -> bytes:
    """Give the winter record of a bundled record."""
    return winter_record_pdf(demo_job(name, link), "en", size, system)


@pytest.mark.parametrize("name", [GOOD, BAD])
def test_every_part_and_its_proof_stand_on_it(name: str) -> None:
    """Guards that no part is missing, and that the groups add up to all of them."""
    job, text = demo_job(name), words(paper(name))
    for part in job.done.plan.parts:
        assert begun(part_name(job.done.plan.card, part.id)) in text, part.id
    groups = r"(Would burst|Filled with antifreeze|Drained|Taken out) \((\d+)\)"
    counts = dict(re.findall(groups, text))
    assert sum(map(int, counts.values())) == len(job.done.plan.parts)
    assert f"Proof of every part ({len(job.done.plan.parts)} in all)" in text


@pytest.mark.parametrize("name", [GOOD, BAD])
def test_every_event_stands_on_it(name: str) -> None:
    """Guards that time, jugs, readings with their instrument, and reasons are all there."""
    job, text = demo_job(name), words(paper(name))
    for event in job.record.events:
        assert job.clock(event.at_s) in text
        if event.first_colour_s:
            assert f"colour after {event.first_colour_s:g} s; run on {event.run_on_s:g} s" in text
        if event.jugs_left is not None:
            assert f"{event.jugs_left:g} jug" in text
        if event.reading is not None:
            assert f"{event.reading.value:g} % glycol (refractometer, zeroed on water)" in text
        if event.why:
            assert event.why in text


def test_what_was_not_done_is_not_overlooked() -> None:
    """Guards that a skipped step and one at a part that is not there are told, with the reason."""
    text = words(paper(BAD))
    assert "trap under the shower pan SKIPPED “jug was empty”" in text
    assert "Bidet sprayer NOT ON THIS COACH “there is none; a plain lid”" in text
    assert "Not on this coach, as recorded: bidet sprayer." in text
    assert "Step 30 was not done: do it now, then prove again." in text
    assert "Numbers of steps are those of a job sheet without" in text


def test_the_verdict_and_who_when_where_are_on_it() -> None:
    """Guards the head: verdict, place, cold, method, product, gallons, day and device."""
    text = words(paper(GOOD))
    assert "Protected as recorded to -10 °F; void once water runs." in text
    for told in (
        "Stored at Heron Lake back lot, in the open",
        "Design low -10 °F",
        "Method Antifreeze by the coach's own pump",
        "about 1.9 gal of Heron pink -50, by the calculation",
        "1.9 gal by the jugs that were counted",
        "2025-10-09, 08:40 to 09:14",
        "Written down on tablet 1",
    ):
        assert told in text


def test_the_limits_and_the_signatures_are_on_it() -> None:
    """Guards that it says what it is not, and leaves room for two people to sign."""
    text = words(paper(GOOD))
    assert "Void once water runs anywhere in the coach." in text
    assert "The coach's manual and local code come first." in text
    assert text.count("Name and signature") == 2
    assert text.count("Date") == 2
    assert not re.search(r"\bsafe\b", text)


def test_what_the_numbers_stand_on_is_on_it() -> None:
    """Guards sources, engine, card hash and digest."""
    job, text = demo_job(GOOD), words(paper(GOOD))
    for key in sources_of(job.done.plan):
        assert cite(key) in text
    bare = text.replace(" ", "")
    assert job.card.card_hash.removeprefix("sha256:") in bare
    assert job.digest in bare
    assert "Engine: Wintertight " in text


def test_a_diagnosis_is_on_it() -> None:
    """Guards that what speaks for a mistake comes with what would tell."""
    text = words(paper("small-trailer-bad"))
    assert "They speak for the outside shower ticked, and probably never run" in text
    assert "To tell: a cup from the outside shower, cold side." in text
    assert "Not finished: what is open, and what would settle it" in text


def test_what_the_record_does_not_speak_of_is_on_it() -> None:
    """Guards that a step without an event is listed as not recorded, with its number."""
    job = job_with(left_out=("set-bypass", "run-outlet:toilet"))
    text = words(winter_record_pdf(job))
    assert len(job.done.unknown) == 2
    assert text.count("not recorded") == 2
    assert re.search(r"\d+ Toilet run to colour and on not recorded", text)
    assert "Nothing was timed, counted or read, so the record says no more than it says." in text


def test_proven_and_yet_open_is_said_first() -> None:
    """Guards that a hazard in the record stands above a proof that is complete."""
    job = job_with()
    assert job.is_finished
    plan = replace(job.done.plan, refused=(Refused("plug-out:heater", "plug while hot"),))
    spoilt = replace(job, done=replace(job.done, plan=plan))
    assert not spoilt.is_finished
    text = words(winter_record_pdf(spoilt))
    assert "NOT FINISHED. By what was written down every part is proven to -4 °F" in text
    assert "The plug would come out of a heater that is on" in text


@pytest.mark.parametrize("size", PAPERS)
def test_both_papers(size: Paper) -> None:
    """Guards the size of each page."""
    for page in read(paper(GOOD, size)).pages:
        assert tuple(round(float(x)) for x in page.mediabox[2:]) == SIZES[size]


def test_metric() -> None:
    """Guards that the other units are used throughout, and none is missing."""
    text = words(paper(GOOD, "a4", "metric"))
    assert "Protected as recorded to -23.3 °C" in text
    assert "about 7.2 L of Heron pink -50" in text
    assert "°F" not in text
    assert not re.search(r"\bgal\b", text)


def test_the_same_record_gives_the_same_bytes() -> None:
    """Guards that a record can be compared and filed by its content."""
    assert winter_record_pdf(demo_job(GOOD, LINK)) == winter_record_pdf(demo_job(GOOD, LINK))


def test_it_can_be_read_aloud() -> None:
    """Guards that it is tagged, titled and names its language, as PDF/UA asks."""
    made = paper(GOOD)
    pdf = read(made)
    assert pdf.metadata is not None
    assert pdf.metadata.title == "Winter record HL-118"
    assert str(pdf.root_object["/Lang"]) == "en"
    assert "/StructTreeRoot" in pdf.root_object
    assert b"<pdfuaid:part>1</pdfuaid:part>" in made


def test_the_link_is_a_picture_with_words() -> None:
    """Guards that a link stands as QR code, as words for it and as text, and only where given."""
    with_link = paper(GOOD, link=LINK)
    assert f"QR code of the coach's page: {LINK}" in alternatives(with_link)
    assert f"Coach's page {LINK}" in words(with_link)
    assert not [text for text in alternatives(paper(GOOD)) if "QR" in text]
    assert "Coach's page" not in words(paper(GOOD))


def test_it_shows_how_the_job_ended() -> None:
    """Guards that its drawing is that of what was done, and not of what was planned."""
    job = demo_job("small-trailer-bad")
    (alternative,) = alternatives(paper("small-trailer-bad"))
    done, planned = (end_picture(plan) for plan in (job.done.plan, job.done.planned))
    assert alternative == printed(f"{done.title}. {done.description}")
    assert done.description != planned.description


def test_print_is_never_too_small() -> None:
    """Guards that no text is under eight points."""
    sizes: set[float] = set()

    def note(text: str, _cm: object, matrix: list[float], _font: object, size: float) -> None:
        if text.strip():
            sizes.add(round(abs(size * matrix[3]), 2))

    for page in read(paper(BAD)).pages:
        page.extract_text(visitor_text=note)
    assert sizes
    assert min(sizes) >= 8.0


def test_a_paper_or_language_that_is_not_there_is_named() -> None:
    """Guards that a wrong choice is an error that says which there are."""
    with pytest.raises(ChoiceError, match="expected one of us-letter, a4"):
        winter_record_pdf(job_with(), paper="a3")
    with pytest.raises(ChoiceError, match="no language is called 'xx'"):
        winter_record_pdf(job_with(), language="xx")


@pytest.mark.parametrize(
    ("low_degF", "told"), [(-10.0, "-10 °F"), (-9.6, "-9 °F"), (-10.4, "-10 °F"), (0.2, "1 °F")]
)
def test_rounding_promises_nothing(low_degF: float, told: str) -> None:
    """Guards that a printed cold is never colder than the one that is proven."""
    low_degC = fahrenheit_to_celsius(low_degF)
    assert in_words(warm_side(low_degC, "us"), "temperature", "us") == told
    for system in ("us", "metric"):
        warm = warm_side(low_degC, system)
        assert low_degC - 1e-6 <= warm < low_degC + 0.6
    assert celsius_to_fahrenheit(warm_side(low_degC, "us")) == pytest.approx(
        round(celsius_to_fahrenheit(warm_side(low_degC, "us")))
    )


def test_only_what_is_proven_is_rounded_so() -> None:
    """Guards that the design low of a coach with a gap is told as it was asked for."""
    job: RecordedJob = demo_job(BAD)
    assert job.spoken_plan("us") is job.done.plan

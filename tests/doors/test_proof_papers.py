"""Winter record and hang tag of a record, by command: what they say is what the proof says."""

from pathlib import Path

import pytest
from pypdf import PdfReader

from tests.doors.door import CARD, Door

RECORDS = CARD.parent.parent / "records"


def words(file: Path) -> str:
    """Give all text of a paper, blanks made one."""
    return " ".join(" ".join(page.extract_text() for page in PdfReader(file).pages).split())


def proven(door: Door, folder: Path, record: str) -> tuple[str, str, str]:
    """Prove a record; give what record and tag say, and the last lines of the screen."""
    record_file, tag = folder / "record.pdf", folder / "tag.pdf"
    done = door("prove", CARD, "--done", RECORDS / record, "--pdf", record_file, "--tag", tag)
    assert (done.status, done.err) == (0, "")
    assert done.out.splitlines()[-2:] == [f"Winter record: {record_file}", f"Hang tag: {tag}"]
    assert len(PdfReader(tag).pages) == 1
    return words(record_file), words(tag), done.out


def test_a_good_job_gets_a_tag_that_ends_with_water(door: Door, tmp_path: Path) -> None:
    """Guards that a proven coach is protected as recorded, and void once water runs."""
    record, tag, _ = proven(door, tmp_path, "middle-travel-trailer-good.json")
    assert "Protected as recorded to" in tag
    assert "VOID ONCE WATER RUNS" in tag
    assert "bypassed, empty" in tag
    for said in ("Protected as recorded to", "void once water runs", "HL-204", "Signatures"):
        assert said in record
    assert " safe" not in tag


def test_a_bad_job_gets_no_tag_that_reassures(door: Door, tmp_path: Path) -> None:
    """Guards that a coach with something open hangs out what is open, and nothing else."""
    record, tag, _ = proven(door, tmp_path, "middle-travel-trailer-bad.json")
    assert "NOT FINISHED" in tag
    assert "Protected as recorded" not in tag
    assert "Protected as recorded" not in record
    assert "Shower" in tag


@pytest.mark.parametrize(("language", "void"), [("es", "SIN VALIDEZ"), ("fr", "SANS VALEUR")])
def test_a_tag_in_another_language_says_the_same(
    door: Door, tmp_path: Path, language: str, void: str
) -> None:
    """Guards that a tag in Spanish or French is as void once water runs."""
    tag = tmp_path / "tag.pdf"
    record = RECORDS / "middle-travel-trailer-good.json"
    done = door("prove", CARD, "--done", record, "--tag", tag, "--language", language)
    assert done.status == 0
    assert void in words(tag)

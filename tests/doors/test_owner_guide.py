"""``plan --guide``: the guide for whoever winterizes a coach alone."""

from pathlib import Path

import pytest
from pypdf import PdfReader

from tests.doors.door import CARD, Door


def test_the_guide_is_written_beside_the_sheet(door: Door, tmp_path: Path) -> None:
    """Guards that both papers are written by one command, and told."""
    sheet, guide = tmp_path / "sheet.pdf", tmp_path / "guide.pdf"
    done = door("plan", CARD, "--quick", "--pdf", sheet, "--guide", guide, "--paper", "a4")
    assert (done.status, done.err) == (0, "")
    assert f"Owner's guide: {guide}" in done.out
    pages = PdfReader(guide).pages
    assert len(pages) == 2
    assert round(float(pages[0].mediabox.width)) == 595
    assert "Owner's guide" in pages[0].extract_text()
    assert "Job sheet" in PdfReader(sheet).pages[0].extract_text()


def test_the_place_is_told_on_the_guide(door: Door, tmp_path: Path) -> None:
    """Guards that what is looked at before, and what a driveway lacks, stands on the guide."""
    guide = tmp_path / "guide.pdf"
    assert door("plan", CARD, "--place", "driveway", "--guide", guide).status == 0
    text = " ".join(" ".join(p.extract_text() for p in PdfReader(guide).pages).split())
    assert "Look whether anything has frozen already" in text
    assert "At driveway" in text


@pytest.mark.parametrize("name", ["none/guide.pdf", "folder", ""])
def test_a_guide_that_cannot_be_written_is_one_line(
    door: Door, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, name: str
) -> None:
    """Guards that a wrong place is told before anything is planned, and leaves nothing behind."""
    monkeypatch.chdir(tmp_path)
    (tmp_path / "folder").mkdir()
    door("plan", CARD, "--guide", name).refused("WT-100", "--guide: ", "nothing was written")
    assert [f.name for f in tmp_path.iterdir()] == ["folder"]


def test_two_papers_do_not_share_a_file(door: Door, tmp_path: Path) -> None:
    """Guards that the guide does not replace the sheet that was just written."""
    one = tmp_path / "one.pdf"
    door("plan", CARD, "--pdf", one, "--guide", one).refused("WT-100", "--guide: ", "another file")
    assert not one.exists()

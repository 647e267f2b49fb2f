import os
import stat
from pathlib import Path

import pytest
from pypdf import PdfReader

from tests.doors.door import CARD, Door
from wintertight.cli import written
from wintertight.errors import InputError


def test_the_sheet_is_written(door: Door, tmp_path: Path) -> None:
    """Guards that the file is a PDF of the paper asked for, and is named on the screen."""
    file = tmp_path / "sheet é.pdf"
    done = door("plan", CARD, "--quick", "--pdf", file, "--paper", "a4", "--units", "metric")
    assert (done.status, done.err) == (0, "")
    assert done.out.endswith(f"Job sheet: {file}\n")
    page = PdfReader(file).pages[0]
    assert (round(page.mediabox.width), round(page.mediabox.height)) == (595, 842)
    assert [f.name for f in tmp_path.iterdir()] == [file.name]


def test_json_and_sheet_go_together(door: Door, tmp_path: Path) -> None:
    """Guards that the sheet is written beside the object, and a strict status changes nothing."""
    file = tmp_path / "sheet.pdf"
    done = door("plan", CARD, "--low=-49F", "--strict", "--quick", "--json", "--pdf", file)
    assert done.status == 3
    assert done.object()["verdict"] == "gap"
    page = PdfReader(file).pages[0]
    assert (page.mediabox.width, page.mediabox.height) == (612, 792)


def test_an_older_sheet_is_replaced(door: Door, tmp_path: Path) -> None:
    """Guards that a second run replaces the first one's sheet and keeps its permissions."""
    file, link = tmp_path / "sheet.pdf", tmp_path / "link.pdf"
    file.write_bytes(b"%PDF-1.4 old")
    file.chmod(0o640)
    link.symlink_to(file)
    assert door("plan", CARD, "--quick", "--pdf", link).status == 0
    assert link.is_symlink()
    assert len(PdfReader(file).pages) >= 1
    assert stat.S_IMODE(file.stat().st_mode) == 0o640


@pytest.mark.parametrize("name", ["none/sheet.pdf", "folder", "", f"{300 * 'a'}.pdf", "a\x00.pdf"])
def test_a_sheet_that_cannot_be_written_is_one_line(
    door: Door, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, name: str
) -> None:
    """Guards that a wrong place is told before anything is planned, and leaves nothing behind."""
    monkeypatch.chdir(tmp_path)
    (tmp_path / "folder").mkdir()
    door("plan", CARD, "--pdf", name).refused("WT-100", "--pdf: ", "nothing was written")
    assert [f.name for f in tmp_path.iterdir()] == ["folder"]


def test_a_card_is_never_written_over(door: Door, tmp_path: Path) -> None:
    """Guards the card against its own name behind the wrong option."""
    card = tmp_path / "card.toml"
    card.write_bytes(CARD.read_bytes())
    door("plan", card, "--pdf", card).refused("WT-100", "card.toml --pdf: ", "not replaced")
    assert card.read_bytes() == CARD.read_bytes()


def test_a_device_is_not_replaced(door: Door) -> None:
    """Guards that what is no plain file is left alone."""
    door("plan", CARD, "--pdf", os.devnull).refused("WT-100", "--pdf: ", "expected the name")


def test_a_failing_disk_leaves_the_older_sheet(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Guards that a sheet is written whole or not at all."""
    file = tmp_path / "sheet.pdf"
    file.write_bytes(b"%PDF-1.4 old")

    def full(_stream: int) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os, "fsync", full)
    with pytest.raises(InputError, match="No space left on device; nothing was written"):
        written.write_whole(str(file), "--pdf", b"%PDF-1.7 new")
    assert [f.name for f in tmp_path.iterdir()] == ["sheet.pdf"]
    assert file.read_bytes() == b"%PDF-1.4 old"

"""All documents of a visit in one folder."""

from pathlib import Path

from tests.doors.door import CARD, Door


def test_a_visit_has_all_its_papers(door: Door, tmp_path: Path) -> None:
    """Guards that sheet, guide and drawings are written, named one a line, and again the same."""
    folder = tmp_path / "new" / "visit"
    done = door("papers", CARD, folder, "--low=-10F")
    assert (done.status, done.err) == (0, "")
    named = [Path(line) for line in done.out.splitlines() if line.startswith(str(tmp_path))]
    assert {path.name for path in named} == {path.name for path in folder.iterdir()}
    assert {"HL-204-job-sheet.pdf", "HL-204-owners-guide.pdf", "HL-204-end.svg"} <= {
        path.name for path in named
    }
    before = {path: path.read_bytes() for path in named}
    assert door("papers", CARD, folder, "--low=-10F").status == 0
    assert {path: path.read_bytes() for path in named} == before


def test_a_folder_that_cannot_be_made_is_told(door: Door, tmp_path: Path) -> None:
    """Guards that a file in the place of the folder is one clear line, and stays as it is."""
    (tmp_path / "taken").write_text("mine", "utf-8")
    done = door("papers", CARD, tmp_path / "taken", "--low=-10F")
    done.refused("WT-100", "FOLDER", "expected a folder")
    assert (tmp_path / "taken").read_text("utf-8") == "mine"

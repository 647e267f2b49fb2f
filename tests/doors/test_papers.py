"""All documents of a visit in one folder."""

import json
from pathlib import Path

from tests.doors.door import CARD, SHOP, Door
from tests.recorded_jobs import LINK, alternatives, words
from tests.unit.documents.demo_plans import DEMO

SMALL = DEMO / "cards" / "small-trailer.toml"
GOOD = DEMO / "records" / "small-trailer-good.json"


def test_a_visit_has_all_its_papers(door: Door, tmp_path: Path) -> None:
    """Guards that what a plan gives is written, named one a line, and again the same."""
    folder = tmp_path / "new" / "visit"
    done = door("papers", CARD, folder, "--low=-10F", "--date=2026-10-01")
    assert (done.status, done.err) == (0, "")
    named = [Path(line) for line in done.out.splitlines() if line.startswith(str(tmp_path))]
    assert {path.name for path in named} == {path.name for path in folder.iterdir()}
    assert {path.name for path in named if path.suffix == ".pdf"} == {
        "HL-204-estimate.pdf",
        "HL-204-job-sheet.pdf",
        "HL-204-owners-guide.pdf",
    }
    assert "HL-204-end.svg" in {path.name for path in named}
    before = {path: path.read_bytes() for path in named}
    assert door("papers", CARD, folder, "--low=-10F", "--date=2026-10-01").status == 0
    assert {path: path.read_bytes() for path in named} == before


def test_a_visit_that_is_done_has_its_record_and_tag(door: Door, tmp_path: Path) -> None:
    """Guards that a record brings its own two papers, the same that prove writes."""
    done = door("papers", SMALL, tmp_path / "visit", "--done", GOOD, "--link", LINK)
    assert (done.status, done.err) == (0, "")
    alone = tmp_path / "record.pdf", tmp_path / "tag.pdf"
    both = ("--pdf", alone[0], "--tag", alone[1], "--link", LINK)
    assert door("prove", SMALL, "--done", GOOD, *both).status == 0
    for file, name in zip(alone, ("winter-record", "hang-tag"), strict=True):
        assert (tmp_path / "visit" / f"HL-118-{name}.pdf").read_bytes() == file.read_bytes()
    sheet = (tmp_path / "visit" / "HL-118-job-sheet.pdf").read_bytes()
    assert any(LINK in alternative for alternative in alternatives(sheet))


def test_a_visit_is_done_by_the_method_of_its_record(door: Door, tmp_path: Path) -> None:
    """Guards that the sheet beside a record of a blow-out is the sheet of a blow-out."""
    record = json.loads(GOOD.read_text("utf-8"))
    blown = tmp_path / "blown.json"
    blown.write_text(json.dumps({**record, "method": "drain", "events": []}), "utf-8")
    assert door("papers", SMALL, tmp_path / "visit", "--done", blown).status == 0
    assert "Drain" in words((tmp_path / "visit" / "HL-118-job-sheet.pdf").read_bytes())
    assert "Fill, one outlet" not in words(
        (tmp_path / "visit" / "HL-118-job-sheet.pdf").read_bytes()
    )


def test_a_list_without_prices_gives_no_estimate(door: Door, tmp_path: Path) -> None:
    """Guards that a shop without a price table gets its other papers, and is told."""
    text = SHOP.read_text("utf-8")
    shop = tmp_path / "shop.toml"
    shop.write_text(text[: text.index("[prices]")], "utf-8")
    done = door("papers", SMALL, tmp_path / "visit", "--shop", shop)
    assert (done.status, done.err) == (0, "")
    assert "No estimate: the shop's list has no price table." in done.out
    assert not list((tmp_path / "visit").glob("*estimate*"))


def test_earlier_visits_need_a_record(door: Door, tmp_path: Path) -> None:
    """Guards that earlier visits without a record of this one are refused, not left out."""
    done = door("papers", SMALL, tmp_path / "visit", "--earlier", GOOD)
    done.refused("WT-140", "--earlier", "expected --done")


def test_a_folder_that_cannot_be_made_is_told(door: Door, tmp_path: Path) -> None:
    """Guards that a file in the place of the folder is one clear line, and stays as it is."""
    (tmp_path / "taken").write_text("mine", "utf-8")
    done = door("papers", CARD, tmp_path / "taken", "--low=-10F")
    done.refused("WT-100", "FOLDER", "expected a folder")
    assert (tmp_path / "taken").read_text("utf-8") == "mine"

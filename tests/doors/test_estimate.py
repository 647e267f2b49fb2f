"""``wintertight estimate``: paper, object, screen, and one line for what is wrong."""

from datetime import date, timedelta
from pathlib import Path

import pytest
from pypdf import PdfReader

from tests.doors.door import CARD, SHOP, Door
from tests.doors.test_plan import unexplained

SMALL = CARD.with_name("small-trailer.toml")
DAY = ("--date", "2026-10-15")
KEYS = {
    "schema", "engine", "card_hash", "coach", "shop", "method", "verdict", "dated", "valid_until",
    "open_ended", "tier", "lines", "net", "taxes", "total", "at_most", "rounding",
    "approval_limit", "needs_approval", "options", "terms",
}  # fmt: skip


def test_the_object_is_that_of_the_contract(door: Door) -> None:
    """Guards the names that other programs read, that amounts are text, and that nulls are told."""
    found = door("estimate", SMALL, *DAY, "--shop", SHOP, "--json").object()
    assert found["schema"] == "wintertight/estimate/1"
    assert found.keys() >= KEYS
    assert (found["dated"], found["valid_until"]) == ("2026-10-15", "2026-11-14")
    assert found["total"]["currency"] == "USD"
    assert isinstance(found["total"]["amount"], str)
    assert found["tier"] == "Small coach, up to 20 ft"
    assert not list(unexplained(found))


def test_what_declining_leaves_open_is_worked_out(door: Door) -> None:
    """Guards that the plan's missed steps speak for declined work, in parts and in words."""
    asked = ("--decline", "outside shower", "--accept", "Battery taken in and kept charged")
    found = door("estimate", SMALL, *DAY, *asked, "--json").object()
    options = {option["name"]: option for option in found["options"]}
    shower = options["Outside shower"]
    assert shower["state"] == "declined"
    assert shower["left_open"]["asked"]
    assert shower["left_open"]["steps"]
    assert shower["left_open"]["gaps"]
    assert "would not be protected" in shower["text"]
    assert [line["text"] for line in found["lines"]][-1] == "Battery taken in and kept charged"


def test_the_paper_is_written(door: Door, tmp_path: Path) -> None:
    """Guards that the estimate is a PDF, told on the screen with total and currency."""
    file = tmp_path / "estimate.pdf"
    done = door("estimate", SMALL, *DAY, "--pdf", file, "--paper", "a4")
    assert (done.status, done.err) == (0, "")
    assert f"Estimate: {file}" in done.out
    assert "Prices from the bundled example list are invented" in done.out
    text = PdfReader(file).pages[0].extract_text()
    assert "2026-11-14" in text
    total = next(line for line in done.out.splitlines() if line.startswith("Total"))
    assert total.split()[-1] in text


def test_without_a_date_it_is_of_today(door: Door) -> None:
    """Guards that the day of the command line is the one on the calendar."""
    before = date.today()  # noqa: DTZ011 - as the command takes it
    found = door("estimate", SMALL, "--json").object()
    after = date.today()  # noqa: DTZ011 - it may have turned midnight
    dated = date.fromisoformat(found["dated"])
    assert before <= dated <= after
    assert found["valid_until"] == (dated + timedelta(days=30)).isoformat()


def test_a_coach_that_may_have_frozen_is_open_ended(door: Door) -> None:
    """Guards that the price for thawing is none for the winter."""
    found = door("estimate", SMALL, *DAY, "--method", "thaw", "--json").object()
    assert found["open_ended"] is True
    assert found["tier"] == "Thaw and test, first visit"
    assert any("open-ended" in term for term in found["terms"])


@pytest.mark.parametrize(
    ("code", "arguments", "words"),
    [
        ("WT-140", ("--date", "15.10.2026"), ("--date: ", "YYYY-MM-DD")),
        ("WT-140", ("--date", "2026-02-30"), ("--date: ", "2026-02-30")),
        ("WT-140", ("--accept", "piano"), ("no option 'piano'", "Outside shower")),
        ("WT-140", ("--paper", "a3"), ("--paper: ",)),
        ("WT-140", ("--method", "steam"), ("steam",)),
        ("WT-100", ("--pdf", "none/e.pdf"), ("--pdf: ", "nothing was written")),
    ],
)
def test_what_is_wrong_is_one_line(
    door: Door, code: str, arguments: tuple[str, ...], words: tuple[str, ...]
) -> None:
    """Guards days, options, papers, methods and files that are none."""
    door("estimate", SMALL, *arguments).refused(code, *words)


def test_a_list_without_prices_says_what_is_missing(door: Door, tmp_path: Path) -> None:
    """Guards that a shop without a price table is told which one to write, by file and field."""
    bare = tmp_path / "bare.toml"
    bare.write_text(SHOP.read_text("utf-8").partition("[prices]")[0], encoding="utf-8")
    door("estimate", SMALL, "--shop", bare).refused(
        "WT-140", "bare.toml prices: ", "no price table", "[[prices.tier]]"
    )


def test_no_tier_for_a_coach_is_one_line(door: Door, tmp_path: Path) -> None:
    """Guards that a coach beyond every tier is no crash and no guess."""
    text = SHOP.read_text("utf-8")
    start = text.index('[[prices.tier]]\nname = "Large coach"')
    end = text.index("[[prices.extra]]")
    short = tmp_path / "short.toml"
    short.write_text(text[:start] + text[end:], encoding="utf-8")
    card = CARD.with_name("large-motorhome.toml")
    door("estimate", card, "--method", "air", "--shop", short).refused("WT-140", "no tier")

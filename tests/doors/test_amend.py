"""A card put right at the coach: one field changes, the rest stays, and nothing is lost."""

from pathlib import Path

import pytest

from tests.doors.door import CARD, Door
from wintertight.coach.history import earlier
from wintertight.coach.load import load_card


@pytest.fixture
def card(tmp_path: Path) -> Path:
    """Give a copy of the middle travel trailer's card."""
    copy = tmp_path / "coach.toml"
    copy.write_bytes(Path(CARD).read_bytes())
    return copy


def amend(door: Door, card: Path, *asked: str) -> list[str]:
    """Amend a card; give what is printed, by line."""
    done = door("coach", "amend", str(card), *asked, "--why", "taped in the bay")
    assert (done.status, done.err) == (0, "")
    return done.out.splitlines()


def test_one_length_is_measured(door: Door, card: Path) -> None:
    """Guards that one line of the file changes, and the earlier card and the reason are kept."""
    was = card.read_text("utf-8")
    line = load_card(card).lines[3]
    told = amend(door, card, line.id, "length=7 ft", "--measured")
    now = load_card(card).line[line.id].length
    assert (now.how, round(now.value, 4)) == ("measured", 2.1336)
    assert told[0].endswith(": 1 difference. The card as it was stays in its history.")
    assert "length was" in told[1]
    assert "is 7 ft (measured" in told[1]
    old, new = was.splitlines(), card.read_text("utf-8").splitlines()
    assert len(old) == len(new)
    assert sum(a != b for a, b in zip(old, new, strict=True)) == 1
    (entry,) = earlier(card)
    assert (entry.text, entry.why) == (was, "taped in the bay")


def test_comments_stay_and_a_field_can_be_taken_away(door: Door, card: Path) -> None:
    """Guards that a field is added below its part's first line, and taken away without a trace."""
    card.write_text(f"# by hand\n{card.read_text('utf-8')}", "utf-8")
    before = card.read_text("utf-8")
    fitting = load_card(card).fittings[2]
    amend(door, card, fitting.id, "panel=left of the bed", "screws=4", "note=sticks")
    now = load_card(card).fitting[fitting.id]
    assert (now.panel, now.screws, now.note) == ("left of the bed", 4, "sticks")
    text = card.read_text("utf-8")
    assert text.startswith("# by hand\n")
    assert set(before.splitlines()) - set(text.splitlines()) <= {f'note = "{fitting.note}"'}
    amend(door, card, fitting.id, "panel=", "screws=", f"note={fitting.note or ''}")
    assert load_card(card) == load_card(CARD)


def test_a_list_over_several_lines_is_written_anew(door: Door, card: Path) -> None:
    """Guards that what cannot be changed in its own line is written anew, and said to be."""
    text = card.read_text("utf-8")
    head, _, rest = text.partition("[coach]")
    card.write_text(
        f"{head}[coach]\nnote = '''one\ntwo'''\n{rest}".replace('\nnote = "', "\n# was: "), "utf-8"
    )
    (first, *_) = amend(door, card, "coach", "note=seen in daylight")
    assert "written anew, without its comments" in first
    assert load_card(card).coach.note == "seen in daylight"


def test_what_the_card_says_already_writes_nothing(door: Door, card: Path) -> None:
    """Guards that the same again leaves no entry in the history."""
    fitting = load_card(card).fittings[0]
    assert "nothing was written" in amend(door, card, fitting.id, f"kind={fitting.kind}")[0]
    assert earlier(card) == ()


@pytest.mark.parametrize(
    ("asked", "begins", "said"),
    [
        (["pmp", "note=x"], "WT-140 PART: ", "did you mean 'pump'"),
        (["pump", "note"], "WT-140 FIELD=VALUE: ", "like"),
        (["pump", "note=x", "note=y"], "WT-140 note: ", "twice"),
        (["pump", "flow=3"], "WT-1", "unit"),
        (["pump", "tank=aluminum"], "WT-120 tank: ", "a demand pump has no 'tank'"),
        (["pump", "colour=red"], "WT-120 colour: ", "is no field here"),
        (["pump", "kind="], "WT-120 ", "missing"),
        (["pump", "id=strainer"], "WT-12", "strainer"),
    ],
)
def test_what_cannot_be_leaves_the_card_alone(
    door: Door, card: Path, asked: list[str], begins: str, said: str
) -> None:
    """Guards that a wrong part, field or value is one clear line, and the file stays as it was."""
    was = card.read_bytes()
    done = door("coach", "amend", str(card), *asked, "--why", "seen")
    assert done.status == 2
    assert done.err.startswith(begins)
    assert said in done.err
    assert done.err.count("\n") == 1
    assert card.read_bytes() == was
    assert earlier(card) == ()


def test_nobody_amends_without_a_reason(door: Door, card: Path) -> None:
    """Guards that a change says who saw it."""
    door("coach", "amend", str(card), "pump", "note=x", "--why", " ").refused("WT-100", "--why")

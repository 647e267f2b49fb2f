"""Drawings by command: the whole coach, and how a plan ends."""

from pathlib import Path

from tests.doors.door import CARD, Door


def test_a_coach_is_drawn(door: Door, tmp_path: Path) -> None:
    """Guards that the drawing is the same on the screen and in a file, which is named."""
    file = tmp_path / "coach.svg"
    done = door("coach", "draw", CARD, "--to", file)
    assert (done.status, done.out, done.err) == (0, f"{file}\n", "")
    assert door("coach", "draw", CARD).out == file.read_text("utf-8")
    assert "Bypass valve" in file.read_text("utf-8")


def test_a_plan_is_drawn(door: Door, tmp_path: Path) -> None:
    """Guards that the drawing of a plan tells how each part ends."""
    file = tmp_path / "end.svg"
    done = door("plan", CARD, "--low=-10F", "--quick", "--drawing", file)
    assert done.status == 0
    assert done.out.splitlines()[-1] == f"Drawing: {file}"
    assert "Water heater: drained" in file.read_text("utf-8")


def test_no_other_file_is_written_over(door: Door, tmp_path: Path) -> None:
    """Guards a card, and whatever else is no drawing, against a slip in the name."""
    card = tmp_path / "coach.toml"
    card.write_bytes(CARD.read_bytes())
    for asked in (("coach", "draw", CARD, "--to"), ("plan", CARD, "--low=-10F", "--drawing")):
        door(*asked, card).refused("WT-100", asked[-1], "of another kind; it is not replaced")
    assert card.read_bytes() == CARD.read_bytes()


def test_an_unknown_view_is_told(door: Door) -> None:
    """Guards that a wrong view says which there are."""
    door("coach", "draw", CARD, "--view", "top").refused("WT-140", "--view", "plan or side")

"""What ``coach new`` refuses, takes from a file, and does with a card that is there."""

import json
from pathlib import Path

import pytest

from tests.doors.door import Door
from tests.intake.conftest import Adviser
from tests.intake.keys import as_typed, script
from wintertight.coach.history import earlier
from wintertight.coach.intake.kept import load_kept

SHORT = as_typed(script("big-motorhome"))


def kept(folder: Path, **changes: object) -> Path:
    """Write a file of answers, somewhere else than beside the card."""
    content = {"schema": "wintertight/answers/1", "answers": {"shape": "teardrop"}, **changes}
    file = folder / "told.json"
    file.write_text(json.dumps(content), encoding="utf-8")
    return file


def test_a_card_that_is_there_stays(adviser: Adviser) -> None:
    """Guards that a card somebody wrote by hand is never replaced by a talk."""
    adviser.card.write_text("by hand", encoding="utf-8")
    adviser(SHORT).refused("WT-100", "coach.toml: there is a card already", "coach.answers.json")
    assert adviser.card.read_text("utf-8") == "by hand"
    assert not adviser.kept.exists()


def test_a_card_of_a_talk_is_made_anew_after_a_yes(adviser: Adviser) -> None:
    """Guards that more answers replace the card of the same talk, and keep what was measured."""
    assert adviser(SHORT).status == 0
    made = adviser.card.read_text("utf-8")
    head, mark, lines = made.partition("[[line]]")
    guessed = next(line for line in lines.splitlines() if line.startswith("length = { guessed"))
    by_hand = head + mark + lines.replace(guessed, 'length = { measured = "47 ft" }', 1)
    where = adviser.made().lines[0].id
    adviser.card.write_text(by_hand, encoding="utf-8")
    done = adviser("n\nn\n")
    assert "What was measured there" in " ".join(done.out.split())
    assert "No card was written" in done.out
    assert adviser.card.read_text("utf-8") == by_hand
    done = adviser("n\ny\n")
    assert done.status == 0
    assert adviser.made().id == "HL-301"
    assert [entry.text for entry in earlier(adviser.card)] == [by_hand]
    measured = [line.id for line in adviser.made().lines if line.length.how == "measured"]
    assert measured == [where]


def test_a_card_spoilt_by_hand_is_told_before_the_talk(adviser: Adviser) -> None:
    """Guards that nobody answers questions for a card that cannot be made anew."""
    assert adviser(SHORT).status == 0
    adviser.card.write_text("id = 1\n", encoding="utf-8")
    done = adviser("n\ny\n")
    assert done.status == 2
    assert "coach.toml" in done.err
    assert done.out == ""
    assert adviser.card.read_text("utf-8") == "id = 1\n"


def test_the_antifreeze_may_be_told_with_the_command(adviser: Adviser) -> None:
    """Guards that a card with its antifreeze is planned without another option."""
    done = adviser(SHORT, "--product", "Heron pink -50")
    assert done.status == 0
    assert "--product" not in done.out.splitlines()[-1]
    made = adviser.made()
    assert made.antifreeze is not None
    assert made.antifreeze.product == "Heron pink -50"


def test_a_sister_takes_the_answers_along(adviser: Adviser, door: Door) -> None:
    """Guards that a sister's card can be put right by the talk that made the first one's."""
    assert adviser(SHORT).status == 0
    folder = adviser.card.parent
    sister, answers = folder / "sister.toml", folder / "sister.answers.json"
    answers.write_text("mine", encoding="utf-8")
    door("coach", "sister", adviser.card, sister, "--id", "HL-9").refused("WT-100", "not written")
    assert not sister.exists()
    answers.unlink()
    assert door("coach", "sister", adviser.card, sister, "--id", "HL-9").status == 0
    assert answers.read_text("utf-8") == adviser.kept.read_text("utf-8")


def test_around_the_coach_open_questions_are_asked_again(adviser: Adviser) -> None:
    """Guards that who stands at the coach is asked what nobody knew on the phone."""
    assert adviser(SHORT).status == 0
    done = adviser("1\n-10F\n", "--walk-around")
    assert adviser.answers()["outside"] == ["outside shower"]
    assert adviser.answers()["design low"] == "-10F"
    assert adviser.file()["left_open"] == []
    assert "Question 1 of 20, around the coach" in done.out


def test_at_the_coach_nobody_is_asked_whether_to_go_on(adviser: Adviser) -> None:
    """Guards that --walk-around goes from the last question of the phone straight on."""
    lines = [line for line in script("bunkhouse") if line.to != "go on"]
    done = adviser(as_typed(lines), "--walk-around")
    assert done.status == 0
    assert "Go on with" not in done.out
    assert adviser.made().site is not None


def test_answers_of_a_file_are_not_asked(adviser: Adviser, tmp_path: Path) -> None:
    """Guards that --answers asks nothing, and that answers which do not count are left out."""
    answers = {"shape": "teardrop", "heater": "no heater", "bypass": "three valves", "tub": ["tub"]}
    file = kept(tmp_path, answers=answers)
    done = adviser("", "--answers", str(file), "--name", "Little one", "--site", "yard")
    assert done.status == 0
    assert done.out.startswith(f"Written: {adviser.card}. Next: wintertight plan ")
    card = adviser.made()
    assert (card.id, card.name, card.coach.kind) == ("HL-301", "Little one", "folding trailer")
    assert card.site is not None
    assert card.site.name == "yard"
    assert "tub" not in {fitting.kind for fitting in card.fittings}
    assert card.coach.length is not None
    assert card.coach.length.how == "guessed"
    assert not adviser.kept.exists()
    adviser("", "--answers", str(file)).refused("WT-100", "there is a card already")


@pytest.mark.parametrize(
    ("changes", "words"),
    [
        ({"schema": "wintertight/card/1"}, 'schema: expected "wintertight/answers/1"'),
        ({"extra": 1}, "extra: no such field here"),
        ({"answers": []}, "answers: expected an object"),
        ({"answers": {"heatr": "x"}}, "answers.heatr: no question is called 'heatr'; did"),
        ({"answers": {"heater": "tank of 7 gal"}}, "answers.heater: 'tank of 7 gal' is no"),
        ({"answers": {"heater": 1}}, "answers.heater: this is no choice here; expected"),
        ({"answers": {"heater": ["no heater"]}}, "answers.heater: this is no choice"),
        ({"answers": {"tub": "tub"}}, "answers.tub: expected a list of choices"),
        ({"answers": {"tub": ["bath"]}}, "answers.tub: 'bath' is no choice here"),
        ({"answers": {"sprayer": True}}, "answers.sprayer: this is no choice here"),
        ({"answers": {"length": 27}}, "answers.length: expected a length with its unit"),
        ({"answers": {"length": "27"}}, "answers.length: expected a length"),
        ({"answers": {"length": "270 ft"}}, "answers.length: '270 ft' is outside what"),
        ({"left_open": "tub"}, "left_open: expected a list"),
        ({"left_open": ["bath tub"]}, "left_open[1]: no question is called 'bath tub'"),
        ({"left_open": [[]]}, "left_open[1]: no question is called so"),
        ({"stage": "lunch"}, "stage: expected one of phone, walk-around"),
        ({"stage": []}, "stage: expected one of phone, walk-around"),
    ],
)  # fmt: skip
def test_a_wrong_answer_names_its_field(
    adviser: Adviser, tmp_path: Path, changes: dict[str, object], words: str
) -> None:
    """Guards that a file of answers with anything wrong in it is one line with file and field."""
    adviser("", "--answers", str(kept(tmp_path, **changes))).refused("WT-120", "told.json ", words)
    assert not adviser.card.exists()


@pytest.mark.parametrize(
    ("content", "code", "words"),
    [
        (b"", "WT-111", "not JSON"),
        (b'{"schema": "wintertight/answ', "WT-111", "not JSON"),
        (b"[" * 100_000, "WT-101", "nested too deep"),
        (b'{"schema": ' + b"9" * 5000 + b"}", "WT-111", "thousands of digits"),
        (b"\xff\xfe", "WT-101", "not UTF-8"),
        (b"[1]", "WT-120", "expected an object"),
    ],
)
def test_a_damaged_file_is_one_line_and_stays(
    adviser: Adviser, content: bytes, code: str, words: str
) -> None:
    """Guards that a talk does not begin anew over answers that it cannot read."""
    adviser.kept.write_bytes(content)
    adviser("4\n").refused(code, "coach.answers.json", words)
    assert adviser.kept.read_bytes() == content


@pytest.mark.parametrize(
    ("arguments", "refusal"),
    [
        (("c.toml",), ("WT-100", "--id")),
        (("c.toml", "--id", "a b"), ("WT-120", "--id: expected letters")),
        (("c.toml", "--id", "A", "--name", " "), ("WT-120", "--name: expected 1 to 400")),
        (("c.toml", "--id", "A", "--site", ""), ("WT-120", "--site: expected 1 to 400")),
        (("no/c.toml", "--id", "A"), ("WT-100", "there is no folder 'no'")),
        (("", "--id", "A"), ("WT-100", "expected the name of a file")),
        ((".", "--id", "A"), ("WT-100", "expected the name of a file")),
        (("a\x00.toml", "--id", "A"), ("WT-100", "expected the name of a file")),
        ((f"{300 * 'a'}.toml", "--id", "A"), ("WT-100", "cannot be written")),
        (("c.toml", "--id", "A", "--language", "xx"), ("WT-140", "--language")),
        (("c.toml", "--id", "A", "--answers", "none.json"), ("WT-101", "none.json: no such file")),
    ],
)
def test_a_wrong_command_line_asks_nothing(
    door: Door,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    arguments: tuple[str, ...],
    refusal: tuple[str, str],
) -> None:
    """Guards that nobody answers thirty questions for a card that cannot be written."""
    monkeypatch.chdir(tmp_path)
    door("coach", "new", *arguments).refused(*refusal)
    assert list(tmp_path.iterdir()) == []


def test_a_folder_is_no_card(door: Door, tmp_path: Path) -> None:
    """Guards the line for a folder where the card should be."""
    (tmp_path / "c.toml").mkdir()
    door("coach", "new", tmp_path / "c.toml", "--id", "A").refused("WT-100", "a folder, not a file")


def test_a_coach_without_a_name_is_called_by_its_shape(adviser: Adviser) -> None:
    """Guards the name on the card where nobody gave one, and the number where not even a shape."""
    assert adviser("-\n" * 8 + "n\ny\n").status == 0
    assert adviser.made().name == "HL-301"
    adviser.card.unlink()
    adviser.kept.unlink()
    assert adviser("2\n" + "-\n" * 6 + "n\ny\n").status == 0
    assert adviser.made().name == "Teardrop"


def test_no_half_of_a_file_is_left(adviser: Adviser, monkeypatch: pytest.MonkeyPatch) -> None:
    """Guards that a disk without room leaves the answers as they were, and nothing beside them."""
    adviser("4\n")

    def full(_: int) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr("os.fsync", full)
    done = adviser("none\n")
    assert (done.status, adviser.card.exists()) == (2, False)
    assert done.err.startswith("WT-100 ")
    assert "coach.answers.json: cannot be written: No space left on device" in done.err
    assert dict(load_kept(adviser.kept).answers.given) == {"shape": "short travel trailer"}
    assert [file.name for file in adviser.kept.parent.iterdir()] == ["coach.answers.json"]

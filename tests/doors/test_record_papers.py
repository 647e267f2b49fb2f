import os
import stat
from pathlib import Path

import pytest

from tests.architecture.tree import PACKAGE
from tests.doors.door import Door
from tests.recorded_jobs import LINK, alternatives, read, words
from wintertight.procedure.record_digest import record_digest

CARD = PACKAGE / "demo" / "cards" / "small-trailer.toml"
GOOD = PACKAGE / "demo" / "records" / "small-trailer-good.json"
BAD = PACKAGE / "demo" / "records" / "small-trailer-bad.json"


def test_both_papers_are_written(door: Door, tmp_path: Path) -> None:
    """Guards that record and tag are PDFs of the paper asked for, and are named on the screen."""
    record, tag = tmp_path / "record é.pdf", tmp_path / "tag.pdf"
    done = door(
        *("prove", CARD, "--done", GOOD, "--pdf", record, "--tag", tag),
        *("--paper", "a4", "--units", "metric", "--link", LINK),
    )
    assert (done.status, done.err) == (0, "")
    assert done.out.endswith(f"Winter record: {record}\nHang tag: {tag}\n")
    assert sorted(f.name for f in tmp_path.iterdir()) == [record.name, tag.name]
    sizes = [read(f.read_bytes()).pages[0].mediabox for f in (record, tag)]
    assert [round(size.width) for size in sizes] == [595, 298]
    for file in (record, tag):
        assert f"QR code of the coach's page: {LINK}" in alternatives(file.read_bytes())
        assert "Protected as recorded to -23.3 °C" in words(file.read_bytes())


def test_a_bad_record_is_written_too(door: Door, tmp_path: Path) -> None:
    """Guards that a tag says what is open, whatever else is printed, and the status stays."""
    tag = tmp_path / "tag.pdf"
    done = door("prove", CARD, "--done", BAD, "--tag", tag, "--strict", "--json")
    assert done.status == 3
    assert done.object()["verdict"] == "unproven"
    assert "NOT FINISHED" in words(tag.read_bytes())
    assert alternatives(tag.read_bytes()) == []


@pytest.mark.parametrize("option", ["--pdf", "--tag"])
def test_a_paper_is_never_made_quickly(door: Door, tmp_path: Path, option: str) -> None:
    """Guards that no paper leaves out what stopwatch, jugs and cups say."""
    file = tmp_path / "paper.pdf"
    done = door("prove", CARD, "--done", BAD, option, file, "--quick")
    done.refused("WT-140", "--quick: ", option, "leave --quick out")
    assert not file.exists()


@pytest.mark.parametrize(
    ("more", "words_of_it"),
    [
        (("--link", LINK), ("--link: ", "a link stands on a paper")),
        (("--tag", "tag.pdf", "--link", "HL-204"), ("--link: ", "expected a web address")),
        (("--pdf", "a.pdf", "--tag", "./a.pdf"), ("--tag: ", "another file than that of --pdf")),
        (("--tag", "tag.pdf", "--paper", "a3"), ("--paper: ", "us-letter or a4")),
    ],
)
def test_what_cannot_be_made_is_one_line(
    door: Door,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    more: tuple[str, ...],
    words_of_it: tuple[str, ...],
) -> None:
    """Guards that a wrong option is told before anything is proven, and nothing is written."""
    monkeypatch.chdir(tmp_path)
    door("prove", CARD, "--done", GOOD, *more).refused("WT-140", *words_of_it)
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize("option", ["--pdf", "--tag"])
def test_neither_card_nor_record_is_written_over(door: Door, tmp_path: Path, option: str) -> None:
    """Guards both files against their own name behind the wrong option."""
    for source in (CARD, GOOD):
        file = tmp_path / source.name
        file.write_bytes(source.read_bytes())
        done = door("prove", CARD, "--done", GOOD, option, file)
        done.refused("WT-100", f"{source.name} {option}: ", "not replaced")
        assert file.read_bytes() == source.read_bytes()


def test_a_failing_disk_leaves_the_older_paper(
    door: Door, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Guards that a paper is written whole or not at all."""
    file = tmp_path / "tag.pdf"
    file.write_bytes(b"%PDF-1.4 old")
    file.chmod(0o640)

    def full(_stream: int) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os, "fsync", full)
    done = door("prove", CARD, "--done", GOOD, "--tag", file)
    done.refused("WT-100", "No space left on device; nothing was written")
    assert [f.name for f in tmp_path.iterdir()] == [file.name]
    assert file.read_bytes() == b"%PDF-1.4 old"
    assert stat.S_IMODE(file.stat().st_mode) == 0o640


def test_the_digest_on_the_paper_is_that_of_the_record(door: Door, tmp_path: Path) -> None:
    """Guards the way from a printed digest back to the record, and that a change is found."""
    file, record = tmp_path / "paper.pdf", tmp_path / "record.json"
    assert door("prove", CARD, "--done", GOOD, "--pdf", file).status == 0
    digest = record_digest(GOOD)
    printed = " ".join(digest[n : n + 8] for n in range(0, 64, 8))
    assert printed in words(file.read_bytes())
    done = door("digest", GOOD, "--printed", printed)
    assert done.out == f"sha256 {digest}\nIt is the record on the paper.\n"
    text = GOOD.read_text(encoding="utf-8")
    record.write_text(text.replace("36", "37", 1), encoding="utf-8")
    changed = door("digest", record, "--printed", printed)
    changed.refused("WT-130", "record.json: ", "was changed since")


def test_a_digest_alone(door: Door) -> None:
    """Guards that a digest can be asked for, for people and for programs."""
    digest = record_digest(GOOD)
    assert door("digest", GOOD).out == f"sha256 {digest}\n"
    found = door("digest", GOOD, "--json").object()
    assert (found["sha256"], found["same"]) == (digest, None)
    assert "same" in found["why_null"]
    assert door("digest", GOOD, "--printed", digest, "--json").object()["same"] is True


@pytest.mark.parametrize(
    ("arguments", "code", "told"),
    [
        ((CARD,), "WT-111", "not JSON"),
        ((GOOD.with_name("none.json"),), "WT-101", "none.json"),
        ((GOOD, "--printed", "12"), "WT-130", "64 hexadecimal digits"),
    ],
)
def test_what_has_no_digest_is_one_line(
    door: Door, arguments: tuple[str | Path, ...], code: str, told: str
) -> None:
    """Guards that only a record has a digest, and only a digest is compared."""
    door("digest", *arguments).refused(code, told)

"""A winter record signed and checked from the command line."""

import json
from pathlib import Path

import pytest

from tests.doors.door import Door
from tests.standards.keys import PASSPHRASE, new_key
from tests.unit.documents.demo_plans import DEMO

CARD = DEMO / "cards" / "small-trailer.toml"
DONE = DEMO / "records" / "small-trailer-good.json"


@pytest.fixture
def opens(monkeypatch: pytest.MonkeyPatch) -> None:
    """Put what opens the key where the program looks for it."""
    monkeypatch.setenv("WINTERTIGHT_PASSPHRASE", PASSPHRASE)


@pytest.mark.usefixtures("opens")
def test_a_record_is_signed_and_believed(door: Door, tmp_path: Path) -> None:
    """Guards that what prove signs, signature believes by the signer's certificate."""
    key, paper = new_key(tmp_path, "T. Heron"), tmp_path / "record.pdf"
    done = door("prove", CARD, "--done", DONE, "--pdf", paper, "--sign", key.p12)
    assert (done.status, done.err) == (0, "")
    told = door("signature", paper, "--trust", key.certificate, "--json")
    assert (told.status, told.err) == (0, "")
    found = json.loads(told.out)
    assert (found["schema"], found["trusted"]) == ("wintertight/signature/1", True)
    assert found["signed_by"] == "T. Heron"
    alone = door("signature", paper)
    assert "not proven" in alone.out
    paper.write_bytes(paper.read_bytes().replace(b"/Count 3", b"/Count 2", 1))
    door("signature", paper).refused("WT-130", "record.pdf", "changed after it was signed")


@pytest.mark.usefixtures("opens")
def test_nothing_is_signed_by_half(door: Door, tmp_path: Path) -> None:
    """Guards that a key without a paper, and one that does not open, are refused at once."""
    key = new_key(tmp_path, "T. Heron")
    done = door("prove", CARD, "--done", DONE, "--sign", key.p12)
    done.refused("WT-140", "--sign", "expected --pdf")
    paper = tmp_path / "record.pdf"
    wrong = door("prove", CARD, "--done", DONE, "--pdf", paper, "--sign", key.certificate)
    wrong.refused("WT-100", "--sign", "PKCS#12")
    assert not paper.exists()
    before = door("papers", CARD, tmp_path / "visit", "--sign", key.p12)
    before.refused("WT-140", "--sign", "expected --done")

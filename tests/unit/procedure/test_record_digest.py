"""The digest of a record."""

import hashlib
import json
import struct
from pathlib import Path

import pytest

from wintertight.errors import RecordError
from wintertight.procedure.record_digest import (
    canonical,
    check_digest,
    digest_of,
    digest_of_text,
    number,
    record_digest,
)

RECORD = {
    "schema": "wintertight/record/1",
    "events": [{"id": "a", "seq": 1, "step": "open-taps", "result": "done", "at_s": 60.0}],
}


@pytest.mark.parametrize(
    ("bits", "written"),
    [
        ("0000000000000000", "0"),
        ("8000000000000000", "0"),
        ("0000000000000001", "5e-324"),
        ("8000000000000001", "-5e-324"),
        ("7fefffffffffffff", "1.7976931348623157e+308"),
        ("4340000000000000", "9007199254740992"),
        ("4430000000000000", "295147905179352830000"),
        ("44b52d02c7e14af5", "9.999999999999997e+22"),
        ("44b52d02c7e14af6", "1e+23"),
        ("444b1ae4d6e2ef4e", "999999999999999700000"),
        ("444b1ae4d6e2ef50", "1e+21"),
        ("3eb0c6f7a0b5ed8c", "9.999999999999997e-7"),
        ("3eb0c6f7a0b5ed8d", "0.000001"),
        ("41b3de4355555553", "333333333.3333332"),
        ("becbf647612f3696", "-0.0000033333333333333333"),
    ],
)
def test_numbers_are_written_as_the_standard_has_them(bits: str, written: str) -> None:
    """Guards numbers against the samples of RFC 8785, appendix B."""
    (value,) = struct.unpack(">d", bytes.fromhex(bits))
    assert number(value) == written


def test_keys_are_sorted_as_the_standard_has_them() -> None:
    """Guards the order of keys by UTF-16 against the sample of RFC 8785, section 3.2.3."""
    keys = {"\u20ac": 1, "\r": 2, "\ufb33": 3, "1": 4, "\U0001f600": 5, "\u0080": 6, "\u00f6": 7}
    values = [int(piece.rpartition(":")[2]) for piece in canonical(keys)[1:-1].split(",")]
    assert values == [2, 4, 6, 7, 1, 5, 3]


def test_texts_are_written_as_the_standard_has_them() -> None:
    """Guards what is escaped in a text."""
    text = '\u20ac$\u000f\nA\'B"\\\\"/\x7f'
    assert canonical(text) == '"\u20ac$\\u000f\\nA\'B\\"\\\\\\\\\\"/\x7f"'


def test_a_digest_is_what_anyone_would_work_out() -> None:
    """Guards the digest against one worked out here from a text written by hand."""
    by_hand = (
        '{"events":[{"at_s":60,"id":"a","result":"done","seq":1,"step":"open-taps"}],'
        '"schema":"wintertight/record/1"}'
    )
    assert digest_of(RECORD) == hashlib.sha256(by_hand.encode()).hexdigest()


def test_only_the_meaning_counts(tmp_path: Path) -> None:
    """Guards that blanks and the order of keys change nothing, and any value does."""
    file = tmp_path / "record.json"
    file.write_text(json.dumps(RECORD, indent=4), encoding="utf-8")
    assert record_digest(file) == digest_of(dict(reversed(RECORD.items())))
    changed = json.dumps(RECORD).replace("60.0", "60.5")
    assert digest_of_text(changed) != digest_of(RECORD)


def test_what_is_printed_is_read_as_printed() -> None:
    """Guards that blanks and capitals on the paper do not matter."""
    digest = digest_of(RECORD)
    blocks = " ".join(digest[n : n + 8] for n in range(0, 64, 8))
    check_digest(digest, f"  {blocks.upper()}\n")
    check_digest(digest, f"sha256:{digest}")


@pytest.mark.parametrize("printed", ["", "abc", "g" * 64, "0" * 63])
def test_what_is_no_digest_is_refused(printed: str) -> None:
    """Guards that a piece of a digest is never taken for the whole."""
    with pytest.raises(RecordError, match="64 hexadecimal digits"):
        check_digest(digest_of(RECORD), printed)


def test_another_record_is_refused() -> None:
    """Guards that a record that was changed is found out."""
    with pytest.raises(RecordError, match="not the one on the paper, or was changed since"):
        check_digest(digest_of(RECORD), digest_of({**RECORD, "product": "Heron pink -50"}))


@pytest.mark.parametrize("odd", ['{"a": "\\ud800"}', '{"\\ud800": 1}', '{"a": 1' + "0" * 400 + "}"])
def test_what_no_standard_can_write_is_one_line(odd: str) -> None:
    """Guards that half a sign and an endless number are errors of the record alone."""
    with pytest.raises(RecordError, match=r"half of a sign|larger than any number"):
        digest_of_text(odd)

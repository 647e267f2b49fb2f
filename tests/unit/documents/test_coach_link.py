"""The address of a coach's page."""

import io
from xml.etree import ElementTree as ET

import pytest
import segno

from wintertight.documents.coach_link import LONGEST, checked_link, qr_svg
from wintertight.errors import ChoiceError

LINK = "https://example.com/coach/HL-204"


@pytest.mark.parametrize("link", [LINK, "http://127.0.0.1:8000/c?id=HL-204#now"])
def test_an_address_is_taken_as_it_is(link: str) -> None:
    """Guards that nothing is changed in an address."""
    assert checked_link(link) == link


@pytest.mark.parametrize(
    "link",
    [
        *("", "HL-204", "javascript:alert(1)", "file:///c", "https://", "https:///x"),
        *("https://example.com/a b", "https://example.com/\n", "https://exämple.com", "http://[x"),
        "https://example.com/" + "a" * LONGEST,
    ],
)
def test_what_is_no_address_is_refused(link: str) -> None:
    """Guards that a code never leads anywhere but to a page, and can be read off a tag."""
    with pytest.raises(ChoiceError, match=r"^WT-140 --link: expected"):
        checked_link(link)


def test_the_code_holds_the_address() -> None:
    """Guards that each dark square of the picture is one of the code of this address."""
    code = segno.make(LINK, error="m", micro=False, boost_error=False)
    wanted = sum(map(sum, code.matrix))
    root = ET.fromstring(qr_svg(LINK))  # noqa: S314 - our own text
    (path,) = [e for e in root.iter() if e.get("class") == "qrline"]
    runs = [piece.partition("h")[2] for piece in path.get("d", "").replace("m", " m").split()]
    lengths = [int(part) for run in runs for part in run.split("h") if part]
    assert sum(lengths) == wanted
    assert int(root.get("width", "0")) == len(code.matrix) + 8
    other = io.BytesIO()
    segno.make(LINK + "5", error="m").save(other, kind="svg")
    assert qr_svg(LINK) == qr_svg(LINK) != qr_svg(LINK + "5")

"""The address of a coach's page as a QR code."""

import io
from urllib.parse import urlsplit

import segno

from wintertight.errors import ChoiceError, Place
from wintertight.wording.catalogue import say

LONGEST = 300
"""A longer address makes a code that no phone reads off a small tag."""

QR = "qr"
"""Name of the picture."""


def checked_link(link: str) -> str:
    """Give an address back that is one.

    Args:
        link: what was written.

    Returns:
        The same.

    Raises:
        ChoiceError: it is no web address of plain signs, or a longer one than a tag can show.
    """
    try:
        parts = urlsplit(link)
    except ValueError:
        parts = urlsplit("")
    plain = link.isascii() and link.isprintable() and " " not in link
    if parts.scheme not in {"http", "https"} or not parts.netloc or not plain:
        message = (
            'expected a web address of plain signs, such as "https://example.com/coach/HL-204"'
        )
        raise ChoiceError(message, Place(field="--link"))
    if len(link) > LONGEST:
        message = f"expected an address of at most {LONGEST} signs; a small tag shows no longer one"
        raise ChoiceError(message, Place(field="--link"))
    return link


def qr_svg(link: str) -> str:
    """Give a QR code as SVG text: the same address gives the same text.

    Args:
        link: an address that was checked.

    Returns:
        The picture, black on white, with the quiet edge that a reader needs.
    """
    stream = io.BytesIO()
    code = segno.make(link, error="m", micro=False, boost_error=False)
    code.save(stream, kind="svg", border=4, light="#fff", xmldecl=False, nl=False)
    return stream.getvalue().decode("utf-8")


def qr_content(link: str, language: str = "en") -> dict[str, str] | None:
    """Give how a paper shows a QR code: name of the picture, and words for who cannot see it.

    Args:
        link: an address that was checked; "" where there is none.
        language: two letters.

    Returns:
        Plain data for a template; None where there is no address.
    """
    return {"name": QR, "alt": say("label", "qr", language, link=link)} if link else None


def qr_picture(link: str) -> dict[str, str]:
    """Give the QR code under its name; nothing where there is no address."""
    return {QR: qr_svg(link)} if link else {}

"""A validator of PDF/UA-1 and PDF/A-2a that is not ours: `page` (page-validation on PyPI).

By its own word it passes the test files of the veraPDF corpus and of the Isartor suite.
"""

import re

import page

PROFILES = (page.ValidationProfile.PDF_UA_1, page.ValidationProfile.PDF_A_2A)


LENGTH = "PDFA2A-STREAM-LENGTH-001"


def faults(pdf: bytes) -> list[str]:
    """Name every rule of both standards that a paper breaks, and how.

    One word of the validator is looked into. ISO 19005-2, 6.1.7.1 counts the bytes of a stream up
    to the end of line before ``endstream``. Where the last of those bytes happens to be a carriage
    return and the end of line is a line feed, the validator takes both for the end of line and
    finds a byte too few. A count is right where an end of line and ``endstream`` follow it at once.
    """
    return [
        f"{failure.rule_id}: {failure.message}"
        for profile in PROFILES
        for failure in page.validate_pdf_bytes(pdf, profile=profile).failures
        if not (failure.rule_id == LENGTH and failure.object_id and counts(pdf, failure.object_id))
    ]


def counts(pdf: bytes, named: page.PdfObjectId) -> bool:
    """Tell whether a stream that ends in a carriage return is as long as it says."""
    head = rb"\n%d %d obj\n<</Length (\d+)[^\n]*>>\nstream\n"
    found = re.search(head % (named.object_number, named.generation), pdf)
    if found is None:
        return False
    end = found.end() + int(found[1])
    return pdf[end - 1 : end + 10] == b"\r\nendstream"

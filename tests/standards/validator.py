"""A validator of PDF/UA-1 and PDF/A-2a that is not ours: `page` (page-validation on PyPI).

By its own word it passes the test files of the veraPDF corpus and of the Isartor suite.
"""

import page

PROFILES = (page.ValidationProfile.PDF_UA_1, page.ValidationProfile.PDF_A_2A)


def faults(pdf: bytes) -> list[str]:
    """Name every rule of both standards that a paper breaks, and how."""
    return [
        f"{failure.rule_id}: {failure.message}"
        for profile in PROFILES
        for failure in page.validate_pdf_bytes(pdf, profile=profile).failures
    ]

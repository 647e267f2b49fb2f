"""``wintertight signature``: does the signature on a winter record hold?"""

# ruff: noqa: PLC0415 - heavy layers load only with their command, so that help stays quick

from typing import Annotated

import typer

from wintertight.cli.answer import Answer, json_text
from wintertight.cli.asked import language_named
from wintertight.cli.options import AsJson, Language

SCHEMA = "wintertight/signature/1"


def signature(
    paper: Annotated[str, typer.Argument(metavar="PAPER.pdf", help="the signed paper")],
    *,
    trust: Annotated[
        list[str] | None,
        typer.Option("--trust", metavar="CERT.pem", help="certificate of whom to believe"),
    ] = None,
    language: Language = "en",
    as_json: AsJson = False,
) -> Answer:
    """Say who signed a paper, and refuse one that was changed or added to since."""
    from wintertight.documents.signed_paper import check_signature
    from wintertight.wording.catalogue import say

    spoken = language_named(language)
    found = check_signature(paper, trust or ())
    at = None if found.at is None else found.at.isoformat()
    unknown = {
        "at": "the signature names no time" if at is None else None,
        "trusted": "no certificate was given with --trust" if found.trusted is None else None,
    }
    if as_json:
        why = {key: text for key, text in unknown.items() if text is not None}
        content = {"signed_by": found.by, "at": at, "trusted": found.trusted}
        return Answer(json_text(SCHEMA, content | ({"why_null": why} if why else {})))
    when = at or say("written", "no time", spoken)
    key = "signed, believed" if found.trusted else "signed, by somebody"
    return Answer(say("written", key, spoken, by=found.by, at=when))

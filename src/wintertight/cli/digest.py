"""``wintertight digest``: is this record the one that a winter record was printed from?"""

# ruff: noqa: PLC0415 - heavy layers load only with their command, so that help stays quick

from typing import Annotated

import typer

from wintertight.cli.answer import Answer, json_text
from wintertight.cli.options import AsJson

SCHEMA = "wintertight/digest/1"


def digest(
    record: Annotated[str, typer.Argument(metavar="RECORD.json", help="the record")],
    *,
    printed: Annotated[
        str | None,
        typer.Option("--printed", metavar="DIGEST", help="what stands on the winter record"),
    ] = None,
    as_json: AsJson = False,
) -> Answer:
    """Give a record's digest, and refuse one that is not what stands on its paper."""
    from wintertight.procedure.record_digest import check_digest, record_digest

    found = record_digest(record)
    if printed is not None:
        check_digest(found, printed, record)
    if as_json:
        same = None if printed is None else True
        why = {} if same else {"why_null": {"same": "no printed digest was given"}}
        return Answer(json_text(SCHEMA, {"sha256": found, "same": same, **why}))
    said = f"sha256 {found}"
    return Answer(said if printed is None else f"{said}\nIt is the record on the paper.")

"""``wintertight prove``: the proof of what was really done."""

# ruff: noqa: PLC0415 - heavy layers load only with their command, so that help stays quick

from typing import TYPE_CHECKING, Annotated, Any

import typer

from wintertight.cli.answer import NOT_SAFE, SAFE_TO_LEAVE, Answer, json_text
from wintertight.cli.asked import language_named, system_named
from wintertight.cli.options import AsJson, CardFile, Earlier, Language, Low, ShopFile
from wintertight.cli.plan import SCHEMA
from wintertight.cli.proof_papers import (
    Link,
    PaperSize,
    RecordPaper,
    SignKey,
    TagPaper,
    asked_papers,
    write_papers,
)
from wintertight.cli.recorded import recorded_visit
from wintertight.cli.stock import list_notes

if TYPE_CHECKING:
    from wintertight.procedure.as_done import AsDone
    from wintertight.procedure.hindsight.look_back import Hindsight
    from wintertight.units import System


def prove(  # noqa: PLR0913 - one parameter for each option
    *,
    card: CardFile,
    done: Annotated[
        str, typer.Option("--done", metavar="RECORD.json", help="the record of what was done")
    ],
    earlier: Earlier = None,
    low: Low = None,
    product: Annotated[
        str | None,
        typer.Option("--product", metavar="NAME", help="else the record's, else the card's"),
    ] = None,
    shop: ShopFile = None,
    language: Language = "en",
    units: Annotated[
        str, typer.Option("--units", metavar="us|metric", help="units of every sentence")
    ] = "us",
    pdf: RecordPaper = None,
    tag: TagPaper = None,
    paper: PaperSize = "us-letter",
    link: Link = None,
    sign: SignKey = None,
    every: Annotated[bool, typer.Option("--all", help="name every part on the screen")] = False,
    quick: Annotated[
        bool, typer.Option("--quick", help="do not ask what times, jugs and cups tell beyond")
    ] = False,
    strict: Annotated[
        bool, typer.Option("--strict", help="exit with 3 unless the verdict is safe")
    ] = False,
    as_json: AsJson = False,
) -> Answer:
    """Prove part by part what a record says was done: is nothing left that bursts?"""
    spoken, system = language_named(language), system_named(units)
    papers = asked_papers(pdf, tag, paper, link, sign, quick=quick)
    visit = recorded_visit(
        card, done, low=low, product=product, shop=shop, earlier=earlier, quick=quick
    )
    proved, told = visit.proved, visit.told
    written: list[str] = []
    if papers.are_wanted:
        written = write_papers(papers, visit.job(papers.link), spoken, system)
    status = NOT_SAFE if strict and proved.plan.verdict != "safe" else SAFE_TO_LEAVE
    if as_json:
        sold_by = {"shop": {"name": visit.sold.name, "list": visit.list_file}}
        return Answer(
            json_text(
                SCHEMA, {**_content(proved, told, spoken, system, left_out=quick), **sold_by}
            ),
            status,
        )
    from wintertight.documents.hindsight import hindsight_block
    from wintertight.documents.proof_screen import proof_screen
    from wintertight.wording.catalogue import say
    from wintertight.wording.names import part_name
    from wintertight.wording.spoken import listed

    screen = proof_screen(
        proved.plan,
        proved.planned,
        spoken,
        system,
        all_parts=every,
        told=hindsight_block(told, proved.plan.card, spoken, system),
    )
    said = [screen.rstrip("\n")]
    if proved.unknown:
        said.append(say("written", "not recorded", spoken, steps=", ".join(proved.unknown)))
    for key, parts in (("not here", proved.not_here), ("still here", proved.still_here)):
        if parts:
            names = listed([part_name(visit.card, part, spoken) for part in parts], spoken)
            said.append(say("hindsight", key, spoken, parts=names))
    said += list_notes(visit.list_file, spoken, "bundled list")
    return Answer("\n".join([*said, *written]), status)


def _content(
    proved: "AsDone", told: "Hindsight | None", language: str, system: "System", *, left_out: bool
) -> dict[str, Any]:
    from wintertight.documents.hindsight import hindsight_object
    from wintertight.documents.plan_json import plan_object

    found = plan_object(proved.plan, language, system, recorded=True)
    beyond = hindsight_object(told, proved.plan.card, language, system, left_out=left_out)
    why = {**(found.get("why_null") or {}), **beyond["why_null"]}
    return {
        **found,
        "not_recorded": list(proved.unknown),
        "not_on_this_coach": list(proved.not_here),
        "still_on_card": list(proved.still_here),
        **beyond,
        "why_null": why,
    }

"""``wintertight papers``: all documents of a visit into one folder."""

# ruff: noqa: PLC0415 - heavy layers load only with their command, so that help stays quick

from pathlib import Path
from typing import Annotated

import typer

from wintertight.cli.answer import Answer
from wintertight.cli.asked import language_named, paper_named, system_named
from wintertight.cli.estimate import day_named, estimated
from wintertight.cli.options import (
    CardFile,
    Earlier,
    Language,
    Low,
    PlaceName,
    ProductName,
    ShopFile,
)
from wintertight.cli.plan import JobAsked, design_low_degC, job_planned
from wintertight.cli.proof_papers import Link, SignKey, link_named, signer_named
from wintertight.cli.recorded import recorded_visit
from wintertight.cli.stock import air_of, list_notes, place_named, product_for, shop_list
from wintertight.cli.written import PDF, SVG, write_whole
from wintertight.coach.write_file import reason_of
from wintertight.errors import ChoiceError, InputError, Place


def papers(  # noqa: PLR0913 - one parameter for each option
    *,
    card: CardFile,
    folder: Annotated[str, typer.Argument(metavar="FOLDER", help="where all of them go")],
    done: Annotated[
        str | None,
        typer.Option("--done", metavar="RECORD.json", help="what was done: winter record and tag"),
    ] = None,
    earlier: Earlier = None,
    low: Low = None,
    method: Annotated[
        str | None,
        typer.Option("--method", metavar="M", help="how it is done; else the record's, else pump"),
    ] = None,
    product: ProductName = None,
    shop: ShopFile = None,
    place: PlaceName = None,
    date: Annotated[
        str | None,
        typer.Option("--date", metavar="YYYY-MM-DD", help="of the estimate; else today"),
    ] = None,
    link: Link = None,
    sign: SignKey = None,
    language: Language = "en",
    units: Annotated[
        str, typer.Option("--units", metavar="us|metric", help="units of what is printed")
    ] = "us",
    paper: Annotated[
        str, typer.Option("--paper", metavar="us-letter|a4", help="paper of what is printed")
    ] = "us-letter",
) -> Answer:
    """Write all papers of a visit into a folder: before the job, and after it with --done."""
    from wintertight.coach.load import load_card
    from wintertight.documents.visit_papers import Visit, visit_papers
    from wintertight.wording.catalogue import say

    spoken, system, sheet = language_named(language), system_named(units), paper_named(paper)
    dated, address = day_named(date), link_named(link)
    for option, given in (("--earlier", earlier), ("--sign", sign)):
        if given and done is None:
            message = "expected --done beside it: without a record there is nothing to tell"
            raise ChoiceError(message, Place(field=option))
    signer = signer_named(sign)
    read = load_card(card)
    sold, list_file = shop_list(shop, card)
    into = _made(folder)
    recorded = None
    if done is not None:
        recorded = recorded_visit(card, done, low=low, product=product, shop=shop, earlier=earlier)
    used = None if recorded is None else recorded.proved.plan
    asked = JobAsked(
        read,
        product_for(read, card, product, sold) if used is None else used.product,
        design_low_degC(read, card, low),
        method or ("pump" if used is None else used.method),
        air_of(sold),
        place_named(sold, place),
        missed=True,
    )
    planned, _ = job_planned(asked)
    priced = None if sold.prices is None else estimated(planned, sold.prices, dated)
    job = None if recorded is None else recorded.job(address)
    visit = Visit(planned, sold.name, priced, job, address, signer)
    written = []
    for name, content in visit_papers(visit, spoken, sheet, system):
        file = str(into / name)
        kind = PDF if name.endswith(".pdf") else SVG
        write_whole(file, "FOLDER", content, kind)
        written.append(file)
    if priced is None:
        return Answer("\n".join([*written, say("written", "no prices", spoken)]))
    notes = list_notes(list_file, spoken, "bundled list", "bundled prices")
    return Answer("\n".join([*written, *notes]))


def _made(folder: str) -> Path:
    """Give the folder, made if it is not there.

    Raises:
        InputError: it cannot be made, or is a file.
    """
    place = Path(folder)
    try:
        place.mkdir(parents=True, exist_ok=True)
    except (OSError, ValueError) as error:
        message = f"expected a folder that is there or can be made: {reason_of(error)}"
        raise InputError(message, Place(folder, field="FOLDER")) from error
    return place

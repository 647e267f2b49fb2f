"""``wintertight papers``: all documents of a visit into one folder."""

# ruff: noqa: PLC0415 - heavy layers load only with their command, so that help stays quick

from pathlib import Path
from typing import Annotated

import typer

from wintertight.cli.answer import Answer
from wintertight.cli.asked import language_named, paper_named, system_named
from wintertight.cli.options import CardFile, Language, Low, ProductName, ShopFile
from wintertight.cli.plan import design_low_degC
from wintertight.cli.stock import BUNDLED, BUNDLED_NOTE, air_of, product_for, shop_list
from wintertight.cli.written import PDF, SVG, write_whole
from wintertight.coach.write_file import reason_of
from wintertight.errors import InputError, Place


def papers(  # noqa: PLR0913 - one parameter for each option
    *,
    card: CardFile,
    folder: Annotated[str, typer.Argument(metavar="FOLDER", help="where all of them go")],
    low: Low = None,
    method: Annotated[
        str, typer.Option("--method", metavar="M", help="how it is done; see methods")
    ] = "pump",
    product: ProductName = None,
    shop: ShopFile = None,
    language: Language = "en",
    units: Annotated[
        str, typer.Option("--units", metavar="us|metric", help="units of what is printed")
    ] = "us",
    paper: Annotated[
        str, typer.Option("--paper", metavar="us-letter|a4", help="paper of what is printed")
    ] = "us-letter",
) -> Answer:
    """Write job sheet, owner's guide and drawings of one coach into a folder."""
    from wintertight.coach.load import load_card
    from wintertight.documents.plan_papers import plan_papers
    from wintertight.procedure.plan import plan_coach
    from wintertight.procedure.rounds import with_rounds_compared

    spoken, system, sheet = language_named(language), system_named(units), paper_named(paper)
    read = load_card(card)
    low_degC = design_low_degC(read, card, low)
    sold, list_file = shop_list(shop, card)
    poured = product_for(read, card, product, sold)
    place = _made(folder)
    planned = plan_coach(
        read, poured, low_degC, method, air=air_of(sold, None), with_missed_steps=True
    )
    planned = with_rounds_compared(planned)
    written = []
    for name, content in plan_papers(planned, spoken, sheet, system):
        kind = PDF if name.endswith(".pdf") else SVG
        file = str(place / name)
        write_whole(file, "FOLDER", content, kind)
        written.append(file)
    notes = [BUNDLED_NOTE] if list_file == BUNDLED else []
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

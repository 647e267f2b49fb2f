"""``wintertight fleet``: every card of a folder, planned on all cores."""

# ruff: noqa: PLC0415 - heavy layers load only with their command, so that help stays quick

import os
import sys
from importlib.util import find_spec
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from wintertight.cli.answer import NOT_SAFE, SAFE_TO_LEAVE, Answer, json_text
from wintertight.cli.asked import language_named, quantity, system_named
from wintertight.cli.options import AsJson, Language, ScreenUnits
from wintertight.cli.stock import BESIDE, list_notes, named_product, shop_list
from wintertight.coach.write_file import reason_of
from wintertight.errors import InputError, Place, UnreadableFile

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator
    from concurrent.futures import Future

    from wintertight.cli.fleet_pool import Watch
    from wintertight.documents.fleet_content import Fleet, Row

SCHEMA = "wintertight/fleet/1"

PAYS_FROM = 100
"""More cards than this are worth the half minute that compiling takes the first time."""

NO_FOLDER = "there is no such folder"

MOST_WORKERS = 61
"""Windows cannot wait for more processes than this at once."""


def fleet(  # noqa: PLR0913 - one parameter for each option
    *,
    folder: Annotated[str, typer.Argument(metavar="FOLDER", help="where the cards lie")],
    low: Annotated[
        str | None,
        typer.Option("--low", metavar="T", help="design low, such as -20F; else each card's"),
    ] = None,
    product: Annotated[
        str | None,
        typer.Option("--product", metavar="NAME", help="antifreeze of the list; else each card's"),
    ] = None,
    shop: Annotated[
        str | None,
        typer.Option("--shop", metavar="FILE", help="the shop's list; else shop.toml by the cards"),
    ] = None,
    language: Language = "en",
    units: ScreenUnits = "us",
    workers: Annotated[
        int | None,
        typer.Option("--workers", metavar="N", min=1, help="cards planned at once; else the cores"),
    ] = None,
    compiled: Annotated[
        bool | None,
        typer.Option(
            "--compiled/--plain",
            help="compiled arithmetic: twice as fast, half a minute to compile the first time; else"
            f" for more than {PAYS_FROM} cards if the fleet extra is installed",
            show_default=False,
        ),
    ] = None,
    strict: Annotated[
        bool, typer.Option("--strict", help="exit with 3 unless every verdict is safe")
    ] = False,
    as_json: AsJson = False,
) -> Answer:
    """Plan every card of a folder, and add up antifreeze, work and jugs."""
    from wintertight.cli.fleet_pool import Job, planned_rows

    spoken, system = language_named(language), system_named(units)
    if low is not None:
        quantity(low, "--low", "temperature")
    # Read once here, so that a wrong list is one line and not one for each card.
    cards = cards_of(folder, shop)
    sold, list_file = shop_list(shop, str(cards[0]))
    if product is not None:
        named_product(product, sold)
    asked = asks_for_compiled(wanted=compiled, cards=len(cards))
    used = min(workers or cores(), len(cards), MOST_WORKERS)
    jobs = [Job(str(card), low, product, shop) for card in cards]
    rows = planned_rows(jobs, used, compiled=asked, watch=_bar(spoken))

    from wintertight.documents.fleet_content import Fleet

    found = Fleet(folder, rows, used)
    if as_json:
        from wintertight.documents.fleet_json import fleet_object

        sold_by = {"shop": {"name": sold.name, "list": list_file}}
        return Answer(json_text(SCHEMA, {**fleet_object(found), **sold_by}), _status(found, strict))
    from wintertight.documents.fleet_screen import fleet_screen

    said = [fleet_screen(found, spoken, system).rstrip("\n")]
    said += list_notes(list_file, spoken, "bundled list")
    return Answer("\n".join(said), _status(found, strict))


def _status(found: "Fleet", strict: bool) -> int:  # noqa: FBT001 - the option as it is
    """Give the exit status that the worst card would have by itself."""
    from wintertight.cli.outcome import FAULT, UNUSABLE

    if found.failed:
        return FAULT if any(row.fault for row in found.failed) else UNUSABLE
    all_safe = all(coach.verdict == "safe" for coach in found.planned)
    return SAFE_TO_LEAVE if all_safe or not strict else NOT_SAFE


def cards_of(folder: str, shop: str | None) -> list[Path]:
    """Find the cards of a folder.

    Args:
        folder: where they lie.
        shop: file of the shop's list, if one was named; it is no card.

    Returns:
        Their files by name, without ``shop.toml`` and without hidden ones.

    Raises:
        InputError: it is no folder, cannot be read, or has no card.
    """
    if not folder:
        raise UnreadableFile(NO_FOLDER, Place(repr(folder)))
    try:
        there = sorted(Path(folder).iterdir(), key=lambda path: path.name)
    except (OSError, ValueError) as error:
        if isinstance(error, FileNotFoundError):
            why = NO_FOLDER
        elif isinstance(error, NotADirectoryError):
            why = "expected a folder with cards, and this is a file"
        else:
            why = f"cannot be opened: {reason_of(error)}"
        raise UnreadableFile(why, Place(folder)) from None
    lists = {BESIDE, Path(shop).name} if shop and _same(Path(shop).parent, folder) else {BESIDE}
    cards = [
        path
        for path in there
        if path.suffix == ".toml"
        and path.name not in lists
        and not path.name.startswith(".")
        and not path.is_dir()
    ]
    if not cards:
        message = f"no card in this folder; expected files ending in .toml, besides {BESIDE}"
        raise InputError(message, Place(folder))
    return cards


def _same(one: Path, other: str) -> bool:
    return one.resolve() == Path(other).resolve()


def asks_for_compiled(*, wanted: bool | None, cards: int) -> bool:
    """Settle whether to ask for compiled arithmetic.

    Args:
        wanted: what the options say; None where they say nothing.
        cards: how many there are to plan [1].

    Returns:
        As wanted; else whether there are enough cards for it and numba is installed.

    Raises:
        InputError: it is wanted, and numba is not installed.
    """
    there = find_spec("numba") is not None
    if wanted and not there:
        message = 'needs numba, which is not installed; pip install "wintertight[fleet]"'
        raise InputError(message, Place(field="--compiled"))
    return wanted if wanted is not None else there and cards > PAYS_FROM


def cores() -> int:
    """Give how many cores this process may use [1]."""
    if hasattr(os, "sched_getaffinity"):
        return len(os.sched_getaffinity(0))
    return os.cpu_count() or 1


def _bar(language: str) -> "Watch":
    """Give what follows the work: a bar on a terminal, else nothing."""
    if sys.stderr is None or not sys.stderr.isatty():
        return _unwatched

    def watched(coming: "Iterable[Future[Row]]", count: int) -> "Iterator[Future[Row]]":
        from rich.console import Console
        from rich.progress import track

        from wintertight.wording.catalogue import say

        heading = say("fleet", "progress", language)
        console = Console(stderr=True)
        yield from track(coming, heading, total=count, console=console, transient=True)

    return watched


def _unwatched(coming: "Iterable[Future[Row]]", _: int) -> "Iterable[Future[Row]]":
    return coming

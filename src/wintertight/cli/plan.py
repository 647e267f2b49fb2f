"""``wintertight plan``: the steps for one coach, and the proof of what they leave."""

# ruff: noqa: PLC0415 - heavy layers load only with their command, so that help stays quick

from dataclasses import dataclass
from typing import TYPE_CHECKING, Annotated, Any

import typer

from wintertight.cli.answer import NOT_SAFE, SAFE_TO_LEAVE, Answer, json_text
from wintertight.cli.asked import language_named, paper_named, quantity, system_named
from wintertight.cli.options import (
    AsJson,
    CardFile,
    Earlier,
    Language,
    Low,
    PlaceName,
    ProductName,
    Regulator,
    ShopFile,
)
from wintertight.cli.plan_files import PlanFiles
from wintertight.cli.stock import air_of, list_notes, place_named, product_for, shop_list
from wintertight.cli.visits import earlier_visits
from wintertight.errors import Place, QuantityError

if TYPE_CHECKING:
    from collections.abc import Iterator

    from wintertight.coach.card import Card
    from wintertight.coach.place import Place as WorkPlace
    from wintertight.flow.air.supply import AirSupply
    from wintertight.fluids.product import Product
    from wintertight.procedure.plan import Plan
    from wintertight.procedure.winter_use import UsedSince
    from wintertight.units import System

SCHEMA = "wintertight/plan/1"


def plan(  # noqa: PLR0913 - one parameter for each option
    *,
    card: CardFile,
    low: Low = None,
    method: Annotated[
        str,
        typer.Option("--method", metavar="M", help="how it is done; see methods"),
    ] = "pump",
    product: ProductName = None,
    shop: ShopFile = None,
    language: Language = "en",
    units: Annotated[
        str, typer.Option("--units", metavar="us|metric", help="units of screen and job sheet")
    ] = "us",
    paper: Annotated[
        str, typer.Option("--paper", metavar="us-letter|a4", help="paper of both")
    ] = "us-letter",
    pdf: Annotated[
        str | None, typer.Option("--pdf", metavar="FILE", help="write the job sheet there")
    ] = None,
    guide: Annotated[
        str | None,
        typer.Option("--guide", metavar="FILE", help="write the guide for its owner there"),
    ] = None,
    drawing: Annotated[
        str | None,
        typer.Option("--drawing", metavar="FILE.svg", help="draw there how it ends, part by part"),
    ] = None,
    every: Annotated[bool, typer.Option("--all", help="name every part on the screen")] = False,
    quick: Annotated[
        bool, typer.Option("--quick", help="do not work out what a missed step would do")
    ] = False,
    wrong: Annotated[
        bool, typer.Option("--wrong", help="also what can stand wrongly, and what comes of it")
    ] = False,
    earlier: Earlier = None,
    place: PlaceName = None,
    regulator: Regulator = None,
    start: Annotated[
        str | None,
        typer.Option("--start", metavar="T", help="warmth of the coach before a freeze hold"),
    ] = None,
    since: Annotated[
        str | None,
        typer.Option(
            "--since", metavar="FITTING[,...]", help="water has run there since; plan it again"
        ),
    ] = None,
    jug: Annotated[
        str | None,
        typer.Option("--jug", metavar="FITTING[,...]", help="flushed from a jug since"),
    ] = None,
    warm: Annotated[
        str | None,
        typer.Option("--warm", metavar="ROOM[,...]", help="compartments heated all winter"),
    ] = None,
    strict: Annotated[
        bool, typer.Option("--strict", help="exit with 3 unless the verdict is safe")
    ] = False,
    as_json: AsJson = False,
) -> Answer:
    """Plan one coach: what to do, how much antifreeze and time, and is it safe then?"""
    from wintertight.coach.load import load_card

    spoken, system = language_named(language), system_named(units)
    sheet = paper_named(paper)
    files = PlanFiles(pdf, guide, drawing)
    files.check()
    read = load_card(card)
    low_degC = design_low_degC(read, card, low)
    sold, list_file = shop_list(shop, card)
    poured = product_for(read, card, product, sold)
    missed = (as_json or pdf is not None) and not quick
    start_degC = None if start is None else quantity(start, "--start", "temperature")
    use, air = (since, jug, warm), air_of(sold, regulator)
    where = place_named(sold, place)
    asked = JobAsked(
        read, poured, low_degC, method, air, where, missed=missed, use=use, start_degC=start_degC
    )
    planned, used = job_planned(asked)
    taught = None
    if earlier:
        from wintertight.procedure.hindsight.look_back import as_taught

        visits = earlier_visits(read, earlier, poured, low_degC)
        planned, taught = as_taught(planned, visits, poured)
    written = list(files.write(planned, spoken, sheet, system))
    status = NOT_SAFE if strict and planned.verdict != "safe" else SAFE_TO_LEAVE
    if as_json:
        sold_by = {"shop": {"name": sold.name, "list": list_file}}
        content = _content(planned, used, spoken, system, wrong=wrong)
        content["taught_by"] = taught.visits if taught else 0
        return Answer(json_text(SCHEMA, {**content, **sold_by}), status)
    said = list(_said(planned, used, spoken, system, every=every, wrong=wrong))
    if earlier:
        from wintertight.wording.hindsight import taught_text

        said.append(taught_text(taught, spoken, system))
    said += list_notes(list_file, spoken, "bundled list")
    said += written
    return Answer("\n".join(said), status)


@dataclass(frozen=True, slots=True)
class JobAsked:
    """What is to be planned; ``use`` as `--since`, `--jug` and `--warm` were written."""

    card: "Card"
    product: "Product"
    low_degC: float
    method: str
    air: "AirSupply"
    place: "WorkPlace | None"
    missed: bool
    use: tuple[str | None, str | None, str | None] = (None, None, None)
    start_degC: float | None = None


def job_planned(asked: JobAsked) -> "tuple[Plan, UsedSince | None]":
    """Plan a coach as it arrives, or one that has been used since it was winterized."""
    from wintertight.procedure.at_place import at_place
    from wintertight.procedure.place import tilts
    from wintertight.procedure.plan import plan_coach
    from wintertight.procedure.rounds import with_rounds_compared
    from wintertight.procedure.warm_zone import with_warm_rooms
    from wintertight.procedure.winter_use import use_named, used_since

    since, jug, warm = asked.use
    job = (asked.card, asked.product, asked.low_degC)
    used = None
    if since is not None or jug is not None:
        use = use_named(asked.card, _names(since), _names(jug))
        used = used_since(*job, use, asked.method, air=asked.air, with_missed_steps=asked.missed)
        planned = used.again
    else:
        planned = plan_coach(
            *job,
            asked.method,
            air=asked.air,
            start_degC=asked.start_degC,
            tilts=tilts(asked.place) if asked.place else (),
            with_missed_steps=asked.missed,
        )
        if asked.missed:
            planned = with_rounds_compared(planned)
    if warm is not None:
        planned = with_warm_rooms(planned, _names(warm))
    return at_place(planned, asked.place), used


def _content(
    planned: "Plan", used: "UsedSince | None", spoken: str, system: "System", *, wrong: bool
) -> dict[str, Any]:
    """Give everything for programs."""
    from wintertight.documents.plan_json import plan_object, since_object

    content = plan_object(planned, spoken, system)
    if used is not None:
        content["since"] = since_object(used, spoken, system)
    if wrong:
        from wintertight.documents.wrong_settings import wrong_settings_list
        from wintertight.procedure.mistake_outcome import outcomes_of

        listed = wrong_settings_list(planned, outcomes_of(planned), spoken, system)
        content["wrong_settings"] = listed
    return content


def _said(  # noqa: PLR0913 - a plan and how to say it
    planned: "Plan",
    used: "UsedSince | None",
    spoken: str,
    system: "System",
    *,
    every: bool,
    wrong: bool,
) -> "Iterator[str]":
    """Give everything for the screen."""
    from wintertight.documents.screen import plan_screen
    from wintertight.documents.screen_blocks import wrapped
    from wintertight.wording.used_since import used_text

    if used is not None:
        yield from (wrapped(used_text(used, spoken, system)), "")
    yield plan_screen(planned, spoken, system, all_parts=every).rstrip("\n")
    if wrong:
        from wintertight.documents.wrong_settings import wrong_settings_none, wrong_settings_screen
        from wintertight.procedure.mistake_outcome import outcomes_of

        told = wrong_settings_screen(planned, outcomes_of(planned), spoken, system)
        yield from ("", told or wrong_settings_none(spoken), "")


def _names(written: str | None) -> list[str]:
    return [name.strip() for name in (written or "").split(",") if name.strip()]


def design_low_degC(card: "Card", file: str, named: str | None) -> float:
    """Give the design low that is named, else the card's.

    Args:
        card: the coach.
        file: the card's file, for the message.
        named: a temperature with its unit, if one was named.

    Returns:
        Design low [degC].

    Raises:
        QuantityError: the temperature has no unit, or nobody names one.
    """
    if named is not None:
        return quantity(named, "--low", "temperature")
    low = card.site.design_low_degC if card.site is not None else None
    if low is None:
        message = (
            "the card has no design low; expected --low with the coldest temperature of its site,"
            ' such as --low "-20F"'
        )
        raise QuantityError(message, Place(file, field="site.design_low"))
    return low

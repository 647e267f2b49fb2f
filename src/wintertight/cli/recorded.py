"""A visit as its record tells it: the card, the list, the proof and what it tells beyond."""

# ruff: noqa: PLC0415 - heavy layers load only with their command, so that help stays quick

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from wintertight.cli.plan import design_low_degC
from wintertight.cli.stock import BY_OPTION, product_for, shop_list
from wintertight.cli.visits import earlier_visits
from wintertight.errors import Place

if TYPE_CHECKING:
    from wintertight.coach.card import Card
    from wintertight.coach.shop import Shop
    from wintertight.documents.recorded_job import RecordedJob
    from wintertight.procedure.as_done import AsDone
    from wintertight.procedure.hindsight.look_back import Hindsight
    from wintertight.procedure.record import Record


@dataclass(frozen=True, eq=False, slots=True)
class Recorded:
    """A recorded visit.

    Attributes:
        card: the coach's card.
        record: what was done.
        text: the record's text as it was read.
        file: name of the record's file.
        proved: what it proves, less what is doubted by what was observed.
        told: what it tells beyond; None where nobody asked.
        sold: the shop's list.
        list_file: name of the list's file.
    """

    card: "Card"
    record: "Record"
    text: str
    file: str
    proved: "AsDone"
    told: "Hindsight | None"
    sold: "Shop"
    list_file: str

    def job(self, link: str = "") -> "RecordedJob":
        """Give what its papers are made from; ``link`` is the address of the coach's page."""
        from wintertight.documents.recorded_job import RecordedJob
        from wintertight.procedure.record_digest import digest_of_text

        digest = digest_of_text(self.text, self.file)
        return RecordedJob(self.card, self.record, self.proved, self.told, digest, link)


def recorded_visit(  # noqa: PLR0913 - one parameter for each option
    card: str,
    done: str,
    *,
    low: str | None,
    product: str | None,
    shop: str | None,
    earlier: Sequence[str] | None = None,
    quick: bool = False,
) -> Recorded:
    """Read a record and prove it.

    Args:
        card: the card's file.
        done: the record's file.
        low: ``--low``.
        product: ``--product``; else the record's, else the card's.
        shop: ``--shop``.
        earlier: files of records of earlier visits.
        quick: leave out what stopwatch, jugs and cups tell beyond.

    Returns:
        The visit.

    Raises:
        InputError: a file cannot be read, or does not fit the others.
    """
    from wintertight.coach.load import load_card
    from wintertight.coach.read_toml import read_file
    from wintertight.procedure.as_done import prove_record
    from wintertight.procedure.hindsight.look_back import look_back
    from wintertight.procedure.record import read_record

    read, text = load_card(card), read_file(done)
    record = read_record(text, done)
    low_degC = design_low_degC(read, card, low)
    sold, list_file = shop_list(shop, card)
    by = BY_OPTION if product is not None else Place(done, field="product")
    named = product if product is not None else record.product
    poured = product_for(read, card, named, sold, by=by)
    before = earlier_visits(read, earlier, poured, low_degC)
    proved = prove_record(read, record, poured, low_degC, done)
    proved, told = (proved, None) if quick else look_back(proved, poured, before)
    return Recorded(read, record, text, done, proved, told, sold, list_file)

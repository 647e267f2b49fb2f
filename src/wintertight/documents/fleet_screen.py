"""A folder of cards as plain text for a screen: one row a coach, then all of them together."""

from collections.abc import Iterator

from wintertight.documents.fleet_content import (
    FailedCoach,
    Fleet,
    PlannedCoach,
    Totals,
    totals_of,
)
from wintertight.documents.screen_blocks import WIDTH, joined, wrapped
from wintertight.units import System
from wintertight.wording.catalogue import say
from wintertight.wording.fleets import (
    all_jugs,
    jugs_in_a_row,
    minutes_band,
    time_band,
    verdict_in_a_row,
    volume_band,
)
from wintertight.wording.plans import bring_line

LEAST_NAME = 24
"""Columns that a coach's name has at the least, however long the rest of its row is."""

GAP, CUT = "  ", "..."
COLUMNS = ("coach", "antifreeze", "work", "jugs", "verdict")


def fleet_screen(fleet: Fleet, language: str = "en", system: System = "us") -> str:
    """Give a folder of cards as text.

    Args:
        fleet: its rows.
        language: two letters.
        system: "us" or "metric".

    Returns:
        Lines of at most ``WIDTH`` columns, or as many as a row needs beside a short name, with a
        line feed at the end.
    """
    planned, totals = bool(fleet.planned), totals_of(fleet.planned)
    return joined(
        (
            _table(fleet, language, system),
            [wrapped(say("fleet", "how to read", language))] if planned else (),
            _counts(fleet, totals, language),
            _totals(totals, language, system) if planned else (),
        )
    )


def _table(fleet: Fleet, language: str, system: System) -> Iterator[str]:
    heading = tuple(say("fleet", column, language) for column in COLUMNS)
    cells = {coach.file: _cells(coach, language, system) for coach in fleet.planned}
    widths = [max(map(len, column)) for column in zip(heading, *cells.values(), strict=True)]
    others = sum(widths[1:]) + len(GAP) * len(widths[1:])
    longest = max(widths[0], *(len(row.file) for row in fleet.failed), 0)
    widths[0] = min(longest, max(LEAST_NAME, WIDTH - others))
    if cells:
        yield _row(heading, widths)
    for row in fleet.rows:
        if isinstance(row, FailedCoach):
            lead = f"{_short(row.file, widths[0]):<{widths[0]}}{GAP}"
            yield wrapped(f"{row.code} {row.message}", lead)
        else:
            yield _row(cells[row.file], widths)


def _cells(coach: PlannedCoach, language: str, system: System) -> tuple[str, ...]:
    gaps, unproven = len(coach.gaps), len(coach.unproven)
    return (
        f"{coach.id} {coach.name}".strip(),
        volume_band(coach.antifreeze, language, system, in_a_row=True),
        minutes_band(coach.duration, language),
        jugs_in_a_row(coach.buy.count, coach.buy.spare, language),
        verdict_in_a_row(gaps, unproven, coach.low_degC, language, system),
    )


def _row(cells: tuple[str, ...], widths: list[int]) -> str:
    name, *others = cells
    return GAP.join(map(str.ljust, (_short(name, widths[0]), *others), widths)).rstrip()


def _short(name: str, width: int) -> str:
    return name if len(name) <= width else f"{name[: width - len(CUT)].rstrip()}{CUT}"


def _counts(fleet: Fleet, totals: Totals, language: str) -> Iterator[str]:
    """Count the coaches by verdict, and those without a plan."""
    yield say("fleet", "in all", language, count=str(len(fleet.rows)))
    for what, count in (*totals.verdicts.items(), ("failed", len(fleet.failed))):
        if count:
            yield wrapped(say("fleet", f"all {what}", language), f"{count:5d}  ")


def _totals(totals: Totals, language: str, system: System) -> Iterator[str]:
    """Say what all planned coaches take."""
    yield wrapped(
        say(
            "fleet",
            "all antifreeze",
            language,
            volume=volume_band(totals.antifreeze, language, system),
            time=time_band(totals.duration, language),
        )
    )
    for supply in totals.supplies:
        told = (
            bring_line(supply.buy, language, system),
            *all_jugs(supply.buy.count, supply.separately, language),
        )
        yield wrapped(" ".join(told))

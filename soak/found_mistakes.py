"""Every mistake on every coach of the demo, 200 days each by EPANET, found again or missed."""

import sys
import tempfile
from collections import Counter
from itertools import islice
from multiprocessing import get_context
from pathlib import Path

import numpy as np

from tests.demo_records import COACHES
from tests.hindsight.bay_day import Bay, Made, teach
from wintertight.procedure.chances import AS_RECORDED

SEED = 20_261_129
PAGE = Path(__file__).resolve().parents[1] / "docs" / "diagnosis.md"

TEACHERS = ("small-trailer", "middle-travel-trailer")
"""Coaches whose visits are counted by the thousand; the others take an hour each."""

HEAD = """# Mistakes made in another engine, and what the record tells of them

This page is written by `make soak`; do not edit it.

Each line is {days} days in the bay. Every day is another coach that the card could mean: lengths
and hollows drawn evenly within their spread, pump and habits evenly too, which is another law than
the one the diagnosis draws from. EPANET 2.3 does the whole job in plug flow, with the mistake made
in its network; the record then gets the errors of a bay: 1 s on every time, 0.1 gal on the jugs,
1 vol % on two cups, from the fresh jug and from a hot tap. Timed are only the outlets that the job
sheet asks for; colour that is there within half a second is called "at once", and what a hose still
held is no first colour where air or water follows it. `wintertight prove`
ranks the causes from such a record.

*First*: days on which the true cause is named first. *Top two*: first or second. For "nothing
wrong" every other first name is a false alarm.

"""

TAIL = """
Not made here: what is a matter of air (a suction leak, a jug run dry, a heater drained and open):
EPANET knows none. What it takes for water in a drained line is air in a coach; a cup is therefore
not taken from a tap that still pushes such a line out.
"""


TAUGHT = """
## What visits teach

{coaches} coaches each, drawn and filled as above. The band of gallons that the plan prints, after
one visit and after three, each with its times, their run-ons and the jugs: how wide it is over
what it was, and how often it holds what EPANET then uses at the next visit (a 90 % band should,
nine times in ten).

| coach | width after one | holds | width after three | holds |
|---|---:|---:|---:|---:|
"""


def found_mistakes(days: int = 200) -> int:
    """Do all days, write the page, and give the exit status: 1 for a line that is a new miss."""
    jobs = [(coach, days) for coach in COACHES]
    with get_context("fork").Pool(2) as pool:
        found = [line for lines in pool.imap(_coach, jobs) for line in lines]
    text = HEAD.format(days=days) + "| coach | what is wrong | first | top two | named instead |\n"
    text += "|---|---|---:|---:|---|\n" + "\n".join(found) + "\n" + TAIL
    text += TAUGHT.format(coaches=5 * days)
    with get_context("fork").Pool(2) as pool:
        text += "\n".join(pool.imap(_taught, [(coach, 5 * days) for coach in TEACHERS])) + "\n"
    PAGE.write_text(text, encoding="utf-8")
    sys.stdout.write(text)
    return 0


def _taught(job: tuple[str, int]) -> str:
    coach, coaches = job
    with tempfile.TemporaryDirectory() as folder:
        bay = Bay(coach, Path(folder))
        found = teach(bay, coaches)
    told = " | ".join(f"{found[n][0]:.2f} | {found[n][1] / coaches:.1%}" for n in (1, 3))
    return f"| {bay.plan.card.id} | {told} |"


def _coach(job: tuple[str, int]) -> list[str]:
    coach, days = job
    with tempfile.TemporaryDirectory() as folder:
        bay = Bay(coach, Path(folder))
        return [_line(bay, made, days) for made in bay.made()]


def _line(bay: Bay, made: Made, days: int) -> str:
    rng = np.random.default_rng(SEED)
    first: Counter[str] = Counter()
    in_two = doubted = 0
    for observed in islice(bay.days(made, rng), days):
        causes = [cause.explanation.cause for cause in bay.causes(observed)]
        first[causes[0]] += 1
        in_two += made.cause in causes[:2]
        doubted += made.cause == AS_RECORDED and bay.doubted(observed)
    others = ", ".join(f"{c} {n}" for c, n in first.most_common() if c != made.cause)
    if made.cause == AS_RECORDED:
        others = f"{others or 'none'}; some part doubted on {doubted} days"
    share = f"{first[made.cause] / days:.1%} | {in_two / days:.1%}"
    return f"| {bay.plan.card.id} | {made.name} | {share} | {others} |"

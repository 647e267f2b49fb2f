"""Every picture of three hundred drawn coaches, laid out by a browser: do any labels touch?"""

import sys
from collections import Counter
from multiprocessing import get_context

from tests.intake.described import drawn
from tests.pictures.browser import browser
from tests.unit.procedure.demo_coach import PINK, celsius
from wintertight.coach.intake.made import made_card
from wintertight.documents.drawing.of_plan import plan_pictures
from wintertight.procedure.plan import plan_coach
from wintertight.wording.catalogue import LANGUAGES

COACHES = 300
LOW_DEGF = 0.0
AT_ONCE = 10  # coaches that one browser lays out before the next is started


def coach_pictures(coaches: int = COACHES) -> int:
    """Measure all pictures, the languages in turn; print how many of what, and every fault."""
    counted: Counter[str] = Counter()
    faults: list[str] = []
    lots = [range(first, min(first + AT_ONCE, coaches)) for first in range(0, coaches, AT_ONCE)]
    # A browser wants a process that nothing else was started in.
    with get_context("spawn").Pool(2, maxtasksperchild=1) as pool:
        for shown, found in pool.imap_unordered(_measured, lots):
            counted.update(shown)
            faults += found
            sys.stderr.write(f"{counted.total()} pictures: {len(faults)} faults\n")
    say = sys.stdout.write
    say(f"{coaches} coaches, {counted.total()} pictures: {dict(counted)}; {len(faults)} faults\n")
    say("".join(f"{fault}\n" for fault in faults))
    return int(bool(faults))


def _measured(seeds: range) -> tuple[Counter[str], list[str]]:
    counted: Counter[str] = Counter()
    faults = []
    with browser() as page:
        for seed in seeds:
            language = list(LANGUAGES)[seed % len(LANGUAGES)]
            card = made_card(drawn(seed), f"R-{seed}", "drawn")
            for shown in plan_pictures(plan_coach(card, PINK, celsius(LOW_DEGF)), language):
                counted[shown.shows] += 1
                found = page.rendered(shown.svg).faults()
                faults += [f"coach {seed}, {shown.picture.name}: {fault}" for fault in found]
    return counted, faults

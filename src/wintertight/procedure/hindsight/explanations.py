"""What may have happened at a job whose steps were all ticked.

An explanation is one thing that may be wrong: with the coach's handles, with what was drawn, with a
step that was ticked and not done, or with the card. How likely each is before anything was seen is
common practice: most jobs go as recorded, and what is out of sight is forgotten more often.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from types import MappingProxyType

from wintertight.coach.card import Card
from wintertight.procedure.chances import (
    AS_RECORDED,
    CHANCE,
    FORGOTTEN,
    LINE,
    RUN_SINCE,
    UNKNOWN,
    forgotten_chances,
)
from wintertight.procedure.mistakes import Mistake, possible_mistakes
from wintertight.procedure.plan import Plan
from wintertight.procedure.steps import Step, part_of

CAUSE_OF: Mapping[str, str] = MappingProxyType(
    {
        "heater left open": "wrong bypass",
        "bypass shut": "wrong bypass",
        "inlet half open": "inlet half open",
        "tank valve half open": "inlet half open",
        "shower crossing": "crossover",
        "pause button": "crossover",
        "tempering valve one-sided": "crossover",
        "diverter left off": "crossover",
        "low point left open": "low point open",
        "suction leak": "suction leak",
        "jug ran dry": "jug dry",
        "weak product": "weak product",
        "wrong product": "weak product",
        "cartridge left in": "filter left in",
        "branch left shut": "branch shut",
        "failed check": "failed check",
    }
)
"""The cause that each mistake belongs to."""

MOST_WRONG = 0.5
"""How often anything at all is wrong, at most [1]: a coach with hundreds of taps is not filled by
people who forget most jobs; common practice."""


@dataclass(frozen=True, slots=True)
class Explanation:
    """One thing that may have happened.

    Attributes:
        cause: one of ``CHANCE``, or as recorded.
        part: where; "" where nowhere in particular.
        chance: how likely it is before anything was seen [1].
        mistake: what stands wrongly, for a cause that is made of mistakes.
        skips: ids of steps that were ticked and not done.
        line: a line that is not as long as the card says.
        outlet: an outlet at which water has run since.
    """

    cause: str
    part: str = ""
    chance: float = 0.0
    mistake: Mistake | None = None
    skips: frozenset[str] = frozenset()
    line: str = ""
    outlet: str = ""


def possible_explanations(
    planned: Plan, ticked: Sequence[Step], read: Sequence[str] = ()
) -> tuple[Explanation, ...]:
    """Give everything that may have happened at a job.

    Args:
        planned: the plan it was done by.
        ticked: the steps that were ticked, in the order in which they were.
        read: outlets at which the strength was read.

    Returns:
        As recorded first, then all else, in the order of ``CHANCE``; chances add up to 1.
    """
    found = [
        *_mistakes(planned),
        *_forgotten(planned.card, ticked),
        *_lines(planned, ticked),
        *_run_since(read),
        Explanation(UNKNOWN, chance=CHANCE[UNKNOWN]),
    ]
    order = list(CHANCE)
    found.sort(key=lambda e: order.index(e.cause))
    whole = sum(each.chance for each in found)
    if whole > MOST_WRONG:
        found = [replace(each, chance=each.chance * MOST_WRONG / whole) for each in found]
    rest = 1.0 - min(whole, MOST_WRONG)
    return (Explanation(AS_RECORDED, chance=rest), *found)


def _mistakes(planned: Plan) -> Iterator[Explanation]:
    possible = possible_mistakes(planned)
    for mistake in possible:
        cause = CAUSE_OF[mistake.key]
        alike = sum(CAUSE_OF[other.key] == cause for other in possible)
        yield Explanation(cause, mistake.part, CHANCE[cause] / alike, mistake)


def _forgotten(card: Card, ticked: Sequence[Step]) -> Iterator[Explanation]:
    """Give each fitting whose outlets may all have been forgotten."""
    outlets: dict[str, set[str]] = {}
    for step in ticked:
        if step.outlet:
            outlets.setdefault(part_of(step.outlet), set()).add(step.id)
    chances = forgotten_chances(card, outlets)
    for part, skips in outlets.items():
        yield Explanation(FORGOTTEN, part, chances[part], skips=frozenset(skips))


def _lines(planned: Plan, ticked: Sequence[Step]) -> Iterator[Explanation]:
    """Give each line that was run through and may be longer than the card says."""
    ran = {step.outlet for step in ticked if step.outlet}
    ways = {link for p in planned.steps if p.run and p.run.outlet in ran for link in p.run.way}
    lines = [line.id for line in planned.card.lines if line.id in ways]
    for line in lines:
        yield Explanation(LINE, line, CHANCE[LINE] / len(lines), line=line)


def _run_since(read: Sequence[str]) -> Iterator[Explanation]:
    for outlet in dict.fromkeys(read):
        chance = CHANCE[RUN_SINCE] / len(set(read))
        yield Explanation(RUN_SINCE, part_of(outlet), chance, outlet=outlet)

"""Blocks of text that a plan and a proof show alike on the screen."""

from collections import Counter
from collections.abc import Iterable, Iterator
from textwrap import fill

from wintertight.documents.open_parts import OpenGroup
from wintertight.procedure.plan import Plan
from wintertight.proof.claims import PartProof
from wintertight.units import System, in_words
from wintertight.wording.catalogue import say
from wintertight.wording.names import part_name
from wintertight.wording.plans import held_line, notes, verdict_of_plan
from wintertight.wording.proofs import claim_name, reason

WIDTH = 92
MOST_NAMES = 12


def head(plan: Plan, language: str, system: System, *, recorded: bool) -> Iterator[str]:
    """Give verdict, coach and cold."""
    yield wrapped(verdict_of_plan(plan, language, system, recorded=recorded))
    yield wrapped(f"{plan.card.id}  {plan.card.name}")
    site = plan.card.site.name if plan.card.site else say("label", "no site", language)
    low = in_words(plan.low_degC, "temperature", system)
    yield wrapped(f"{site}, {say('label', 'design low', language).lower()} {low}")


def open_parts(groups: Iterable[OpenGroup], heading: str, language: str) -> Iterator[str]:
    """Name the parts that are not proven, the worst first, and what would settle them."""
    colon = say("label", "colon", language)
    told = [
        f"{g.named(MOST_NAMES, language)} ({g.word}){colon} {g.reason} {g.settle}" for g in groups
    ]
    yield from _list(told, say("label", heading, language))


def worth_knowing(plan: Plan, language: str, system: System, *, recorded: bool) -> Iterator[str]:
    """Give warnings and findings."""
    told = notes(plan, language, system, recorded=recorded)
    yield from _list(told, say("label", "notes", language))


def summary(plan: Plan, language: str) -> Iterator[str]:
    """Count the parts by how they are protected, and the draws in which all of them hold."""
    counts = Counter(p.claim for p in plan.parts)
    heading = say("label", "handled", language, count=str(len(plan.parts)))
    yield f"{say('label', 'parts', language)} ({heading})"
    for claim, count in counts.most_common():
        yield f"{count:5d}  {claim_name(claim, language)}"
    held = held_line(plan, language) if plan.verdict == "safe" else None
    if held:
        yield wrapped(held, "     ")


def every_part(plan: Plan, language: str, system: System) -> Iterator[str]:
    """Name every part, how it is protected and why."""
    told = (_part_line(plan, part, language, system) for part in plan.parts)
    yield from _list(told, say("label", "all parts", language))


def joined(blocks: Iterable[Iterable[str]]) -> str:
    """Put blocks of lines below each other, those without a line left out."""
    texts = ("\n".join(block) for block in blocks)
    return "\n\n".join(text for text in texts if text) + "\n"


def wrapped(text: str, lead: str = "") -> str:
    """Break a text into lines; the first one begins with the lead, the others below its end."""
    return fill(
        text,
        WIDTH,
        initial_indent=lead,
        subsequent_indent=" " * len(lead),
        break_long_words=False,
        break_on_hyphens=False,
    )


def _list(told: Iterable[str], heading: str) -> Iterator[str]:
    some = list(told)
    if some:
        yield heading
    for text in some:
        yield wrapped(text, "  -  ")


def _part_line(plan: Plan, part: PartProof, language: str, system: System) -> str:
    name = part_name(plan.card, part.id, language)
    colon = say("label", "colon", language)
    return f"{name}{colon} {claim_name(part.claim, language)}. {reason(part, language, system)}"

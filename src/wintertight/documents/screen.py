"""A plan as plain text for a screen of 80 to 100 columns: what matters first."""

from collections import Counter
from collections.abc import Iterator
from textwrap import fill

from wintertight.documents.open_parts import open_groups
from wintertight.documents.shown_cautions import shown_cautions
from wintertight.procedure.plan import Plan
from wintertight.procedure.steps import PHASES, PlannedStep
from wintertight.proof.claims import PartProof
from wintertight.units import System, in_words
from wintertight.wording.catalogue import say
from wintertight.wording.names import part_name
from wintertight.wording.plans import (
    bring_line,
    minutes_line,
    notes,
    verdict_of_plan,
)
from wintertight.wording.proofs import claim_name, reason
from wintertight.wording.spoken import about, begun, some_of
from wintertight.wording.steps import caution, how_to_open, step_text

WIDTH = 92
NAME_WIDTH = 36
MOST_NAMES = 12


def plan_screen(
    plan: Plan,
    language: str = "en",
    system: System = "us",
    *,
    all_parts: bool = False,
    recorded: bool = False,
) -> str:
    """Give a plan as text.

    Args:
        plan: the plan, or the proof of what was done in the form of a plan.
        language: two letters.
        system: "us" or "metric".
        all_parts: name every part, not only those that are not proven.
        recorded: whether it speaks of what was done.

    Returns:
        Lines of at most ``WIDTH`` columns, with a line feed at the end.
    """
    blocks = [
        "\n".join(_head(plan, language, system, recorded=recorded)),
        *("\n".join(_phase(plan, phase, language, system)) for phase in PHASES),
        "\n".join(_open_parts(plan, language, system)),
        "\n".join(_notes(plan, language, system)),
        "\n".join(_summary(plan, language)),
    ]
    if all_parts:
        blocks.append("\n".join(_every_part(plan, language, system)))
    return "\n\n".join(block for block in blocks if block) + "\n"


def _head(plan: Plan, language: str, system: System, *, recorded: bool) -> Iterator[str]:
    yield _wrapped(verdict_of_plan(plan, language, system, recorded=recorded))
    yield _wrapped(f"{plan.card.id}  {plan.card.name}")
    site = plan.card.site.name if plan.card.site else say("label", "no site", language)
    low = in_words(plan.low_degC, "temperature", system)
    yield _wrapped(f"{site}, {say('label', 'design low', language).lower()} {low}")
    yield ""
    bring = bring_line(plan.buy, language, system)
    minutes = minutes_line(plan.duration.p50, language)
    yield _wrapped(f"{bring} {minutes}")


def _phase(plan: Plan, phase: str, language: str, system: System) -> Iterator[str]:
    steps = [s for s in plan.steps if s.step.phase == phase]
    if not steps:
        return
    yield say("phase", phase, language)
    runs = [s for s in steps if s.run is not None]
    if runs:
        yield _run_heading(language)
    cautions = shown_cautions(plan.steps)
    for step in steps:
        if step.run is not None:
            yield _run_row(plan, step, language, system)
            how = how_to_open(step.step, language)
            if how:
                yield _wrapped(f"({how})", "     ")
        else:
            yield _wrapped(step_text(step, plan.card, language, system), f"{step.n:3d}  ")
        for key in cautions[step.n]:
            yield _wrapped(caution(key, language), "     ! ")


def _run_heading(language: str) -> str:
    outlet, colour, run_on = (
        say("label", k, language) for k in ("outlet", "first colour", "run on")
    )
    return f"     {outlet:<{NAME_WIDTH}} {colour:<16} {run_on:<10}".rstrip()


def _run_row(plan: Plan, planned: PlannedStep, language: str, system: System) -> str:
    name = part_name(plan.card, planned.step.part, language)
    colour = about(planned.run.first_colour_s if planned.run else None, language)
    run_on = in_words(planned.run_on_s or 0.0, "time", system)
    mark = say("label", "time this one", language) if planned.telling else ""
    return f"{planned.n:3d}  {name:<{NAME_WIDTH}} {colour:<16} {run_on:<10} {mark}".rstrip()


def _open_parts(plan: Plan, language: str, system: System) -> Iterator[str]:
    """Name the parts that are not proven, the worst first, and what would settle them."""
    groups = open_groups(plan, language, system)
    if groups:
        yield say("label", "not proven", language)
    for group in groups:
        names = some_of(group.names, MOST_NAMES, language)
        yield _wrapped(f"{begun(names)} ({group.word}): {group.reason} {group.settle}", "  -  ")


def _notes(plan: Plan, language: str, system: System) -> Iterator[str]:
    told = list(notes(plan, language, system))
    if told:
        yield say("label", "notes", language)
    for note in told:
        yield _wrapped(note, "  -  ")


def _summary(plan: Plan, language: str) -> Iterator[str]:
    counts = Counter(p.claim for p in plan.parts)
    heading = say("label", "handled", language, count=str(len(plan.parts)))
    yield f"{say('label', 'parts', language)} ({heading})"
    for claim, count in counts.most_common():
        yield f"{count:5d}  {claim_name(claim, language)}"


def _every_part(plan: Plan, language: str, system: System) -> Iterator[str]:
    yield say("label", "all parts", language)
    for part in plan.parts:
        yield _wrapped(_part_line(plan, part, language, system), "  -  ")


def _part_line(plan: Plan, part: PartProof, language: str, system: System) -> str:
    name = part_name(plan.card, part.id, language)
    return f"{name}: {claim_name(part.claim, language)}. {reason(part, language, system)}"


def _wrapped(text: str, lead: str = "") -> str:
    return fill(
        text,
        WIDTH,
        initial_indent=lead,
        subsequent_indent=" " * len(lead),
        break_long_words=False,
        break_on_hyphens=False,
    )

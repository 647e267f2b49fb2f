"""What has to be at hand for a job, in words."""

from typing import Literal

from wintertight.procedure.plan import Plan
from wintertight.procedure.tools import Thing, spares_of, tools_of
from wintertight.units import System
from wintertight.wording.catalogue import say
from wintertight.wording.names import part_name
from wintertight.wording.spoken import listed, spoken


def tools_line(plan: Plan, language: str = "en", system: System = "us") -> str | None:
    """Give the tools as one sentence; None where hands suffice."""
    named = [text for _, text in things(plan, "tool", language, system)]
    return say("at hand", "tools", language, tools=listed(named, language)) if named else None


def things(
    plan: Plan, subject: Literal["tool", "spare"], language: str = "en", system: System = "us"
) -> list[tuple[Thing, str]]:
    """Name what has to be at hand, and what each thing is for.

    Args:
        plan: the plan.
        subject: "tool", or "spare" for small parts that may be due.
        language: two letters.
        system: "us" or "metric".

    Returns:
        Each thing and its name without a full stop, in the order in which they are listed.
    """
    found = tools_of(plan) if subject == "tool" else spares_of(plan)
    return [(thing, _named(plan, thing, subject, language, system)) for thing in found]


def _named(plan: Plan, thing: Thing, subject: str, language: str, system: System) -> str:
    parts = listed((part_name(plan.card, part, language) for part in thing.parts), language)
    return say(subject, thing.key, language, parts=parts, **spoken(thing.params, language, system))

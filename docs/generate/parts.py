"""The page of parts: every kind of fitting, how it is taken, and what comes of missing its step."""

from collections.abc import Iterator, Mapping
from functools import cache
from pathlib import Path

import wintertight
from wintertight.coach.kinds import KINDS
from wintertight.coach.load import load_card
from wintertight.coach.shop import find_product, load_shop
from wintertight.procedure.plan import Plan, plan_coach
from wintertight.procedure.steps import PlannedStep
from wintertight.wording.names import kind_name

DEMO = Path(wintertight.__file__).parent / "demo"

HOLDS: Mapping[str, str] = {
    "none": "nothing",
    "displaced": "displaced, first in first out",
    "stirred": "stirred",
    "vessel": "drained rather than flushed",
}

CHECKED: Mapping[str, str] = {
    "none": "flow against EPANET",
    "displaced": "flow and front against EPANET",
    "stirred": "the stirred vessel's exponential",
    "vessel": "worked example of draining; common practice for what stays",
}

RANK = {"hazard": 3, "gap": 2, "unproven": 1, "same": 0}


@cache
def plans() -> tuple[Plan, ...]:
    """Plan every coach of the demo, each step left out once."""
    shop = load_shop(DEMO / "shop.toml")
    found = []
    for path in sorted((DEMO / "cards").glob("*.toml")):
        card = load_card(path)
        low = card.site.design_low_degC if card.site else None
        product = card.antifreeze.product if card.antifreeze else shop.products[0].name
        found.append(
            plan_coach(
                card,
                find_product(shop, product),
                -20.0 if low is None else low,
                with_missed_steps=True,
            )
        )
    return tuple(found)


def steps_of(plan: Plan, part: str) -> Iterator[PlannedStep]:
    """Give the steps that set, run or relieve something of one fitting."""
    for step in plan.steps:
        if any(
            action.part.partition("/")[0].partition(".")[0] == part for action in step.step.actions
        ):
            yield step


def row(kind: str) -> str:
    """Give the row of one kind."""
    facts = KINDS[kind]
    coaches: list[str] = []
    keys: dict[str, None] = {}
    worst = "none of its own"
    rank = -1
    for plan in plans():
        for fitting in plan.card.fittings:
            if fitting.kind != kind:
                continue
            coaches.append(plan.card.id)
            for step in steps_of(plan, fitting.id):
                keys[step.step.key] = None
                missed = step.if_missed
                if missed and RANK[missed.outcome] > rank:
                    rank = RANK[missed.outcome]
                    worst = f"{step.step.key}: {missed.outcome}"
    holds = HOLDS[facts.mixing] if facts.hollow_m3 or facts.mixing != "none" else "nothing"
    litres = f", {1e3 * facts.hollow_m3:g} L" if facts.hollow_m3 else ""
    cells = (
        kind_name(kind),
        ", ".join(dict.fromkeys(coaches)),
        holds + litres,
        facts.relief or facts.pocket,
        ", ".join(keys) or "what flows by fills it",
        worst,
        CHECKED[facts.mixing],
    )
    return "| " + " | ".join(cells) + " |"


def parts_page() -> str:
    """Give the whole page."""
    head = (
        "# Parts\n\n"
        "Every kind of fitting a card may name: the demo's coaches that have one, what it holds\n"
        "and how, what gives when slush grows in it, the steps that touch it, the worst that\n"
        "comes of leaving one of them out, and what its model was checked against. Hollows\n"
        "and pockets are common practice; a card may give its own.\n\n"
        "| kind | coaches | holds | gives by | steps | worst if missed | checked by |\n"
        "|---|---|---|---|---|---|---|\n"
    )
    return head + "\n".join(row(kind) for kind in KINDS) + "\n"

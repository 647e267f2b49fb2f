"""A card made of answers: the whole network, with everything guessed marked as a guess."""

from typing import Any

from wintertight.coach.card import SCHEMA, Card
from wintertight.coach.intake.answers import Answers
from wintertight.coach.intake.draft import Draft, feet
from wintertight.coach.intake.fixtures import place_fixtures
from wintertight.coach.intake.hot_water import lay_hot_water
from wintertight.coach.intake.questions import QUESTIONS, standing
from wintertight.coach.intake.supply import lay_supply
from wintertight.coach.intake.trunks import Branch, Trunk, lay_branches, lay_home_runs
from wintertight.coach.intake.unseen import add_unseen
from wintertight.coach.intake.waste import place_waste
from wintertight.coach.kinds import ASKED_FOR
from wintertight.coach.plumbing import check_plumbing
from wintertight.coach.quantity import read_plain
from wintertight.units import FOOT_M

TRUNK_ACROSS_FT = {"cold": 1.5, "hot": 1.8}
"""Where trunks run, from the road side [ft]; common practice."""

TRUNK_FT, LOW_FT = 0.1, -0.7
"""Heights of trunks and of low points above the floor, or above the bay below it [ft]; common
practice."""

LENGTH_SPREAD = "15 %"
"""Half-width of the band of a coach's length that nobody gave [1]; common practice."""


def made_card(
    answers: Answers,
    card_id: str,
    name: str,
    site: str | None = None,
    product: str | None = None,
) -> Card:
    """Make a card.

    Args:
        answers: what is known; what is missing is taken as is usual for the shape, and stands on
            the card as guessed, or as not looked at.
        card_id: the shop's number of the coach.
        name: what people call it.
        site: where it spends the winter.
        product: what it is to be filled with, by its name in the shop's list.

    Returns:
        The card; its plumbing holds together.

    Raises:
        CardError, CardTangled: an answer is none that its question takes.
    """
    known = standing(answers)
    shape = known.shape
    length_ft = shape.length_ft
    if known.known("length"):
        length_ft = read_plain(known.best("length"), "length") / FOOT_M
    draft = Draft(length_ft, shape.width_ft)
    cold_root = lay_supply(draft, known)
    hot_root, heater_branches = lay_hot_water(draft, known)
    fixtures = place_fixtures(draft, known, bool(hot_root))
    cold, hot = _low_points(draft, known, cold_root, hot_root)
    _lay(draft, known, "cold", cold_root, [*heater_branches, *fixtures.cold, *cold])
    if hot_root:
        _lay(draft, known, "hot", hot_root, [*fixtures.hot, *hot])
    place_waste(draft, known)
    add_unseen(draft, known)
    filled = {"antifreeze": {"product": product}} if product else {}
    card = Card.model_validate({**_written(draft, known, card_id, name, site), **filled})
    check_plumbing(card)
    return card


def _low_points(
    draft: Draft, answers: Answers, cold_root: str, hot_root: str
) -> tuple[list[Branch], list[Branch]]:
    """Place the low points beside where the trunks begin."""
    how = answers.best("low points")
    found: dict[str, list[Branch]] = {"cold": [], "hot": []}
    for side, root in (("cold", cold_root), ("hot", hot_root)):
        if not root or how == "none" or (side == "hot" and how != "two"):
            continue
        along = draft.at[root][0] + 1.0
        spot = (along, TRUNK_ACROSS_FT[side], LOW_FT - answers.shape.depth_ft)
        called = f"{side} low point"
        low = draft.fitting(f"low-{side}", "low point", spot, "outside", name=called)
        found[side].append(Branch(f"low-{side}-stub", low, "outside"))
    return found["cold"], found["hot"]


def _lay(draft: Draft, answers: Answers, side: str, root: str, branches: list[Branch]) -> None:
    """Lay all branches of one side."""
    height = TRUNK_FT - answers.shape.depth_ft
    if answers.best("branches") == "manifold":
        along, across, _ = draft.at[root]
        spot = (along - 0.8, across, height)
        called = f"{side} manifold"
        manifold = draft.fitting(f"{side}-manifold", "manifold", spot, "supply", name=called)
        draft.line(f"{side}-main", root, manifold, "supply")
        lay_home_runs(draft, manifold, branches)
    else:
        lay_branches(draft, Trunk(side, root, TRUNK_ACROSS_FT[side], height), branches)


def _written(
    draft: Draft, answers: Answers, card_id: str, name: str, site: str | None
) -> dict[str, Any]:
    """Give the card as a file writes it."""
    shape = answers.shape
    low = answers.best("design low")
    place = {"name": site or "storage site", **({"design_low": low} if low else {})}
    length: Any = {"guessed": feet(shape.length_ft), "spread": LENGTH_SPREAD}
    return {
        "schema": SCHEMA,
        "id": card_id,
        "name": name,
        "coach": {
            "kind": shape.kind,
            "length": answers.best("length") or length,
            "floor_above_ground": {"guessed": f"{shape.floor_in:g} in", "spread": "20 %"},
        },
        "site": place,
        "looked_for": {"absent": _absent(draft, answers)},
        "line_defaults": {"size": "1/2 in", "material": answers.best("pipe")},
        "compartment": _rooms(answers),
        "fitting": draft.fittings,
        "line": draft.lines,
    }


def _absent(draft: Draft, answers: Answers) -> list[str]:
    """Give the kinds that somebody looked for and did not find."""
    there = {entry["kind"] for entry in draft.fittings}
    moot = {q.key for q in QUESTIONS.values() if not q.asked_if(answers)}
    asked_of = {
        kind: [q.key for q in QUESTIONS.values() if kind in q.settles] for kind in ASKED_FOR
    }
    # A three-way valve may stand at the pump or at the heater: both must have been seen.
    asked_of["three-way valve"].append("bypass")
    return [
        kind
        for kind in ASKED_FOR
        if kind not in there
        and all(answers.known(key) or key in moot for key in asked_of[kind])
        and not (moot & set(asked_of[kind]) and _moot_by_guess(answers, asked_of[kind]))
    ]


def _moot_by_guess(answers: Answers, keys: list[str]) -> bool:
    """Tell whether a question was not asked because of what is only usual for the shape."""
    gates = {"baths", "heater", "appliances", "outside"}
    open_gates = {gate for gate in gates if not answers.known(gate)}
    return bool(open_gates) and any(
        not QUESTIONS[key].asked_if(answers) and not answers.known(key) for key in keys
    )


def _rooms(answers: Answers) -> list[dict[str, Any]]:
    """Give the compartments."""
    belly = answers.best("belly")
    return [
        {"id": "supply", "name": "beside the pump", "heated": True},
        {"id": "galley", "name": "galley cabinet", "heated": True},
        {"id": "bath", "name": "bath and its walls", "heated": True},
        {
            "id": "belly",
            "name": "belly under the floor",
            "heated": belly == "closed and heated" and answers.known("belly"),
            "closed": belly != "open",
        },
        {"id": "outside", "name": "outside, behind small doors", "heated": False, "closed": True},
    ]

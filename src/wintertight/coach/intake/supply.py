"""From the fresh tank and the city inlet to where the cold trunk begins."""

from wintertight.coach.intake.answers import Answers
from wintertight.coach.intake.draft import Draft, Spot

PANEL_POSITIONS = [
    {"name": "TANK", "use": "normal", "joins": [["tank", "pump"]]},
    {"name": "ANTIFREEZE", "use": "antifreeze", "joins": [["inlet", "pump"]]},
    {"name": "TOWN", "use": "city water", "joins": [["inlet", "system"]]},
    {"name": "FILL", "use": "tank fill", "joins": [["inlet", "tank"]]},
]
"""What a service panel's handle usually can be set to; common practice. The names are ours: write
down what is at the handle."""

SUCTION_POSITIONS = [
    {"name": "TANK", "use": "normal", "joins": [["common", "left"]]},
    {"name": "HOSE", "use": "antifreeze", "joins": [["common", "right"]]},
]
"""What a three-way valve at a pump can be set to; common practice."""


def lay_supply(draft: Draft, answers: Answers) -> str:
    """Lay the supply.

    Args:
        draft: the card under way.
        answers: what is known.

    Returns:
        The tee at which the cold side begins.
    """
    shape = answers.shape
    along, across = shape.supply[0] * draft.length_ft, shape.supply[1]
    deep = -shape.depth_ft
    draft.fitting(
        "fresh-tank",
        "fresh tank",
        (along + 1.5, draft.width_ft / 2.0, deep - 0.7),
        "belly",
        volume=_fresh_tank(answers),
    )
    _pump(draft, answers, (along, across, deep + 0.4))
    tee = draft.fitting("city-tee", "tee", (along - 0.4, across - 0.4, deep + 0.35), "supply")
    behind = _treated(draft, answers, (along - 0.6, across + 0.2, deep + 0.6))
    chain = [("", "pump.out"), *behind]
    if answers.yes("accumulator"):
        spot = (along - 0.5, across - 0.1, deep + 0.2)
        acc_tee = draft.fitting("accumulator-tee", "tee", spot, "supply")
        draft.fitting("accumulator", "accumulator", (along - 0.5, across, deep + 0.7), "supply")
        draft.line("accumulator-line", acc_tee, "accumulator", "supply")
        chain.append((acc_tee, acc_tee))
    draft.chain("pump-out", [*chain, (tee, tee)], "supply")
    _city_inlet(draft, answers, tee)
    return tee


def _fresh_tank(answers: Answers) -> str | dict[str, str]:
    if answers.known("fresh tank"):
        return answers.best("fresh tank")
    return {"guessed": f"{answers.shape.fresh_gal:g} gal", "spread": "30 %"}


def _pump(draft: Draft, answers: Answers, spot: Spot) -> None:
    """Place strainer and pump, and lay what leads to them from tank and antifreeze."""
    along, across, height = spot
    draft.fitting("strainer", "strainer", (along + 0.4, across, height), "supply")
    big = answers.shape.fresh_gal >= BIG_TANK_GAL
    draft.fitting(
        "pump",
        "demand pump",
        spot,
        "supply",
        flow={"guessed": "4 gal/min" if big else "3 gal/min", "spread": "20 %"},
        cut_off={"guessed": "55 psi", "spread": "15 %"},
    )
    draft.line("suction", "strainer.out", "pump.in", "supply")
    how = answers.best("antifreeze inlet")
    if how == "service panel":
        panel = (along, 0.4, height + 0.8)
        draft.fitting(
            "panel",
            "service panel",
            panel,
            "outside",
            role="pump suction",
            name="service panel",
            positions=PANEL_POSITIONS,
        )
        draft.line("tank-line", "fresh-tank", "panel.tank", "belly")
        draft.line("panel-suction", "panel.pump", "strainer.in", "supply")
    elif how == "three-way valve":
        valve = (along + 1.0, across, height)
        draft.fitting(
            "suction-valve",
            "three-way valve",
            valve,
            "supply",
            role="pump suction",
            name="valve at the pump",
            positions=SUCTION_POSITIONS,
        )
        draft.fitting("jug-hose", "antifreeze hose", (along + 1.0, across - 0.6, height), "supply")
        draft.line("tank-line", "fresh-tank", "suction-valve.left", "belly")
        draft.line("hose", "jug-hose", "suction-valve.right", "supply", length=HOSE)
        draft.line("suction-in", "suction-valve.common", "strainer.in", "supply")
    elif how == "hose with a valve":
        tee = draft.fitting("suction-tee", "tee", (along + 0.8, across, height), "supply")
        _two_way(draft, "tank-valve", "tank suction", (along + 1.2, across + 0.3, height))
        _two_way(draft, "jug-valve", "antifreeze inlet", (along + 1.2, across - 0.3, height))
        draft.fitting("jug-hose", "antifreeze hose", (along + 1.2, across - 0.8, height), "supply")
        draft.line("tank-line", "fresh-tank", "tank-valve", "belly")
        draft.line("suction-a", "tank-valve", tee, "supply")
        draft.line("hose", "jug-hose", "jug-valve", "supply", length=HOSE)
        draft.line("suction-b", "jug-valve", tee, "supply")
        draft.line("suction-in", tee, "strainer.in", "supply")
    else:
        draft.line("tank-line", "fresh-tank", "strainer.in", "belly")


HOSE = {"guessed": "3 ft", "spread": "20 %"}
"""An antifreeze hose reaches from the pump into a jug; common practice."""

BIG_TANK_GAL = 80.0
"""Coaches with a tank from here on usually have a larger pump [gal]; common practice."""


def _two_way(draft: Draft, name: str, role: str, spot: Spot) -> None:
    draft.fitting(name, "ball valve", spot, "supply", role=role, name=NAMES[name])


NAMES = {"tank-valve": "valve from the fresh tank", "jug-valve": "valve from the antifreeze hose"}


def _treated(draft: Draft, answers: Answers, spot: Spot) -> list[tuple[str, str]]:
    """Place what cleans the water behind the pump; give its ports in and out, in order."""
    along, across, height = spot
    kinds = answers.several("water treatment")
    ports = []
    for n, (name, kind) in enumerate(
        [("filter", "filter housing"), ("softener", "softener"), ("uv", "UV sleeve")]
    ):
        if kind in kinds:
            draft.fitting(name, kind, (along - 0.7 * n, across, height), "supply")
            ports.append((f"{name}.in", f"{name}.out"))
    return ports


def _city_inlet(draft: Draft, answers: Answers, tee: str) -> None:
    """Place the city inlet; where nobody has looked it is on the plan as usual."""
    if answers.known("city inlet") and not answers.yes("city inlet"):
        if "panel" in draft.at:
            draft.line("panel-out", "panel.system", tee, "supply")
            _panel_needs_inlet(draft)
        return
    along = draft.at["pump"][0]
    height = draft.at["pump"][2] + 1.0
    draft.fitting("city-inlet", "city inlet", (along + 0.3, 0.1, height), "outside")
    if "panel" in draft.at:
        draft.line("panel-in", "city-inlet", "panel.inlet", "outside")
        draft.line("panel-out", "panel.system", tee, "supply")
    else:
        draft.line("city-line", "city-inlet", tee, "supply")


def _panel_needs_inlet(draft: Draft) -> None:
    """Give a panel without a city inlet the hose of its antifreeze."""
    along, across, height = draft.at["panel"]
    draft.fitting("jug-hose", "antifreeze hose", (along, across, height - 0.6), "outside")
    draft.line("panel-in", "jug-hose", "panel.inlet", "outside")

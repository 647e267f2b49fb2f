"""The water heater, its bypass, and where the hot trunk begins."""

from wintertight.coach.intake.answers import Answers
from wintertight.coach.intake.draft import Draft, Spot
from wintertight.coach.intake.questions import TANKS
from wintertight.coach.intake.trunks import Branch
from wintertight.units import GALLON_M3

COLD_POSITIONS = [
    {"name": "HEATER", "use": "normal", "joins": [["common", "left"]]},
    {"name": "BYPASS", "use": "heater bypass", "joins": [["common", "right"]]},
]
"""What a three-way valve at a heater's cold side can be set to; common practice."""

SPREAD_OF_A_TANK = "10 %"
"""Half-width of the band of a heater's content that its label gives [1]; common practice."""


def lay_hot_water(draft: Draft, answers: Answers) -> tuple[str, list[Branch]]:
    """Place the heater and what belongs to it.

    Args:
        draft: the card under way.
        answers: what is known.

    Returns:
        The tee at which the hot side begins, "" where there is none; and the branches of the cold
        side that feed the heater.
    """
    heater = answers.best("heater")
    if heater == "no heater":
        return "", []
    shape = answers.shape
    deep = -shape.depth_ft
    spot = (shape.heater[0] * draft.length_ft, shape.heater[1], deep + 0.3)
    if heater in TANKS:
        hot, cold = _tank(draft, answers, spot)
    else:
        hot, cold = _without_tank(draft, heater, spot)
    if "tempering valve" in answers.several("mixing"):
        hot, mixed = _tempered(draft, hot)
        cold = [*cold, mixed]
    return hot, cold


def _tank(draft: Draft, answers: Answers, spot: Spot) -> tuple[str, list[Branch]]:
    along, across, height = spot
    size = answers.best("heater")
    gallons = f"{TANKS[size] / GALLON_M3:.0f} gal"
    told = answers.known("heater")
    draft.fitting(
        "heater",
        "tank heater",
        (along + 1.0, across, height),
        "outside",
        volume={"told": gallons, "spread": SPREAD_OF_A_TANK}
        if told
        else {"guessed": gallons, "spread": "40 %"},
        tank=answers.best("heater tank") if answers.known("heater tank") else None,
        heat=["burner", "element"],
    )
    hot = draft.fitting("heater-hot-tee", "tee", (along, across + 0.7, height + 0.7), "galley")
    bypass = answers.best("bypass")
    if bypass == "three valves":
        tee = (along, across + 0.7, height - 0.1)
        cold = draft.fitting("heater-cold-tee", "tee", tee, "galley")
        valves = {
            "heater-cold-valve": ("heater cold", "valve into the heater", (0.4, 0.6, 0.0)),
            "bypass-valve": ("heater bypass", "bypass valve", (0.0, 0.7, 0.3)),
            "heater-hot-valve": ("heater hot", "valve out of the heater", (0.4, 0.6, 0.85)),
        }
        for name, (role, called, (dx, dy, dz)) in valves.items():
            place = (along + dx, across + dy, height + dz)
            draft.fitting(name, "ball valve", place, "galley", role=role, name=called)
        draft.chain(
            "heater-cold",
            [("", cold), ("heater-cold-valve", "heater-cold-valve"), ("heater.cold", "")],
            "galley",
        )
        draft.chain("bypass", [("", cold), ("bypass-valve", "bypass-valve"), (hot, "")], "galley")
        draft.chain(
            "heater-hot",
            [("", "heater.hot"), ("heater-hot-valve", "heater-hot-valve"), (hot, "")],
            "galley",
        )
        return hot, [Branch("heater-feed", cold, "galley")]
    if bypass == "one valve and checks":
        draft.fitting(
            "heater-cold-valve",
            "three-way valve",
            (along + 0.2, across + 0.7, height),
            "galley",
            role="heater cold",
            name="bypass valve",
            positions=COLD_POSITIONS,
        )
        check = (along + 0.6, across + 0.4, height + 1.15)
        draft.fitting("heater-check", "check valve", check, "galley", name="check of the heater")
        draft.line("heater-cold", "heater-cold-valve.left", "heater.cold", "galley")
        draft.line("bypass", "heater-cold-valve.right", hot, "galley")
        draft.chain(
            "heater-hot",
            [("", "heater.hot"), ("heater-check.in", "heater-check.out"), (hot, "")],
            "galley",
        )
        return hot, [Branch("heater-feed", "heater-cold-valve.common", "galley")]
    draft.line("heater-hot", "heater.hot", hot, "galley")
    return hot, [Branch("heater-feed", "heater.cold", "galley")]


def _without_tank(draft: Draft, heater: str, spot: Spot) -> tuple[str, list[Branch]]:
    along, across, height = spot
    if heater == "on-demand heater":
        place, room = (along, across - 0.3, height + 0.9), "outside"
        heat, name = ["burner"], None
    else:
        place, room = (along, across, height), "supply"
        heat, name = ["burner", "element"], "coil of the hydronic heater"
    draft.fitting("heater", heater, place, room, heat=heat, name=name)
    hot = draft.fitting("heater-hot-tee", "tee", (along - 0.5, across + 0.4, height), room)
    draft.line("heater-hot", "heater.hot", hot, room)
    return hot, [Branch("heater-feed", "heater.cold", room)]


def _tempered(draft: Draft, hot: str) -> tuple[str, Branch]:
    """Put a tempering valve behind the heater."""
    along, across, height = draft.at[hot]
    draft.fitting("tempering", "tempering valve", (along - 0.5, across, height + 0.2), "galley")
    tee = draft.fitting("tempered-tee", "tee", (along - 0.9, across, height), "galley")
    draft.line("tempering-hot", hot, "tempering.hot", "galley")
    draft.line("tempering-mixed", "tempering.mixed", tee, "galley")
    return tee, Branch("tempering-cold", "tempering.cold", "galley")

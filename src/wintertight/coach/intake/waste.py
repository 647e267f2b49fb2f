"""What water drains to, and what hangs on the hose at the city inlet."""

from wintertight.coach.intake.answers import Answers
from wintertight.coach.intake.draft import Draft


def place_waste(draft: Draft, answers: Answers) -> None:
    """Place tanks, what empties or rinses them, and what is carried along for the hose."""
    shape = answers.shape
    deep = -shape.depth_ft - 1.0
    middle = 0.5 * (shape.galley[0] + shape.bath[0]) * draft.length_ft
    draft.fitting(
        "gray-tank",
        "gray tank",
        (middle, 0.6 * draft.width_ft, deep),
        "belly",
        volume={"guessed": f"{shape.gray_gal:g} gal", "spread": "30 %"},
    )
    if "toilet" in draft.at:
        under = draft.at["toilet"]
        name = "cassette of the toilet" if answers.best("toilet") == CASSETTE else None
        draft.fitting(
            "black-tank",
            "black tank",
            (under[0], under[1], deep),
            "belly",
            volume={"guessed": f"{shape.black_gal:g} gal", "spread": "30 %"},
            name=name,
        )
    kinds = answers.several("waste side")
    valves = (0.75 * shape.bath[0] * draft.length_ft, 0.3, deep + 0.4)
    if "tank rinse" in kinds:
        draft.fitting("rinse", "tank rinse", valves, "outside", name="black tank rinse")
    if "macerator" in kinds:
        draft.fitting("macerator", "macerator", (valves[0] + 1.0, *valves[1:]), "outside")
    for name, kind in ON_THE_HOSE.items():
        if kind in answers.several("on the hose"):
            draft.unplaced(name, kind)


CASSETTE = "cassette toilet"

ON_THE_HOSE = {
    "regulator": "pressure regulator",
    "supply-hose": "supply hose",
    "hose-filter": "outside filter",
}
"""By id: what is carried along and holds water."""

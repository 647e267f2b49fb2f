"""Fixtures and appliances: where each stands, what it drains to, and the branches that feed it."""

from dataclasses import dataclass, field
from typing import Any

from wintertight.coach.intake.answers import Answers
from wintertight.coach.intake.draft import Draft, Spot
from wintertight.coach.intake.questions import BATHS
from wintertight.coach.intake.trunks import Branch

TAP_FT, SHOWER_FT, WASHER_FT, TOILET_FT, OUTSIDE_FT = 2.9, 3.6, 2.8, 0.8, 1.4
"""Heights above the floor at which water reaches each [ft]; common practice."""


@dataclass
class Fixtures:
    """Fixtures under way.

    Attributes:
        draft: the card under way.
        hot_water: whether there is any.
        cold, hot: branches so far.
    """

    draft: Draft
    hot_water: bool
    cold: list[Branch] = field(default_factory=list)
    hot: list[Branch] = field(default_factory=list)

    def two_sided(self, name: str, kind: str, spot: Spot, room: str, /, **more: Any) -> None:
        """Place a fixture with a hot and a cold side."""
        only = {} if self.hot_water else {"only": "cold"}
        self.draft.fitting(name, kind, spot, room, **more, **only)
        self.cold.append(Branch(f"{name}-cold", f"{name}.cold", room))
        if self.hot_water:
            self.hot.append(Branch(f"{name}-hot", f"{name}.hot", room))

    def one_sided(self, name: str, kind: str, spot: Spot, room: str, /, **more: Any) -> None:
        """Place a fixture with one line."""
        self.draft.fitting(name, kind, spot, room, **more)
        self.cold.append(Branch(f"{name}-line", name, room))

    def trap(self, name: str, below: str, spot: Spot, room: str) -> str:
        """Place the trap of a fixture; give its id."""
        at = (spot[0], spot[1], spot[2])
        return self.draft.fitting(name, "trap", at, room, name=below, drains_to="gray-tank")


def place_fixtures(draft: Draft, answers: Answers, hot_water: bool) -> Fixtures:  # noqa: FBT001 - there is, or there is none
    """Place everything that water comes out of.

    Args:
        draft: the card under way.
        answers: what is known.
        hot_water: whether there is hot water.

    Returns:
        The fixtures' branches.
    """
    fixtures = Fixtures(draft, hot_water)
    _galley(fixtures, answers)
    _baths(fixtures, answers)
    _fridge(fixtures, answers)
    _laundry(fixtures, answers)
    _outside(fixtures, answers)
    _dead_ends(fixtures, answers)
    return fixtures


def _spot(draft: Draft, place: tuple[float, float], height_ft: float, aft_ft: float = 0.0) -> Spot:
    """Give a place by its share of the length; what stands beside it is moved by some feet."""
    along = min(max(place[0] * draft.length_ft + aft_ft, 0.0), draft.length_ft)
    return along, min(place[1], draft.width_ft - 0.2), height_ft


def _galley(fixtures: Fixtures, answers: Answers) -> None:
    draft, place = fixtures.draft, answers.shape.galley
    if answers.yes("galley slide"):
        draft.in_slide |= {"kitchen", "dishwasher", "membrane"}
    trap = fixtures.trap(
        "kitchen-trap", "trap under the galley sink", _spot(draft, place, 1.0), "galley"
    )
    sink = _spot(draft, place, TAP_FT)
    fixtures.two_sided("kitchen", "kitchen tap", sink, "galley", drains_to=trap)
    if "membrane filter" in answers.several("water treatment"):
        spot = _spot(draft, place, 0.9, 0.4)
        fixtures.one_sided("membrane", "membrane filter", spot, "galley")
    if "dishwasher" in answers.several("appliances"):
        spot = _spot(draft, place, 0.6, 1.0)
        draft.fitting("dishwasher", "dishwasher", spot, "galley", drains_to="gray-tank")
        side = fixtures.hot if fixtures.hot_water else fixtures.cold
        side.append(Branch("dishwasher-line", "dishwasher", "galley"))


def _baths(fixtures: Fixtures, answers: Answers) -> None:
    draft, shape = fixtures.draft, answers.shape
    count = BATHS[answers.best("baths")]
    if not count:
        return
    _bath(fixtures, answers, shape.bath, "")
    _shower(fixtures, answers)
    if count > 1:
        _bath(fixtures, answers, shape.second, "-2")
    if answers.best("baths") == "two baths":
        spot = _spot(draft, shape.second, SHOWER_FT, -1.5)
        low = (spot[0], spot[1], -0.3)
        trap = fixtures.trap("shower-2-trap", "trap under the second shower", low, "belly")
        fixtures.two_sided("shower-2", "shower", spot, "bath", drains_to=trap, name="second shower")


def _bath(fixtures: Fixtures, answers: Answers, place: tuple[float, float], which: str) -> None:
    draft, second = fixtures.draft, " of the second bath" if which else ""
    names = {"name": f"lavatory tap{second}"} if which else {}
    trap = fixtures.trap(
        f"lavatory{which}-trap",
        f"trap under the lavatory{second}",
        _spot(draft, place, 1.0),
        "bath",
    )
    basin = _spot(draft, place, TAP_FT)
    fixtures.two_sided(f"lavatory{which}", "lavatory tap", basin, "bath", drains_to=trap, **names)
    toilet = answers.best("toilet")
    spot = _spot(draft, (place[0], place[1] - 1.8), TOILET_FT, 1.2)
    called = {"name": f"toilet{second}"} if which else {}
    fixtures.one_sided(f"toilet{which}", toilet, spot, "bath", drains_to="black-tank", **called)
    if answers.yes("sprayer") and not which:
        at = (spot[0], spot[1] + 0.5, spot[2] + 0.5)
        fixtures.one_sided("sprayer", "bidet sprayer", at, "bath")


def _shower(fixtures: Fixtures, answers: Answers) -> None:
    draft, place = fixtures.draft, answers.shape.bath
    spot = _spot(draft, (place[0], place[1] + 1.0), SHOWER_FT, 1.8)
    low = (spot[0], spot[1], -0.3)
    trap = fixtures.trap("shower-trap", "trap under the shower pan", low, "belly")
    fixtures.two_sided("shower", "shower", spot, "bath", drains_to=trap)
    if "recirculating diverter" in answers.several("mixing") and fixtures.hot_water:
        _water_saver(fixtures, spot)
    for n, kind in enumerate(answers.several("tub")):
        at = (min(spot[0] + 1.6 + n, draft.length_ft), spot[1] - 0.6, 1.9)
        under = (at[0], at[1], -0.25)
        below = fixtures.trap(f"{kind}-trap", f"trap under the {kind}", under, "belly")
        fixtures.two_sided(kind, kind, at, "bath", drains_to=below)


def _water_saver(fixtures: Fixtures, spot: Spot) -> None:
    """Lay a diverter between both sides of the shower, teed off close before it."""
    draft, (along, across, _) = fixtures.draft, spot
    draft.fitting("diverter", "recirculating diverter", (along, across - 0.6, 1.0), "bath")
    for side, branches in (("cold", fixtures.cold), ("hot", fixtures.hot)):
        aside = 0.4 if side == "hot" else 0.0
        tee = draft.fitting(f"saver-{side}-tee", "tee", (along, across - 0.9 + aside, 0.6), "bath")
        branches[:] = [b for b in branches if b.name != f"shower-{side}"]
        branches.append(Branch(f"saver-{side}-feed", tee, "bath"))
        draft.line(f"shower-{side}", tee, f"shower.{side}", "bath")
        draft.line(f"saver-{side}", tee, f"diverter.{side}", "bath")


def _fridge(fixtures: Fixtures, answers: Answers) -> None:
    """Lay the line of the refrigerator: shut-off, filter, and what it feeds."""
    draft, place = fixtures.draft, answers.shape.fridge
    wanted = [k for k in ("ice maker", "door dispenser") if k in answers.several("appliances")]
    if not wanted:
        return
    chain: list[tuple[str, str]] = []
    if answers.yes("fridge shut-off"):
        spot = _spot(draft, place, 0.4, -0.6)
        valve = draft.fitting(
            "fridge-valve",
            "ball valve",
            spot,
            "galley",
            role="branch shut-off",
            name="shut-off of the refrigerator",
        )
        chain.append((valve, valve))
    if answers.yes("fridge filter"):
        draft.fitting("fridge-filter", "fridge filter", _spot(draft, place, 1.0), "galley")
        chain.append(("fridge-filter.in", "fridge-filter.out"))
    ends = {"ice maker": ("ice-maker", 4.6), "door dispenser": ("dispenser", 3.6)}
    for n, kind in enumerate(wanted):
        name, height = ends[kind]
        draft.fitting(name, kind, _spot(draft, place, height, 0.3 * n), "galley")
    names = [ends[kind][0] for kind in wanted]
    if len(names) > 1:
        tee = draft.fitting("fridge-tee", "tee", _spot(draft, place, 1.4), "galley")
        chain.append((tee, tee))
        for name in names:
            draft.line(f"{name}-line", tee, name, "galley")
    else:
        chain.append((names[0], names[0]))
    draft.chain("fridge-line", chain, "galley")
    fixtures.cold.append(Branch("fridge-feed", chain[0][0], "galley"))


def _laundry(fixtures: Fixtures, answers: Answers) -> None:
    draft, place = fixtures.draft, answers.shape.laundry
    if "washer" in answers.several("appliances"):
        spot = _spot(draft, place, WASHER_FT)
        fixtures.two_sided("washer", "washer", spot, "bath", drains_to="gray-tank")


def _outside(fixtures: Fixtures, answers: Answers) -> None:
    draft, shape = fixtures.draft, answers.shape
    kinds = answers.several("outside")
    along = shape.outside * draft.length_ft
    height = OUTSIDE_FT - shape.depth_ft
    if "outside shower" in kinds:
        _outside_shower(fixtures, answers, (along, 0.1, height))
    if "outside kitchen" in kinds:
        spot = (along, draft.width_ft - 0.4, 1.6)
        draft.fitting("outside-kitchen", "outside kitchen", spot, "outside", only="cold")
        fixtures.cold.append(Branch("outside-kitchen-line", "outside-kitchen.cold", "outside"))
    if "spray port" in kinds:
        spot = (min(along + 2.0, draft.length_ft), 0.2, height - 0.2)
        fixtures.one_sided("spray-port", "spray port", spot, "outside")


def _outside_shower(fixtures: Fixtures, answers: Answers, spot: Spot) -> None:
    draft = fixtures.draft
    fixtures.two_sided("outside-shower", "outside shower", spot, "outside")
    if not answers.yes("outside shut-off"):
        return
    for side, branches in (("cold", fixtures.cold), ("hot", fixtures.hot)):
        if side == "hot" and not fixtures.hot_water:
            continue
        aside = 0.4 if side == "hot" else 0.0
        valve = draft.fitting(
            f"outside-{side}-valve",
            "ball valve",
            (spot[0], spot[1] + 1.2 + aside, spot[2] - 0.9),
            "galley",
            role="branch shut-off",
            name=f"{side} shut-off of the outside shower",
        )
        branches[:] = [b for b in branches if b.name != f"outside-shower-{side}"]
        branches.append(Branch(f"outside-{side}-feed", valve, "belly"))
        draft.line(f"outside-shower-{side}", valve, f"outside-shower.{side}", "outside")


def _dead_ends(fixtures: Fixtures, answers: Answers) -> None:
    draft, shape = fixtures.draft, answers.shape
    kinds = answers.several("dead ends")
    if "prepared stub" in kinds:
        spot = _spot(draft, shape.laundry, 2.6, 0.5)
        called = "stub for a washer"
        fixtures.one_sided("stub", "prepared stub", spot, "bath", name=called)
    if "capped tee" in kinds:
        far = max(shape.bath[0], shape.galley[0], shape.supply[0])
        spot = _spot(draft, (far, 1.5), 0.1 - shape.depth_ft, 0.9)
        fixtures.one_sided("capped-tee", "capped tee", spot, "belly")

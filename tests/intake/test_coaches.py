"""Three coaches of coaches.md, typed as an adviser hears them."""

import shlex
from dataclasses import dataclass
from typing import Any

import pytest

from tests.doors.door import Door
from tests.intake.conftest import Adviser
from tests.intake.keys import HERE, MOST_S, as_typed, script, seconds
from wintertight.coach.intake.questions import QUESTIONS
from wintertight.coach.kinds import ASKED_FOR
from wintertight.units import FOOT_M

PRODUCT = "Heron pink -50"

# From the words of coaches.md, not from a run.
OLD_TRAILER: dict[str, Any] = {
    "shape": "short travel trailer",
    "length": "18 ft",
    "design low": "-22F",
    "heater": "tank of 6 gal",
    "bypass": "three valves",
    "baths": "one bath",
    "appliances": [],
    "outside": ["outside shower"],
    "antifreeze inlet": "no inlet",
    "water treatment": [],
    "toilet": "gravity toilet",
    "tub": [],
    "sprayer": "no",
    "dead ends": ["capped tee"],
    "mixing": [],
    "waste side": [],
    "accumulator": "no",
    "branches": "tees",
    "low points": "two",
    "city inlet": "yes",
    "outside shut-off": "no",
    "galley slide": "no",
    "belly": "open",
    "pipe": "PEX",
    "on the hose": ["pressure regulator", "supply hose"],
    "fresh tank": "25 gal",
}
BUNKHOUSE: dict[str, Any] = {
    "shape": "long bunkhouse trailer",
    "length": "33 ft",
    "design low": "-10F",
    "heater": "tank of 10 gal",
    "bypass": "one valve and checks",
    "baths": "one bath",
    "appliances": ["ice maker", "door dispenser"],
    "outside": ["outside shower", "outside kitchen"],
    "antifreeze inlet": "hose with a valve",
    "water treatment": ["filter housing"],
    "toilet": "gravity toilet",
    "tub": ["tub"],
    "sprayer": "no",
    "dead ends": ["prepared stub"],
    "mixing": [],
    "waste side": ["tank rinse"],
    "fridge filter": "yes",
    "accumulator": "yes",
    "branches": "tees",
    "low points": "two",
    "city inlet": "yes",
    "outside shut-off": "yes",
    "fridge shut-off": "yes",
    "galley slide": "yes",
    "belly": "closed and heated",
    "pipe": "PEX",
    "heater tank": "steel with anode",
    "on the hose": ["pressure regulator", "supply hose", "outside filter"],
    "fresh tank": "50 gal",
}
BIG_MOTORHOME: dict[str, Any] = {
    "shape": "rear-engine motorhome",
    "length": "42 ft",
    "heater": "hydronic coil",
    "baths": "one and a half",
    "appliances": ["ice maker", "dishwasher", "washer"],
}


@dataclass(frozen=True)
class Coach:
    """A script, and what must stand in the answers after it."""

    name: str
    answers: dict[str, Any]
    left_open: list[str]
    stage: str
    lines: int
    keys: int
    feet: float
    has: frozenset[str]
    has_not: frozenset[str]

    def __str__(self) -> str:
        """Name the case."""
        return self.name


COACHES = [
    Coach(
        "old-trailer", OLD_TRAILER, ["heater tank"], "walk-around", 29, 91, 18.0,
        frozenset({"outside shower", "tank heater", "capped tee", "gravity toilet", "city inlet"}),
        frozenset({"ice maker", "washer", "accumulator", "tub", "tank rinse", "antifreeze hose"}),
    ),
    Coach(
        "bunkhouse", BUNKHOUSE, [], "walk-around", 31, 90, 33.0,
        frozenset({"ice maker", "door dispenser", "outside kitchen", "tub", "prepared stub"}),
        frozenset({"whirlpool", "washer", "softener", "spray port", "macerator"}),
    ),
    Coach(
        "big-motorhome", BIG_MOTORHOME, ["design low", "outside"], "phone", 9, 27, 42.0,
        frozenset({"hydronic coil", "washer", "dishwasher", "ice maker"}),
        frozenset({"door dispenser", "on-demand heater"}),
    ),
]  # fmt: skip


@pytest.mark.parametrize("coach", COACHES, ids=str)
def test_what_was_told_is_what_is_kept(adviser: Adviser, coach: Coach) -> None:
    """Guards that an adviser's keys, at the program itself, become the description's answers."""
    done = adviser.as_program(as_typed(script(coach.name)).encode())
    assert (done.status, done.err) == (0, "")
    assert adviser.file() == {
        "schema": "wintertight/answers/1",
        "answers": coach.answers,
        "left_open": coach.left_open,
        "stage": coach.stage,
    }
    _, _, following = done.out.rpartition("\nWritten: ")[2].partition(" Next: wintertight ")
    assert following.startswith(f"plan {adviser.card} --product NAME")
    assert ("--low" in following) == ("design low" in coach.left_open)


@pytest.mark.parametrize("coach", COACHES, ids=str)
def test_the_next_command_works(adviser: Adviser, door: Door, coach: Coach) -> None:
    """Guards that what the talk ends with, with a product put in, is a plan."""
    done = adviser(as_typed(script(coach.name)))
    command = done.out.rstrip("\n").rpartition(" Next: wintertight ")[2]
    words = [PRODUCT if word == "NAME" else word for word in shlex.split(command)]
    planned = door(*words, "--quick", "--json").object()
    assert planned["coach"]["id"] == "HL-301"
    said = {step["setting"]: step["setting_text"] for step in planned["steps"]}
    assert said.get("BYPASS") == ("BYPASS" if coach.name == "bunkhouse" else None)
    # A card of which nobody has seen half is never told safe.
    assert (planned["verdict"] == "unproven") >= (coach.stage == "phone")


@pytest.mark.parametrize("coach", COACHES, ids=str)
def test_each_line_answers_what_is_asked(adviser: Adviser, coach: Coach) -> None:
    """Guards that no script asks more of an adviser than it says: a line for each question."""
    asked = [line.to for line in script(coach.name) if line.to in QUESTIONS]
    assert set(asked) == set(coach.answers) | set(coach.left_open)
    assert len(asked) == len(set(asked))
    done = adviser(as_typed(script(coach.name)))
    assert done.status == 0
    assert done.out.count("\nQuestion ") == len(asked)
    assert (", around the coach\n" in done.out) == (coach.stage == "walk-around")


@pytest.mark.parametrize("coach", COACHES, ids=str)
def test_a_coach_takes_less_than_five_minutes(coach: Coach) -> None:
    """Guards the time at the phone and around the coach, three seconds a question and one a key."""
    lines = script(coach.name)
    assert len(lines) == coach.lines
    assert len(as_typed(lines)) == coach.keys
    assert seconds(lines) < MOST_S


@pytest.mark.parametrize("coach", COACHES, ids=str)
def test_the_card_says_what_was_told(adviser: Adviser, coach: Coach) -> None:
    """Guards that the card is the network of these answers, and tells what nobody has seen."""
    assert adviser(as_typed(script(coach.name))).status == 0
    card = adviser.made()
    assert card.id == "HL-301"
    assert card.coach.length is not None
    assert abs(card.coach.length.value / FOOT_M - coach.feet) < 1e-6
    seen = {fitting.kind for fitting in card.fittings if fitting.seen == "present"}
    assert coach.has <= seen
    assert coach.has_not.isdisjoint(seen)
    assert coach.has_not & set(ASKED_FOR) <= set(card.looked_for.absent)
    unseen = {fitting.kind for fitting in card.fittings if fitting.seen == "not looked at"}
    # Nobody has walked around the motorhome; at the two trailers everything that counts was seen.
    assert bool(unseen) == (coach.stage == "phone")
    assert not unseen & set(card.looked_for.absent)
    text = adviser.card.read_text("utf-8")
    assert text.startswith("# Made from the answers in coach.answers.json")


def test_every_script_is_a_coach() -> None:
    """Guards that no script stands unused, and that each has its description."""
    assert {p.stem for p in HERE.glob("*.keys")} == {coach.name for coach in COACHES}
    assert (HERE / "coaches.md").read_text("utf-8").count("\n## ") == len(COACHES)

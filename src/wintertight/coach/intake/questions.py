"""The questions that describe a coach, as one table.

Eight can be answered on the phone; the rest wait for the walk-around. Each may be left out: what
was not looked at is then *unproven* in every plan, never taken as absent. What a question says,
where to look and why it matters is worded where the language is known.
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Literal

from wintertight.coach.intake.answers import Answers
from wintertight.coach.intake.shapes import SHAPES
from wintertight.coach.kind_fields import TOILETS
from wintertight.coach.tubing import MATERIALS
from wintertight.units import FOOT_M, GALLON_M3, Dimension

Stage = Literal["phone", "walk-around"]
Form = Literal["one", "several", "yes or no", "quantity"]

TANKS: Mapping[str, float] = MappingProxyType(
    {
        "tank of 6 gal": 6.0 * GALLON_M3,
        "tank of 10 gal": 10.0 * GALLON_M3,
        "tank of 16 gal": 16.0 * GALLON_M3,
    }
)
"""Water heaters with a tank, and what they hold [m3]: usual sizes, common practice."""

BATHS: Mapping[str, int] = MappingProxyType(
    {"one bath": 1, "two baths": 2, "one and a half": 2, "no bath": 0}
)
"""How many rooms with a lavatory each answer means.

They are offered in this order, so that who types 1 or 2 for one bath or two gets what was meant.
"""


@dataclass(frozen=True, slots=True)
class Question:
    """One question.

    Attributes:
        key: its name; the same is the field of the answers.
        stage: whether it can be answered on the phone.
        form: one choice, several of them (or none), yes or no, or a quantity.
        choices: keys of the choices, in the order in which they are offered.
        dimension: of a quantity.
        within: least and most that is believed of a quantity [SI unit]; common practice.
        settles: kinds of fitting that are on the card, or known to be absent, once it is answered.
        moves_gal: whole gallons of antifreeze by which its answer moved a plan at most, in the
            trials of ``docs/questions.md`` [gal].
        asked_if: whether the answers so far leave it open.
    """

    key: str
    stage: Stage
    form: Form
    choices: tuple[str, ...] = ()
    dimension: Dimension | None = None
    within: tuple[float, float] = (0.0, 0.0)
    settles: tuple[str, ...] = ()
    moves_gal: int = 0
    asked_if: Callable[[Answers], bool] = lambda _answers: True


def has_tank(answers: Answers) -> bool:
    """Tell whether the water heater has a tank, as far as is known."""
    return answers.best("heater") in TANKS


def has_hot_water(answers: Answers) -> bool:
    """Tell whether there is hot water, as far as is known."""
    return answers.best("heater") != "no heater"


def has_bath(answers: Answers) -> bool:
    """Tell whether there is a bath, as far as is known."""
    return BATHS[answers.best("baths")] > 0


def has_outside_shower(answers: Answers) -> bool:
    """Tell whether there is an outside shower, as far as is known."""
    return "outside shower" in answers.several("outside")


def has_water_at_the_fridge(answers: Answers) -> bool:
    """Tell whether a line runs to the refrigerator, as far as is known."""
    return bool({"ice maker", "door dispenser"} & set(answers.several("appliances")))


_PHONE = (
    Question("shape", "phone", "one", tuple(SHAPES)),
    Question(
        "length", "phone", "quantity", dimension="length", within=(6.0 * FOOT_M, 48.0 * FOOT_M)
    ),
    Question(
        "design low",
        "phone",
        "quantity",
        dimension="temperature",
        within=(-60.0, 0.0),
        moves_gal=17,
    ),
    Question(
        "heater",
        "phone",
        "one",
        (*TANKS, "on-demand heater", "hydronic coil", "no heater"),
        settles=("on-demand heater", "hydronic coil"),
        moves_gal=15,
    ),
    Question(
        "bypass",
        "phone",
        "one",
        ("three valves", "one valve and checks", "no bypass"),
        moves_gal=10,
        asked_if=has_tank,
    ),
    Question("baths", "phone", "one", tuple(BATHS), moves_gal=4),
    Question(
        "appliances",
        "phone",
        "several",
        ("ice maker", "door dispenser", "dishwasher", "washer"),
        settles=("ice maker", "door dispenser", "dishwasher", "washer"),
        moves_gal=1,
    ),
    Question(
        "outside",
        "phone",
        "several",
        ("outside shower", "outside kitchen", "spray port"),
        settles=("outside shower", "outside kitchen", "spray port"),
    ),
)

_WALK_AROUND = (
    Question(
        "antifreeze inlet",
        "walk-around",
        "one",
        ("hose with a valve", "three-way valve", "service panel", "no inlet"),
        settles=("three-way valve", "service panel"),
    ),
    Question(
        "water treatment",
        "walk-around",
        "several",
        ("filter housing", "membrane filter", "softener", "UV sleeve"),
        settles=("membrane filter", "softener", "UV sleeve"),
        moves_gal=1,
    ),
    Question("toilet", "walk-around", "one", tuple(sorted(TOILETS)), asked_if=has_bath),
    Question(
        "tub",
        "walk-around",
        "several",
        ("tub", "whirlpool"),
        settles=("tub", "whirlpool"),
        moves_gal=1,
        asked_if=has_bath,
    ),
    Question(
        "sprayer",
        "walk-around",
        "yes or no",
        settles=("bidet sprayer",),
        asked_if=has_bath,
    ),
    Question(
        "dead ends",
        "walk-around",
        "several",
        ("capped tee", "prepared stub"),
        settles=("capped tee", "prepared stub"),
    ),
    Question(
        "mixing",
        "walk-around",
        "several",
        ("tempering valve", "recirculating diverter"),
        settles=("tempering valve", "recirculating diverter"),
        moves_gal=1,
        asked_if=has_hot_water,
    ),
    Question(
        "waste side",
        "walk-around",
        "several",
        ("tank rinse", "macerator"),
        settles=("tank rinse", "macerator"),
    ),
    Question(
        "fridge filter",
        "walk-around",
        "yes or no",
        settles=("fridge filter",),
        asked_if=has_water_at_the_fridge,
    ),
    Question("accumulator", "walk-around", "yes or no", settles=("accumulator",)),
    Question(
        "branches", "walk-around", "one", ("tees", "manifold"), settles=("manifold",), moves_gal=2
    ),
    # Who types 2 means two.
    Question("low points", "walk-around", "one", ("cold only", "two", "none")),
    Question("city inlet", "walk-around", "yes or no", settles=("city inlet",)),
    Question("outside shut-off", "walk-around", "yes or no", asked_if=has_outside_shower),
    Question("fridge shut-off", "walk-around", "yes or no", asked_if=has_water_at_the_fridge),
    Question("galley slide", "walk-around", "yes or no"),
    Question("belly", "walk-around", "one", ("closed and heated", "closed", "open")),
    Question("pipe", "walk-around", "one", MATERIALS, moves_gal=1),
    Question(
        "heater tank",
        "walk-around",
        "one",
        ("steel with anode", "aluminum", "stainless steel"),
        asked_if=has_tank,
    ),
    Question(
        "on the hose",
        "walk-around",
        "several",
        ("pressure regulator", "supply hose", "outside filter"),
    ),
    Question(
        "fresh tank",
        "walk-around",
        "quantity",
        dimension="volume",
        within=(2.0 * GALLON_M3, 150.0 * GALLON_M3),
    ),
)

QUESTIONS: Mapping[str, Question] = MappingProxyType(
    {question.key: question for question in (*_PHONE, *_WALK_AROUND)}
)
"""Every question by its key, in a fixed order."""


def standing(answers: Answers) -> Answers:
    """Give the answers that count: those whose question is still open under the others."""
    kept = answers
    for question in QUESTIONS.values():
        if kept.known(question.key) and not question.asked_if(kept):
            kept = kept.without(question.key)
    return kept

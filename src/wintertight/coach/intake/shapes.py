"""The shapes that coaches come in: where a floor plan of each usually has its water.

Places are shares of the coach's length from its front, and feet from the road side; what stands
where is common practice, drawn from no one maker's plan. Every answer that nobody gave is taken
from ``usual``, and the card says that it is a guess.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from types import MappingProxyType

from wintertight.coach.card import CoachKind

Spot = tuple[float, float]
"""A place: share of the length from the front, and feet from the road side."""

_USUAL = {
    "heater": "tank of 6 gal",
    "bypass": "three valves",
    "baths": "one bath",
    "antifreeze inlet": "hose with a valve",
    "toilet": "gravity toilet",
    "branches": "tees",
    "low points": "two",
    "belly": "closed",
    "pipe": "PEX",
    "heater tank": "steel with anode",
}
"""What most coaches have: common practice."""


@dataclass(frozen=True, slots=True)
class Shape:
    """A shape of coach; every place is common practice.

    Attributes:
        kind: kind of coach, as a card says it.
        length_ft, width_ft: over all [ft].
        floor_in: floor above ground [in].
        supply: where pump and city tee are.
        heater: where the water heater is.
        galley: the kitchen tap.
        bath: the lavatory of the first bath; its toilet and shower stand behind it.
        second: the lavatory of the second bath, or of the half bath.
        fridge, laundry: the refrigerator; the washer.
        outside: share of the length at which the outside shower is; the outside kitchen stands
            opposite.
        fresh_gal, gray_gal, black_gal: usual sizes of the tanks [gal].
        depth_ft: how far below the floor supply, trunks and tanks run [ft].
        usual: what this shape usually has, by question.
    """

    kind: CoachKind
    length_ft: float
    width_ft: float
    floor_in: float
    supply: Spot
    heater: Spot
    galley: Spot
    bath: Spot
    second: Spot
    fridge: Spot
    laundry: Spot
    outside: float
    fresh_gal: float
    gray_gal: float
    black_gal: float
    depth_ft: float = 0.0
    usual: Mapping[str, str] = field(default_factory=dict)


def _shape(usual: Mapping[str, str] | None = None, **places: object) -> Shape:
    return Shape(usual=MappingProxyType({**_USUAL, **(usual or {})}), **places)  # type: ignore[arg-type]


SHAPES: Mapping[str, Shape] = MappingProxyType(
    {
        "tent trailer": _shape(
            {
                "baths": "no bath",
                "antifreeze inlet": "no inlet",
                "belly": "open",
                "toilet": "cassette toilet",
            },
            kind="folding trailer",
            length_ft=14.0,
            width_ft=7.0,
            floor_in=24.0,
            supply=(0.35, 1.5),
            heater=(0.55, 0.8),
            galley=(0.45, 1.8),
            bath=(0.75, 4.0),
            second=(0.88, 4.0),
            fridge=(0.6, 5.0),
            laundry=(0.8, 1.0),
            outside=0.65,
            fresh_gal=15.0,
            gray_gal=15.0,
            black_gal=5.0,
        ),
        "teardrop": _shape(
            {
                "heater": "no heater",
                "bypass": "no bypass",
                "baths": "no bath",
                "antifreeze inlet": "no inlet",
                "belly": "open",
                "low points": "none",
                "toilet": "cassette toilet",
            },
            kind="folding trailer",
            length_ft=10.0,
            width_ft=5.0,
            floor_in=18.0,
            supply=(0.6, 1.0),
            heater=(0.72, 0.8),
            galley=(0.85, 2.5),
            bath=(0.3, 3.0),
            second=(0.45, 3.0),
            fridge=(0.9, 3.5),
            laundry=(0.4, 1.0),
            outside=0.5,
            fresh_gal=8.0,
            gray_gal=8.0,
            black_gal=5.0,
        ),
        "truck camper": _shape(
            {"antifreeze inlet": "no inlet", "toilet": "cassette toilet", "belly": "closed"},
            kind="truck camper",
            length_ft=11.0,
            width_ft=7.0,
            floor_in=36.0,
            supply=(0.6, 1.2),
            heater=(0.78, 0.8),
            galley=(0.5, 1.8),
            bath=(0.68, 4.5),
            second=(0.9, 4.5),
            fridge=(0.42, 5.5),
            laundry=(0.3, 1.0),
            outside=0.9,
            fresh_gal=30.0,
            gray_gal=20.0,
            black_gal=15.0,
        ),
        "short travel trailer": _shape(
            {"antifreeze inlet": "no inlet"},
            kind="travel trailer",
            length_ft=18.0,
            width_ft=8.0,
            floor_in=24.0,
            supply=(0.32, 2.2),
            heater=(0.72, 0.8),
            galley=(0.52, 6.0),
            bath=(0.82, 4.6),
            second=(0.93, 5.0),
            fridge=(0.44, 6.6),
            laundry=(0.75, 1.0),
            outside=0.78,
            fresh_gal=25.0,
            gray_gal=25.0,
            black_gal=20.0,
        ),
        "long bunkhouse trailer": _shape(
            kind="travel trailer",
            length_ft=33.0,
            width_ft=8.0,
            floor_in=24.0,
            supply=(0.4, 2.0),
            heater=(0.62, 0.8),
            galley=(0.55, 7.0),
            bath=(0.75, 5.0),
            second=(0.9, 5.0),
            fridge=(0.48, 7.0),
            laundry=(0.84, 1.0),
            outside=0.68,
            fresh_gal=50.0,
            gray_gal=40.0,
            black_gal=35.0,
        ),
        "rear-kitchen trailer": _shape(
            kind="travel trailer",
            length_ft=28.0,
            width_ft=8.0,
            floor_in=24.0,
            supply=(0.45, 2.0),
            heater=(0.6, 0.8),
            galley=(0.93, 4.0),
            bath=(0.3, 5.0),
            second=(0.14, 5.0),
            fridge=(0.84, 6.8),
            laundry=(0.2, 1.0),
            outside=0.66,
            fresh_gal=42.0,
            gray_gal=34.0,
            black_gal=32.0,
        ),
        "fifth wheel, one bath": _shape(
            {"antifreeze inlet": "service panel"},
            kind="fifth wheel",
            length_ft=32.0,
            width_ft=8.0,
            floor_in=36.0,
            supply=(0.42, 1.6),
            heater=(0.58, 0.8),
            galley=(0.7, 6.8),
            bath=(0.22, 4.5),
            second=(0.9, 5.0),
            fridge=(0.62, 6.8),
            laundry=(0.1, 1.0),
            outside=0.5,
            fresh_gal=60.0,
            gray_gal=45.0,
            black_gal=40.0,
        ),
        "fifth wheel, two baths": _shape(
            {
                "baths": "two baths",
                "heater": "tank of 10 gal",
                "antifreeze inlet": "service panel",
            },
            kind="fifth wheel",
            length_ft=40.0,
            width_ft=8.0,
            floor_in=36.0,
            supply=(0.42, 1.6),
            heater=(0.56, 0.8),
            galley=(0.5, 6.8),
            bath=(0.2, 4.5),
            second=(0.88, 5.0),
            fridge=(0.62, 6.8),
            laundry=(0.1, 1.0),
            outside=0.66,
            fresh_gal=75.0,
            gray_gal=60.0,
            black_gal=45.0,
        ),
        "camper van": _shape(
            {
                "heater": "on-demand heater",
                "bypass": "no bypass",
                "antifreeze inlet": "no inlet",
                "toilet": "cassette toilet",
                "belly": "open",
            },
            kind="camper van",
            length_ft=20.0,
            width_ft=6.5,
            floor_in=26.0,
            supply=(0.66, 1.0),
            heater=(0.56, 0.6),
            galley=(0.48, 1.6),
            bath=(0.36, 2.6),
            second=(0.26, 2.8),
            fridge=(0.42, 4.6),
            laundry=(0.7, 4.0),
            outside=0.85,
            fresh_gal=25.0,
            gray_gal=15.0,
            black_gal=5.0,
        ),
        "cab-over motorhome": _shape(
            {"antifreeze inlet": "three-way valve"},
            kind="motorhome",
            length_ft=28.0,
            width_ft=8.0,
            floor_in=32.0,
            supply=(0.5, 1.6),
            heater=(0.66, 0.8),
            galley=(0.48, 6.6),
            bath=(0.76, 4.6),
            second=(0.92, 4.8),
            fridge=(0.58, 6.8),
            laundry=(0.86, 1.0),
            outside=0.72,
            fresh_gal=40.0,
            gray_gal=35.0,
            black_gal=30.0,
        ),
        "rear-engine motorhome": _shape(
            {
                "baths": "one and a half",
                "heater": "hydronic coil",
                "bypass": "no bypass",
                "antifreeze inlet": "three-way valve",
                "branches": "manifold",
                "toilet": "macerating toilet",
                "belly": "closed and heated",
            },
            kind="motorhome",
            length_ft=42.0,
            width_ft=8.3,
            floor_in=42.0,
            supply=(0.48, 1.0),
            heater=(0.38, 2.0),
            galley=(0.3, 7.0),
            bath=(0.84, 5.0),
            second=(0.58, 5.0),
            fridge=(0.22, 7.0),
            laundry=(0.74, 1.0),
            outside=0.62,
            fresh_gal=100.0,
            gray_gal=70.0,
            black_gal=50.0,
            depth_ft=1.4,
        ),
        "toy hauler": _shape(
            {"heater": "tank of 10 gal"},
            kind="travel trailer",
            length_ft=34.0,
            width_ft=8.3,
            floor_in=30.0,
            supply=(0.38, 1.6),
            heater=(0.48, 0.8),
            galley=(0.36, 6.8),
            bath=(0.2, 4.5),
            second=(0.56, 5.0),
            fridge=(0.44, 6.8),
            laundry=(0.26, 1.0),
            outside=0.58,
            fresh_gal=100.0,
            gray_gal=45.0,
            black_gal=45.0,
        ),
        "park model": _shape(
            {
                "antifreeze inlet": "no inlet",
                "heater": "tank of 16 gal",
                "bypass": "no bypass",
                "belly": "closed",
            },
            kind="park trailer",
            length_ft=38.0,
            width_ft=11.5,
            floor_in=24.0,
            supply=(0.5, 1.6),
            heater=(0.62, 1.0),
            galley=(0.46, 9.8),
            bath=(0.72, 7.0),
            second=(0.88, 7.0),
            fridge=(0.38, 9.8),
            laundry=(0.8, 1.0),
            outside=0.66,
            fresh_gal=40.0,
            gray_gal=45.0,
            black_gal=40.0,
        ),
    }
)
"""Every shape by its name."""

USUAL_SHAPE = "long bunkhouse trailer"
"""What is taken where nobody has said what a coach looks like."""

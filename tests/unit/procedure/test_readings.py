import pytest

from wintertight.coach.kinds import Pocket
from wintertight.errors import RecordError
from wintertight.fluids.contents import Contents
from wintertight.fluids.product import Product
from wintertight.procedure.instruments import check_reading, glycol_share
from wintertight.procedure.readings import with_reading
from wintertight.procedure.record import Event, Reading
from wintertight.proof.claims import PartProof

GLYCOL = Product("glycol", 0.35, None, None, None, 0.004)
SPIRIT = Product("spirit", None, 0.28, None, None, 0.004)
RATED = Product("rated", None, None, -45.6, None, 0.004)


def part(worst: Contents, *, safe: bool | None = True, pocket: Pocket = "open") -> PartProof:
    """Give the proof of a line that holds something."""
    return PartProof(
        id="line",
        kind="line",
        volume_m3=1e-4,
        mean=worst,
        worst=worst,
        freezing_point_degC=None,
        ice_fraction=None,
        pocket=pocket,
        relieved=False,
        claim="filled",
        safe=safe,
        reason="slush is harmless",
    )


@pytest.mark.parametrize(
    ("reading", "field"),
    [
        (Reading(kind="freezing point", value=15.0, unit="fahrenheit"), "unit"),
        (Reading(kind="freezing point", value=15.0, unit="K"), "unit"),
        (Reading(kind="freezing point", value=20.0), "value"),
        (Reading(kind="freezing point", value=-300.0), "value"),
        (Reading(kind="freezing point", value=True), "value"),
        (Reading(kind="glycol share", value=33.0), "value"),
        (Reading(kind="glycol share", value=-0.1), "value"),
        (Reading(kind="glycol share", value=0.3, unit="brix"), "unit"),
        (Reading(kind="looks pink", value=1.0), "value"),
    ],
)
def test_a_reading_that_cannot_be_is_refused(reading: Reading, field: str) -> None:
    """Guards that a missing or foreign unit is never guessed."""
    event = Event(id="a", seq=1, step="x", result="done", reading=reading)
    with pytest.raises(RecordError) as caught:
        check_reading(event)
    assert caught.value.place.field == f"events[a].reading.{field}"


@pytest.mark.parametrize("unit", ["degF", "F", "°F", " degf"])
def test_fahrenheit_and_celsius_are_the_same_reading(unit: str) -> None:
    """Guards the units of a freezing point."""
    warm = Reading(kind="freezing point", value=-6.0, unit=unit)
    same = Reading(kind="freezing point", value=(-6.0 - 32.0) / 1.8, unit="degC")
    assert glycol_share(warm) == pytest.approx(glycol_share(same))


def test_colder_than_the_table_counts_as_its_end() -> None:
    """Guards that a very cold reading is no fault."""
    coldest = glycol_share(Reading(kind="freezing point", value=-100.0))
    assert coldest == glycol_share(Reading(kind="freezing point", value=-51.0))


def test_a_reading_counts_on_its_doubtful_side() -> None:
    """Guards that two standard deviations below the reading decide."""
    sure = Reading(kind="glycol share", value=33.0, unit="%", sd=0.5)
    vague = Reading(kind="glycol share", value=33.0, unit="%", sd=5.0)
    held = part(Contents(glycol=0.33))
    assert with_reading(held, sure, -24.0, GLYCOL).safe is True
    found = with_reading(held, vague, -24.0, GLYCOL)
    assert found.safe is False
    assert found.worst.glycol == pytest.approx(0.23)
    assert found.reason == "reading is too weak"


@pytest.mark.parametrize("safe", [False, None])
def test_a_good_reading_carries_nothing_further(safe: bool | None) -> None:  # noqa: FBT001 - a column
    """Guards that no reading makes a part safer than the engine finds it."""
    held = part(Contents(glycol=0.1), safe=safe)
    good = Reading(kind="glycol share", value=0.35, sd=0.001)
    assert with_reading(held, good, -24.0, GLYCOL).safe is safe


def test_a_scale_for_glycol_says_nothing_of_another_product() -> None:
    """Guards that a misreading of ethanol is noted and not believed."""
    held = part(Contents(ethanol=0.28))
    weak = Reading(kind="glycol share", value=0.05)
    assert with_reading(held, weak, -10.0, SPIRIT).safe is True


@pytest.mark.parametrize(
    ("product", "held"),
    [(SPIRIT, Contents(ethanol=0.28)), (RATED, Contents(rated=1.0))],
)
def test_a_warm_freezing_point_leaves_another_product_unproven(
    product: Product, held: Contents
) -> None:
    """Guards that a frozen sample counts against any product."""
    warm = Reading(kind="freezing point", value=-2.0, unit="degC")
    assert with_reading(part(held), warm, -24.0, product).safe is None

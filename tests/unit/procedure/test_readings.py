from typing import Any

import pytest

from wintertight.coach.kinds import Pocket
from wintertight.fluids.contents import Contents
from wintertight.fluids.product import Product
from wintertight.procedure.readings import with_jug, with_reading
from wintertight.procedure.record import Instrument, Reading
from wintertight.proof.claims import PartProof
from wintertight.wording.proofs import evidence_text, reason

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
    found = with_reading(held, weak, -10.0, SPIRIT)
    assert found.safe is True
    assert "freeze a sample" in evidence_text(found.evidence[-1])


@pytest.mark.parametrize("instrument", ["refractometer", "hydrometer", "test strip"])
def test_a_freezing_point_from_a_glycol_scale_is_no_better(instrument: Instrument) -> None:
    """Guards that a misread scale in degrees is noted as misread too."""
    warm = Reading(kind="freezing point", value=-2.0, unit="degC", instrument=instrument)
    for product, held in ((SPIRIT, Contents(ethanol=0.28)), (RATED, Contents(rated=1.0))):
        found = with_reading(part(held), warm, -24.0, product)
        assert found.safe is True
        assert [e.key for e in found.evidence] == ["glycol scale misreads"]


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


def cup(value: float, **more: Any) -> Reading:
    """Give a reading in per cent by a zeroed refractometer."""
    fields = {"unit": "%", "instrument": "refractometer", "zeroed": True, **more}
    return Reading.model_validate({"kind": "glycol share", "value": value, **fields})


@pytest.mark.parametrize(
    ("product", "full", "low"),
    [(GLYCOL, Contents(glycol=0.35), -24.0), (SPIRIT, Contents(ethanol=0.25), -14.0)],
)
def test_an_outlet_weaker_than_the_jug_loses_its_claim(
    product: Product, full: Contents, low: float
) -> None:
    """Guards the comparison with the fresh jug, of glycol and of what a glycol scale misreads."""
    alike = with_reading(part(full), cup(33.0), low, product, [cup(33.0)])
    assert alike.safe is True
    assert {e.key for e in alike.evidence} & {"reading against jug"}
    weaker = with_reading(part(full), cup(33.0), low, product, [cup(50.0)])
    assert weaker.safe is not True
    assert weaker.reason == "weaker than the jug"
    assert "66 % of the fresh jug's strength" in reason(weaker)


@pytest.mark.parametrize(
    ("outlet", "safe"), [(30.0, True), (29.0, True), (28.0, None), (20.0, None)]
)
def test_a_rated_product_is_undiluted_or_doubted(
    outlet: float,
    safe: bool | None,  # noqa: FBT001 - a column
) -> None:
    """Guards that what is judged undiluted only is doubted once it reads a tenth below the jug."""
    found = with_reading(part(Contents(rated=1.0)), cup(outlet), -24.0, RATED, [cup(30.0)])
    assert found.safe is safe


def test_another_instrument_is_not_compared_with() -> None:
    """Guards that a ratio is taken only of two readings by one instrument."""
    jug = cup(40.0, instrument="hydrometer")
    found = with_reading(part(Contents(ethanol=0.25)), cup(20.0), -14.0, SPIRIT, [jug])
    assert found.safe is True
    assert [e.key for e in found.evidence] == ["glycol scale misreads"]


def sample(looked: str, degC: float, **more: Any) -> Reading:
    """Give a sample from a freezer."""
    fields = {"kind": "freeze sample", "value": degC, "unit": "degC", "looked": looked, **more}
    return Reading.model_validate(fields)


@pytest.mark.parametrize(
    ("looked", "degC", "pocket", "safe"),
    [
        ("liquid", -18.0, "open", True),
        ("slush", -18.0, "open", True),
        ("slush", -18.0, "sealed", False),
        ("slush", -6.0, "open", False),
        ("solid", -18.0, "open", False),
        ("solid", -18.0, "sealed", False),
    ],
)
def test_a_freezer_judges_glycol(looked: str, degC: float, pocket: Pocket, safe: bool) -> None:  # noqa: FBT001 - a column
    """Guards what each look of a sample does to a part that is to stand -24 degC."""
    held = part(Contents(glycol=0.45), pocket=pocket)
    found = with_reading(held, sample(looked, degC), -24.0, GLYCOL)
    assert found.safe is safe
    assert found.evidence[-1].kind == "measured"


@pytest.mark.parametrize(
    ("product", "held"),
    [(SPIRIT, Contents(ethanol=0.28)), (RATED, Contents(rated=1.0))],
)
def test_a_freezer_judges_any_product(product: Product, held: Contents) -> None:
    """Guards that a solid sample doubts, and a liquid one leaves alone, what no scale can read."""
    assert with_reading(part(held), sample("solid", -18.0), -24.0, product).safe is None
    found = with_reading(part(held), sample("liquid", -30.0), -24.0, product)
    assert found.safe is True
    assert "stayed liquid" in evidence_text(found.evidence[-1], "en", "metric")


def test_a_sample_that_stays_liquid_saves_nothing() -> None:
    """Guards that a good sample makes no part safer."""
    held = part(Contents(glycol=0.1), safe=False)
    assert with_reading(held, sample("liquid", -40.0), -24.0, GLYCOL).safe is False


@pytest.mark.parametrize(
    ("fields", "says"),
    [
        ({"kind": "pressure", "value": 45.0, "unit": "psi"}, "45 psi"),
        ({"kind": "pressure", "value": 3.0, "unit": "bar"}, "44 psi"),
        ({"kind": "temperature", "value": 41.0, "unit": "degF"}, "41 °F"),
        ({"kind": "looks pink", "value": True}, "90 %"),
        ({"kind": "looks pink", "value": False, "instrument": "eye"}, "did not look pink"),
    ],
)
def test_what_gives_no_strength_is_told(fields: dict[str, Any], says: str) -> None:
    """Guards that the value read stands in the evidence, and only missing colour doubts."""
    held = part(Contents(glycol=0.35))
    found = with_reading(held, Reading.model_validate(fields), -24.0, GLYCOL)
    assert says in evidence_text(found.evidence[-1])
    assert found.safe is (None if fields["value"] is False else True)


def test_a_jug_without_colour_doubts_what_was_filled_from_it() -> None:
    """Guards that a jug of something else is no proof of anything."""
    clear = Reading(kind="looks pink", value=False, of="jug")
    found = with_jug(part(Contents(glycol=0.35)), GLYCOL, [clear], -24.0)
    assert (found.safe, found.reason) == (None, "not pink")


def test_a_frozen_jug_doubts_a_rated_product() -> None:
    """Guards that a sample from the jug counts against a rating it contradicts."""
    held = part(Contents(rated=1.0))
    assert with_jug(held, RATED, [sample("solid", -18.0)], -24.0).safe is None
    assert with_jug(held, RATED, [sample("liquid", -18.0)], -24.0).safe is True


def test_the_order_of_readings_does_not_soften_them() -> None:
    """Guards that a doubt from a colour takes nothing from a share that is too weak."""
    clear, weak = Reading(kind="looks pink", value=False), cup(10.0)
    for first, then in ((clear, weak), (weak, clear)):
        found = with_reading(part(Contents(glycol=0.35)), first, -24.0, GLYCOL)
        assert with_reading(found, then, -24.0, GLYCOL).safe is False


def test_a_jug_read_alike_does_not_excuse_a_weak_outlet() -> None:
    """Guards that a share read too weak stays so, whatever its ratio to the jug."""
    weak, jug = cup(30.0, zeroed=False), cup(34.0, zeroed=False)
    held = part(Contents(glycol=0.35))
    assert with_reading(held, weak, -24.0, GLYCOL).safe is False
    assert with_reading(held, weak, -24.0, GLYCOL, [jug]).safe is False


def test_a_freezer_known_badly_counts_on_its_warm_side() -> None:
    """Guards that slush in a freezer that may have been warmer is taken for weaker."""
    held = part(Contents(glycol=0.45))
    assert with_reading(held, sample("slush", -12.0, sd=0.2), -20.0, GLYCOL).safe is True
    assert with_reading(held, sample("slush", -12.0, sd=2.0), -20.0, GLYCOL).safe is False

import pytest

from wintertight.errors import OutOfRange
from wintertight.fluids.contents import Contents, mix


def test_water_is_the_rest() -> None:
    """Guards that the five shares add up to 1 and water fills what the others leave."""
    contents = Contents(glycol=0.3, ethanol=0.1, rated=0.05, air=0.15)
    assert contents.water == pytest.approx(0.4)
    assert sum(contents.as_mapping().values()) == pytest.approx(1.0, abs=1e-15)


def test_rounding_dust_is_taken_off() -> None:
    """Guards that shares a billionth outside 0 to 1 are taken as 0 and 1."""
    assert Contents(glycol=-5e-10).glycol == 0.0
    assert Contents(air=1.0 + 5e-10).air == 1.0


@pytest.mark.parametrize(
    "shares",
    [{"glycol": -0.01}, {"air": 1.1}, {"glycol": 0.6, "air": 0.6}, {"rated": float("nan")}],
)
def test_refuses_shares_that_cannot_be(shares: dict[str, float]) -> None:
    """Guards that negative, excessive and undefined shares are refused."""
    with pytest.raises(OutOfRange):
        Contents(**shares)


def test_liquid_leaves_the_air_out() -> None:
    """Guards that the liquid's shares are those of the liquid alone, and air has no liquid."""
    liquid = Contents(glycol=0.2, rated=0.1, air=0.5).liquid()
    assert liquid is not None
    assert liquid.as_mapping() == pytest.approx(
        {"water": 0.4, "glycol": 0.4, "ethanol": 0.0, "rated": 0.2, "air": 0.0}
    )
    assert Contents.all_air().liquid() is None
    assert Contents.all_water().liquid() == Contents()


def test_mixing_adds_volumes() -> None:
    """Guards that mixing keeps each part's volume."""
    mixed = mix([(1.0, Contents(glycol=0.5)), (3.0, Contents(air=0.2)), (0.0, Contents(rated=1.0))])
    assert mixed == Contents(glycol=0.125, air=0.15000000000000002)


@pytest.mark.parametrize(
    "parts", [[], [(0.0, Contents())], [(2.0, Contents()), (-1.0, Contents())]]
)
def test_refuses_mixtures_of_nothing(parts: list[tuple[float, Contents]]) -> None:
    """Guards that mixing needs volumes that are not negative."""
    with pytest.raises(OutOfRange):
        mix(parts)


def test_a_mixture_keeps_every_component() -> None:
    """Guards each share of a mixture by hand: one part of all five things, three of air."""
    some = Contents(glycol=0.1, ethanol=0.2, rated=0.3, air=0.1)
    mixed = mix([(1e-3, some), (3e-3, Contents(air=1.0))])
    assert mixed.glycol == pytest.approx(0.025)
    assert mixed.ethanol == pytest.approx(0.05)
    assert mixed.rated == pytest.approx(0.075)
    assert mixed.air == pytest.approx(0.775)
    assert mixed.water == pytest.approx(0.075)


def test_the_liquid_alone_keeps_its_composition() -> None:
    """Guards what is left when air is taken off, and that no air leaves all as it is."""
    liquid = Contents(glycol=0.1, ethanol=0.05, rated=0.2, air=0.5).liquid()
    assert liquid is not None
    assert (liquid.glycol, liquid.ethanol, liquid.rated) == pytest.approx((0.2, 0.1, 0.4))
    assert liquid.air == 0.0
    dry = Contents(glycol=0.3)
    assert dry.liquid() is dry
    assert Contents(air=1.0).liquid() is None


@pytest.mark.parametrize(
    ("shares", "said"),
    [
        ({"glycol": 1.1}, "share of glycol must lie between 0 and 1"),
        ({"air": -0.1}, "share of air must lie between 0 and 1"),
        ({"glycol": 0.6, "ethanol": 0.6}, "must not add up to more than 1"),
    ],
)
def test_impossible_contents_are_named(shares: dict[str, float], said: str) -> None:
    """Guards the message: which share, and what was expected."""
    with pytest.raises(OutOfRange, match=said):
        Contents(**shares)


def test_a_mixture_of_nothing_is_named() -> None:
    """Guards the refusal of volumes that make no mixture."""
    for pairs in ([(0.0, Contents())], [(-1e-3, Contents()), (2e-3, Contents())]):
        with pytest.raises(OutOfRange, match="a mixture needs volumes that are not negative"):
            mix(pairs)
    assert mix([(0.5e-3, Contents(glycol=0.4))]).glycol == pytest.approx(0.4)

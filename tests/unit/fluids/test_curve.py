import pytest

from wintertight.fluids.curve import MonotoneCurve

FALLING = MonotoneCurve([0.0, 1.0, 2.0, 4.0], [0.0, -1.0, -4.0, -5.0])


def test_passes_through_its_points() -> None:
    """Guards that the curve gives back each point it was made from."""
    assert [FALLING.at(x) for x in FALLING.x] == list(FALLING.y)
    assert [FALLING.where(y) for y in FALLING.y] == pytest.approx(list(FALLING.x), abs=1e-12)


def test_has_one_inverse() -> None:
    """Guards that going to y and back ends where it began, everywhere."""
    for k in range(501):
        assert FALLING.at(FALLING.where(-k / 100)) == pytest.approx(-k / 100, abs=1e-12)


@pytest.mark.parametrize("y", [[0.0, 1.0, 0.5], [0.0, 0.0, 1.0]])
def test_refuses_points_that_turn_or_rest(y: list[float]) -> None:
    """Guards that points that do not strictly rise or fall are refused."""
    with pytest.raises(ValueError, match="strictly"):
        MonotoneCurve([0.0, 1.0, 2.0], y)

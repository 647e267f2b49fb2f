import numpy as np
import pytest
from scipy.interpolate import PchipInterpolator

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


@pytest.mark.parametrize("sign", [1.0, -1.0])
@pytest.mark.parametrize(
    ("x", "y"),
    [
        ([0.0, 1.0, 2.0, 4.0], [0.0, 1.0, 4.0, 5.0]),
        ([-3.0, -2.5, 0.0, 0.2, 7.0], [0.0, 0.5, 0.6, 9.0, 9.1]),
        ([0.0, 0.5, 3.0], [1.0, 8.0, 8.5]),
        ([0.0, 3.0, 3.5], [1.0, 1.2, 8.5]),
        ([0.0, 1.0, 2.0, 3.0], [0.0, 1.0, 2.0, 3.0]),
    ],
)
def test_is_the_curve_of_another_library(x: list[float], y: list[float], sign: float) -> None:
    """Guards values, ends and the inverse against the monotone cubic of scipy."""
    points = [sign * value for value in y]
    ours, theirs = MonotoneCurve(x, points), PchipInterpolator(x, points)
    for at in np.linspace(x[0], x[-1], 101):
        expected = float(theirs(at))
        assert ours.at(float(at)) == pytest.approx(expected, abs=1e-12)
        assert float(theirs(ours.where(expected))) == pytest.approx(expected, abs=1e-11)

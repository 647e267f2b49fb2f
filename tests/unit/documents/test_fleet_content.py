import math

import numpy as np
import pytest

from wintertight.documents.fleet_content import (
    FailedCoach,
    Fleet,
    PlannedCoach,
    Row,
    band_of_sum,
    totals_of,
)
from wintertight.documents.fleet_json import fleet_object
from wintertight.documents.fleet_screen import fleet_screen
from wintertight.procedure.bands import Band
from wintertight.procedure.plan import Purchase
from wintertight.proof.claims import Verdict

Z_95 = 1.6448536
"""95 % point of the standard normal distribution, as printed in any table of it [1]."""


def coach(  # noqa: PLR0913 - one parameter for each thing a test may want otherwise
    file: str = "a.toml",
    *,
    verdict: Verdict = "safe",
    litres: tuple[float, float, float] = (1.6, 2.0, 2.4),
    product: str = "pink",
    size_m3: float = 1e-3,
    open_parts: int = 0,
    name: str = "Coach",
) -> PlannedCoach:
    """Give a row, with jugs for its middle."""
    low, middle, high = (volume / 1000.0 for volume in litres)
    parts = tuple(f"part-{n}" for n in range(open_parts))
    return PlannedCoach(
        file=file,
        card_hash="sha256:0",
        id="C-1",
        name=name,
        low_degC=-20.0,
        verdict=verdict,
        antifreeze=Band(low, middle, high),
        duration=Band(1800.0, 2400.0, 3000.0),
        buy=Purchase(product, size_m3, math.ceil(middle / size_m3), 0),
        gaps=parts if verdict == "gap" else (),
        unproven=parts if verdict == "unproven" else (),
        compiled=False,
    )


def test_normal_quantities_add_exactly() -> None:
    """Guards that means add and variances add: 3, 4 and 12 standard deviations make 13."""
    bands = [
        Band(mean - Z_95 * sd, mean, mean + Z_95 * sd)
        for mean, sd in ((50.0, 3.0), (60.0, 4.0), (70.0, 12.0))
    ]
    total = band_of_sum(bands)
    assert total.p50 == pytest.approx(180.0, abs=1e-9)
    assert (total.p95 - total.p05) / (2.0 * Z_95) == pytest.approx(13.0, rel=1e-6)


@pytest.mark.parametrize("sigma", [0.05, 0.15, 0.25])
def test_skewed_quantities_add_by_their_means(sigma: float) -> None:
    """Guards that the longer upper side counts: a log-normal's mean and variance are known."""
    count = 400
    band = Band(math.exp(-Z_95 * sigma), 1.0, math.exp(Z_95 * sigma))
    total = band_of_sum([band] * count)
    mean = math.exp(sigma**2 / 2.0)
    sd = mean * math.sqrt(math.exp(sigma**2) - 1.0)
    # Three points give the mean to the third power of sigma squared, and the deviation to 3 %.
    assert total.p50 / count == pytest.approx(mean, rel=1e-3)
    assert (total.p95 - total.p05) / (2.0 * Z_95 * math.sqrt(count)) == pytest.approx(sd, rel=0.03)


def test_the_band_of_a_sum_is_that_of_drawn_sums() -> None:
    """Guards the whole against thirty skewed quantities drawn and added one by one."""
    rng = np.random.default_rng(7)
    middles = rng.uniform(3.0, 30.0, 30)
    sums = np.exp(0.15 * rng.standard_normal((40_000, 30))) @ middles
    spread = math.exp(0.15 * Z_95)
    total = band_of_sum(Band(m / spread, m, m * spread) for m in middles)
    # The sampling error of a 5 % point of 40,000 draws is 0.01 of their deviation, 0.04 % here.
    drawn = np.quantile(sums, [0.05, 0.5, 0.95])
    assert [total.p05, total.p50, total.p95] == pytest.approx(drawn, rel=3e-3)


def test_one_coach_is_its_own_total_and_none_is_nothing() -> None:
    """Guards both ends of adding up."""
    alone = coach(litres=(1.0, 2.0, 4.0))
    assert totals_of([alone]).antifreeze == alone.antifreeze
    assert totals_of([alone]).supplies[0].buy.count == alone.buy.count
    nothing = totals_of([])
    assert (nothing.antifreeze, nothing.supplies) == (Band(0.0, 0.0, 0.0), ())
    assert dict(nothing.verdicts) == {"safe": 0, "gap": 0, "unproven": 0}


def test_jugs_are_counted_by_product_with_rests_carried_on() -> None:
    """Guards that ten coaches of 1.25 jugs take 13 together and 20 one by one."""
    ten = [coach(litres=(1.15, 1.25, 1.35)) for _ in range(10)]
    pink, blue = totals_of([*ten, coach(product="blue")]).supplies
    assert (pink.buy.product, pink.buy.count, pink.buy.spare, pink.separately) == (
        "pink",
        13,
        0,
        20,
    )
    assert (blue.buy.product, blue.buy.count, blue.separately) == ("blue", 2, 2)


@pytest.fixture
def fleet() -> Fleet:
    """Give a folder in which everything can be seen at once."""
    rows: tuple[Row, ...] = (
        coach("a.toml"),
        FailedCoach(
            "b.toml", "WT-110", "b.toml:12 fitting[pump].cut_off: " + 20 * "word ", fault=False
        ),
        coach("c.toml", verdict="gap", open_parts=12, name="A coach of a very long name " * 3),
        coach("d.toml", verdict="unproven", open_parts=3),
    )
    return Fleet("cards", rows, 2)


def test_the_screen_has_each_row_in_its_place(fleet: Fleet) -> None:
    """Guards rows in order, one a coach, the long ones cut, and the counts below."""
    said = fleet_screen(fleet, system="metric")
    rows = said.splitlines()
    assert max(map(len, rows)) <= 92
    assert [rows[0].split()[0], rows[1].split()[0], rows[2].split()[0]] == [
        "Coach",
        "C-1",
        "b.toml",
    ]
    assert rows[1].endswith("protected to -20 °C")
    assert "WT-110 b.toml:12 fitting[pump].cut_off" in rows[2]
    assert rows[3].startswith(" ")
    assert rows[-1].startswith("Bring")
    (cut,) = (row for row in rows if "..." in row)
    assert cut.endswith("12 would burst")
    counts = [row.split()[0] for row in rows[rows.index("In all (4)") + 1 :][:4]]
    assert counts == ["1", "1", "1", "1"]


def test_a_folder_without_any_plan_is_told_too(fleet: Fleet) -> None:
    """Guards that nothing is added up where there is nothing."""
    failed = Fleet("cards", fleet.failed, 1)
    said = fleet_screen(failed)
    assert "In all (1)" in said
    assert "Bring" not in said
    found = fleet_object(failed)
    assert (found["coaches"], found["compiled"]) == ([], False)
    assert found["totals"]["antifreeze_m3"] == {"p05": 0.0, "p50": 0.0, "p95": 0.0}

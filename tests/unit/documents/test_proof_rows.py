"""The proof of every part as rows."""

from typing import Any

import pytest

from tests.unit.documents.demo_plans import doubtful_plan, plan_of
from wintertight.documents.proof_rows import group_of, proof_groups, two_columns


def test_no_open_part_is_among_the_proven() -> None:
    """Guards that what is not proven stands in a group that is marked open, whatever its claim."""
    plan = doubtful_plan()
    groups = proof_groups(plan, "en", "us")
    still_open = sum(len(g["rows"]) for g in groups if g["open"])
    assert still_open == sum(part.safe is not True for part in plan.parts) > 0
    assert {group_of(p) for p in plan.parts if p.safe is False} <= {"gap"}
    assert {group_of(p) for p in plan.parts if p.safe is None} == {"unproven"}


def test_a_reason_is_said_once() -> None:
    """Guards that rows with one reason stand below each other, and only the first gives it."""
    groups = proof_groups(doubtful_plan(), "en", "us")
    whys = [row[2] for g in groups if g["open"] for row in g["rows"]]
    given = [why for why in whys if why != "as above"]
    assert len(given) == len(set(given)) < len(whys)
    assert whys[0] != "as above"


def test_a_proven_part_says_where_it_freezes_or_what_is_left() -> None:
    """Guards the third column: a temperature, or how full it is."""
    groups = proof_groups(plan_of(), "en", "us")
    told = {g["column"]: [row[2] for row in g["rows"]] for g in groups}
    assert set(told) == {"Freezes at", "Left in it"}
    assert all(why.endswith("°F") for why in told["Freezes at"])
    assert all(why.endswith("% full") or why == "empty" for why in told["Left in it"])


@pytest.mark.parametrize("sizes", [[33, 11], [1], [], [2, 2, 2, 2], [90, 1, 1], [1, 90], [4]])
def test_two_columns_hold_every_row_once(sizes: list[int]) -> None:
    """Guards that nothing is lost, doubled or put in another order, and the columns are alike."""
    groups: list[dict[str, Any]] = [
        {"heading": str(n), "rows": [[f"{n}.{row}"] for row in range(size)]}
        for n, size in enumerate(sizes)
    ]
    columns = two_columns(groups)
    rows = [row for column in columns for group in column for row in group["rows"]]
    assert rows == [row for group in groups for row in group["rows"]]
    heights = [sum(len(g["rows"]) + 3 for g in column) for column in columns]
    if sum(sizes) > 8:
        assert abs(heights[0] - heights[1]) <= 4

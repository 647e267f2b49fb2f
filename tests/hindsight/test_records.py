"""The bundled records of the smaller coaches, good and bad: what is found is what was done."""

import pytest

from tests.architecture.tree import ROOT
from tests.demo_records import NAMES, proved
from wintertight.procedure.hindsight.doubts import with_doubts
from wintertight.procedure.missed import RANK

SMALLER = ("small-trailer", "middle-travel-trailer", "on-demand-van")
CAUSES = {
    "small-trailer-bad": "forgotten outlet",
    "middle-travel-trailer-bad": "wrong bypass",
    "on-demand-van-bad": "as recorded",
}
PAGE = (ROOT / "docs" / "records.md").read_text(encoding="utf-8")


@pytest.mark.parametrize("coach", SMALLER)
def test_a_good_record_is_a_proof(coach: str) -> None:
    """Guards that a job done right, filled by another engine, is proven and raises no doubt."""
    found = proved(f"{coach}-good")
    assert found.done.plan.verdict == "safe"
    assert found.told is not None
    assert found.told.causes[0].explanation.cause == "as recorded"
    assert found.told.doubts == {}
    assert found.told.learned is not None
    assert found.told.learned.quantities["next time"].width < 0.7


@pytest.mark.parametrize("coach", SMALLER)
def test_a_bad_record_is_none(coach: str) -> None:
    """Guards that a job gone wrong is not proven, whoever ticked it, and its cause named."""
    found = proved(f"{coach}-bad")
    assert found.done.plan.verdict != "safe"
    assert found.told is not None
    assert found.told.causes[0].explanation.cause == CAUSES[f"{coach}-bad"]


@pytest.mark.parametrize("name", [name for name in NAMES if name.startswith("small-trailer")])
def test_the_page_of_records_is_up_to_date(name: str) -> None:
    """Guards that docs/records.md shows what is said now (else: make docs)."""
    from docs.generate.records import section_of  # noqa: PLC0415 - docs/ is not installed

    assert "\n".join(section_of(name, proved(name))) in PAGE


def test_the_page_has_every_record() -> None:
    """Guards that no bundled record is missing from the page."""
    assert all(f"`{name}.json`" in PAGE for name in NAMES)


@pytest.mark.parametrize("name", ["small-trailer-bad", "middle-travel-trailer-bad"])
def test_what_was_observed_makes_nothing_safer(name: str) -> None:
    """Guards that doubts take claims away and give none."""
    found = proved(name)
    assert found.told is not None
    parts = proved(name.replace("bad", "good")).done.plan.parts
    for before, after in zip(parts, with_doubts(parts, found.told.doubts), strict=True):
        assert RANK[after.safe] <= RANK[before.safe]
        assert after.safe is not True or after.id not in found.told.doubts

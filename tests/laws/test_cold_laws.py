from hypothesis import given
from hypothesis import strategies as st

from wintertight.coach.kinds import Pocket
from wintertight.cold.burst import burst_limit_degC, glycol_needed, survives
from wintertight.fluids.contents import Contents, mix
from wintertight.fluids.product import Product
from wintertight.fluids.slush import ice_fraction

# ruff: noqa: FBT001 - values of a table or of a strategy are given by name

PINK = Product("pink", None, None, -45.6, -12.2, 0.003785)
RANK = {False: 0, None: 1, True: 2}

lows = st.floats(-65.0, 5.0)
pockets = st.sampled_from(["open", "relieved", "sealed"])
weights = st.lists(st.floats(0.0, 1.0), min_size=5, max_size=5).filter(lambda w: sum(w) > 0.01)


@st.composite
def contents(draw: st.DrawFn) -> Contents:
    """Draw any contents, with simple ones often among them."""
    water, *parts = draw(weights)
    kept = draw(st.lists(st.booleans(), min_size=4, max_size=4))
    shares = [p if keep else 0.0 for p, keep in zip(parts, kept, strict=True)]
    total = water + sum(shares)
    return Contents(*(s / total for s in shares)) if total > 0.0 else Contents()


def rank(held: Contents, low: float, pocket: Pocket, relieved: bool) -> int:
    """Give 0 for unsafe, 1 for unproven, 2 for safe."""
    return RANK[survives(held, low, pocket, relieved=relieved, product=PINK).safe]


@given(contents(), lows, st.floats(0.0, 40.0), pockets, st.booleans())
def test_colder_is_never_safer(
    held: Contents,
    low: float,
    colder: float,
    pocket: Pocket,
    relieved: bool,
) -> None:
    """Guards that no content is judged safer at a colder design low."""
    assert rank(held, low - colder, pocket, relieved) <= rank(held, low, pocket, relieved)


@given(contents(), st.floats(0.0, 3.0), lows, pockets, st.booleans())
def test_more_water_is_never_safer(
    held: Contents,
    water: float,
    low: float,
    pocket: Pocket,
    relieved: bool,
) -> None:
    """Guards that water added to what is held never makes it safer."""
    diluted = mix([(1.0, held), (water, Contents())])
    assert rank(diluted, low, pocket, relieved) <= rank(held, low, pocket, relieved)


@given(st.floats(0.0, 1.0), st.floats(0.0, 1.0), st.floats(0.0, 0.5), lows, pockets, st.booleans())
def test_more_glycol_is_never_less_safe(  # noqa: PLR0913, PLR0917 - one argument a strategy
    one: float,
    other: float,
    air: float,
    low: float,
    pocket: Pocket,
    relieved: bool,
) -> None:
    """Guards that glycol in place of water never makes a content less safe."""
    less, more = sorted((one * (1.0 - air), other * (1.0 - air)))
    weak, strong = Contents(glycol=less, air=air), Contents(glycol=more, air=air)
    assert rank(strong, low, pocket, relieved) >= rank(weak, low, pocket, relieved)


@given(contents(), lows, st.booleans())
def test_a_stricter_pocket_is_never_safer(held: Contents, low: float, relieved: bool) -> None:
    """Guards that open, relieved, sealed is an order from kind to strict for known contents."""
    known = Contents(held.glycol, held.ethanol, 0.0, held.air)
    ranks = [rank(known, low, p, relieved) for p in ("open", "relieved", "sealed")]
    assert ranks == sorted(ranks, reverse=True)


@given(st.floats(0.0, 1.0), st.floats(0.0, 1.0))
def test_the_burst_limit_falls_with_glycol(one: float, other: float) -> None:
    """Guards that more glycol lets a line get colder, or at least not less cold."""
    less, more = sorted((one, other))
    weak, _ = burst_limit_degC(Contents(glycol=less))
    strong, _ = burst_limit_degC(Contents(glycol=more))
    assert weak is not None
    assert strong is not None
    assert strong <= weak + 1e-9


@given(st.floats(-50.0, 5.0), st.floats(-50.0, 5.0), pockets, st.booleans())
def test_colder_needs_no_less_glycol(
    one: float, other: float, pocket: Pocket, relieved: bool
) -> None:
    """Guards that a colder site never needs a weaker mixture."""
    cold, warm = sorted((one, other))
    need = glycol_needed(cold, pocket, relieved=relieved)
    assert need >= glycol_needed(warm, pocket, relieved=relieved) - 1e-9


@given(contents(), st.floats(-50.0, 5.0), st.floats(0.0, 20.0))
def test_ice_grows_with_cold(held: Contents, warm: float, colder: float) -> None:
    """Guards that the ice of a known content never melts when it gets colder."""
    before, after = ice_fraction(held, warm), ice_fraction(held, warm - colder)
    if before.fraction is not None:
        assert after.at_least >= before.fraction - 1e-9
        assert 0.0 <= before.fraction <= 1.0

from dataclasses import replace
from functools import cache
from typing import Any

from hypothesis import assume, given, settings
from hypothesis import strategies as st

from tests.unit.procedure.demo_coach import PINK, PRODUCTS, SMALL, planned
from wintertight.fluids.product import Product
from wintertight.procedure.fresh_jug import product_as_read, relative_strength
from wintertight.procedure.instruments import check_reading
from wintertight.procedure.readings import with_jug, with_reading
from wintertight.procedure.record import Event, Reading
from wintertight.procedure.samples import likelihood_pink
from wintertight.proof.claims import PartProof
from wintertight.proof.judge import Bench, prove_parts

RANK = {False: 0, None: 1, True: 2}

# Half of what is drawn lies where verdicts turn: near what the coach holds, and what it needs.
lows = st.floats(-50.0, 2.0) | st.sampled_from([-26.0, -24.0, -22.0, -20.0, -17.0, -12.0])
names = st.sampled_from(["pink", "thrift", "spirit"])
zeroed = st.sampled_from([True, False, None])
scales = st.sampled_from(["refractometer", "hydrometer", "test strip", None])
shares = st.floats(0.0, 1.0)
near = shares | st.sampled_from([0.2, 0.25, 0.28, 0.3, 0.32, 0.34, 0.36])
sds = st.none() | st.floats(0.0, 0.3) | st.sampled_from([0.005, 0.01, 0.02])
degrees = st.floats(-60.0, 0.0) | st.sampled_from([-25.0, -18.0, -14.0, -11.0, -8.0])
sds_K = st.none() | st.floats(0.0, 10.0) | st.sampled_from([0.5, 1.0])


def built(**fields: Any) -> Reading:
    """Give a reading that a record may hold."""
    reading = Reading.model_validate(fields)
    check_reading(Event(id="a", seq=1, step="x", result="done", reading=reading))
    return reading


cups = st.builds(
    built,
    kind=st.just("glycol share"),
    value=near,
    sd=sds,
    instrument=scales,
    zeroed=zeroed,
)
points = st.builds(
    built,
    kind=st.just("freezing point"),
    value=degrees,
    sd=sds_K,
    instrument=scales | st.sampled_from(["freezer", "thermometer"]),
    zeroed=zeroed,
)
samples = st.builds(
    built,
    kind=st.just("freeze sample"),
    value=degrees,
    unit=st.just("degC"),
    sd=sds_K,
    looked=st.sampled_from(["liquid", "slush", "solid"]),
)
others = st.sampled_from(
    [
        built(kind="looks pink", value=True),
        built(kind="looks pink", value=False),
        built(kind="pressure", value=45.0, unit="psi"),
        built(kind="temperature", value=20.0, unit="degF"),
    ]
)
deviations = st.floats(0.0, 0.3) | st.sampled_from([0.0, 0.005, 0.01, 0.03])
readings = cups | points | samples | others
jugs = st.lists(cups | points | samples | others, max_size=2)


@cache
def judged(low: float, name: str) -> tuple[PartProof, ...]:
    """Prove the small coach as planned with a product, and each part as if its room were shut."""
    plan = planned(product=name, text=SMALL)
    bench = Bench(plan.card, plan.careful.network, plan.careful.end, low, plan.product)
    parts = prove_parts(bench)
    shut = [
        replace(part, pocket="sealed", safe=found.safe)
        for part in parts
        if part.safe is True
        and (found := bench.survival(part.worst, "sealed", relieved=False)).safe is True
    ]
    return *parts, *shut


def heard(
    part: PartProof, some: list[Reading], low: float, product: Product, full: list[Reading]
) -> PartProof:
    """Let the jug and then all readings speak of a part."""
    part = with_jug(part, product, full, low)
    real = product_as_read(product, full)
    for reading in some:
        part = with_reading(part, reading, low, real, full)
    return part


@given(readings, st.lists(readings, max_size=2), jugs, lows, names)
@settings(max_examples=100)
def test_no_further_reading_makes_a_part_safer(
    more: Reading, some: list[Reading], full: list[Reading], low: float, name: str
) -> None:
    """Guards that one more reading, whenever it was taken and whatever of, only takes away."""
    product = PRODUCTS[name]
    for part in judged(low, name):
        before = RANK[heard(part, some, low, product, full).safe]
        assert before <= RANK[part.safe]
        assert RANK[heard(part, [*some, more], low, product, full).safe] <= before
        assert RANK[heard(part, [more, *some], low, product, full).safe] <= before
        assert RANK[heard(part, some, low, product, [*full, more]).safe] <= before


@given(readings, jugs, names)
def test_no_reading_makes_a_product_stronger(more: Reading, full: list[Reading], name: str) -> None:
    """Guards that what was read of the jug only takes from what its label says."""
    product = PRODUCTS[name]
    before, after = product_as_read(product, full), product_as_read(product, [*full, more])
    for strong, weak in ((product, before), (before, after)):
        assert (weak.glycol or 0.0) <= (strong.glycol or 0.0)
        assert (weak.ethanol or 0.0) <= (strong.ethanol or 0.0)
        assert (weak.burst_rating_degC or 0.0) >= (strong.burst_rating_degC or 0.0)


@given(shares, st.floats(0.0, 0.3), zeroed, st.sampled_from(["refractometer", None]), lows)
def test_no_claim_goes_beyond_the_uncertainty(
    share: float,
    sd: float,
    done: bool | None,  # noqa: FBT001 - drawn
    instrument: str | None,
    low: float,
) -> None:
    """Guards that no part and no product keeps more than a reading leaves two deviations below."""
    cup = built(kind="glycol share", value=share, sd=sd, instrument=instrument, zeroed=done)
    most = max(0.0, share - 2.0 * sd) + 1e-12
    plan = planned(text=SMALL)
    bench = Bench(plan.card, plan.careful.network, plan.careful.end, low, PINK)
    for part in judged(low, "pink"):
        found = with_reading(part, cup, low, PINK)
        if found.worst != part.worst:
            assert found.worst.glycol <= most
        if found.safe is True and part.worst.glycol > most:
            weaker = replace(part.worst, glycol=most)
            assert bench.survival(weaker, part.pocket, relieved=part.relieved).safe is True
    left = product_as_read(PINK, [cup]).glycol or 0.0
    assert left == PINK.glycol or left <= most


@given(
    cups | points | samples,
    st.tuples(deviations, deviations),
    jugs,
    lows,
    names,
)
@settings(max_examples=100)
def test_a_vaguer_reading_is_never_safer(
    reading: Reading, both: tuple[float, float], full: list[Reading], low: float, name: str
) -> None:
    """Guards that a larger standard deviation, of a cup or of the jug, only takes away."""
    sd, more = both
    scale = 1.0 if reading.kind == "glycol share" else 30.0
    sharp = reading.model_copy(update={"sd": scale * sd})
    vague = reading.model_copy(update={"sd": scale * (sd + more)})
    product = PRODUCTS[name]
    clear, dim = (product_as_read(product, [*full, r]) for r in (sharp, vague))
    assert (dim.glycol or 0.0) <= (clear.glycol or 0.0)
    assert (dim.ethanol or 0.0) <= (clear.ethanol or 0.0)
    for part in judged(low, name):
        found = heard(part, [sharp], low, product, full)
        assert RANK[heard(part, [vague], low, product, full).safe] <= RANK[found.safe]
        found = heard(part, [sharp], low, product, [*full, sharp])
        assert RANK[heard(part, [sharp], low, product, [*full, vague]).safe] <= RANK[found.safe]


@given(
    st.floats(0.0, 0.5),
    st.floats(0.05, 0.5),
    st.floats(0.0, 0.05),
    st.floats(0.2, 2.0),
    scales.filter(lambda scale: scale != "refractometer"),
)
def test_an_error_of_scale_cancels(
    outlet: float, jug: float, sd: float, factor: float, instrument: str | None
) -> None:
    """Guards that the ratio to the jug and its uncertainty are free of a common factor."""
    plain, wrong = (
        relative_strength(
            *(
                built(kind="glycol share", value=k * share, sd=k * sd, instrument=instrument)
                for share in (outlet, jug)
            )
        )
        for k in (1.0, factor)
    )
    assert plain is not None
    assert wrong is not None
    assert abs(plain.strength - wrong.strength) <= 1e-9 * max(1.0, plain.strength)
    assert abs(plain.weakest - wrong.weakest) <= 1e-9


@given(points | cups, points | cups)
def test_a_ratio_is_never_kept_beyond_its_uncertainty(outlet: Reading, jug: Reading) -> None:
    """Guards that the weakest ratio lies two deviations below the ratio, and within 0 and 1."""
    found = relative_strength(outlet, jug)
    assume(found is not None)
    assert found is not None
    assert 0.0 <= found.weakest <= 1.0
    assert found.weakest <= max(0.0, found.strength - 2.0 * found.sd)


@given(shares, shares)
def test_more_product_is_never_less_pink(one: float, other: float) -> None:
    """Guards that the likelihood of colour grows with the share and stays a likelihood."""
    pale, deep = sorted((one, other))
    assert 0.0 < likelihood_pink(pale) <= likelihood_pink(deep) < 1.0

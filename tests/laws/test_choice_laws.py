from dataclasses import replace
from decimal import Decimal

from hypothesis import given, settings
from hypothesis import strategies as st

from tests.unit.procedure.ready_coach import FEW, ready
from wintertight.coach.kinds import Pocket
from wintertight.fluids.product import Product
from wintertight.procedure.antifreeze import ANSWERS, choose_antifreeze, judge_product
from wintertight.procedure.orders import compare_orders
from wintertight.procedure.stop_rules import compare_stop_rules

lows = st.floats(-55.0, 2.0)
ratings = st.none() | st.floats(-75.0, 0.0)
shares = st.none() | st.floats(0.0, 0.5)
places = st.sets(st.sampled_from(["open", "relieved", "sealed"]), min_size=1)


@st.composite
def products(draw: st.DrawFn, name: str = "x") -> Product:
    """Draw a product by what its label prints."""
    price = draw(st.none() | st.integers(1, 2000))
    return Product(
        name,
        draw(shares),
        draw(shares),
        draw(ratings),
        draw(ratings),
        draw(st.sampled_from([1e-3, 3.785e-3, 18.9e-3])),
        None if price is None else Decimal(price) / 100,
        draw(st.none() | st.integers(0, 12)),
    )


@st.composite
def lists(draw: st.DrawFn) -> list[Product]:
    """Draw a list of products with different names."""
    return [draw(products(f"p{i}")) for i in range(draw(st.integers(1, 6)))]


@given(products(), lows, st.floats(0.0, 30.0), places)
def test_colder_never_makes_a_product_suit(
    product: Product, low: float, colder: float, pockets: set[Pocket]
) -> None:
    """Guards that a colder design low gives no better answer and no smaller share."""
    answer, _, share = judge_product(product, low, pockets)
    harsher, _, more = judge_product(product, low - colder, pockets)
    assert ANSWERS.index(harsher) >= ANSWERS.index(answer)
    if share is not None and more is not None:
        assert more >= share - 1e-6


@given(products(), lows, places, places)
def test_more_pockets_never_make_a_product_suit(
    product: Product, low: float, some: set[Pocket], more: set[Pocket]
) -> None:
    """Guards that a coach with one more sort of pocket gets no better answer."""
    few, many = judge_product(product, low, some), judge_product(product, low, some | more)
    assert ANSWERS.index(many[0]) >= ANSWERS.index(few[0])


@given(ratings, ratings, lows, places)
def test_a_rating_alone_never_suits(
    burst: float | None, freeze: float | None, low: float, pockets: set[Pocket]
) -> None:
    """Guards that unknown is never taken as good, however cold a label's promise is."""
    product = Product("x", None, None, burst, freeze, 1e-3)
    answer, _, share = judge_product(product, low, pockets)
    assert answer != "suits"
    assert share in {None, 1.0}
    if burst is None and freeze is None:
        assert share is None


@given(lists(), lows, st.integers(0, 5), st.integers(0, 12), st.floats(1e-4, 0.05))
def test_more_stock_is_never_worse(
    some: list[Product], low: float, which: int, more: int, needed: float
) -> None:
    """Guards that a fuller shelf moves a product down no list."""
    i = which % len(some)
    had = some[i].stock or 0
    before, after = (
        [
            c.product.name
            for c in choose_antifreeze(
                [*some[:i], replace(some[i], stock=stock), *some[i + 1 :]], low, ["open"], needed
            )
        ]
        for stock in (had, had + more)
    )
    assert after.index(some[i].name) <= before.index(some[i].name)


@given(lists(), lows, st.randoms(use_true_random=False), st.floats(1e-4, 0.05))
def test_the_order_of_the_list_changes_nothing(
    some: list[Product], low: float, chance: object, needed: float
) -> None:
    """Guards that the shop may list its products as it likes."""
    shuffled = list(some)
    chance.shuffle(shuffled)  # type: ignore[attr-defined]
    first, again = (choose_antifreeze(each, low, ["open"], needed) for each in (some, shuffled))
    assert first == again


@given(lists(), lows, st.floats(1e-4, 0.05))
def test_what_is_bought_is_enough_and_no_more(
    some: list[Product], low: float, needed: float
) -> None:
    """Guards that the containers hold the job, that one fewer does not, and what they cost."""
    for choice in choose_antifreeze(some, low, ["open", "relieved"], needed):
        if choice.count is None:
            assert choice.answer in {"unproven", "does not suit", "refused"}
            continue
        size = choice.product.container_m3
        assert choice.count * size >= needed * (1.0 - 1e-6)
        assert (choice.count - 1) * size < needed
        if choice.product.price is not None:
            assert choice.cost == sum([choice.product.price] * choice.count)


VERDICT = {"gap": 0, "unproven": 1, "safe": 2}


@given(st.integers(0, 12), st.integers(1, 12), st.sampled_from([-6.0, -23.3]))
@settings(max_examples=12)
def test_running_on_longer_is_never_worse(seconds: int, more: int, low: float) -> None:
    """Guards that a longer count at every outlet gives no worse verdict and takes more."""
    of = ready(low_degC=low)
    short, longer = (
        compare_stop_rules(of, dict.fromkeys(of.nearest, float(s)))[0]
        for s in (seconds, seconds + more)
    )
    assert VERDICT[longer.verdict] >= VERDICT[short.verdict]
    assert longer.volume_m3 > short.volume_m3


@given(st.permutations(FEW[:4]))
@settings(max_examples=4)
def test_the_order_in_which_outlets_are_named_changes_nothing(named: list[str]) -> None:
    """Guards that the orders compared are those of the coach, however its outlets are listed."""
    assert compare_orders(ready(), tuple(named)) == compare_orders(ready(), FEW[:4])

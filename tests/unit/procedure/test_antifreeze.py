from dataclasses import replace
from decimal import Decimal

import pytest

from tests.unit.procedure.demo_coach import GALLON_M3, PRODUCTS, SMALL, card, celsius
from wintertight.coach.kinds import Pocket
from wintertight.cold.burst import glycol_needed
from wintertight.errors import OutOfRange
from wintertight.fluids.product import Product
from wintertight.procedure.antifreeze import (
    ProductChoice,
    choose_antifreeze,
    has_flame,
    judge_product,
    pockets_of,
)

LOW = celsius(-10.0)
NEEDED_M3 = 2.6 * GALLON_M3
PINK, BLUE = PRODUCTS["pink"], PRODUCTS["blue"]


def labelled(  # noqa: PLR0913 - a label has this many lines
    name: str = "x",
    glycol: float | None = None,
    ethanol: float | None = None,
    burst: float | None = None,
    freeze: float | None = None,
    *,
    price: str | None = "4.00",
    stock: int | None = 9,
) -> Product:
    """Give a product by what its label prints; ratings in [degC]."""
    cost = None if price is None else Decimal(price)
    return Product(name, glycol, ethanol, burst, freeze, GALLON_M3, cost, stock)


def chosen(
    *products: Product, low: float = LOW, needed_m3: float = NEEDED_M3, flame: bool = False
) -> tuple[ProductChoice, ...]:
    """Choose for a coach with open and relieved pockets."""
    return choose_antifreeze(products, low, ["open", "relieved"], needed_m3, flame=flame)


def names(choices: tuple[ProductChoice, ...]) -> list[str]:
    """Give the names of products, best first."""
    return [choice.product.name for choice in choices]


@pytest.mark.parametrize("degF", [20.0, 0.0, -20.0])
@pytest.mark.parametrize("pocket", ["open", "sealed"])
def test_the_share_is_the_weakest_glycol_over_the_label(degF: float, pocket: Pocket) -> None:
    """Guards the share against the glycol that the published tables ask for, over the label's."""
    answer, why, share = judge_product(BLUE, celsius(degF), [pocket])
    weakest = glycol_needed(celsius(degF), pocket, relieved=True)
    assert (answer, why) == ("suits", "strong enough")
    assert share == pytest.approx(weakest / 0.60, abs=1e-4)


def test_the_worst_pocket_decides() -> None:
    """Guards that one sealed pocket is enough to ask for more, or to refuse a product."""
    _, _, only_open = judge_product(BLUE, LOW, ["open", "relieved"])
    _, _, also_sealed = judge_product(BLUE, LOW, ["open", "sealed"])
    _, _, only_sealed = judge_product(BLUE, LOW, ["sealed"])
    assert only_open is not None
    assert also_sealed is not None
    assert also_sealed == only_sealed
    assert also_sealed > only_open
    assert judge_product(PINK, LOW, ["open"])[0] == "suits"
    assert judge_product(PINK, LOW, ["open", "sealed"]) == ("does not suit", "too weak", None)


@pytest.mark.parametrize(
    ("product", "answer", "why", "share"),
    [
        (labelled(burst=-45.6), "unproven", "only its rating", 1.0),
        (labelled(burst=-20.0), "does not suit", "rating too warm", None),
        (labelled(), "unproven", "nothing to go by", None),
        (labelled(freeze=-45.6), "unproven", "nothing to go by", None),
        (labelled(glycol=0.2, ethanol=0.2, burst=-45.6), "unproven", "only its rating", 1.0),
        (labelled(glycol=0.2, ethanol=0.2), "unproven", "nothing to go by", None),
        (labelled(glycol=0.2, ethanol=0.2, burst=-20.0), "does not suit", "rating too warm", None),
        (labelled(glycol=0.01, ethanol=0.01, burst=-45.6), "does not suit", "too weak", None),
        (labelled(ethanol=0.32, burst=-45.6), "unproven", "only its rating", 1.0),
        (labelled(ethanol=0.32), "unproven", "nothing to go by", None),
        (labelled(ethanol=0.05, burst=-45.6), "does not suit", "too weak", None),
        (labelled(glycol=0.05, burst=-45.6), "does not suit", "too weak", None),
    ],
)
def test_what_a_label_is_worth(
    product: Product, answer: str, why: str, share: float | None
) -> None:
    """Guards that a rating alone never suits, holds undiluted only, and never saves a weak mix."""
    assert judge_product(product, LOW, ["open", "relieved"]) == (answer, why, share)


def test_a_sealed_pocket_asks_for_the_freeze_rating() -> None:
    """Guards that a burst rating says nothing of a pocket in which nothing may freeze."""
    assert judge_product(labelled(burst=-45.6), LOW, ["open", "sealed"])[1] == "nothing to go by"
    both = labelled(burst=-45.6, freeze=-30.0)
    assert judge_product(both, LOW, ["open", "sealed"]) == ("unproven", "only its rating", 1.0)
    warm = labelled(burst=-45.6, freeze=-12.0)
    assert judge_product(warm, LOW, ["open", "sealed"])[1] == "rating too warm"


@pytest.mark.parametrize(
    ("name", "refused"),
    [
        ("Ethylene-glycol coolant", True),
        ("PURE ethylene  glycol", True),
        ("propylene glycol, no ethylene glycol", False),
        ("motor coolant", False),
    ],
)
def test_the_poison_is_refused_by_its_name_alone(name: str, *, refused: bool) -> None:
    """Guards that ethylene glycol is refused whatever else its label says, and no brand is."""
    (choice,) = chosen(labelled(name, glycol=0.5, burst=-60.0))
    assert (choice.answer == "refused") is refused
    assert (choice.count is None) is refused


def test_containers_are_whole_and_the_cost_is_exact() -> None:
    """Guards the count, the money and the shelf by hand: 2.6 gallons are three jugs, 12.75."""
    (choice,) = chosen(replace(PINK, stock=3))
    assert (choice.count, choice.cost, choice.enough) == (3, Decimal("12.75"), True)
    (choice,) = chosen(replace(PINK, stock=2))
    assert choice.enough is False
    (choice,) = chosen(replace(PINK, stock=None, price=None))
    assert (choice.cost, choice.enough) == (None, None)


@pytest.mark.parametrize(("gallons", "count"), [(0.1, 1), (3.0, 3), (3.001, 4)])
def test_exactly_full_jugs_need_no_other(gallons: float, count: int) -> None:
    """Guards the rounding at whole containers, and that every job takes one at least."""
    assert chosen(PINK, needed_m3=gallons * GALLON_M3)[0].count == count


def test_what_was_worked_out_for_a_product_counts() -> None:
    """Guards that a stronger product that takes less is bought in fewer containers."""
    needed = {BLUE.name: 1.5 * GALLON_M3}
    found = choose_antifreeze([PINK, BLUE], LOW, ["open"], NEEDED_M3, needed_of_m3=needed)
    assert {c.product.name: c.count for c in found} == {PINK.name: 3, BLUE.name: 2}


def test_best_first() -> None:
    """Guards the order: suits, then the shelf, then the price of the job, unknown prices last."""
    weak, rated = labelled("weak", glycol=0.1), labelled("rated", burst=-45.6, price="0.10")
    dear = labelled("dear", glycol=0.4, price="9.00")
    cheap = labelled("cheap", glycol=0.4, price="3.00")
    gone = labelled("gone", glycol=0.4, price="1.00", stock=1)
    uncounted = labelled("uncounted", glycol=0.4, price="2.00", stock=None)
    unpriced = labelled("unpriced", glycol=0.4, price=None)
    found = chosen(weak, gone, rated, uncounted, dear, unpriced, cheap)
    assert names(found) == ["cheap", "dear", "unpriced", "uncounted", "gone", "rated", "weak"]


def test_a_flame_is_a_caution_and_no_refusal() -> None:
    """Guards that spirit, and what may be spirit, is told of where a pilot may be lit."""
    spirit = labelled("spirit", ethanol=0.28)
    found = chosen(spirit, labelled("rated", burst=-45.6), PINK, low=-6.0, flame=True)
    assert {c.product.name: c.cautions for c in found} == {
        "spirit": ("burns",),
        "rated": ("may burn",),
        PINK.name: (),
    }
    assert next(c for c in found if c.product is spirit).answer == "suits"
    assert not any(c.cautions for c in chosen(spirit, low=-6.0))


def test_a_card_tells_its_pockets_and_its_flame() -> None:
    """Guards what is read off a card: open lines, relieved taps, a burner or none."""
    plain = card(SMALL)
    assert pockets_of(plain) == {"open", "relieved"}
    assert has_flame(plain)
    unlit = [f.model_copy(update={"heat": ()}) for f in plain.fittings]
    assert not has_flame(plain.model_copy(update={"fittings": tuple(unlit)}))


@pytest.mark.parametrize("needed", [0.0, -1.0, float("inf"), float("nan")])
def test_a_job_takes_something(needed: float) -> None:
    """Guards that no purchase is worked out from a volume that cannot be."""
    with pytest.raises(OutOfRange, match="above zero"):
        chosen(PINK, needed_m3=needed)

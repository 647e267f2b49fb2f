import pytest

from tests.unit.procedure.demo_coach import PINK, PRODUCTS, SMALL, celsius, planned
from wintertight.coach.kinds import Pocket
from wintertight.cold.burst import glycol_needed
from wintertight.flow.replay import replay
from wintertight.flow.state import arriving_state
from wintertight.procedure.run_on import SHORTEST_S, share_needed
from wintertight.proof.judge import Bench, prove_parts


@pytest.mark.parametrize("degF", [20.0, 0.0, -10.0, -20.0])
@pytest.mark.parametrize("pocket", ["open", "relieved", "sealed"])
def test_share_needed_is_what_the_burst_criterion_asks_for(
    degF: float,
    pocket: Pocket,
) -> None:
    """Guards the share of the product against the weakest glycol found the other way round."""
    low = celsius(degF)
    weakest = glycol_needed(low, pocket, relieved=True)
    share = share_needed(low, pocket, PRODUCTS["blue"])
    # Both are found by halving; a tenth of a thousandth is far below what any of it is known to.
    assert share == pytest.approx(weakest / 0.60, abs=1e-4)


@pytest.mark.parametrize(
    ("product", "degF", "pocket"),
    [("pink", -40.0, "open"), ("pink", -10.0, "sealed"), ("spirit", -10.0, "open")],
)
def test_a_product_too_weak_has_no_share(
    product: str,
    degF: float,
    pocket: Pocket,
) -> None:
    """Guards that None says: not even the undiluted product is shown to suffice."""
    assert share_needed(celsius(degF), pocket, PRODUCTS[product]) is None


def test_a_product_known_by_its_rating_must_be_undiluted() -> None:
    """Guards that unknown composition earns no credit for dilution."""
    share = share_needed(celsius(-10.0), "open", PRODUCTS["thrift"])
    assert share is not None
    assert share > 0.998


@pytest.mark.parametrize("product", ["pink", "blue", "thrift", "spirit"])
def test_the_proof_of_a_plan_is_that_of_its_own_steps(product: str) -> None:
    """Guards that what the planner ran for each outlet is what its sheet asks for."""
    plan = planned(product=product, text=SMALL)
    network = plan.careful.network
    actions = [action for s in plan.steps for action in s.step.actions]
    end = replay(network, arriving_state(network), actions).end
    again = prove_parts(Bench(plan.card, network, end, plan.low_degC, plan.product))
    for part, twin in zip(plan.parts, again, strict=True):
        assert (part.id, part.safe, part.reason) == (twin.id, twin.safe, twin.reason)
        for share, other in zip(_shares(part.worst), _shares(twin.worst), strict=True):
            assert share == pytest.approx(other, abs=1e-6), part.id


def _shares(contents: object) -> list[float]:
    return [getattr(contents, name) for name in ("glycol", "ethanol", "rated", "air")]


def test_gallons_are_not_spent_on_what_is_out_of_reach() -> None:
    """Guards that a hopeless product is not rinsed through: it gets a usual run-on and a gap."""
    usual = planned(-10.0, text=SMALL).antifreeze.p50
    assert planned(-40.0, text=SMALL).antifreeze.p50 < 1.5 * usual
    assert planned(-10.0, "thrift", text=SMALL).antifreeze.p50 < 1.5 * usual


def test_run_on_is_whole_seconds_and_no_shorter_than_a_hand_is_quick() -> None:
    """Guards that a technician can count what the sheet asks for."""
    counted = [s.run_on_s for s in planned().steps if s.step.outlet]
    assert all(c is not None and c == int(c) and c >= SHORTEST_S for c in counted)


def test_the_product_is_asked_for_by_its_own_strength() -> None:
    """Guards that a stronger product needs less of itself."""
    weak = share_needed(celsius(-10.0), "open", PINK)
    strong = share_needed(celsius(-10.0), "open", PRODUCTS["blue"])
    assert weak is not None
    assert strong is not None
    assert strong == pytest.approx(weak * 0.35 / 0.60, abs=1e-4)

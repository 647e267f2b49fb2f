"""A winterized coach that was used: what that voids, and what makes it good."""

import pytest

from tests.methods.every_plan import CARDS, low_of, plan_of, product_of
from wintertight.errors import ChoiceError
from wintertight.procedure.warm_zone import with_warm_rooms
from wintertight.procedure.winter_use import UsedSince, use_named, used_since

NAME = "middle-travel-trailer"
USES = [(["kitchen.cold"], []), (["shower"], ["toilet"]), ([], ["kitchen", "toilet"])]


def after(ran: list[str], flushed: list[str], name: str = NAME) -> UsedSince:
    """Use a coach that its own pump winterized."""
    card = CARDS[name]
    return used_since(card, product_of(card), low_of(card), use_named(card, ran, flushed))


@pytest.mark.parametrize(("ran", "flushed"), USES)
def test_use_voids_and_is_made_good(ran: list[str], flushed: list[str]) -> None:
    """Guards the errand: protected, then not, then protected again with less than before."""
    since = after(ran, flushed)
    whole = plan_of(NAME, "pump")
    assert whole.verdict == "safe"
    assert since.verdict in {"gap", "unproven"}
    assert since.voided
    assert since.again.verdict == "safe"
    assert since.again.refused == ()
    assert since.again.antifreeze.p50 < 0.6 * whole.antifreeze.p50
    assert since.again.duration.p50 < 0.6 * whole.duration.p50


def test_water_voids_all_it_touched() -> None:
    """Guards that no part on the way of the water keeps its claim, whatever is left in it."""
    since = after(["kitchen.cold"], [])
    proof = {part.id: part for part in since.parts}
    on_the_way = {"city-inlet", "city-branch", "cold-trunk-1", "kitchen-cold", "kitchen"}
    assert on_the_way <= set(since.voided)
    assert all(proof[part].claim == "unproven" for part in on_the_way)
    assert proof["lavatory-cold"].safe is True
    assert proof["shower-trap"].safe is True


def test_a_jug_touches_no_line() -> None:
    """Guards the dry bath: flushing from a jug thins what is below, and nothing else."""
    since = after([], ["kitchen", "toilet"])
    assert set(since.voided) == {"kitchen-trap", "black-tank"}
    assert {s.step.key for s in since.again.steps} == {"pour a cup", "hang tag"}


def test_more_use_never_voids_less() -> None:
    """Guards the law: what one use voids, a use that includes it voids too."""
    one, both = after(["kitchen.cold"], []), after(["kitchen.cold", "shower.hot"], ["toilet"])
    assert set(one.voided) <= set(both.voided)


@pytest.mark.parametrize(
    ("ran", "flushed", "said"),
    [
        (["nowhere"], [], "no outlet 'nowhere' at which water could have run"),
        ([], ["filter"], "nothing on the card is below 'filter'"),
        ([], ["nowhere"], "nothing on the card is below 'nowhere'"),
    ],
)
def test_what_is_not_there_cannot_be_used(ran: list[str], flushed: list[str], said: str) -> None:
    """Guards the words for fittings that the card does not have."""
    with pytest.raises(ChoiceError, match=said):
        use_named(CARDS[NAME], ran, flushed)


@pytest.mark.parametrize("method", ["drain", "air", "thaw"])
def test_what_is_not_filled_is_done_again_as_a_whole(method: str) -> None:
    """Guards that no short cut is offered where lines are to be empty."""
    card = CARDS[NAME]
    use = use_named(card, ["kitchen"], [])
    with pytest.raises(ChoiceError, match="done again as a whole"):
        used_since(card, product_of(card), low_of(card), use, method)


def test_a_warm_room_is_neither_a_gap_nor_proven() -> None:
    """Guards heat: what would burst in a heated room is kept warm, and nobody vouches for it."""
    cold = plan_of(NAME, "drain")
    warm = with_warm_rooms(cold, ["under-bench", "bath", "galley"])
    was = {part.id: part for part in cold.parts}
    kept = [part for part in warm.parts if part.claim == "kept warm"]
    assert kept
    for part in kept:
        assert was[part.id].safe is False
        assert part.safe is None
    assert all(p == was[p.id] for p in warm.parts if p.claim != "kept warm")
    assert any(p.safe is False for p in warm.parts)  # the belly has no heat
    assert warm.verdict == "gap"


@pytest.mark.parametrize(
    ("room", "said"), [("belly", "nothing heats"), ("attic", "no compartment 'attic'")]
)
def test_only_heated_rooms_keep_warm(room: str, said: str) -> None:
    """Guards that a room without heat, or none at all, keeps nothing warm."""
    with pytest.raises(ChoiceError, match=said):
        with_warm_rooms(plan_of(NAME, "drain"), [room])

"""What comes of wrong settings: what must burst does, and what is called harmless is."""

from collections.abc import Iterator

import pytest

from tests.unit.procedure.demo_coach import GALLON_M3, planned
from tests.unit.procedure.wrong_settings import checked_coach, of_middle, of_motorhome, the
from wintertight.flow.replay import Trace
from wintertight.flow.state import all_held
from wintertight.flow.stream import AIR
from wintertight.procedure.mistake_outcome import MistakeOutcome, mistaken_trace, outcome_of
from wintertight.procedure.mistakes import WEAK_SHARE, Mistake, possible_mistakes

pytestmark = pytest.mark.long

HEATER_M3 = 6.0 * GALLON_M3
"""The middle trailer's heater, as its card says."""

PRINTED_NEED_AT_MINUS_10F = 0.28
"""Share of glycol by volume against bursting at -10 degF, as the textbook's table prints it."""


def of_all() -> Iterator[tuple[Mistake, MistakeOutcome]]:
    """Give every mistake of the middle trailer that is the only one of its key there."""
    for mistake in possible_mistakes(planned()):
        yield mistake, of_middle(mistake.key, mistake.circumstance)


MUST_BURST = {
    ("heater left open", "full"): {"heater", "shower-hot", "kitchen-hot"},
    ("heater left open", "plug out"): {"shower-hot", "shower-cold", "lavatory-trap"},
    ("bypass shut", "full"): {"heater", "shower-hot", "kitchen-hot"},
    ("bypass shut", "drained"): {"heater"},
    ("bypass shut", "plug out"): {"shower-hot", "lavatory-trap"},
    ("inlet half open", "tank valve too"): {"fresh-tank", "filter", "kitchen-cold"},
    ("tank valve half open", "full"): {"fresh-tank", "tank-stub", "filter"},
    ("tank valve half open", "empty"): {"pump", "hose", "lavatory-trap"},
    ("suction leak", "too much air"): {"pump", "strainer", "lavatory-trap"},
    ("weak product", ""): {"filter", "kitchen-cold", "shower-hot"},
    ("cartridge left in", ""): {"filter"},
}
"""What physics leaves no doubt of: water that nothing moves, or a mixture that is too weak."""

HARMLESS = {
    ("inlet half open", "alone"),
    ("shower crossing", ""),
    ("jug ran dry", "run on"),
    ("jug ran dry", "left so"),  # the next side spits its air out, and runs until colour stays
    ("low point left open", ""),  # it lets antifreeze out, and the traps have a cup to spare
}
"""What leaves no part of the middle trailer worse off."""

NO_TAP_SHOWS_IT = {
    ("inlet half open", "alone"),
    ("inlet half open", "tank valve too"),
    ("tank valve half open", "full"),
    ("shower crossing", ""),
    ("pause button", ""),
    ("weak product", ""),
    ("wrong product", ""),
    ("cartridge left in", ""),
}
"""What only a cup beside the jug, an instrument or a look would show at the middle trailer."""


@pytest.mark.parametrize("which", MUST_BURST)
def test_what_must_burst_is_never_silently_the_same(which: tuple[str, str]) -> None:
    """Guards that a mistake which leaves water in a part names that part as one that bursts."""
    outcome = of_middle(*which)
    assert outcome.outcome == "gap"
    assert MUST_BURST[which] <= set(outcome.bursting)


def test_a_bypass_that_nothing_flows_through_is_not_vouched_for() -> None:
    """Guards the dead end a shut bypass becomes, whatever the heater holds."""
    for how in ("full", "drained", "plug out"):
        outcome = of_middle("bypass shut", how)
        assert {"bypass-a", "bypass-b", "bypass-valve"} <= set(outcome.parts)


def test_what_is_called_the_same_is_known() -> None:
    """Guards the list of what leaves no part worse off: it is looked at, never just accepted."""
    same = {(m.key, m.circumstance) for m, o in of_all() if o.outcome == "same"}
    assert same == HARMLESS
    assert all(not o.parts and not o.water_m3 for _, o in of_all() if o.outcome == "same")


def test_what_no_tap_shows_is_known() -> None:
    """Guards the list of what nobody would notice while filling."""
    assert {(m.key, m.circumstance) for m, o in of_all() if not o.noticed} == NO_TAP_SHOWS_IT


def test_what_bursts_is_among_what_is_worse_off() -> None:
    """Guards the two lists of parts against each other and against the outcome."""
    for mistake, outcome in of_all():
        assert set(outcome.bursting) <= set(outcome.parts)
        assert bool(outcome.bursting) is (outcome.outcome == "gap"), mistake
        assert outcome.water_m3 >= 0.0


def test_a_full_heater_stays_nearly_full_beside_an_open_bypass() -> None:
    """Guards the water left: a heater of six gallons, and the part of the flow it gets."""
    outcome = of_middle("heater left open", "full")
    assert outcome.parts[0] == "heater"
    assert HEATER_M3 < outcome.water_m3 < 1.15 * HEATER_M3
    pale = {s.at: s.share for s in outcome.signs if s.key == "stays pale"}
    hot = {"kitchen.hot", "lavatory.hot", "shower.hot", "outside-shower.hot", "low-hot"}
    assert set(pale) == hot
    assert all(share is not None and 0.6 < share < 0.8 for share in pale.values())


def test_an_empty_heater_takes_its_own_volume() -> None:
    """Guards the antifreeze that fills a heater in the flow: all of it but the heel."""
    outcome = of_middle("bypass shut", "drained")
    assert 0.95 * HEATER_M3 < outcome.more_m3 < 1.15 * HEATER_M3
    assert outcome.jugs == 6
    late = [s.seconds for s in outcome.signs if s.key == "late"]
    assert late
    assert late[0] is not None
    # At the flow of a small pump into one tap, which is at most three gallons a minute.
    assert late[0] > outcome.more_m3 / (3.0 * GALLON_M3 / 60.0)


@pytest.mark.parametrize("key", ["heater left open", "bypass shut"])
def test_an_open_plug_hole_is_seen_under_the_coach(key: str) -> None:
    """Guards that antifreeze which runs to the ground is seen there, and no tap gets enough."""
    outcome = of_middle(key, "plug out")
    assert "heater" in {s.at for s in outcome.signs if s.key == "runs elsewhere"}
    assert {s.key for s in outcome.signs} >= {"nothing comes", "trickles"}
    assert outcome.more_m3 > 5.0 * GALLON_M3


def test_a_stretched_jug_is_too_weak_by_the_printed_table() -> None:
    """Guards a quarter of water in the jug: 26 % of glycol where the table asks for 28 %."""
    strong = planned().product.contents().glycol
    weak = (1.0 - WEAK_SHARE) * strong
    assert weak < PRINTED_NEED_AT_MINUS_10F < strong
    outcome, trace = of_middle("weak product"), mistaken_trace(planned(), the("weak product"))
    assert outcome.outcome == "gap"
    assert outcome.signs == ()
    assert abs(outcome.more_m3) < 0.01 * GALLON_M3
    # What much has flowed through holds the mixture itself.
    assert trace.end.mean("suction-d").glycol == pytest.approx(weak, rel=1e-3)
    assert trace.end.mean("pump").glycol == pytest.approx(weak, rel=1e-3)


def test_water_left_is_not_the_products_own() -> None:
    """Guards the water a stretched jug leaves: its quarter, in what it fills, and nothing else."""
    trace = mistaken_trace(planned(), the("weak product"))
    outcome = of_middle("weak product")
    network = trace.network
    lines = [k for part in outcome.parts for k in network.links_of.get(part, ())]
    pools = [network.pools[part].volume_m3 for part in outcome.parts if part in network.pools]
    filled = sum(k.volume_m3 for k in lines) + sum(pools)
    assert WEAK_SHARE * filled < outcome.water_m3 < 2.0 * WEAK_SHARE * filled


def air_m3(trace: Trace) -> tuple[float, ...]:
    """Give the air that came into a coach, that went out, and that it holds at the end [m3]."""
    books, held = trace.end.books, all_held(trace.end)
    return tuple(float(some[1 + AIR]) for some in (books.came_in, books.went_out, held))


def test_the_air_of_a_dry_jug_leaves_at_the_outlet_and_the_books_close() -> None:
    """Guards a slug of air: what was drawn in ten seconds comes out again where it was drawn."""
    mistake = the("jug ran dry", "run on")
    trace = mistaken_trace(planned(), mistake)
    usual = mistaken_trace(planned(), Mistake("low point left open", "low-cold"))  # set rightly
    runs = [m for m in trace.moments if m.action.part == mistake.part and m.outcome.run]
    dry = next(m for m in runs if m.action.until and m.action.until.seconds == 10.0)
    assert dry.outcome.run is not None
    slug = dry.outcome.run.volume_m3
    assert slug == pytest.approx(10.0 * dry.outcome.run.flow_m3_s, rel=0.05)
    assert trace.balance.relative_error < 1e-9
    came, went, held = (a - b for a, b in zip(air_m3(trace), air_m3(usual), strict=True))
    assert came == pytest.approx(slug, rel=1e-6)
    assert went + held == pytest.approx(slug, rel=1e-6)
    assert went == pytest.approx(slug, rel=0.03)  # a few bubbles are still on their way
    after = runs[-1].outcome.run
    assert after is not None
    assert dry.outcome.run.air_m3 + after.air_m3 > 0.95 * slug
    assert [s.key for s in of_middle("jug ran dry", "run on").signs] == ["sputters"]


def test_the_air_of_a_jug_that_ran_dry_is_spat_out() -> None:
    """Guards that colour which air follows is none: the next side runs until it stays."""
    outcome = of_middle("jug ran dry", "left so")
    assert outcome.noticed
    assert outcome.outcome == "same"
    assert outcome.more_m3 > 0.0


def test_water_from_a_full_tank_saves_antifreeze_and_shows_in_the_jugs() -> None:
    """Guards that a pump which draws water as well empties fewer jugs."""
    one, both = (
        of_middle("tank valve half open", "full"),
        of_middle("inlet half open", "tank valve too"),
    )
    assert both.more_m3 < one.more_m3 < 0.0
    assert both.jugs < 0
    assert len(both.parts) >= len(one.parts)


def test_a_shower_with_a_shut_head_joins_hot_and_cold() -> None:
    """Guards that a crossing is told by the part it runs through, and only where it does."""
    crossed = {(m.key, m.part) for m, o in of_all() if o.crosses}
    assert crossed == {("shower crossing", "outside-shower"), ("pause button", "shower")}
    assert of_middle("shower crossing").crosses == ("outside-shower",)


@pytest.mark.parametrize("low", ["low-cold", "low-hot"])
def test_an_open_low_point_costs_antifreeze_and_runs_there(low: str) -> None:
    """Guards what a low point left open costs, and that it is seen."""
    mistake = next(m for m in possible_mistakes(planned()) if m.part == low)
    outcome = outcome_of(planned(), mistake)
    assert 1.0 * GALLON_M3 < outcome.more_m3 < 3.0 * GALLON_M3
    assert [(s.key, s.at) for s in outcome.signs] == [("runs elsewhere", low)]


@pytest.mark.parametrize(
    ("key", "parts"),
    [
        ("tempering valve one-sided", {"tempering", "mix-cold"}),
        ("diverter left off", {"div-a", "div-b"}),
        ("branch left shut", {"ice-line", "fridge-a"}),
    ],
)
def test_what_is_shut_off_keeps_its_water(key: str, parts: set[str]) -> None:
    """Guards the valves only the large motorhome has: what nothing flows through is worse off."""
    outcome = of_motorhome(key)
    assert outcome.outcome == "gap"
    assert parts <= set(outcome.parts)


def test_a_failed_check_matters_only_beside_a_drained_heater() -> None:
    """Guards that a check on the way does no harm, and one at the heater opens the way out."""
    on_the_way = of_motorhome("failed check")
    assert on_the_way.outcome == "same"
    assert on_the_way.signs == ()
    assert on_the_way.more_m3 == pytest.approx(0.0, abs=1e-6)
    plan = checked_coach()
    outcome = outcome_of(plan, the("failed check", plan=plan))
    assert outcome.outcome == "gap"
    assert "heater" in {s.at for s in outcome.signs if s.key == "runs elsewhere"}
    assert outcome.more_m3 > GALLON_M3


@pytest.mark.parametrize(
    "which",
    [
        ("heater left open", "plug out"),
        ("tank valve half open", "empty"),
        ("cartridge left in", ""),
    ],
)
def test_the_books_close_where_the_coach_itself_is_another(which: tuple[str, str]) -> None:
    """Guards that an open hole, a jug cut off and a soaked cartridge make or lose no fluid."""
    assert mistaken_trace(planned(), the(*which)).balance.relative_error < 1e-9

"""Which wrong settings a coach can have, and the job that is done with one of them."""

import pytest

from tests.unit.documents.demo_plans import demo_plan
from tests.unit.procedure.demo_coach import PRODUCTS, SMALL, planned, without
from tests.unit.procedure.wrong_settings import checked_coach, the
from wintertight.flow.losses import COEFFICIENTS
from wintertight.procedure.mistaken import (
    CARTRIDGE_SHARE,
    GIVEN,
    NETWORKS,
    PRIME_LOST,
    waits_s,
    with_mistake,
)
from wintertight.procedure.mistakes import LEAKS, MISTAKES, Mistake, possible_mistakes
from wintertight.procedure.plan import Plan
from wintertight.procedure.steps import Step

pytestmark = pytest.mark.long

ON_ONE_CARD_ONLY = {
    "tempering valve one-sided",
    "diverter left off",
    "branch left shut",
    "failed check",
}

BYPASS = ("bypass-valve", "bypass-a", "bypass-b")


def there(plan: Plan) -> set[tuple[str, str]]:
    """Give key and circumstance of each mistake possible at a coach."""
    return {(m.key, m.circumstance) for m in possible_mistakes(plan)}


def done_with(mistake: Mistake, plan: Plan | None = None) -> dict[str, Step]:
    """Give the steps of a job done with a mistake, by id."""
    plan = plan or planned()
    steps, _ = with_mistake(plan.steps, plan.careful.network, mistake)
    return {step.id: step for step in steps}


def test_every_mistake_is_possible_at_some_coach_of_the_demo() -> None:
    """Guards against a key or circumstance that no coach can reach."""
    plain, large = there(planned()), there(demo_plan("large-motorhome"))
    known = {(key, how) for key, hows in MISTAKES.items() for how in hows or ("",)}
    assert plain | large == known
    assert {key for key, _ in large - plain} == ON_ONE_CARD_ONLY


@pytest.mark.parametrize("coach", ["middle", "large-motorhome"])
def test_a_mistake_names_what_the_coach_has(coach: str) -> None:
    """Guards controls, settings, skipped steps and parts against names that do not exist."""
    plan = planned() if coach == "middle" else demo_plan(coach)
    network = plan.careful.network
    ids = {step.step.id for step in plan.steps}
    for mistake in possible_mistakes(plan):
        assert mistake.part in network.controls or mistake.part in plan.card.fitting
        assert set(mistake.skips) <= ids, mistake
        for control, setting in mistake.sets.items():
            assert setting in network.controls[control].settings, mistake


def test_no_two_mistakes_are_alike() -> None:
    """Guards that key, circumstance and part tell one mistake from another."""
    found = [(m.key, m.circumstance, m.part) for m in possible_mistakes(planned())]
    assert len(found) == len(set(found))


def test_what_a_coach_does_not_have_cannot_stand_wrongly() -> None:
    """Guards that no bypass, no tank and no jug valve make no mistake."""
    tank = ("fresh-tank", "tank-valve", "tank-stub", "suction-a")
    found = there(planned(text=without(*BYPASS, *tank, text=SMALL)))
    missing = {"heater left open", "bypass shut", "tank valve half open"}
    assert {key for key, _ in found} & missing == set()
    assert ("inlet half open", "alone") in found
    assert ("inlet half open", "tank valve too") not in found


def test_a_product_nobody_knows_cannot_be_mistaken_for_one() -> None:
    """Guards that the wrong product is asked only where the right one is known."""
    assert ("wrong product", "") in there(planned(text=SMALL))
    assert ("wrong product", "") not in there(planned(product="thrift", text=SMALL))


def test_nothing_else_is_changed() -> None:
    """Guards that only the handle, or only the step left out, differs from the job done rightly."""
    plan = planned()
    for mistake in (the("low point left open"), the("cartridge left in")):
        done = done_with(mistake)
        differ = {p.step.id for p in plan.steps if p.step != done[p.step.id]}
        assert differ in ({"shut-everything"}, set(mistake.skips))


def test_a_valve_no_step_sets_is_set_with_the_hose() -> None:
    """Guards that what no step sets stands wrongly from the setting of the handles on."""
    head = done_with(the("shower crossing"))["draw-from-jug:jug-valve"].actions
    assert ("outside-shower/head", "shut") in {(a.part, a.setting) for a in head}


def test_what_is_poured_comes_from_the_same_jug() -> None:
    """Guards the cups for the traps: a stretched jug is as weak there as in the lines."""
    for key in ("weak product", "wrong product"):
        poured = [
            a.contents
            for step in done_with(the(key)).values()
            for a in step.actions
            if a.verb in {"feed", "pour"} and a.contents
        ]
        assert len(poured) > 1
        assert len(set(poured)) == 1
        assert poured[0] != planned().product.contents()
    weak = done_with(the("weak product"))["draw-from-jug:jug-valve"].actions[-1].contents
    assert weak is not None
    assert weak.glycol == pytest.approx(0.75 * 0.35)
    assert weak.water == pytest.approx(0.25 + 0.75 * 0.65)


def test_air_at_the_suction_does_not_come_out_of_the_cups() -> None:
    """Guards that a leaky joint thins what is drawn and not what is poured by hand."""
    for how, share in LEAKS.items():
        done = done_with(the("suction leak", how))
        drawn = done["draw-from-jug:jug-valve"].actions[-1].contents
        assert drawn is not None
        assert drawn.air == (1.0 if share >= PRIME_LOST else share)
        cups = [a.contents for s in done.values() for a in s.actions if a.verb == "pour"]
        assert cups == [planned().product.contents()] * len(cups)


def test_far_more_air_than_liquid_comes_past_the_valve_of_an_empty_tank() -> None:
    """Guards why the pump lifts nothing then, by Bernoulli: the same suction on both ways."""
    liquid_kg_m3, air_kg_m3 = 1030.0, 1.2
    resists = COEFFICIENTS["half-turned valve"] / COEFFICIENTS["ball valve"]
    air_per_liquid = (liquid_kg_m3 / air_kg_m3 / resists) ** 0.5
    assert air_per_liquid / (1.0 + air_per_liquid) > PRIME_LOST + 0.3


def test_overdue_colour_is_given_up_and_its_run_on_is_not_cut() -> None:
    """Guards how long an outlet runs beside an open hole: its time on the sheet, and a while."""
    plan = planned()
    done = done_with(the("heater left open", "plug out"))
    for p in plan.steps:
        if p.step.outlet and p.run and p.run.first_colour_s is not None and p.run_on_s is not None:
            until = done[p.step.id].actions[0].until
            assert until is not None
            assert until.seconds == waits_s(p.run.first_colour_s) + p.run_on_s
            assert until.run_on_s == p.run_on_s


def test_each_jug_that_runs_dry_gives_air_and_then_the_product_again() -> None:
    """Guards the order of things at the outlet where the jug runs empty."""
    for how, verbs in (("left so", "run feed run feed"), ("run on", "run feed run feed run")):
        mistake = the("jug ran dry", how)
        step = done_with(mistake)[f"run-outlet:{mistake.part}"]
        assert " ".join(a.verb for a in step.actions) == verbs
        fed = [a.contents for a in step.actions if a.contents]
        assert [c.air for c in fed] == [1.0, 0.0]


def test_a_cartridge_and_what_flows_around_it_fill_the_housing() -> None:
    """Guards that leaving a cartridge in adds no room and takes none away."""
    plan = planned()
    _, network = with_mistake(plan.steps, plan.careful.network, the("cartridge left in"))
    usual, links = plan.careful.network.links["filter"], network.links_of["filter"]
    assert sum(k.volume_m3 for k in links) == pytest.approx(usual.volume_m3, rel=1e-12)
    assert min(k.volume_m3 for k in links) == pytest.approx(CARTRIDGE_SHARE * usual.volume_m3)
    assert network.links["filter"].resistance_s2_m5 > usual.resistance_s2_m5


def test_where_only_a_hand_was_wrong_the_coach_is_the_same() -> None:
    """Guards that a wrong handle is no other coach: what came before it is taken over."""
    plan = planned()
    for mistake in possible_mistakes(plan):
        _, network = with_mistake(plan.steps, plan.careful.network, mistake)
        another = mistake.hole or mistake.circumstance == "empty" or mistake.key in NETWORKS
        if not another:
            assert network is plan.careful.network, mistake
    assert set(NETWORKS) | set(GIVEN) <= set(MISTAKES)


def test_a_failed_check_beside_a_drained_heater_leads_to_its_hole() -> None:
    """Guards that a check in place of the hot valve is looked at with the plug's hole open."""
    assert the("failed check", plan=checked_coach()).hole == "heater"
    assert the("failed check", plan=demo_plan("large-motorhome")).hole is None


def test_the_products_of_the_demo_are_those_meant() -> None:
    """Guards the shares of glycol that the numbers above start from."""
    assert PRODUCTS["pink"].contents().glycol == pytest.approx(0.35)
    assert PRODUCTS["thrift"].contents().rated == 1.0

"""How one gets at a fitting, as a step says it."""

from tests.unit.procedure.demo_coach import TEXT, planned, with_line
from wintertight.documents.screen import plan_screen
from wintertight.wording.reaching import reach_texts

REACH = """panel = "the drawer front, lower left"
screws = 6
photo = "drawer.jpg"
opening = "4 min"
"""


def test_a_step_says_what_is_in_the_way() -> None:
    """Guards panel, screws, minutes and picture of what a step turns, and nothing elsewhere."""
    plan = planned(text=with_line("bypass-valve", REACH))
    told = {p.step.key: reach_texts(p.step, plan.card) for p in plan.steps}
    sentence = "Bypass valve: behind the drawer front, lower left, 6 screws, 4 min, see drawer.jpg"
    assert told.pop("set bypass") == (sentence,)
    assert not any(told.values())
    assert "6 screws, 4 min" in plan_screen(plan)


def test_nothing_of_it_changes_what_a_card_means() -> None:
    """Guards that a picture more leaves plans and records of a coach as they are."""
    usual, reached = planned().card, planned(text=with_line("bypass-valve", REACH)).card
    assert usual.card_hash == reached.card_hash
    assert with_line("bypass-valve", REACH) != TEXT

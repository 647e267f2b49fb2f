"""The plan on screen."""

from dataclasses import replace

from tests.unit.documents.demo_plans import (
    COLD,
    demo_plan,
    doubtful_plan,
    long_named_card,
    plan_of,
)
from wintertight.documents.open_parts import open_groups
from wintertight.documents.outlet_notes import outlet_notes
from wintertight.documents.screen import plan_screen
from wintertight.documents.screen_blocks import WIDTH
from wintertight.documents.shown_cautions import shown_cautions


def test_the_verdict_comes_first_and_every_step_follows() -> None:
    """Guards the order of what is read, and that no step is left out."""
    lines = plan_screen(plan_of()).splitlines()
    assert lines[0].startswith("Protected as planned to -4 °F")
    assert any(line.startswith("Bring ") and "min of work" in line for line in lines)
    numbers = [int(line[:3]) for line in lines if line[:3].strip().isdigit() and line[3:5] == "  "]
    assert numbers == list(range(1, len(plan_of().steps) + 1))


def test_no_line_is_too_wide_and_none_is_coloured() -> None:
    """Guards that the text fits a plain terminal."""
    for plan in (plan_of(), plan_of("Heron spirit -50", COLD), doubtful_plan()):
        text = plan_screen(plan, all_parts=True)
        assert max(len(line) for line in text.splitlines()) <= WIDTH
        assert "\x1b" not in text
        assert "\n\n\n" not in text


def test_parts_are_counted_and_named_only_on_request() -> None:
    """Guards that sixty proven parts do not bury what matters."""
    short, long = plan_screen(plan_of()), plan_screen(plan_of(), all_parts=True)
    assert "filled with antifreeze" in short
    assert "cold trunk 2" not in short
    assert "cold trunk 2: filled with antifreeze." in " ".join(long.split()).replace(" - ", " ")


def test_what_is_not_proven_says_what_settles_it() -> None:
    """Guards that each group of doubtful parts comes with its remedy, and like ones together."""
    text = " ".join(plan_screen(doubtful_plan()).split())
    assert "Any accumulator and any washing machine (not proven): Nobody has looked" in text
    assert "Look; enter on the card what is there, and what is not." in text
    groups = open_groups(plan_of("Heron spirit -50", COLD))
    assert {group.word for group in groups} == {"would burst"}
    assert sum(len(group.names) for group in groups) > len(groups)


def test_a_caution_is_printed_once_in_a_row() -> None:
    """Guards that cautions are not worn out by repeating, and the first is never lost."""
    plan = plan_of()
    shown = shown_cautions(plan.steps)
    cups = [shown[s.n] for s in plan.steps if s.step.key == "pour a cup"]
    assert [bool(c) for c in cups] == [True] + [False] * (len(cups) - 1)
    plug = next(s.n for s in plan.steps if s.step.key == "plug out")
    assert shown[plug] == ("plug under pressure",)
    assert {c for some in shown.values() for c in some} == {
        c for s in plan.steps for c in s.step.cautions
    }


def test_metric_is_metric() -> None:
    """Guards that no gallon or Fahrenheit slips into the metric text."""
    text = plan_screen(plan_of(), system="metric")
    assert "-20 °C" in text
    assert "°F" not in text
    assert " gal " not in text.replace("galley", "")
    assert "3.8 L each" in text


def test_the_second_side_of_a_shared_hose_is_told_which_colour_counts() -> None:
    """Guards that colour left in a shower's hose by its first side starts nobody's count."""
    plan = plan_of()
    noted = {s.step.part: outlet_notes(plan)[s.n] for s in plan.steps if s.run}
    counts = "count only colour that stays"
    assert noted["outside-shower.cold"] == "head trigger pinned"
    assert noted["outside-shower.hot"] == noted["shower.hot"] == counts
    assert noted["shower.cold"] == noted["kitchen.hot"] == ""


def test_a_way_is_told_again_where_other_outlets_come_between() -> None:
    """Guards that a note leans on the row above it only where that is the same shower's."""
    plan = plan_of()
    runs = {s.step.part: s for s in plan.steps if s.run}
    order = ("outside-shower.cold", "kitchen.cold", "outside-shower.hot")
    apart = replace(plan, steps=tuple(replace(runs[o], n=n) for n, o in enumerate(order, 1)))
    assert outlet_notes(apart)[3] == "head trigger pinned; count only colour that stays"


def test_outlets_without_a_handle_say_how_they_are_opened() -> None:
    """Guards that a machine, a fridge door and a sprayer are not merely named."""
    text = plan_screen(demo_plan("full-fifth-wheel"))
    for way in (
        "run its fill, hot",
        "hold its lever, glass under it",
        "take its line off and hold it in a cup",
        "hold its trigger, over the bowl",
        "cap off, bucket under it",
    ):
        assert f"({way})" in text
    assert "sump of the washing machine" in text
    assert max(map(len, text.splitlines())) <= WIDTH


def test_a_long_name_keeps_the_columns() -> None:
    """Guards that a long name is broken within its column."""
    text = plan_screen(replace(plan_of(), card=long_named_card()))
    assert max(map(len, text.splitlines())) <= WIDTH
    assert "tap of the second bath, behind the tall" in text


def test_where_no_colour_is_expected_the_whole_sentence_is_told() -> None:
    """Guards that nobody waits at a row of the table for colour that never comes."""
    plan = plan_of()
    dry = tuple(
        replace(s, run=replace(s.run, first_colour_s=None)) if s.run else s for s in plan.steps
    )
    text = " ".join(plan_screen(replace(plan, steps=dry)).split())
    assert "shut it and count it as not filled" in text

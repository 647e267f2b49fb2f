"""The plan on screen."""

from tests.unit.documents.demo_plans import COLD, doubtful_plan, plan_of
from wintertight.documents.open_parts import open_groups
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
    assert "Any accumulator (not proven): Nobody has looked whether" in text
    assert "Look for it; enter it on the card, or that there is none." in text
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

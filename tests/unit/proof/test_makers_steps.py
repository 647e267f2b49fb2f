"""What a maker's own steps vouch for, and what they do not."""

from tests.unit.procedure.demo_coach import DEMO, planned
from wintertight.flow.replay import replay
from wintertight.proof.judge import Bench, prove_parts

TEXT = (DEMO / "cards" / "large-motorhome.toml").read_text(encoding="utf-8")


def test_the_steps_for_the_jets_say_nothing_of_the_taps() -> None:
    """Guards that a whirlpool's taps stand on what ran through them, its jets on a person."""
    plan = planned(0.0, text=TEXT)
    parts = {part.id: part for part in plan.parts}
    taps, jets = parts["whirlpool"], parts["whirlpool/jets"]
    assert (taps.claim, jets.claim) == ("filled", "drained")
    assert "attested" not in {evidence.kind for evidence in taps.evidence}


def test_a_whirlpool_whose_taps_never_ran_is_not_safe() -> None:
    """Guards that ticking the maker's steps hides no tap that was forgotten."""
    plan = planned(0.0, text=TEXT)
    kept = [
        action
        for step in plan.steps
        for action in step.step.actions
        if not (step.step.outlet or "").startswith("whirlpool")
    ]
    end = replay(plan.careful.network, plan.careful.start, kept).end
    parts = prove_parts(Bench(plan.card, plan.careful.network, end, plan.low_degC, plan.product))
    safe = {part.id: part.safe for part in parts}
    assert safe["whirlpool"] is not True
    assert safe["whirlpool/jets"] is True

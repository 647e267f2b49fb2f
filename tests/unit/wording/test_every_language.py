"""Plans in every language but English: nothing has a hole, nothing is joined badly."""

import re
from collections.abc import Callable

import pytest

from tests.unit.documents.demo_plans import COLD, demo_card, demo_plan, doubtful_plan, plan_of
from wintertight.coach.findings import KEYS, Finding
from wintertight.coach.left_open import ASKED
from wintertight.procedure.plan import Plan
from wintertight.wording.card_questions import finding_question
from wintertight.wording.catalogue import LANGUAGES
from wintertight.wording.plans import bring_line, finding_text, minutes_line, notes, verdict_of_plan
from wintertight.wording.proofs import claim_name, evidence_text, reason, settle
from wintertight.wording.reaching import reach_texts
from wintertight.wording.steps import missed_text, setting_name, step_text, step_why

OTHERS = [language for language in LANGUAGES if language != "en"]
BROKEN = re.compile(r"[{}]|  |\(\)|: \.|\.\.|,\.|;\.|\s$|^\s")
"""A hole, a doubled blank or stop, empty brackets."""

PLANS: tuple[Callable[[], Plan], ...] = (
    lambda: plan_of(missed=True),
    lambda: plan_of("Heron spirit -50", COLD),
    doubtful_plan,
    lambda: demo_plan("large-motorhome"),
    lambda: demo_plan("no-bypass-trailer"),
)
VALUES = {"kind": "trap", "missing": "heater hot", "vin": "1ABC", "expected": "X"}


def sentences(plan: Plan, language: str) -> list[str]:
    """Give everything a sheet and a screen say of a plan."""
    card = plan.card
    said = [verdict_of_plan(plan, language), verdict_of_plan(plan, language, recorded=True)]
    said += [bring_line(plan.buy, language), minutes_line(plan.duration.p50, language)]
    said += notes(plan, language)
    for planned in plan.steps:
        said += [step_text(planned, card, language), step_why(planned.step, language)]
        said += reach_texts(planned.step, card, language)
        said += [setting_name(planned.step, card, language)] if planned.step.setting else []
        if planned.if_missed is not None:
            said.append(missed_text(planned.if_missed, card, language))
    for part in plan.parts:
        said += [claim_name(part.claim, language), reason(part, language)]
        said += [evidence_text(e, language) for e in part.evidence]
        remedy = settle(part, language, too_weak=plan.too_weak)
        assert (remedy is None) == (part.safe is True)
        said += [remedy] if remedy is not None else []
    return said


@pytest.mark.parametrize("language", OTHERS)
@pytest.mark.parametrize("made", PLANS)
def test_every_plan_is_said_whole(made: Callable[[], Plan], language: str) -> None:
    """Guards that no sentence of a whole plan has a hole, a doubled blank or a doubled stop."""
    said = sentences(made(), language)
    assert [text for text in said if BROKEN.search(text)] == []


@pytest.mark.parametrize("language", OTHERS)
@pytest.mark.parametrize("key", sorted({*KEYS, *ASKED}))
def test_every_finding_can_be_said_and_asked(key: str, language: str) -> None:
    """Guards that each finding is a sentence, and each open thing a question."""
    for keys, text_of in ((KEYS, finding_text), (ASKED, finding_question)):
        if key in keys:
            params = {name: VALUES.get(name, 2.0) for name in keys[key]}
            text = text_of(Finding(key, "kitchen", params), demo_card(), language)
            assert text.endswith((".", "?"))
            assert not BROKEN.search(text)


@pytest.mark.parametrize("made", PLANS)
def test_spanish_joins_no_article_to_a_name(made: Callable[[], Plan]) -> None:
    """Guards that no inserted name is doubled by its kind, and none follows "de el" or "a el"."""
    said = sentences(made(), "es")
    assert [t for t in said if re.search(r"\b(de|a) el\b|\by (i|hi(?!e))|\b1 partes\b", t)] == []


def test_the_cautious_words_keep_their_weight_in_spanish() -> None:
    """Guards that a verdict in Spanish is as hard as in English: not proven, would burst, void."""
    safe = "Protegida según el plan hasta -4 °F, hechos todos los pasos; sin validez si corre agua."
    assert verdict_of_plan(plan_of(), "es") == safe
    gap = verdict_of_plan(plan_of("Heron spirit -50", COLD), "es")
    assert gap.startswith("NO protegida hasta -31 °F: el hielo reventaría ")
    doubtful = verdict_of_plan(doubtful_plan(), "es")
    assert doubtful.startswith("Sin comprobar hasta -4 °F: nadie puede responder por ")

"""Everything the lower layers can emit has its sentence, and the names in braces fit."""

import re
from string import Formatter
from typing import get_args

import pytest

from tests.unit.wording.emitted import (
    argument,
    assigned,
    keywords,
    returned,
    step_parameters,
)
from wintertight.coach.findings import KEYS
from wintertight.coach.kinds import KINDS, ROLES, Pocket
from wintertight.cold.burst import ReasonKey
from wintertight.fluids.slush import WhyNull
from wintertight.procedure import place, preconditions
from wintertight.procedure.antifreeze import ChoiceCaution, Why
from wintertight.procedure.handling import HANDLING_S
from wintertight.procedure.hazards import HAZARDS
from wintertight.procedure.methods.table import METHODS
from wintertight.procedure.orders import OrderKey
from wintertight.procedure.record import REPLACE_ANODE, Instrument, ReadingKind, Result
from wintertight.procedure.steps import PHASES, Missed
from wintertight.procedure.stop_rules import Left, RuleKey
from wintertight.proof.claims import Claim, EvidenceKind, Verdict
from wintertight.proof.judge import PERHAPS
from wintertight.wording.catalogue import LANGUAGES, catalogue
from wintertight.wording.english import ENGLISH

TREATED = {"as found", "flowed", "drained", "emptied", "swept", "removed", *PERHAPS}
"""How a hollow comes by its content: `wintertight.flow.state.State.treated`."""

STEP_KEYS = set(HANDLING_S) | argument("procedure", "step", 0)
CAUTIONS = keywords("procedure", "step", "cautions") | assigned("procedure", "CAUTIONS")
REASONS = (
    set(get_args(ReasonKey))
    | argument("proof", "_unproven", 1)
    | argument("proof", "_nothing_known", 2)
    | keywords("proof", "PartProof", "reason")
    | keywords("proof", "replace", "reason")
    | returned("proof", "_reason")
    | set(PERHAPS.values())
    | keywords("procedure", "replace", "reason")
    | argument("procedure", "_judged", 2)
    | argument("procedure", "_doubted", 1)
    | assigned("procedure", "reason")
)
UNKNOWN = {"no model", "not looked at", "nobody has looked"}
EVIDENCE = (
    {f"content {how}" for how in TREATED}
    | {f"reading {kind}" for kind in get_args(ReadingKind)}
    | argument("proof", "Evidence", 1)
    | argument("procedure", "Evidence", 1)
    | UNKNOWN
)
THINGS = (
    argument("flow", "control", 1)
    | argument("flow", "control_of", 1)
    | argument("flow", "simple_outlet", 1)
    | argument("flow", "_drained_pool", 2)
)
SETTINGS = {
    s
    for some in argument("flow", "control", 2)
    | argument("flow", "simple_outlet", 2)
    | argument("flow", "_drained_pool", 3)
    | assigned("flow", "order")
    for s in some.split(" | ")
}

BUYING = {"take", "cost", "no price", "enough", "short", "not counted", "none suits"}
"""Pieces of which `wintertight.wording.choices` makes what is to be bought."""

STOP_RULES = {"as planned", "doubtful too"} | {
    f"{rule}: {left}"
    for rule in get_args(RuleKey)
    for left in get_args(Left)
    if rule != "as planned"
}
"""A rule and what it leaves; the planned one is what the others are compared with."""

EMITTED: dict[str, set[str]] = {
    "step": STEP_KEYS,
    "deed": STEP_KEYS | {REPLACE_ANODE, "off the card"},
    "result": set(get_args(Result)),
    "reading": set(get_args(ReadingKind)),
    "instrument": set(get_args(Instrument)),
    "evidence in a word": set(get_args(EvidenceKind)),
    "why": STEP_KEYS,
    "caution": CAUTIONS,
    "hazard": {h.key for h in HAZARDS},
    "phase": set(PHASES),
    "method": set(METHODS),
    "thing": THINGS,
    "setting": SETTINGS | keywords("procedure", "step", "setting"),
    "claim": set(get_args(Claim)),
    "reason": REASONS | UNKNOWN,
    "evidence": EVIDENCE,
    "kind of evidence": set(get_args(EvidenceKind)),
    "pocket": set(get_args(Pocket)),
    "verdict": set(get_args(Verdict)),
    "outcome": set(get_args(Missed.__annotations__["outcome"])),
    "null": set(get_args(WhyNull)),
    "kind": set(KINDS) | {"line"},
    "role": {role for roles in ROLES.values() for role in roles},
    "finding": set(KEYS),
    "antifreeze": set(get_args(Why)),
    "buying": set(get_args(ChoiceCaution)) | BUYING,
    "order": set(get_args(OrderKey)) | {"worst short"},
    "stop rule": STOP_RULES,
    "hindrance": set(place.KEYS),
    "precondition": set(preconditions.KEYS),
}

AT_EVERY_STEP = {"part", "parts", "outlet", "handles", "handling", "how"}
MORE_AT: dict[str, set[str]] = {
    "run outlet": {"colour", "run_on", "volume"},
    "blow outlet": {"blow_s"},
}

OURS: dict[str, set[str]] = {
    "setting": {"half", "in use"},
}
"""Said by no planner yet, and kept for those to come."""


def names_in(sentence: str) -> set[str]:
    """Give the names in braces."""
    return {name for _, name, _, _ in Formatter().parse(sentence) if name}


@pytest.mark.parametrize("subject", EMITTED)
def test_every_key_has_its_sentence(subject: str) -> None:
    """Guards that no key a lower layer can emit is without words."""
    assert sorted(EMITTED[subject] - set(ENGLISH[subject])) == []


@pytest.mark.parametrize(
    "subject",
    [
        *("step", "why", "caution", "hazard", "finding", "kind", "reason", "evidence"),
        *("antifreeze", "buying", "order", "hindrance", "precondition"),
    ],
)
def test_no_sentence_is_left_over(subject: str) -> None:
    """Guards that no sentence stays behind when its key goes."""
    known = EMITTED[subject] | OURS.get(subject, set())
    assert sorted(k for k in ENGLISH[subject] if k.partition(": ")[0] not in known) == []


def test_the_source_text_is_read() -> None:
    """Guards the reading of source text itself: it finds keys of every sort."""
    assert {"hot water", "face clear of the inlet"} <= CAUTIONS
    assert {"may not have drained", "no model", "nobody has looked"} <= REASONS
    assert {"air from the pump", "maker's steps"} <= REASONS
    assert {"length guessed", "heights as on the card"} <= EVIDENCE
    assert {"handle", "relief lever", "valve of a machine", "rinse inlet"} <= THINGS
    assert {"across", "in the jug"} <= SETTINGS
    planned = step_parameters()
    assert {"heat off", "take out", "set bypass", "run outlet", "pour a cup"} <= set(planned)
    assert "cups" in planned["pour a cup"]


@pytest.mark.parametrize("key", sorted(ENGLISH["step"]))
def test_steps_name_only_what_they_are_given(key: str) -> None:
    """Guards that a step's sentence has no name in braces that nobody fills in."""
    plain = key.partition(": ")[0]
    given = AT_EVERY_STEP | step_parameters()[plain] | MORE_AT.get(plain, set())
    assert names_in(ENGLISH["step"][key]) <= given


@pytest.mark.parametrize("key", sorted(KEYS))
def test_findings_name_only_what_they_are_given(key: str) -> None:
    """Guards that a finding's sentence has only the parameters its table names."""
    assert names_in(ENGLISH["finding"][key]) <= {"part", *KEYS[key]}


def test_no_stop_rule_is_left_over() -> None:
    """Guards that each sentence on a rule belongs to a rule and to what it can leave."""
    assert set(ENGLISH["stop rule"]) == STOP_RULES


@pytest.mark.parametrize(
    ("subject", "keys"), [("hindrance", place.KEYS), ("precondition", preconditions.KEYS)]
)
def test_places_name_only_what_they_are_given(
    subject: str, keys: dict[str, tuple[str, ...]]
) -> None:
    """Guards that what is said of a place and before a slot has only the tables' parameters."""
    for key, sentence in ENGLISH[subject].items():
        assert names_in(sentence) <= {"part", *keys[key.partition(": ")[0]]}


def test_ways_to_open_belong_to_outlets() -> None:
    """Guards that a note on how to open stands with an outlet that there is."""
    for key in ENGLISH["how to open"]:
        kind, _, side = key.partition(": ")
        assert KINDS[kind].outlets
        assert side in {"", *KINDS[kind].outlets}


@pytest.mark.parametrize("subject", ["why", "caution", "hazard", "settle", "kind", "pocket"])
def test_plain_sentences_have_no_names(subject: str) -> None:
    """Guards that sentences which are said without parameters need none."""
    assert {k: s for k, s in ENGLISH[subject].items() if names_in(s)} == {}


def test_whatever_is_not_proven_has_a_remedy() -> None:
    """Guards that "not proven" always says what would settle it."""
    proven = {"nothing there", "room in the air", "does not freeze", "slush is harmless"}
    proven |= {"rating holds", "maker's steps"}
    assert sorted((REASONS | UNKNOWN) - proven - set(ENGLISH["settle"])) == []


SAFE = {
    "en": r"\bsafe",
    "es": r"(?i)\b(segur|a salvo|sin (riesgo|peligro)|inofensiv)",
    "fr": r"(?i)\b(sûre?s?\b|sans danger|sans risque|en sécurité|inoffensi)",
}
"""What nobody can call a coach, in each language."""


@pytest.mark.parametrize("language", LANGUAGES)
def test_nothing_is_called_safe(language: str) -> None:
    """Guards that no sentence says "safe"; only the phase that makes things safe is called so."""
    said = [
        (s, k)
        for s, some in catalogue(language).items()
        for k, t in some.items()
        if re.search(SAFE[language], t)
    ]
    assert said == [("phase", "make safe")]


@pytest.mark.parametrize("language", LANGUAGES)
def test_sentences_are_whole(language: str) -> None:
    """Guards that what is read as a sentence begins large and ends in a stop."""
    wrong = [
        (subject, key)
        for subject in (
            "step",
            "why",
            "caution",
            "hazard",
            "reason",
            "settle",
            "evidence",
            "finding",
        )
        for key, text in catalogue(language)[subject].items()
        if not re.search(r"[.?!]$|\{handles\}$", text) or not re.match(r"[^\W\d_a-z]|[{¿¡]", text)
    ]
    assert wrong == []

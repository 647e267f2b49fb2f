"""A plan as one object for programs: schema ``wintertight/plan/1``.

Numbers are SI, the unit ends the key. Where a thing cannot be said its value is None, and
``why_null`` in the same object gives the reason by the same key.
"""

import math
from collections.abc import Mapping
from typing import Any, Literal

import wintertight
from wintertight.coach.place import Place
from wintertight.cold.hold import HeldFor
from wintertight.documents.plan_sources import sources_of
from wintertight.fluids.contents import Contents
from wintertight.fluids.slush import freezing_point, ice_fraction
from wintertight.procedure.bands import Band
from wintertight.procedure.orders import OrdersCompared
from wintertight.procedure.place import is_possible, takes_more_s
from wintertight.procedure.plan import Plan, Purchase
from wintertight.procedure.steps import Missed, PlannedStep
from wintertight.procedure.winter_use import UsedSince
from wintertight.proof.claims import PartProof
from wintertight.sources import cite
from wintertight.units import System
from wintertight.wording.at_hand import things
from wintertight.wording.catalogue import say
from wintertight.wording.choices import orders_line, stop_rule_line
from wintertight.wording.names import part_name
from wintertight.wording.places import hindrance_text, place_text, precondition_text
from wintertight.wording.plans import finding_text, verdict_of_plan, warnings
from wintertight.wording.proofs import evidence_text, reason, settle
from wintertight.wording.steps import (
    caution,
    hazard,
    missed_text,
    setting_name,
    step_text,
    step_why,
)
from wintertight.wording.used_since import used_text

SCHEMA = "wintertight/plan/1"

Plain = dict[str, Any]


def plan_object(
    plan: Plan, language: str = "en", system: System = "us", *, recorded: bool = False
) -> Plain:
    """Give a plan as plain data, ready for `json.dumps`.

    Args:
        plan: the plan, or the proof of what was done in the form of a plan.
        language: two letters; only texts depend on it.
        system: units inside texts.
        recorded: whether it speaks of what was done.

    Returns:
        The object; dictionaries, lists, str, int, float, bool and None only.
    """
    return {
        "schema": SCHEMA,
        "engine": wintertight.__version__,
        "card_hash": plan.card.card_hash,
        "coach": {"id": plan.card.id, "name": plan.card.name},
        "method": plan.method,
        "design_low_degC": float(plan.low_degC),
        "verdict": plan.verdict,
        "verdict_text": verdict_of_plan(plan, language, system, recorded=recorded),
        "antifreeze_m3": band_object(plan.antifreeze),
        "antifreeze_buy": purchase_object(plan.buy),
        "duration_s": band_object(plan.duration),
        "steps": [_step(plan, step, language, system) for step in plan.steps],
        "parts": [_part(plan, part, language, system) for part in plan.parts],
        "held_in": _held_in(plan, language),
        "tools": _things(plan, "tool", language, system),
        "small_parts": _things(plan, "spare", language, system),
        **({} if plan.place is None else {"place": _place(plan, plan.place, language, system)}),
        "preconditions": [
            {
                "key": p.key,
                "weight": p.weight,
                "found": p.found,
                **({"part": p.part} if p.part else {}),
                "hands_s": float(p.hands_s),
                "waits_s": float(p.waits_s),
                "text": precondition_text(p, plan.card, language, system),
            }
            for p in plan.preconditions
        ],
        **({} if plan.orders is None else {"rounds": _rounds(plan, plan.orders, language, system)}),
        **({} if plan.hold is None else {"hold": _hold(plan.hold, language)}),
        "gaps": [p.id for p in plan.parts if p.safe is False],
        "unproven": [p.id for p in plan.parts if p.safe is None],
        "look_at": [p.id for p in plan.parts if p.look_at],
        "refused": [
            {"action": r.step, "hazard": r.hazard, "text": hazard(r.hazard, language)}
            for r in plan.refused
        ],
        "never_clear": list(plan.never_clear),
        "findings": [
            {
                "key": f.key,
                **({"part": f.part} if f.part else {}),
                "params": dict(f.params),
                "text": finding_text(f, plan.card, language, system),
            }
            for f in plan.findings
        ],
        "warnings": list(warnings(plan, language, system, recorded=recorded)),
        "balance": {
            "in_m3": float(plan.balance.in_m3),
            "out_m3": float(plan.balance.out_m3),
            "held_m3": float(plan.balance.held_m3),
            "relative_error": float(plan.balance.relative_error),
        },
        "sources": [cite(key) for key in sources_of(plan)],
    }


def since_object(since: UsedSince, language: str = "en", system: System = "us") -> Plain:
    """Give what a use has undone as plain data."""
    return {
        "ran": list(since.use.ran),
        "flushed": list(since.use.flushed),
        "verdict": since.verdict,
        "voided": list(since.voided),
        "text": used_text(since, language, system),
    }


def band_object(band: Band) -> Plain:
    """Give a band as plain data."""
    return {"p05": float(band.p05), "p50": float(band.p50), "p95": float(band.p95)}


def purchase_object(buy: Purchase) -> Plain:
    """Give what to bring as plain data."""
    return {
        "product": buy.product,
        "container_m3": float(buy.container_m3),
        "count": int(buy.count),
        "spare": int(buy.spare),
    }


def _place(plan: Plan, place: Place, language: str, system: System) -> Plain:
    """Give what the place of work means for the plan."""
    return {
        "name": place.name,
        "kind": place.kind,
        "possible": is_possible(plan.hindrances),
        "more_s": float(takes_more_s(plan.hindrances)),
        "hindrances": [
            {
                "key": h.key,
                "effect": h.effect,
                "seconds": float(h.seconds),
                "assumed": h.assumed,
                "text": hindrance_text(h, language, system),
            }
            for h in plan.hindrances
        ],
        "text": place_text(place, plan.hindrances, language, system),
    }


def _rounds(plan: Plan, orders: OrdersCompared, language: str, system: System) -> Plain:
    """Give the order of the outlets and the rules for shutting a tap against others."""
    return {
        "nearest_m3": float(orders.nearest.volume_m3),
        "farthest_m3": float(orders.farthest.volume_m3),
        "best_m3": float(orders.best.volume_m3),
        "worst_m3": float(orders.worst.volume_m3),
        "orders_tried": int(orders.tried),
        "all_tried": bool(orders.all_tried),
        "best_order": list(orders.best.order),
        "text": orders_line(orders, language, system),
        "stop_rules": [
            {
                "rule": rule.rule,
                "volume_m3": float(rule.volume_m3),
                "verdict": rule.verdict,
                "bursting": list(rule.bursting),
                "doubtful": list(rule.doubtful),
                "text": stop_rule_line(rule, language, system),
            }
            for rule in plan.stop_rules
        ],
    }


def _hold(hold: HeldFor, language: str) -> Plain:
    """Give when the claim of a freeze hold expires, and when each part is gone."""
    values: Plain = {
        "expires_s": hold.seconds if math.isfinite(hold.seconds) else None,
        "start_degC": float(hold.start_degC),
        "outdoor_degC": float(hold.outdoor_degC),
        "parts": {part: s for part, s in hold.parts if math.isfinite(s)},
    }
    return _with_reasons(values, {"expires_s": "nothing freezes"}, language)


def _things(
    plan: Plan, subject: Literal["tool", "spare"], language: str, system: System
) -> list[dict[str, Any]]:
    return [
        {"key": thing.key, "for": list(thing.parts), "text": text}
        for thing, text in things(plan, subject, language, system)
    ]


def _held_in(plan: Plan, language: str) -> Plain:
    """Give in how many draws the coach holds, its weakest part, and strength held over needed."""
    held = plan.held_in
    drawn = bool(held.weakest) and math.isfinite(held.left.p50)
    values: Plain = {
        "draws": int(held.draws),
        "coach": int(held.coach),
        "weakest": held.weakest or None,
        "left": band_object(held.left) if drawn else None,
    }
    return _with_reasons(values, {"weakest": "nothing holds", "left": "nothing drawn"}, language)


def _with_reasons(values: Plain, why: Mapping[str, str], language: str) -> Plain:
    """Put ``why_null`` beside values that are None; ``why`` gives the key of each reason."""
    missing = {k: say("null", why[k], language) for k in why if values[k] is None}
    return {**values, "why_null": missing} if missing else values


# ---- steps ---------------------------------------------------------------------------------


def _step(plan: Plan, planned: PlannedStep, language: str, system: System) -> Plain:
    step, run = planned.step, planned.run
    poured = [a.volume_m3 for a in step.actions if a.verb == "pour"]
    ran = [run.volume_m3] if run else []
    several = list(dict.fromkeys(a.part for a in step.actions if a.part))
    values: Plain = {
        "id": step.id,
        "n": planned.n,
        "phase": step.phase,
        "action": step.key,
        "part": step.part or None,
        "parts": several,
        "setting": step.setting or None,
        "setting_text": setting_name(step, plan.card, language) if step.setting else None,
        "text": step_text(planned, plan.card, language, system),
        "why": step_why(step, language),
        "cautions": [caution(key, language) for key in step.cautions],
        "volume_m3": float(sum(poured + ran)) if poured or ran else None,
        "to_colour_s": None if run is None else _number(run.first_colour_s),
        "run_on_s": _number(planned.run_on_s),
        "handling_s": float(planned.handling_s),
        "telling": bool(planned.telling),
        "if_missed": _missed(plan, planned.if_missed, language, system),
    }
    why = {
        "part": "several parts" if several else "no part",
        "setting": "no setting",
        "setting_text": "no setting",
        "volume_m3": "nothing runs",
        "to_colour_s": "no outlet" if run is None else "no colour",
        "run_on_s": "no outlet",
        "if_missed": "not asked",
    }
    return _with_reasons(values, why, language)


def _missed(plan: Plan, missed: Missed | None, language: str, system: System) -> Plain | None:
    if missed is None:
        return None
    return {
        "outcome": missed.outcome,
        "parts": list(missed.parts),
        "water_m3": round(float(missed.water_m3), 9),
        "noticed": missed.noticed,
        **({"hazard": missed.hazard} if missed.hazard else {}),
        "text": missed_text(missed, plan.card, language, system),
    }


def _number(value: float | None) -> float | None:
    return None if value is None else float(value)


# ---- parts ---------------------------------------------------------------------------------


def _part(plan: Plan, part: PartProof, language: str, system: System) -> Plain:
    values: Plain = {
        "id": part.id,
        "kind": part.kind,
        "name": part_name(plan.card, part.id, language),
        "volume_m3": float(part.volume_m3),
        "contents": _shares(part.mean),
        "worst": _shares(part.worst),
        "freezing_point_degC": _number(part.freezing_point_degC),
        "ice_fraction_at_low": _number(part.ice_fraction),
        "pocket": part.pocket,
        "relieved": bool(part.relieved),
        "claim": part.claim,
        "safe": part.safe is True,
        "safe_in_draws": float(plan.held_in.parts[part.id]),
        "verdict": {True: "safe", False: "gap", None: "unproven"}[part.safe],
        "evidence": [
            {"kind": e.kind, "text": evidence_text(e, language, system)} for e in part.evidence
        ],
        "reason": reason(part, language, system),
    }
    if part.safe is not True:
        values["settle"] = settle(part, language, too_weak=plan.too_weak)
    why = {
        "freezing_point_degC": freezing_point(part.worst).why_null or "not known",
        "ice_fraction_at_low": ice_fraction(part.worst, plan.low_degC).why_null or "not known",
    }
    return _with_reasons(values, why, language)


def _shares(contents: Contents) -> Plain:
    """Give the five shares; water is what the others leave, so that they add up to 1."""
    return {name: float(share) for name, share in contents.as_mapping().items()}

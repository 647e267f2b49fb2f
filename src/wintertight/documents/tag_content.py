"""What stands on a hang tag, as plain data for its template."""

from collections.abc import Iterator
from typing import Any

from wintertight.documents.card_digits import card_digits
from wintertight.documents.coach_link import qr_content
from wintertight.documents.open_parts import open_groups
from wintertight.documents.printed_text import printed
from wintertight.documents.recorded_job import RecordedJob
from wintertight.procedure.as_left import (
    HeaterLeft,
    heaters_left,
    holds_antifreeze,
    set_backs,
    went_as_recorded,
)
from wintertight.procedure.undone import undone_at
from wintertight.units import System, in_words
from wintertight.wording.catalogue import say
from wintertight.wording.hindsight import cause_text, cure_text
from wintertight.wording.names import part_name
from wintertight.wording.plans import verdict_of_plan
from wintertight.wording.spoken import begun, listed, some_of
from wintertight.wording.steps import hazard

Plain = dict[str, Any]

SAID = "hang tag"

MOST_OPEN, MOST_NAMES = 3, 3
"""So many things that are open, and so many names of parts with one reason, fit on a tag."""


def tag_content(job: RecordedJob, language: str, paper: str, system: System) -> Plain:
    """Give everything that stands on the tag: what is open, big, where anything is."""
    finished = job.is_finished
    plan = job.spoken_plan(system)
    low = in_words(plan.low_degC, "temperature", system)
    still_open = [] if finished else list(_open(job, language, system))
    hidden = len(still_open) - MOST_OPEN
    content = {
        "lang": language,
        "paper": paper,
        "title": say(SAID, "title", language, id=plan.card.id),
        "coach": [plan.card.id, plan.card.name],
        "finished": finished,
        "head": say(SAID, "protected to" if finished else "not finished", language),
        "low": low if finished else "",
        "warning": say(SAID, "void" if finished else "do not count on it", language),
        "verdict": _verdict(job, language, system),
        "open": still_open[:MOST_OPEN],
        "more": say(SAID, "and more", language, count=str(hidden)) if hidden > 0 else "",
        "heater_heading": say(SAID, "heater", language),
        "heaters": [_heater(job, h, language) for h in heaters_left(job.done, job.told)],
        "before_water": [
            say(SAID, "before water", language),
            list(_before_water(job, language)) if finished else [],
        ],
        "before_heat": [
            say(SAID, "before heat", language),
            list(_before_heat(job, language)),
        ],
        "fields": list(_fields(job, language)),
        "technician": say(SAID, "technician", language),
        "manual": say(SAID, "manual", language),
        "qr": qr_content(job.link, language),
    }
    found: Plain = printed(content)
    return found


def _verdict(job: RecordedJob, language: str, system: System) -> str:
    """Give the verdict of what is not proven; a tag that is not finished promises nothing."""
    plan = job.done.plan
    proven = plan.verdict == "safe"
    return "" if proven else verdict_of_plan(plan, language, system, recorded=True)


def _fields(job: RecordedJob, language: str) -> Iterator[list[str]]:
    """Give day, method, antifreeze and the card's digits; a day that is not known is left blank."""
    plan = job.done.plan
    yield [say(SAID, "day", language), job.day]
    yield [say(SAID, "method", language), begun(say("method", plan.method, language))]
    used = plan.product.name if holds_antifreeze(job.done) else say(SAID, "no product", language)
    yield [say(SAID, "product", language), used]
    yield [say(SAID, "card", language), card_digits(job.card)]


# ---- what is open ----


def _open(job: RecordedJob, language: str, system: System) -> Iterator[str]:
    """Give what is open, the worst first: what was seen otherwise, parts, hazards, the card."""
    done, plan = job.done, job.done.plan
    if plan.hold is not None:
        yield say(SAID, "hold", language)
    if job.told is not None and not went_as_recorded(job.told):
        cause = job.told.causes[0]
        said = cause_text(cause, plan.card, language, system)
        cure = cure_text(cause, language)
        yield f"{say(SAID, 'speaks for', language, cause=said)} {cure}"
    for group in open_groups(plan, language, system, undone=undone_at(plan, done.planned)):
        yield f"{group.named(MOST_NAMES, language)} ({group.word}). {group.settle}"
    for key in dict.fromkeys(refused.hazard for refused in plan.refused):
        yield say(SAID, "refused", language, hazard=hazard(key, language))
    if done.still_here:
        names = listed((part_name(job.card, p, language) for p in done.still_here), language)
        yield say(SAID, "not on coach", language, parts=names)


# ---- heaters, and what comes before water and heat ----


def _heater(job: RecordedJob, left: HeaterLeft, language: str) -> str:
    """Give how one heater was left: only what is recorded and still stands so."""
    facts = ["heat off" if left.heat_off else "heat not off"]
    if left.bypassed:
        facts.append("bypassed")
    facts.append(left.content or "content unknown")
    if left.plug is not None:
        facts.append(f"plug {left.plug}")
    said = ", ".join(say(SAID, fact, language) for fact in facts)
    part = begun(part_name(job.done.plan.card, left.part, language))
    return say(SAID, "heater line", language, part=part, facts=said)


def _before_water(job: RecordedJob, language: str) -> Iterator[str]:
    yield say(SAID, "thawed", language)
    bypassed = any(left.bypassed for left in heaters_left(job.done, job.told))
    for back in set_backs(job.done):
        key = {"plug in": "plug in again"}.get(back.sort, back.sort)
        if key == "set back" and bypassed:
            key = "set back: bypassed"
        names = [part_name(job.done.plan.card, part, language) for part in back.parts]
        yield say(SAID, key, language, parts=some_of(names, len(names), language))
    if holds_antifreeze(job.done):
        yield say(SAID, "rinse", language)


def _before_heat(job: RecordedJob, language: str) -> Iterator[str]:
    """Give what must come before the heat of each heater."""
    parts = [left.part for left in heaters_left(job.done, job.told)]
    names = listed((part_name(job.done.plan.card, part, language) for part in parts), language)
    if parts:
        yield say(SAID, "full", language, parts=begun(names))

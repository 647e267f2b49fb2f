"""What stands on a winter record, as plain data for its template."""

from collections.abc import Iterator, Sequence
from typing import Any

import wintertight
from wintertight.documents.card_digits import card_digits
from wintertight.documents.coach_link import qr_content
from wintertight.documents.done_rows import done_rows, missing_rows
from wintertight.documents.drawing.of_plan import StepPicture
from wintertight.documents.drawn_content import picture_content
from wintertight.documents.open_parts import open_groups
from wintertight.documents.plan_sources import sources_of
from wintertight.documents.printed_text import printed
from wintertight.documents.proof_rows import proof_groups, two_columns
from wintertight.documents.recorded_job import RecordedJob
from wintertight.procedure.as_left import went_as_recorded
from wintertight.procedure.undone import undone_at
from wintertight.sources import SOURCES, named
from wintertight.units import System, in_words
from wintertight.wording.catalogue import catalogue, say
from wintertight.wording.hindsight import diagnosis_lines
from wintertight.wording.names import part_name
from wintertight.wording.plans import held_line, notes, to_five_minutes, verdict_of_plan
from wintertight.wording.spoken import begun, listed

Plain = dict[str, Any]

MOST_NAMES = 60
"""So many parts with one reason are named: on this paper nearly always all of them."""

DIGEST_BLOCK = 8
"""A digest is printed in blocks of so many digits."""


def record_content(
    job: RecordedJob,
    language: str,
    paper: str,
    system: System,
    pictures: Sequence[StepPicture] = (),
) -> Plain:
    """Give everything that stands on the winter record, and which drawings do."""
    words = {k: t for k, t in catalogue(language)["winter record"].items() if "{" not in t}
    plan = job.spoken_plan(system)
    groups = proof_groups(job.done.plan, language, system)
    content = {
        "lang": language,
        "colon": say("label", "colon", language),
        "paper": paper,
        "words": words,
        "title": say("winter record", "title", language, id=plan.card.id),
        "coach": f"{plan.card.id}  {plan.card.name}",
        "verdict": _verdict(job, language, system),
        "fields": list(_fields(job, language, system)),
        "finished": job.is_finished,
        "open": list(_open(job, language, system)),
        "look_at": _look_at(job, language),
        "told_heading": say("hindsight", "heading", language),
        "told": list(_told(job, language, system)),
        "told_matters": not went_as_recorded(job.told),
        "notes_heading": say("label", "notes", language),
        "notes": list(_notes(job, language, system)),
        "rows": list(done_rows(job, language, system)),
        "missing": list(missing_rows(job, language)),
        "parts_heading": say("winter record", "parts", language, count=str(len(plan.parts))),
        "open_groups": [group for group in groups if group["open"]],
        "columns": two_columns([group for group in groups if not group["open"]]),
        "held": held_line(plan, language) if plan.verdict == "safe" else None,
        "sources": list(_sources(job, language)),
        "pictures": [picture_content(one) for one in pictures],
        "engine": say("label", "engine", language, version=wintertight.__version__),
        "card": f"{say('label', 'card', language)} {card_digits(job.card)}",
        "card_hash": _blocks(_hash(job)),
        "digest": _blocks(job.digest),
        "qr": qr_content(job.link, language),
        "page_of": say("label", "page", language, page="<", pages=">"),
    }
    found: Plain = printed(content)
    return found


def _verdict(job: RecordedJob, language: str, system: System) -> str:
    """Give the verdict; where all is proven and yet something is open, it says so first."""
    plan = job.spoken_plan(system)
    if plan.verdict == "safe" and not job.is_finished:
        low = in_words(plan.low_degC, "temperature", system)
        return say("winter record", "proven but open", language, low=low)
    return verdict_of_plan(plan, language, system, recorded=True)


def _sources(job: RecordedJob, language: str) -> Iterator[str]:
    for key in sources_of(job.done.plan):
        yield f"{named(key)} [{say('mark', SOURCES[key].mark, language)}]"


def _hash(job: RecordedJob) -> str:
    return job.card.card_hash.partition(":")[2]


def _blocks(digits: str) -> str:
    return " ".join(digits[n : n + DIGEST_BLOCK] for n in range(0, len(digits), DIGEST_BLOCK))


def _fields(job: RecordedJob, language: str, system: System) -> Iterator[list[str]]:
    """Give coach, place, cold, method, antifreeze, time, day and devices."""
    plan = job.spoken_plan(system)
    site = plan.card.site.name if plan.card.site else say("label", "no site", language)
    yield [say("winter record", "site", language), site]
    low = in_words(plan.low_degC, "temperature", system)
    yield [say("label", "design low", language), low]
    yield [say("label", "method", language), begun(say("method", plan.method, language))]
    yield [say("winter record", "used", language), "; ".join(_used(job, language, system))]
    work = to_five_minutes(plan.duration.p50)
    about = say("winter record", "about", language, time=work)
    yield [say("winter record", "time", language), about]
    yield [say("winter record", "day", language), _day(job, language)]
    if job.link:
        yield [say("winter record", "page", language), job.link]
    if job.devices:
        yield [say("winter record", "written on", language), listed(job.devices, language)]


def _used(job: RecordedJob, language: str, system: System) -> Iterator[str]:
    """Give the antifreeze by the calculation, and by the count of jugs."""
    used = job.done.plan.antifreeze
    if used.p95 <= 0.0:
        yield say("winter record", "used none", language)
    else:
        low, middle, high = (in_words(v, "volume", system) for v in (used.p05, used.p50, used.p95))
        key = "used text" if low != high else "used just"
        yield say(
            "winter record",
            key,
            language,
            volume=middle,
            product=job.done.plan.product.name,
            low=low,
            high=high,
        )
    if job.told is not None and job.told.observed.jugs:
        counted = sum(jugs.volume_m3 for jugs in job.told.observed.jugs)
        volume = in_words(counted, "volume", system)
        yield say("winter record", "counted", language, volume=volume)


def _day(job: RecordedJob, language: str) -> str:
    times = sorted(job.times())
    day = job.day or say("winter record", "no day", language)
    if not times or job.record.started is None:
        return day
    first, last = job.clock(0.0), job.clock(times[-1])
    return f"{day}, {say('winter record', 'from to', language, first=first, last=last)}"


def _open(job: RecordedJob, language: str, system: System) -> Iterator[Plain]:
    """Give what is open, the worst first: names, reason and remedy."""
    plan, planned = job.done.plan, job.done.planned
    for group in open_groups(plan, language, system, undone=undone_at(plan, planned)):
        yield {
            "names": group.named(MOST_NAMES, language),
            "word": group.word,
            "reason": group.reason,
            "settle": say("winter record", "settles", language, how=group.settle),
        }


def _look_at(job: RecordedJob, language: str) -> str:
    """Give the open parts that eyes would settle; "" where that is none of them, or each."""
    plan = job.done.plan
    still_open = [p for p in plan.parts if p.safe is not True]
    seen = [p for p in still_open if p.look_at]
    if not seen or len(seen) == len(still_open):
        return ""
    named = begun(listed((part_name(plan.card, p.id, language) for p in seen), language))
    return say("winter record", "looking", language, names=named)


def _told(job: RecordedJob, language: str, system: System) -> Iterator[str]:
    if job.told is None:
        yield begun(say("no hindsight", "nothing observed", language)) + "."
    else:
        yield from diagnosis_lines(job.told, job.done.plan.card, language, system)


def _notes(job: RecordedJob, language: str, system: System) -> Iterator[str]:
    yield from notes(job.done.plan, language, system, recorded=True)
    for key, parts in (("not here", job.done.not_here), ("still here", job.done.still_here)):
        if parts:
            names = listed([part_name(job.card, part, language) for part in parts], language)
            yield say("hindsight", key, language, parts=names)
    if job.done.not_here:
        yield say("winter record", "other numbers", language)

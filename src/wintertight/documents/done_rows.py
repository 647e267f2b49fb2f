"""What a record says was done, as rows of a table, and what it does not speak of."""

from collections.abc import Iterator
from typing import Any

from wintertight.documents.recorded_job import RecordedJob
from wintertight.procedure.record import Event
from wintertight.procedure.steps import PlannedStep
from wintertight.units import System
from wintertight.wording.catalogue import say
from wintertight.wording.deeds import deed_text, noted_text, result_text


def done_rows(job: RecordedJob, language: str, system: System) -> Iterator[dict[str, Any]]:
    """Give a row for each event, in the order of the record.

    Each has the number of its step on the job sheet ("" where it is on none), the time, what it
    speaks of, how it ended, what was written down, and whether that must not be overlooked.
    """
    steps = {event.id: step for event, step in job.done.events}
    planned = _planned(job)
    several = len(job.devices) > 1
    for event in job.record.in_order():
        step = steps.get(event.id)
        asked = planned.get(event.step or (step.id if step else ""))
        yield {
            "n": str(asked.n) if asked else "",
            "time": job.clock(event.at_s),
            "what": deed_text(event, step, job.card, language),
            "result": result_text(event, language),
            "noted": noted_text(
                event,
                language,
                system,
                asked=asked.step.setting if asked else "",
                with_device=several,
            ),
            "mind": event.result != "done",
        }


def missing_rows(job: RecordedJob, language: str) -> Iterator[dict[str, Any]]:
    """Give a row for each step of the plan of which the record does not speak."""
    unknown = frozenset(job.done.unknown)
    silent = Event(id="none", seq=0, action="none", result="skipped")
    for planned in job.done.planned.steps:
        if planned.step.id in unknown:
            yield {
                "n": str(planned.n),
                "time": "",
                "what": deed_text(silent, planned.step, job.done.plan.card, language),
                "result": say("winter record", "not recorded", language),
                "noted": "",
                "mind": True,
            }


def _planned(job: RecordedJob) -> dict[str, PlannedStep]:
    return {planned.step.id: planned for planned in job.done.planned.steps}

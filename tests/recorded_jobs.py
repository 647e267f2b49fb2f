"""Recorded jobs that tests of papers look at, each proven once."""

import io
import json
from collections.abc import Iterator
from functools import cache
from typing import Any

from pypdf import PdfReader

from tests.demo_records import proved
from tests.unit.documents.demo_plans import WARM, demo_card, plan_of
from tests.unit.procedure.demo_coach import DEMO
from wintertight.coach.load import load_card
from wintertight.documents.printed_text import MINUS
from wintertight.documents.recorded_job import RecordedJob
from wintertight.procedure.as_done import prove_record
from wintertight.procedure.record import load_record, read_record
from wintertight.procedure.record_digest import digest_of_text, record_digest

LINK = "https://example.com/coach/HL-204"


@cache
def demo_job(name: str, link: str = "") -> RecordedJob:
    """Give a bundled record with all that follows from it."""
    file = DEMO / "records" / f"{name}.json"
    card = load_card(DEMO / "cards" / f"{name.rpartition('-')[0]}.toml")
    found = proved(name)
    return RecordedJob(card, load_record(file), found.done, found.told, record_digest(file), link)


def job_with(*more: str, left_out: tuple[str, ...] = (), link: str = "") -> RecordedJob:
    """Give the bundled coach's job as planned, with steps left out and events (JSON) added.

    Nothing is timed, counted or read in it, so that there is nothing to look back on.
    """
    return _job_with(more, left_out, link)


@cache
def _job_with(more: tuple[str, ...], left_out: tuple[str, ...], link: str) -> RecordedJob:
    events: list[dict[str, Any]] = [
        {"id": f"e{s.n}", "seq": s.n, "step": s.step.id, "result": "done"}
        for s in plan_of().steps
        if not s.step.id.startswith(left_out)
    ]
    events += [
        {"id": f"m{n}", "seq": 1000 + n, "result": "done", **json.loads(event)}
        for n, event in enumerate(more)
    ]
    text = json.dumps({"schema": "wintertight/record/1", "events": events})
    record = read_record(text)
    done = prove_record(demo_card(), record, plan_of().product, WARM)
    return RecordedJob(demo_card(), record, done, None, digest_of_text(text), link)


def read(pdf: bytes) -> PdfReader:
    """Open a paper."""
    return PdfReader(io.BytesIO(pdf), strict=True)


def words(pdf: bytes) -> str:
    """Give all text of a paper, blanks and line ends made one, and a printed minus a hyphen."""
    text = " ".join(page.extract_text() for page in read(pdf).pages)
    return " ".join(text.replace(MINUS, "-").split())


def alternatives(pdf: bytes) -> list[str]:
    """Give the words that stand for pictures."""
    return list(_alternatives(read(pdf).root_object["/StructTreeRoot"]))


def _alternatives(node: Any) -> Iterator[str]:
    element = node.get_object() if hasattr(node, "get_object") else node
    if isinstance(element, list):
        for child in element:
            yield from _alternatives(child)
    elif isinstance(element, dict):
        if "/Alt" in element:
            yield str(element["/Alt"])
        if "/K" in element:
            yield from _alternatives(element["/K"])

"""From a card to all papers, warm; and a job sheet against the same words set by WeasyPrint.

WeasyPrint gets plain HTML of what stands on the sheet: one list of steps and the same SVG texts. It
is not asked for our columns, boxes or tags, so the ratio favours it.
"""

import json
from collections.abc import Iterator
from html import escape
from importlib import import_module
from typing import Any

from bench.bench_plan import LOW_DEGC, NAMES, PINK
from bench.own_process import printed_by
from bench.timing import best_ms
from tests.engines.fleet import CARDS
from wintertight.coach.load import load_card
from wintertight.documents.drawing.of_plan import plan_pictures
from wintertight.documents.job_sheet import job_sheet_pdf
from wintertight.procedure.plan import Plan, plan_coach
from wintertight.wording.steps import step_text

ROUNDS = 3


def measure() -> Iterator[str]:
    """Give a line for each coach, then those of a process in which coach follows coach."""
    for name in NAMES:
        file = next(path for path in CARDS if path.stem == name)
        yield _measured(name, plan_coach(load_card(file), PINK, LOW_DEGC))
    yield from _from_the_card()


def _from_the_card() -> Iterator[str]:
    """Give a line for each coach and each way of running the arithmetic.

    The reference is the plan of the same turn: what the papers add to it.
    """
    for compiled in (False, True):
        found = json.loads(printed_by("papers_in_turn", compiled=compiled))
        how = "compiled" if found["compiled"] else "plain"
        for name in NAMES:
            planned, whole = (1e3 * seconds for seconds in found["best"][name])
            _, missed = (1e3 * seconds for seconds in found["best"][f"{name} missed"])
            yield (
                f"{name}, {how}: card to estimate, job sheet, guide, all drawings {whole:.0f} ms,"
                f" the plan alone {planned:.0f} ms, ratio {whole / planned:.2f}; with every step"
                f" left out once besides {missed:.0f} ms, ratio {missed / planned:.2f}"
            )


def _measured(name: str, plan: Plan) -> str:
    drawn = best_ms(lambda: plan_pictures(plan), ROUNDS)
    sheet = best_ms(lambda: job_sheet_pdf(plan), ROUNDS)
    head = f"{name}: drawings {drawn:.0f} ms, job sheet with them {sheet:.0f} ms"
    setter = _weasyprint()
    if setter is None:
        return f"{head}; WeasyPrint is not on this machine, so no ratio"
    text = _html(plan)
    other = best_ms(lambda: setter.HTML(string=text).write_pdf(), ROUNDS)
    return f"{head}; WeasyPrint {other:.0f} ms for the same words, ratio {other / sheet:.1f}"


def _weasyprint() -> Any:
    """Give the other typesetter; None where it, or a library that it needs, is missing."""
    try:
        return import_module("weasyprint")
    except (ImportError, OSError):
        return None


def _html(plan: Plan) -> str:
    steps = "".join(f"<li>{escape(step_text(step, plan.card))}</li>" for step in plan.steps)
    pictures = "".join(shown.svg for shown in plan_pictures(plan))
    return f"<h1>{escape(plan.card.name)}</h1><ol>{steps}</ol>{pictures}"

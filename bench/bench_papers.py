"""From a card to all papers, warm; and a job sheet against the same words set by WeasyPrint.

WeasyPrint gets plain HTML of what stands on the sheet: one list of steps and the same SVG texts. It
is not asked for our columns, boxes or tags, so the ratio favours it.
"""

from collections.abc import Iterator
from datetime import date
from html import escape
from importlib import import_module
from pathlib import Path
from typing import Any

from bench.bench_plan import LOW_DEGC, NAMES, PINK
from bench.timing import best_ms
from tests.engines.fleet import CARDS
from wintertight.coach.load import load_card
from wintertight.coach.shop import load_shop
from wintertight.documents.drawing.of_plan import plan_pictures
from wintertight.documents.job_sheet import job_sheet_pdf
from wintertight.documents.visit_papers import Visit, visit_papers
from wintertight.procedure.estimate import estimate_job
from wintertight.procedure.plan import Plan, plan_coach
from wintertight.procedure.priced_job import priced_job
from wintertight.wording.steps import step_text

ROUNDS = 3
DAY = date(2026, 10, 15)


def measure() -> Iterator[str]:
    """Give two lines for each coach."""
    for name in NAMES:
        file = next(path for path in CARDS if path.stem == name)
        plan = plan_coach(load_card(file), PINK, LOW_DEGC)
        yield _measured(name, plan)
        yield _from_the_card(name, file, plan)


def _from_the_card(name: str, file: Path, plan: Plan) -> str:
    """Measure a card read, planned, priced, and every paper and drawing of it made.

    The reference is the plan alone, without what each step left out would do: what the papers add.
    """
    prices = load_shop(file.parents[1] / "shop.toml").prices

    def everything(*, missed: bool) -> None:
        made = plan_coach(load_card(file), PINK, LOW_DEGC, with_missed_steps=missed)
        priced = None if prices is None else estimate_job(priced_job(made), prices, DAY)
        list(visit_papers(Visit(made, "shop", priced)))

    alone = best_ms(lambda: plan_coach(plan.card, PINK, LOW_DEGC), ROUNDS)
    papers = best_ms(lambda: everything(missed=False), ROUNDS)
    missed = best_ms(lambda: everything(missed=True), ROUNDS)
    return (
        f"{name}: card to estimate, job sheet, guide and all drawings {papers:.0f} ms, the plan"
        f" alone {alone:.0f} ms, ratio {papers / alone:.2f}; with every step left out once, as"
        f" `papers` does, {missed:.0f} ms, ratio {missed / alone:.2f}"
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

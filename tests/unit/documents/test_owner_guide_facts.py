"""What an owner must know stands on the guide: read from its text alone, answered by the plan."""

import io
import re
from functools import cache

import pytest
from pypdf import PdfReader

from tests.unit.documents.demo_plans import DEMO, demo_plan
from wintertight.documents.owner_guide import owner_guide_pdf
from wintertight.procedure.plan import Plan
from wintertight.wording.catalogue import say
from wintertight.wording.names import part_name

pytestmark = pytest.mark.long

CARDS = sorted(path.stem for path in (DEMO / "cards").glob("*.toml"))

ALONG, ACROSS = "along the pipe (open)", "across the pipe (shut)"

_ROW = re.compile(
    r"\b(?P<n>\d+(?:\u2013\d+)?) (?P<name>[A-Z][^\d]*?)"
    r"(?P<colours>(?: (?:at once|none expected|about (?:\d+ min )?\d+ s|about \d+ min))+)"
    r"(?P<counts>(?: (?:\d+ min \d+ s|\d+ min|\d+ s))+)"
)
_TIME = re.compile(r"(?:(\d+) min)? ?(?:(\d+) s)?")


@cache
def text_of(card: str) -> str:
    """Give the text of a guide, blanks and line ends made one, without headers and footers."""
    reader = PdfReader(io.BytesIO(owner_guide_pdf(demo_plan(card))), strict=True)
    assert len(reader.pages) <= 2
    return " ".join(" ".join(page.extract_text() for page in reader.pages).split())


def between(text: str, start: str, end: str) -> str:
    """Give what stands between two headings."""
    return text.split(f"{start} ", 1)[1].split(f"{end} ", 1)[0]


def the_job(card: str) -> str:
    """Give the steps as they are printed."""
    text = text_of(card)
    return text[text.index("Make safe") : text.index("When a tap never clears")]


def seconds(said: str) -> list[int]:
    """Read times such as "2 min 8 s" as seconds."""
    found = re.findall(r"\d+ min \d+ s|\d+ min|\d+ s", said)
    parts = [_TIME.fullmatch(time) for time in found]
    return [60 * int(m[1] or 0) + int(m[2] or 0) for m in parts if m]


def rows(card: str) -> list[tuple[list[int], str, list[int]]]:
    """Read the table of taps: numbers of the steps, names, seconds to count after colour."""
    found = []
    for row in _ROW.finditer(the_job(card)):
        first, _, last = row["n"].partition("\u2013")
        numbers = list(range(int(first), int(last or first) + 1))
        found.append((numbers, row["name"], seconds(row["counts"])))
    return found


def same_words(name: str, printed: str) -> bool:
    """Tell whether a row is that of an outlet; capitals and what stands in brackets apart."""
    return printed.partition(" (")[0].strip().lower() == name.lower()


def handles_in(plan: Plan) -> list[tuple[int, str, str]]:
    """Give step, name and setting of each handle that the plan sets and leaves so."""
    found = []
    for planned in plan.steps:
        if planned.step.key in {"work positions", "drain panel"}:
            continue
        for action in planned.step.actions:
            fitting = plan.card.fitting.get(action.part)
            if action.verb == "set" and fitting is not None:
                named = {position.name for position in fitting.positions}
                if fitting.kind == "ball valve" or named:
                    words = {"along": ALONG, "across": ACROSS}
                    setting = words.get(action.setting, f"set to {action.setting}")
                    found.append((planned.n, part_name(plan.card, fitting.id), setting))
    return found


@pytest.mark.parametrize("card", CARDS)
def test_which_way_each_handle_stands(card: str) -> None:
    """Guards that every handle of every valve step is told by name, at its step, as it stands."""
    plan, job = demo_plan(card), the_job(card)
    for n, name, setting in handles_in(plan):
        step = re.search(rf" {n} [A-Z].*?(?= {n + 1} [A-Z])", job)
        assert step is not None, n
        assert f"{name}: {setting}" in step[0], (n, name, setting)
        others = {ALONG, ACROSS} - {setting}
        assert not [other for other in others if f"{name}: {other}" in step[0]]


def test_there_are_handles_to_be_told() -> None:
    """Guards the test above: along, across and a position that is written at the handle."""
    found = {setting for card in CARDS for _, _, setting in handles_in(demo_plan(card))}
    assert {ALONG, ACROSS, "set to HOSE", "set to WINTER"} <= found


@pytest.mark.parametrize("card", CARDS)
def test_which_tap_is_first(card: str) -> None:
    """Guards that the first tap of the plan is named as the first."""
    plan = demo_plan(card)
    first = next(s.step.part for s in plan.steps if s.run)
    told = re.search(r"First tap: (.*?)\. One at a time", the_job(card))
    assert told is not None
    assert told[1].lower() == part_name(plan.card, first).lower()


@pytest.mark.parametrize("card", CARDS)
def test_how_long_to_run_on_at_each_tap(card: str) -> None:
    """Guards number, name, order and seconds after colour of every tap of the plan."""
    plan = demo_plan(card)
    wanted = [s for s in plan.steps if s.run]
    told = [
        (n, name if at == 0 else "", count)
        for numbers, name, counts in rows(card)
        for at, (n, count) in enumerate(zip(numbers, counts, strict=True))
    ]
    assert [(n, count) for n, _, count in told] == [(s.n, round(s.run_on_s or 0)) for s in wanted]
    for (_, name, _), planned in zip(told, wanted, strict=True):
        assert not name or same_words(part_name(plan.card, planned.step.part), name), name


@pytest.mark.parametrize("card", CARDS)
def test_what_must_not_be_switched_on(card: str) -> None:
    """Guards that each heater is named with all that heats it, the pump, and the town's water."""
    plan = demo_plan(card)
    told = between(text_of(card), "Do not switch on", "Make safe")
    heaters = [s for s in plan.steps if s.step.key == "heat off"]
    assert heaters
    for planned in heaters:
        name = part_name(plan.card, planned.step.part)
        line = re.search(rf"{name} \(([^)]*)\), from step {planned.n} on", told, re.IGNORECASE)
        assert line is not None, name
        for source in plan.card.fitting[planned.step.part].heat:
            assert say("heat", source) in line[1]
    off = next(s.n for s in plan.steps if s.step.key == "pump off")
    assert f"Water pump, from step {off} on" in told
    for fitting in plan.card.fittings:
        if fitting.kind == "ice maker":
            assert "Ice maker" in told
        if fitting.kind == "city inlet":
            assert "Town water at the city water inlet" in told


@pytest.mark.parametrize("card", CARDS)
def test_what_to_do_when_a_tap_never_clears(card: str) -> None:
    """Guards what it means, when to stop, and each valve that could be to blame, as it must be."""
    plan = demo_plan(card)
    told = between(text_of(card), "When a tap never clears", "Stop and call a shop")
    assert "that line is not protected" in told
    careful = {
        m.outcome.run.outlet: m.outcome.run.first_colour_s or 0.0
        for m in plan.careful.moments
        if m.outcome.run
    }
    patience = re.search(r"No colour (\d+) min after the time shown: shut the tap", told)
    assert patience is not None
    for planned in plan.steps:
        if planned.run and planned.run.first_colour_s is not None:
            late = careful[planned.run.outlet] - planned.run.first_colour_s
            assert late <= 60 * int(patience[1]), planned.step.part
    for n, name, setting in handles_in(plan):
        key = next(s.step.key for s in plan.steps if s.n == n)
        if key in {"set bypass", "draw from jug"}:
            assert f"(step {n})" in told
            assert f"{name}: {setting}" in told
    crossing = {"shower", "outside shower", "outside kitchen"}
    for fitting in plan.card.fittings:
        if fitting.kind in crossing and fitting.only is None:
            assert re.search(rf"run together.*{part_name(plan.card, fitting.id)}", told)
        if fitting.kind == "low point" or fitting.role == "branch shut-off":
            assert part_name(plan.card, fitting.id) in told
    assert "call a shop" in told


@pytest.mark.parametrize("card", CARDS)
def test_every_part_that_is_not_proven_has_its_remedy(card: str) -> None:
    """Guards that the guide speaks of what is not proven exactly where the plan leaves it open."""
    plan = demo_plan(card)
    doubtful = [p for p in plan.parts if p.safe is not True]
    assert ("Not proven, and what would settle it" in text_of(card)) is bool(doubtful)
    assert ("You cannot settle what is not proven" in text_of(card)) is any(
        p.safe is None for p in doubtful
    )

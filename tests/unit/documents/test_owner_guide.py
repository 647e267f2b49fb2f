"""The owner's guide: two pages, the same bytes, nothing lost however closely it is set."""

import io
import re
from collections.abc import Iterator
from dataclasses import replace
from typing import Any

import pytest
from pypdf import PdfReader

from tests.unit.documents.demo_plans import COLD, demo_plan, doubtful_plan, plan_of
from wintertight.documents.guide_content import guide_content
from wintertight.documents.guide_density import DENSITIES, MOST_PAGES, Density
from wintertight.documents.job_sheet import job_sheet_pdf
from wintertight.documents.owner_guide import owner_guide_pdf, page_count
from wintertight.documents.typeset import PAPERS, Paper, typeset
from wintertight.errors import ChoiceError
from wintertight.procedure.plan import Plan, Purchase

pytestmark = pytest.mark.long

LARGEST = "large-motorhome"
PICTURE = (
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 10">'
    '<rect x="1" y="4" width="38" height="2"/></svg>'
)


def words(pdf: bytes) -> str:
    """Give all text of a guide, blanks and line ends made one."""
    pages = PdfReader(io.BytesIO(pdf), strict=True).pages
    return " ".join(" ".join(page.extract_text() for page in pages).split())


def content(plan: Plan, density: Density) -> dict[str, Any]:
    """Give what stands on a guide at one density."""
    return guide_content(plan, "en", "a4", "us", density)


def rows(found: dict[str, Any], kind: str) -> Iterator[dict[str, Any]]:
    """Give the rows of all steps, or of all taps."""
    for phase in found["phases"]:
        for block in phase["blocks"]:
            yield from block.get(kind, ())


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("card", [LARGEST, "full-fifth-wheel", "small-trailer"])
def test_it_is_one_sheet_of_paper(card: str, paper: Paper) -> None:
    """Guards that a guide has two pages at the most, on the paper asked for."""
    pages = PdfReader(io.BytesIO(owner_guide_pdf(demo_plan(card), paper=paper))).pages
    assert len(pages) == MOST_PAGES
    width = round(float(pages[0].mediabox.width))
    assert width == {"us-letter": 612, "a4": 595}[paper]


@pytest.mark.parametrize("card", [LARGEST, "middle-travel-trailer"])
@pytest.mark.parametrize("density", DENSITIES)
def test_nothing_is_dropped_where_it_is_set_closer(card: str, density: Density) -> None:
    """Guards cautions, handles, taps, times and step numbers at every density."""
    plan = demo_plan(card)
    roomy, close = content(plan, DENSITIES[0]), content(plan, density)
    for kind, key in (("rows", "cautions"), ("rows", "handles"), ("taps", "cautions")):
        told = [[one for row in rows(found, kind) for one in row[key]] for found in (roomy, close)]
        assert told[0] == told[1]
    for key in ("colours", "counts"):
        told = [
            [one for row in rows(found, "taps") for one in row[key]] for found in (roomy, close)
        ]
        assert told[0] == told[1]
    numbers = [row["n"] for kind in ("rows", "taps") for row in rows(close, kind)]
    covered = sorted(n for said in numbers for n in numbers_in(said))
    assert covered == [s.n for s in plan.steps]
    same = ("buy", "tools", "checks", "off", "never", "open", "shop", "void", "spring", "verdict")
    assert {key: roomy[key] for key in same} == {key: close[key] for key in same}


def numbers_in(said: str) -> list[int]:
    """Read "12", or a range as numbers."""
    first, _, last = said.partition("\u2013")
    return list(range(int(first), int(last or first) + 1))


def test_what_is_put_together_names_each_thing() -> None:
    """Guards that steps in one row still say what is poured where."""
    plan = demo_plan(LARGEST)
    close = content(plan, Density(8.5, together=True))
    poured = next(r["text"] for r in rows(close, "rows") if r["text"].startswith("Pour in"))
    cups = [s for s in plan.steps if s.step.key == "pour a cup"]
    assert poured.count(" into the ") == len(cups) > 1
    assert "into the sump of the dishwasher" in poured


def test_steps_stand_in_the_order_of_the_plan() -> None:
    """Guards that no step is printed before one that is done before it."""
    for density in DENSITIES:
        found = content(demo_plan(LARGEST), density)
        order = [
            numbers_in(row["n"])[0]
            for phase in found["phases"]
            for block in phase["blocks"]
            for row in block.get("rows", block.get("taps"))
        ]
        assert order == sorted(order)


def test_a_coach_too_large_for_two_pages_flows_on() -> None:
    """Guards that nothing is left out where even the closest setting does not fit."""
    plan = demo_plan(LARGEST)
    runs = [s for s in plan.steps if s.run]
    early = [s for s in plan.steps if s.step.phase in {"make safe", "drain", "set"}]
    late = [s for s in plan.steps if s.step.phase == "finish"]
    steps = [*early, *(runs * 5), *late]
    large = replace(plan, steps=tuple(replace(s, n=n) for n, s in enumerate(steps, start=1)))
    pdf = owner_guide_pdf(large)
    assert page_count(pdf) > MOST_PAGES
    assert words(pdf).count("Kitchen tap, cold side") == 5
    assert f" {len(steps)} Hang the tag" in words(pdf)


def test_the_pages_are_counted_right() -> None:
    """Guards the count of pages against a reader's, and that a text is no PDF."""
    for pdf in (job_sheet_pdf(demo_plan(LARGEST)), owner_guide_pdf(demo_plan("small-trailer"))):
        assert page_count(pdf) == len(PdfReader(io.BytesIO(pdf)).pages)
    with pytest.raises(ValueError, match="a tree of pages"):
        page_count(b"%PDF-1.7")


def test_the_same_plan_gives_the_same_bytes() -> None:
    """Guards that a guide can be compared and filed by its content."""
    assert owner_guide_pdf(plan_of()) == owner_guide_pdf(plan_of())


def test_it_can_be_read_aloud() -> None:
    """Guards that the guide is tagged, titled and names its language, as PDF/UA asks."""
    pdf = owner_guide_pdf(plan_of())
    read = PdfReader(io.BytesIO(pdf))
    assert read.metadata is not None
    assert read.metadata.title == "Owner's guide HL-204"
    assert str(read.root_object["/Lang"]) == "en"
    assert b"<pdfuaid:part>1</pdfuaid:part>" in pdf


@pytest.mark.parametrize("card", [LARGEST, "small-trailer"])
def test_print_is_never_too_small(card: str) -> None:
    """Guards that no text of a demo coach's guide is under eight and a half points."""
    sizes: set[float] = set()

    def note(text: str, _cm: object, matrix: list[float], _font: object, size: float) -> None:
        if text.strip():
            sizes.add(round(abs(size * matrix[3]), 2))

    for page in PdfReader(io.BytesIO(owner_guide_pdf(demo_plan(card)))).pages:
        page.extract_text(visitor_text=note)
    assert min(sizes) >= 8.5
    assert min(density.size_pt for density in DENSITIES) >= 8.0


@pytest.mark.parametrize("card", ["middle-travel-trailer", "full-fifth-wheel", "on-demand-van"])
def test_it_is_set_as_roomily_as_it_can_be(card: str) -> None:
    """Guards that few tries find what trying one after the other finds."""
    plan = demo_plan(card)
    in_turn = (
        typeset("owner-guide", guide_content(plan, "en", "us-letter", "us", density))
        for density in DENSITIES
    )
    assert owner_guide_pdf(plan) == next(pdf for pdf in in_turn if page_count(pdf) <= MOST_PAGES)


def test_no_brand_is_asked_for() -> None:
    """Guards that an owner buys by what a label prints, never by the name on the shop's list."""
    for plan in (plan_of(), doubtful_plan(), plan_of("Heron spirit -50")):
        text = words(owner_guide_pdf(plan))
        assert "Heron thrift" not in text
        assert "Heron pink" not in text
        assert "made for drinking water lines" in text
        assert "ethylene glycol is a poison" in text


def test_what_the_label_prints_is_what_is_bought() -> None:
    """Guards composition where it is known, the rating where it is not, and fire where it burns."""
    assert "propylene glycol, 35 % by volume" in words(owner_guide_pdf(plan_of()))
    rated = words(owner_guide_pdf(doubtful_plan()))
    assert "burst protection to -50 °F, or colder" in rated
    assert "What is in it is not printed" in rated
    spirit = words(owner_guide_pdf(plan_of("Heron spirit -50")))
    assert "ethanol, 28 % by volume" in spirit
    assert spirit.count("It can catch fire") == 2


@pytest.mark.parametrize(("spare", "told"), [(0, "1 to spare"), (3, "3 to spare")])
def test_there_is_always_one_to_spare(spare: int, told: str) -> None:
    """Guards that whoever is alone has a jug more than the plan's middle asks for."""
    plan = replace(plan_of(), buy=Purchase("Heron pink -50", 0.003785411784, 4, spare))
    assert f"4 jugs of 1 gal antifreeze for this coach, and {told}." in words(owner_guide_pdf(plan))


def test_both_unit_systems() -> None:
    """Guards that volumes and temperatures are told in the units asked for."""
    metric = words(owner_guide_pdf(plan_of(), system="metric"))
    assert "This guide is for -20 °C" in metric
    assert "jugs of 3.8 L" in metric
    assert "°F" not in metric
    assert "This guide is for -4 °F" in words(owner_guide_pdf(plan_of()))


def test_what_would_burst_is_told_first() -> None:
    """Guards that a guide of a coach that is not protected says so at its head, and what to do."""
    text = words(owner_guide_pdf(plan_of("Heron spirit -50", COLD)))
    assert "NOT protected to -31 °F" in text[:200]
    assert "Not proven, and what would settle it" in text
    assert "Take a stronger product, or empty it." in text


def test_pictures_have_their_place() -> None:
    """Guards that a picture stands at its step with its words, and that two pages still do."""
    pictures = {"bypass": PICTURE, "way in": PICTURE}
    pdf = owner_guide_pdf(demo_plan("middle-travel-trailer"), pictures=pictures)
    text = words(pdf)
    assert page_count(pdf) == MOST_PAGES
    assert text.index("Bypass the heater.") < text.index("The bypass as it must stand")
    assert text.index("hose into a full jug") < text.index("The way in for the antifreeze")
    plain = words(owner_guide_pdf(demo_plan("middle-travel-trailer")))
    assert "The bypass as it must stand" not in plain


def test_words_of_a_card_are_words_only() -> None:
    """Guards that a name with the typesetter's own signs is printed as it is written."""
    strange = 'Coach *bold* #pagebreak() $x$ <a> \\ "q" _u_'
    card = plan_of().card.model_copy(update={"name": strange})
    assert strange in words(owner_guide_pdf(replace(plan_of(), card=card)))


def test_what_is_not_there_is_named() -> None:
    """Guards that a wrong paper or language is an error that says which there are."""
    with pytest.raises(ChoiceError, match="expected one of us-letter, a4"):
        owner_guide_pdf(plan_of(), paper="a3")
    with pytest.raises(ChoiceError, match="no language is called 'xx'"):
        owner_guide_pdf(plan_of(), language="xx")


def test_no_sentence_has_a_hole() -> None:
    """Guards that nothing on a guide has an unfilled name, an empty bracket or a doubled stop."""
    for card in (LARGEST, "no-bypass-trailer", "on-demand-van"):
        text = words(owner_guide_pdf(demo_plan(card)))
        assert not re.search(r"[{}]|\(\)|\.\.|: \.|None", text), card


@pytest.mark.parametrize("card", ["full-fifth-wheel", "large-motorhome"])
def test_each_side_of_a_tap_keeps_its_seconds(card: str) -> None:
    """Guards that colour and count stand, and are read, beside the side that they belong to."""
    found = content(demo_plan(card), DENSITIES[-1])
    text, at = words(typeset("owner-guide", found)), 0
    sides = [
        (name, f"{colour} {count}")
        for tap in rows(found, "taps")
        for name, colour, count in zip(tap["names"], tap["colours"], tap["counts"], strict=True)
    ]
    assert any("then its hot side" in name for name, _ in sides)
    at = text.index(sides[0][0], text.index("Then count"))
    for (_, told), (following, _) in zip(sides, [*sides[1:], ("Finish", "")], strict=True):
        end = text.index(following, at + 1)
        assert told in text[at:end]
        at = end

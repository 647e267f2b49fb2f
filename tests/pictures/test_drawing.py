"""Pictures say what the plan says, in a manner that a standard names, and always the same."""

import math
import xml.etree.ElementTree as ET
from itertools import pairwise

import pytest

from tests.pictures.conftest import CARDS, plan_of
from wintertight.documents.drawing.of_plan import plan_pictures, settings_of
from wintertight.documents.drawing.picture import Mark, Picture
from wintertight.documents.drawing.pictures import LEGEND, whole_coach
from wintertight.documents.drawing.svg_text import LAYERS, svg_text
from wintertight.wording.names import part_name
from wintertight.wording.spoken import begun

SVG = "{http://www.w3.org/2000/svg}"


def pictures_of(card: str) -> list[Picture]:
    """Give all pictures of a plan of the demo."""
    return [shown.picture for shown in plan_pictures(plan_of(card))]


def words(picture: Picture) -> str:
    """Give all that is written in a picture, in the order in which it is drawn."""
    return " ".join(line for label in picture.labels for line in label.lines)


@pytest.mark.parametrize("card", CARDS)
def test_the_same_plan_gives_the_same_bytes(card: str) -> None:
    """Guards that pictures can be compared as files."""
    first, second = (tuple(map(svg_text, pictures_of(card))) for _ in range(2))
    assert first == second
    assert len(set(first)) == len(first)


@pytest.mark.parametrize("card", CARDS)
def test_every_picture_has_words_for_who_cannot_see_it(card: str) -> None:
    """Guards title and description of each picture, and that it is well-formed XML."""
    for picture in pictures_of(card):
        root = ET.fromstring(svg_text(picture))  # noqa: S314 - our own text
        title, words_of = root.find(f"{SVG}title"), root.find(f"{SVG}desc")
        assert title is not None
        assert words_of is not None
        assert title.text == picture.title
        assert words_of.text == picture.description
        named = {title.get("id"), words_of.get("id")}
        assert set(str(root.get("aria-labelledby")).split()) == named
        assert root.get("role") == "img"


@pytest.mark.parametrize("card", CARDS)
def test_the_whole_coach_names_every_fitting(card: str) -> None:
    """Guards that no fitting with a place and a name is left off the pipe drawing."""
    read = plan_of(card).card
    said = words(whole_coach(read))
    for fitting in read.fittings:
        if fitting.at is not None and fitting.seen != "absent" and fitting.kind != "tee":
            assert begun(part_name(read, fitting.id)) in said


@pytest.mark.parametrize("card", CARDS)
def test_each_handle_stands_as_the_step_sets_it(card: str) -> None:
    """Guards that every step that turns a valve has a picture, and it says how each stands."""
    plan = plan_of(card)
    by_step: dict[int, list[Picture]] = {}
    for shown in plan_pictures(plan):
        if shown.step is not None and shown.picture.name.startswith("step-"):
            by_step.setdefault(shown.step, []).append(shown.picture)
    turned = {p.n: settings_of(plan.card, p) for p in plan.steps if settings_of(plan.card, p)}
    assert set(by_step) == set(turned)
    for n, settings in turned.items():
        said = " ".join(words(picture) for picture in by_step[n])
        for part, setting in settings.items():
            name = begun(part_name(plan.card, part))
            stands = f"{setting.upper()} the pipe" if setting in {"along", "across"} else setting
            assert f"{name}: {stands}" in said, (n, part)
        levers = sorted(m.handle for p in by_step[n] for m in p.marks if m.handle)
        assert levers == sorted(s for s in settings.values() if s in {"along", "across"})


def test_a_handle_that_is_set_back_says_both() -> None:
    """Guards that a panel turned for one step is shown as it works, and as it is left."""
    (picture,) = (
        shown.picture
        for shown in plan_pictures(plan_of("full-fifth-wheel"))
        if "DRY CAMP" in words(shown.picture) and shown.shows == "handles"
    )
    assert "Service panel: CITY, then DRY CAMP" in words(picture)


@pytest.mark.parametrize("card", CARDS)
def test_nothing_is_blank_above_a_coach(card: str) -> None:
    """Guards that a whole coach begins right below its caption, and its first label does."""
    for shown in plan_pictures(plan_of(card)):
        if shown.shows != "handles":
            upper = [label.box[1] for label in shown.picture.labels]
            upper += [y for stroke in shown.picture.strokes for _, y in stroke.points]
            assert 0.0 < min(upper) < 40.0, shown.picture.name


@pytest.mark.parametrize("card", CARDS)
def test_a_lever_lies_along_its_pipe_or_across_it(card: str) -> None:
    """Guards the drawn lever against the drawn pipe: parallel or square to it, never between."""
    seen = 0
    for picture in pictures_of(card):
        for mark in picture.marks:
            if mark.handle:
                pipe = _pipe_at(picture, mark)
                assert pipe, (picture.name, mark)
                # The body's pipe runs with one of the stretches that end at the valve.
                between = [abs(math.sin(math.radians(mark.turned_deg - turn))) for turn in pipe]
                assert min(between) < 0.02, picture.name
                seen += 1
    has_valves = any(f.kind == "ball valve" for f in plan_of(card).card.fittings)
    assert seen > 0 or not has_valves


def _pipe_at(picture: Picture, mark: Mark) -> list[float]:
    """Give the directions of the stretches of line that end at a mark [deg]."""
    found = []
    for stroke in picture.strokes:
        if stroke.pattern != "outline":
            for a, b in (stroke.points[:2], stroke.points[-2:]):
                if min(math.dist(a, mark.at), math.dist(b, mark.at)) < 1.0:
                    found.append(math.degrees(math.atan2(b[1] - a[1], b[0] - a[0])))
    return found


@pytest.mark.parametrize("card", CARDS)
def test_isometric_lines_run_along_three_axes(card: str) -> None:
    """Guards that every stretch runs upright or at 30 degrees, as in ISO 6412-2 and ISO 5456-3."""
    picture = whole_coach(plan_of(card).card)
    stretches = 0
    for stroke in picture.strokes:
        if stroke.pattern in {"hot", "cold", "neither"}:
            for a, b in pairwise(stroke.points):
                sample = a[1] == b[1] > picture.height - LEGEND
                if math.dist(a, b) > 0.5 and not sample:
                    turn = math.degrees(math.atan2(b[1] - a[1], b[0] - a[0])) % 180.0
                    assert min(abs(turn - axis) for axis in (30.0, 90.0, 150.0)) < 0.5
                    stretches += 1
    assert stretches > 10


def test_patterns_differ_without_their_colours() -> None:
    """Guards that a grey print still tells water from antifreeze and a gap from all else."""
    grey = {
        pattern: tuple((width, dashes, _darkness(colour)) for colour, width, dashes in layers)
        for pattern, layers in LAYERS.items()
    }
    assert len({tuple((w, d) for w, d, _ in layers) for layers in grey.values()}) >= 8
    assert len(set(grey.values())) == len(grey)


def _darkness(colour: str) -> int:
    """Give how dark a colour prints, in five steps (luma after ITU-R BT.601)."""
    red, green, blue = (int(colour[i : i + 2], 16) for i in (1, 3, 5))
    return int((0.299 * red + 0.587 * green + 0.114 * blue) / 51.2)

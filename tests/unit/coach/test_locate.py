import tomllib
from dataclasses import dataclass, field

import pytest
from hypothesis import given
from hypothesis import strategies as st

from wintertight.coach.locate import Path, TooDeep, lines_of, locate, nearest_line

TRICKY = '''# a = 1
title = "[not.a.table] # no comment"
"quoted key" = 1
'single "quoted"' = 2
a.b . "c.d" = 3

[fruit.apple] # comment
color = """
[[fitting]]
x = 1
a quote at the end\\""""""
other = \'\'\'
# y = ["
\'\'\'
list = [ # first
  1, [2,
  3], # ] not here
  { x = 1, y.z = "}" },
]
[[fruit.apple.seed]]
n = 1
[[fruit.apple.seed]]
n = 2
[fruit.apple.seed.coat]
hue = { dark = true, light = { much = 1 } }
[[fruit.apple.seed]]
[fruit]
last = 1979-05-27T07:32:00Z
'''

KNOWN: dict[Path, int] = {
    ("title",): 2, ("quoted key",): 3, ('single "quoted"',): 4, ("a", "b", "c.d"): 5, ("a",): 5,
    ("fruit", "apple"): 7, ("fruit", "apple", "color"): 8, ("fruit", "apple", "other"): 12,
    ("fruit", "apple", "list"): 15, ("fruit", "apple", "list", 0): 16,
    ("fruit", "apple", "list", 1, 1): 17, ("fruit", "apple", "list", 2, "y", "z"): 18,
    ("fruit", "apple", "seed", 0): 20, ("fruit", "apple", "seed", 0, "n"): 21,
    ("fruit", "apple", "seed", 1, "n"): 23, ("fruit", "apple", "seed", 1, "coat"): 24,
    ("fruit", "apple", "seed", 1, "coat", "hue", "light", "much"): 25,
    ("fruit", "apple", "seed", 2): 26, ("fruit",): 27, ("fruit", "last"): 28,
}  # fmt: skip


@pytest.mark.parametrize("newline", ["\n", "\r\n"])
def test_every_form_of_toml_is_found(newline: str) -> None:
    """Guards each form of key, string, list and table, with both kinds of line ends."""
    tomllib.loads(TRICKY)
    text = TRICKY.replace("\n", newline)
    assert {path: locate(text, path) for path in KNOWN} == KNOWN


def test_what_is_not_there_has_no_line() -> None:
    """Guards that a missing field is never given some line, only its table is."""
    assert locate(TRICKY, ("fruit", "apple", "size")) is None
    lines = lines_of(TRICKY)
    assert nearest_line(lines, ("fruit", "apple", "seed", 1, "size")) == 22
    assert nearest_line(lines, ("nothing", "here")) is None


@pytest.mark.parametrize("text", ["a = " + "[" * 40, "a." * 40 + "a = 1", "a = " + "{b = " * 40])
def test_depth_is_limited(text: str) -> None:
    """Guards the limit of nesting, whether by brackets, keys or tables."""
    with pytest.raises(TooDeep):
        lines_of(text)


@dataclass
class Page:
    """A TOML text that grows, with the line of each path."""

    lines: list[str] = field(default_factory=list)
    known: dict[Path, int] = field(default_factory=dict)

    def add(self, text: str) -> int:
        """Add text; give the line on which it begins."""
        at = len(self.lines) + 1
        self.lines += text.split("\n")
        return at


BARE = st.text("abcxyz-_019", min_size=1, max_size=4)
ODD = st.text(" .#[]{}='\"\\\té", min_size=0, max_size=4)
NAMES = BARE | ODD


def spelled(name: str) -> str:
    """Write a key: bare where it can be, else quoted."""
    if name and all(c.isascii() and (c.isalnum() or c in "-_") for c in name):
        return name
    for old, new in (("\\", "\\\\"), ('"', '\\"'), ("\t", "\\t")):
        name = name.replace(old, new)
    return f'"{name}"'


SCALARS = st.sampled_from(
    ["1", "-2.5", "true", '"plain"', '"# [x] = \\""', "'lit # ]'", "1979-05-27 07:32:00",
     '"""one\n[two]\n"three" = 3"""', "'''\n# four\n'''", '""', "'''a''b'''"]
)  # fmt: skip
SPACES = st.sampled_from([("", ""), ("\n", ""), ("# c ]\n  ", "\n"), (" ", " # d ,\n")])


@st.composite
def values(draw: st.DrawFn, depth: int = 2) -> tuple[str, list[tuple[Path, int]]]:
    """Give a value as text, with the line offset of each path inside it."""
    form = draw(st.sampled_from(["scalar", "list", "table"] if depth else ["scalar"]))
    if form == "scalar":
        return draw(SCALARS), []
    inside: list[tuple[Path, int]] = []
    text = "[" if form == "list" else "{"
    names = draw(st.lists(NAMES, max_size=3, unique=True))
    for place, name in enumerate(names):
        before, after = draw(SPACES) if form == "list" else (" ", " ")
        value, deeper = draw(values(depth - 1))
        step: str | int = place if form == "list" else name
        text += before
        offset = text.count("\n")
        inside.append(((step,), offset))
        text += "" if form == "list" else f"{spelled(name)} = "
        inside += [((step, *path), offset + more) for path, more in deeper]
        text += value + after + ("," if place + 1 < len(names) else "")
    return text + ("]" if form == "list" else "}"), inside


@st.composite
def pages(draw: st.DrawFn) -> Page:
    """Make a document table by table, and keep the book of its lines."""
    page = Page()
    tables = draw(
        st.lists(st.tuples(NAMES, st.integers(0, 3)), max_size=4, unique_by=lambda t: t[0])
    )
    fill(draw, page, ())
    for name, count in tables:
        if (name,) in page.known:
            continue
        for place in range(max(count, 1)):
            draw_comment = draw(st.sampled_from(["", "# [x]", "  "]))
            page.add(draw_comment)
            here: Path = (name, place) if count else (name,)
            at = page.add(f"[[ {spelled(name)} ]]" if count else f"[{spelled(name)}] # t")
            page.known.setdefault((name,), at)
            page.known[here] = at
            fill(draw, page, here)
    return page


def fill(draw: st.DrawFn, page: Page, table: Path) -> None:
    """Write some fields of a table, plain and dotted."""
    for name in draw(st.lists(NAMES, max_size=3, unique=True)):
        value, inside = draw(values())
        dotted = draw(st.booleans())
        key = f"{spelled(name)} . deep" if dotted else spelled(name)
        at = page.add(f"{key} = {value}")
        path: Path = (*table, name)
        page.known[path] = at
        if dotted:
            path = (*path, "deep")
            page.known[path] = at
        page.known |= {(*path, *more): at + offset for more, offset in inside}


@given(pages(), st.sampled_from(["\n", "\r\n"]))
def test_lines_are_those_of_the_making(page: Page, newline: str) -> None:
    """Guards, on documents made as data, that every field is found on the line it was put on."""
    text = newline.join("\n".join(page.lines).split("\n")) + newline
    tomllib.loads(text)
    assert dict(lines_of(text)) == page.known


@given(pages(), st.data())
def test_a_broken_text_is_never_given_a_wrong_line(page: Page, data: st.DataObject) -> None:
    """Guards that a text cut off anywhere keeps the lines before the cut and invents none."""
    text = "\n".join(page.lines)
    cut = text[: data.draw(st.integers(0, len(text)))]
    last = cut.count("\n") + 1
    for path, line in lines_of(cut).items():
        assert page.known.get(path, last) == line

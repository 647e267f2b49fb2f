"""Nothing in the tree speaks of how or where it was written."""

import re

import pytest

from tests.architecture.tree import files, shown

# Brackets around one letter keep these lines from finding themselves.
FORBIDDEN = {
    "a path of the machine it was written on": r"(?<![\w.\-/:])/([w]ork|[t]mp|[r]oot|[h]ome)\b",
    "a package registry": r"\b(pypi[.]org|python[h]osted|npmjs[.]|crates[.]io|index-[u]rl)",
    "a way of working": (
        r"\b([t]ranscripts?|(this|that|previous|earlier|next|last|other|parallel|working) [s]ession"
        r"|[c]hatbot|[l]anguage model|[s]ub-?agents?)\b"
    ),
    "a tool of writing": (
        r"\b((?-i:[A]I|[L]LM)|[C]laude|[A]nthropic|[O]penAI|[C]opilot|ChatG[P]T)\b"
    ),
    "an issue number": (
        r"(?<![\w&\"'`(/#])#\d{1,5}\b(?![\"'])|\bGH-\d+|\b(issue|ticket|pull request|PR) #?\d+\b"
    ),
}
SUFFIXES = (".py", ".md", ".toml", ".typ", ".json", ".csv", ".yml", ".yaml", ".txt", ".cfg", "")


def findings(text: str, pattern: str) -> list[tuple[int, str]]:
    """Give line number and text of everything in a text that a pattern forbids."""
    search = re.compile(pattern, re.IGNORECASE)
    lines = enumerate(text.splitlines(), start=1)
    return [(number, match[0]) for number, line in lines for match in search.finditer(line)]


@pytest.mark.parametrize("what", FORBIDDEN)
def test_text_is_free_of(what: str) -> None:
    """Guards that no file carries what is no part of the project."""
    found = [
        f"{shown(path)}:{number} {text!r}"
        for path in files(*SUFFIXES)
        for number, text in findings(path.read_text(encoding="utf-8"), FORBIDDEN[what])
    ]
    assert not found, f"{what}:\n" + "\n".join(found)


@pytest.mark.parametrize(
    ("what", "bad"),
    [
        ("a path of the machine it was written on", "see /wo" + "rk/main and '/tm" + "p/x'"),
        ("a package registry", "from https://pypi" + ".org/simple"),
        ("a way of working", "found in an earlier ses" + "sion"),
        ("a tool of writing", "written by an A" + "I"),
        ("an issue number", "fixes #" + "12"),
    ],
)
def test_the_check_finds(what: str, bad: str) -> None:
    """Guards that each pattern can find something."""
    assert findings(bad, FORBIDDEN[what])


@pytest.mark.parametrize(
    "good",
    [
        "per unit/work done",
        "def pytest_sessionfinish(session)",
        "fill='#123456' stroke=\"#000\"",
        "[there](errors.md#1-the-tree)",
        "a wetting agent in the main trap",
        "tmp_path / 'a.toml'",
        "## 2. Lines",
    ],
)
def test_the_check_lets_pass(good: str) -> None:
    """Guards that plain words of the field raise no false alarm."""
    assert [what for what, pattern in FORBIDDEN.items() if findings(good, pattern)] == []

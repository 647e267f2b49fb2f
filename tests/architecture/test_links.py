"""Links in the documentation lead somewhere."""

from pathlib import Path

import pytest

from tests.architecture.markdown import anchors, links
from tests.architecture.tree import ROOT, files, shown


def broken(page: Path) -> list[str]:
    """Give the links of a page that lead to no file or to no heading."""
    found = []
    for target in links(page.read_text(encoding="utf-8")):
        if "://" in target or target.startswith("mailto:"):
            continue
        name, _, anchor = target.partition("#")
        there = (page.parent / name).resolve() if name else page
        known = not anchor or (there.is_file() and anchor in anchors(there.read_text("utf-8")))
        if not there.exists() or not known:
            found.append(target)
    return found


@pytest.mark.parametrize("page", files(".md"), ids=shown)
def test_links_resolve(page: Path) -> None:
    """Guards that each link to a file or heading of the project finds it."""
    assert broken(page) == []


@pytest.mark.parametrize("page", files(".md", under=ROOT / "docs"), ids=shown)
def test_each_page_can_be_reached(page: Path) -> None:
    """Guards that every page of the documentation is linked from another one."""
    others = [p for p in files(".md") if p != page]
    reached = {
        (other.parent / target.partition("#")[0]).resolve()
        for other in others
        for target in links(other.read_text(encoding="utf-8"))
    }
    assert page.resolve() in reached


def test_a_broken_link_is_found(tmp_path: Path) -> None:
    """Guards the check itself with a page that links to nothing."""
    page = tmp_path / "a.md"
    page.write_text("# Here\n[good](#here) [bad](#there) [gone](b.md) [far](https://example.org)\n")
    assert broken(page) == ["#there", "b.md"]

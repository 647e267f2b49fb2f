"""A real browser that lays out pictures and tells where their letters came to stand."""

import os
import shutil
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from itertools import combinations
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Page, sync_playwright

from wintertight.documents.drawing.picture import TEXT

NAMES = ("chromium", "chromium-browser", "google-chrome")

QUIET = (
    "--no-sandbox",
    "--disable-gpu",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
)

MEASURE = """text => {
  document.body.innerHTML = text;
  const svg = document.querySelector('svg');
  const view = svg.viewBox.baseVal;
  return {
    width: view.width, height: view.height,
    texts: [...svg.querySelectorAll('text')].map(t => {
      const b = t.getBBox();
      return [t.textContent, b.x, b.y, b.x + b.width, b.y + b.height];
    }),
  };
}"""

EM = 1.0
"""Height from the lowest to the tallest letter, as a share of the size of letters [1]: a browser's
box of a text is that of its font, which leaves room above and below any letter."""


@dataclass(frozen=True)
class Box:
    """Where a browser set a text: left, upper, right and lower edge."""

    text: str
    left: float
    upper: float
    right: float
    lower: float

    def meets(self, other: "Box") -> bool:
        """Tell whether letters of two texts touch."""
        spare = max(self.lower - self.upper - EM * TEXT, 0.0) / 2.0
        apart = (
            self.right <= other.left
            or other.right <= self.left
            or self.lower - spare <= other.upper + spare
            or other.lower - spare <= self.upper + spare
        )
        return not apart


@dataclass(frozen=True)
class Rendered:
    """A picture as a browser laid it out."""

    width: float
    height: float
    boxes: tuple[Box, ...]

    def faults(self) -> list[str]:
        """Name texts that touch each other, and texts that leave the paper."""
        touching = [
            f"'{a.text}' touches '{b.text}'" for a, b in combinations(self.boxes, 2) if a.meets(b)
        ]
        outside = [
            f"'{b.text}' leaves the paper"
            for b in self.boxes
            if min(b.left, b.upper) < 0.0 or b.right > self.width or b.lower > self.height
        ]
        return touching + outside


class Browser:
    """A page that pictures are laid out on."""

    def __init__(self, page: Page) -> None:
        """Keep the page."""
        self.page = page

    def rendered(self, text: str) -> Rendered:
        """Lay a picture out and measure its texts."""
        found: dict[str, Any] = self.page.evaluate(MEASURE, text)
        boxes = tuple(Box(*entry) for entry in found["texts"])
        return Rendered(found["width"], found["height"], boxes)

    def screenshot(self, text: str, file: Path, width: int, height: int) -> None:
        """Draw a picture as a screen of some size shows it."""
        self.page.set_viewport_size({"width": width, "height": height})
        self.page.evaluate("text => { document.body.innerHTML = text; }", text)
        self.page.screenshot(path=file)


@contextmanager
def browser() -> Iterator[Browser]:
    """Start Debian's chromium; without one the tests are skipped, and say why."""
    program = next(filter(None, map(shutil.which, NAMES)), None)
    if program is None:
        pytest.skip("no chromium on this machine: labels are not measured as a browser sets them")
    os.environ.setdefault("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")
    with sync_playwright() as play:
        started = play.chromium.launch(executable_path=program, args=list(QUIET))
        page = started.new_page(viewport={"width": 1180, "height": 820})
        page.set_content("<!doctype html><body style='margin:0'></body>")
        yield Browser(page)
        started.close()

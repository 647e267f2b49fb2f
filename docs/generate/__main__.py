"""Write generated pages: ``python -m docs.generate [PAGE ...]``; without a name, all of them."""

import sys
from collections.abc import Callable
from pathlib import Path

from docs.generate.accuracy import accuracy_page

DOCS = Path(__file__).resolve().parents[1]

PAGES: dict[str, Callable[[], str]] = {
    "accuracy": accuracy_page,
}
"""Each page by its name: a function that gives its text. It is written to docs/NAME.md."""


def main(names: list[str]) -> int:
    """Write the pages asked for."""
    unknown = sorted(set(names) - set(PAGES))
    if unknown:
        sys.stderr.write(f"no page is called {', '.join(unknown)}; there are {', '.join(PAGES)}\n")
        return 2
    for name in names or PAGES:
        (DOCS / f"{name}.md").write_text(PAGES[name](), encoding="utf-8")
        sys.stdout.write(f"docs/{name}.md\n")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))

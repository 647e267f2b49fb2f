"""Write generated pages: ``python -m docs.generate [PAGE ...]``; without a name, all of them."""

import json
import sys
from collections.abc import Callable
from functools import partial
from pathlib import Path

from docs.generate.accuracy import accuracy_page
from docs.generate.coaches import coaches_page
from docs.generate.drawings import SHOWN, drawing
from docs.generate.methods import methods_page
from docs.generate.mistakes import mistakes_page
from docs.generate.parts import parts_page
from docs.generate.records import records_page
from wintertight.coach.schema import card_schema

DOCS = Path(__file__).resolve().parents[1]


def card_schema_page() -> str:
    """Give the JSON Schema of a card."""
    return json.dumps(card_schema(), indent=2, ensure_ascii=False) + "\n"


PAGES: dict[str, Callable[[], str]] = {
    "accuracy.md": accuracy_page,
    "card.schema.json": card_schema_page,
    "coaches.md": coaches_page,
    "methods.md": methods_page,
    "mistakes.md": mistakes_page,
    "parts.md": parts_page,
    "records.md": records_page,
    **{f"drawings/{name}.svg": partial(drawing, name) for name in SHOWN},
}
"""Each file of docs/ that is generated, and the function that gives its text."""


def main(names: list[str]) -> int:
    """Write the pages asked for."""
    unknown = sorted(set(names) - set(PAGES))
    if unknown:
        sys.stderr.write(f"no page is called {', '.join(unknown)}; there are {', '.join(PAGES)}\n")
        return 2
    for name in names or PAGES:
        (DOCS / name).parent.mkdir(exist_ok=True)
        (DOCS / name).write_text(PAGES[name](), encoding="utf-8")
        sys.stdout.write(f"docs/{name}\n")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))

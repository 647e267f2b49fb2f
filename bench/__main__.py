"""Run every bench_*.py of this folder and print what it measured."""

import importlib
from pathlib import Path


def main() -> None:
    """Print one line a measurement; each bench module gives its lines by ``measure()``."""
    for path in sorted(Path(__file__).parent.glob("bench_*.py")):
        for line in importlib.import_module(f"bench.{path.stem}").measure():
            print(line)  # noqa: T201 - printing is what this program is for


if __name__ == "__main__":
    main()

"""The page of accuracy: every number of ours that was compared with one from outside.

The rows come from the tests themselves. A difference is rounded to a fiftieth of its tolerance, so
that the page does not change with the last digits of another machine's arithmetic.
"""

import json
import os
import subprocess
import sys
import tempfile
from collections.abc import Iterable, Mapping
from decimal import Decimal
from pathlib import Path
from typing import Any

from wintertight.coach.tubing import BORES
from wintertight.fluids.tables import read_table, table_names
from wintertight.sources import SOURCES, cite

ROOT = Path(__file__).resolve().parents[2]
Row = Mapping[str, Any]

LAST = 2000
"""So many of the last signs of what the tests print are told when they fail."""

_HEAD = """# Accuracy

This page is generated from the tests by `make docs`; do not edit it.

A number in this program is either taken from a source, or checked against one, never both: a table
is not its own check. Where the tolerance is wider than half of the last printed digit, the reason
stands beside it.

The mark behind a source says how far to trust it: *published*, seen in print; *reproduced*,
remembered and confirmed by calculation; *memory*, remembered only; *common practice*, what the
trade does; *calculated*, from a stated formula or by another program.
"""

_DIFFERENCES = """## What EPANET does otherwise, and what comes of it

The rows of contents compare whole jobs: in each coach of the demo every outlet runs in turn, for 3
and for 12 seconds, from a jug of strength 1 into a coach full of water. Every line and hollow is
compared afterwards, those through which nothing flowed as well. Both sides take plug flow, one
viscosity and EPANET's law of friction; EPANET carries its contents from one outlet to the next in
one long quality run. What is left between the two is understood:

- *It mixes over its step.* Where a front stands close to the end of a small hollow, some of it is
  already beyond. With contents taken 100, 200 and 400 times as large, so that a step is 10, 5 and
  2.5 ms, the largest difference falls from 0.007 to 0.003 and to less than 0.001; 400 is used.
- *It leaks through what is shut*, about 5e-4 gal/min. The handle of a shower that is shut beside
  one that is open lets that much pass, and a front is ahead by a thousandth of what has flowed.
  Taps are emitters here, which leak nothing once they are set to nought; passages that never open
  are left out where both ends are reached without them. With shower heads left open behind shut
  handles, contents were off by up to 0.04.
- *A line that turns round after it stood still is turned over.* It remembers which way a line
  flows, but not which way it flowed before it stood: what came in last is then given up last. A
  line three quarters full that gives half its volume back holds a quarter; there it holds a half.
  A test keeps hold of both numbers. In one coach, where hot and cold join behind a diverter, an
  outlet is run once more so that no line rests before it turns.
- *A check valve's pipe holds nothing there.* What a check valve holds stands in a pipe before it.
- *It has no vessel under pressure that is stirred*: it mixes in tanks only, and those stand open to
  the air. Bowls, pumps and heaters are plug flow on both sides here; a coach's filter housing and
  heater are compared with the exponential of a wash-out instead, in rows of their own.
- *It has no accumulator that breathes.* Left out on both sides; with it, only the contents of the
  accumulator's own line change.
"""


def accuracy_page() -> str:
    """Run the checks and give the text of the page."""
    return page_of(rows_of_the_checks())


def rows_of_the_checks() -> list[Row]:
    """Run the tests that compare with print and with other engines, and give their rows."""
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder) / "accuracy.json"
        done = subprocess.run(  # noqa: S603 - our own tests, by this very Python
            [
                *(sys.executable, "-m", "pytest", "-q", "-p", "no:cacheprovider"),
                *("-p", "no:xdist", "--accuracy", str(file), "tests/published", "tests/engines"),
            ],
            cwd=ROOT,
            env={name: v for name, v in os.environ.items() if name != "PYTEST_ADDOPTS"},
            check=False,
            capture_output=True,
            text=True,
        )
        if done.returncode:
            message = f"the checks fail, so there is no page of them:\n{done.stdout[-LAST:]}"
            raise RuntimeError(message)
        rows: list[Row] = json.loads(file.read_text(encoding="utf-8"))
    return rows


def page_of(rows: Iterable[Row]) -> str:
    """Give the text of the page for some rows."""
    kept = list(rows)
    engines = [r for r in kept if SOURCES[r["source"]].mark == "calculated"]
    printed = [r for r in kept if SOURCES[r["source"]].mark != "calculated"]
    parts = [
        _HEAD,
        "## Data taken from\n",
        _data(),
        "## Checked against print\n",
        _table(printed),
        "## Checked against other engines and stated formulas\n",
        _table(engines),
        _DIFFERENCES,
        "## Sources\n",
        "".join(f"- `{key}`: {cite(key)}\n" for key in sorted(SOURCES)),
    ]
    return "\n".join(parts)


def _data() -> str:
    lines = ["| source | place | what it gives | remark |", "|---|---|---|---|"]
    for name in table_names():
        head = read_table(name).head
        lines.append(f"| {head['source']} | {head['place']} | `{name}` | {head['note']} |")
    for source, material in sorted({(b.source, b.material) for b in BORES.values()}):
        sizes = ", ".join(b.nominal for b in BORES.values() if b.material == material)
        mark = SOURCES[source].mark
        lines.append(f"| {source} | | diameters and walls of {material}, {sizes} in | {mark} |")
    return "\n".join(lines) + "\n"


def _table(rows: list[Row]) -> str:
    lines = [
        "| source | place | what | theirs | ours | difference | tolerance | why so wide |",
        "|---|---|---|---:|---:|---:|---:|---|",
    ]
    lines += [
        f"| {r['source']} | {r['place']} | {r['what']} | {r['theirs']} | {_ours(r)} "
        f"| {_difference(r)} | {r['tolerance']:.2g} | {r['why']} |"
        for r in rows
    ]
    return "\n".join(lines) + "\n"


def _ours(row: Row) -> str:
    exponent = Decimal(row["theirs"]).as_tuple().exponent
    if "e" in row["theirs"].lower():
        return f"{row['ours']:.4g}"
    return f"{row['ours']:.{max(0, 1 - int(exponent))}f}"


def _difference(row: Row) -> str:
    step = row["tolerance"] / 50.0
    rounded = round(row["difference"] / step) * step if step > 0.0 else 0.0
    return "0" if rounded == 0.0 else f"{rounded:+.2g}"

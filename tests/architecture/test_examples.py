"""What the documentation shows is what the program does."""

import doctest
import os
import shlex
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from tests.architecture.markdown import Run, blocks, matches, runs
from tests.architecture.tree import PACKAGE, ROOT, files, shown

PAGES = [ROOT / "README.md", *files(".md", under=ROOT / "docs")]
PROGRAM = Path(sys.executable).with_name("wintertight")
# 1 is a fault of the program: no page may show one.
STATUSES = {0, 2, 3}


def commands(page: Path) -> list[Run]:
    """Give the commands of a page that call the program, in order."""
    console = [b for b in blocks(page.read_text(encoding="utf-8")) if b.language == "console"]
    return [
        run for block in console for run in runs(block) if run.command.startswith("wintertight")
    ]


def carry_out(command: str, folder: Path) -> subprocess.CompletedProcess[str]:
    """Run one shown command in a folder; ``> FILE`` at its end is honoured."""
    words = shlex.split(command)
    target = words[-1] if len(words) > 2 and words[-2] == ">" else None
    plain = {"NO_COLOR": "1", "TERM": "dumb", "COLUMNS": "100", "PYTHONUTF8": "1"}
    done = subprocess.run(  # noqa: S603 - commands of our own manual
        [PROGRAM, *(words[1:-2] if target else words[1:])],
        cwd=folder,
        env={**os.environ, **plain},
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        encoding="utf-8",
        timeout=60,
        check=False,
    )
    if target:
        (folder / target).write_text(done.stdout, encoding="utf-8")
        done.stdout = ""
    return done


@pytest.mark.long
@pytest.mark.parametrize("page", PAGES, ids=shown)
def test_console_examples(page: Path, tmp_path: Path) -> None:
    """Guards that each command of a page prints what the page shows."""
    shown_runs = commands(page)
    if shown_runs:
        shutil.copytree(PACKAGE / "demo", tmp_path / "src" / "wintertight" / "demo")
    for run in shown_runs:
        done = carry_out(run.command, tmp_path)
        where = f"{shown(page)}:{run.line} $ {run.command}"
        assert done.returncode in STATUSES, f"{where}: status {done.returncode}\n{done.stdout}"
        assert "Traceback" not in done.stdout, where
        assert matches(run.shown, done.stdout), f"{where} prints\n{done.stdout}"


@pytest.mark.parametrize("page", PAGES, ids=shown)
def test_python_examples(page: Path) -> None:
    """Guards that the Python blocks of a page run, in order, and give what they show."""
    python = [b for b in blocks(page.read_text(encoding="utf-8")) if b.language == "python"]
    assert all(">>>" in block.text for block in python), "a python block without >>> is not tested"
    text = "\n".join(block.text for block in python)
    example = doctest.DocTestParser().get_doctest(text, {}, shown(page), str(page), 0)
    said: list[str] = []
    doctest.DocTestRunner(verbose=False).run(example, out=said.append)
    assert not said, "".join(said)


def test_a_wrong_example_is_found() -> None:
    """Guards that the comparison tells changed, missing and added lines."""
    assert matches("a\n...\nb\n", "a\nx\ny\nb\n")
    assert matches("a\n...\n", "a\n")
    for shown_wrong in ("a\nb\n", "a\nx\ny\n", "a\nx\ny\nb\nc\n", ""):
        assert not matches(shown_wrong, "a\nx\ny\nb\n")

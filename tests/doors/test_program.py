import io
import os
import subprocess
import sys
from pathlib import Path

import pytest

from tests.doors.door import CARD, PROGRAM, Door, as_program
from wintertight import __version__
from wintertight.cli import commands
from wintertight.cli.answer import Answer
from wintertight.cli.main import main
from wintertight.cli.outcome import LONGEST_MESSAGE

HEAVY = {"numpy", "pydantic", "pint", "scipy", "typst"}


def test_the_program_tells_its_version() -> None:
    """Guards that the installed entry starts and names the engine."""
    done = as_program("--version")
    assert (done.status, done.out, done.err) == (0, f"wintertight {__version__}\n", "")


@pytest.mark.parametrize("arguments", [(), ("--help",), ("-h",)])
def test_help_lists_the_commands(door: Door, arguments: tuple[str, ...]) -> None:
    """Guards that a bare call and the usual options list every command."""
    done = door(*arguments)
    assert (done.status, done.err) == (0, "")
    assert all(f"  {verb} " in done.out for verb in ("plan", "prove", "fluid", "flow", "coach"))


@pytest.mark.parametrize(
    "command", [("plan",), ("prove",), ("fluid",), ("flow",), ("coach",), ("coach", "check")]
)
def test_each_command_has_help(door: Door, command: tuple[str, ...]) -> None:
    """Guards that each command explains itself on standard output."""
    done = door(*command, "--help")
    assert (done.status, done.err) == (0, "")
    assert done.out.startswith(f"Usage: wintertight {' '.join(command)} ")


def loaded_after(statement: str) -> set[str]:
    """Give the heavy modules that a statement loads in a fresh interpreter."""
    code = f"import sys\n{statement}\nprint(*({HEAVY!r} & set(sys.modules)), file=sys.stderr)"
    done = subprocess.run(  # noqa: S603 - our own code
        [sys.executable, "-c", code], capture_output=True, text=True, timeout=60, check=True
    )
    return set(done.stderr.split())


def test_help_loads_nothing_heavy() -> None:
    """Guards the time of --help: neither numbers nor cards nor papers are loaded for it."""
    assert loaded_after("from wintertight.cli.main import main; main(['--help'])") == set()


def test_flow_loads_no_units_library() -> None:
    """Guards the start of a command: the slow libraries stay out of the usual way."""
    run = (
        f"from wintertight.cli.main import main; main(['flow', {str(CARD)!r}, '--open', 'toilet'])"
    )
    assert loaded_after(run) <= {"numpy", "pydantic"}


def test_letters_pass_any_console() -> None:
    """Guards that output is UTF-8 where the console's own code page is another."""
    done = as_program("fluid", PYTHONIOENCODING="ascii", PYTHONUTF8="0", LC_ALL="C")
    assert done.status == 0
    assert "°C" in done.out


def test_a_reader_that_has_gone_is_no_fault() -> None:
    """Guards that a closed pipe ends the program without a word."""
    reads, writes = os.pipe()
    os.close(reads)
    done = subprocess.run(  # noqa: S603 - our own program
        [PROGRAM, "coach", "schema"],
        stdout=writes,
        stderr=subprocess.PIPE,
        timeout=60,
        check=False,
    )
    os.close(writes)
    assert (done.returncode, done.stderr) == (141, b"")


def test_ctrl_c_is_quiet(door: Door, monkeypatch: pytest.MonkeyPatch) -> None:
    """Guards that stopping the program by hand prints nothing."""

    def stopped(_: list[str]) -> Answer:
        raise KeyboardInterrupt

    monkeypatch.setattr(commands, "carry_out", stopped)
    done = door("fluid")
    assert (done.status, done.out, done.err) == (130, "", "")


class FullDisk(io.StringIO):
    """A stream to a disk without room."""

    def flush(self) -> None:
        """Fail as the system does."""
        raise OSError(28, "No space left on device")


def test_a_full_disk_is_one_line(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    """Guards that output which cannot be written is told as such."""
    monkeypatch.setattr(sys, "stdout", FullDisk())
    assert main(["fluid"]) == 2
    said = capsys.readouterr().err
    assert said == "WT-100 standard output: cannot be written: No space left on device\n"


def break_it(_: list[str]) -> Answer:
    """Go wrong in a way nobody thought of, in two lines and at length."""
    message = "two\nlines" + 2000 * "!"
    raise ZeroDivisionError(message)


def test_a_fault_of_the_program_is_one_line(door: Door, monkeypatch: pytest.MonkeyPatch) -> None:
    """Guards that an exception nobody thought of is one short line and status 1."""
    monkeypatch.delenv("WINTERTIGHT_TRACEBACK", raising=False)
    monkeypatch.setattr(commands, "carry_out", break_it)
    done = door("fluid")
    done.refused("WT-900", "ZeroDivisionError: two lines", "WINTERTIGHT_TRACEBACK=1", status=1)
    assert len(done.err) <= LONGEST_MESSAGE


def test_a_traceback_is_there_for_who_asks(door: Door, monkeypatch: pytest.MonkeyPatch) -> None:
    """Guards that a fault can be looked into where the environment asks for it."""
    monkeypatch.setenv("WINTERTIGHT_TRACEBACK", "1")
    monkeypatch.setattr(commands, "carry_out", break_it)
    done = door("fluid")
    assert done.status == 1
    assert done.err.startswith("Traceback")
    assert done.err.splitlines()[-1].startswith("WT-900 ")


@pytest.mark.parametrize(
    ("arguments", "code", "words"),
    [
        (("melt",), "WT-140", "no such command 'melt'"),
        (("fluid", "--melt"), "WT-140", "see wintertight fluid --help"),
        (("fluid", "ice"), "WT-100", "ice"),
        (("fluid", "--at"), "WT-100", "--at"),
        (("plan",), "WT-100", "CARD.toml"),
        (("flow", "card.toml"), "WT-100", "--open"),
        (("coach",), "WT-100", "missing command"),
        (("--json",), "WT-140", "--json"),
        (("plan", "a\x1b[31m\nb\u2028c.toml"), "WT-101", "no such file"),
        (("plan", "a\x00.toml"), "WT-101", "cannot be opened"),
        (("plan", f"{5000 * 'a'}.toml"), "WT-101", "aaa.toml: cannot be opened"),
        (("plan", ""), "WT-101", "folder"),
    ],
)
def test_a_wrong_command_line_is_one_line(
    door: Door, arguments: tuple[str, ...], code: str, words: str
) -> None:
    """Guards that whatever is wrong with a command line is one line, and no box."""
    done = door(*arguments)
    done.refused(code, words)
    assert done.err.rstrip("\n").isprintable()


def test_a_file_name_that_is_no_text_is_one_line(tmp_path: Path) -> None:
    """Guards that bytes which are no letters can be complained about."""
    name = os.fsdecode(os.fsencode(tmp_path) + b"/\xff.toml")
    as_program("plan", name).refused("WT-101", "no such file")


def test_numbers_are_worked_out_on_one_thread(door: Door, monkeypatch: pytest.MonkeyPatch) -> None:
    """Guards the time of a plan on a busy machine, and leaves a wish of the user alone."""
    monkeypatch.delenv("OPENBLAS_NUM_THREADS", raising=False)
    monkeypatch.setenv("OMP_NUM_THREADS", "3")
    assert door("--version").status == 0
    assert (os.environ["OPENBLAS_NUM_THREADS"], os.environ["OMP_NUM_THREADS"]) == ("1", "3")

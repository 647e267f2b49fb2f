"""How a command ends: its exit status, and one line for whatever goes wrong.

0     done
1     a fault of the program
2     unusable input
3     the verdict is not "safe", and --strict was given
130   stopped by Ctrl-C
141   whoever read standard output has gone; both as a shell counts a signal
"""

import os
import sys
import traceback
from collections.abc import Sequence
from contextlib import suppress
from io import TextIOWrapper
from types import MappingProxyType

from wintertight.coach.write_file import reason_of
from wintertight.errors import InputError, Place, ProgramFault, WintertightError

FAULT, UNUSABLE, NOBODY_READS = 1, 2, 141
TRACEBACK = "WINTERTIGHT_TRACEBACK"
LONGEST_MESSAGE, LONGEST_PLACE = 400, 200
"""The halves of an error line are cut here, whatever was given: a message at its end, a place in
front, so that the name of the file stays."""

ONE_THREAD = ("OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS", "OMP_NUM_THREADS")
"""Of the library below numpy, which reads them when it loads. A coach's matrices are small: threads
bring nothing, and on a busy machine they wait for each other, for up to five times as long."""

_ON_WINDOWS_A_CLOSED_PIPE = 22
_BLANKS = MappingProxyType(dict.fromkeys([*range(32), *range(127, 160), 0x2028, 0x2029], " "))
_BUT_LINES = MappingProxyType({sign: " " for sign in _BLANKS if chr(sign) not in "\t\n"})
"""Control signs out of a card or a command line, which a terminal might obey."""


def outcome(arguments: Sequence[str]) -> int:
    """Carry out one command, print what it has to say, and catch whatever goes wrong.

    Args:
        arguments: what was written behind the name of the program.

    Returns:
        The exit status. Whatever goes wrong has become one line on standard error.
    """
    _speak_utf8()
    try:
        return _carried_out(list(arguments))
    except BrokenPipeError:
        _stop_writing()
        return NOBODY_READS
    except WintertightError as error:
        return _complained(error)
    except Exception as error:  # noqa: BLE001 - no traceback ever reaches a user
        return _complained(program_fault(error))


def _carried_out(arguments: list[str]) -> int:
    for library in ONE_THREAD:
        os.environ.setdefault(library, "1")
    # Only here, so that a broken installation is one line as well.
    from wintertight.cli.commands import carry_out  # noqa: PLC0415

    answer = carry_out(arguments)
    if answer.text:
        print_out(answer.text if answer.text.endswith("\n") else f"{answer.text}\n")
    return answer.status


def print_out(text: str) -> None:
    """Print on standard output at once, without control signs.

    Args:
        text: what is printed; the end of its last line is not added.

    Raises:
        BrokenPipeError: nobody reads any more.
        InputError: it cannot be written.
    """
    if sys.stdout is not None:
        _write(text.translate(_BUT_LINES))


def _write(text: str) -> None:
    try:
        sys.stdout.write(text)
        sys.stdout.flush()
    except BrokenPipeError:
        raise
    except OSError as error:
        _stop_writing()
        if error.errno == _ON_WINDOWS_A_CLOSED_PIPE:
            raise BrokenPipeError from error
        message = f"cannot be written: {reason_of(error)}"
        raise InputError(message, Place("standard output")) from error


def _speak_utf8() -> None:
    """Let both streams speak UTF-8 whatever the console is set to, and never fail on a letter."""
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, TextIOWrapper):
            stream.reconfigure(encoding="utf-8", errors="backslashreplace")


def _stop_writing() -> None:
    """Send what is still in the buffer nowhere, or Python complains about it at its end."""
    with suppress(OSError, ValueError, AttributeError):
        nowhere = os.open(os.devnull, os.O_WRONLY)
        os.dup2(nowhere, sys.stdout.fileno())
        os.close(nowhere)


def _complained(error: WintertightError) -> int:
    """Print the one line of an error; give its exit status."""
    if sys.stderr is not None:
        with suppress(OSError):
            sys.stderr.write(f"{error.code} {place_and_message(error)}\n")
            sys.stderr.flush()
    return UNUSABLE if isinstance(error, InputError) else FAULT


def place_and_message(error: WintertightError) -> str:
    """Give an error on one line that is not too long, without its code."""
    place, message = _on_one_line(str(error.place)), _on_one_line(error.message)
    if len(place) > LONGEST_PLACE:
        place = "..." + place[3 - LONGEST_PLACE :]
    if len(message) > LONGEST_MESSAGE:
        message = message[: LONGEST_MESSAGE - 3] + "..."
    return f"{place}{': ' if place else ''}{message}"


def program_fault(error: Exception) -> ProgramFault:
    """Make a fault of the program of the exception being handled, which nobody thought of.

    Args:
        error: the exception.

    Returns:
        The fault; its traceback has been printed where the environment asks for it.
    """
    if os.environ.get(TRACEBACK) == "1":
        traceback.print_exc()
    what = _on_one_line(f"{type(error).__name__}: {error}".removesuffix(": "))
    return ProgramFault(
        f"a fault of the program: {what[: LONGEST_MESSAGE // 2]}; please report it;"
        f" run with {TRACEBACK}=1 for details"
    )


def _on_one_line(text: str) -> str:
    return " ".join(text.translate(_BLANKS).split())

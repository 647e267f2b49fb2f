"""Writes a PDF, or a drawing, whole or not at all."""

from pathlib import Path

from wintertight.coach.write_file import reason_of, swap_in
from wintertight.errors import InputError, Place

PDF, SVG = b"%PDF", b"<svg"
"""What every PDF, and every drawing of ours, begins with."""


def can_be_written(file: str, option: str, kind: bytes = PDF) -> None:
    """Refuse a file that could not be written, before any work is done for it.

    Args:
        file: where it is to be.
        option: the option that names it, for the message.
        kind: what files of its kind begin with.

    Raises:
        InputError: its folder is missing, or what stands there is of another kind.
    """
    try:
        target = Path(file)
        if not target.name or "\0" in file or (target.exists() and not target.is_file()):
            raise _refused(file, option, "expected the name of a file, and this is none")
        if not target.parent.is_dir():
            raise _refused(file, option, f"there is no folder '{target.parent}'; make it first")
        if target.exists() and not _may_be_replaced(target, kind):
            raise _refused(file, option, "there is a file of another kind; it is not replaced")
    except (OSError, ValueError) as error:
        if isinstance(error, InputError):
            raise
        raise _refused(file, option, _why(error)) from error


def _may_be_replaced(target: Path, kind: bytes) -> bool:
    """Say whether a file is empty or an older one of its kind: a card is never written over."""
    with target.open("rb") as stream:
        start = stream.read(len(kind))
    return start in {kind, b""}


def write_whole(file: str, option: str, content: bytes, kind: bytes = PDF) -> None:
    """Write a file beside its place, then move it there: what stood there stays until then.

    Args:
        file: where it is to be; a link is followed.
        option: the option that names it, for the message.
        content: all of it.
        kind: what files of its kind begin with.

    Raises:
        InputError: it cannot be written.
    """
    can_be_written(file, option, kind)
    try:
        swap_in(file, content)
    except OSError as error:
        raise _refused(file, option, _why(error)) from error


def _why(error: OSError | ValueError) -> str:
    return f"cannot be written: {reason_of(error)}"


def _refused(file: str, option: str, why: str) -> InputError:
    return InputError(f"{why}; nothing was written", Place(file, field=option))

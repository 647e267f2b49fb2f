"""Write a file whole or not at all."""

import os
from contextlib import suppress
from os import PathLike
from pathlib import Path


def swap_in(path: str | PathLike[str], content: bytes) -> None:
    """Write beside a file's place, then move it there: what stood there stays until then.

    Args:
        path: where it is to be; a link is followed, and a file that is there lends its mode.
        content: all of it; it has reached the disk before it is moved.

    Raises:
        OSError, ValueError: it cannot be written; what stood there stands.
    """
    target = Path(os.path.realpath(path))
    part = target.with_name(f".wintertight-{os.getpid()}.part")
    try:
        with part.open("wb") as stream:
            stream.write(content)
            stream.flush()
            os.fsync(stream.fileno())
        if target.exists():
            part.chmod(target.stat().st_mode)
        part.replace(target)
    finally:
        with suppress(OSError, ValueError):
            part.unlink()


def reason_of(error: OSError | ValueError) -> str:
    """Give why the system refused, in its own words."""
    return (error.strerror if isinstance(error, OSError) else None) or str(error)

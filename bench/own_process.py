"""Running a module of the bench in a process of its own, plain or compiled."""

import os
import subprocess
import sys

from wintertight.flow.kernels.compiled import ASKED_BY


def printed_by(module: str, *words: str, compiled: bool, **environment: str) -> str:
    """Give what a module prints.

    Args:
        module: its name below ``bench``.
        words: what stands behind it on the command line.
        compiled: whether its arithmetic is asked to be compiled.
        environment: what else is set for it.

    Returns:
        Its standard output.

    Raises:
        CalledProcessError: it failed.
    """
    done = subprocess.run(  # noqa: S603 - our own module
        [sys.executable, "-m", f"bench.{module}", *words],
        env={**os.environ, ASKED_BY: str(int(compiled)), **environment},
        capture_output=True,
        check=True,
        text=True,
    )
    return done.stdout

"""Every outlet of every demo coach in turn, compiled and plain, against EPANET in the same run.

Like for like: plug flow or stirred vessels, one viscosity, flows solved anew for each outlet,
30 seconds each, the strength that comes out noted each second. Both are opened beforehand. What
comes out of ours is first compared with EPANET's, second by second.
"""

import os
import subprocess
import sys
from collections.abc import Iterator

from wintertight.flow.kernels.compiled import ASKED_BY


def measure() -> Iterator[str]:
    """Give the lines of both ways of running, each from a process of its own."""
    for asked in ("1", "0"):
        done = subprocess.run(
            [sys.executable, "-m", "bench.course_against_epanet"],
            env={**os.environ, ASKED_BY: asked},
            capture_output=True,
            check=True,
            text=True,
        )
        yield from done.stdout.splitlines()

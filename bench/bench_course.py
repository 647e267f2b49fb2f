"""Every outlet of every demo coach in turn, compiled and plain, against EPANET in the same run.

Like for like: plug flow or stirred vessels, one viscosity, flows solved anew for each outlet,
30 seconds each, the strength that comes out noted each second. Both are opened beforehand. What
comes out of ours is first compared with EPANET's, second by second.
"""

from collections.abc import Iterator

from bench.own_process import printed_by


def measure() -> Iterator[str]:
    """Give the lines of both ways of running, each from a process of its own."""
    for compiled in (True, False):
        yield from printed_by("course_against_epanet", compiled=compiled).splitlines()

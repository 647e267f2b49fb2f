"""How long a call takes, as the shortest of some rounds."""

import time
from collections.abc import Callable

ROUNDS = 5
LEAST_S = 0.05


def best_ms(work: Callable[[], object], rounds: int = ROUNDS) -> float:
    """Give the shortest mean time of a call over some rounds, the first of which warms up [ms]."""
    begin = time.perf_counter()
    work()
    work()
    calls = max(1, int(2.0 * LEAST_S / max(time.perf_counter() - begin, 1e-6)))
    times = []
    for _ in range(rounds):
        begin = time.perf_counter()
        for _ in range(calls):
            work()
        times.append((time.perf_counter() - begin) / calls)
    return 1e3 * min(times)

"""Doing many independent things on all cores, where what they are about need not be copied."""

import multiprocessing
import os
import threading
from collections.abc import Callable
from typing import Any, TypeVar

T = TypeVar("T")

_work: list[Callable[[int], Any]] = []
"""In a forked process: what it does."""


def side_by_side(work: Callable[[int], T], count: int) -> list[T]:
    """Do something for each number from 0 on.

    A forked process sees everything its parent has, so nothing but results crosses over. Where
    processes cannot be forked (Windows), where the program already runs threads, or on one core,
    it is done one after another.

    Args:
        work: what is done; its result must be picklable.
        count: how many numbers there are [1].

    Returns:
        Its results, in order.
    """
    cores = len(os.sched_getaffinity(0)) if hasattr(os, "sched_getaffinity") else 1
    can_fork = "fork" in multiprocessing.get_all_start_methods() and cores > 1
    inside = multiprocessing.current_process().daemon or threading.active_count() > 1
    if not can_fork or inside or count <= 1:
        return [work(i) for i in range(count)]
    with multiprocessing.get_context("fork").Pool(cores, _begin, (work,)) as pool:
        return pool.map(_do, range(count), chunksize=1)


def _begin(work: Callable[[int], Any]) -> None:
    _work.append(work)


def _do(number: int) -> Any:
    return _work[-1](number)

"""Loaded before mutants are tried: nothing may be left from the run that tried no mutant.

Each mutant is tried in a fork of a process in which all tests ran once. What that process kept in a
cache, or in a constant of a test module, was worked out by the code as it stands: a mutant of what
worked it out would never be run, and would seem to be something that no test notices.

Loaded through ``-p tests.from_scratch``, by the settings of mutmut in pyproject.toml only.
"""

import gc
import sys
from functools import _lru_cache_wrapper
from typing import Any

import pytest

KEPT = ("tests.from_scratch", "tests.one_thread", "tests.budgets")


def caches() -> list[Any]:
    """Give every cache of a function of the package or of its tests."""
    return [
        thing
        for thing in gc.get_objects()
        if isinstance(thing, _lru_cache_wrapper)
        and thing.__module__.startswith(("wintertight", "tests"))
    ]


def pytest_configure(config: pytest.Config) -> None:  # noqa: ARG001 - so is the hook called
    """Forget before anything is collected, and have test modules imported anew."""
    for cache in caches():
        cache.cache_clear()
    for name in [n for n in sys.modules if n.startswith("tests.") and n not in KEPT]:
        del sys.modules[name]


@pytest.fixture(scope="session")
def all_caches() -> list[Any]:
    """Look for them once, after all modules were imported."""
    return caches()


@pytest.fixture(autouse=True)
def own_caches(all_caches: list[Any]) -> None:
    """Let each test work everything out itself: which tests run what is noted only once."""
    for cache in all_caches:
        cache.cache_clear()

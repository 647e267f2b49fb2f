"""Whether the arithmetic is compiled: only where it is asked for, and only if numba is installed.

The functions of this folder are written so that Python runs them and numba compiles them, without
a second version of any. A program that works on one coach does not ask: importing the compiler
costs more than it saves there.
"""

import os
from collections.abc import Callable
from typing import TypeVar, cast

F = TypeVar("F", bound=Callable[..., object])

ASKED_BY = "WINTERTIGHT_COMPILED"
"""Environment variable that asks for compiled arithmetic when it is ``1``."""


def _asked() -> bool:
    return os.environ.get(ASKED_BY) == "1"


def _found() -> bool:
    try:
        import numba  # noqa: F401, PLC0415 - costs 0.2 s, so only when asked for
    except ImportError:
        return False
    return True


COMPILED = _asked() and _found()
"""Whether the functions marked ``kernel`` were compiled in this process."""


def kernel(function: F) -> F:
    """Mark a function of arrays and numbers; compiled at its first call where that was asked for.

    Args:
        function: what it is.

    Returns:
        The function itself, or its compiled twin.
    """
    if not COMPILED:
        return function
    import numba  # noqa: PLC0415 - see above

    return cast("F", numba.njit(cache=True, error_model="numpy")(function))

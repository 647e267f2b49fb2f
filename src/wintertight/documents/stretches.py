"""Steps as they follow each other, in the stretches in which a paper shows them."""

from collections.abc import Callable, Iterable, Iterator
from itertools import groupby

from wintertight.procedure.steps import PlannedStep

Stretch = tuple[bool, list[PlannedStep]]
"""Whether it stands in a table of outlets, and its steps in order."""


def stretches(
    steps: Iterable[PlannedStep], tabled: Callable[[PlannedStep], bool]
) -> Iterator[tuple[str, list[Stretch]]]:
    """Give the phases of a job as they follow, each with its stretches.

    Args:
        steps: the steps, in order.
        tabled: tells whether a step is a row in a table of outlets.

    Yields:
        Key of a phase and its stretches; a phase that a job comes back to is given again.
    """
    for phase, some in groupby(steps, key=lambda s: s.step.phase):
        yield phase, [(key, list(group)) for key, group in groupby(some, key=tabled)]

"""Branches: from one trunk with a tee at each, or each by a line of its own from a manifold.

A trunk runs along the coach both ways from where it begins. Each fixture is teed off where it is
nearest; the last one either way ends the trunk. That is how most coaches are piped, by common
practice.
"""

from collections.abc import Iterable
from dataclasses import dataclass

from wintertight.coach.intake.draft import Draft


@dataclass(frozen=True, slots=True)
class Branch:
    """One thing that water is brought to.

    Attributes:
        name: id of the line to it.
        end: the fitting, and its port where it has several.
        room: compartment of the line.
    """

    name: str
    end: str
    room: str


@dataclass(frozen=True, slots=True)
class Trunk:
    """A trunk, cold or hot.

    Attributes:
        side: "cold" or "hot": its tees and lines are named by it.
        root: fitting where it begins, which takes any number of lines.
        across_ft, height_ft: where it runs [ft].
    """

    side: str
    root: str
    across_ft: float
    height_ft: float


def lay_branches(draft: Draft, trunk: Trunk, branches: Iterable[Branch]) -> None:
    """Lay a trunk with a tee for each branch."""
    begin = draft.at[trunk.root][0]

    def along(branch: Branch) -> float:
        return draft.at[branch.end.partition(".")[0]][0]

    ordered = sorted(branches, key=lambda branch: (along(branch), branch.name))
    forward = [branch for branch in reversed(ordered) if along(branch) < begin]
    aft = [branch for branch in ordered if along(branch) >= begin]
    number = 0
    for way in (forward, aft):
        here = trunk.root
        for branch in way[:-1]:
            number += 1
            spot = (along(branch), trunk.across_ft, trunk.height_ft)
            tee = draft.fitting(f"{branch.name}-tee", "tee", spot, "belly")
            draft.line(f"{trunk.side}-trunk-{number}", here, tee, "belly")
            draft.line(branch.name, tee, branch.end, branch.room)
            here = tee
        for branch in way[-1:]:
            draft.line(branch.name, here, branch.end, branch.room)


def lay_home_runs(draft: Draft, manifold: str, branches: Iterable[Branch]) -> None:
    """Lay a line to each branch from a manifold."""
    for branch in branches:
        draft.line(branch.name, manifold, branch.end, branch.room)

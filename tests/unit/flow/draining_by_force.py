"""Draining done the long way, cell by cell.

Every line is cut into small cells, and one cell after another runs empty where air can take its
place, until nothing moves. Nothing here is shared with the product but the plain description of the
plumbing. Whether the water of a cell finds a way out is asked by walking from that cell through all
that lies no higher; spill levels are found by trying every way there is. It takes far longer, and
it is plain.
"""

from collections.abc import Iterator
from dataclasses import dataclass, field
from itertools import pairwise

from tests.unit.flow.random_plumbing import Plumbing, Run

SAME_M = 1e-6
BORE_M = 0.01
"""A puddle that is shallower leaves room for air above it: a centimetre, as the manual says."""


@dataclass
class Cell:
    """A small piece of a run, or a joint (of no content) between runs."""

    run: str
    low_m: float
    high_m: float
    share: float = 0.0
    stuck: bool = False
    narrow: bool = False
    wide: bool = False
    airy: bool = False
    beside: list["Step"] = field(default_factory=list)
    air: bool = False
    came_down: bool = False


@dataclass
class Step:
    """From one cell to the next: what may go there."""

    to: Cell
    water: bool = True
    air: bool = True


def shape(drawn: Plumbing, run: Run) -> list[tuple[float, float]]:
    """Give the corners of a run: share of its length [1], height above the level ground [m]."""
    first, last = drawn.places[run.a][2], drawn.places[run.b][2]
    heights = [first, last]
    middle = [h for h in (run.sag_m, run.hump_m) if h is not None]
    heights[1:1] = middle if first >= last else middle[::-1]
    climb = [abs(b - a) for a, b in pairwise(heights)]
    whole = sum(climb)
    at = [0.0]
    for one in climb:
        at.append(at[-1] + (one / whole if whole else 1.0))
    ends = [drawn.height_m(n) - drawn.places[n][2] for n in (run.a, run.b)]
    return [(s, h + ends[0] * (1.0 - s) + ends[1] * s) for s, h in zip(at, heights, strict=True)]


class Force:
    """One coach on one side of what is uncertain."""

    def __init__(self, drawn: Plumbing, *, careful: bool, pieces: int = 0) -> None:
        """Cut the coach into cells: at every height that matters, or in so many to a piece."""
        self.drawn, self.careful, self.count = drawn, careful, pieces
        self.slack_m = SAME_M if careful else BORE_M + SAME_M
        self.joints = {n: Cell("", drawn.height_m(n), drawn.height_m(n)) for n in drawn.places}
        self.cells = list(self.joints.values())
        corners = {h for r in drawn.runs for _, h in shape(drawn, r)}
        corners |= {cell.low_m for cell in self.cells}
        self.cuts = sorted(corners | {h - BORE_M for h in corners})
        for run in drawn.runs:
            if run.kind == "line":
                self.lay(run)
            elif run.is_open and not (run.kind == "check" and careful):
                self.join(self.joints[run.a], self.chip(run), one_way=run.kind == "check")
        if drawn.heater:
            self.open_heater()
        self.run_empty()

    def chip(self, run: Run) -> Cell:
        """Give the one cell of a valve or a heater's inside, joined to its far end."""
        low, high = sorted(self.joints[n].low_m for n in (run.a, run.b))
        cell = Cell(run.name, low, high, share=1.0, wide=True)
        self.cells.append(cell)
        self.join(cell, self.joints[run.b], one_way=run.kind == "check")
        return cell

    def open_heater(self) -> None:
        """Join the ports of a heater to what stands open at its top and its bottom."""
        plug, relief = (self.joints[n] for n in ("plug", "relief"))
        ports = [self.joints[n] for n in ("cold", "hot")]
        if self.drawn.mouths["relief"]:
            for port in ports:
                self.join(port, relief)
        if self.drawn.mouths["plug"]:
            self.join(*ports)
            for port in ports:
                port.beside.append(Step(plug))
                plug.beside.append(Step(port, air=not self.careful))

    @staticmethod
    def join(a: Cell, b: Cell, *, one_way: bool = False, water: bool = True) -> None:
        """Let water and air go from a to b, and back."""
        a.beside.append(Step(b, water=water))
        if not one_way:
            b.beside.append(Step(a, water=water))

    def lay(self, run: Run) -> None:
        """Cut a line into cells and join them."""
        if run.bore_m < (0.008 if self.careful else 0.005):
            return
        before = self.joints[run.a]
        for (s0, h0), (s1, h1) in pairwise(shape(self.drawn, run)):
            level = abs(h1 - h0) < max(0.01, 0.01 * run.length_m * (s1 - s0)) - SAME_M
            for low, high, share in self.pieces(h0, h1, s1 - s0):
                cell = Cell(run.name, low, high, share, airy=run.holds_air)
                cell.stuck = self.careful and level
                cell.narrow = self.careful and not run.holds_air
                cell.wide = 0.8 * run.bore_m >= 0.015
                self.cells.append(cell)
                self.join(before, cell)
                before = cell
        self.join(before, self.joints[run.b])

    def pieces(self, h0: float, h1: float, share: float) -> Iterator[tuple[float, float, float]]:
        """Cut a straight piece, in its own direction."""
        if not self.count:
            inside = [c for c in self.cuts if min(h0, h1) + SAME_M < c < max(h0, h1) - SAME_M]
            marks = [h0, *(inside if h1 > h0 else inside[::-1]), h1]
        else:
            marks = [h0 + (h1 - h0) * i / self.count for i in range(self.count + 1)]
        for a, b in pairwise(marks):
            part = (b - a) / (h1 - h0) if h1 != h0 else 1.0 / (len(marks) - 1)
            yield min(a, b), max(a, b), share * part

    def height_m(self, cell: Cell, exact_m: float) -> float:
        """Give the height that counts [m]: the exact one, or the middle of a small cell."""
        return (cell.low_m + cell.high_m) / 2 if self.count else exact_m

    def finds_a_way_out(self, cell: Cell) -> bool:
        """Walk from a cell through all that lies no higher than its own foot."""
        top = self.height_m(cell, cell.low_m) + self.slack_m
        mouths = {id(self.joints[n]) for n, is_open in self.drawn.mouths.items() if is_open}
        seen, edge = {id(cell)}, [cell]
        while edge:
            here = edge.pop()
            if id(here) in mouths:
                return True
            for step in here.beside:
                height_m = self.height_m(step.to, step.to.high_m)
                if step.water and id(step.to) not in seen and height_m <= top:
                    seen.add(id(step.to))
                    edge.append(step.to)
        return False

    @staticmethod
    def lies_above(one: Cell, other: Cell) -> bool:
        """Is one cell higher than the other?"""
        return one.low_m + one.high_m - other.low_m - other.high_m > 2 * SAME_M

    def may_take(self, air: Cell, step: Step) -> tuple[bool, bool]:
        """Say whether air of one cell may take the place of water in the next, and how it came."""
        water = step.to
        if not step.air or (water.stuck and not water.airy):
            return False, False
        inherited = air.came_down or not self.careful
        if self.lies_above(air, water):
            return True, True
        if not self.lies_above(water, air):
            return True, inherited
        narrow = water.narrow or (self.careful and not water.run and air.narrow)
        wide = water.wide or (not water.run and air.wide)
        return not narrow or (wide and inherited), inherited

    def run_empty(self) -> None:
        """Let one cell after another run empty until nothing moves."""
        ways: dict[int, bool] = {}
        edge = [self.joints[n] for n, is_open in self.drawn.mouths.items() if is_open]
        if not self.careful:
            edge += [self.joints[n] for r in self.drawn.runs if r.holds_air for n in (r.a, r.b)]
        for cell in edge:
            cell.air, cell.came_down = True, not self.careful
        while edge:
            here = edge.pop()
            if here.run and not ways.setdefault(id(here), self.finds_a_way_out(here)):
                continue
            for step in here.beside:
                takes, came_down = self.may_take(here, step)
                other = step.to
                better = not other.air or (came_down and not other.came_down)
                if not takes or not better:
                    continue
                if not ways.setdefault(id(other), self.finds_a_way_out(other)):
                    continue
                other.air, other.came_down = True, other.came_down or came_down
                edge.append(other)
                if self.lies_above(here, other) and not here.came_down:
                    here.came_down = True  # its water has fallen away: air is inside
                    edge.append(here)

    def stays(self) -> dict[str, float]:
        """Give the share of each run that is still water [1]."""
        left = {run.name: 0.0 for run in self.drawn.runs}
        cut = set()
        for cell in self.cells:
            if cell.run:
                cut.add(cell.run)
                left[cell.run] += 0.0 if cell.air and not cell.stuck else cell.share
        left.update({name: 1.0 for name in left if name not in cut})
        left.update({r.name: 1.0 for r in self.drawn.runs if r.kind == "heater"})
        return left

    def heater_is_empty(self) -> bool:
        """Is its plug out, and did air get in above?"""
        if not self.drawn.heater or not self.drawn.mouths["plug"]:
            return False
        above = [self.joints[n] for n in ("cold", "hot", "relief")]
        return not self.careful or any(cell.air for cell in above)


def every_way(drawn: Plumbing, node: str) -> float:
    """Try every way from a place to an open mouth, careful side.

    Returns:
        The lowest of their highest points [m]; infinite where there is none.
    """
    ways: dict[str, list[tuple[str, float]]] = {}
    tops = [(run.a, run.b, max(h for _, h in shape(drawn, run))) for run in passing(drawn)]
    if drawn.heater:
        pairs = [("cold", "hot"), ("cold", "plug"), ("hot", "plug")] if drawn.mouths["plug"] else []
        pairs += [("cold", "relief"), ("hot", "relief")] if drawn.mouths["relief"] else []
        tops += [(a, b, max(drawn.height_m(a), drawn.height_m(b))) for a, b in pairs]
    for a, b, top in tops:
        ways.setdefault(a, []).append((b, top))
        ways.setdefault(b, []).append((a, top))
    best = float("inf")
    edge = [(node, drawn.height_m(node), frozenset({node}))]
    while edge:
        here, top, passed = edge.pop()
        if drawn.mouths.get(here):
            best = min(best, top)
            continue
        for other, over in ways.get(here, []):
            if other not in passed:
                edge.append((other, max(top, over), passed | {other}))
    return best


def passing(drawn: Plumbing) -> list[Run]:
    """Give the runs that let water by, careful side."""
    lines = [r for r in drawn.runs if r.kind == "line" and r.bore_m >= 0.008]
    return [*lines, *(r for r in drawn.runs if r.kind in {"valve", "heater"} and r.is_open)]

"""What is left in each line and hollow, in all drawn coaches at once.

The careful replay is one coach of many that fit the card. Each other one lets through what its
technician counts at its pump's flow, and holds what washes out of its own lines by then. What a
section lacks of the supply's strength comes from its own link and from all before it on the way:

    -ln S = sum of -ln of what each link lets out, at what had passed it a transit time before

with the laminar response of a line, the exponential of a stirred vessel, and the front that a
displaced hollow passes on. The same sum is worked out for the coach of the replay, and the ratio of
the two scales what the replay found: what the sum leaves out stays in by the ratio.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from typing import Protocol

import numpy as np
import numpy.typing as npt

from wintertight.flow.coach_network import CoachNetwork, Link
from wintertight.flow.hydraulics import steady_flow
from wintertight.flow.state import State, with_outlet_open
from wintertight.procedure.ran import DrawnRun, Sizes, branches
from wintertight.procedure.responses import NOTHING, Whole, lacking_after, lacking_at_end

Array = npt.NDArray[np.float64]

MATTERS = 0.03
"""Share of what a section lacks that another link must add to be drawn with it [1]."""

FULL = 1e-9
"""A section lacks so little that nothing can be scaled by it [1]."""

_REPLAY, _DRAWS, _ALL = slice(-1, None), slice(0, -1), slice(None)


class _Earlier(Protocol):
    """What lies on the way to a link."""

    def lacks(self, later: "_Passed", pick: slice) -> Array:
        """Give what it adds to what a later link lacks [1]."""
        ...


@dataclass(frozen=True, eq=False, slots=True)
class _Before:
    """One link on the way to others: what had passed it by then, and where it ends."""

    one: "_Passed"
    passed_m3: Array
    place_m3: Array
    share: float

    def lacks(self, later: "_Passed", pick: slice) -> Array:
        """Give what it adds to what a later link lacks [1]."""
        lag_m3 = self.share * (later.place_m3[pick] - self.place_m3[pick])
        return self.one.lacks(self.passed_m3[pick] - lag_m3, pick, at_end=False)


@dataclass(frozen=True, eq=False, slots=True)
class _Branch:
    """One of two branches that met again before a link, with its share of what flows on."""

    chain: tuple[_Earlier, ...]
    share: float

    def lacks(self, later: "_Passed", pick: slice) -> Array:
        """Give what it adds to what a later link lacks [1]."""
        lacks = sum((each.lacks(later, pick) for each in self.chain), np.zeros(1))
        return np.asarray(-np.log(np.maximum(1.0 + self.share * np.expm1(-lacks), NOTHING)))


@dataclass(eq=False, slots=True)
class _Passed:
    """One link in all draws, the coach of the replay last; volumes [m3], shape (draws + 1,).

    Attributes:
        link, volume_m3, runs: the link and its size.
        waits_m3: what had to pass before the front came to it.
        air_m3: air in it that was filled first.
        forward: whether it last ran from its start to its end.
        passed_m3: what has passed through it since the flow last turned round.
        start: share of product that the flow found when it turned round [1].
        remembered: what its weakest section lacked then [1].
        place_m3: how far along the last way its outlet end lies, in volumes of the outlet.
        before: what lies before it on that way.
    """

    link: Link
    volume_m3: Array
    runs: Whole
    waits_m3: Array
    air_m3: Array
    forward: bool
    passed_m3: Array
    start: Array
    remembered: Array
    place_m3: Array
    before: tuple[_Earlier, ...] = ()

    def lacks(self, passed_m3: Array, pick: slice, *, at_end: bool) -> Array:
        """Give what is lacking at its end, or in what leaves it, after so much has passed [1]."""
        volume, waits = self.volume_m3[pick], self.waits_m3[pick]
        if self.link.holding == "vessel":
            # Water that is pushed ahead into its air stays in it.
            air = self.air_m3[pick]
            water = volume - air + np.minimum(waits, air)
            turns = np.maximum(passed_m3 - np.maximum(waits, air), 0.0) / volume
            return np.asarray(-np.log(np.maximum(1.0 - water / volume * np.exp(-turns), NOTHING)))
        if self.link.holding == "plug":
            return np.where(passed_m3 - waits >= volume, 0.0, -np.log(NOTHING))
        respond = lacking_at_end if at_end else lacking_after
        lacks = respond((passed_m3 - waits) / volume, self.runs[pick])
        if not self.turned:
            return lacks
        start = self.start[pick]
        return np.asarray(-np.log(start + (1.0 - start) * np.exp(-lacks)))

    @property
    def turned(self) -> bool:
        """Has the flow in it turned round?"""
        return bool(self.remembered[-1] > 0.0)

    def weakest(self, pick: slice) -> Array:
        """Give what its own weakest section lacks by itself [1], shape as picked.

        After a turn the engine remembers the weak section until the volume of the line has passed.
        The replay's own share says whether it was forgotten there: the draws are measured by it.
        """
        lacks = self.lacks(self.passed_m3[pick], pick, at_end=True)
        if self.turned:
            lines = self.passed_m3 / self.volume_m3
            kept = lines[pick] < min(1.0, float(lines[-1]))
            lacks = np.where(kept, np.maximum(lacks, self.remembered[pick]), lacks)
        return lacks

    def turn(self, *, forward: bool) -> None:
        """Turn the flow round: what it holds is mixed, its weak section remembered."""
        if forward == self.forward:
            return
        self.forward = forward
        if self.link.holding != "runs":
            return
        weak = self.weakest(_ALL)
        # The mean lacks half of what the section at the end does.
        self.start = 1.0 + 0.5 * np.expm1(-self.lacks(self.passed_m3, _ALL, at_end=True))
        self.remembered = np.maximum(weak, FULL)
        self.passed_m3 = self.waits_m3 = np.zeros_like(self.passed_m3)

    def folds(self) -> Array:
        """Give what its weakest section lacks over what it lacks in the replay, shape (draws,)."""
        own = float(self.weakest(_REPLAY)[0])
        added = [float(other.lacks(self, _REPLAY)[0]) for other in self.before]
        whole = own + sum(added)
        if whole < FULL:
            return np.ones(len(self.passed_m3) - 1)
        total = self.weakest(_DRAWS)
        for other, adds in zip(self.before, added, strict=True):
            if adds > MATTERS * whole:
                total = total + other.lacks(self, _DRAWS)
                own += adds
        return np.asarray(total / own)


def shares_left(
    sizes: Sizes, runs: Iterable[DrawnRun], weakest: Mapping[str, float]
) -> dict[str, Array]:
    """Work out the share of the product in the weakest section of each link, in every draw.

    Args:
        sizes: sizes of everything in every draw.
        runs: all runs of the replay on the careful side.
        weakest: share of the product in the weakest section of each link to be worked out, as the
            replay found it [1].

    Returns:
        Shares [1] by link, shape (draws,) each; links through which none ran are missing.
    """
    passed = _all_passed(sizes, runs)
    return {
        link: min(max(share, NOTHING), 1.0) ** passed[link].folds()
        for link, share in weakest.items()
        if link in passed
    }


def _all_passed(sizes: Sizes, runs: Iterable[DrawnRun]) -> dict[str, _Passed]:
    """Follow all runs of the replay, in every draw."""
    passed: dict[str, _Passed] = {}
    for run in runs:
        if run.seen.volume_m3 > 0.0 and _brings_product(run.before, sizes.network):
            _pass(passed, sizes, run)
    return passed


def _brings_product(state: State, network: CoachNetwork) -> bool:
    feeds = (state.feeds[name] for name in network.sources)
    return any(feed.glycol + feed.ethanol + feed.rated > 0.0 for feed in feeds)


def _legs(network: CoachNetwork, run: DrawnRun) -> tuple[tuple[Link, str, str, float], ...]:
    """Give links, the nodes they lead from and to, and their shares of what the outlet lets run."""
    seen = run.seen
    links = [network.links[name] for name in seen.way]
    if branches(network, seen.way):
        opened = with_outlet_open(network, run.after, seen.outlet)
        flows = dict(zip(network.links, steady_flow(network, opened).flow_m3_s, strict=True))
        whole = max(abs(float(flows[network.outlets[seen.outlet].link])), 1e-12)
        return tuple(
            (
                link,
                *((link.start, link.end) if flows[link.id] >= 0.0 else (link.end, link.start)),
                max(abs(float(flows[link.id])) / whole, 1e-3),
            )
            for link in links
        )
    found, at = [], {source.node for source in network.sources.values()}
    for link in links:
        ends = (link.start, link.end) if link.start in at else (link.end, link.start)
        at.add(ends[1])
        found.append((link, *ends, 1.0))
    return tuple(found)


@dataclass(frozen=True, eq=False, slots=True)
class _Way:
    """The way to a node: what waits before its front, where it lies, what is on it, its share."""

    waits_m3: Array
    place_m3: Array
    chain: tuple[_Earlier, ...]
    share: float

    def meeting(self, other: "_Way") -> "_Way":
        """Put two ways together that meet: the larger flow brings the front."""
        main, side = (self, other) if self.share >= other.share else (other, self)
        share = main.share + side.share
        known = {id(each) for each in main.chain} & {id(each) for each in side.chain}
        common = tuple(each for each in main.chain if id(each) in known)
        later = main.place_m3 - side.place_m3
        branches = (
            _Branch(_without(main.chain, known), main.share / share),
            _Branch(_moved(_without(side.chain, known), later), side.share / share),
        )
        return _Way(main.waits_m3, main.place_m3, (*common, *branches), share)


def _without(chain: tuple[_Earlier, ...], known: set[int]) -> tuple[_Earlier, ...]:
    return tuple(each for each in chain if id(each) not in known)


def _moved(chain: tuple[_Earlier, ...], later_m3: Array) -> tuple[_Earlier, ...]:
    """Give a branch as if it ended where the other does."""
    return tuple(
        replace(each, place_m3=each.place_m3 + later_m3) if isinstance(each, _Before) else each
        for each in chain
    )


def _pass(passed: dict[str, _Passed], sizes: Sizes, run: DrawnRun) -> None:
    """Let one outlet run in every draw: along its way, each link after all that feed it."""
    ran_m3 = run.passed_m3
    nothing = np.zeros_like(ran_m3)
    at: dict[str, _Way] = {}
    for link, up, down, share in _legs(sizes.network, run):
        way = replace(at[up], share=share) if up in at else _Way(nothing, nothing, (), share)
        if link.holding != "nothing":
            forward = up == link.start
            one = passed.get(link.id)
            if one is None:
                one = passed[link.id] = _first(sizes, run, link, share * way.waits_m3, forward)
            way = _through(one, way, ran_m3, sizes.still(link, run.before), forward)
        at[down] = at[down].meeting(way) if down in at else way


def _first(sizes: Sizes, run: DrawnRun, link: Link, waits_m3: Array, forward: bool) -> _Passed:  # noqa: FBT001 - as it is called once
    volume, nothing = sizes.volume_m3(link), np.zeros_like(waits_m3)
    _, air = sizes.still(link, run.before)
    return _Passed(
        link,
        volume,
        sizes.runs(link),
        waits_m3,
        air * volume,
        forward=forward,
        passed_m3=nothing,
        start=nothing,
        remembered=nothing,
        place_m3=nothing,
    )


def _through(
    one: _Passed,
    way: _Way,
    ran_m3: Array,
    still: tuple[float, float],
    forward: bool,  # noqa: FBT001 - the same
) -> _Way:
    """Let one link pass its share, and give the way behind it."""
    one.turn(forward=forward)
    one.passed_m3 = one.passed_m3 + way.share * ran_m3
    one.before = way.chain
    own_m3 = one.volume_m3 / way.share
    if one.link.holding == "vessel":
        waits, place = np.maximum(way.waits_m3, still[1] * own_m3), way.place_m3
    else:
        waits, place = way.waits_m3 + still[0] * own_m3, way.place_m3 + own_m3
    one.place_m3 = place
    return _Way(
        waits, place, (*way.chain, _Before(one, one.passed_m3, place, way.share)), way.share
    )

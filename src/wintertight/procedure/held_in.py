"""In how many drawn coaches each part holds: the proof by scatter beside the careful case.

The careful case takes everything uncertain at its careful end at once and gives the reasons. The
draws take all of it as it may come, the product's strength too, which the careful case does not
doubt. A part is safe only if it is so in both: on the careful side, and in ``ENOUGH`` of the draws.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType

import numpy as np
import numpy.typing as npt

from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.replay import Trace
from wintertight.flow.state import State
from wintertight.flow.stream import AIR
from wintertight.fluids.product import Product
from wintertight.procedure.bands import Band
from wintertight.procedure.drawn import Drawn
from wintertight.procedure.poured import poured_shares
from wintertight.procedure.ran import DrawnRun, Sizes, drawn_runs
from wintertight.procedure.run_on import share_needed, weakest_share
from wintertight.procedure.scatter import shares_left
from wintertight.proof.claims import PartProof
from wintertight.proof.judge import MOSTLY, Bench

Array = npt.NDArray[np.float64]

ENOUGH = 0.95
"""Least share of draws in which a part must hold to be called safe [1]."""

STRONGEST = 1.25
"""Strength up to which the least safe one is looked for, over that of the product [1]."""


@dataclass(frozen=True, eq=False)
class HeldIn:
    """In how many draws each part is safe.

    Attributes:
        draws: how many there are [1].
        coach: in how many of them everything holds that the careful case calls safe [1].
        parts: share of draws in which each part is safe [1], by its id.
        weakest: the part that holds in the fewest, of those the careful case calls safe; "" where
            it calls none so.
        left: strength held over strength needed, at the weakest of them in each draw [1]; from 1
            on it is safe.
        short: five per cent point of strength held over strength needed [1], by link or pool, where
            more running or pouring would help.
        claimed: parts that the careful case calls safe.
        too_weak: parts for which the undiluted product is too weak in too many draws.
        shares: share of the product in the weakest section of each link [1], shape (draws,) each.
        pools: the same in each trap and sump [1].
    """

    draws: int
    coach: int
    parts: Mapping[str, float]
    weakest: str
    left: Band
    short: Mapping[str, float]
    claimed: tuple[str, ...]
    too_weak: frozenset[str]
    shares: Mapping[str, Array]
    pools: Mapping[str, Array]

    @property
    def lacking(self) -> float:
        """Shares of draws that lack until all parts can be called safe, added up [1]."""
        return sum(max(0.0, ENOUGH - self.parts[part]) for part in self.claimed)


@dataclass(frozen=True, eq=False, slots=True)
class Before:
    """What an earlier job left.

    Attributes:
        state: the coach after it, on the careful side.
        now: the same when the next job begins.
        shares: share of the product in its links and traps [1], shape (draws,) each.
    """

    state: State
    now: State
    shares: Mapping[str, Array]

    def still(self, state: State) -> Mapping[str, Array]:
        """Give the shares of links and traps in which nothing has moved since."""
        was = {**self.state.held, **self.state.pools}
        now = {**state.held, **state.pools}
        return {k: share for k, share in self.shares.items() if now.get(k) is was.get(k)}


def held_in(  # noqa: PLR0913 - the coach and all its draws
    drawn: Drawn,
    bench: Bench,
    trace: Trace,
    best: CoachNetwork,
    parts: tuple[PartProof, ...],
    *,
    known: Mapping[str, Array] | None = None,
    before: Before | None = None,
) -> HeldIn:
    """Count in how many draws each part is safe.

    Args:
        drawn: what each draw takes.
        bench: the coach on the careful side at the end, the cold and the product.
        trace: the replay on the careful side that led there.
        best: the coach at best values.
        parts: the proof of each part on the careful side.
        known: shares in links, from a job whose outlets ran the same.
        before: what an earlier job left in links and traps that this one leaves alone.

    Returns:
        The counts. What nothing has run through, what has drained and what nobody knows is as it is
        in every draw; so is all that a product of unknown composition fills, which is judged
        undiluted or not at all.
    """
    product = bench.product
    strength = 1.0 - product.contents().water if product else 0.0
    if product is None or product.contents().rated > 0.0 or strength <= 0.0:
        return _counted(len(drawn.pump), parts, {}, {}, ({}, {}))
    sizes = Sizes(drawn, trace.network, best, strength)
    factor = 1.0 + drawn.product / strength
    weakest = {
        part.id: dict(_weakest(bench, part, strength)) for part in parts if _was_filled(part)
    }
    places = {place: share for part in weakest.values() for place, share in part.items()}
    runs = drawn_runs(sizes, trace)
    links = shares_left(sizes, runs, places) if known is None else known
    still = before.still(bench.state) if before else {}
    pools = _in_pools(sizes, runs, trace, places)
    drawn_shares = {**links, **pools, **still}
    same = np.ones(len(drawn.pump))
    shares = {
        part: {place: drawn_shares.get(place, share * same) for place, share in some.items()}
        for part, some in weakest.items()
        if some
    }
    needs = _needs(bench, product, [part for part in parts if part.id in shares])
    margins = {
        part: {place: share * factor / needed for place, share in shares[part].items()}
        for part, needed in needs.items()
        if needed is not None
    }
    undiluted = {p: float(np.mean(factor >= n)) for p, n in needs.items() if n is not None}
    return _counted(len(drawn.pump), parts, margins, undiluted, (links, pools))


def _counted(
    draws: int,
    parts: tuple[PartProof, ...],
    margins: Mapping[str, Mapping[str, Array]],
    undiluted: Mapping[str, float],
    shares: tuple[Mapping[str, Array], Mapping[str, Array]],
) -> HeldIn:
    """Count draws in which what is held suffices."""
    found = {part.id: float(part.safe is True) for part in parts}
    holds, left = np.ones(draws, dtype=bool), np.full(draws, np.inf)
    short: dict[str, float] = {}
    claimed = [part.id for part in parts if part.safe is True]
    for part in (p for p in parts if p.safe is not None and p.id in margins):
        margin = np.min(list(margins[part.id].values()), axis=0)
        found[part.id] = float(np.mean(margin >= 1.0))
        if part.safe is True:
            holds &= margin >= 1.0
            left = np.minimum(left, margin)
        if part.safe is True and found[part.id] < ENOUGH <= undiluted[part.id]:
            low = {k: float(np.quantile(m, 1.0 - ENOUGH)) for k, m in margins[part.id].items()}
            short |= {place: point for place, point in low.items() if point < 1.0}
    return HeldIn(
        draws=draws,
        coach=int(holds.sum()),
        parts=MappingProxyType(found),
        weakest=min(claimed, key=lambda part: found[part], default=""),
        left=Band.of(left) if np.isfinite(left).all() else Band(np.inf, np.inf, np.inf),
        short=MappingProxyType(short),
        claimed=tuple(claimed),
        too_weak=frozenset(part for part, share in undiluted.items() if share < ENOUGH),
        shares=MappingProxyType(dict(shares[0])),
        pools=MappingProxyType(dict(shares[1])),
    )


def _was_filled(part: PartProof) -> bool:
    return part.reason != "maker's steps" and part.worst.air < MOSTLY


def _in_pools(
    sizes: Sizes, runs: tuple[DrawnRun, ...], trace: Trace, places: Mapping[str, float]
) -> dict[str, Array]:
    """Give the share of the product in traps and sumps, in every draw."""
    pools = {place: share for place, share in places.items() if place in trace.network.pools}
    poured_m3: dict[str, float] = {}
    for action in (moment.action for moment in trace.moments if moment.action.verb == "pour"):
        poured_m3[action.part] = poured_m3.get(action.part, 0.0) + action.volume_m3
    return poured_shares(sizes, runs, poured_m3, pools)


def _weakest(bench: Bench, part: PartProof, strength: float) -> Iterator[tuple[str, float]]:
    """Give the share of product in the weakest section of what was filled of a part [1]."""
    pool = bench.network.pools.get(part.id)
    if pool is not None:
        liquid = part.worst.liquid()
        if pool.stirred and liquid is not None:
            yield part.id, (1.0 - liquid.water) / strength
        return
    for link in bench.network.links_of.get(part.id, ()):
        held = bench.state.held[link.id]
        if bench.state.treated[link.id] == "flowed" and held.mean()[AIR] < MOSTLY:
            yield link.id, weakest_share(held, strength)


def _needs(bench: Bench, product: Product, parts: list[PartProof]) -> dict[str, float | None]:
    """Give the share of the product as printed that parts need [1]; None where none suffices."""
    most = min(STRONGEST, 1.0 / (1.0 - product.contents().water))
    by_pocket = {
        (pocket, relieved): share_needed(
            bench.low_degC, pocket, product, relieved=relieved, most=most
        )
        for pocket, relieved in {(part.pocket, part.relieved) for part in parts}
    }
    return {part.id: by_pocket[part.pocket, part.relieved] for part in parts}


def with_scatter(parts: tuple[PartProof, ...], held: HeldIn) -> tuple[PartProof, ...]:
    """Take back what holds on the careful side and in too few draws: it is unproven.

    Args:
        parts: the proof of each part on the careful side.
        held: in how many draws each of them is safe.

    Returns:
        The proofs; those taken back say in how many draws they hold.
    """
    return tuple(_with_scatter(part, held) for part in parts)


def _with_scatter(part: PartProof, held: HeldIn) -> PartProof:
    share = held.parts[part.id]
    if part.safe is not True or share >= ENOUGH:
        return part
    return replace(
        part,
        claim="unproven",
        safe=None,
        reason="product may be weaker" if part.id in held.too_weak else "too few draws",
        params={"held_in": share},
    )

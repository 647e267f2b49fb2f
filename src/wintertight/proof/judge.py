"""Part by part: what is left in it, and does it survive the design low?"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from functools import lru_cache
from types import MappingProxyType

import numpy as np
import numpy.typing as npt

from wintertight.coach.card import Card, Fitting
from wintertight.coach.kinds import ASKED_FOR, KINDS, ROLES, Pocket
from wintertight.cold.burst import Survival, survives
from wintertight.flow.coach_network import CoachNetwork, Link
from wintertight.flow.held import Held
from wintertight.flow.state import State
from wintertight.flow.stream import AIR, contents_of
from wintertight.fluids.contents import Contents
from wintertight.fluids.product import Product
from wintertight.proof.claims import Claim, Evidence, PartProof
from wintertight.proof.relief import is_relieved

Array = npt.NDArray[np.float64]

MOSTLY = 0.5
"""Share of air from which a section counts as swept or drained rather than filled [1]."""

PERHAPS: Mapping[str, str] = MappingProxyType(
    {"drain uncertain": "may not have drained", "sweep doubtful": "may not have been swept"}
)
"""Reasons by how a content came about of which nobody knows whether it is still there."""

LEVEL_M = 0.02
"""Rise up to which a line is level [m]: about its own bore."""

UNKNOWN = Contents.all_water()
"""What is taken to be in a part nobody knows: water, the worst there is."""


@dataclass(frozen=True, slots=True)
class Bench:
    """Everything one proof needs: the coach, its state, the cold and the product in use."""

    card: Card
    network: CoachNetwork
    state: State
    low_degC: float
    product: Product | None

    def survival(self, contents: Contents, pocket: Pocket, *, relieved: bool) -> Survival:
        """Judge one content."""
        return _survives(contents, self.low_degC, pocket, relieved, self.product)


@lru_cache(maxsize=20000)
def _survives(
    contents: Contents,
    low_degC: float,
    pocket: Pocket,
    relieved: bool,  # noqa: FBT001 - the key of a cache
    product: Product | None,
) -> Survival:
    return survives(contents, low_degC, pocket, relieved=relieved, product=product)


def prove_parts(bench: Bench) -> tuple[PartProof, ...]:
    """Prove every part of a coach as it stands.

    Args:
        bench: the coach, its state, the design low and the product in use.

    Returns:
        A proof for each line, fitting, tank and trap that holds anything, then one for each part
        without a model, and one for each kind nobody has looked for.
    """
    found = (*_wetted(bench), *_pools(bench))
    return (*(_by_its_maker(bench, part) for part in found), *_unknown(bench))


def _by_its_maker(bench: Bench, part: PartProof) -> PartProof:
    """Let a maker's own steps, once ticked, stand in place of the general ones."""
    owner = part.id.partition("/")[0]
    if bench.state.settings.get(f"{owner}/maker's steps") != "done":
        return part
    # They are about the pump and the jets of a whirlpool: its taps are run like any other.
    if part.kind == "whirlpool" and part.id == owner:
        return part
    return replace(
        part,
        claim="drained",
        safe=True,
        reason="maker's steps",
        evidence=(*part.evidence, Evidence("attested", "maker's steps")),
        look_at=False,
    )


def _wetted(bench: Bench) -> Iterator[PartProof]:
    for part, links in bench.network.links_of.items():
        fitting = bench.card.fitting.get(part)
        kind = fitting.kind if fitting else "line"
        pocket = KINDS[kind].pocket if fitting else "open"
        relieved = bool(fitting) and is_relieved(fitting, bench.network, bench.state)  # type: ignore[arg-type]
        yield _prove(bench, part, kind, links, pocket, relieved=relieved)


def _prove(  # noqa: PLR0913 - a part in all its parts
    bench: Bench,
    part: str,
    kind: str,
    links: tuple[Link, ...],
    pocket: Pocket,
    *,
    relieved: bool,
) -> PartProof:
    """Prove one part from what its links hold."""
    mean, (worst, survival, how) = _weakest(
        tuple(bench.state.held[k.id] for k in links),
        tuple(_history(bench, k) for k in links),
        _Asked(pocket, relieved, bench.low_degC, bench.product),
    )
    # Water that may or may not have run out, or blown out, is no known gap: it is unproven.
    perhaps = how in PERHAPS and survival.safe is False
    # No step sets a valve whose purpose nobody has entered: how it stands is anyone's guess.
    guessed = _has_no_purpose(bench.card.fitting.get(part)) and survival.safe is True
    blown = how == "flowed" and worst.air >= MOSTLY and survival.safe is True
    blown = blown and not all(_is_level(bench.network, k) for k in links)
    if perhaps or guessed or blown:
        survival = replace(survival, safe=None)
    return PartProof(
        id=part,
        kind=kind,
        volume_m3=sum(k.volume_m3 for k in links),
        mean=mean,
        worst=worst,
        freezing_point_degC=survival.freezing_point_degC,
        ice_fraction=survival.ice_fraction,
        pocket=pocket,
        relieved=relieved,
        claim=_claim(survival, worst, how),
        safe=survival.safe,
        reason=PERHAPS[how] if perhaps else _reason(survival, guessed=guessed, blown=blown),
        params=dict(survival.params),
        evidence=tuple(_evidence(bench, part, how)),
        look_at=guessed or (survival.safe is not True and how in {"as found", *PERHAPS}),
    )


@dataclass(frozen=True, slots=True)
class _Asked:
    """What a content is judged against."""

    pocket: Pocket
    relieved: bool
    low_degC: float
    product: Product | None

    def survival(self, contents: Contents) -> Survival:
        return _survives(contents, self.low_degC, self.pocket, self.relieved, self.product)


@lru_cache(maxsize=2000)
def _weakest(
    held: tuple[Held, ...], treated: tuple[str, ...], asked: _Asked
) -> tuple[Contents, tuple[Contents, Survival, str]]:
    """Give the mean of a part, and its weakest section, whether that survives, and its history.

    What a state holds never changes, so an answer holds for every state that holds the same.
    """
    volume = sum(h.volume_m3 for h in held)
    mean = contents_of(np.sum([h.mean() * h.volume_m3 for h in held], axis=0) / max(volume, 1e-12))
    judged = [
        (section, asked.survival(section), how)
        for h, how in zip(held, treated, strict=True)
        for section in _sections(h.sections(), how)
    ]
    return mean, min(judged, key=_badness)


def _is_level(network: CoachNetwork, link: Link) -> bool:
    """Tell whether air behind a small pump pushes the water of a line out before it.

    In a level half-inch tube it does from 0.19 m/s on, and a pump moves it eight times as fast; up
    a riser it would need 9 m/s, and runs over the water instead.

    Sources: benjamin; wallis
    """
    rise = abs(network.heights_m[link.start] - network.heights_m[link.end])
    return link.way == "pipe" and rise <= LEVEL_M


def _has_no_purpose(fitting: Fitting | None) -> bool:
    return fitting is not None and fitting.kind in ROLES and fitting.role is None


def _reason(survival: Survival, *, guessed: bool, blown: bool) -> str:
    if blown:
        return "air from the pump"
    return "not looked at" if guessed else survival.reason_key


def _sections(sections: Array, how: str) -> list[Contents]:
    """Give the contents to be judged.

    Where fluid has flowed, a little air travels as bubbles and nobody knows where: it earns no
    room to grow. Where a part was drained or emptied, the air lies above and does.
    """
    found = []
    for shares in sections:
        contents = contents_of(shares)
        if how == "flowed" and shares[AIR] < MOSTLY:
            contents = contents.liquid() or contents
        found.append(contents)
    return found


def _badness(judged: tuple[Contents, Survival, str]) -> tuple[int, float, float]:
    """Order sections, worst first: unsafe, then unproven, then the weakest."""
    contents, survival, _ = judged
    rank = {False: 0, None: 1, True: 2}[survival.safe]
    ice = survival.ice_fraction if survival.ice_fraction is not None else 1.0
    return rank, -ice if contents.air < MOSTLY else 0.0, -contents.water


def _claim(survival: Survival, worst: Contents, how: str) -> Claim:
    if survival.safe is not True:
        return "unproven"
    if how == "removed":
        return "removed"
    if how in {"drained", "emptied"}:
        return "drained"
    return "swept" if worst.air >= MOSTLY else "filled"


def _evidence(bench: Bench, part: str, how: str) -> Iterator[Evidence]:
    yield Evidence("computed", f"content {how}")
    line = bench.card.line.get(part)
    if line is not None and line.length.how == "guessed":
        yield Evidence("assumed", "length guessed", {"spread": line.length.spread})
    if how == "drained":
        yield Evidence("assumed", "heights as on the card")


def _pools(bench: Bench) -> Iterator[PartProof]:
    for part, volumes in bench.state.pools.items():
        fitting = bench.card.fitting[bench.network.pools[part].part]
        total = float(volumes.sum())
        contents = contents_of(volumes[1:] / total)
        survival = bench.survival(contents, "open", relieved=True)
        how = _pool_history(bench, part)
        yield PartProof(
            id=part,
            kind=fitting.kind,
            volume_m3=total,
            mean=contents,
            worst=contents,
            freezing_point_degC=survival.freezing_point_degC,
            ice_fraction=survival.ice_fraction,
            pocket="open",
            relieved=True,
            claim=_claim(survival, contents, how),
            safe=survival.safe,
            reason=survival.reason_key,
            params=dict(survival.params),
            evidence=(Evidence("computed", f"content {how}"),),
            look_at=survival.safe is not True,
        )


def _history(bench: Bench, link: Link) -> str:
    """Tell how a link came by its content."""
    if bench.state.settings.get(f"{link.part}/body") == "removed":
        return "removed"
    return bench.state.treated[link.id]


def _pool_history(bench: Bench, pool: str) -> str:
    """Tell how a pool came by its content."""
    spec = bench.network.pools[pool]
    if bench.state.settings.get(f"{spec.part}/body") == "removed":
        return "removed"
    return "flowed" if spec.stirred else "drained"


def _unknown(bench: Bench) -> Iterator[PartProof]:
    """Name what has no model, and what nobody has looked for: unknown is never safe."""
    for part in bench.network.unmodelled:
        yield _unproven(bench.card.fitting[part], "no model")
    for fitting in bench.card.fittings:
        if fitting.seen == "not looked at":
            yield _unproven(fitting, "not looked at")
    listed = {f.kind for f in bench.card.fittings} | set(bench.card.looked_for.absent)
    for kind in ASKED_FOR:
        if kind not in listed:
            yield _nothing_known(f"any {kind}", kind, "nobody has looked")


def _unproven(fitting: Fitting, reason: str) -> PartProof:
    return _nothing_known(fitting.id, fitting.kind, reason)


def _nothing_known(part: str, kind: str, reason: str) -> PartProof:
    return PartProof(
        id=part,
        kind=kind,
        volume_m3=KINDS[kind].hollow_m3,
        mean=UNKNOWN,
        worst=UNKNOWN,
        freezing_point_degC=None,
        ice_fraction=None,
        pocket=KINDS[kind].pocket,
        relieved=False,
        claim="unproven",
        safe=None,
        reason=reason,
        params={"kind": kind},
        evidence=(Evidence("assumed", reason),),
        look_at=True,
    )

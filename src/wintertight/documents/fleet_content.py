"""What is said of many coaches: one row for each card of a folder, and what they come to in all."""

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from math import ceil, sqrt
from statistics import NormalDist

from wintertight.procedure.bands import Band
from wintertight.procedure.plan import Purchase
from wintertight.proof.claims import Verdict

Z_95 = NormalDist().inv_cdf(0.95)
"""Standard deviations from the middle of a normal distribution to its 95 % point [1]."""

OUTER = 0.5 / Z_95**2
"""Weight of each outer point of a band [1]; the middle has the rest. So weighted, the three points
of a normal distribution have its mean and its variance."""


@dataclass(frozen=True, slots=True)
class PlannedCoach:
    """What a plan comes to; small, because it crosses from one process to another.

    Attributes:
        file: name of the card's file within the folder.
        card_hash, id, name: the coach.
        low_degC: design low [degC].
        verdict: safe, gap or unproven.
        antifreeze: band of antifreeze used [m3].
        duration: band of the whole job [s].
        buy: what to bring for this coach alone.
        gaps, unproven: parts that would burst, and parts that are not proven.
        compiled: whether compiled arithmetic worked it out.
    """

    file: str
    card_hash: str
    id: str
    name: str
    low_degC: float
    verdict: Verdict
    antifreeze: Band
    duration: Band
    buy: Purchase
    gaps: tuple[str, ...]
    unproven: tuple[str, ...]
    compiled: bool


@dataclass(frozen=True, slots=True)
class FailedCoach:
    """A card without a plan.

    Attributes:
        file: name of its file within the folder.
        code, message: the error on one line, its place in front.
        fault: whether the program is at fault, and not the card.
    """

    file: str
    code: str
    message: str
    fault: bool


Row = PlannedCoach | FailedCoach


@dataclass(frozen=True, slots=True)
class Supply:
    """What to bring of one product for all coaches that are filled with it.

    Attributes:
        buy: what to bring where the rest of one coach's last container goes into the next coach.
        separately: containers where each coach is brought its own [1].
    """

    buy: Purchase
    separately: int


@dataclass(frozen=True, slots=True)
class Totals:
    """What all planned coaches come to.

    Attributes:
        verdicts: how many coaches have each verdict [1].
        antifreeze: band of antifreeze used [m3].
        duration: band of the work, one coach after another [s].
        supplies: what to bring of each product.
    """

    verdicts: Mapping[Verdict, int]
    antifreeze: Band
    duration: Band
    supplies: tuple[Supply, ...]


@dataclass(frozen=True, slots=True)
class Fleet:
    """All cards of a folder.

    Attributes:
        folder: where they lie.
        rows: one for each, in the order of their files' names.
        workers: how many processes worked on them [1].
    """

    folder: str
    rows: tuple[Row, ...]
    workers: int

    @property
    def planned(self) -> tuple[PlannedCoach, ...]:
        """Those with a plan."""
        return tuple(row for row in self.rows if isinstance(row, PlannedCoach))

    @property
    def failed(self) -> tuple[FailedCoach, ...]:
        """Those without."""
        return tuple(row for row in self.rows if isinstance(row, FailedCoach))

    @property
    def compiled(self) -> bool:
        """Whether every plan was worked out by compiled arithmetic, and there is one."""
        return bool(self.planned) and all(coach.compiled for coach in self.planned)


def totals_of(coaches: Sequence[PlannedCoach]) -> Totals:
    """Add coaches up.

    Args:
        coaches: those with a plan.

    Returns:
        What they come to.
    """
    counted = Counter(coach.verdict for coach in coaches)
    products = dict.fromkeys((coach.buy.product, coach.buy.container_m3) for coach in coaches)
    return Totals(
        verdicts={verdict: counted[verdict] for verdict in ("safe", "gap", "unproven")},
        antifreeze=band_of_sum(coach.antifreeze for coach in coaches),
        duration=band_of_sum(coach.duration for coach in coaches),
        supplies=tuple(_supply(coaches, product, size) for product, size in products),
    )


def band_of_sum(bands: Iterable[Band]) -> Band:
    """Give the band of a sum of quantities that do not hang on each other.

    One coach's bores and pump say nothing of the next one's: means add, and variances add. What
    all coaches share, such as a label that is off, is not in the sum's band.

    Args:
        bands: of each quantity.

    Returns:
        The band of their sum, taken as normal; a single band as it is.

    Example:
        >>> band = Band(7.0, 10.0, 13.0)
        >>> total = band_of_sum([band] * 9)
        >>> round(total.p05, 6), round(total.p50, 6), round(total.p95, 6)
        (81.0, 90.0, 99.0)
    """
    some = list(bands)
    if len(some) == 1:
        return some[0]
    means = [_mean(band) for band in some]
    variances = [_variance(band, mean) for band, mean in zip(some, means, strict=True)]
    mean, spread = sum(means), Z_95 * sqrt(sum(variances))
    return Band(mean - spread, mean, mean + spread)


def _mean(band: Band) -> float:
    return band.p50 + OUTER * (band.p05 - 2.0 * band.p50 + band.p95)


def _variance(band: Band, mean: float) -> float:
    outer = (band.p05 - mean) ** 2 + (band.p95 - mean) ** 2
    return OUTER * outer + (1.0 - 2.0 * OUTER) * (band.p50 - mean) ** 2


def _supply(coaches: Sequence[PlannedCoach], product: str, size_m3: float) -> Supply:
    filled = [c for c in coaches if (c.buy.product, c.buy.container_m3) == (product, size_m3)]
    total = band_of_sum(coach.antifreeze for coach in filled)
    count = ceil(total.p50 / size_m3)
    spare = max(0, ceil(total.p95 / size_m3) - count)
    buy = Purchase(product, size_m3, count, spare)
    return Supply(buy, sum(coach.buy.count for coach in filled))

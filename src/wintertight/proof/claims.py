"""What is said of a part at the end, and on what it stands."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from types import MappingProxyType
from typing import Literal

from wintertight.coach.kinds import Pocket
from wintertight.fluids.contents import Contents

Claim = Literal["filled", "drained", "swept", "kept warm", "removed", "unproven"]
EvidenceKind = Literal["computed", "measured", "attested", "assumed"]
Verdict = Literal["safe", "gap", "unproven"]

NOTHING: Mapping[str, float | str] = MappingProxyType({})


@dataclass(frozen=True, slots=True)
class Evidence:
    """One thing a claim stands on.

    Attributes:
        kind: computed by the engine, measured, attested by a person, or assumed.
        key: key of the sentence.
        params: what the sentence needs.
    """

    kind: EvidenceKind
    key: str
    params: Mapping[str, float | str] = field(default_factory=lambda: NOTHING)


@dataclass(frozen=True, slots=True)
class PartProof:
    """One part of the coach at the end of all actions.

    Attributes:
        id: of the line or fitting.
        kind: "line", or the kind of fitting.
        volume_m3: what it holds [m3].
        mean: its mean contents.
        worst: the contents of its worst section; this one decides.
        freezing_point_degC: of the worst section [degC]; None where not known.
        ice_fraction: ice in the worst section at the design low [1]; None where not known.
        pocket: open, relieved or sealed.
        relieved: whether its relieving action has been done.
        claim: what is said of it.
        safe: True, False, or None where it is unproven.
        reason: key of the reason.
        params: what the reason's sentence needs.
        evidence: what the claim stands on.
        look_at: whether eyes would settle it: a dead end, or something nobody has looked at.
    """

    id: str
    kind: str
    volume_m3: float
    mean: Contents
    worst: Contents
    freezing_point_degC: float | None
    ice_fraction: float | None
    pocket: Pocket
    relieved: bool
    claim: Claim
    safe: bool | None
    reason: str
    params: Mapping[str, float | str] = field(default_factory=lambda: NOTHING)
    evidence: tuple[Evidence, ...] = ()
    look_at: bool = False

    @property
    def water_m3(self) -> float:
        """Water in it [m3]."""
        return self.volume_m3 * self.mean.water


def verdict_of(parts: tuple[PartProof, ...]) -> Verdict:
    """Give the verdict on a coach: a gap outranks unproven, unproven outranks safe."""
    if any(part.safe is False for part in parts):
        return "gap"
    if any(part.safe is None for part in parts):
        return "unproven"
    return "safe"

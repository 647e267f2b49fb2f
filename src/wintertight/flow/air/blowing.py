"""What a blow through one outlet leaves in a coach: swept lines are let out, the rest stays."""

from dataclasses import dataclass, replace
from types import MappingProxyType
from typing import Final

from wintertight.flow.air.supply import AirSupply
from wintertight.flow.air.sweep import BLOW_S, SweepResult, sweep
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.letting_out import WET_SHARE, left_wet, refill
from wintertight.flow.state import State

SWEPT: Final = "swept"
"""How a link came by its content that air has swept."""

PERHAPS: Final = "sweep doubtful"
"""The same of one that air may have swept."""

EMPTY_ALREADY: Final = frozenset({SWEPT, "drained", "emptied", "removed"})
"""What has no water to be swept out."""


@dataclass(frozen=True, slots=True)
class Blow:
    """How air is blown through a coach.

    Attributes:
        inlet: id of the source at which the compressor is put on.
        supply: tank, compressor and regulator.
        seconds: how long an outlet blows on after its water was pushed out [s], above 0.
    """

    inlet: str
    supply: AirSupply
    seconds: float = BLOW_S


def blown(
    network: CoachNetwork, state: State, outlet: str, blow: Blow
) -> tuple[State, SweepResult]:
    """Blow one outlet out and shut it again.

    What is swept keeps the film that the first push leaves on the wall, or what hangs in a body as
    after draining, whichever is more. What is doubtful keeps all it held.

    Args:
        network: the coach.
        state: how its controls stand, and what its lines hold.
        outlet: control of the outlet to open.
        blow: where the air comes in, and what drives it.

    Returns:
        The state after it, and what was claimed.

    Raises:
        ChoiceError: the coach has no such inlet or outlet.
        NoSteadyFlow: the flow could not be found.

    Sources: aussillous-quere (film); common-practice.
    """
    found = sweep(network, state, blow.inlet, outlet, blow.supply, blow_s=blow.seconds)
    doubtful: dict[str, str] = {}
    for name, claim in found.links.items():
        if name not in state.held or state.treated[name] in EMPTY_ALREADY:
            continue
        if claim.claim == "swept":
            state = refill(state, name, left_wet(max(WET_SHARE, claim.film)), SWEPT)
        elif claim.claim == "doubtful":
            doubtful[name] = PERHAPS
    treated = MappingProxyType({**state.treated, **doubtful})
    return replace(state, treated=treated), found

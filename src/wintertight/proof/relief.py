"""Whether the action that relieves a rigid pocket has been done."""

from wintertight.coach.card import Fitting
from wintertight.coach.kinds import KINDS
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.state import State


def _a_tap_is_open(network: CoachNetwork, state: State) -> bool:
    return any(
        state.settings[outlet] == "open"
        for outlet in network.outlets
        if network.controls[outlet].thing == "tap"
    )


def is_relieved(fitting: Fitting, network: CoachNetwork, state: State) -> bool:
    """Tell whether a fitting's rigid pocket has been opened, as everything stands.

    Args:
        fitting: the fitting.
        network: its coach.
        state: how everything stands.

    Returns:
        True if its relieving action is done; False if it is not, or if it has none.
    """
    relief = KINDS[fitting.kind].relief
    if relief in {"leave tap open", "leave spray open"}:
        controls = network.controls.values()
        taps = [c for c in controls if c.part == fitting.id and c.thing in {"tap", "head"}]
        return bool(taps) and all(state.settings[c.id] == "open" for c in taps)
    if relief in {"loosen strainer bowl", "loosen filter bowl"}:
        return state.settings.get(f"{fitting.id}/bowl") in {"loose", "off"}
    if relief == "half-turn valve":
        # A ball that stands along the pipe has its bore open to the line on both sides.
        return state.settings.get(fitting.id) in {"along", "half"}
    if relief == "unload pump":
        return state.settings.get(f"{fitting.id}/switch") == "off" and _a_tap_is_open(
            network, state
        )
    if relief == "open heater":
        lever, plug = (state.settings.get(f"{fitting.id}/{x}") for x in ("relief", "plug"))
        return lever == "open" or plug == "out"
    return fitting.id in state.marks

"""What a trap or a tank takes in, and what it lets go for that."""

import numpy as np
import numpy.typing as npt

from wintertight.flow.coach_network import Pool
from wintertight.flow.held import VesselHeld
from wintertight.flow.state import five
from wintertight.flow.stream import SHARES, Stream

Array = npt.NDArray[np.float64]


def taken_in(pool: Pool, volumes: Array, stream: Stream) -> tuple[Array, Stream, Array]:
    """Let a stream run into a pool.

    Args:
        pool: what it is: a trap is stirred and runs over; a tank fills as far as it has room.
        volumes: of water, glycol, ethanol, rated product and air in it [m3], shape (5,).
        stream: what comes.

    Returns:
        The volumes in it afterwards [m3], what runs on from there, and what is lost: for a tank
        what it had no room for, and the air that made room [m3], shape (5,).
    """
    if pool.stirred:
        vessel = VesselHeld(pool.volume_m3, volumes[1:] / pool.volume_m3)
        over = vessel.push(stream, forward=True)
        return five(vessel.mean() * pool.volume_m3, pool.volume_m3), over, np.zeros(SHARES + 1)
    came = five(stream.component_volumes, stream.volume_m3)
    liquid_m3 = float(came[:-1].sum())
    room_m3 = min(liquid_m3, float(volumes[-1]))
    taken = came * (room_m3 / liquid_m3 if room_m3 else 0.0)
    taken[-1] = -room_m3
    return volumes + taken, Stream(np.zeros(0), np.zeros((0, SHARES))), came - taken

"""When a run of an outlet stops, and what was seen while it ran."""

import math
from dataclasses import dataclass, field

COLOUR_SHARE = 0.10
"""Share of the supply's strength at which colour shows at an outlet [1]; common practice."""

LIMIT_M3 = 12e-3
"""Volume drawn, beyond what the way holds, after which an outlet that never clears is given up
[m3]: about three gallons, wherever they went."""


@dataclass(frozen=True, slots=True)
class Until:
    """When to stop a run; whichever comes first, and always at ``limit_m3``.

    Attributes:
        run_on_s: seconds after first colour at the watched outlet [s].
        seconds: seconds in all [s].
        volume_m3: volume in all [m3].
        limit_m3: volume drawn, beyond what the way holds, after which the run is given up [m3].
        expect_m3: volume at which colour may show [m3], from a job done before: a long stride ends
            there. It changes nothing but the work.
    """

    run_on_s: float | None = None
    seconds: float | None = None
    volume_m3: float | None = None
    limit_m3: float = LIMIT_M3
    expect_m3: float | None = field(default=None, compare=False)

    @property
    def rules(self) -> tuple[float, float, float]:
        """Give seconds in all [s], volume in all [m3], both infinite for none, and run-on [s]."""
        return (
            math.inf if self.seconds is None else self.seconds,
            math.inf if self.volume_m3 is None else self.volume_m3,
            math.nan if self.run_on_s is None else self.run_on_s,
        )


@dataclass(frozen=True, slots=True)
class OutletRun:
    """What was seen at one outlet.

    Attributes:
        outlet: its control.
        volume_m3: what came out [m3].
        seconds: how long it ran [s].
        first_colour_s: when colour showed, and stayed [s]; None if it never did.
        first_colour_m3: what had come out by then [m3].
        strength: share of the supply's strength in the last of what came out [1].
        given_up: stopped at the limit.
        flow_m3_s: flow at the end [m3/s].
        way: links through which fluid moved.
        air_m3: how much of what came out was air [m3].
        given_m3: antifreeze, without the water in it, that sources gave meanwhile [m3]; where
            accumulators breathe, that is not counted.
    """

    outlet: str
    volume_m3: float
    seconds: float
    first_colour_s: float | None
    first_colour_m3: float | None
    strength: float
    given_up: bool
    flow_m3_s: float
    way: tuple[str, ...]
    air_m3: float = 0.0
    given_m3: float = 0.0

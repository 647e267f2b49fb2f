"""A step of a job: what a technician reads as one line and does in one go."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from types import MappingProxyType
from typing import Literal

from wintertight.flow.actions import Action
from wintertight.flow.air.sweep import SweepResult
from wintertight.flow.until import OutletRun

Phase = Literal["make safe", "thaw", "drain", "set", "test", "blow", "fill", "finish"]

PHASES: tuple[Phase, ...] = (
    "make safe",
    "thaw",
    "drain",
    "set",
    "test",
    "blow",
    "fill",
    "finish",
)


@dataclass(frozen=True, slots=True)
class Step:
    """One step.

    Attributes:
        id: stable id, the same in every plan of the same coach: key and part.
        key: key of its sentence, and of its usual handling time.
        phase: the stretch of the job it belongs to.
        actions: what the engine does.
        part: the part of the coach it is done to, "" where it is several.
        setting: what that part is set to, "" where nothing is.
        params: what the sentences need.
        cautions: keys of the cautions that stand at this step.
    """

    id: str
    key: str
    phase: Phase
    actions: tuple[Action, ...]
    part: str = ""
    setting: str = ""
    params: Mapping[str, float | str] = field(default_factory=lambda: MappingProxyType({}))
    cautions: tuple[str, ...] = ()

    @property
    def outlet(self) -> str | None:
        """The outlet this step runs until colour, if it is such a step."""
        return next(
            (a.part for a in self.actions if a.verb == "run" and self.key == "run outlet"), None
        )

    @property
    def blown(self) -> str | None:
        """The outlet this step blows air through, if it is such a step."""
        return next((a.part for a in self.actions if a.verb == "blow"), None)


@dataclass(frozen=True, slots=True)
class Missed:
    """What comes of leaving a step out.

    Attributes:
        outcome: the same, a gap, unproven, or a hazard.
        parts: parts that are worse off.
        water_m3: water left in them [m3].
        hazard: key of the hazard, if that is the outcome.
        noticed: whether the bay would notice while filling: somewhere no colour comes.
    """

    outcome: Literal["same", "gap", "unproven", "hazard"]
    parts: tuple[str, ...] = ()
    water_m3: float = 0.0
    hazard: str | None = None
    noticed: bool = False


@dataclass(frozen=True, slots=True)
class PlannedStep:
    """A step with its numbers.

    Attributes:
        n: its place in the job, from 1.
        step: the step.
        run: what will be seen at its outlet at best values, if it runs one.
        run_on_s: seconds to run on after first colour [s].
        blow: what is claimed of the air at its outlet at best values, if it blows one out.
        handling_s: hands-on time beside the running of fluid [s].
        telling: whether its first colour says much about the rest.
        if_missed: what comes of leaving it out; None where that was not asked.
    """

    n: int
    step: Step
    run: OutletRun | None = None
    run_on_s: float | None = None
    blow: SweepResult | None = None
    handling_s: float = 0.0
    telling: bool = False
    if_missed: Missed | None = None


def part_of(control: str) -> str:
    """Give the part a control or outlet belongs to: kitchen.hot is the kitchen's."""
    return control.partition(".")[0].partition("/")[0]

"""A job done over with one explanation made true; what came before it is taken over."""

from collections.abc import Iterator, Sequence
from dataclasses import replace
from types import MappingProxyType

from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.precedent import Precedent
from wintertight.flow.replay import Moment, Trace, replay
from wintertight.flow.state import arriving_state
from wintertight.procedure.hindsight.explanations import Explanation
from wintertight.procedure.mistaken import with_mistake
from wintertight.procedure.steps import PlannedStep, Step

LONGER = (0.3, 1.5)
"""By how much a line is longer that is not as the card says [1]; common practice."""


def really_done(
    ticked: Sequence[PlannedStep], network: CoachNetwork, explanation: Explanation
) -> tuple[tuple[Step, ...], CoachNetwork]:
    """Give what was really done if an explanation is true.

    Args:
        ticked: the steps that were ticked, with their numbers.
        network: the coach.
        explanation: what may have happened.

    Returns:
        As many steps, those that were not done without actions, and the coach as it then is.
    """
    steps = tuple(p.step for p in ticked)
    if explanation.mistake is not None:
        steps, network = with_mistake(ticked, network, explanation.mistake)
    skipped = explanation.skips
    return tuple(replace(s, actions=()) if s.id in skipped else s for s in steps), network


def longer(network: CoachNetwork, line: str) -> CoachNetwork:
    """Give the coach with one line that holds more than its card says, as much as usual then."""
    link = network.links[line]
    more = replace(link, volume_m3=link.volume_m3 * (1.0 + sum(LONGER) / 2.0))
    return replace(network, links=MappingProxyType({**network.links, line: more}))


def done_over(
    usual: Trace, ticked: Sequence[PlannedStep], steps: Sequence[Step], network: CoachNetwork
) -> Trace:
    """Replay a job with something different in it.

    Args:
        usual: the job as ticked.
        ticked: the steps that were ticked.
        steps: what is done of each instead.
        network: the coach; another one where the coach itself is at fault.

    Returns:
        The trace; where the coach is the same, what is alike is taken over.
    """
    actions = [action for step in steps for action in step.actions]
    if network is not usual.network:
        return replay(network, arriving_state(network), actions)
    alike: list[Moment] = []
    for action, moment in zip(actions, usual.moments, strict=False):
        if action != moment.action:
            break
        alike.append(moment)
    begin = alike[-1].state if alike else usual.start
    precedents = list(_precedents(usual, ticked, steps))[len(alike) :]
    rest = replay(network, begin, actions[len(alike) :], precedents)
    return Trace(network, usual.start, (*alike, *rest.moments))


def _precedents(
    usual: Trace, ticked: Sequence[PlannedStep], steps: Sequence[Step]
) -> Iterator[Precedent | None]:
    """Give what was done in the same step of the job as ticked."""
    known = iter(usual.precedents)
    for was, step in zip(ticked, steps, strict=True):
        theirs = [next(known) for _ in was.step.actions]
        same = step.actions == was.step.actions
        yield from theirs if same else [None] * len(step.actions)

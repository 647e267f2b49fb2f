"""Cups from the jug and from outlets, as strengths that explanations can be compared with."""

import math
from collections.abc import Iterator, Sequence

from wintertight.flow.coach_network import CoachNetwork
from wintertight.fluids.product import Product
from wintertight.procedure.drawn import HALF, PRINTED_WITHIN
from wintertight.procedure.fresh_jug import is_of_jug, jug_readings, relative_strength
from wintertight.procedure.hindsight.observed import JUG, Strength
from wintertight.procedure.instruments import SIGMAS, glycol_share, on_glycol_scale, weakest_share
from wintertight.procedure.readings import is_plain_glycol
from wintertight.procedure.record import Event, Reading
from wintertight.procedure.steps import Step

Cups = tuple[tuple[Strength, ...], dict[str, bool]]


def cups_of(events: Sequence[tuple[Event, Step]], network: CoachNetwork, product: Product) -> Cups:
    """Give what cups say of strength.

    A plain glycol product is read against its label; any product can be compared with a cup from
    the fresh jug that the same instrument read.

    Args:
        events: every event, with its step as recorded, in order.
        network: the coach.
        product: what it was filled with, as its label says.

    Returns:
        The strengths, and by outlet whether a cup looked pink.
    """
    jugs = jug_readings(events)
    strengths: list[Strength] = []
    pink: dict[str, bool] = {}
    for outlet, reading in _placed(events, network):
        if reading.kind == "looks pink" and isinstance(reading.value, bool) and outlet != JUG:
            pink[outlet] = reading.value
        strengths += _strengths(outlet, reading, product, jugs)
    return tuple(strengths), pink


def _placed(
    events: Sequence[tuple[Event, Step]], network: CoachNetwork
) -> Iterator[tuple[str, Reading]]:
    """Give each reading with the outlet it was taken at; the last tap where none is named."""
    last_tap = ""
    for event, step in events:
        if step.outlet and event.result == "done":
            is_tap = network.controls[step.outlet].thing == "tap"
            last_tap = step.outlet if is_tap else last_tap
        if event.reading is None:
            continue
        where = event.part or step.part or last_tap
        if is_of_jug(event.reading, step):
            yield JUG, event.reading
        elif where in network.outlets:
            yield where, event.reading


def _strengths(
    outlet: str, reading: Reading, product: Product, jugs: Sequence[Reading]
) -> Iterator[Strength]:
    share, weakest = glycol_share(reading), weakest_share(reading)
    full = product.contents()
    plain = full.glycol > 0.0 and is_plain_glycol(product)
    if plain and share is not None and weakest is not None:
        label = HALF * PRINTED_WITHIN
        sd = math.hypot((share - weakest) / SIGMAS, label) / full.glycol
        yield Strength(outlet, share / full.glycol, sd)
    elif outlet != JUG and on_glycol_scale(reading):
        for jug in jugs[:1]:
            found = relative_strength(reading, jug)
            if found is not None and math.isfinite(found.sd):
                yield Strength(outlet, found.strength, found.sd, beside_jug=True)

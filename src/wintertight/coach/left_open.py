"""What a card leaves open that somebody at the coach can answer: what ``coach check`` asks.

All findings are asked, and some smaller things with them which a plan is not bothered with, because
no step depends on them: they are worth a look while somebody stands at the coach anyway.
"""

from collections.abc import Callable, Iterator, Mapping
from types import MappingProxyType

from wintertight.coach.card import Card
from wintertight.coach.findings import KEYS, Finding, findings, present, shut_off_before
from wintertight.coach.kind_fields import TOILETS

LEFT_OPEN: Mapping[str, tuple[str, ...]] = MappingProxyType(
    {
        "trap without a sink": (),
        "toilet without a tank": (),
        "no ice maker shut-off": (),
        "no strainer": (),
        "tank not known": (),
    }
)
"""Every key that is only asked, and the names of its parameters."""

ASKED: Mapping[str, tuple[str, ...]] = MappingProxyType({**KEYS, **LEFT_OPEN})
"""Every key that is asked."""


def asked(card: Card) -> tuple[Finding, ...]:
    """Give everything on a card to ask or look at, findings first.

    Args:
        card: a card whose plumbing was checked.

    Returns:
        The findings, then what is only asked, in a fixed order of subjects.
    """
    return (*findings(card), *(open_one for rule in _RULES for open_one in rule(card)))


def _drains_are_known(card: Card) -> Iterator[Finding]:
    above = {fitting.drains_to for fitting in card.fittings}
    for trap in present(card, "trap"):
        if trap.id not in above:
            yield Finding("trap without a sink", trap.id)
    for toilet in present(card, *sorted(TOILETS)):
        if toilet.drains_to is None:
            yield Finding("toilet without a tank", toilet.id)


def _ice_maker_has_shut_off(card: Card) -> Iterator[Finding]:
    for maker in present(card, "ice maker"):
        if not shut_off_before(card, maker.id, ""):
            yield Finding("no ice maker shut-off", maker.id)


def _pump_has_strainer(card: Card) -> Iterator[Finding]:
    looked_for = {fitting.kind for fitting in card.fittings} | set(card.looked_for.absent)
    for pump in present(card, "demand pump")[:1]:
        if "strainer" not in looked_for:
            yield Finding("no strainer", pump.id)


def _tanks_are_known(card: Card) -> Iterator[Finding]:
    """What a heater's tank is made of says whether it has an anode rod."""
    for heater in present(card, "tank heater"):
        if heater.tank is None:
            yield Finding("tank not known", heater.id)


_RULES: tuple[Callable[[Card], Iterator[Finding]], ...] = (
    _drains_are_known,
    _ice_maker_has_shut_off,
    _pump_has_strainer,
    _tanks_are_known,
)

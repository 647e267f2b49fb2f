"""What was done, and what was written down beside it, as the lines of a record."""

from collections.abc import Iterator, Mapping
from types import MappingProxyType

from wintertight.coach.card import Card
from wintertight.procedure.instruments import SHARE_UNITS
from wintertight.procedure.record import REPLACE_ANODE, Event, Reading
from wintertight.procedure.steps import Step
from wintertight.units import System, in_words
from wintertight.wording.catalogue import catalogue, say, say_best
from wintertight.wording.names import part_name
from wintertight.wording.spoken import AT_ONCE_S, begun, listed
from wintertight.wording.steps import handles_text

DEGREES: Mapping[str, str] = MappingProxyType({"degc": "°C", "c": "°C", "degf": "°F", "f": "°F"})
"""How units of a temperature are printed, by how a record may spell them."""

SHARES = frozenset({"glycol share", "share eaten"})
"""Kinds of reading whose value is a share."""


def deed_text(event: Event, step: Step | None, card: Card, language: str = "en") -> str:
    """Give what an event speaks of, in a few words.

    Args:
        event: the event.
        step: its step as recorded; None where it has none in the plan, as its part is not there.
        card: the coach's card as it was given.
        language: two letters.

    Returns:
        The words; they do not say whether it was done.
    """
    if step is None:
        part = event.part or (event.step or "").partition(":")[2]
        key = REPLACE_ANODE if event.action == REPLACE_ANODE else "off the card"
        name = part_name(card, part, language) if part else event.step or event.action or ""
        return begun(say("deed", key, language, part=name))
    parts = (part_name(card, a.part, language) for a in step.actions if a.verb == "set")
    return begun(
        say(
            "deed",
            step.key,
            language,
            part=part_name(card, event.part or step.part, language) if step.part else "",
            parts=listed(parts, language),
            handles=handles_text(step, card, language),
        )
    ).rstrip(":. ")


def result_text(event: Event, language: str = "en") -> str:
    """Give how a step ended."""
    return say("result", event.result, language)


def noted_text(
    event: Event,
    language: str = "en",
    system: System = "us",
    *,
    asked: str = "",
    with_device: bool = False,
) -> str:
    """Give everything that was written down at an event.

    Args:
        event: the event.
        language: two letters.
        system: units of volumes; a reading stays in the unit it was read in.
        asked: the setting that the plan asks for; another one is told.
        with_device: whether to name the device it was written on.

    Returns:
        The words; "" where nothing was.
    """
    told = _noted(event, language, system, asked)
    device = [event.device] if with_device and event.device else []
    return say("noted", "between", language).join([*told, *device])


def _noted(event: Event, language: str, system: System, asked: str) -> Iterator[str]:
    if event.setting is not None and event.setting != asked:
        setting = catalogue(language)["setting"].get(event.setting, event.setting)
        yield say("noted", "set", language, setting=setting)
    if event.first_colour_s is not None:
        key = "colour at once" if event.first_colour_s < AT_ONCE_S else "colour"
        yield say("noted", key, language, time=in_words(event.first_colour_s, "time", system))
    if event.run_on_s is not None:
        yield say("noted", "run on", language, time=in_words(event.run_on_s, "time", system))
    if event.volume_m3 is not None:
        volume = in_words(event.volume_m3, "volume", system)
        yield say("noted", "volume", language, volume=volume)
    if event.jugs_left is not None:
        number = "one" if event.jugs_left == 1.0 else "many"
        yield say("noted", f"jugs {number}", language, count=f"{event.jugs_left:g}")
    if event.reading is not None:
        yield reading_text(event.reading, language)
    if event.why:
        yield say("noted", "why", language, why=event.why)


def reading_text(reading: Reading, language: str = "en") -> str:
    """Give a reading as it was read: value, unit and instrument."""
    looked: tuple[str, ...] = (reading.looked,) if reading.looked else ()
    if isinstance(reading.value, bool):
        looked = ("yes" if reading.value else "no",)
    value = _with_unit(reading.value, reading) or say("reading", "no value", language)
    said = say_best("reading", reading.kind, looked, language, value=value)
    how = list(_how(reading, language))
    if how:
        said = say("reading", "how", language, reading=said, how=", ".join(how))
    return say("reading", "of jug", language, reading=said) if reading.of == "jug" else said


def _how(reading: Reading, language: str) -> Iterator[str]:
    if reading.instrument is not None:
        yield say("instrument", reading.instrument, language)
    if reading.zeroed is not None:
        yield say("reading", "zeroed" if reading.zeroed else "not zeroed", language)
    if reading.sd is not None:
        yield say("reading", "within", language, sd=_with_unit(reading.sd, reading))


def _with_unit(value: float | None, reading: Reading) -> str:
    """Give a number with the unit it was read in; a share as per cent, however it was written."""
    if value is None or isinstance(value, bool):
        return ""
    bare = (reading.unit or "").replace(" ", "").lower()
    if reading.kind in SHARES:
        return f"{value * SHARE_UNITS.get(bare, 1.0) * 100.0:g} %"
    # A bare freezing point has always been one in degC.
    return f"{value:g} {DEGREES.get(bare or 'degc', reading.unit)}"

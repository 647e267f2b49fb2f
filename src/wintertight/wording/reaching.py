"""How one gets at what a step turns or opens: panel, screws, minutes and picture of the card."""

from collections.abc import Iterator

from wintertight.coach.card import Card, Fitting
from wintertight.procedure.steps import Step
from wintertight.units import System, in_words
from wintertight.wording.catalogue import say
from wintertight.wording.names import part_name
from wintertight.wording.spoken import begun, counted


def reach_texts(
    step: Step, card: Card, language: str = "en", system: System = "us"
) -> tuple[str, ...]:
    """Give a sentence for each fitting of a step at which something is in the way.

    Args:
        step: the step.
        card: the coach's card.
        language: two letters.
        system: "us" or "metric".

    Returns:
        The sentences, in the order of the step; none where the card says nothing.
    """
    names = dict.fromkeys(
        part.partition("/")[0].partition(".")[0]
        for part in (step.part, *(action.part for action in step.actions))
    )
    fittings = (card.fitting[name] for name in names if name in card.fitting)
    return tuple(
        say(
            "phrase",
            "reach",
            language,
            part=begun(part_name(card, fitting.id, language)),
            how=say("phrase", "comma", language).join(told),
        )
        for fitting in fittings
        if (told := tuple(_told(fitting, language, system)))
    )


def _told(fitting: Fitting, language: str, system: System) -> Iterator[str]:
    if fitting.panel:
        yield say("phrase", "behind", language, panel=fitting.panel)
    if fitting.screws:
        yield counted(fitting.screws, "screws", language)
    if fitting.opening_s is not None:
        yield in_words(fitting.opening_s, "time", system)
    if fitting.photo:
        yield say("phrase", "picture", language, photo=fitting.photo)

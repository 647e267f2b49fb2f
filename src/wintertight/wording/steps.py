"""A step of a job as sentences: what to do, why, and what to mind."""

from collections.abc import Iterator

from wintertight.coach.card import Card
from wintertight.procedure.steps import Missed, PlannedStep, Step
from wintertight.units import System, in_words
from wintertight.wording.catalogue import catalogue, say, say_best
from wintertight.wording.names import part_name
from wintertight.wording.spoken import about, begun, counted, listed, spoken


def step_text(planned: PlannedStep, card: Card, language: str = "en", system: System = "us") -> str:
    """Give what the technician is to do, as one or two sentences.

    Args:
        planned: the step with its numbers.
        card: the coach's card.
        language: two letters.
        system: "us" or "metric".

    Returns:
        The sentences.
    """
    step = planned.step
    params = {
        **spoken(step.params, language, system),
        "part": part_name(card, step.part, language) if step.part else "",
        "parts": listed(_parts(step, card, language), language),
        "outlet": listed(_runs(step, card, language), language),
        "handles": handles_text(step, card, language),
        "handling": in_words(planned.handling_s, "time", system),
        "how": how_to_open(step, language),
        **_seen(planned, language, system),
    }
    if planned.blow is not None and planned.blow.work.bursts:
        params["blow_s"] = about(planned.blow.work.seconds, language)
    if "sources" in params:
        sources = str(step.params["sources"]).split(" and ")
        params["sources"] = listed((say("heat", s, language) for s in sources), language)
    if "cups" in params:
        params["cups"] = counted(int(float(step.params["cups"])), "cups", language)
    said = begun(say_best("step", step.key, _circumstances(planned, card), language, **params))
    if "left_full_m3" in params:
        said = f"{said} {say('phrase', 'left full', language, **params)}"
    return said


def step_why(step: Step, language: str = "en") -> str:
    """Give why a step is done, as one short sentence."""
    circumstances = (*_yes(step), step.phase)
    return say_best("why", step.key, circumstances, language)


def how_to_open(step: Step, language: str = "en") -> str:
    """Give how an outlet without a handle is opened; "" for one that has a handle."""
    ways = catalogue(language)["how to open"]
    kind, side = str(step.params.get("kind", "")), step.part.partition(".")[2]
    return ways.get(f"{kind}: {side}", ways.get(kind, ""))


def caution(key: str, language: str = "en") -> str:
    """Give what to mind at a step."""
    return say("caution", key, language)


def hazard(key: str, language: str = "en") -> str:
    """Give why an order is refused, and what to do first."""
    return say("hazard", key, language)


def setting_name(step: Step, card: Card, language: str = "en") -> str:
    """Give how a step sets its part: "along the pipe (open)", or what is written at its handle."""
    fitting = card.fitting.get(step.part)
    if fitting is not None and step.setting in {position.name for position in fitting.positions}:
        return step.setting
    return say("setting", step.setting, language)


def missed_text(missed: Missed, card: Card, language: str = "en", system: System = "us") -> str:
    """Give what comes of leaving a step out."""
    return say(
        "outcome",
        missed.outcome,
        language,
        parts=listed((part_name(card, p, language) for p in missed.parts), language),
        water_m3=in_words(missed.water_m3, "volume", system),
        hazard=hazard(missed.hazard, language) if missed.hazard else "",
    )


def _circumstances(planned: PlannedStep, card: Card) -> tuple[str, ...]:
    """Give what may call for another sentence, the strongest first."""
    step = planned.step
    run = planned.run
    blow = planned.blow
    if blow is not None and not blow.work.bursts:
        return ("never done",)
    dry = ["no colour"] if run is not None and run.first_colour_s is None else []
    own_way = ["its own way"] if how_to_open(step) else []
    fitting = card.fitting.get(step.part.partition("/")[0].partition(".")[0])
    return (*dry, *_yes(step), *([fitting.kind] if fitting else []), *own_way)


def _yes(step: Step) -> tuple[str, ...]:
    return tuple(name for name, value in step.params.items() if value == "yes")


def _seen(planned: PlannedStep, language: str, system: System) -> dict[str, str]:
    if planned.run is None:
        return {}
    return {
        "colour": about(planned.run.first_colour_s, language),
        "run_on": in_words(planned.run_on_s or 0.0, "time", system),
        "volume": in_words(planned.run.volume_m3, "volume", system),
    }


def _parts(step: Step, card: Card, language: str) -> Iterator[str]:
    """Give every fitting a step sets something on, by name; hot and cold side are one."""
    for action in step.actions:
        if action.verb == "set":
            fitting = action.part.partition("/")[0].partition(".")[0]
            yield part_name(card, fitting, language)


def _runs(step: Step, card: Card, language: str) -> Iterator[str]:
    for action in step.actions:
        if action.verb == "run":
            yield part_name(card, action.part, language)


def handles_text(step: Step, card: Card, language: str) -> str:
    """Give one sentence for the handles a step sets across, and one for those along."""
    said = []
    for setting in ("across", "along"):
        names = [
            part_name(card, a.part, language)
            for a in step.actions
            if a.verb == "set" and a.setting == setting
        ]
        if names:
            parts = listed(names, language)
            said.append(say("phrase", f"handles {setting}", language, parts=parts))
    for action in step.actions:
        fitting = card.fitting.get(action.part)
        if action.verb == "set" and fitting is not None and fitting.positions:
            named = part_name(card, action.part, language)
            said.append(
                say("phrase", "handles named", language, part=named, position=action.setting)
            )
    return " ".join(said)

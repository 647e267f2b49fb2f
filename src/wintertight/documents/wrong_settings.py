"""What can stand wrongly at a coach: a block for the screen, and a list for programs."""

from itertools import groupby
from typing import Any

from wintertight.documents.screen_blocks import joined, wrapped
from wintertight.procedure.mistake_outcome import MistakeOutcome, Sign
from wintertight.procedure.mistakes import Mistake
from wintertight.procedure.plan import Plan
from wintertight.units import System
from wintertight.wording.catalogue import say
from wintertight.wording.mistakes import mistake_text, mistakes_heading, sign_text

Plain = dict[str, Any]
Worked = tuple[tuple[Mistake, MistakeOutcome], ...]


def wrong_settings_screen(
    plan: Plan, worked: Worked, language: str = "en", system: System = "us"
) -> str:
    """Give the wrong settings as text, lines as wide as those of a plan; "" where there are none.

    Args:
        plan: the plan of the job.
        worked: its wrong settings with what comes of them, in order.
        language: two letters.
        system: "us" or "metric".

    Returns:
        A block of lines below each heading.
    """
    blocks = groupby(worked, key=lambda both: mistakes_heading(both[1], language))
    return joined(
        (heading, *(_item(plan, m, o, language, system) for m, o in some))
        for heading, some in blocks
    ).rstrip("\n")


def wrong_settings_none(language: str = "en") -> str:
    """Give what is said where there are none."""
    return wrapped(say("label", "no wrong settings", language))


def _item(
    plan: Plan, mistake: Mistake, outcome: MistakeOutcome, language: str, system: System
) -> str:
    return wrapped(mistake_text(mistake, outcome, plan.card, language, system), "  -  ")


def wrong_settings_list(
    plan: Plan, worked: Worked, language: str = "en", system: System = "us"
) -> list[Plain]:
    """Give the wrong settings as plain data; numbers are SI, what does not apply is left out."""
    return [
        {
            "key": mistake.key,
            **({"circumstance": mistake.circumstance} if mistake.circumstance else {}),
            "part": mistake.part,
            "outcome": outcome.outcome,
            "parts": list(outcome.parts),
            "bursting": list(outcome.bursting),
            "water_m3": round(float(outcome.water_m3), 9),
            "signs": [_sign(plan, sign, language) for sign in outcome.signs],
            "noticed": outcome.noticed,
            "extra_jugs": int(outcome.jugs),
            "extra_antifreeze_m3": float(outcome.more_m3),
            "crosses": list(outcome.crosses),
            **({"hazard": outcome.hazard} if outcome.hazard else {}),
            "sentence": mistake_text(mistake, outcome, plan.card, language, system),
        }
        for mistake, outcome in worked
    ]


def _sign(plan: Plan, sign: Sign, language: str) -> Plain:
    return {
        "key": sign.key,
        "at": sign.at,
        **({} if sign.share is None else {"share": float(sign.share)}),
        **({} if sign.seconds is None else {"seconds": float(sign.seconds)}),
        "text": sign_text([sign], plan.card, language),
    }

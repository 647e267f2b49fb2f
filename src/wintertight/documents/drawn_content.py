"""Where the pictures of a plan stand on its sheet, as plain data for the template."""

from typing import Any

from wintertight.documents.drawing.of_plan import StepPicture
from wintertight.wording.catalogue import say


def drawn_content(pictures: tuple[StepPicture, ...], language: str) -> dict[str, Any]:
    """Give the pictures at their steps, and those that stand together at the end.

    Args:
        pictures: all pictures of a plan.
        language: two letters.

    Returns:
        ``drawn``: by number of the step, what it turns; ``fronts`` and ``whole``: the others, in
        order; each with its name, caption and words for who cannot see it.
    """
    drawn: dict[str, list[dict[str, str]]] = {}
    fronts, whole = [], []
    for shown in pictures:
        entry = picture_content(shown)
        if shown.shows in {"coach", "end"}:
            whole.append(entry)
        elif shown.shows == "front":
            fronts.append(entry)
        else:
            drawn.setdefault(str(shown.step), []).append(entry)
    heading = say("drawing", "pictures", language)
    return {"drawn": drawn, "fronts": fronts, "whole": whole, "pictures_heading": heading}


def picture_content(shown: StepPicture) -> dict[str, str]:
    """Give a picture's name, its caption, and words for who cannot see it."""
    return {
        "name": shown.picture.name,
        "caption": shown.picture.title,
        "alt": f"{shown.picture.title}. {shown.picture.description}",
    }

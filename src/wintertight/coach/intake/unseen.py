"""What stands on a card as not looked at, because nobody answered its question.

A plan that counts on something nobody has looked at vouches for nothing there.
"""

from wintertight.coach.intake.answers import Answers
from wintertight.coach.intake.draft import Draft
from wintertight.coach.intake.questions import QUESTIONS

UNSEEN: dict[str, tuple[str, str, str]] = {
    "heater": ("heater-to-see", "tank heater", "kind of water heater"),
    "bypass": ("bypass-to-see", "ball valve", "bypass of the water heater"),
    "baths": ("bath-to-see", "lavatory tap", "number of baths"),
    "antifreeze inlet": ("inlet-to-see", "antifreeze hose", "way in for antifreeze"),
    "toilet": ("toilet-to-see", "gravity toilet", "kind of toilet"),
    "low points": ("low-point-to-see", "low point", "low points"),
    "outside shut-off": (
        "outside-valve-to-see",
        "ball valve",
        "shut-off of the outside shower",
    ),
    "fridge shut-off": ("fridge-valve-to-see", "ball valve", "shut-off of the refrigerator"),
}
"""By question: id, kind and name of what then stands on the card."""


def add_unseen(draft: Draft, answers: Answers) -> None:
    """Add what nobody has looked at."""
    for key, (name, kind, called) in UNSEEN.items():
        if not answers.known(key) and QUESTIONS[key].asked_if(answers):
            draft.unplaced(name, kind, name=called, seen="not looked at")

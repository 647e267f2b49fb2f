"""Which question comes next: the one that would settle most."""

from wintertight.coach.intake.answers import Answers
from wintertight.coach.intake.questions import QUESTIONS, Question, Stage, standing
from wintertight.coach.intake.unseen import UNSEEN

FIRST = "shape"
"""Asked before anything else: it says what is usual for everything that nobody looks at."""


def askable(answers: Answers, stage: Stage) -> tuple[Question, ...]:
    """Give the questions of a stage that have a sense at this coach, answered or not."""
    counting = standing(answers)
    return tuple(q for q in QUESTIONS.values() if q.stage == stage and q.asked_if(counting))


def worth(question: Question, answers: Answers) -> int:
    """Count what one question would settle that now stands unproven.

    One for each kind of fitting in its ``settles`` that no answer has settled yet, and one more
    if, as long as it is open, the network stands there on what is usual for the shape.

    Args:
        question: the question; it has no answer yet.
        answers: the answers so far.

    Returns:
        The count.
    """
    settled = {kind for key in standing(answers).given for kind in QUESTIONS[key].settles}
    return len(set(question.settles) - settled) + (question.key in UNSEEN)


def next_question(answers: Answers, left_open: frozenset[str], stage: Stage) -> Question | None:
    """Give the question to be asked now.

    The shape comes first. Then, of those questions of the stage that are neither answered nor
    left open and have a sense at this coach, the one that would settle most; of several that
    settle as much the one that moves most gallons, then the first of the table. It depends
    on what is given and on nothing else.

    Args:
        answers: the answers so far.
        left_open: keys of questions that were not looked at.
        stage: the stage.

    Returns:
        The question; None where the stage has no more.
    """
    waiting = [
        question
        for question in askable(answers, stage)
        if not answers.known(question.key) and question.key not in left_open
    ]
    if not waiting:
        return None
    return max(waiting, key=lambda q: (q.key == FIRST, worth(q, answers), q.moves_gal))

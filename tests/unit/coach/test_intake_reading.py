import pytest

from wintertight.coach.intake.answers import Answer
from wintertight.coach.intake.questions import QUESTIONS
from wintertight.coach.intake.reading import EXAMPLES, Misread, NotUnderstood, read_answer


@pytest.mark.parametrize(
    ("key", "typed", "answer"),
    [
        ("shape", "3", "truck camper"),
        ("shape", " 11 ", "rear-engine motorhome"),
        ("shape", "TEAR", "teardrop"),
        ("shape", "fifth wheel, two", "fifth wheel, two baths"),
        ("shape", "van", "camper van"),
        ("heater", "1", "tank of 6 gal"),
        ("heater", "6 gal", "tank of 6 gal"),
        ("heater", "16", "tank of 16 gal"),
        ("heater", "no", "no heater"),
        ("baths", "1", "one bath"),
        ("baths", "2", "two baths"),
        ("baths", "no bath", "no bath"),
        ("low points", "2", "two"),
        ("low points", "none", "none"),
        ("belly", "closed", "closed"),
        ("belly", "closed and", "closed and heated"),
        ("pipe", "pex", "PEX"),
        ("water treatment", "4 1", ("filter housing", "UV sleeve")),
        ("water treatment", "uv, soft", ("softener", "UV sleeve")),
        ("appliances", "ice maker washer", ("ice maker", "washer")),
        ("appliances", "Dishwasher and door dispenser", ("door dispenser", "dishwasher")),
        ("appliances", "1,1 1", ("ice maker",)),
        ("outside", "outside shower outside kitchen", ("outside shower", "outside kitchen")),
        ("tub", "tub", ("tub",)),
        ("tub", "None", ()),
        ("tub", "0", ()),
        ("sprayer", "Y", "yes"),
        ("sprayer", "no", "no"),
        ("length", "27 ft", "27 ft"),
        ("length", "12  ft   3 in", "12 ft 3 in"),
        ("length", "8.2m", "8.2m"),
        ("length", "48 ft", "48 ft"),
        ("length", "6 ft", "6 ft"),
        ("design low", "-20F", "-20F"),
        ("design low", "32F", "32F"),
        ("fresh tank", "150 gal", "150 gal"),
    ],
)
def test_what_is_meant_is_read(key: str, typed: str, answer: Answer) -> None:
    """Guards numbers, keys, beginnings, lists, yes and no, and quantities up to their limits."""
    assert read_answer(QUESTIONS[key], typed) == answer


@pytest.mark.parametrize(
    ("key", "typed", "why"),
    [
        ("shape", "", "nothing typed"),
        ("tub", "   ", "nothing typed"),
        ("shape", "14", "no such number"),
        ("shape", "0", "no such number"),
        ("shape", "999", "no such number"),
        ("shape", "airplane", "no such choice"),
        ("shape", "-1", "no such choice"),
        ("shape", "fifth wheel", "several fit"),
        ("outside", "outside", "several fit"),
        ("heater", "6", "number or size"),
        ("shape", "1 3", "one only"),
        ("shape", "teardrop, park", "one only"),
        ("tub", "none 1", "none or some"),
        ("tub", "1, none", "none or some"),
        ("tub", "1 sauna", "no such choice"),
        ("tub", ",", "no such choice"),
        ("tub", "3", "no such number"),
        ("sprayer", "perhaps", "yes or no"),
        ("sprayer", "1", "yes or no"),
        ("length", "27", "unit missing"),
        ("design low", "-20", "unit missing"),
        ("design low", "- 20.5", "unit missing"),
        ("length", "27 gal", "no quantity"),
        ("length", "long", "no quantity"),
        ("length", "49 ft", "outside"),
        ("length", "5 ft", "outside"),
        ("design low", "33F", "outside"),
        ("design low", "-61 degC", "outside"),
        ("fresh tank", "1 gal", "outside"),
    ],
)
def test_what_is_no_answer_is_named(key: str, typed: str, why: Misread) -> None:
    """Guards that every line that cannot be read says which way it is wrong."""
    with pytest.raises(NotUnderstood) as caught:
        read_answer(QUESTIONS[key], typed)
    assert caught.value.key == why
    assert caught.value.typed.isprintable()


@pytest.mark.parametrize("key", [k for k, q in QUESTIONS.items() if q.choices])
def test_every_choice_can_be_typed(key: str) -> None:
    """Guards that each choice is read by its key, and by its number where that is no size."""
    question = QUESTIONS[key]
    for number, choice in enumerate(question.choices, start=1):
        meant = (choice,) if question.form == "several" else choice
        assert read_answer(question, choice) == meant
        assert read_answer(question, choice.upper()) == meant
        if (key, number) != ("heater", 6):
            assert read_answer(question, str(number)) == meant


def test_every_dimension_has_an_example() -> None:
    """Guards that whoever forgets a unit is shown how it is typed, and that this can be read."""
    for question in QUESTIONS.values():
        if question.dimension is not None:
            assert read_answer(question, EXAMPLES[question.dimension])

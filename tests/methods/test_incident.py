"""What burst in spring: the laws of the five causes on coaches of the demo."""

import json
from functools import cache
from typing import Any

import pytest

from tests.methods.every_plan import CARDS, low_of, plan_of, product_of
from wintertight.errors import RecordError
from wintertight.procedure.causes import WEIGHTS
from wintertight.procedure.found import Found, read_found
from wintertight.procedure.incident import BurstPart, Incident, weigh_incident
from wintertight.procedure.record import Record, read_record
from wintertight.procedure.winter_use import use_named, used_since

NAME = "middle-travel-trailer"
SKIPPED = "run-outlet:outside-shower.hot"
CAUSES = ["missed", "used", "older", "colder", "wear"]


def fall(*skipped: str, left_out: tuple[str, ...] = (), **more: Any) -> Record:
    """Give the record of a fall in which all was done but some."""
    steps = [p.step.id for p in plan_of(NAME, "pump").steps]
    events = [
        {"id": f"b{n}", "seq": n, "step": s, "result": "skipped" if s in skipped else "done"}
        for n, s in enumerate(steps, start=1)
        if s not in left_out
    ]
    content = {"schema": "wintertight/record/1", "started": "2025-10-18T09:00:00"}
    return read_record(json.dumps({**content, "events": events, **more}))


def spring(*parts: str, crack: str = "unknown", worn: bool | None = None, **more: Any) -> Found:
    """Give what was found at some parts."""
    burst = [{"part": part, "crack": crack, "worn": worn} for part in parts]
    content = {"schema": "wintertight/found/1", "found": "2026-04-11", "burst": burst}
    return read_found(json.dumps({**content, **more}))


def weighed(record: Record, found: Found) -> Incident:
    """Weigh an incident of the demo's coach."""
    card = CARDS[NAME]
    return weigh_incident(card, record, found, product_of(card), low_of(card))


def weights(part: BurstPart) -> dict[str, str]:
    """Give the weight of each cause."""
    return {cause.name: cause.weight for cause in part.causes}


def keys(part: BurstPart) -> dict[str, str]:
    """Give the finding on each cause."""
    return {cause.name: cause.key.partition(": ")[2] for cause in part.causes}


@cache
def every_part(lowest: str | None = None) -> Incident:
    """Weigh every part of a coach whose fall skipped one outlet."""
    parts = [part.id for part in plan_of(NAME, "pump").parts]
    return weighed(fall(SKIPPED), spring(*parts, lowest=lowest))


def test_nothing_known_leaves_all_open() -> None:
    """Guards that an empty record and a bare finding support nothing and rule out nothing."""
    empty = read_record('{"schema": "wintertight/record/1", "events": []}')
    for part in weighed(empty, spring("outside-hot", "pump", "suction-tee", "toilet")).parts:
        assert weights(part) == dict.fromkeys(CAUSES, "open")
        assert part.explained == "open"


def test_what_the_fall_left_a_gap_was_missed() -> None:
    """Guards that the record of the fall decides, part by part, whether a step was missed."""
    found = every_part()
    assert any(part.fall is not None and part.fall.safe is False for part in found.parts)
    for part in found.parts:
        assert part.fall is not None
        expected = {False: "supported", None: "open", True: "against"}[part.fall.safe]
        assert weights(part)["missed"] == expected, part.burst.part


def test_the_line_of_the_record_is_named() -> None:
    """Guards that a skipped step is told with its number and the record's line."""
    found = {part.burst.part: part for part in every_part().parts}
    (step,) = found["outside-hot"].causes[0].steps
    assert (step.step, step.result, step.event) == (SKIPPED, "skipped", f"b{step.n}")
    record = fall(left_out=(SKIPPED,))
    (part,) = weighed(record, spring("outside-hot")).parts
    assert keys(part)["missed"] == "not recorded"
    assert part.causes[0].steps[0].event is None


def test_what_the_plan_itself_left_is_told_so() -> None:
    """Guards that nobody looks for a missed step where the method left the gap."""
    plan = plan_of(NAME, "drain")
    gap = next(part.id for part in plan.parts if part.safe is False)
    events = [
        {"id": f"b{n}", "seq": n, "step": p.step.id, "result": "done"}
        for n, p in enumerate(plan.steps)
    ]
    (part,) = weighed(fall(events=events, method="drain"), spring(gap)).parts
    assert part.causes[0].key == "missed: as planned"
    assert part.causes[0].steps == ()


def test_only_what_water_touched_was_used() -> None:
    """Guards that water since supports a cause where it came, and nowhere else."""
    card = CARDS[NAME]
    parts = [part.id for part in plan_of(NAME, "pump").parts]
    found = weighed(fall(), spring(*parts, water_since=["kitchen.cold"]))
    use = use_named(card, ["kitchen.cold"], [])
    voided = used_since(card, product_of(card), low_of(card), use).voided
    supported = {p.burst.part for p in found.parts if weights(p)["used"] == "supported"}
    shut = {p.burst.part for p in found.parts if keys(p)["used"] == "shut"}
    assert supported | shut == set(voided)
    assert {"city-inlet", "city-branch", "kitchen-cold", "kitchen"} <= supported
    assert shut == {"pump", "lavatory", "shower", "outside-shower"}
    pumped = {p.burst.part for p in found.parts if keys(p)["used"] == "pumped"}
    assert {"strainer", "filter", "tank-stub"} <= pumped
    assert "lavatory-cold" not in pumped | supported
    asked = weighed(fall(), spring(*parts, water_since=[]))
    assert {weights(p)["used"] for p in asked.parts} == {"against"}


@pytest.mark.parametrize("lowest", ["-45 degF", "-18 degF", "-11.5 degF"])
def test_colder_only_where_the_engine_says_so(lowest: str) -> None:
    """Guards that cold is a cause only of what held at the design low and bursts at the lowest."""
    for part in every_part(lowest).parts:
        assert part.fall is not None
        assert part.at_lowest is not None
        weight = weights(part)["colder"]
        if weight == "supported":
            assert (part.fall.safe, part.at_lowest.safe) == (True, False)
        assert (weight == "against") == (part.fall.safe is True and part.at_lowest.safe is True)


def test_much_colder_is_a_cause_of_much() -> None:
    """Guards that the cold is found at all, and more of it where it was colder."""
    bursts = [
        {p.burst.part for p in every_part(low).parts if weights(p)["colder"] == "supported"}
        for low in ("-18 degF", "-45 degF")
    ]
    assert bursts[0]
    assert bursts[0] < bursts[1]


def test_no_colder_than_meant_is_no_cause() -> None:
    """Guards a mild winter: the cold is ruled out, and what froze nothing was not missed."""
    for part in every_part("50 degF").parts:
        assert keys(part)["colder"] == "not colder"
        assert weights(part)["missed"] != "supported"


@pytest.mark.parametrize(
    ("crack", "worn", "older", "wear"),
    [
        ("limed", True, "supported", "supported"),
        ("fresh", False, "against", "against"),
        ("unknown", None, "open", "open"),
    ],
)
def test_the_crack_tells(crack: str, worn: bool | None, older: str, wear: str) -> None:  # noqa: FBT001 - a column
    """Guards that age and wear hang on what was seen at the part and on nothing else."""
    (part,) = weighed(fall(), spring("pump", crack=crack, worn=worn)).parts
    assert (weights(part)["older"], weights(part)["wear"]) == (older, wear)


def test_what_nothing_explains_is_said_so() -> None:
    """Guards the case in which all is ruled out: what the claim rests on is named instead."""
    found = spring("pump", "heater", crack="fresh", water_since=[], lowest="-5 degF")
    for part in weighed(fall(), found).parts:
        assert part.explained == "not explained"
        assert not part.supported
        assert {"attested", "no reading", "computed", "worn"} <= set(part.look_at)
    (explained,) = weighed(fall(), spring("pump", crack="limed", water_since=[])).parts
    assert explained.look_at == ()


def test_a_reading_too_weak_at_the_lowest_counts() -> None:
    """Guards that what was measured in the fall speaks at the lowest temperature too."""
    read = {"kind": "glycol share", "value": 0.33, "sd": 0.005}
    more = {"take-reading": {"reading": read, "part": "kitchen.hot"}}
    events = [
        {**e.model_dump(exclude_none=True), **more.get(e.step or "", {})} for e in fall().events
    ]
    found = spring("kitchen-hot", lowest="-24 degF")
    (with_reading,) = weighed(fall(events=events), found).parts
    (without,) = weighed(fall(), found).parts
    assert with_reading.at_lowest is not None
    assert without.at_lowest is not None
    rank = {False: 0, None: 1, True: 2}
    assert rank[with_reading.at_lowest.safe] <= rank[without.at_lowest.safe]
    assert any(e.kind == "measured" for e in with_reading.at_lowest.evidence)


def test_a_heated_room_is_asked_about() -> None:
    """Guards that cold outside is not held against a room that was said to be warm."""
    found = spring("shower-cold", lowest="-45 degF", heated=["bath"])
    (part,) = weighed(fall(), found).parts
    assert keys(part)["colder"] == "heated"


def test_a_tee_stands_as_its_lines_do() -> None:
    """Guards that a tee, which has no proof of its own, is as weak as the weakest line at it."""
    (part,) = weighed(fall(SKIPPED), spring("outside-hot-tee")).parts
    assert part.fall is not None
    assert part.fall.id == "outside-hot"
    assert keys(part)["missed"] == "skipped"


@pytest.mark.parametrize(
    ("found", "field", "says"),
    [
        (spring("boiler"), "burst[1].part", "no part of this coach is called 'boiler'"),
        (spring("pump", "pump"), "burst[2].part", "a second time"),
        (spring("pump", found="2025-10-01"), "found", "a day after the record"),
        (spring("pump", water_since=["toilet", "well"]), "water_since[2]", "no outlet 'well'"),
        (spring("pump", heated=["attic"]), "heated[1]", "no compartment is called 'attic'"),
    ],
)
def test_what_is_not_there_cannot_burst(found: Found, field: str, says: str) -> None:
    """Guards that an unknown part, outlet or room is named with its field."""
    with pytest.raises(RecordError, match=says) as caught:
        weighed(fall(), found)
    assert (caught.value.place.file, caught.value.place.field) == ("found", field)


def test_support_never_comes_from_nothing() -> None:
    """Guards the table itself: what is not known, not there or not proven supports nothing."""
    doubtful = ("not known", "nothing recorded", "no proof", "unproven", "margin", "mild")
    assert all(WEIGHTS[k] == "open" for k in WEIGHTS if k.endswith(doubtful))
    assert {k.partition(": ")[0] for k in WEIGHTS} == set(CAUSES)

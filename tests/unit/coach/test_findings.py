from pathlib import Path

import pytest

from wintertight.coach.findings import KEYS, Finding, findings
from wintertight.coach.load import read_card
from wintertight.coach.vin import has_vin_shape, vin_check_digit

FILE = Path(__file__).parents[3] / "src/wintertight/demo/cards/middle-travel-trailer.toml"
TEXT = FILE.read_text("utf-8")
ONES = "1" * 17


def found(*changes: tuple[str, str]) -> set[tuple[str, str]]:
    """Give key and part of what a changed card brings beside the first card's own findings."""
    text = TEXT
    for old, new in changes:
        assert old in text
        text = text.replace(old, new, 1)
    before = {(finding.key, finding.part) for finding in findings(read_card(TEXT))}
    return {(finding.key, finding.part) for finding in findings(read_card(text))} - before


def test_the_first_card_has_one_finding() -> None:
    """Guards that a full card is not nagged about: its outside shower has no shut-off, no more."""
    assert findings(read_card(TEXT)) == (Finding("no shut-off", "outside-shower"),)


@pytest.mark.parametrize(
    ("old", "new", "key", "part"),
    [
        ('"whirlpool",', "", "nobody has looked", ""),
        ('drains_to = "kitchen-trap"\n', "", "no trap", "kitchen"),
        ('drains_to = "shower-trap"\n', "", "no trap", "shower"),
        ('compartment = "galley"\ndrains_to = "gray-tank"', "", "no way to waste", "kitchen-trap"),
        ('role = "heater bypass"\n', "", "no bypass", "heater"),
        ('role = "heater hot"\n', "", "heater not isolated", "heater"),
        ('role = "heater hot"\n', "", "valve without role", "heater-hot-valve"),
        ('role = "tank suction"\n', "", "no tank suction", ""),
        ('design_low = "-10F"\n', "", "design low missing", ""),
        ('"-10F"', '"-150F"', "design low implausible", ""),
        ('"-10F"', '"40F"', "design low above freezing", ""),
        ('[antifreeze]\nproduct = "Heron pink -50"\n', "", "no product", ""),
        ('id = "suction-a"', 'id = "suction-a"\nlow = "2 ft"', "heights inconsistent",
         "suction-a"),
        ('id = "suction-a"', 'id = "suction-a"\nhigh = "9 ft"', "sag longer than line",
         "suction-a"),
        ('"1.5 ft", "-0.7 ft"]', '"1.5 ft", "-0.7 ft"]\nat_within = "1 ft"',
         "", ""),
        ("year = 2017", f'year = 2017\nvin = "{ONES}"', "", ""),
        ("year = 2017", f'year = 2017\nvin = "2{ONES[1:]}"', "vin check digit", ""),
        ("year = 2017", 'year = 2017\nvin = "HL-204"', "vin has a wrong shape", ""),
        ("year = 2017", f'year = 1979\nvin = "2{ONES[1:]}"', "", ""),
        ('length = "27 ft"', 'length = "20 ft"', "outside the coach", "toilet"),
    ],
)  # fmt: skip
def test_each_finding_is_found(old: str, new: str, key: str, part: str) -> None:
    """Guards that each kind of finding comes from the change that deserves it."""
    news = found((old, new))
    assert ((key, part) in news) if key else not news


def test_a_way_to_draw_antifreeze_is_asked_for() -> None:
    """Guards that neither hose nor inlet valve is noticed, and that one of them is enough."""
    no_role = ('role = "antifreeze inlet"\n', "")
    no_hose = ('kind = "antifreeze hose"', 'kind = "capped tee"')
    not_absent = ('"capped tee", ', "")
    assert ("no antifreeze inlet", "") not in found(no_role)
    assert ("no antifreeze inlet", "") in found(no_role, not_absent, no_hose)


def test_low_points_are_asked_for() -> None:
    """Guards that a coach which cannot be drained is noticed."""
    changes = [('kind = "low point"', 'kind = "capped tee"')] * 2
    assert ("no low point", "") in found(('"capped tee", ', ""), *changes)


def test_a_branch_shut_off_silences_the_outside_shower() -> None:
    """Guards that a valve on both sides of the outside shower is seen as its shut-off."""
    valves = "".join(
        f'[[fitting]]\nid = "valve-{side}"\nkind = "ball valve"\nrole = "branch shut-off"\n'
        f'at = ["21 ft", "1 ft", "0.5 ft"]\n'
        f'[[line]]\nid = "stub-{side}"\nfrom = "outside-{side}-tee"\nto = "valve-{side}"\n'
        f'length = "1 ft"\nsize = "1/2 in"\nmaterial = "PEX"\n'
        for side in ("hot", "cold")
    )
    text = TEXT + valves
    for side in ("hot", "cold"):
        text = text.replace(
            f'id = "outside-{side}"\nfrom = "outside-{side}-tee"',
            f'id = "outside-{side}"\nfrom = "valve-{side}"',
        )
    assert findings(read_card(text)) == ()


def test_a_second_heater_is_noticed() -> None:
    """Guards the word about two tank heaters."""
    second = (
        '[[fitting]]\nid = "heater-2"\nkind = "tank heater"\nat = ["19 ft", "1.5 ft", "1 ft"]\n'
        + "".join(
            f'[[line]]\nid = "second-{side}"\nfrom = "heater-{side}-tee"\nto = "heater-2.{side}"\n'
            f'length = "3 ft"\nsize = "1/2 in"\nmaterial = "PEX"\n'
            for side in ("hot", "cold")
        )
    )
    news = [f for f in findings(read_card(TEXT + second)) if f.key == "several heaters"]
    assert [dict(finding.params) for finding in news] == [{"count": 2}]


def test_what_was_not_looked_at_is_said() -> None:
    """Guards that a fitting nobody looked at needs no place and no line, and is told."""
    unseen = '[[fitting]]\nid = "maker"\nkind = "ice maker"\nseen = "not looked at"\n'
    text = TEXT.replace('"ice maker", ', "") + unseen
    news = findings(read_card(text))
    assert ("not looked at", "maker") in {(finding.key, finding.part) for finding in news}


@pytest.mark.parametrize("change", ['"whirlpool",', '"washer",', 'design_low = "-10F"\n'])
def test_parameters_are_those_of_the_key(change: str) -> None:
    """Guards that a sentence made from a finding always has what it needs."""
    for finding in findings(read_card(TEXT.replace(change, ""))):
        assert tuple(finding.params) == KEYS[finding.key]


def test_seventeen_ones_check() -> None:
    """Guards the invented number: the weights sum to 89, whose remainder by eleven is 1."""
    assert vin_check_digit(ONES) == "1"
    assert has_vin_shape(ONES)
    assert not has_vin_shape("I" * 17)

import re
from dataclasses import dataclass
from pathlib import Path

import pytest

from wintertight.coach.load import read_card
from wintertight.errors import InputError

ROOT = Path(__file__).parents[3]

CARD = (ROOT / "src/wintertight/demo/cards/middle-travel-trailer.toml").read_text("utf-8")


@dataclass(frozen=True)
class Bad:
    """One way to spoil the first card.

    ``old`` is replaced by ``new`` where it first stands behind ``after``; the line at fault is the
    one that holds ``at`` (where it first stands behind ``near`` or, without one, behind ``after``,
    in the changed text). Without ``at`` it is the header above the id that is ``near``.
    """

    name: str
    after: str
    old: str
    new: str
    at: str
    code: str
    field: str
    says: str
    near: str = ""


def fitting(name: str) -> str:
    """Give the text with which a fitting or compartment of the card begins."""
    return f'id = "{name}"\n'


BAD = [
    Bad("bare number", fitting("pump"), '"3 gal/min"', "3", "flow = 3",
        "WT-110", "fitting[pump].flow", "bare number"),
    Bad("unit missing", fitting("pump"), '"3 gal/min"', '"3"', 'flow = "3"',
        "WT-110", "fitting[pump].flow", "expected a flow"),
    Bad("unit of another kind", fitting("pump"), '"55 psi"', '"55 ft"', "cut_off",
        "WT-110", "fitting[pump].cut_off", "expected a pressure"),
    Bad("zero length", fitting("suction-a"), '"0.5 ft"', '"0 ft"', '"0 ft"',
        "WT-110", "line[suction-a].length", "above zero"),
    Bad("spread too wide", fitting("pump-out"), '"20 %"', '"100 %"', '"100 %"',
        "WT-110", "line[pump-out].length.spread", "below 100 %"),
    Bad("two ways of knowing", fitting("pump-out"), 'spread = "20 %"', 'told = "2 ft"', "told",
        "WT-110", "line[pump-out].length", "exactly one of"),
    Bad("strange way of knowing", fitting("pump-out"), "guessed", "reckoned", "reckoned",
        "WT-110", "line[pump-out].length.reckoned", "exactly one of"),
    Bad("length is a list", fitting("suction-a"), '"0.5 ft"', '["0.5 ft"]', '["0.5 ft"]',
        "WT-110", "line[suction-a].length", "not a list"),
    Bad("two of three positions", fitting("pump"), ', "0.4 ft"]', "]", "at =",
        "WT-110", "fitting[pump].at", "three lengths"),
    Bad("third position wrong", fitting("pump"), '"2.7 ft", "0.4 ft"', '"2.7 ft",\n"0.4 psi"',
        "0.4 psi", "WT-110", "fitting[pump].at[3]", "expected a length"),
    Bad("design low in psi", "[site]", '"-10F"', '"-10 psi"', "design_low",
        "WT-110", "site.design_low", "expected a temperature"),
    Bad("unknown kind", fitting("pump"), '"demand pump"', '"demand pmup"', "demand pmup",
        "WT-120", "fitting[pump].kind", "did you mean 'demand pump'?"),
    Bad("kind is a number", fitting("pump"), '"demand pump"', "7", "kind = 7",
        "WT-120", "fitting[pump].kind", "expected text in quotes, not 7"),
    Bad("kind missing", fitting("pump"), 'kind = "demand pump"\n', "", "",
        "WT-120", "fitting[pump].kind", "'kind' is missing"),
    Bad("unknown field", fitting("pump"), "flow =", "flwo =", "flwo",
        "WT-120", "fitting[pump].flwo", "did you mean 'flow'?"),
    Bad("field of another kind", fitting("filter"), "volume =", 'cut_off = "55 psi"\nvolume =',
        "cut_off", "WT-120", "fitting[filter].cut_off", "belongs to a demand pump"),
    Bad("place missing", fitting("suction-tee"), "at =", "note = 'x' # at =", "",
        "WT-120", "fitting[suction-tee]", "'at' is missing"),
    Bad("unknown role", fitting("jug-valve"), "antifreeze inlet", "pink inlet", "pink inlet",
        "WT-120", "fitting[jug-valve].role", "no role of a ball valve"),
    Bad("role of a tee", fitting("suction-tee"), "at =", 'role = "heater cold"\nat =', "role",
        "WT-120", "fitting[suction-tee].role", "belongs to a ball valve"),
    Bad("unknown compartment", fitting("pump"), '"under-bench"', '"under-bed"', "under-bed",
        "WT-120", "fitting[pump].compartment", "no compartment has the id"),
    Bad("heated in quotes", fitting("belly"), "heated = false", 'heated = "false"', "heated",
        "WT-120", "compartment[belly].heated", "true or false"),
    Bad("half a bend", fitting("tank-stub"), "bends = 1", "bends = 1.5", "bends",
        "WT-120", "line[tank-stub].bends", "whole number"),
    Bad("negative bends", fitting("tank-stub"), "bends = 1", "bends = -1", "bends",
        "WT-120", "line[tank-stub].bends", "at least 0"),
    Bad("empty note", fitting("gray-tank"), "compartment", "note = ''\ncompartment", "note",
        "WT-120", "fitting[gray-tank].note", "some text"),
    Bad("id with a dot", "# ---- low points", '"low-cold-tee"', '"low.cold"', "low.cold",
        "WT-120", "fitting[low.cold].id", "letters, digits"),
    Bad("wrong schema", "", "wintertight/card/1", "wintertight/card/9", "schema =",
        "WT-120", "schema", "expected 'wintertight/card/1'"),
    Bad("strange kind of coach", "[coach]", '"travel trailer"', '"yacht"', "yacht",
        "WT-120", "coach.kind", "'fifth wheel'"),
    Bad("year in quotes", "[coach]", "2017", '"2017"', "year",
        "WT-120", "coach.year", "whole number"),
    Bad("year long ago", "[coach]", "2017", "1066", "year",
        "WT-120", "coach.year", "at least 1900"),
    Bad("unknown table", "", "[antifreeze]", "[antifrieze]", "[antifrieze]",
        "WT-120", "antifrieze", "did you mean 'antifreeze'?"),
    Bad("table is a text", "", "[site]", 'site = "here"\n[not_site]', "here",
        "WT-120", "coach.site", "no field here"),
    Bad("unknown heat", fitting("heater"), '"element"', '"candle"', "candle",
        "WT-120", "fitting[heater].heat[2]", "'burner'"),
    Bad("absent kind unknown", "absent = [", '"washer"', '"wosher"', "wosher",
        "WT-120", "looked_for.absent[24]", "did you mean 'washer'?"),
    Bad("size missing everywhere", "[line_defaults]", 'size = "1/2 in"', "", "",
        "WT-120", "line[tank-stub].size", "line_defaults", fitting("tank-stub")),
    Bad("size is a number", "[line_defaults]", '"1/2 in"', "0.5", "size = 0.5",
        "WT-120", "line_defaults.size", "text in quotes"),
    Bad("tube of a strange size", "[line_defaults]", '"1/2 in"', '"5/8 in"', "5/8",
        "WT-120", "line_defaults.size", "expected 3/8 in or 1/2 in"),
    Bad("tube of a strange material", fitting("hose"), "length", 'material = "lead"\nlength',
        "lead", "WT-120", "line[hose].material", "expected PEX"),
    Bad("second fitting with an id", "# ---- low points", '"low-cold"', '"low-cold-tee"',
        'id = "low-cold-tee"\nkind = "low point"',
        "WT-121", "fitting[low-cold-tee].id", "a second fitting"),
    Bad("second line with an id", "# ---- lines", '"suction-b"', '"suction-a"',
        'id = "suction-a"\nfrom = "jug', "WT-121", "line[suction-a].id", "a second line"),
    Bad("second compartment", "", 'id = "belly"', 'id = "under-bench"',
        'id = "under-bench"\nname = "enclosed',
        "WT-121", "compartment[under-bench].id", "a second compartment"),
    Bad("end unknown", fitting("suction-a"), '"suction-tee"', '"suction-te"', 'to = "suction-te"',
        "WT-121", "line[suction-a].to", "did you mean 'suction-tee'?"),
    Bad("port unknown", fitting("suction-d"), "strainer.out", "strainer.outlet", "from =",
        "WT-121", "line[suction-d].from", "expected strainer.in or strainer.out"),
    Bad("port left out", fitting("suction-d"), "strainer.out", "strainer", "from =",
        "WT-121", "line[suction-d].from", "say which port"),
    Bad("port of a tee", fitting("suction-a"), '"suction-tee"', '"suction-tee.a"', "to =",
        "WT-121", "line[suction-a].to", "no named ports"),
    Bad("port taken twice", fitting("pump-out"), "pump.out", "pump.in", "pump.in",
        "WT-121", "line[pump-out].from", "a second line joins pump.in"),
    Bad("side not joined", fitting("kitchen-hot"), "kitchen.hot", "low-hot", "",
        "WT-121", "fitting[kitchen]", "no line joins kitchen.hot", fitting("kitchen")),
    Bad("line to itself", fitting("suction-a"), '"tank-valve"', '"suction-tee"', "to =",
        "WT-121", "line[suction-a].to", "to itself"),
    Bad("line too short", fitting("kitchen-cold"), "9.4 ft", "4 ft", "length =",
        "WT-121", "line[kitchen-cold].length", "apart"),
    Bad("line to a trap", fitting("suction-a"), '"suction-tee"', '"shower-trap"', "to =",
        "WT-121", "line[suction-a].to", "drains_to instead"),
    Bad("drains to nothing", fitting("kitchen-trap"), '"gray-tank"', '"grey-tank"', "grey-tank",
        "WT-121", "fitting[kitchen-trap].drains_to", "did you mean 'gray-tank'?"),
    Bad("drains to the pump", fitting("kitchen-trap"), '"gray-tank"', '"pump"', "drains_to",
        "WT-121", "fitting[kitchen-trap].drains_to", "expected a trap or a waste tank"),
    Bad("drains in a circle", fitting("kitchen-trap"), '"gray-tank"', '"kitchen-trap"', "drains_to",
        "WT-121", "fitting[kitchen-trap].drains_to", "into itself"),
    Bad("absent with lines", fitting("outside-shower"), "at =", 'seen = "absent"\nat =',
        '"outside-shower.cold"', "WT-121", "line[outside-cold].to", "said to be absent"),
    Bad("absent yet present", "absent = [", '"accumulator"', '"outside shower"', "outside shower",
        "WT-121", "looked_for.absent[1]", "yet the card has 1"),
    Bad("too many fittings", "# ---- supply", "\n", "\n" + "".join(
        f'[[fitting]]\nid = "trap-{n}"\nkind = "trap"\n' for n in range(2000)), "",
        "WT-121", "fitting[fresh-tank]", "expected at most 2000", fitting("fresh-tank")),
    Bad("not TOML", fitting("pump"), '"demand pump"', '"demand pump', "demand pump",
        "WT-111", "", "was opened and not closed"),
    Bad("field twice", fitting("pump"), "flow =", 'cut_off = "55 psi"\nflow =',
        'cut_off = "55 psi"\n\n[[fitting', "WT-111", "", "second time"),
    Bad("table twice", "", "[looked_for]", "[site]", "[site]\nabsent",
        "WT-111", "", "second time"),
    Bad("list not closed", "[looked_for]", '"whirlpool",\n]', '"whirlpool",\n', "[[compartment]]",
        "WT-111", "", ""),
    Bad("too deep", fitting("pump"), '"3 gal/min"', "[" * 40 + "]" * 40, "[[[[[[",
        "WT-101", "", "at most 32 levels"),
    Bad("far too deep", fitting("pump"), '"3 gal/min"', "[" * 50_000, "[[[[[[",
        "WT-101", "", "at most 32 levels"),
    Bad("number of thousands of digits", "[coach]", "2017", "9" * 5000, "year",
        "WT-111", "", "too long"),
]  # fmt: skip


def spoiled(bad: Bad) -> str:
    """Give the changed text of the card."""
    start = CARD.index(bad.after)
    assert bad.old in CARD[start:]
    return CARD[:start] + CARD[start:].replace(bad.old, bad.new, 1)


def line_at_fault(bad: Bad, text: str) -> int:
    """Find the expected line by searching the changed text."""
    start = text.index(bad.near or bad.after)
    if not bad.at:
        return text.count("\n", 0, start)
    return text.count("\n", 0, text.index(bad.at, start)) + 1


@pytest.mark.parametrize("bad", BAD, ids=[bad.name for bad in BAD])
def test_a_bad_card_is_one_line_with_its_place(bad: Bad) -> None:
    """Guards code, file, line, field and words of the error for each kind of bad card."""
    text = spoiled(bad)
    with pytest.raises(InputError) as caught:
        read_card(text, "HL-204.toml")
    error = caught.value
    assert error.code == bad.code, str(error)
    assert (error.place.field or "") == bad.field, str(error)
    assert error.place.line == line_at_fault(bad, text), str(error)
    assert bad.says in str(error)
    assert len(str(error).splitlines()) == 1
    assert str(error).startswith(f"{bad.code} HL-204.toml:{error.place.line}")


@pytest.mark.parametrize("bad", BAD, ids=[bad.name for bad in BAD])
def test_messages_are_words_of_the_trade(bad: Bad) -> None:
    """Guards that nothing of pydantic's or Python's own language reaches the user."""
    with pytest.raises(InputError) as caught:
        read_card(spoiled(bad))
    for error in (caught.value, *caught.value.others):
        assert not re.search(
            r"type=|input|valid |NoneType|dict|tuple|\bint\b|\bstr\b|None|float", str(error)
        ), str(error)


def test_all_faults_are_found_together() -> None:
    """Guards that one reading tells every wrong field, in the order of the file."""
    text = (
        CARD.replace('"40 gal"', "40")
        .replace('"55 psi"', '"55"')
        .replace("bends = 3", "bends = -3")
    )
    with pytest.raises(InputError, match=r"and \d+ more") as caught:
        read_card(text)
    found = [caught.value, *caught.value.others]
    assert len(found) == 2 + CARD.count("bends = 3")
    lines = [error.place.line or 0 for error in found]
    assert lines == sorted(lines)
    assert f"(and {len(found) - 1} more)" in str(caught.value)

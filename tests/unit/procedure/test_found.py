import json
from typing import Any

import pytest

from wintertight.errors import RecordError, SyntaxFault, UnreadableFile
from wintertight.procedure.found import read_found


def written(**fields: Any) -> str:
    """Write the text of a file of what was found."""
    usual = {"schema": "wintertight/found/1", "found": "2026-04-11", "burst": [{"part": "pump"}]}
    return json.dumps({**usual, **fields})


def test_what_is_left_out_is_not_known() -> None:
    """Guards that silence is neither yes nor no."""
    found = read_found(written())
    assert (found.lowest_degC, found.water_since, found.heated) == (None, None, None)
    assert (found.burst[0].crack, found.burst[0].worn) == ("unknown", None)
    assert read_found(written(water_since=[])).water_since == ()
    assert read_found(written(lowest="-18 degF")).lowest_degC == pytest.approx(-27.78, abs=0.01)
    assert read_found(written(lowest=None)).lowest_degC is None


@pytest.mark.parametrize(
    ("text", "error", "place", "says"),
    [
        ("{", SyntaxFault, "found:1", "not JSON"),
        ("[]", RecordError, "found", 'expected an object: {"schema": "wintertight/found/1"'),
        ("[" * 40 + "]" * 40, UnreadableFile, "found", "at most 32"),
        ("{}", RecordError, "found schema", "missing"),
        (written(schema="wintertight/record/1"), RecordError, "found schema", "found/1"),
        (written(found="in April"), RecordError, "found found", "2026-04-11"),
        (written(found=20260411), RecordError, "found found", "a day in quotes"),
        (written(burst=[]), RecordError, "found burst", "at least 1"),
        (written(burst=[{}]), RecordError, "found burst[1].part", "missing"),
        (written(burst=[{"part": "x", "crack": "old"}]), RecordError, "burst[1].crack", "limed"),
        (written(burst=[{"part": "x", "worn": 1}]), RecordError, "burst[1].worn", "true or"),
        (written(lowest=-18), RecordError, "found lowest", "with its unit"),
        (written(lowest="-18"), RecordError, "found lowest", "with its unit"),
        (written(water_since="toilet"), RecordError, "found water_since", "a list"),
        (written(weather="bad"), RecordError, "found weather", "no field here"),
    ],
)
def test_what_cannot_be_read_is_refused_in_one_line(
    text: str, error: type[Exception], place: str, says: str
) -> None:
    """Guards that unusable text is named with its field, whatever it is."""
    with pytest.raises(error) as caught:
        read_found(text)
    assert f"{place}: " in str(caught.value)
    assert says in str(caught.value)
    assert "\n" not in str(caught.value)

import json
from typing import Any

import pytest

from wintertight.errors import RecordError, SyntaxFault, UnreadableFile
from wintertight.procedure.record import Event, Record, read_record

TAG = {"id": "a", "seq": 1, "step": "hang-tag", "result": "done"}


def written(*events: dict[str, Any], **fields: Any) -> str:
    """Write a record's text."""
    return json.dumps({"schema": "wintertight/record/1", "events": list(events), **fields})


@pytest.mark.parametrize(
    ("text", "error", "place", "says"),
    [
        ("{", SyntaxFault, "record:1", "not JSON"),
        ("3", RecordError, "record", "expected an object"),
        ("null", RecordError, "record", "expected an object"),
        ("[]", RecordError, "record", "expected an object"),
        ("{}", RecordError, "record schema", "'schema' is missing"),
        (written(schema="x/1"), RecordError, "record schema", "expected 'wintertight/record/1'"),
        ('{"schema": "wintertight/record/1"}', RecordError, "record events", "missing"),
        ("[" * 40 + "]" * 40, UnreadableFile, "record", "at most 32"),
        ("[" * 100_000, UnreadableFile, "record", "at most 32"),
        ('{"events": NaN}', SyntaxFault, "record", "a number is not finite"),
        ('{"events": ' + "1" * 6000 + "}", SyntaxFault, "record", "thousands of digits"),
    ],
)
def test_what_is_no_record_is_refused_in_one_line(
    text: str, error: type[Exception], place: str, says: str
) -> None:
    """Guards that unusable text is named with its place, whatever it is."""
    with pytest.raises(error) as caught:
        read_record(text)
    assert says in str(caught.value)
    assert f" {place}: " in str(caught.value)
    assert "\n" not in str(caught.value)


@pytest.mark.parametrize(
    ("change", "place", "says"),
    [
        ({"seq": None}, "events[a].seq", "whole number"),
        ({"seq": "1"}, "events[a].seq", "whole number"),
        ({"seq": 1.5}, "events[a].seq", "whole number"),
        ({"result": "DONE"}, "events[a].result", "expected 'done'"),
        ({"step": None}, "events[a]", "expected a step or an action"),
        ({"foo": 1}, "events[a].foo", "no field here"),
        ({"run_on_s": -1}, "events[a].run_on_s", "at least 0"),
        ({"run_on_s": 1e12}, "events[a].run_on_s", "at most"),
        ({"run_on_s": "3"}, "events[a].run_on_s", "a number"),
        ({"run_on_s": 10**400}, "events[a].run_on_s", "a number"),
        ({"volume_m3": 1000}, "events[a].volume_m3", "at most 10"),
        ({"reading": {"kind": "taste"}}, "events[a].reading.kind", "looks pink"),
        ({"reading": {"kind": "looks pink", "sd": -1}}, "events[a].reading.sd", "at least 0"),
    ],
)
def test_a_wrong_field_is_named(change: dict[str, Any], place: str, says: str) -> None:
    """Guards that a wrong field of an event is named by the event's id."""
    with pytest.raises(RecordError) as caught:
        read_record(written({**TAG, **change}))
    assert f" record {place}: " in str(caught.value)
    assert says in str(caught.value)


@pytest.mark.parametrize("field", ["id", "seq", "result"])
def test_what_must_be_there_is_asked_for(field: str) -> None:
    """Guards the fields without which an event says nothing."""
    event = {key: value for key, value in TAG.items() if key != field}
    with pytest.raises(RecordError, match=f"'{field}' is missing"):
        read_record(written(event))


def test_an_id_of_two_events_is_refused() -> None:
    """Guards that no event is lost because another has its id."""
    with pytest.raises(RecordError, match="has the id 'a'"):
        read_record(written(TAG, {**TAG, "result": "failed"}))


def test_an_event_sent_twice_counts_once() -> None:
    """Guards that a record may be sent again."""
    assert len(read_record(written(TAG, TAG)).in_order()) == 1


def test_events_follow_their_count() -> None:
    """Guards the order: by count, then clock, then device, then as written."""

    def event(name: str, seq: int, at_s: float | None, device: str | None = None) -> Event:
        return Event(id=name, seq=seq, at_s=at_s, device=device, step="x", result="done")

    events = (
        event("e", 2, 9.0, "b"),
        event("d", 2, 9.0, "a"),
        event("c", 2, 5.0),
        event("z", 1, None),
        event("b", 1, None),
    )
    record = Record(schema="wintertight/record/1", events=events)
    assert [e.id for e in record.in_order()] == ["z", "b", "c", "d", "e"]

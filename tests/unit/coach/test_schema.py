import json
import tomllib
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from wintertight.coach.card import Card, Coach, Fitting, Line
from wintertight.coach.kind_fields import FIELD_KINDS
from wintertight.coach.kinds import KINDS
from wintertight.coach.schema import card_schema

ROOT = Path(__file__).parents[3]
COMMITTED = ROOT / "docs/card.schema.json"
DEMO = ROOT / "src/wintertight/demo/cards/middle-travel-trailer.toml"


def test_the_committed_schema_is_current() -> None:
    """Guards docs/card.schema.json against the fields it describes."""
    assert json.loads(COMMITTED.read_text("utf-8")) == card_schema()


def tables(schema: dict[str, Any]) -> Iterator[tuple[str, dict[str, Any]]]:
    """Give every table of the schema and its fields."""
    yield "card", schema["properties"]
    for name, table in schema["$defs"].items():
        yield name, table["properties"]


def test_every_field_is_described() -> None:
    """Guards a title and a description for each field that an editor may show."""
    bare = [
        f"{table}.{name}"
        for table, fields in tables(card_schema())
        for name, field in fields.items()
        if not field.get("title") or not field.get("description")
    ]
    assert bare == []


def test_the_first_card_has_only_fields_of_the_schema() -> None:
    """Guards that the schema spells fields as cards do, and demands nothing a good card lacks."""
    schema, card = card_schema(), tomllib.loads(DEMO.read_text("utf-8"))
    assert set(schema["required"]) <= set(card) <= set(schema["properties"])
    for key, name in (("fitting", "Fitting"), ("line", "Line"), ("compartment", "Compartment")):
        table = schema["$defs"][name]
        for part in card[key]:
            assert set(table["required"]) <= set(part) <= set(table["properties"])


def test_the_table_of_fields_names_what_exists() -> None:
    """Guards the table of kinds and fields against slips of the pen."""
    assert set(FIELD_KINDS) <= set(Fitting.model_fields)
    assert frozenset().union(*FIELD_KINDS.values()) <= set(KINDS)


def test_cards_are_frozen_and_closed() -> None:
    """Guards that every table refuses unknown fields and later change."""
    for model in (Card, Coach, Fitting, Line):
        assert model.model_config["extra"] == "forbid"
        assert model.model_config["frozen"]

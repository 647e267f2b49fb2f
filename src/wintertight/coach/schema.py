"""The JSON Schema of a card, for editors that check while somebody writes.

It describes the fields. Rules across fields (does the plumbing hold together) are not in it.
"""

from typing import Any

from pydantic.json_schema import GenerateJsonSchema, JsonSchemaValue, NoDefault
from pydantic_core import core_schema

from wintertight.coach.card import SCHEMA, Card
from wintertight.coach.kind_fields import FIELD_KINDS

DIALECT = "https://json-schema.org/draft/2020-12/schema"


def card_schema() -> dict[str, Any]:
    """Give the JSON Schema (2020-12) of a card.

    Returns:
        A fresh dictionary; every field has a title and a description.
    """
    schema = Card.model_json_schema(by_alias=True, schema_generator=_Titled, mode="validation")
    line = schema["$defs"]["Line"]
    line["required"] = [name for name in line["required"] if name not in {"size", "material"}]
    fitting = schema["$defs"]["Fitting"]
    fitting["allOf"] = [_only_for(name, sorted(kinds)) for name, kinds in FIELD_KINDS.items()]
    for table in (schema, *schema["$defs"].values()):
        for name, field in table["properties"].items():
            field.setdefault("title", name.replace("_", " "))
    return {"$schema": DIALECT, **schema, "title": f"A coach's card, {SCHEMA}"}


def _only_for(field: str, kinds: list[str]) -> dict[str, Any]:
    return {
        "if": {"required": [field]},
        "then": {"properties": {"kind": {"enum": kinds}}},
    }


class _Titled(GenerateJsonSchema):
    """Titles a field with the words by which the card spells it."""

    def get_title_from_name(self, name: str) -> str:
        """Give "cut off" for cut_off."""
        return name.replace("_", " ")

    def nullable_schema(self, schema: core_schema.NullableSchema) -> JsonSchemaValue:
        """Leave null out: TOML has none, a field is simply not written."""
        return self.generate_inner(schema["schema"])

    def get_default_value(self, schema: core_schema.WithDefaultSchema) -> Any:
        """Tell a default only where a card could write it."""
        default = super().get_default_value(schema)
        return default if isinstance(default, str | int) and default != "" else NoDefault

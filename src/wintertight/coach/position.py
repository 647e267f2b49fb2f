"""Where a fitting stands in the coach, in metres."""

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any, Self

from pydantic import GetCoreSchemaHandler, GetJsonSchemaHandler
from pydantic_core import core_schema

from wintertight.coach.quantity import fault, read_plain


@dataclass(frozen=True, slots=True)
class Position:
    """A place in the coach.

    Attributes:
        along_m: from the front of the coach [m].
        across_m: from the road side [m].
        height_m: above the floor [m]; below the floor is negative.
    """

    along_m: float
    across_m: float
    height_m: float

    def distance_m(self, other: Self) -> float:
        """Give the straight distance to another place [m]."""
        return math.dist(
            (self.along_m, self.across_m, self.height_m),
            (other.along_m, other.across_m, other.height_m),
        )

    @classmethod
    def read(cls, raw: object) -> Self:
        """Read a list of three lengths, as a card writes a position.

        Raises:
            PydanticCustomError: it is no such list; `context["within"]` is the place in the list.
        """
        if isinstance(raw, cls):
            return raw
        if not isinstance(raw, Sequence) or isinstance(raw, str) or len(raw) != _AXES:
            message = "expected three lengths: from the front, from the road side, above the floor"
            raise fault(message)
        return cls(*(read_plain(length, "length", place) for place, length in enumerate(raw)))

    @classmethod
    def __get_pydantic_core_schema__(
        cls, _source: Any, _handler: GetCoreSchemaHandler
    ) -> core_schema.CoreSchema:
        """Read through `read`."""
        return core_schema.no_info_plain_validator_function(cls.read)

    @classmethod
    def __get_pydantic_json_schema__(
        cls, _schema: core_schema.CoreSchema, _handler: GetJsonSchemaHandler
    ) -> dict[str, Any]:
        """Describe the list of three lengths."""
        return {
            "type": "array",
            "items": {"type": "string", "description": "a length with its unit"},
            "minItems": _AXES,
            "maxItems": _AXES,
            "examples": [["12 ft", "3 ft", "0.3 ft"]],
        }


_AXES = 3

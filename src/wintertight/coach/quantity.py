"""A quantity on a card: its value, how we know it, and how far off it may be.

On a card a quantity is written in one of two ways:

    length = "27 ft"                                  somebody told us
    length = { guessed = "9 ft", spread = "25 %" }    measured, told or guessed, with its spread

The spread is the half-width of the band that holds the true value about nineteen times in twenty
(two standard deviations of a normal law), relative to the value. Where a card gives none, the
usual spread of each way of knowing is taken; these are common practice, not published figures.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Annotated, Any, Literal, Self, get_args

from pydantic import GetCoreSchemaHandler, GetJsonSchemaHandler
from pydantic_core import PydanticCustomError, core_schema

from wintertight.errors import QuantityError
from wintertight.units import Dimension, parse_quantity

How = Literal["measured", "told", "guessed"]

WAYS: tuple[How, ...] = get_args(How)

USUAL_SPREAD: Mapping[How, float] = MappingProxyType(
    {"measured": 0.02, "told": 0.10, "guessed": 0.25}
)
"""Relative half-width taken where a card gives none [1]; common practice."""


@dataclass(frozen=True, slots=True)
class Quantity:
    """A positive value with what is known about it.

    Attributes:
        value: best value, in the SI unit of its dimension.
        how: measured by us, told to us, or guessed.
        spread: relative half-width, about two standard deviations [1], 0 to below 1.
    """

    value: float
    how: How
    spread: float

    @classmethod
    def known(cls, value: float, how: How = "told") -> Self:
        """Give a quantity with the usual spread of this way of knowing."""
        return cls(value, how, USUAL_SPREAD[how])

    @property
    def low(self) -> float:
        """Lower end of the band."""
        return self.value * (1.0 - self.spread)

    @property
    def high(self) -> float:
        """Upper end of the band."""
        return self.value * (1.0 + self.spread)


def read_quantity(raw: object, dimension: Dimension) -> Quantity:
    """Read a quantity as a card writes it.

    Args:
        raw: text such as "27 ft", or a table with exactly one of measured, told, guessed and, if
            wanted, a spread.
        dimension: what the text must measure, by its name in `wintertight.units`.

    Returns:
        The quantity in SI.

    Raises:
        PydanticCustomError: it cannot be read; `context["within"]` names the key at fault.
    """
    if isinstance(raw, Quantity):
        return raw
    if not isinstance(raw, Mapping):
        return Quantity.known(_positive(read_plain(raw, dimension), ""))
    ways = [way for way in WAYS if way in raw]
    strange = [str(key) for key in raw if key not in {*WAYS, "spread"}]
    if strange:
        message = f"'{strange[0]}' is not known here; expected {_THE_KEYS}"
        raise fault(message, strange[0])
    if len(ways) != 1:
        message = f"expected {_THE_KEYS}, not {' and '.join(ways) or 'none of the three'}"
        raise fault(message)
    way = ways[0]
    value = _positive(read_plain(raw[way], dimension, way), way)
    if "spread" not in raw:
        return Quantity.known(value, way)
    spread = read_plain(raw["spread"], "share", "spread")
    if not 0.0 <= spread < 1.0:
        message = 'expected a spread from 0 % to below 100 %, such as "20 %"'
        raise fault(message, "spread")
    return Quantity(value, way, spread)


def read_plain(raw: object, dimension: Dimension, within: str | int = "") -> float:
    """Read text such as "-0.7 ft" to its SI value [SI unit of the dimension].

    Raises:
        PydanticCustomError: it is not text, or `wintertight.units` cannot read it so.
    """
    if not isinstance(raw, str) and dimension != "share":
        example = EXAMPLES.get(dimension, "27 ft")
        unit_missing = isinstance(raw, int | float) and not isinstance(raw, bool)
        said = "a bare number" if unit_missing else _named(raw)
        message = f'expected a {dimension} with its unit in quotes, "{example}", not {said}'
        raise fault(message, within)
    try:
        return parse_quantity(raw, dimension)
    except QuantityError as error:
        raise fault(error.message, within) from error


def fault(message: str, within: str | int = "") -> PydanticCustomError:
    """Make the error pydantic carries for an unreadable quantity; `within` is the key at fault."""
    return PydanticCustomError("WT-110", "{text}", {"text": message, "within": within})


EXAMPLES: Mapping[Dimension, str] = MappingProxyType(
    {
        "length": "27 ft",
        "volume": "6 gal",
        "flow": "3 gal/min",
        "pressure": "55 psi",
        "temperature": "-15 degF",
        "share": "20 %",
        "time": "4 min",
    }
)
"""One way of writing each dimension, for messages and the schema."""

_THE_KEYS = "exactly one of measured, told, guessed, and a spread if it is known"


def _positive(value: float, within: str) -> float:
    if value <= 0.0:
        message = "expected a value above zero"
        raise fault(message, within)
    return value


def _named(raw: object) -> str:
    names = {bool: "true or false", list: "a list", dict: "a table"}
    return names.get(type(raw), f"a {type(raw).__name__}")


@dataclass(frozen=True, slots=True)
class Measures:
    """Marks a `Quantity` field of a card with the dimension that its text must have."""

    dimension: Dimension

    def __get_pydantic_core_schema__(
        self, _source: Any, _handler: GetCoreSchemaHandler
    ) -> core_schema.CoreSchema:
        """Read through `read_quantity`; write value, how and spread."""
        return core_schema.no_info_plain_validator_function(
            lambda raw: read_quantity(raw, self.dimension),
        )

    def __get_pydantic_json_schema__(
        self, _schema: core_schema.CoreSchema, _handler: GetJsonSchemaHandler
    ) -> dict[str, Any]:
        """Describe both ways of writing it."""
        text = _text_schema(self.dimension)
        share = {**_text_schema("share"), "description": "relative half-width, about two sigma"}
        properties: dict[str, Any] = {**dict.fromkeys(WAYS, text), "spread": share}
        keyed = {
            "type": "object",
            "properties": properties,
            "oneOf": [{"required": [way]} for way in WAYS],
            "additionalProperties": False,
        }
        return {"anyOf": [text, keyed]}


@dataclass(frozen=True, slots=True)
class Plain:
    """Marks a float field of a card that is written as text with its unit and carries no spread.

    Limits of pydantic's own do not reach a text that is read here, so the sign is asked for here.
    """

    dimension: Dimension
    positive: bool = False

    def __get_pydantic_core_schema__(
        self, _source: Any, _handler: GetCoreSchemaHandler
    ) -> core_schema.CoreSchema:
        """Read through `read_plain`."""
        return core_schema.no_info_plain_validator_function(self._read)

    def _read(self, raw: object) -> float:
        value = read_plain(raw, self.dimension)
        return _positive(value, "") if self.positive else value

    def __get_pydantic_json_schema__(
        self, _schema: core_schema.CoreSchema, _handler: GetJsonSchemaHandler
    ) -> dict[str, Any]:
        """Describe the text."""
        return _text_schema(self.dimension)


def _text_schema(dimension: Dimension) -> dict[str, Any]:
    return {
        "type": "string",
        "description": f"a {dimension} with its unit",
        "examples": [EXAMPLES.get(dimension, "27 ft")],
    }


Length = Annotated[Quantity, Measures("length")]
Volume = Annotated[Quantity, Measures("volume")]
Flow = Annotated[Quantity, Measures("flow")]
Pressure = Annotated[Quantity, Measures("pressure")]
Metres = Annotated[float, Plain("length")]
MetresAboveZero = Annotated[float, Plain("length", positive=True)]
DegreesCelsius = Annotated[float, Plain("temperature")]
Share = Annotated[float, Plain("share")]
CubicMetresPerSecond = Annotated[float, Plain("flow", positive=True)]
Pascals = Annotated[float, Plain("pressure", positive=True)]
Seconds = Annotated[float, Plain("time", positive=True)]
CubicMetres = Annotated[float, Plain("volume", positive=True)]

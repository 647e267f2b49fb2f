import math
import time

import pytest
from pint import UnitRegistry

from wintertight import units
from wintertight.errors import QuantityError
from wintertight.units import Dimension, System, in_words, parse_quantity


@pytest.mark.parametrize(
    ("text", "dimension", "wanted"),
    [
        ("27 ft", "length", 8.2296),
        ("12 ft 3 in", "length", 3.7338),
        ("12' 3\"", "length", 3.7338),
        ("1/2 in", "length", 0.0127),
        ("1 1/2 in", "length", 0.0381),
        ("-2 ft", "length", -0.6096),
        ("6 gal", "volume", 0.02271247),
        ("0.9 L", "volume", 0.0009),
        ("1 gal 2 qt", "volume", 0.00567812),
        ("1.83 fl oz", "volume", 5.41196e-5),
        ("3 gpm", "flow", 1.892706e-4),
        ("3 gal/min", "flow", 1.892706e-4),
        ("2.5 cfm", "flow", 1.179869e-3),
        ("55 psi", "pressure", 379211.7),
        ("30 min", "time", 1800.0),
        ("1 min 20 s", "time", 80.0),
        ("35 %", "share", 0.35),
        ("5.25%", "share", 0.0525),
        ("50 ppm", "share", 5e-5),
        ("0.30", "share", 0.30),
        (0.30, "share", 0.30),
        (1, "share", 1.0),
        ("2 lb", "mass", 0.90718474),
        ("180 deg", "angle", math.pi),
        ("-20F", "temperature", -28.888889),
        ("-20 degF", "temperature", -28.888889),
        ("-20 °F", "temperature", -28.888889),
        ("\u221220 °F", "temperature", -28.888889),
        ("-29 degC", "temperature", -29.0),
        ("-29C", "temperature", -29.0),
        ("250 K", "temperature", -23.15),
        ("2 furlong", "length", 402.336),
        ("55 PSI", "pressure", 379211.7),
        ("3 acre_foot", "volume", None),
    ],
)
def test_reads_what_people_write(text: object, dimension: Dimension, wanted: float | None) -> None:
    """Guards that the usual ways to write a quantity are read to the right SI value."""
    if wanted is None:
        with pytest.raises(QuantityError):
            parse_quantity(text, dimension)
    else:
        assert parse_quantity(text, dimension) == pytest.approx(wanted, rel=1e-5)


@pytest.mark.parametrize(
    ("text", "dimension"),
    [
        ("12", "length"),
        (12, "length"),
        (12.0, "temperature"),
        ("", "length"),
        ("   ", "volume"),
        (None, "time"),
        (True, "share"),
        (["1 ft"], "length"),
        ("ft", "length"),
        ("12 gal", "length"),
        ("3 ft", "volume"),
        ("nan ft", "length"),
        ("inf ft", "length"),
        ("1e999 ft", "length"),
        ("1e400F", "temperature"),
        ("-300 C", "temperature"),
        ("20", "temperature"),
        ("3 F", "length"),
        ("5 C", "pressure"),
        ("5 m", "temperature"),
        ("-6 gal", "volume"),
        ("-1 min", "time"),
        ("140 %", "share"),
        ("35", "share"),
        (float("nan"), "share"),
        ("-0.1", "share"),
        ("35 ft", "share"),
        ("3 in 12 ft", "length"),
        ("3 ft 4 gal", "length"),
        ("3 gpm 2 gpm", "flow"),
        ("1/0 in", "length"),
        ("__import__('os')", "length"),
        ("9**9**9 ft", "length"),
        ("2 * 3 ft", "length"),
        ("1,5 m", "length"),
        ("5 wombat", "length"),
        ("5 m m", "length"),
        ("9" * 100_000 + " ft", "length"),
        ("(" * 60, "length"),
        ("1 m\x00", "length"),
    ],
)
def test_refuses_what_is_no_quantity(text: object, dimension: Dimension) -> None:
    """Guards that a wrong quantity is refused at once, in one line with an example."""
    started = time.perf_counter()
    with pytest.raises(QuantityError) as caught:
        parse_quantity(text, dimension)
    assert time.perf_counter() - started < 2.0
    said = str(caught.value)
    assert said.startswith("WT-110 expected a")
    assert "such as" in said
    assert "\n" not in said
    assert len(said) < 200


def test_refusal_reads_as_promised() -> None:
    """Guards the wording of a refusal."""
    with pytest.raises(QuantityError) as caught:
        parse_quantity("12", "length")
    assert caught.value.message == (
        'expected a length with its unit, such as "12 ft" or "3.6 m"; got "12"'
    )


def test_the_table_of_units_agrees_with_pint() -> None:
    """Guards each factor of the table against an independent library of units."""
    registry: UnitRegistry[float] = UnitRegistry()
    names = {
        "gal/min": "gallon/minute", "gpm": "gallon/minute", "gph": "gallon/hour",
        "gal/h": "gallon/hour", "lpm": "liter/minute", "cfm": "foot**3/minute",
        "fl oz": "fluid_ounce", "floz": "fluid_ounce", "'": "foot", '"': "inch", "lbs": "lb",
        "ft3": "foot**3", "in3": "inch**3", "cm3": "cm**3", "m3": "m**3", "m3/s": "m**3/s",
        "m3/h": "m**3/hour", "ft3/min": "foot**3/minute", "cups": "cup", "°": "degree",
        "%": "percent", "pt": "pint",
    }  # fmt: skip
    for dimension, table in units._FACTORS.items():  # noqa: SLF001 - the table is what is checked
        for word, factor in table.items():
            theirs = registry.Quantity(1.0, names.get(word, word))
            si = units._SI[dimension]  # noqa: SLF001
            assert theirs.to(si).magnitude == pytest.approx(factor, rel=1e-9), word


@pytest.mark.parametrize(
    ("value", "dimension", "system", "wanted"),
    [
        (0.0098, "volume", "us", "2.6 gal"),
        (0.0098, "volume", "metric", "9.8 L"),
        (0.00015, "volume", "us", "5.1 fl oz"),
        (0.00025, "volume", "metric", "250 mL"),
        (0.15, "volume", "us", "40 gal"),
        (-26.111, "temperature", "us", "-15 °F"),
        (-17.78, "temperature", "us", "0 °F"),
        (-26.1, "temperature", "metric", "-26.1 °C"),
        (-0.01, "temperature", "metric", "0 °C"),
        (35, "time", "us", "35 s"),
        (80, "time", "metric", "1 min 20 s"),
        (120, "time", "us", "2 min"),
        (3595, "time", "us", "59 min 55 s"),
        (3900, "time", "us", "1 h 5 min"),
        (7199, "time", "us", "2 h"),
        (1.016, "length", "us", "3 ft 4 in"),
        (0.3047, "length", "us", "1 ft"),
        (0.0127, "length", "us", "0.5 in"),
        (1.2, "length", "metric", "1.2 m"),
        (0.0123, "length", "metric", "12.3 mm"),
        (1.892706e-4, "flow", "us", "3 gal/min"),
        (1.892706e-4, "flow", "metric", "11.4 L/min"),
        (379212.0, "pressure", "us", "55 psi"),
        (379212.0, "pressure", "metric", "379 kPa"),
        (0.35, "share", "us", "35 %"),
        (5e-5, "share", "us", "50 ppm"),
        (0.0, "share", "us", "0 %"),
        (0.9, "mass", "metric", "900 g"),
        (math.pi / 4, "angle", "us", "45 deg"),
    ],
)
def test_says_a_quantity_as_in_the_shop(
    value: float, dimension: Dimension, system: System, wanted: str
) -> None:
    """Guards how quantities are said on paper and screen."""
    assert in_words(value, dimension, system) == wanted

"""The docstring reader reads what we write, and can tell a wrong docstring from a right one."""

from tests.architecture.docstring_reader import read, units_in

GOOD = """Give the pressure lost in a line.

    Formula: dp = f L/D rho v^2/2.

    Args:
        length_m: length [m], 0 to 100.
        speed_m_s (float): mean speed [m/s]; a long
            description goes on, with key: value in it.
        **more: passed on.

    Returns:
        Pressure lost [Pa].

    Raises:
        OutOfRange: the length is negative.

    Sources:
        churchill: eq. 12, and
            a second line of its place.
        white, table 6.1.

    Example:
        >>> 1 + 1
        2
    """


def test_summary_is_the_first_paragraph() -> None:
    """Guards that the summary ends at the first empty line."""
    assert read(GOOD).summary == "Give the pressure lost in a line."
    assert read("One\n    line.").summary == "One line."
    assert read(None).summary == ""


def test_entries_are_the_parameters_in_order() -> None:
    """Guards that types, stars and continued lines do not hide or add a parameter."""
    entries = read(GOOD).entries("Args")
    assert list(entries) == ["length_m", "speed_m_s", "more"]
    assert entries["speed_m_s"].endswith("with key: value in it.")


def test_units_are_found_where_they_stand() -> None:
    """Guards that units are taken from the named section only."""
    assert read(GOOD).units("Args") == ["m", "m/s"]
    assert read(GOOD).units("Returns") == ["Pa"]
    assert read(GOOD).units("Raises") == []


def test_brackets_that_are_no_unit() -> None:
    """Guards that types, intervals, indices and links are not taken for units."""
    assert units_in("dict[str, float], x[0], [0, 60], [a](b)") == []


def test_unit_behind_a_bracket_or_comma() -> None:
    """Guards units before punctuation and inside parentheses."""
    assert units_in("flow [m3/s], loss ([Pa]); share [1].") == ["m3/s", "Pa", "1"]


def test_source_keys_with_colon_comma_and_continuation() -> None:
    """Guards that a key ends before its place, and a continued place is no key."""
    assert read(GOOD).source_keys() == ["churchill", "white"]


def test_sources_on_one_line() -> None:
    """Guards the short form: semicolons part keys, remarks are passed over."""
    line = "Sources: crc 6-1 (read; not copied); lange: 5.13; The mean follows from it."
    assert read(f"Give.\n\n    {line}").source_keys() == ["crc", "lange"]


def test_sources_that_start_with_prose_are_no_key() -> None:
    """Guards that a line without a key gives its first word, which no bibliography has."""
    assert read("Give.\n\n    Sources: the book.").source_keys() == ["the"]


def test_a_wrong_docstring_reads_differently() -> None:
    """Guards that a dropped parameter and a changed unit can be seen at all."""
    wrong = read(GOOD.replace("length_m: length [m]", "width_m: width [inch]"))
    assert "length_m" not in wrong.entries("Args")
    assert wrong.units("Args")[0] == "inch"


def test_a_section_ends_at_the_next_text_on_the_margin() -> None:
    """Guards that prose after a section is not read as part of it."""
    text = "Give.\n\n    Args:\n        x: length [m].\n\n    Width in [inch] is not asked for.\n"
    assert read(text).units("Args") == ["m"]

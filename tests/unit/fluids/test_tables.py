from pathlib import Path

import pytest

import wintertight.fluids
from wintertight.fluids.tables import read_table, table_names
from wintertight.sources import SOURCES


@pytest.mark.parametrize("name", table_names())
def test_each_table_says_where_it_comes_from(name: str) -> None:
    """Guards that every shipped table names a source of the bibliography and the place in it."""
    table = read_table(name)
    assert table.head["source"] in SOURCES
    assert table.head["place"]
    assert len({len(column) for column in table.columns.values()}) == 1


def test_every_shipped_table_is_listed() -> None:
    """Guards the list of tables against the files that are shipped."""
    folder = Path(wintertight.fluids.__file__).parent / "data"
    assert table_names() == tuple(sorted(path.stem for path in folder.glob("*.csv")))
    assert len(table_names()) > 1

import pytest

from wintertight.fluids.tables import read_table, table_names
from wintertight.sources import SOURCES


@pytest.mark.parametrize("name", table_names())
def test_each_table_says_where_it_comes_from(name: str) -> None:
    """Guards that every shipped table names a source of the bibliography and the place in it."""
    table = read_table(name)
    assert table.head["source"] in SOURCES
    assert table.head["place"]
    assert len({len(column) for column in table.columns.values()}) == 1

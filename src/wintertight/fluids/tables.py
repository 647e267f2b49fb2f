"""Read the tables shipped in ``data/``.

Each file is named after author, edition and table, holds its values as they are printed, and says
its source in the comment lines at its head (``# word: text``).
"""

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from importlib import resources
from types import MappingProxyType


@dataclass(frozen=True, slots=True)
class Table:
    """One shipped table.

    Attributes:
        name: name of the file without its ending.
        head: the comment lines, word by word.
        columns: each column's values, in the units its name ends with.
    """

    name: str
    head: Mapping[str, str]
    columns: Mapping[str, tuple[float, ...]]


def table_names() -> tuple[str, ...]:
    """Give the names of all shipped tables, in order."""
    files = resources.files(__package__).joinpath("data").iterdir()
    return tuple(sorted(f.name.removesuffix(".csv") for f in files if f.name.endswith(".csv")))


@cache
def read_table(name: str) -> Table:
    """Read one table; it is read only once.

    Args:
        name: name of the file without its ending.

    Returns:
        The table.

    Example:
        >>> table = read_table("lange_15th_edition_table_5_13_ethanol")
        >>> table.head["source"], table.columns["freezing_point_degC"][-1]
        ('lange', -28.7)
    """
    file = resources.files(__package__).joinpath("data", f"{name}.csv")
    lines = file.read_text(encoding="utf-8").splitlines()
    head = (line.removeprefix("#").partition(":") for line in lines if line.startswith("#"))
    names, *rows = [line.split(",") for line in lines if line and not line.startswith("#")]
    columns = {
        column: tuple(float(value) for value in values)
        for column, values in zip(names, zip(*rows, strict=True), strict=True)
    }
    return Table(
        name=name,
        head=MappingProxyType({word.strip(): text.strip() for word, _, text in head}),
        columns=MappingProxyType(columns),
    )

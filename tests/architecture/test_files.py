"""Files stay small and are named after what they are about."""

import pytest

from tests.architecture.tree import files, shown

LONGEST = 400
NO_SUBJECT = frozenset({"utils", "util", "helpers", "helper", "common", "core", "misc"})


def test_no_file_is_too_long() -> None:
    """Guards that no Python file has more than 400 lines."""
    lengths = {shown(f): len(f.read_text(encoding="utf-8").splitlines()) for f in files(".py")}
    assert {name: n for name, n in lengths.items() if n > LONGEST} == {}


@pytest.mark.parametrize("prefix", ["", "test_"])
def test_names_have_a_subject(prefix: str) -> None:
    """Guards that no file or folder has a name that says nothing."""
    names = {prefix + name for name in NO_SUBJECT}
    paths = [f for f in files(".py") if names & {f.stem, *f.parent.parts}]
    assert [shown(f) for f in paths] == []

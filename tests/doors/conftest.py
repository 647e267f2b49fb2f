"""What tests at the command line share."""

import pytest

from tests.doors.door import Door


@pytest.fixture
def door(capsys: pytest.CaptureFixture[str]) -> Door:
    """Give a door to run commands at."""
    return Door(capsys)

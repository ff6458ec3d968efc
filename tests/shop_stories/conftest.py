"""What stories share that start programs themselves."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from pytestqt.qtbot import QtBot

from desktop_app.program import Program


@pytest.fixture
def started(qtbot: QtBot) -> Iterator[list[Program]]:
    """Programs that were started; they are closed at the end."""
    programs: list[Program] = []
    yield programs
    for program in programs:
        program.close()
        program.window.deleteLater()

"""The computer's clock was set back a year: the window opens, and says so with both days."""

from __future__ import annotations

from datetime import UTC, datetime
from pathlib import Path

from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs import actions
from tests.shop_stories.counter import sitting


def test_a_clock_that_was_set_back_is_said_at_the_start(qtbot: QtBot, tmp_path: Path) -> None:
    with sitting(qtbot, tmp_path / "shop", datetime(2026, 11, 23, 8, 0, tzinfo=UTC)) as at:
        assert at.program.desk is not None
        at.program.desk.do(actions.add_person, "Tuuli")
        assert not at.reads("clock says")
    with sitting(qtbot, tmp_path / "shop", datetime(2025, 11, 23, 8, 0, tzinfo=UTC)) as at:
        at.wait_for("clock says 2025-11-23")
        assert at.reads("2026-11-23")
        at.go("Heard")
        assert at.reads("Set the clock right")

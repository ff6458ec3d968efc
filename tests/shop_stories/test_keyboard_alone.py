"""The main job with the mouse unplugged."""

from __future__ import annotations

from datetime import UTC, datetime
from pathlib import Path

from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs.stored_reading import read_job
from tests.shop_stories.counter import Counter, sitting

MONDAY = datetime(2026, 3, 2, 8, 0, tzinfo=UTC)
CONTROL = Qt.KeyboardModifier.ControlModifier


def keys(at: Counter, name: str, text: str) -> None:
    at.bot.keyClicks(at.tab_to(name), text)


def test_a_job_is_taken_in_found_out_and_handed_over_by_keys(qtbot: QtBot, tmp_path: Path) -> None:
    with sitting(qtbot, tmp_path / "shop", MONDAY) as at:
        qtbot.keyClick(at.window, Qt.Key.Key_N, CONTROL)
        qtbot.waitUntil(lambda: at.window.here() == "Heard")
        keys(at, "Plate", "TH 1042")
        keys(at, "Odometer", "118420")
        keys(at, "What the customer says", "clonks over bumps")
        qtbot.keyClick(at.tab_to("Take the car in"), Qt.Key.Key_Space)
        qtbot.waitUntil(lambda: at.window.here() == "Job")
        qtbot.keyClick(at.window, Qt.Key.Key_2, CONTROL)
        keys(at, "Trouble codes, found", "C0035")
        qtbot.keyClick(at.window.focusWidget(), Qt.Key.Key_Return)
        keys(at, "Cause", "link worn, shown by play")
        at.leave()
        keys(at, "Part kind", "brake pads")
        qtbot.keyClick(at.tab_to("Lay old and new side by side"), Qt.Key.Key_Space)
        at.wait_for("not enough measured")
        keys(at, "lining thickness, removed", "4.1 4.0 4.1")
        qtbot.keyClick(at.window.focusWidget(), Qt.Key.Key_Return)
        qtbot.keyClicks(at.window.focusWidget(), "11.2; 11.1; 11.2")
        qtbot.keyClick(at.window.focusWidget(), Qt.Key.Key_Return)
        at.wait_for("restored")
        for _ in range(2):
            qtbot.keyClick(at.tab_to("origin of the new part"), Qt.Key.Key_Down)
        keys(at, "What was done", "link and pads replaced")
        at.leave()
        level = at.tab_to("Proved:")  # one step of the ladder; the arrows go up and down it
        while level.accessibleName() != "Proved: road":
            qtbot.keyClick(level, Qt.Key.Key_Right)
            level = at.tab_to("Proved:")
        qtbot.keyClick(level, Qt.Key.Key_Space)
        qtbot.keyClick(at.tab_to("Nothing was declined"), Qt.Key.Key_Space)
        qtbot.keyClick(at.tab_to("Hand the car over"), Qt.Key.Key_Space)
        at.wait_for("Someone can get hurt where these are left out")
        qtbot.keyClick(at.tab_to("Hand over all the same"), Qt.Key.Key_Space)
        at.wait_for("Left on 2 March 2026")
        desk = at.program.desk
        assert desk is not None
        job = desk.ask(read_job, 1)
        assert job.proof_level == 2
        assert job.declined == "nothing"
        assert [code.code for code in job.codes] == ["C0035"]

"""Years of old jobs from another program's table are brought in before lunch, by keys alone."""

from __future__ import annotations

from datetime import UTC, datetime
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFileDialog, QLineEdit
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs.stored_reading import job_by_number
from tests.screens.records_page import old_jobs
from tests.shop_stories.counter import Counter, sitting

MONDAY = datetime(2026, 3, 2, 8, 0, tzinfo=UTC)
HEAD = "RO #;Date In;Out;Reg;Odo;Complaint;Fault found;Repair;Parts;Total;Shelf"
ROWS = (
    "R-1;03/04/2024;04/04/2024;TH 1;90.100;misses when damp;cap tracked;cap renewed;cap;84,50;A1",
    "R-2;05/06/2024;05/06/2024;TH 2;91.200;misses when wet;cap tracked;cap renewed;cap;84,50;A2",
    "R-3;07/08/2024;07/08/2024;TH 3;about 90;squeals;glazed;pads renewed;pads;120,00;B1",
)


def press(at: Counter, name: str) -> None:
    at.bot.keyClick(at.tab_to(name), Qt.Key.Key_Space)


def test_old_records_are_brought_in_and_found(
    qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    file = old_jobs(tmp_path / "from the old program.csv", *ROWS, head=HEAD)
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_: (str(file), ""))
    with sitting(qtbot, tmp_path / "shop", MONDAY) as at:
        at.go("Records In and Out")
        at.picture(tmp_path, "nothing-chosen")
        press(at, "Choose a file")
        at.wait_for("3 rows below the headers, parted by semicolons")
        at.picture(tmp_path, "columns-guessed")
        press(at, "day first: 3 April 2024")
        press(at, "miles")
        press(at, "See what would happen")
        at.wait_for("What would become of 3 rows: 2 new, 0 changed, 0 as they were, 1 turned away.")
        at.picture(tmp_path, "what-would-happen")
        press(at, "Bring 2 rows in")
        at.wait_for("Undo takes all of it back")
        at.quiet()
        at.picture(tmp_path, "brought-in")
        press(at, "Open job R-2")
        qtbot.waitUntil(lambda: at.window.here() == "Job")
        at.wait_for("R-2")
        at.go("Ask the Old Jobs")
        at.type_into(QLineEdit, "Ask the old jobs", "misses in the rain")

        at.wait_for("What was done here before")
        at.press("Undo: Import")
        at.quiet()
        at.go("Records In and Out")
        at.wait_for("“Import from the old program.csv” was undone")
        desk = at.program.desk
        assert desk is not None
        assert desk.ask(job_by_number, "R-2") is None

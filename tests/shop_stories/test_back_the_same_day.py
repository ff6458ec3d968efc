"""A car that left at ten is back at three: it's offered, judged, and counted on Monday."""

from __future__ import annotations

from datetime import UTC, datetime
from pathlib import Path

import pytest
from openpyxl import load_workbook
from PySide6.QtWidgets import QFileDialog, QLineEdit, QListView
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs.actions import add_person
from tests.shop_stories.counter import Counter, sitting
from tests.shop_stories.one_job import find_the_cause, finish, open_job, take_in


def o_clock(hour: int) -> datetime:
    """A time of one Monday, by the clock of the counter."""
    return datetime(2026, 3, 2, hour, 5, tzinfo=UTC)


def mend_and_hand_over(at: Counter) -> None:
    open_job(at)
    find_the_cause(at)
    finish(at)
    at.press("Hand the car over")
    at.wait_for("Left on 2 March 2026")


def test_a_car_that_comes_back_on_the_day_it_left_is_a_comeback(
    qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    shop, book = tmp_path / "shop", tmp_path / "week.xlsx"
    with sitting(qtbot, shop, o_clock(8)) as at:
        desk = at.program.desk
        assert desk is not None
        desk.do(add_person, "Odile")
        take_in(at, "misses when damp", "118,420")
    with sitting(qtbot, shop, o_clock(10)) as at:
        mend_and_hand_over(at)
    with sitting(qtbot, shop, o_clock(15)) as at:
        take_in(at, "it misses again", "118,431")
        # The earlier job is offered beside the new one, then and now.
        at.press("Is it J-101 again?")
        qtbot.waitUntil(lambda: at.window.here() == "It's Back")
        at.quiet()
        at.wait_for("same symptom: misfire")
        assert at.reads("0 days, 11 mi after hand-over, inside the window")
        assert at.button("Then: J-101").isEnabled()
        at.press("Same symptom:")
        at.press("Odile")
        at.quiet()
        assert "J-102 after J-101" in at.find(QListView, "Returns").model().index(0, 0).data()
        assert at.reads("Nothing waits for a judgement.")
        # What it came back with is no doubt about what it came and left with in the morning.
        open_job(at)
        assert not at.reads("but on 2 March 2026 it said")
        # The weekly book counts it.
        monkeypatch.setattr(
            QFileDialog, "getSaveFileName", lambda *_a, **_k: (str(book), "Workbook (*.xlsx)")
        )
        at.go("Monday Book")
        at.type_into(QLineEdit, "Week, such as 2026-W47", "2026-W10", enter=True)
        at.quiet()
        at.press("Write the week")
        at.quiet()
        assert at.reads("1 visit of the week counts as a comeback.")
    sheet = load_workbook(book, data_only=True)["Came back"]
    rows = [tuple(map(str, row)) for row in sheet.iter_rows(values_only=True)]
    heads = next(row for row in rows if "Days" in row)
    back = next(row for row in rows[rows.index(heads) :] if "J-102" in row)
    said = dict(zip(heads, back, strict=True))
    assert (said["Came on"], said["Days"], said["Miles"]) == ("2026-03-02 00:00:00", "0", "11")
    assert said["Counts as"] == "comeback"

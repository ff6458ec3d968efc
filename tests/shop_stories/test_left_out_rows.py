"""Rows left out of a table stay left out until tomorrow, and nobody takes them for all."""

from __future__ import annotations

from datetime import UTC, datetime
from pathlib import Path

from PySide6.QtWidgets import QLineEdit, QTableView
from pytestqt.qtbot import QtBot

from desktop_app.commands.shop_place import new_place
from desktop_app.shop_window.place_names import WATCH
from tests.shop_stories.counter import Counter, sitting
from tests.watched_shop import a_week_of_returns

MONDAY = datetime(2026, 11, 16, 8, 0, tzinfo=UTC)
LEFT_OUT = "Rows shown: 2 of 6, those with “TIN 03”."


def rows(at: Counter) -> int:
    at.go(WATCH)
    return at.find(QTableView, "Jobs under watch").model().rowCount()


def test_what_is_looked_for_stands_there_the_next_day(qtbot: QtBot, tmp_path: Path) -> None:
    shop = tmp_path / "shop"
    record = new_place(shop, lambda: MONDAY)
    a_week_of_returns(record)
    record.close()
    with sitting(qtbot, shop, MONDAY) as at:
        assert rows(at) == 6
        assert not at.reads("Rows shown")
        at.type_into(QLineEdit, "Show only rows with these words: Jobs under watch", "TIN 03")
        assert at.reads(LEFT_OUT)
    with sitting(qtbot, shop, MONDAY) as at:
        assert rows(at) == 2
        assert at.reads(LEFT_OUT)
        assert at.reads("6 windows are open")
        at.press("Show all rows: Jobs under watch")
        assert rows(at) == 6
    with sitting(qtbot, shop, MONDAY) as at:
        assert rows(at) == 6

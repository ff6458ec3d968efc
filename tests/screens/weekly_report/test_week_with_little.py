"""Monday Book of a shop that wrote little: no chart without a line, no nought for a silence."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QListWidget
from pytestqt.qtbot import QtBot

from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from desktop_app.weekly_report.screen.chart_view import ChartView
from desktop_app.weekly_report.screen.monday_book_page import MondayBookPage
from tests.watched_shop import job, vehicle

WAIT = 20_000  # ms; the library for many rows is read from disk the first time


def test_what_is_not_there_yet_is_said_in_words(shop: ShopRecord, desk: Desk, qtbot: QtBot) -> None:
    job(shop, vehicle(shop), "J-1", "2026-11-12", "2026-11-13", proof_level=4)
    page = MondayBookPage(desk, {})
    qtbot.addWidget(page)
    page.resize(1100, 760)
    page.show()
    page.came_here()

    def words() -> set[str]:
        return {one.text() for one in page.findChildren(QLabel) if one.isVisibleTo(page)}

    def turned_to(sheet: str, begins: str) -> set[str]:
        """Turn to a sheet; once something is read that begins so, return all words read there."""
        sheets = page.findChild(QListWidget)
        exactly = Qt.MatchFlag.MatchExactly
        qtbot.waitUntil(lambda: bool(sheets.findItems(sheet, exactly)), timeout=WAIT)
        [item] = sheets.findItems(sheet, exactly)
        qtbot.mouseClick(
            sheets.viewport(), Qt.MouseButton.LeftButton, pos=sheets.visualItemRect(item).center()
        )
        qtbot.waitUntil(lambda: any(one.startswith(begins) for one in words()), timeout=WAIT)
        return words()

    first = turned_to("Read first", "Not written on any job.")
    assert "0.00" not in first
    assert "$0.00" not in first
    turned_to("Left this week", "Proof, “in doubt”: that level was chosen")
    rate = turned_to("Rate", "A curve of returns that has one point")
    assert any(one.startswith("Not drawn yet: no counted job") for one in rate)
    charts = [one for one in page.findChildren(ChartView) if one.isVisibleTo(page)]
    assert [one.table_name() for one in charts] == ["Weeks"]

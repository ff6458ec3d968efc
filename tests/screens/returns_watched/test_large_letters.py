"""Under Watch and It's Back in large letters: below each other what has no room side by side."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QApplication, QLabel, QScrollArea, QTableView, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.returns_watched.screen.then_and_now import ThenAndNow
from desktop_app.returns_watched.screen.under_watch_page import UnderWatchPage
from desktop_app.returns_watched.screen.watch_plane import WatchPlane
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.look import dress
from tests.screens.judging_page import button, choose, opened, settle
from tests.watched_shop import a_week_of_returns

ROOM = (1000, 620)  # beside the rail, in a window of 1366 by 768
LINES = ("In the shop", "Concern", "Cause", "Correction")


def at(widget: QWidget, page: QWidget) -> QPoint:
    return widget.mapTo(page, QPoint())


def test_under_watch_the_plate_and_all_words_of_a_job_are_read(
    app: QApplication, shop: ShopRecord, desk: Desk, qtbot: QtBot
) -> None:
    a_week_of_returns(shop)
    dress(app, "light", 24)
    page = UnderWatchPage(desk)
    qtbot.addWidget(page)
    page.resize(*ROOM)
    page.show()
    page.came_here()
    settle(desk, qtbot)
    table = next(one for one in page.findChildren(QTableView) if one.isVisible())
    (plane,) = page.findChildren(WatchPlane)
    (said,) = (x for x in page.findChildren(QLabel) if x.text().startswith("J-104: "))
    (scrolled,) = (x for x in page.findChildren(QScrollArea) if x.isAncestorOf(plane))
    qtbot.waitUntil(lambda: said.height() >= said.heightForWidth(said.width()))
    assert scrolled.horizontalScrollBar().maximum() == 0
    assert table.horizontalScrollBar().maximum() == 0
    assert at(table, page).y() > at(plane, page).y() + plane.height()
    assert plane.height() >= plane.minimumSizeHint().height()
    for row in range(table.model().rowCount()):
        index = table.model().index(row, 1)
        room = table.visualRect(index).width() - 8
        letters, right = table.fontMetrics(), Qt.TextElideMode.ElideRight
        seen = letters.elidedText(index.data(), right, room)
        assert seen.startswith(("TIN 01 ", "TIN 02 ", "TIN 03 "))


@pytest.mark.parametrize(("points", "below"), [(12, False), (24, True)])
def test_now_stands_below_then_where_both_have_no_room(
    app: QApplication, shop: ShopRecord, desk: Desk, qtbot: QtBot, points: int, below: bool
) -> None:
    a_week_of_returns(shop)
    dress(app, "light", points)
    page = opened(desk, qtbot)
    page.resize(*ROOM)
    choose(page, "J-131 after J-104")
    settle(desk, qtbot)
    (both,) = page.findChildren(ThenAndNow)
    then, now = button(page, "Then: J-104"), button(page, "Now: J-131")
    qtbot.waitUntil(lambda: (at(now, both).y() > at(then, both).y()) == below)
    assert (at(now, both).x() == at(then, both).x()) == below
    for line in LINES:  # each part has its lines named where it stands alone
        names = [x for x in both.findChildren(QLabel) if x.text() == line and x.isVisible()]
        assert len(names) == (2 if below else 1)
    (scrolled,) = (x for x in page.findChildren(QScrollArea) if x.isAncestorOf(both))
    qtbot.waitUntil(lambda: scrolled.horizontalScrollBar().maximum() == 0)

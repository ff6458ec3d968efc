"""Under Watch: what is left of each window, as a plane and as a table."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QLabel, QPushButton, QTableView
from pytestqt.qtbot import QtBot

from desktop_app.returns_watched.actions import judge_return
from desktop_app.returns_watched.screen.under_watch_page import UnderWatchPage
from desktop_app.returns_watched.screen.watch_plane import WatchPlane
from desktop_app.returns_watched.stored_returns import read_watch
from desktop_app.returns_watched.watch_words import in_one_breath
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from tests.watched_shop import a_week_of_returns, job, vehicle


@pytest.fixture
def page(shop: ShopRecord, qtbot: QtBot) -> Iterator[UnderWatchPage]:
    a_week_of_returns(shop)
    yield from _opened(shop, qtbot, 6)


def _opened(shop: ShopRecord, qtbot: QtBot, rows: int) -> Iterator[UnderWatchPage]:
    desk = Desk(shop)
    page = UnderWatchPage(desk)
    page.desk = desk  # type: ignore[attr-defined]
    qtbot.addWidget(page)
    page.resize(1100, 700)
    page.show()
    page.came_here()
    qtbot.waitUntil(lambda: not desk.errands.busy())
    assert _table(page).model().rowCount() == rows
    yield page
    desk.errands.finish()


def _table(page: UnderWatchPage) -> QTableView:
    return page.findChild(QTableView)


def _column(page: UnderWatchPage, column: int) -> list[str]:
    model = _table(page).model()
    return [model.index(row, column).data() for row in range(model.rowCount())]


def _says(page: UnderWatchPage, words: str) -> bool:
    return any(words in label.text() for label in page.findChildren(QLabel))


def test_what_ends_first_stands_first(page: UnderWatchPage) -> None:
    assert _column(page, 0)[0] == "J-104"
    assert _column(page, 4) == sorted(_column(page, 4))
    assert _says(page, "6 windows are open")
    assert _says(page, "An open window is not a success")


def test_the_marked_job_is_told_in_sentences(page: UnderWatchPage) -> None:
    assert _says(page, "Left 2 September 2026, 75 days ago; 1,480 mi by 10 November 2026")
    assert _says(page, "15 days left, 1,520 mi by that reading")


def test_arrow_keys_walk_the_marks_and_enter_opens(page: UnderWatchPage, qtbot: QtBot) -> None:
    plane = page.findChild(WatchPlane)
    plane.setFocus()
    qtbot.keyClick(plane, Qt.Key.Key_Right)
    assert _table(page).currentIndex().row() == 1
    assert _column(page, 0)[1] in plane.accessibleDescription()
    qtbot.keyClick(plane, Qt.Key.Key_End)
    assert _table(page).currentIndex().row() == 5
    qtbot.keyClick(plane, Qt.Key.Key_Right)
    assert _table(page).currentIndex().row() == 5
    qtbot.keyClick(plane, Qt.Key.Key_Home)
    with qtbot.waitSignal(page.job_chosen) as opened:
        qtbot.keyClick(plane, Qt.Key.Key_Return)
    assert opened.args == [1]


def test_enter_in_the_table_and_the_button_open_the_marked_job(
    page: UnderWatchPage, qtbot: QtBot
) -> None:
    table = _table(page)
    table.setFocus()
    qtbot.keyClick(table, Qt.Key.Key_Down)
    [button] = [b for b in page.findChildren(QPushButton) if b.text() == "Open J-131"]
    with qtbot.waitSignal(page.job_chosen) as by_key:
        qtbot.keyClick(table, Qt.Key.Key_Return)
    with qtbot.waitSignal(page.job_chosen) as by_mouse:
        qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    assert by_key.args == by_mouse.args == [2]


def test_the_mouse_finds_the_mark_under_it(page: UnderWatchPage, qtbot: QtBot) -> None:
    plane = page.findChild(WatchPlane)
    at = plane.where(1).toPoint()
    qtbot.mouseMove(plane, QPoint(2, 2))
    qtbot.mouseMove(plane, at)
    assert _table(page).currentIndex().row() == 1
    with qtbot.waitSignal(page.job_chosen):
        qtbot.mouseDClick(plane, Qt.MouseButton.LeftButton, pos=at)


def test_marks_lie_right_of_the_days_and_above_the_miles_gone(page: UnderWatchPage) -> None:
    plane = page.findChild(WatchPlane)
    assert _column(page, 0)[:3] == ["J-104", "J-131", "J-140"]
    oldest, middle, unread = plane.where(0), plane.where(1), plane.where(2)
    assert oldest.x() > middle.x()
    assert oldest.y() < middle.y() < unread.y()


def test_a_judgement_is_seen_at_once(page: UnderWatchPage, qtbot: QtBot) -> None:
    desk: Desk = page.desk  # type: ignore[attr-defined]
    assert "◇  to be judged" in _column(page, 5)
    desk.do(judge_return, 1, 2, "same part")
    qtbot.waitUntil(lambda: "□  came back" in _column(page, 5))


def test_kilometres_where_the_house_rule_says_so(shop: ShopRecord, qtbot: QtBot) -> None:
    car = vehicle(shop)
    job(shop, car, "J-1", "2026-11-01", "2026-11-01", 100_000)
    change_rule(shop, "distance_unit", "km")
    for page in _opened(shop, qtbot, 1):
        # 3,000 miles are 4,828.032 km.
        assert _column(page, 3) == ["4,828 km"]


def test_an_empty_watch_says_how_a_job_comes_here(shop: ShopRecord, qtbot: QtBot) -> None:
    for page in _opened(shop, qtbot, 0):
        assert _says(page, "No window is open")
        assert not page.findChild(WatchPlane).grab().isNull()


def test_every_control_has_a_name(page: UnderWatchPage) -> None:
    for control in (page.findChild(WatchPlane), _table(page), *page.findChildren(QPushButton)):
        assert control.accessibleName() or control.text()


@pytest.mark.parametrize(
    ("left", "says"),
    [
        ("2026-11-01", "the odometer was not read since"),
        ("2026-09-01", "14 days left, 3,000 mi by that reading"),
    ],
)
def test_what_is_not_known_is_said(shop: ShopRecord, left: str, says: str) -> None:
    job(shop, vehicle(shop), "J-1", left, left, 100_000)
    with shop.reading() as connection:
        [one] = read_watch(connection, date(2026, 11, 16))
    assert says in " ".join(in_one_breath(one, "mi", date(2026, 11, 16)))

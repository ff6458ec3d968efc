"""Under Watch: what is left of each window, as a plane and as a table."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from functools import partial

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QLabel, QLineEdit, QPushButton, QTableView
from pytestqt.qtbot import QtBot

from desktop_app.returns_watched.screen.under_watch_page import UnderWatchPage
from desktop_app.returns_watched.screen.watch_plane import WatchPlane
from desktop_app.returns_watched.stored_customers_asked import answers_of_job
from desktop_app.returns_watched.stored_returns import read_watch
from desktop_app.returns_watched.watch_words import in_one_breath
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from tests.watched_shop import a_week_of_returns, job, judge_return, vehicle


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


def _table(page: UnderWatchPage, name: str = "Jobs under watch") -> QTableView:
    return next(t for t in page.findChildren(QTableView) if t.accessibleName().startswith(name))


def _column(page: UnderWatchPage, column: int) -> list[str]:
    model = _table(page).model()
    return [model.index(row, column).data() for row in range(model.rowCount())]


def _says(page: UnderWatchPage, words: str) -> bool:
    return any(words in label.text() for label in page.findChildren(QLabel))


def test_what_ends_first_stands_first(page: UnderWatchPage) -> None:
    assert _column(page, 0)[0] == "◇  J-104"
    with page.desk.record.reading() as connection:  # type: ignore[attr-defined]
        days = [job.expected_close for job in read_watch(connection, date(2026, 11, 16))]
    assert days == sorted(days, key=str)
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
    assert _column(page, 0)[1] == "◇  J-131"
    assert "J-131" in plane.accessibleDescription()
    assert _column(page, 2)[1] in plane.accessibleDescription()
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
    with qtbot.waitSignal(page.job_chosen) as opened:
        qtbot.mouseClick(plane, Qt.MouseButton.LeftButton, pos=at)
    assert opened.args == [2]
    with qtbot.assertNotEmitted(page.job_chosen):
        qtbot.mouseClick(plane, Qt.MouseButton.LeftButton, pos=QPoint(2, 2))


def test_marks_lie_right_of_the_days_and_above_the_miles_gone(page: UnderWatchPage) -> None:
    plane = page.findChild(WatchPlane)
    assert [words[-5:] for words in _column(page, 0)[:3]] == ["J-104", "J-131", "J-140"]
    oldest, middle, unread = plane.where(0), plane.where(1), plane.where(2)
    assert oldest.x() > middle.x()
    assert oldest.y() < middle.y() < unread.y()


def test_a_judgement_is_seen_at_once(page: UnderWatchPage, qtbot: QtBot) -> None:
    desk: Desk = page.desk  # type: ignore[attr-defined]
    assert _column(page, 4)[0] == "to be judged"
    desk.do(judge_return, 1, 2, "same part")
    qtbot.waitUntil(lambda: _column(page, 4)[0] == "came back")
    assert _column(page, 0)[0] == "□  J-104"


def test_kilometres_where_the_house_rule_says_so(shop: ShopRecord, qtbot: QtBot) -> None:
    car = vehicle(shop)
    job(shop, car, "J-1", "2026-11-01", "2026-11-01", 100_000)
    change_rule(shop, "distance_unit", "km")
    for page in _opened(shop, qtbot, 1):
        assert _column(page, 3) == ["75 days, km not read since"]
    job(shop, car, "J-2", "2026-11-10", None, 101_000, system="brakes")
    for page in _opened(shop, qtbot, 1):
        # 2,000 miles are 3,218.688 km.
        assert _column(page, 3) == ["75 days, 3,219 km"]
        assert _says(page, "km a day")


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
        ("2026-09-01", "14 days left. It may have ended since"),
    ],
)
def test_what_is_not_known_is_said(shop: ShopRecord, left: str, says: str) -> None:
    job(shop, vehicle(shop), "J-1", left, left, 100_000)
    with shop.reading() as connection:
        [one] = read_watch(connection, date(2026, 11, 16))
    assert says in " ".join(in_one_breath(one, "mi", date(2026, 11, 16)))


def _press(page: UnderWatchPage, qtbot: QtBot, words: str) -> None:
    buttons = [b for b in page.findChildren(QPushButton) if b.text().startswith(words)]
    button = next(b for b in buttons if b.isVisible())
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)


def test_a_window_of_its_own_is_named_with_whose_promise_it_is(
    shop: ShopRecord, qtbot: QtBot
) -> None:
    job(
        *(shop, vehicle(shop), "J-1", "2026-11-01", "2026-11-01", 100_000),
        window_days=730,
        window_miles=24_000,
        window_months=24,
        window_from="part kind alternator",
    )
    for page in _opened(shop, qtbot, 1):
        assert _says(page, "730 days or 24,000 mi, whichever ends first.")
        assert _says(page, "the promise for alternator, said as 24 calendar months.")


def test_windows_of_all_sorts_are_drawn(shop: ShopRecord, qtbot: QtBot) -> None:
    for number, (days, miles, rule) in enumerate(
        ((90, 3000, "first"), (0, 3000, "first"), (365, 0, "first"), (20, 3000, "both"))
    ):
        car = vehicle(shop, plate=f"P {number}")
        limits = {"window_days": days, "window_miles": miles, "window_rule": rule}
        job(shop, car, f"J-{number}", "2026-11-01", "2026-11-01", 100_000, **limits)
    for page in _opened(shop, qtbot, 4):
        plane = page.findChild(WatchPlane)
        pictures = set()
        for key in (Qt.Key.Key_Home, *[Qt.Key.Key_Right] * 3):
            qtbot.keyClick(plane, key)
            pictures.add(plane.grab().toImage().constBits().tobytes())
        assert len(pictures) == 4
        by_job = {words[-3:]: place for place, words in enumerate(_column(page, 0))}
        # No limit in time: in the strip on the left; none by distance: in the one below.
        assert plane.where(by_job["J-1"]).x() < plane.where(by_job["J-0"]).x()
        assert plane.where(by_job["J-2"]).y() > plane.where(by_job["J-0"]).y()


def test_in_a_narrow_window_the_sign_and_the_end_stay(page: UnderWatchPage) -> None:
    page.resize(820, 640)
    table = _table(page)
    assert [table.isColumnHidden(column) for column in range(5)] == [False] * 3 + [True] * 2
    page.resize(1400, 900)
    assert not any(table.isColumnHidden(column) for column in range(5))
    assert page.minimumSizeHint().height() <= 620


def test_the_customer_is_asked_with_one_press_and_leaves_the_list(
    shop: ShopRecord, qtbot: QtBot
) -> None:
    for number in (1, 2):
        often = {"fault_every": 3, "fault_every_unit": "days"}
        car = vehicle(shop, plate=f"P {number}")
        job(shop, car, f"J-{number}", "2026-10-01", f"2026-10-0{number}", 100_000, **often)
    for page in _opened(shop, qtbot, 2):
        desk: Desk = page.desk  # type: ignore[attr-defined]
        said_now = partial(_says, page)
        _press(page, qtbot, "Ask the customer (2)")
        assert _says(page, "must not depend on the answer you hope for")
        assert _says(page, "J-1: no name written down, no number written down")
        assert _says(page, "Has it happened again since 1 October 2026: “misses in the rain”?")
        _press(page, qtbot, "Fine")
        qtbot.waitUntil(partial(said_now, "J-2: no name"))
        _press(page, qtbot, "Not reached")
        qtbot.waitUntil(partial(said_now, "Nobody is to be asked today"))
        with shop.reading() as connection:
            said = [a.answer.value for job in (1, 2) for a in answers_of_job(connection, job)]
        assert said == ["fine", "not reached"]
        desk.undo()
        qtbot.waitUntil(partial(said_now, "J-2: no name"))


def test_enter_in_the_list_of_whom_to_ask_opens_the_job(shop: ShopRecord, qtbot: QtBot) -> None:
    often = {"fault_every": 3, "fault_every_unit": "days"}
    job(shop, vehicle(shop), "J-1", "2026-10-01", "2026-10-01", 100_000, **often)
    for page in _opened(shop, qtbot, 1):
        _press(page, qtbot, "Ask the customer (1)")
        with qtbot.waitSignal(page.job_chosen) as by_key:
            qtbot.keyClick(_table(page, "Whom to ask"), Qt.Key.Key_Return)
        with qtbot.waitSignal(page.job_chosen) as by_mouse:
            _press(page, qtbot, "Open J-1")
        assert by_key.args == by_mouse.args == [1]


def test_the_job_that_is_told_of_is_opened_also_where_its_row_is_left_out(
    page: UnderWatchPage, qtbot: QtBot
) -> None:
    line = next(n for n in page.findChildren(QLineEdit) if "only rows" in n.accessibleName())
    qtbot.keyClicks(line, "J-131")
    assert _column(page, 0) == ["◇  J-131"]
    [button] = [b for b in page.findChildren(QPushButton) if b.text() == "Open J-104"]
    with qtbot.waitSignal(page.job_chosen) as opened:
        qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    assert opened.args == [1]
    line.clear()
    assert _table(page).currentIndex().row() == 0

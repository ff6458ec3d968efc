"""A long list of returns is laid out as far as it is seen, and leads to every one of them."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from typing import Any

import pytest
from PySide6.QtCore import QSize, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.modeltest import ModelTester
from pytestqt.qtbot import QtBot

from desktop_app.returns_watched.customer_actions import note_answer
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.screen import its_back_page
from desktop_app.returns_watched.screen.return_rows import AT_ONCE, ReturnRows
from desktop_app.returns_watched.screen.returns_view import ReturnsView
from desktop_app.returns_watched.stored_returns import read_returns
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from tests.conftest import NOON
from tests.screens.judging_page import first_shown, listed, says, settle
from tests.watched_shop import a_week_of_returns, job, vehicle

MANY = 5 * AT_ONCE + 7


@pytest.fixture
def rows(shop: ShopRecord) -> ReturnRows:
    """A return many times over, each with a later job of its own."""
    a_week_of_returns(shop)
    with shop.reading() as connection:
        one = next(row for row in read_returns(connection) if row.later_id)
    shown = ReturnRows()
    many = [
        replace(
            one,
            later_id=number,
            vehicle=f"Car {number}",
            candidate=replace(one.candidate, later=f"K-{number}"),
        )
        for number in range(1, MANY + 1)
    ]
    shown.show_rows(many, "mi", NOON.date())
    return shown


def test_as_many_rows_are_laid_out_as_are_seen_and_each_is_reached(
    rows: ReturnRows, qtbot: QtBot, qtmodeltester: ModelTester
) -> None:
    view = ReturnsView()
    qtbot.addWidget(view)
    view.setModel(rows)
    view.resize(QSize(300, 400))
    view.show()
    qtbot.waitExposed(view)
    assert view.model().rowCount() == AT_ONCE
    first = rows.row(0)
    assert first is not None
    deep = rows.place_of((first.earlier_id, 3 * AT_ONCE, 0))
    view.setCurrentIndex(rows.reached(deep))
    assert view.currentIndex().data().splitlines()[1] == f"Car {3 * AT_ONCE}"
    assert view.visualRect(view.currentIndex()).intersects(view.viewport().rect())
    bar = view.verticalScrollBar()
    for _ in range(MANY // AT_ONCE):  # as with the wheel: the end of what is known tells of more
        bar.setValue(bar.maximum())
        QApplication.processEvents()
    assert view.model().rowCount() == MANY
    qtmodeltester.check(rows)


def test_a_key_reaches_the_last_row_and_a_number_typed_finds_any(
    rows: ReturnRows, qtbot: QtBot
) -> None:
    view = ReturnsView()
    qtbot.addWidget(view)
    view.setModel(rows)
    view.show()
    view.setCurrentIndex(rows.index(0))
    QTest.keyClick(view, Qt.Key.Key_End)
    assert view.currentIndex().row() == MANY - 1
    rows.show_rows([row for n in range(MANY) if (row := rows.row(n))], "mi", NOON.date())
    QTest.keyClicks(view, "K-450")
    assert view.currentIndex().data().startswith("K-450 after")


def test_a_return_that_goes_before_it_was_read_leaves_the_next_one(
    shop: ShopRecord, desk: Desk, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    a_week_of_returns(shop)
    monkeypatch.setattr(its_back_page, "LIST_FIRST_MS", 200)
    page = its_back_page.ItsBackPage(desk, {})
    qtbot.addWidget(page)
    page.show()
    page.came_here()
    settle(desk, qtbot)
    gone = listed(page)[0].split(" after ")[0]
    read = its_back_page.read_waiting
    # As when another desk undoes it, and something is told here at that moment.

    def left(*of: Any) -> tuple[ReturnRow, ...]:
        return tuple(row for row in read(*of) if row.later != gone)

    monkeypatch.setattr(its_back_page, "read_waiting", left)
    told = job(shop, vehicle(shop), "J-900", "2026-06-01", "2026-06-02")
    assert desk.do(note_answer, told, "same trouble", on=date(2026, 7, 1)) is not None
    settle(desk, qtbot)
    assert not any(row.startswith(gone) for row in listed(page))
    first_shown(page, qtbot)
    assert not says(page, "Choose a return on the left.")

"""A long list of returns is laid out as far as it is seen, and leads to every one of them."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import QSize, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QListView
from pytestqt.modeltest import ModelTester
from pytestqt.qtbot import QtBot

from desktop_app.returns_watched.screen.return_rows import AT_ONCE, ReturnRows
from desktop_app.returns_watched.stored_returns import read_returns
from desktop_app.shop_record.record import ShopRecord
from tests.conftest import NOON
from tests.watched_shop import a_week_of_returns

MANY = 5 * AT_ONCE + 7


@pytest.fixture
def rows(shop: ShopRecord) -> ReturnRows:
    """A return many times over, each with a later job of its own."""
    a_week_of_returns(shop)
    with shop.reading() as connection:
        one = next(row for row in read_returns(connection) if row.later_id)
    shown = ReturnRows()
    many = [replace(one, later_id=number, vehicle=f"Car {number}") for number in range(1, MANY + 1)]
    shown.show_rows(many, "mi", NOON.date())
    return shown


def test_as_many_rows_are_laid_out_as_are_seen_and_each_is_reached(
    rows: ReturnRows, qtbot: QtBot, qtmodeltester: ModelTester
) -> None:
    view = QListView()
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
    for _ in range(MANY // AT_ONCE + 1):  # to the end of what is told, which tells more
        QTest.keyClick(view, Qt.Key.Key_End)
        QTest.qWait(20)
    assert view.currentIndex().data().splitlines()[1] == f"Car {MANY}"
    assert view.model().rowCount() == MANY
    qtmodeltester.check(rows)

"""At the counter: whether what was promised still runs, by the odometer that is typed."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QLineEdit
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.screen.write_up_page import WriteUpPage
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.returns_watched.screen.promise_line import promise_line
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.drafts import Drafts

BY_DAYS = (
    "By its days the promise still runs: 90 days or 3,000 mi, whichever ends first, "
    "from 20 October 2026 on."
)
OVER = "The promise is over by distance, 4,488 mi were driven: 90 days or 3,000 mi"


@pytest.fixture
def page(qtbot: QtBot, shop: ShopRecord) -> WriteUpPage:
    """The page on a shop whose one car left at 88,012 miles."""
    car = WriteUp(
        "misses when damp", plate="AB 12", odometer=88_000, came_at="2026-10-19T09:00:00+00:00"
    )
    actions.write_up(shop, car)
    actions.hand_over(shop, 1, left_at="2026-10-20T09:00:00+00:00", odometer_out=88_012)
    desk = Desk(shop)
    promised = promise_line(desk, {})
    shown = WriteUpPage(desk, Drafts(shop.folder), lambda _: (), lambda _: (), promised)
    qtbot.addWidget(shown)
    shown.resize(1100, 800)
    shown.show()
    shown.came_here()
    return shown


def write(qtbot: QtBot, page: WriteUpPage, name: str, text: str) -> QLineEdit:
    field = next(f for f in page.findChildren(QLineEdit) if f.accessibleName() == name)
    field.setFocus()
    field.selectAll()
    qtbot.keyClick(field, Qt.Key.Key_Delete)
    qtbot.keyClicks(field, text)
    return field


def reads(page: WriteUpPage, words: str) -> bool:
    return any(words in one.text() for one in page.findChildren(QLabel) if one.isVisible())


def test_the_promise_follows_the_odometer_that_is_typed(qtbot: QtBot, page: WriteUpPage) -> None:
    qtbot.keyClick(write(qtbot, page, "Plate, or the shop's own tag", "AB 12"), Qt.Key.Key_Return)
    assert reads(page, f"under watch. {BY_DAYS} The distance is not known yet.")
    write(qtbot, page, "Odometer", "92500")
    qtbot.waitUntil(lambda: reads(page, OVER))
    assert not reads(page, "under watch")
    write(qtbot, page, "Odometer", "89000")
    qtbot.waitUntil(lambda: reads(page, "under watch. The promise still runs: 90 days"))
    write(qtbot, page, "Odometer", "80000")  # less than it left with
    qtbot.waitUntil(lambda: reads(page, f"{BY_DAYS} This reading cannot say how far it went."))
    write(qtbot, page, "Odometer", "")
    qtbot.waitUntil(lambda: reads(page, f"{BY_DAYS} The distance is not known yet."))


def test_an_odometer_typed_before_the_plate_counts_too(qtbot: QtBot, page: WriteUpPage) -> None:
    write(qtbot, page, "Odometer", "92500")
    qtbot.keyClick(write(qtbot, page, "Plate, or the shop's own tag", "AB 12"), Qt.Key.Key_Return)
    assert reads(page, OVER)

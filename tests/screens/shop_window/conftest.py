"""A frame of two places, for the tests of what stands around the pages."""

from __future__ import annotations

import pytest
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs.typed_entry import read_money
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.house_rules_page import HouseRulesPage
from desktop_app.shop_window.main_window import MainWindow


@pytest.fixture
def window(qtbot: QtBot, shop: ShopRecord) -> MainWindow:
    window = MainWindow()
    qtbot.addWidget(window)
    desk = Desk(shop, window)
    window.attend(desk)
    window.add_place("Bench", QWidget)
    window.add_place("House Rules", lambda: HouseRulesPage(desk, read_money))
    window.resize(1366, 768)  # where every button of the top row says its words
    window.show()
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    window.go_to("Bench")
    window.desk = desk  # type: ignore[attr-defined]
    return window

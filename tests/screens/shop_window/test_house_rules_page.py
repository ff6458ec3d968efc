"""House Rules: an hour of work is typed and shown in the shop's currency."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLabel, QPushButton
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs.typed_entry import read_money
from desktop_app.shop_record.house_rules import change_rule, read_rules
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import LineField
from desktop_app.shop_window.house_rules_page import HouseRulesPage


class Rules:
    """The page, its field for the hour, and what is kept."""

    def __init__(self, shop: ShopRecord, bot: QtBot) -> None:
        self.shop, self.bot = shop, bot
        self.desk = Desk(shop)
        self.page = HouseRulesPage(self.desk, read_money)
        bot.addWidget(self.page)
        self.page.show()
        lines = self.page.findChildren(LineField)
        self.hour = next(one for one in lines if one.accessibleName() == "Hour cost")

    def type_hour(self, text: str) -> None:
        self.hour.setFocus()
        self.hour.selectAll()
        self.bot.keyClicks(self.hour, text)
        self.bot.keyClick(self.hour, Qt.Key.Key_Return)

    def kept(self) -> int:
        with self.shop.reading() as connection:
            return read_rules(connection).hour_cost_cents

    def reads(self, words: str) -> bool:
        return any(words in x.text() for x in self.page.findChildren(QLabel) if x.isVisible())


@pytest.fixture
def rules(shop: ShopRecord, qtbot: QtBot) -> Rules:
    return Rules(shop, qtbot)


def test_an_hour_is_said_in_the_shops_currency(rules: Rules) -> None:
    assert rules.hour.text() == "60.00"
    assert rules.reads("In $. What an hour of work costs the shop")
    assert rules.reads("Accepted: 0.00 to 1,000.00. Without a change: 60.00.")
    rules.type_hour("75")
    assert (rules.kept(), rules.hour.text()) == (7500, "75.00")
    rules.desk.do(change_rule, "currency", "€")
    assert rules.reads("In €. What an hour of work costs the shop")


def test_an_amount_that_is_hardly_meant_is_asked_about(rules: Rules, qtbot: QtBot) -> None:
    rules.type_hour("0.60")
    assert rules.kept() == 60
    assert rules.reads("$0.60 is kept, not $60. Is that meant?")
    QApplication.processEvents()  # what is asked is laid out
    buttons = rules.page.findChildren(QPushButton)
    right = next(b for b in buttons if b.isVisible() and b.text() == "Right as typed")
    qtbot.mouseClick(right, Qt.MouseButton.LeftButton)
    rules.page.came_here()
    assert not rules.reads("Is that meant?")
    rules.type_hour("60")
    assert rules.kept() == 6000


@pytest.mark.parametrize("text", ["sixty", "1,000.01", ""])
def test_what_is_no_amount_is_said_beneath_and_stays(rules: Rules, qtbot: QtBot, text: str) -> None:
    rules.hour.clear()
    rules.type_hour(text)
    assert rules.kept() == 6000
    assert rules.hour.text() == text
    assert not rules.reads("In $. What an hour")
    rules.type_hour("60.00")
    assert rules.reads("In $. What an hour")

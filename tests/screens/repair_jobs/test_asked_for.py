"""Heard goes to the very field that is asked for, and marks it with a sign and words."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLabel, QLineEdit, QPlainTextEdit, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.screen.write_up_page import WriteUpPage
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.drafts import Drafts

PLATE, ODOMETER = "Plate, or the shop's own tag", "Odometer"
ASKED = "✎ What does the odometer say? Type the reading, or choose why it cannot be read."


class AtHeard:
    """The page in a low window, as on a small screen: its foot and its head are never both seen."""

    def __init__(self, bot: QtBot, shop: ShopRecord) -> None:
        self.bot = bot
        self.page = WriteUpPage(
            Desk(shop), Drafts(shop.folder), lambda _words: (), lambda _words: ()
        )
        bot.addWidget(self.page)
        self.page.resize(1100, 230)
        self.page.show()
        self.page.activateWindow()
        bot.waitUntil(self.page.isActiveWindow)
        self.page.came_here()

    def line(self, name: str) -> QLineEdit:
        return next(f for f in self.page.findChildren(QLineEdit) if f.accessibleName() == name)

    @property
    def words(self) -> QPlainTextEdit:
        return self.page.findChildren(QPlainTextEdit)[0]

    def is_seen(self, widget: QWidget) -> bool:
        return widget.visibleRegion().boundingRect() == widget.rect()

    def label(self, words: str) -> QLabel | None:
        shown = [one for one in self.page.findChildren(QLabel) if one.isVisible()]
        return next((one for one in shown if one.text() == words), None)

    def take_in_by_key(self, sender: QWidget) -> None:
        self.bot.keyClick(sender, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)


@pytest.fixture
def at(qtbot: QtBot, shop: ShopRecord) -> AtHeard:
    return AtHeard(qtbot, shop)


def test_the_key_leads_to_the_field_that_is_asked_for_and_says_so_beneath_it(at: AtHeard) -> None:
    at.bot.keyClicks(at.line(PLATE), "TH 1042")
    at.words.setFocus()
    at.bot.keyClicks(at.words, "misses")
    at.page.verticalScrollBar().setValue(at.page.verticalScrollBar().maximum())
    assert not at.is_seen(at.line(ODOMETER))
    at.take_in_by_key(at.words)
    assert QApplication.focusWidget() is at.line(ODOMETER)
    said = at.label(ASKED)
    assert said is not None
    assert at.is_seen(said)
    assert at.is_seen(at.line(ODOMETER))
    assert at.line(ODOMETER).accessibleDescription() == ASKED.removeprefix("✎ ")


def test_the_mark_goes_with_the_answer_to_what_is_missing_next(at: AtHeard) -> None:
    at.take_in_by_key(at.line(PLATE))
    assert QApplication.focusWidget() is at.line(PLATE)
    at.bot.keyClicks(at.line(PLATE), "TH 1042")
    at.take_in_by_key(at.line(PLATE))
    at.bot.keyClicks(at.line(ODOMETER), "90 000")
    at.bot.waitUntil(lambda: at.label(ASKED) is None)
    assert at.line(ODOMETER).accessibleDescription() == ""
    assert QApplication.focusWidget() is at.line(ODOMETER)  # nobody is sent away while typing
    at.take_in_by_key(at.line(ODOMETER))
    assert QApplication.focusWidget() is at.words
    at.bot.keyClicks(at.words, "misses")
    with at.bot.waitSignal(at.page.taken_in):
        at.take_in_by_key(at.words)


def test_a_reading_that_is_none_is_gone_to_as_well(at: AtHeard) -> None:
    at.bot.keyClicks(at.line(PLATE), "TH 1042")
    at.bot.keyClicks(at.line(ODOMETER), "about ninety")
    at.bot.keyClicks(at.words, "misses")
    at.words.setFocus()
    at.take_in_by_key(at.words)
    assert QApplication.focusWidget() is at.line(ODOMETER)
    assert "not an odometer reading" in at.line(ODOMETER).accessibleDescription()


def test_what_is_asked_of_a_known_car_is_brought_into_sight(qtbot: QtBot, shop: ShopRecord) -> None:
    actions.write_up(shop, WriteUp("misses", plate="TH 1042", odometer=118_420))
    actions.hand_over(shop, 1)
    at = AtHeard(qtbot, shop)
    qtbot.keyClicks(at.line(PLATE), "TH 1042")
    qtbot.keyClicks(at.line(ODOMETER), "11842")
    at.words.setFocus()
    qtbot.keyClicks(at.words, "misses again")
    at.page.verticalScrollBar().setValue(at.page.verticalScrollBar().maximum())
    at.take_in_by_key(at.words)
    same = next(b for b in at.page.findChildren(QPushButton) if b.text() == "The same car")
    assert at.is_seen(same)

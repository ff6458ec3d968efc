"""A word that never ends is broken wherever the line does; words are broken between them."""

from __future__ import annotations

from time import perf_counter

from PySide6.QtCore import QMimeData
from PySide6.QtGui import QTextOption
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from desktop_app.shop_window.fields import WordsField

MANY = 200_000  # letters
BETWEEN, ANYWHERE = (
    QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere,
    QTextOption.WrapMode.WrapAnywhere,
)


def pasted(bot: QtBot, text: str) -> tuple[WordsField, float]:
    """Paste a text into a field; return the field, and for how long that held the window."""
    field = WordsField("Note", str)
    bot.addWidget(field)
    field.resize(700, 100)
    field.show()
    data = QMimeData()
    data.setText(text)
    QApplication.processEvents()
    began = perf_counter()
    field.insertFromMimeData(data)
    QApplication.processEvents()
    return field, perf_counter() - began


def test_it_holds_the_window_hardly_longer_than_words_do(qtbot: QtBot) -> None:
    _, words = pasted(qtbot, ("rotor " * MANY)[:MANY])
    field, endless = pasted(qtbot, "x" * MANY)
    assert field.toPlainText() == "x" * MANY
    assert endless < 8 * words  # thirty times as long where it is looked for a word's end


def test_words_are_broken_between_them_once_it_is_gone(qtbot: QtBot) -> None:
    field, _ = pasted(qtbot, "x" * 5000)
    assert field.wordWrapMode() == ANYWHERE
    field.selectAll()
    qtbot.keyClicks(field, "the rotor tip is burned")
    assert field.wordWrapMode() == BETWEEN
    field.show_value("")
    field.setPlainText("misses when damp")
    assert field.wordWrapMode() == BETWEEN
    field.setPlainText("y" * 5000)
    assert field.wordWrapMode() == ANYWHERE

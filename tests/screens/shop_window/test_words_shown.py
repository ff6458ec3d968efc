"""Words on the window are read to their end, whatever room they get."""

from __future__ import annotations

import pytest
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.shop_window.texts import plain_label

LONG = "The tip has burned back and the gap is wider than the maker allows. " * 6


@pytest.mark.parametrize("wide", [240, 420, 900])
def test_a_long_sentence_beside_a_short_one_is_not_cut(qtbot: QtBot, wide: int) -> None:
    box = QWidget()
    qtbot.addWidget(box)
    column = QVBoxLayout(box)
    row = QHBoxLayout()
    label = plain_label(LONG, wrap=True)
    row.addWidget(label, 1)
    row.addWidget(plain_label("Why"))
    column.addLayout(row)
    column.addStretch(1)
    box.resize(wide, 500)
    box.show()
    qtbot.waitUntil(lambda: label.height() >= label.heightForWidth(label.width()))

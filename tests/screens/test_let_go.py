"""A widget that is let go outlives the event in which that happens, and then goes."""

from __future__ import annotations

import gc

from PySide6.QtCore import QCoreApplication, QEvent, Qt
from PySide6.QtWidgets import QPushButton, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.shop_window.let_go import let_go


def test_a_widget_let_go_by_its_own_button_lives_until_the_event_is_over(qtbot: QtBot) -> None:
    page = QWidget()
    qtbot.addWidget(page)
    card: list[QWidget] = [QWidget(page)]
    button, gone, seen = QPushButton("Take out", card[0]), list[str](), list[int]()
    card[0].destroyed.connect(lambda: gone.append("gone"))

    def take_out() -> None:
        let_go(card.pop())
        gc.collect()
        seen.append(len(gone))

    button.clicked.connect(take_out)
    page.show()
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    assert seen == [0]
    assert page.findChildren(QPushButton) == []
    del button
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)
    assert gone == ["gone"]

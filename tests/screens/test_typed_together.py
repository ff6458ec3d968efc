"""Fields that are kept as one: what is refused is told once, and holds as long as it is typed."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.notice import how_long
from desktop_app.shop_window.typed_together import TypedTogether


class Refusing(TypedTogether):
    """A line that is kept by nobody; each time it is tried, that is told."""

    def __init__(self) -> None:
        super().__init__()
        self.line = QLineEdit()
        QVBoxLayout(self).addWidget(self.line)
        self.told = [how_long(ShopTrouble("before"))]

    def keep_typed(self) -> None:
        if self.line.text():
            self.told.append(how_long(ShopTrouble("That is not kept.")))

    def unsaved(self) -> bool:
        return bool(self.line.text())

    def text(self) -> str:
        return self.line.text()


def test_what_is_refused_is_told_once_and_goes_with_what_is_typed(qtbot: QtBot) -> None:
    page, card, form, beside = QWidget(), QWidget(), Refusing(), QLineEdit()
    QVBoxLayout(card).addWidget(form)
    column = QVBoxLayout(page)
    column.addWidget(card)
    column.addWidget(beside)
    qtbot.addWidget(page)
    page.show()
    page.activateWindow()
    qtbot.waitUntil(page.isActiveWindow)
    form.line.setFocus()
    qtbot.keyClicks(form.line, "a week or so")
    for _ in range(3):  # to and fro
        qtbot.keyClick(page.focusWidget(), Qt.Key.Key_Tab)
        assert beside.hasFocus()
        qtbot.keyClick(beside, Qt.Key.Key_Backtab)
        assert form.line.hasFocus()
    (_, holds) = form.told
    assert holds()
    qtbot.keyClicks(form.line, "!")
    assert not holds()
    qtbot.keyClick(form.line, Qt.Key.Key_Tab)
    assert len(form.told) == 3  # other words are tried anew

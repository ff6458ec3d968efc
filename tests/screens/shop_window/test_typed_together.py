"""Fields that are kept as one: what is refused is told once, and holds as long as it is typed."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.notice import how_long
from desktop_app.shop_window.typed_together import TypedTogether


class Refusing(TypedTogether):
    """A line that is kept by nobody; each time it is tried, that is told.

    It is not accepted, or the server that would take it is away.
    """

    def __init__(self, *, is_away: bool = False) -> None:
        super().__init__()
        self.is_away = is_away
        self.line = QLineEdit()
        QVBoxLayout(self).addWidget(self.line)
        self.told = [how_long(ShopTrouble("before"))]

    def keep_typed(self) -> None:
        if self.line.text():
            self.told.append(how_long(ShopTrouble("That is not kept.")))
            if not self.is_away:
                self.refuse()

    def unsaved(self) -> bool:
        return bool(self.line.text())

    def text(self) -> str:
        return self.line.text()


def on_a_card(qtbot: QtBot, form: Refusing) -> QWidget:
    """Show a page with the form on its card, and a field beside that; type into the form."""
    page, card, beside = QWidget(), QWidget(), QLineEdit()
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
    return page


def leave_and_come_back(qtbot: QtBot, page: QWidget, form: Refusing) -> None:
    """Go to what stands beside the card, and back into the form."""
    qtbot.keyClick(form.line, Qt.Key.Key_Tab)
    beside = page.focusWidget()
    assert beside is not None
    assert not form.line.hasFocus()
    qtbot.keyClick(beside, Qt.Key.Key_Backtab)
    assert form.line.hasFocus()


def test_what_is_refused_is_told_once_and_goes_with_what_is_typed(qtbot: QtBot) -> None:
    form = Refusing()
    page = on_a_card(qtbot, form)
    for _ in range(3):
        leave_and_come_back(qtbot, page, form)
    (_, holds) = form.told
    assert holds()
    qtbot.keyClicks(form.line, "!")
    assert not holds()
    qtbot.keyClick(form.line, Qt.Key.Key_Tab)
    assert len(form.told) == 3  # other words are tried anew


def test_what_a_server_that_is_away_did_not_take_is_tried_each_time(qtbot: QtBot) -> None:
    form = Refusing(is_away=True)
    page = on_a_card(qtbot, form)
    for _ in range(3):
        leave_and_come_back(qtbot, page, form)
    assert len(form.told) == 4

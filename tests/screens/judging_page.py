"""It's Back as a test sees it: opened on a small record, looked at and pressed as a user does."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QListView, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.screen.its_back_page import ItsBackPage
from desktop_app.returns_watched.screen.judging_sheet import JudgingSheet
from desktop_app.returns_watched.stored_returns import read_returns
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import LineField, WordsField


def opened(desk: Desk, qtbot: QtBot, kinds: Any = dict) -> ItsBackPage:
    """Return the page, shown and read."""
    page = ItsBackPage(desk, {}, kinds)
    qtbot.addWidget(page)
    page.resize(1100, 760)
    page.show()
    page.came_here()
    settle(desk, qtbot)
    if listed(page):
        first_shown(page, qtbot)
    return page


def settle(desk: Desk, qtbot: QtBot) -> None:
    """Wait until nothing runs beside the window."""
    qtbot.waitUntil(lambda: not desk.errands.busy())


def first_shown(page: ItsBackPage, qtbot: QtBot) -> None:
    """Wait for the first return, and all that is asked of it: the list is painted before it."""
    qtbot.waitUntil(lambda: page.findChild(JudgingSheet) is not None)
    let_come()


def listed(page: ItsBackPage) -> list[str]:
    """Return the rows of the list."""
    model = page.findChild(QListView).model()
    return [model.index(row, 0).data() for row in range(model.rowCount())]


TURNS = 8  # of the window, in which what came is laid out


def let_come() -> None:
    """Let what was put on the page be laid out and seen, box after box."""
    while not all(sheet.is_whole() for sheet in _sheets()):
        QTest.qWait(1)
    for _ in range(TURNS):
        QApplication.processEvents()


def _sheets() -> list[JudgingSheet]:
    windows = QApplication.topLevelWidgets()
    return [sheet for one in windows for sheet in one.findChildren(JudgingSheet)]


def choose(page: ItsBackPage, words: str) -> None:
    """Choose the first row that holds these words, and let its sheet come."""
    view = page.findChild(QListView)
    place = next(i for i, row in enumerate(listed(page)) if words in row)
    view.setCurrentIndex(view.model().index(place, 0))
    let_come()


def button(page: QWidget, name: str) -> QPushButton:
    """Return the button that is seen under this name or these words."""
    let_come()
    for one in page.findChildren(QPushButton):
        if one.isVisibleTo(page) and name in (one.text(), one.accessibleName()):
            return one
    raise LookupError(name)


def press(page: QWidget, qtbot: QtBot, name: str) -> None:
    """Press a button."""
    qtbot.mouseClick(button(page, name), Qt.MouseButton.LeftButton)


def says(page: QWidget, words: str) -> bool:
    """Tell whether these words are seen."""
    let_come()
    return any(words in x.text() for x in page.findChildren(QLabel) if x.isVisibleTo(page))


def field(page: QWidget, name: str) -> Any:
    """Return the field that is seen under this name."""
    let_come()
    fields = [*page.findChildren(LineField), *page.findChildren(WordsField)]
    return next(f for f in fields if f.accessibleName() == name and f.isVisibleTo(page))


def write(page: QWidget, qtbot: QtBot, name: str, text: str) -> None:
    """Type into a field and leave it."""
    one = field(page, name)
    one.selectAll()
    qtbot.keyClick(one, Qt.Key.Key_Delete)
    qtbot.keyClicks(one, text)
    one.save_now()


def kept(shop: ShopRecord, earlier: str, later: str) -> ReturnRow:
    """Return what the list holds of two jobs."""
    with shop.reading() as connection:
        rows = read_returns(connection)
    return next(row for row in rows if (row.earlier, row.later) == (earlier, later))

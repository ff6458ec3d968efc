"""The place Records In and Out in the hands of a test: files written, controls found by name."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path
from typing import TypeVar

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtWidgets import (
    QAbstractButton,
    QApplication,
    QComboBox,
    QFileDialog,
    QLabel,
    QListWidget,
    QTableView,
    QWidget,
)
from pytestqt.qtbot import QtBot

from desktop_app.commands.shop_place import kinds_of
from desktop_app.records_exchanged.row_words import kind_ids
from desktop_app.records_exchanged.screen.records_page import RecordsPage
from desktop_app.records_exchanged.screen.telling import Telling
from desktop_app.records_exchanged.stored_import import ReadWith
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from desktop_app.symptom_search.vocabulary_file import shop_vocabulary

W = TypeVar("W", bound=QWidget)
WAIT = 20_000  # ms
HEAD = "RO #,Date In,Reg,Odo,Complaint,Repair,Remark"
LEFT = Qt.MouseButton.LeftButton


def reads() -> ReadWith:
    words = shop_vocabulary()
    return ReadWith(
        lambda text: tuple(group.id for group in words.groups_in(text)),
        words.conditions_in,
        kind_ids(kinds_of().values()),
    )


def old_jobs(path: Path, *rows: str, head: str = HEAD) -> Path:
    """A file of old jobs as another program may have written it."""
    path.write_text("\n".join([head, *rows, ""]), encoding="utf-8")
    return path


def row(number: int, day: str = "03/04/2025", odometer: str = "90100") -> str:
    return f"R-{number},{day},TH {number},{odometer},misses when damp,coil renewed,rang {number}"


class AtThePage:
    """The page, shown, and what somebody does on it."""

    def __init__(self, record: ShopRecord, bot: QtBot, patch: pytest.MonkeyPatch) -> None:
        self.record, self.bot, self._patch = record, bot, patch
        self.desk = Desk(record)
        self.told: list[str] = []
        self.desk.told.connect(lambda said: self.told.append(str(said)))
        self.page = RecordsPage(self.desk, reads)
        bot.addWidget(self.page)
        self.page.resize(1000, 700)
        self.page.show()

    def settle(self) -> None:
        def over() -> bool:
            return not self.desk.errands.busy() and not self.desk.findChildren(Telling)

        self.bot.waitUntil(over, timeout=WAIT)

    def choose(self, path: Path) -> None:
        """Choose a file by the dialog, and wait until it was looked through."""
        self._patch.setattr(QFileDialog, "getOpenFileName", lambda *_: (str(path), ""))
        self.press("Choose a file…")
        self.settle()

    def choose_folder(self, path: Path, button: str) -> None:
        self._patch.setattr(QFileDialog, "getExistingDirectory", lambda *_: str(path))
        self.press(button)

    def save_as(self, path: Path, button: str) -> None:
        self._patch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(path), ""))
        self.press(button)
        self.settle()

    def find(self, sort: type[W], name: str) -> W:
        return next(w for w in self.page.findChildren(sort) if w.accessibleName() == name)

    def button(self, words: str) -> QAbstractButton:
        shown = [b for b in self.page.findChildren(QAbstractButton) if b.isVisibleTo(self.page)]
        found = [b for b in shown if words in b.text()] or [
            b for b in shown if words in b.accessibleName()
        ]
        assert found, f"no button “{words}”; there are {[b.text() for b in shown if b.text()]}"
        return found[0]

    def offers(self, words: str) -> bool:
        """Tell whether a button says so."""
        buttons = self.page.findChildren(QAbstractButton)
        return any(words in b.text() for b in buttons if b.isVisibleTo(self.page))

    def press(self, words: str) -> None:
        button = self.button(words)
        assert button.isEnabled(), f"“{words}” is off"
        self.bot.mouseClick(button, LEFT)

    def says(self, words: str) -> bool:
        shown = [x for x in self.page.findChildren(QLabel) if x.isVisibleTo(self.page)]
        return any(words in x.text() for x in shown)

    def pick(self, choice: str, words: str) -> None:
        """Choose in a list by its keys, as far down as it takes."""
        box = self.find(QComboBox, choice)
        box.setCurrentIndex(0)
        at = box.findText(words, Qt.MatchFlag.MatchContains)
        assert at >= 0, [box.itemText(i) for i in range(box.count())]
        if at == 0:
            box.activated.emit(0)
        for _ in range(at):
            self.bot.keyClick(box, Qt.Key.Key_Down)
        self.settle()

    @property
    def table(self) -> QTableView:
        return self.find(QTableView, "The first rows as they are read")

    def heads(self) -> list[list[str]]:
        """What stands above each column: the field, the header, how sure."""
        model = self.table.model()
        across = Qt.Orientation.Horizontal
        return [str(model.headerData(at, across)).split("\n") for at in range(model.columnCount())]

    def cells(self, at: int) -> list[str]:
        model = self.table.model()
        return [str(model.index(at, column).data()) for column in range(model.columnCount())]

    def drag(self, field: str, column: int) -> None:
        """Drag a field's name from the list onto a column of the table."""
        fields = self.page.findChildren(QListWidget)[0]
        [item] = fields.findItems(field, Qt.MatchFlag.MatchEndsWith)
        mime = fields.model().mimeData([fields.indexFromItem(item)])
        where = QPoint(self.table.columnViewportPosition(column) + 5, 8)
        _let_go(self.table.viewport(), mime, where)
        self.settle()

    def drop(self, *paths: Path) -> None:
        """Drop files onto the page."""
        mime = QMimeData()
        mime.setUrls([QUrl.fromLocalFile(str(path)) for path in paths])
        _let_go(self.page.viewport(), mime, QPoint(40, 40))
        self.settle()

    def answer(self, *words: str) -> None:
        for each in words:
            self.press(each)

    def try_it(self) -> None:
        self.press("See what would happen")
        self.settle()

    def bring_in(self, words: str = "Bring ") -> None:
        self.press(words)
        self.settle()


def _let_go(place: QWidget, mime: QMimeData, where: QPoint) -> None:
    """Drag and drop by a source that would rather move; it is told that a copy was taken."""
    copy, move = Qt.DropAction.CopyAction, Qt.KeyboardModifier.ShiftModifier
    enters = QDragEnterEvent(where, copy | Qt.DropAction.MoveAction, mime, LEFT, move)
    QApplication.sendEvent(place, enters)
    assert (enters.isAccepted(), enters.dropAction()) == (True, copy)
    let_go = QDropEvent(QPointF(where), copy | Qt.DropAction.MoveAction, mime, LEFT, move)
    QApplication.sendEvent(place, let_go)
    assert (let_go.isAccepted(), let_go.dropAction()) == (True, copy)


def counted(record: ShopRecord, tables: Sequence[str] = ("job", "visit", "vehicle")) -> list[int]:
    from sqlalchemy import text

    with record.reading() as connection:
        return [
            int(connection.execute(text(f"SELECT count(*) FROM {name}")).scalar_one())
            for name in tables
        ]

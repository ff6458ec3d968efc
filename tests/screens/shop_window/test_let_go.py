"""What a page made and let go leaves nothing behind in memory, however often it is made."""

from __future__ import annotations

import ctypes
import gc
import sys
from collections.abc import Callable

import pytest
from PySide6.QtCore import QCoreApplication, QEvent
from PySide6.QtWidgets import QApplication, QLabel, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.shop_window.choice_list import ChoiceList
from desktop_app.shop_window.fields import LineField
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.look import dress

EACH = 10  # of a sort on one page
ROUNDS = 200  # the interpreter keeps some hundred blocks or not, however many these are


class _Held(ctypes.Structure):
    """What mallinfo2 returns: ten numbers."""

    _fields_ = [("numbers", ctypes.c_size_t * 10)]

    def out(self) -> int:
        """Return the bytes that are handed out (uordblks)."""
        return int(self.numbers[7])


def _lists(page: QWidget) -> None:
    for _ in range(EACH):
        ChoiceList(page).addItems(["wet", "dry"])


def _rows(page: QWidget) -> None:
    row = FlowRow()
    for _ in range(EACH):
        row.addWidget(QLabel("wet"))
    QVBoxLayout(page).addLayout(row)


def _fields(page: QWidget) -> None:
    for _ in range(EACH):
        LineField("Plate", lambda text: text, page)


def _make_and_let_go(window: QWidget, fill: Callable[[QWidget], None], rounds: int) -> None:
    for _ in range(rounds):
        page = QWidget(window)
        fill(page)
        page.show()
        QApplication.processEvents()
        page.deleteLater()
        del page
        QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


@pytest.mark.parametrize(("fill", "most"), [(_lists, 200), (_rows, 60), (_fields, 60)])
def test_a_page_made_again_and_again_holds_no_more_memory(
    app: QApplication, qtbot: QtBot, fill: Callable[[QWidget], None], most: int
) -> None:
    """As bytes that the C library has handed out; a list once left 600, a place in a row 88."""
    library = ctypes.CDLL(None)
    if not hasattr(library, "mallinfo2"):
        pytest.skip("only the GNU C library says what it has handed out")
    library.mallinfo2.restype = _Held
    dress(app)
    window = QWidget()
    qtbot.addWidget(window)
    window.show()
    _make_and_let_go(window, fill, 60)
    gc.collect()
    before, objects = library.mallinfo2().out(), sys.getallocatedblocks()
    _make_and_let_go(window, fill, ROUNDS)
    assert (library.mallinfo2().out() - before) / (ROUNDS * EACH) < most
    gc.collect()
    assert (sys.getallocatedblocks() - objects) / (ROUNDS * EACH) < 0.5

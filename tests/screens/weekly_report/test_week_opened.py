"""The week that was written is opened from the page, and its folder shown."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QObject, Qt, QUrl, Slot
from PySide6.QtGui import QDesktopServices
from PySide6.QtWidgets import QFileDialog, QLabel, QPushButton
from pytestqt.qtbot import QtBot

from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from desktop_app.weekly_report.screen.monday_book_page import MondayBookPage
from tests.watched_shop import a_week_of_returns

WAIT = 20_000  # ms; the library for many rows is read from disk the first time


class Computer(QObject):
    """Takes what the computer is asked to open."""

    def __init__(self) -> None:
        super().__init__()
        self.opened: list[Path] = []

    @Slot(QUrl)
    def take(self, url: QUrl) -> None:
        """Open a file or a folder."""
        self.opened.append(Path(url.toLocalFile()))


@pytest.fixture
def page(shop: ShopRecord, qtbot: QtBot) -> Iterator[MondayBookPage]:
    a_week_of_returns(shop)
    desk = Desk(shop)
    page = MondayBookPage(desk, {})
    qtbot.addWidget(page)
    page.resize(1100, 760)
    page.show()
    page.came_here()
    qtbot.waitUntil(lambda: not desk.errands.busy(), timeout=WAIT)
    yield page
    desk.errands.finish()


@pytest.fixture
def computer() -> Iterator[Computer]:
    computer = Computer()
    QDesktopServices.setUrlHandler("file", computer, "take")
    yield computer
    QDesktopServices.unsetUrlHandler("file")


def offered(page: MondayBookPage) -> dict[str, QPushButton]:
    return {one.text(): one for one in page.findChildren(QPushButton) if one.isVisible()}


def test_the_week_that_was_written_is_opened_and_its_folder_shown(
    page: MondayBookPage,
    computer: Computer,
    qtbot: QtBot,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    said = [one.text() for one in page.findChildren(QLabel) if one.isVisible()]
    assert "as a spreadsheet (XLSX)" in said
    assert "Open it" not in offered(page)
    mine = tmp_path / "mine.xlsx"
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(mine), ""))
    qtbot.mouseClick(offered(page)["Write the week"], Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: "Open it" in offered(page), timeout=WAIT)
    for words in ("Open it", "Show the folder"):
        qtbot.mouseClick(offered(page)[words], Qt.MouseButton.LeftButton)
    assert computer.opened == [mine, tmp_path]

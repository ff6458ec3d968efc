"""A window comes back as it was left, as far as there is room."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QByteArray, QSettings, QSize
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from desktop_app.shop_window.main_window import MainWindow


@pytest.fixture
def memory(tmp_path: Path) -> QSettings:
    return QSettings(str(tmp_path / "window.ini"), QSettings.Format.IniFormat)


def opened(qtbot: QtBot, memory: QSettings) -> MainWindow:
    """A window that is shown."""
    window = MainWindow(memory)
    qtbot.addWidget(window)
    window.show()
    qtbot.waitExposed(window)
    return window


def test_a_window_comes_back_as_large_as_it_was_left(qtbot: QtBot, memory: QSettings) -> None:
    first = opened(qtbot, memory)
    first.resize(700, 500)
    first.close()
    assert opened(qtbot, memory).size() == QSize(700, 500)


def test_one_that_was_maximized_comes_back_so(qtbot: QtBot, memory: QSettings) -> None:
    first = opened(qtbot, memory)
    first.showMaximized()
    first.close()
    assert opened(qtbot, memory).isMaximized()


@pytest.mark.parametrize("place", [QByteArray(), QByteArray(b"torn"), None, "text"])
def test_where_qt_restores_nothing_the_size_is_kept(
    qtbot: QtBot, memory: QSettings, place: object
) -> None:
    first = opened(qtbot, memory)
    first.resize(700, 500)
    first.close()
    memory.setValue("window/geometry", place)
    assert opened(qtbot, memory).size() == QSize(700, 500)


@pytest.mark.parametrize("size", [QSize(9000, 9000), QSize(), "text", None])
def test_what_no_screen_has_room_for_or_nobody_kept_is_as_usual(
    qtbot: QtBot, memory: QSettings, size: object
) -> None:
    memory.setValue("window/size", size)
    room = QApplication.primaryScreen().availableSize()
    shown = opened(qtbot, memory).size()
    assert shown.width() <= room.width()
    assert shown.height() <= room.height()
    assert shown.width() > room.width() // 2

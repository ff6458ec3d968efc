"""A second start finds the first window of the same shop, and no other."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

from PySide6.QtCore import QDir
from pytestqt.qtbot import QtBot

from desktop_app.shop_window.one_window import OneWindow, brought_forward

ASK = (
    "import sys; from pathlib import Path; from PySide6.QtCore import QCoreApplication; "
    "app = QCoreApplication([]); from desktop_app.shop_window.one_window import brought_forward; "
    "sys.exit(not brought_forward(Path(sys.argv[1])))"
)


def started_again(folder: Path) -> subprocess.Popen[bytes]:
    """Start a program that asks for the window of a folder's shop."""
    return subprocess.Popen([sys.executable, "-c", ASK, str(folder)])


def answering() -> set[Path]:
    """Return the places where windows of this computer answer, or answered."""
    return set(Path(QDir.tempPath()).glob("benchwitness-" + 16 * "[0-9a-f]"))


def test_the_first_window_is_told_and_the_second_start_ends(qtbot: QtBot, tmp_path: Path) -> None:
    one = OneWindow()
    one.hold(tmp_path)
    with qtbot.waitSignal(one.wanted, timeout=20_000):
        second = started_again(tmp_path)
    assert second.wait(20) == 0


def test_a_window_answers_soon_after_its_first_page(qtbot: QtBot, tmp_path: Path) -> None:
    one = OneWindow()
    one.hold_later(tmp_path / "other")
    one.hold_later(tmp_path)  # went on with another shop at once
    assert not brought_forward(tmp_path)
    before = answering()
    qtbot.waitUntil(lambda: bool(answering() - before) or sys.platform != "linux")
    assert not brought_forward(tmp_path / "other")
    with qtbot.waitSignal(one.wanted, timeout=20_000):
        second = started_again(tmp_path)
    assert second.wait(20) == 0
    one.close()


def test_another_shop_has_no_window_yet(qtbot: QtBot, tmp_path: Path) -> None:
    one = OneWindow()
    one.hold(tmp_path)
    assert not brought_forward(tmp_path / "other")
    one.hold(tmp_path / "other")  # the window went on with another shop
    assert not brought_forward(tmp_path)
    one.deleteLater()


def test_a_window_that_was_killed_is_in_nobodys_way(qtbot: QtBot, tmp_path: Path) -> None:
    held = (
        "import os, sys; from pathlib import Path; from PySide6.QtCore import QCoreApplication; "
        "app = QCoreApplication([]); from desktop_app.shop_window.one_window import OneWindow; "
        "one = OneWindow(); one.hold(Path(sys.argv[1])); os._exit(9)"
    )
    assert subprocess.call([sys.executable, "-c", held, str(tmp_path)]) == 9
    before = answering()
    assert not brought_forward(tmp_path)
    if sys.platform == "linux":
        assert len(before - answering()) == 1, "what it left behind is asked at every start"
    one = OneWindow()
    one.hold(tmp_path)
    with qtbot.waitSignal(one.wanted, timeout=20_000):
        second = started_again(tmp_path)
    assert second.wait(20) == 0

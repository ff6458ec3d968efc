"""What nobody foresaw: a calm sentence in the window, the details in the log, and it goes on."""

from __future__ import annotations

import sys
import threading
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QTimer, qDebug, qInstallMessageHandler, qWarning
from pytestqt.qtbot import QtBot

from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.last_resort import SAID, LastResort, keep_log

pytestmark = pytest.mark.expects_trouble_log
FORESEEN = ShopTrouble("The drawer is locked.")


class Resort:
    """The last resort at work, what it told, and the log beside it."""

    def __init__(self, log: Path) -> None:
        self.told: list[object] = []
        self._log = log
        self.catches = LastResort()
        self.catches.happened.connect(self.told.append)
        self.catches.install()

    def logged(self) -> str:
        return self._log.read_text("utf-8")


@pytest.fixture
def resort(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Resort]:
    for place in (sys, threading):  # brought back after the test
        monkeypatch.setattr(place, "excepthook", place.excepthook)
    before = qInstallMessageHandler(None)
    close = keep_log(tmp_path)
    yield Resort(tmp_path / "benchwitness.log")
    close()
    qInstallMessageHandler(before)


def fails_with(error: Exception) -> Callable[[], None]:
    def fail() -> None:
        raise error

    return fail


def test_a_mistake_is_told_calmly_and_its_details_are_written_down(
    qtbot: QtBot, resort: Resort, capfd: pytest.CaptureFixture[str]
) -> None:
    with qtbot.waitSignal(resort.catches.happened):
        QTimer.singleShot(0, fails_with(LookupError("no such drawer")))
    assert resort.told == [SAID]
    assert "ERROR not foreseen\nTraceback" in resort.logged()
    assert "LookupError: no such drawer" in resort.logged()
    assert "drawer" not in SAID.sentence()
    assert "Traceback" not in "".join(capfd.readouterr())


def test_a_trouble_that_nobody_told_is_told_in_its_own_words(qtbot: QtBot, resort: Resort) -> None:
    with qtbot.waitSignal(resort.catches.happened):
        QTimer.singleShot(0, fails_with(FORESEEN))
    assert resort.told == [FORESEEN]
    assert resort.logged() == ""


def test_what_fails_again_while_it_is_told_is_only_written_down(
    qtbot: QtBot, resort: Resort
) -> None:
    def told(_trouble: object) -> None:
        sys.excepthook(ValueError, ValueError("painted wrongly"), None)

    resort.catches.happened.connect(told)
    with qtbot.waitSignal(resort.catches.happened):
        QTimer.singleShot(0, fails_with(LookupError("no such drawer")))
    assert resort.told == [SAID]
    assert "ValueError: painted wrongly" in resort.logged()


def test_a_mistake_in_a_thread_is_written_down(resort: Resort) -> None:
    thread = threading.Thread(target=fails_with(LookupError("no such drawer")))
    thread.start()
    thread.join()
    assert "not foreseen in a thread" in resort.logged()
    assert "LookupError: no such drawer" in resort.logged()
    assert resort.told == []


def test_who_ends_the_program_at_the_terminal_ends_it(
    resort: Resort, monkeypatch: pytest.MonkeyPatch
) -> None:
    ended: list[type[BaseException]] = []
    monkeypatch.setattr(sys, "__excepthook__", lambda kind, *_: ended.append(kind))
    sys.excepthook(KeyboardInterrupt, KeyboardInterrupt(), None)
    assert ended == [KeyboardInterrupt]
    assert (resort.told, resort.logged()) == ([], "")


def test_what_the_window_system_warns_of_is_written_down(resort: Resort) -> None:
    qWarning("no such cursor")
    qWarning("This plugin does not support propagateSizeHints()")
    qDebug("drawn")
    assert [line.partition("WARNING ")[2] for line in resort.logged().splitlines()] == [
        "Qt: no such cursor"
    ]


def test_where_no_log_can_be_written_the_program_goes_on(tmp_path: Path) -> None:
    keep_log(tmp_path / "gone")()
    assert list(tmp_path.iterdir()) == []

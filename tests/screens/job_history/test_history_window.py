"""The history of a job in its window: read, walked through, undone from, sealed."""

from __future__ import annotations

import zipfile
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFileDialog, QLabel, QPushButton, QTableView
from pytestqt.qtbot import QtBot

from desktop_app.job_history.screen.history_window import HistoryWindow
from desktop_app.repair_jobs.actions import name_cause, write_correction
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.texts import PlainLabel
from tests.job_history.told import SYMPTOMS, verified
from tests.parts_compared.sheet_story import a_job, kinds
from tests.screens.photo_desk import named

LIST = "What was done to this job, newest first"
UNDO = "Undo this entry: take back the marked entry alone"
SEAL = "Sealed copy of this job"


@pytest.fixture
def desk(qtbot: QtBot, shop: ShopRecord) -> Iterator[Desk]:
    """A desk with one job, on which Tuuli has worked."""
    shop.who = "Tuuli"
    job = a_job(shop)
    name_cause(shop, job, "Cap cracked.")
    name_cause(shop, job, "Cap tracked.")
    write_correction(shop, job, "Cap and rotor.")
    desk = Desk(shop)
    yield desk
    desk.errands.finish()


@pytest.fixture
def window(qtbot: QtBot, desk: Desk) -> HistoryWindow:
    """The window, when it has read the history."""
    window = HistoryWindow(desk, kinds(), SYMPTOMS, 1)
    qtbot.addWidget(window)
    window.show()
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    settled(qtbot, desk)
    return window


def settled(qtbot: QtBot, desk: Desk) -> None:
    qtbot.waitUntil(lambda: not desk.errands.busy(), timeout=20_000)


def rows(window: HistoryWindow) -> list[list[str]]:
    model = named(window, QTableView, LIST).model()
    across = range(model.columnCount())
    return [
        [str(model.index(row, column).data()) for column in across]
        for row in range(model.rowCount())
    ]


def said(window: HistoryWindow) -> str:
    return "\n".join(one.text() for one in window.findChildren(QLabel) if one.isVisible())


def down(qtbot: QtBot, window: HistoryWindow, times: int) -> None:
    table = named(window, QTableView, LIST)
    table.setFocus()
    for _ in range(times):
        qtbot.keyClick(table, Qt.Key.Key_Down)


def press(qtbot: QtBot, window: HistoryWindow, name: str) -> None:
    qtbot.mouseClick(named(window, QPushButton, name), Qt.MouseButton.LeftButton)


def cause(desk: Desk) -> str:
    return str(desk.ask(read_job, 1).cause)


def test_it_lists_what_was_done_with_when_who_and_how_it_stands(window: HistoryWindow) -> None:
    assert window.windowTitle() == "History of job J-104"
    whole = rows(window)
    assert whole[0] == [
        "5",
        "16 November 2026, 12:00",
        "Tuuli",
        "Write down the correction",
        "●  holds",
    ]
    assert whole[-1][3] == "Take a car in"
    assert "Correction: “Rotor replaced.” → “Cap and rotor.”" in said(window)


def test_the_keys_walk_through_it(qtbot: QtBot, window: HistoryWindow) -> None:
    down(qtbot, window, 1)
    assert "Cause: “Cap cracked.” → “Cap tracked.”" in said(window)
    down(qtbot, window, 1)
    assert "Cause: “Rotor tip burned back.” → “Cap cracked.”" in said(window)


def test_undo_from_here_takes_back_the_marked_entry_alone(
    qtbot: QtBot, desk: Desk, window: HistoryWindow
) -> None:
    down(qtbot, window, 1)
    press(qtbot, window, UNDO)
    settled(qtbot, desk)
    assert cause(desk) == "Cap cracked."
    assert desk.ask(read_job, 1).correction == "Cap and rotor."
    assert rows(window)[0][3:] == ["Name the cause", "↶  undoes"]
    assert rows(window)[2][3:] == ["Name the cause", "○  undone"]
    assert "It is undone already." in said(window)  # the entry stays marked
    assert not named(window, QPushButton, UNDO).isEnabled()


def test_it_is_refused_in_this_window_with_who_and_what(
    qtbot: QtBot, desk: Desk, window: HistoryWindow
) -> None:
    down(qtbot, window, 2)
    press(qtbot, window, UNDO)
    assert "Tuuli has changed it since (Name the cause)" in said(window)
    assert cause(desk) == "Cap tracked."
    assert named(window, QPushButton, UNDO).isEnabled()


def test_it_follows_what_is_done_elsewhere(qtbot: QtBot, desk: Desk, window: HistoryWindow) -> None:
    assert desk.do(name_cause, 1, "Lead cracked.")
    settled(qtbot, desk)
    assert rows(window)[0][3] == "Name the cause"
    desk.undo()
    settled(qtbot, desk)
    assert [row[4] for row in rows(window)[:2]] == ["↶  undoes", "○  undone"]


def test_the_taking_in_of_the_job_can_be_undone_and_is_told(
    qtbot: QtBot, desk: Desk, window: HistoryWindow
) -> None:
    for _ in range(3):
        desk.undo()
    settled(qtbot, desk)
    down(qtbot, window, len(rows(window)))
    press(qtbot, window, UNDO)
    qtbot.waitUntil(lambda: "not in the record any more" in said(window))
    assert rows(window) == []
    assert not named(window, QPushButton, UNDO).isEnabled()
    assert not named(window, QPushButton, SEAL).isEnabled()


def test_the_sealed_copy_is_written_where_it_is_wanted(
    qtbot: QtBot,
    desk: Desk,
    window: HistoryWindow,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    offered: list[str] = []

    def choose(_parent: object, _title: str, name: str, _kinds: str) -> tuple[str, str]:
        offered.append(Path(name).name)
        return str(tmp_path / "dispute"), ""

    monkeypatch.setattr(QFileDialog, "getSaveFileName", choose)
    press(qtbot, window, SEAL)
    assert not named(window, QPushButton, SEAL).isEnabled()
    settled(qtbot, desk)
    assert offered == ["sealed-copy-J-104.zip"]
    assert f"Written to {tmp_path / 'dispute.zip'}." in said(window)
    with zipfile.ZipFile(tmp_path / "dispute.zip") as archive:
        archive.extractall(tmp_path)
    folder = tmp_path / "sealed-copy-J-104"
    assert verified(folder)[0] == 0
    assert (folder / "seal.txt").read_text("utf-8").strip() in said(window)
    assert desk.do(name_cause, 1, "Lead cracked.")
    settled(qtbot, desk)
    assert "Its seal is" in said(window)  # what is done meanwhile doesn't take it away
    press(qtbot, window, SEAL)
    settled(qtbot, desk)
    assert "is there already" in said(window)
    assert named(window, QPushButton, SEAL).isEnabled()


def test_nothing_typed_is_taken_for_markup(qtbot: QtBot, desk: Desk, window: HistoryWindow) -> None:
    assert desk.do(name_cause, 1, "<b>bold</b> <img src='x'>")
    settled(qtbot, desk)
    qtbot.keyClick(named(window, QTableView, LIST), Qt.Key.Key_Up)
    assert "“<b>bold</b> <img src='x'>”" in said(window)
    assert all(isinstance(one, PlainLabel) for one in window.findChildren(QLabel))


def test_escape_closes_it_also_while_it_reads(qtbot: QtBot, desk: Desk) -> None:
    window = HistoryWindow(desk, kinds(), SYMPTOMS, 1)
    window.show()
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    with qtbot.waitSignal(window.destroyed):
        qtbot.keyClick(window, Qt.Key.Key_Escape)
    settled(qtbot, desk)
    assert desk.do(name_cause, 1, "Nobody listens any more.")


def test_all_controls_have_names(window: HistoryWindow) -> None:
    for one in (*window.findChildren(QPushButton), *window.findChildren(QTableView)):
        assert one.accessibleName()

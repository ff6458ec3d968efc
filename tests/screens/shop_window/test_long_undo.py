"""Undo and redo of a large import: beside the window, told, stopped, and one at a time."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QToolButton, QWidget
from pytestqt.qtbot import QtBot
from sqlalchemy import text

from desktop_app.repair_jobs import actions
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.under_way import FILE_NAME
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.main_window import MainWindow
from tests.records_exchanged.importing import a_shop, bring_in, everything, lines
from tests.records_exchanged.test_writing import FIRST
from tests.screens.records_page import WAIT

JOBS = 300


class Frame:
    """A window without pages, in whose shop an import was the last deed."""

    def __init__(self, record: ShopRecord, bot: QtBot) -> None:
        self.record, self.bot = record, bot
        rows = [{**FIRST, "job_number": f"A{n}", "plate": f"TH {n}"} for n in range(JOBS)]
        bring_in(record, lines(*rows))
        self.full = everything(record)
        self.window = MainWindow()
        self.window.resize(1366, 768)  # where undo and redo say their words
        bot.addWidget(self.window)
        self.desk = Desk(record, self.window)
        self.window.attend(self.desk)
        self.window.add_place("Bench", QWidget)
        self.window.go_to("Bench")
        self.window.show()

    def press(self, word: str) -> None:
        button = next(b for b in self.window.findChildren(QToolButton) if word in b.text())
        assert button.isEnabled()
        self.bot.mouseClick(button, Qt.MouseButton.LeftButton)

    def says(self, words: str) -> None:
        """Wait until the strip at the foot says so."""
        self.bot.waitUntil(lambda: words in self.window.strip.words(), timeout=WAIT)

    def jobs(self) -> int:
        return len(everything(self.record)["job"])


@pytest.fixture
def frame(tmp_path: Path, qtbot: QtBot) -> Iterator[Frame]:
    for record in a_shop(tmp_path):
        frame = Frame(record, qtbot)
        yield frame
        frame.desk.errands.finish()


def test_a_large_import_is_undone_and_done_again_beside_the_window(frame: Frame) -> None:
    touched: list[frozenset[str]] = []
    frame.desk.changed.connect(lambda done: touched.append(done.touched))
    frame.press("Undo")
    assert frame.jobs() == JOBS  # the window did not wait for it
    frame.says("Undone: Import jobs.csv.")
    assert frame.jobs() == 0
    frame.press("Redo")
    frame.says("Done again: Import jobs.csv.")
    assert everything(frame.record) == frame.full
    assert len(touched) == 2
    assert all("job" in each for each in touched)


def test_it_says_how_far_it_is(frame: Frame) -> None:
    steps: list[Step] = []
    frame.desk.errands.started.connect(lambda errand: errand.stepped.connect(steps.append))
    frame.press("Undo")
    frame.says("Undone")
    assert [step.done for step in steps] == sorted({step.done for step in steps})
    assert steps[0].words.startswith("Undo: Import jobs.csv: ")
    assert steps[-1].done == steps[-1].of > JOBS


def test_one_that_is_stopped_leaves_all_as_it_was(frame: Frame) -> None:
    def stop_at_the_first_step(errand: object) -> None:
        errand.stepped.connect(lambda _: errand.stop())  # type: ignore[attr-defined]

    frame.desk.errands.started.connect(stop_at_the_first_step)
    frame.press("Undo")
    frame.bot.waitUntil(lambda: not frame.desk.errands.busy(), timeout=WAIT)
    frame.says("Stopped. Nothing was changed.")
    assert everything(frame.record) == frame.full
    assert frame.record.can_undo() == "Import jobs.csv"


def test_a_second_one_and_other_deeds_are_refused_meanwhile(frame: Frame) -> None:
    tried: list[str] = []

    def write_now(errand: object) -> None:
        def at_a_step(_: Step) -> None:
            said = (frame.record.folder / FILE_NAME).read_text("utf-8")
            tried.append(said)

        errand.stepped.connect(at_a_step)  # type: ignore[attr-defined]

    frame.desk.errands.started.connect(write_now)
    frame.press("Undo")
    frame.press("Undo")
    assert frame.window.strip.words() == "“Undo: Import jobs.csv” is under way. Wait for it."
    frame.says("Undone")
    assert tried
    assert set(tried) == {"Undo: Import jobs.csv"}
    assert not (frame.record.folder / FILE_NAME).exists()


def test_one_that_is_refused_says_why_and_leaves_the_way_free(frame: Frame) -> None:
    told: list[str] = []
    frame.desk.told.connect(lambda said: told.append(str(said)))
    frame.desk.do(actions.add_person, "Tuuli")
    frame.press("Undo")
    with frame.record.deed("From outside") as deed:
        deed.connection.execute(text("UPDATE job SET cause = 'else' WHERE id = 1"))
    told.clear()
    for _ in range(2):
        frame.press("Undo")
        frame.says("something of what it added was changed since")
        frame.bot.waitUntil(lambda: not frame.desk.errands.busy(), timeout=WAIT)
    assert len(told) == 2
    assert frame.jobs() == JOBS


def test_a_small_deed_is_undone_at_once(frame: Frame) -> None:
    frame.desk.do(actions.add_person, "Tuuli")
    frame.press("Undo")
    assert frame.window.strip.words() == "Undone: Add Tuuli."
    assert not frame.desk.errands.busy()

"""Someone who never saw the program asks whether a fault was here before, and starts from it."""

from __future__ import annotations

from datetime import UTC, datetime
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit, QListView, QPlainTextEdit
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_window.desk import Desk
from tests.shop_stories.counter import Counter, sitting

MONDAY = datetime(2026, 3, 2, 8, 0, tzinfo=UTC)
ASK, IN_THEIR_WORDS = "Ask the old jobs", "What the customer says"
CHECKED = "Looked into the distributor cap in the dark"


def write_what_was_here(desk: Desk) -> None:
    """Write two cars that missed in the rain and one whose brakes squealed."""
    for number, concern in enumerate(
        ("engine misses in the rain", "misses badly when it rains", "brakes squeal"), 1
    ):
        said = WriteUp(
            concern,
            plate=f"TH {number}",
            odometer=1000,
            symptoms=("brake-squeal",) if number == 3 else ("misfire-random",),
        )
        done = desk.do(actions.write_up, said)
        assert done is not None
        assert done.made is not None
        desk.do(actions.write_finding, done.made, CHECKED)
        desk.do(actions.name_cause, done.made, "Cap tracked, for it was cracked")
        desk.do(actions.write_correction, done.made, "Cap renewed")
        desk.do(actions.hand_over, done.made)


def open_what_fixed_it(at: Counter) -> None:
    """Ask in a customer's words, with mistakes, and open the number behind what was done."""
    at.type_into(QLineEdit, ASK, "teh engin misses wen raining")
    at.wait_for("What was done here before")
    found = at.find(QListView, "Jobs found")
    assert str(found.model().index(0, 0).data()).startswith(("J-101", "J-102"))
    at.press("Cap renewed: 2 jobs")
    at.wait_for("Cap renewed: 2 jobs.")
    assert found.model().rowCount() == 2


def test_a_fault_that_was_here_before_starts_the_next_job(qtbot: QtBot, tmp_path: Path) -> None:
    with sitting(qtbot, tmp_path / "shop", MONDAY) as at:
        desk = at.program.desk
        assert desk is not None
        write_what_was_here(desk)
        at.go("Heard")
        at.type_into(QPlainTextEdit, IN_THEIR_WORDS, "it shakes too")
        at.go("Ask the Old Jobs")
        open_what_fixed_it(at)
        qtbot.keyClick(at.find(QListView, "Jobs found"), Qt.Key.Key_Down)
        at.picture(tmp_path, "behind-the-number")
        at.press("Start a job like this one")
        qtbot.waitUntil(lambda: at.window.here() == "Heard")
        words = at.find(QPlainTextEdit, IN_THEIR_WORDS)
        assert words.toPlainText() == "it shakes too\nengine misses in the rain"
        assert at.reads(CHECKED)
        assert not at.reads("Cap tracked")
        assert not at.reads("Cap renewed")
        at.type_into(QLineEdit, "Plate", "TH 9")
        at.type_into(QLineEdit, "Odometer", "2000")
        at.picture(tmp_path, "started-like-it")
        at.press("Take the car in")
        qtbot.waitUntil(lambda: at.window.here() == "Job")
        job = desk.ask(read_job, 4)
        at.wait_for("Similar jobs here")  # beside the new job's concern, itself not among them
        similar = at.find(QListView, "Similar jobs").model()
        shown = [str(similar.index(row, 0).data())[:5] for row in range(similar.rowCount())]
        assert {"J-101", "J-102"} <= set(shown)
        assert "J-104" not in shown
        assert job.concern == "it shakes too\nengine misses in the rain"
        assert (job.cause, job.correction, job.checks) == ("", "", ())


def test_what_was_checked_then_outlives_the_window(qtbot: QtBot, tmp_path: Path) -> None:
    shop = tmp_path / "shop"
    with sitting(qtbot, shop, MONDAY) as at:
        assert at.program.desk is not None
        write_what_was_here(at.program.desk)
        at.type_into(QLineEdit, ASK, "misses", enter=False)
        at.wait_for("What was done here before")
        qtbot.keyClick(at.find(QLineEdit, ASK), Qt.Key.Key_Down)
        at.press("Start a job like this one")
        at.wait_for(CHECKED)
    with sitting(qtbot, shop, MONDAY) as at:
        at.go("Heard")
        assert at.reads(CHECKED)
        at.press("Empty the form")
        assert not at.reads(CHECKED)

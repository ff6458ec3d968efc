"""What was typed on one job never lands on another, whatever was refused."""

from __future__ import annotations

from datetime import UTC, datetime
from pathlib import Path

from PySide6.QtWidgets import QLineEdit, QPlainTextEdit
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.write_up import WriteUp
from tests.shop_stories.counter import sitting

MONDAY = datetime(2026, 3, 2, 8, 0, tzinfo=UTC)


def test_a_refused_value_keeps_its_job_open(qtbot: QtBot, tmp_path: Path) -> None:
    with sitting(qtbot, tmp_path / "shop", MONDAY) as at:
        desk = at.program.desk
        assert desk is not None
        for plate in ("TH 1", "TH 2"):
            desk.do(actions.write_up, WriteUp("misses", plate=plate, odometer=1000))
        at.type_into(QLineEdit, "Ask the old jobs", "J-101", enter=True)
        qtbot.waitUntil(lambda: at.window.here() == "Job")
        at.type_into(QLineEdit, "Hours", "a lot")
        at.go("Ask the Old Jobs")
        at.type_into(QLineEdit, "Ask the old jobs", "J-102", enter=True)
        at.wait_for("“Hours” under “Back On” of J-101 is not accepted")
        assert at.find(QLineEdit, "Hours").text() == "a lot"
        at.type_into(QLineEdit, "Hours", "1.5", enter=True)
        at.type_into(QPlainTextEdit, "What was done", "rotor replaced")
        at.go("Ask the Old Jobs")
        at.type_into(QLineEdit, "Ask the old jobs", "J-102", enter=True)
        qtbot.waitUntil(lambda: at.reads("J-102   TH 2"))
        assert at.find(QPlainTextEdit, "What was done").toPlainText() == ""
        assert desk.ask(read_job, 1).correction == "rotor replaced"
        assert desk.ask(read_job, 2).correction == ""


def test_the_line_at_closing_names_the_job_and_the_place(qtbot: QtBot, tmp_path: Path) -> None:
    with sitting(qtbot, tmp_path / "shop", MONDAY) as at:
        desk = at.program.desk
        assert desk is not None
        desk.do(actions.write_up, WriteUp("misses", plate="TH 1", odometer=1000))
        at.type_into(QLineEdit, "Ask the old jobs", "J-101", enter=True)
        qtbot.waitUntil(lambda: at.window.here() == "Job")
        at.type_into(QLineEdit, "It came about once in", "now and then", enter=True)
        assert not at.window.close()
        said = "“It came about once in” under “Proof” of J-101 is not accepted."
        assert said in at.window.strip.words()


def test_an_odometer_out_stays_typed_over_another_job_and_over_closing(
    qtbot: QtBot, tmp_path: Path
) -> None:
    with sitting(qtbot, tmp_path / "shop", MONDAY) as at:
        desk = at.program.desk
        assert desk is not None
        for plate in ("TH 1", "TH 2"):
            desk.do(actions.write_up, WriteUp("misses", plate=plate, odometer=1000))
        at.type_into(QLineEdit, "Ask the old jobs", "J-101", enter=True)
        qtbot.waitUntil(lambda: at.window.here() == "Job")
        at.type_into(QLineEdit, "Odometer out", "1012", enter=True)
        at.go("Ask the Old Jobs")
        at.type_into(QLineEdit, "Ask the old jobs", "J-102", enter=True)
        qtbot.waitUntil(lambda: at.reads("J-102   TH 2"))
        assert at.find(QLineEdit, "Odometer out").text() == ""
        assert at.window.close()
    with sitting(qtbot, tmp_path / "shop", MONDAY) as at:
        at.go("Ask the Old Jobs")  # it opens on the job that was left
        at.type_into(QLineEdit, "Ask the old jobs", "J-101", enter=True)
        qtbot.waitUntil(lambda: at.reads("J-101   TH 1"))
        assert at.find(QLineEdit, "Odometer out").text() == "1012"
        desk = at.program.desk
        assert desk is not None
        desk.do(actions.hand_over, 1, 1012)
        assert (tmp_path / "shop" / "drafts.json").read_text("utf-8") == "{}"

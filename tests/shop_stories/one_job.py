"""A counter with a person, a job and a pair laid side by side: something stands everywhere."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, datetime
from pathlib import Path

from PySide6.QtWidgets import QLineEdit
from pytestqt.qtbot import QtBot

from desktop_app.parts_compared.actions import lay_side_by_side
from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_window.place_names import ASK, JOB
from tests.shop_stories.counter import Counter, sitting

MONDAY = datetime(2026, 3, 2, 8, 0, tzinfo=UTC)
SMALL = (1366, 768)  # pixels of a small counter screen


@contextmanager
def one_job(qtbot: QtBot, folder: Path) -> Iterator[Counter]:
    """Sit at it while the block runs."""
    with sitting(qtbot, folder, MONDAY) as at:
        desk = at.program.desk
        assert desk is not None
        desk.do(actions.add_person, "Tuuli")
        desk.do(actions.write_up, WriteUp("misses when damp", plate="TH 1", odometer=1000))
        desk.do(lay_side_by_side, 1, "distributor-rotor")
        yield at


def open_job(at: Counter) -> None:
    """Find the job by its number and open it."""
    at.go(ASK)
    at.type_into(QLineEdit, "Ask the old jobs", "J-101", enter=True)
    at.bot.waitUntil(lambda: at.window.here() == JOB)

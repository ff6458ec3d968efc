"""One job at the counter, written at once or by a person's clicks, as stories begin and go on."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, datetime
from pathlib import Path

from PySide6.QtWidgets import QLineEdit, QPlainTextEdit
from pytestqt.qtbot import QtBot

from desktop_app.parts_compared.actions import lay_side_by_side
from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_window.place_names import ASK, JOB
from tests.shop_stories.counter import Counter, sitting

MONDAY = datetime(2026, 3, 2, 8, 0, tzinfo=UTC)
SMALL = (1366, 768)  # pixels of a small counter screen


@contextmanager
def one_job(qtbot: QtBot, folder: Path, today: datetime = MONDAY) -> Iterator[Counter]:
    """Sit at a counter with a person, a job and a pair: something stands everywhere."""
    with sitting(qtbot, folder, today) as at:
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


def write_up(at: Counter, concern: str, odometer: str) -> None:
    """Fill the page for a car that is here; it is not taken in yet."""
    at.type_into(QLineEdit, "Plate, or the shop's own tag", "TH 1042")
    at.type_into(QLineEdit, "What kind of car", "1.8-litre compact hatchback, 1990s")
    at.type_into(QLineEdit, "Odometer", odometer)
    at.type_into(QPlainTextEdit, "What the customer says", concern)


def take_in(at: Counter, concern: str, odometer: str) -> None:
    """Write up a hatchback and take it in; its job is shown then."""
    at.press("A car is here")
    write_up(at, concern, odometer)
    at.press("Take the car in")
    at.bot.waitUntil(lambda: at.window.here() == JOB)


def find_the_cause(at: Counter) -> None:
    """Say on the job's page what was found, from the code to the cause."""
    at.choose("System", "Ignition")
    at.type_into(QLineEdit, "Trouble codes, found", "P0300", enter=True)
    at.type_into(QLineEdit, "What was seen or tried", "cap crusted, tip burned back", enter=True)
    at.type_into(QPlainTextEdit, "Cause", "tip burned back, shown by the gap")
    at.leave()


def finish(at: Counter) -> None:
    """Say what was done and how it was proved; the car may leave then."""
    at.type_into(QPlainTextEdit, "What was done", "rotor replaced")
    at.leave()
    at.press("Proved: road")
    at.press("Nothing was declined or left undone")

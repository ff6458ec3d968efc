"""Enter in a line of a job's page keeps it and goes on, so that no two answers get into one."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLineEdit, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.fields import LineField
from tests.screens.job_desk import JobDesk


class AtLines(JobDesk):
    """Types at the page of job 1, wherever the cursor is."""

    def line(self, name: str) -> QLineEdit:
        """Find a line by its name."""
        lines = self.page.findChildren(QLineEdit)
        return next(one for one in lines if one.accessibleName() == name and one.isVisible())

    def enter(self, text: str) -> None:
        """Type where the cursor is, and Enter."""
        self.bot.keyClicks(focus(), text)
        self.bot.keyClick(focus(), Qt.Key.Key_Return)


def focus() -> QWidget:
    found = QApplication.focusWidget()
    assert found is not None
    return found


@pytest.fixture
def at(qtbot: QtBot, shop: ShopRecord) -> Iterator[AtLines]:
    actions.write_up(shop, WriteUp("misses", plate="TH 1", odometer=100_000))
    at = AtLines(qtbot, shop)
    at.page.activateWindow()
    qtbot.waitUntil(at.page.isActiveWindow)
    yield at
    at.desk.errands.finish()


def test_figures_are_typed_one_after_the_other_with_enter(at: AtLines) -> None:
    at.line("Hours").setFocus()
    for text in ("2", "0.5", "180"):
        at.enter(text)
    with at.shop.reading() as connection:
        job = read_job(connection, 1)
    assert (job.hours, job.unbilled_hours, job.price_cents) == (2.0, 0.5, 18_000)


def test_enter_leads_on_from_each_line_that_makes_no_row(at: AtLines) -> None:
    lines = [one for one in at.page.findChildren(LineField) if one.isVisible()]
    led = {}
    for line in lines:
        line.setFocus()
        at.bot.keyClick(line, Qt.Key.Key_Return)
        led[line.accessibleName()] = focus() is not line
    rows = {one.accessibleName() for one in lines if one.makes_rows}
    assert {name for name, on in led.items() if not on} <= rows
    assert {"Hours", "Driven", "It came about once in", "Plate", "Odometer out"} <= {*led} - rows


def test_a_refused_line_keeps_the_cursor_and_a_row_line_waits_for_the_next(at: AtLines) -> None:
    every = at.line("It came about once in")
    every.setFocus()
    at.enter("now and then")
    assert focus() is every
    finding = at.line("What was seen or tried")
    finding.setFocus()
    at.enter("cap crusted")
    assert focus() is finding
    assert finding.text() == ""

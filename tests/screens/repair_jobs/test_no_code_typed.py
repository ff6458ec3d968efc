"""“None” typed where codes are written down: the answer is given, or it is said where it stands."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import QLabel, QLineEdit
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.proof import CODES_READ, ProofLevel
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.record import ShopRecord
from tests.screens.job_desk import JobDesk

FOUND, AFTER = "Trouble codes, found", "Trouble codes, after repair"
TICKED = (
    "Ticked as done above: The codes read again afterwards, the pending ones too: none is left."
)
NOT_WRITTEN = "That no code was pending afterwards is not written down."


class AtCodes(JobDesk):
    """The page of job 1, with codes to be typed."""

    def line(self, name: str) -> QLineEdit:
        """Find a line by its name."""
        lines = self.page.findChildren(QLineEdit)
        return next(one for one in lines if one.accessibleName() == name)

    def enter(self, name: str, words: str) -> None:
        """Type into a line, and press Enter."""
        line = self.line(name)
        line.setFocus()
        line.clear()
        self.bot.keyClicks(line, words)
        self.bot.keyClick(line, Qt.Key.Key_Return)
        QCoreApplication.processEvents()

    def says(self, words: str) -> bool:
        """Tell whether the page says this."""
        labels = self.page.findChildren(QLabel)
        return any(words in one.text() for one in labels if one.isVisible())

    def job(self) -> JobView:
        """Read the job."""
        with self.shop.reading() as connection:
            return read_job(connection, 1)


@pytest.fixture
def at(qtbot: QtBot, shop: ShopRecord) -> AtCodes:
    """A job that is said to be proved over a full trip."""
    actions.write_up(shop, WriteUp("misses when damp", plate="TH 1", odometer=1000))
    actions.say_proof(shop, 1, int(ProofLevel.FULL_TRIP))
    return AtCodes(qtbot, shop)


@pytest.mark.parametrize("said", ["none", "No codes.", "no code", "No fault codes", "nothing"])
def test_none_after_the_repair_ticks_the_check_that_says_so(at: AtCodes, said: str) -> None:
    assert at.says(NOT_WRITTEN)
    at.enter(AFTER, said)
    assert at.job().ticked("proof", [CODES_READ]) == {CODES_READ: "done"}
    assert at.line(AFTER).text() == ""
    assert at.says(TICKED)
    assert not at.says(NOT_WRITTEN)


def test_what_was_ticked_so_is_one_deed_and_is_no_longer_told_once_taken_back(at: AtCodes) -> None:
    at.enter(AFTER, "none")
    at.enter(AFTER, "none")  # again: it is ticked, and stays so
    assert at.says(TICKED)
    at.desk.undo()
    QCoreApplication.processEvents()
    assert at.job().ticked("proof", [CODES_READ]) == {CODES_READ: ""}
    assert not at.says(TICKED)


def test_none_found_is_told_to_be_a_finding(at: AtCodes) -> None:
    at.enter(FOUND, "none")
    assert at.says("That no code was stored is a finding: write it down as one, below.")
    assert at.line(FOUND).text() == "none"
    assert not at.job().checks


def test_what_says_less_is_no_such_answer(at: AtCodes) -> None:
    at.enter(AFTER, "none stored")
    assert at.says("“none stored” is not a trouble code.")
    assert not at.job().checks

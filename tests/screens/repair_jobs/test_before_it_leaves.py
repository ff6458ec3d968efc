"""Before the car leaves: what stands refused is mended first; who and which system are asked."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import QApplication, QComboBox, QLabel, QLineEdit, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.screen.gone_section import GoneSection
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.record import ShopRecord
from tests.screens.job_desk import JobDesk

EVERY = "It came about once in"
TO_MEND = "To mend or empty: “It came about once in” under “Proof” is not accepted."


class AtGone(JobDesk):
    """The page of job 1, on which everything is said that has to be."""

    def __init__(self, bot: QtBot, shop: ShopRecord) -> None:
        super().__init__(bot, shop)
        gone = self.page.findChild(GoneSection)
        assert gone is not None
        gone.answer_wanted.connect(self.page.go_to_answer)

    def line(self, name: str) -> QLineEdit:
        """Find a line by its name."""
        lines = self.page.findChildren(QLineEdit)
        return next(one for one in lines if one.accessibleName() == name)

    def type(self, name: str, words: str) -> None:
        """Put words in the place of what stands in a line, and leave it."""
        line = self.line(name)
        line.setFocus()
        line.selectAll()
        self.bot.keyClicks(line, words)
        if not words:
            self.bot.keyClick(line, Qt.Key.Key_Delete)
        self.bot.keyClick(line, Qt.Key.Key_Tab)

    def press(self, words: str) -> None:
        """Click the button with these words."""
        QCoreApplication.processEvents()
        shown = [one for one in self.page.findChildren(QPushButton) if one.isVisible()]
        button = next(one for one in shown if words in one.text())
        self.bot.mouseClick(button, Qt.MouseButton.LeftButton)

    def says(self, words: str) -> bool:
        """Tell whether the page says this."""
        QCoreApplication.processEvents()
        return any(words in one.text() for one in self.page.findChildren(QLabel) if one.isVisible())

    def job(self) -> JobView:
        """The job as it is kept."""
        with self.shop.reading() as connection:
            return read_job(connection, 1)

    def choose(self, name: str, words: str) -> None:
        """Choose from a list with the keys."""
        fields = self.page.findChildren(QComboBox)
        field = next(one for one in fields if one.accessibleName() == name)
        field.setFocus()
        while field.currentText() != words:
            before = field.currentIndex()
            self.bot.keyClick(field, Qt.Key.Key_Down)
            assert field.currentIndex() != before, f"“{words}” is not offered"


def focus() -> QWidget:
    found = QApplication.focusWidget()
    assert found is not None
    return found


@pytest.fixture
def at(qtbot: QtBot, shop: ShopRecord) -> Iterator[AtGone]:
    actions.add_person(shop, "Odile")
    actions.write_up(shop, WriteUp("misses", plate="TH 1", odometer=100_000))
    actions.name_cause(shop, 1, "tip burned back")
    actions.write_correction(shop, 1, "rotor replaced")
    actions.say_proof(shop, 1, 0)
    actions.say_declined(shop, 1, "nothing")
    at = AtGone(qtbot, shop)
    at.page.activateWindow()
    qtbot.waitUntil(at.page.isActiveWindow)
    yield at
    at.desk.errands.finish()


def test_a_refused_value_is_to_be_mended_before_the_car_leaves(at: AtGone) -> None:
    assert not at.says("To mend or empty")
    at.type(EVERY, "now and then")
    assert at.says(TO_MEND)
    at.press("Hand the car over")
    assert at.job().left_at is None
    assert at.told[-1].startswith(
        f"Before the car leaves, mend or empty: “{EVERY}” under “Proof” is not accepted."
    )
    at.press(f"→  {EVERY}")
    assert focus() is at.line(EVERY)
    assert not focus().visibleRegion().isEmpty()
    at.type(EVERY, "")
    assert not at.says("To mend or empty")
    at.press("Hand the car over")
    assert at.job().left_at is not None


def test_a_line_that_became_no_row_is_refused_with_the_hand_over(at: AtGone) -> None:
    at.type("Trouble codes, after repair", "303")
    assert not at.says("To mend or empty")  # it may still become one
    at.press("Hand the car over")
    assert at.job().left_at is None
    assert at.says("“Trouble codes, after repair” under “Proof” is not accepted.")
    at.type("Trouble codes, after repair", "")
    at.press("Hand the car over")
    assert at.job().left_at is not None


def test_technician_and_system_are_asked_for_and_may_be_left_out(at: AtGone) -> None:
    asks = "Still to say, or to leave out: "
    assert at.says(f"{asks}who the technician is; which system it is.")
    at.press("→  Technician")
    assert focus().accessibleName() == "Technician"
    at.choose("Technician", "Odile")
    assert at.says(f"{asks}which system it is.")
    at.press("→  System")
    assert focus().accessibleName() == "System"
    at.press("Hand the car over")
    assert at.job().left_at is not None


def test_who_is_here_is_the_technician_with_the_first_finding(at: AtGone) -> None:
    at.desk.name("Odile")
    for job, name in ((2, ""), (3, "Odile")):
        actions.write_up(at.shop, WriteUp("squeals", plate=f"TH {job}", odometer=100_000))
        at.page.open_job(job)
        if not name:  # another one's name is not written over
            actions.add_person(at.shop, "Tuuli")
            actions.choose_technician(at.shop, job, 2)
            at.page.came_here()
        seen = at.line("What was seen or tried")
        seen.setFocus()
        at.bot.keyClicks(seen, "pads worn")
        at.bot.keyClick(seen, Qt.Key.Key_Return)
        with at.shop.reading() as connection:
            assert read_job(connection, job).technician == (name or "Tuuli")


def test_a_name_that_was_taken_out_again_stays_out(at: AtGone) -> None:
    at.desk.name("Odile")
    actions.write_up(at.shop, WriteUp("squeals", plate="TH 2", odometer=100_000))
    actions.write_finding(at.shop, 2, "pads worn")
    at.page.open_job(2)
    at.choose("Technician", "Odile")
    actions.choose_technician(at.shop, 2, None)
    actions.name_cause(at.shop, 2, "worn out, shown by the thickness")
    with at.shop.reading() as connection:
        assert read_job(connection, 2).technician_id is None

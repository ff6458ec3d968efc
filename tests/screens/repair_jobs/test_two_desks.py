"""Two desks on one job: what was typed stays, what was written is told, and a person chooses."""

from __future__ import annotations

from collections.abc import Callable, Iterator

import pytest
from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import QComboBox, QLabel, QLineEdit, QPlainTextEdit, QPushButton
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs import actions, odometer_actions, proof_actions, vehicle_actions
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.proof_kept import ProofKept
from desktop_app.repair_jobs.road_test import FaultEvery
from desktop_app.repair_jobs.stored_proof import read_proof
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.returns_watched import customer_actions
from desktop_app.returns_watched.stored_customers_asked import answers_of_job
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.record import ShopRecord
from tests.screens.job_desk import JobDesk

BYTES = "As found: bytes of mode 01 PID 01"


class AtDesk(JobDesk):
    """One desk with the page of job 1; the other desk writes straight into the record."""

    def field(self, name: str) -> QLineEdit | QPlainTextEdit:
        """Find a field by its name."""
        fields = [*self.page.findChildren(QLineEdit), *self.page.findChildren(QPlainTextEdit)]
        return next(one for one in fields if one.accessibleName() == name)

    def text(self, name: str) -> str:
        """Return what stands in a field."""
        field = self.field(name)
        return field.text() if isinstance(field, QLineEdit) else field.toPlainText()

    def type(self, name: str, words: str) -> None:
        """Put words in the place of what stands in a field, and leave it."""
        field = self.field(name)
        field.setFocus()
        field.selectAll()
        self.bot.keyClicks(field, words)
        if isinstance(field, QLineEdit):
            self.bot.keyClick(field, Qt.Key.Key_Return)
        else:
            self.bot.keyClick(field, Qt.Key.Key_Tab)

    def press(self, name: str) -> None:
        """Click a button by its whole name."""
        buttons = self.page.findChildren(QPushButton)
        found = next(b for b in buttons if name in (b.accessibleName(), b.text()) and b.isVisible())
        self.bot.mouseClick(found, Qt.MouseButton.LeftButton)

    def says(self, words: str) -> bool:
        """Tell whether the page says this."""
        QCoreApplication.processEvents()
        return any(words in one.text() for one in self.page.findChildren(QLabel) if one.isVisible())

    def choose(self, name: str, words: str) -> None:
        """Choose from a list by its words."""
        lists = self.page.findChildren(QComboBox)
        found = next(one for one in lists if one.accessibleName() == name)
        found.setCurrentIndex(found.findText(words))
        found.activated.emit(found.currentIndex())

    @property
    def job(self) -> JobView:
        """The job as it is kept."""
        with self.shop.reading() as connection:
            return read_job(connection, 1)

    @property
    def proof(self) -> ProofKept:
        """Its proof as it is kept."""
        with self.shop.reading() as connection:
            return read_proof(connection, 1)


@pytest.fixture
def at(qtbot: QtBot, shop: ShopRecord) -> Iterator[AtDesk]:
    came = "2026-11-11T09:00:00+00:00"
    said = WriteUp("misses", plate="TH 1", odometer=100_000, odometer_unit="km", came_at=came)
    actions.write_up(shop, said)
    desk = AtDesk(qtbot, shop)
    yield desk
    desk.desk.errands.finish()


Write = Callable[[ShopRecord], Done]
Read = Callable[[AtDesk], object]
CASES: dict[str, tuple[Write, str, str, Read]] = {
    "Odometer in": (
        lambda s: odometer_actions.change_odometer(s, 1, 100_900),
        *("100,900", "100100"),
        lambda at: f"{at.job.odometer_in:,}",
    ),
    "Concern, in the customer's own words": (
        lambda s: actions.write_concern(s, 1, "in the rain"),
        *("in the rain", "when cold"),
        lambda at: at.job.concern,
    ),
    "Cause: X because Y, shown by Z": (
        lambda s: actions.name_cause(s, 1, "rotor"),
        *("rotor", "cap"),
        lambda at: at.job.cause,
    ),
    "What was done": (
        lambda s: actions.write_correction(s, 1, "rotor"),
        *("rotor", "cap"),
        lambda at: at.job.correction,
    ),
    "Driven": (
        lambda s: proof_actions.write_distance(s, 1, 42.0),
        *("42", "5"),
        lambda at: f"{at.job.proof_distance:g}",
    ),
    BYTES: (
        lambda s: proof_actions.type_self_tests(s, 1, "found", "8107E500"),
        *("8107E500", "0007E500"),
        lambda at: at.proof.found.typed,
    ),
    "Declined or left undone": (
        lambda s: actions.say_declined(s, 1, "tyres"),
        *("tyres", "brakes"),
        lambda at: at.job.declined,
    ),
}


@pytest.mark.parametrize("name", CASES)
@pytest.mark.parametrize("heard", [False, True], ids=["unheard", "heard"])
def test_of_two_writings_a_person_chooses(at: AtDesk, name: str, heard: bool) -> None:
    write, theirs, mine, kept = CASES[name]
    done = write(at.shop)
    if heard:  # the page is shown again while something stands half typed
        at.bot.keyClicks(at.field(name), "1")
        at.desk.changed.emit(done)
    at.type(name, mine)
    assert kept(at) == theirs
    assert at.told[-1].startswith("Written at another desk meanwhile: ")
    assert at.says(theirs)
    assert at.says(f"Typed here, not kept: “{mine}”.")
    assert at.text(name) == mine
    at.press(f"Keep what was written: {name}")
    assert (at.text(name), kept(at)) == (theirs, theirs)
    assert not at.says("Typed here, not kept")


def test_what_was_typed_holds_where_a_person_says_so(at: AtDesk) -> None:
    odometer_actions.change_odometer(at.shop, 1, 100_900)
    at.type("Odometer in", "100100")
    at.press("Keep what I typed: Odometer in")
    assert (at.job.odometer_in, at.text("Odometer in")) == (100_100, "100,100")
    assert not at.says("Typed here, not kept")
    at.type("Odometer in", "100200")  # nobody else wrote: nothing is asked
    assert at.job.odometer_in == 100_200


def test_a_number_goes_with_its_own_unit(at: AtDesk) -> None:
    at.choose("It came about once in: unit", "days")
    at.type("It came about once in", "3")
    at.bot.keyClicks(at.field("It came about once in"), "5")
    at.desk.changed.emit(proof_actions.say_fault_every(at.shop, 1, 40, "km"))
    at.type("It came about once in", "5")
    assert at.proof.every == FaultEvery(40, "km")
    assert at.says("once in 40 kilometres. Typed here, not kept: “5”.")
    at.press("Keep what was written: It came about once in")
    unit = next(
        one
        for one in at.page.findChildren(QComboBox)
        if one.accessibleName() == "It came about once in: unit"
    )
    assert (at.text("It came about once in"), unit.currentText()) == ("40", "kilometres")


def test_what_the_customer_told_counts_in_the_unit_that_the_car_has_now(at: AtDesk) -> None:
    actions.hand_over(at.shop, 1, 100_050, (), "2026-11-12T09:00:00+00:00")
    customer_actions.note_answer(at.shop, 1, "fine")
    at.page.came_here()
    at.desk.do(vehicle_actions.count_in, 1, "mi")
    at.type("Odometer as told", "62,500 mi")
    with at.shop.reading() as connection:
        [said] = answers_of_job(connection, 1)
    assert said.odometer_told == 62_500
    assert at.says("Lower than when the car was here (100,050 mi).")


def test_words_in_a_row_that_another_desk_takes_out_are_told_and_stay(at: AtDesk) -> None:
    actions.hand_over(at.shop, 1, 100_050, (), "2026-11-12T09:00:00+00:00")
    at.desk.do(customer_actions.note_answer, 1, "fine")
    at.type("Odometer as told", "some more")
    at.desk.changed.emit(customer_actions.take_answer_out(at.shop, 1))
    lost = "Entered there and not kept: Odometer as told “some more”."
    assert lost in at.told[-1]
    assert at.says(lost)
    at.press("Put these words away")
    assert not at.says(lost)


def test_the_odometer_out_is_mended_only_where_it_is_as_it_was_shown(at: AtDesk) -> None:
    at.desk.do(actions.hand_over, 1, 100_050)
    odometer_actions.change_odometer_out(at.shop, 1, 100_060)
    at.type("Odometer out", "100070")
    assert at.job.odometer_out == 100_060
    at.press("Keep what I typed: Odometer out")
    assert at.job.odometer_out == 100_070


def test_an_odometer_out_typed_here_is_told_where_another_desk_hands_over(at: AtDesk) -> None:
    at.type("Odometer out", "100,012")
    at.desk.changed.emit(actions.hand_over(at.shop, 1, 100_020))
    assert at.told == [
        "J-101 was handed over at another desk. Odometer out typed here, not kept: “100,012”."
    ]
    assert at.text("Odometer out") == "100,020"


def test_a_unit_before_the_number_is_a_reading(at: AtDesk) -> None:
    at.type("Odometer in", "km 100200")
    assert (at.job.odometer_in, at.job.odometer_unread) == (100_200, None)


def test_a_number_among_words_is_asked_about(at: AtDesk) -> None:
    at.type("Odometer in", "about 100,200 they say")
    assert (at.job.odometer_in, at.job.odometer_unread) == (None, "about 100,200 they say")
    asked = "because “about 100,200 they say”. Does the odometer say 100,200 km?"
    assert at.says(asked)
    at.press("Take 100,200 km")
    assert (at.job.odometer_in, at.job.odometer_unread) == (100_200, None)
    at.type("Odometer in", "dead at 100,200")
    at.press("Right as typed")
    at.page.came_here()
    assert not at.says("Does the odometer say")


def test_what_looks_like_a_day_is_no_self_test(at: AtDesk) -> None:
    at.type(BYTES, "2026-11-16")
    assert at.says("“2026-11-16” looks like a day.")
    assert at.proof.found.typed == ""

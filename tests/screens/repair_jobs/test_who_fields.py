"""The quiet fields of who did what, of the hours of searching and of the kind of work."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import QComboBox, QLabel, QLineEdit, QPushButton
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs import actions, who_actions
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.stored_people import people_here
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.record import ShopRecord
from tests.screens.job_desk import JobDesk

WHO = {
    "wrote up": "Written up by",
    "searched": "Searched by",
    "refitted": "Refitted by",
    "proved": "Proved by",
}


class AtJob(JobDesk):
    """The page of job 1 at one desk; another desk writes straight into the record."""

    def field(self, name: str) -> QComboBox:
        """Find a choice by its name."""
        lists = self.page.findChildren(QComboBox)
        return next(one for one in lists if one.accessibleName() == name)

    def choose(self, name: str, words: str) -> None:
        """Choose from a list by its words."""
        field = self.field(name)
        field.setCurrentIndex(field.findText(words))
        field.activated.emit(field.currentIndex())

    def type(self, name: str, words: str) -> None:
        """Put words in the place of what stands in a line, and leave it with Enter."""
        lines = self.page.findChildren(QLineEdit)
        line = next(one for one in lines if one.accessibleName() == name)
        line.setFocus()
        line.selectAll()
        self.bot.keyClicks(line, words)
        self.bot.keyClick(line, Qt.Key.Key_Return)

    def press(self, name: str) -> None:
        """Click a button by its name."""
        buttons = self.page.findChildren(QPushButton)
        found = next(one for one in buttons if one.accessibleName() == name)
        self.bot.mouseClick(found, Qt.MouseButton.LeftButton)

    def says(self, words: str) -> bool:
        """Tell whether the page says this."""
        QCoreApplication.processEvents()
        return any(words in one.text() for one in self.page.findChildren(QLabel) if one.isVisible())

    @property
    def job(self) -> JobView:
        """The job as it is kept."""
        with self.shop.reading() as connection:
            return read_job(connection, 1)


@pytest.fixture
def at(qtbot: QtBot, shop: ShopRecord) -> Iterator[AtJob]:
    for name in ("Ada", "Bo"):
        actions.add_person(shop, name)
    actions.write_up(shop, WriteUp("misses", plate="TH 1", odometer=100_000))
    at = AtJob(qtbot, shop)
    yield at
    at.desk.errands.finish()


def test_who_is_here_is_who_wrote_it_up_until_another_is_named(at: AtJob) -> None:
    at.desk.name("Ada")
    actions.write_up(at.shop, WriteUp("squeals", plate="TH 2", odometer=50_000))
    with at.shop.reading() as connection:
        visit = read_job(connection, 2).visit_id
    actions.add_job(at.shop, visit, "pulls to the left")
    for job in (2, 3):
        at.page.open_job(job)
        assert at.field("Written up by").currentText() == "Ada"
    at.choose("Written up by", "Bo")
    with at.shop.reading() as connection:
        assert read_job(connection, 3).named["wrote up"].name == "Bo"
    at.choose("Written up by", "not said")
    with at.shop.reading() as connection:
        assert "wrote up" not in read_job(connection, 3).named


def test_nobody_has_to_answer_and_who_wants_to_can(at: AtJob) -> None:
    shown = [at.field(name).currentText() for name in WHO.values()]
    assert shown == ["not said", "the technician", "the technician", "the technician"]
    for did, name in WHO.items():
        at.choose(name, "Bo")
        assert at.job.named[did].name == "Bo"  # type: ignore[index]
    at.choose("Searched by", "the technician")
    assert "searched" not in at.job.named
    at.desk.undo()
    assert at.field("Searched by").currentText() == "Bo"


def test_one_who_has_left_the_shop_stays_named(at: AtJob) -> None:
    at.choose("Refitted by", "Bo")
    with at.shop.reading() as connection:
        bo = next(row for row, name in people_here(connection) if name == "Bo")
    at.desk.do(actions.person_left, bo)
    field = at.field("Refitted by")
    assert field.currentText() == "Bo"
    assert at.field("Proved by").findText("Bo") == -1


def test_of_two_names_given_at_two_desks_the_first_stays_and_is_shown(at: AtJob) -> None:
    with at.shop.reading() as connection:
        ada = next(row for row, name in people_here(connection) if name == "Ada")
    who_actions.say_who(at.shop, 1, "proved", ada)
    at.choose("Proved by", "Bo")
    assert at.told[-1].startswith("Written at another desk meanwhile: “Ada”")
    assert at.job.named["proved"].name == at.field("Proved by").currentText() == "Ada"
    at.choose("Proved by", "Bo")  # it was shown by now: a person decides
    assert at.job.named["proved"].name == "Bo"


def test_search_hours_are_kept_and_bad_ones_are_refused_where_they_stand(at: AtJob) -> None:
    at.type("Search hours", "1,5")
    assert at.job.search_hours == 1.5
    at.type("Hours", "1")
    assert at.says("1.5 hours of searching are more than the 1 hours of the whole job.")
    assert at.job.hours is None
    at.type("Hours", "2")
    at.type("Search hours", "9")
    assert at.says("9 hours of searching are more than the 2 hours of the whole job.")
    at.type("Search hours", "long")
    assert at.says("“long” is not a number of hours.")
    assert (at.job.search_hours, at.job.hours) == (1.5, 2.0)


def test_of_two_search_hours_a_person_chooses(at: AtJob) -> None:
    who_actions.write_search_hours(at.shop, 1, 0.5)
    at.type("Search hours", "2")
    assert at.says("Written at another desk meanwhile: 0.5. Typed here, not kept: “2”.")
    assert at.job.search_hours == 0.5
    at.press("Keep what I typed: Search hours")
    assert at.job.search_hours == 2.0


def test_an_inspection_leaves_without_a_cause(at: AtJob) -> None:
    assert at.says("the cause, or “not caught”")
    at.choose("Kind of work", "inspection only")
    assert at.job.work == "inspection"
    assert not at.says("the cause, or “not caught”")
    at.choose("Kind of work", "repair")
    assert at.job.work is None
    assert at.says("the cause, or “not caught”")


def test_of_two_kinds_of_work_said_at_two_desks_the_first_stays_and_is_shown(at: AtJob) -> None:
    who_actions.choose_work(at.shop, 1, "inspection")
    at.choose("Kind of work", "maintenance")
    assert at.told[-1].startswith("Written at another desk meanwhile: inspection only")
    assert at.field("Kind of work").currentText() == "inspection only"

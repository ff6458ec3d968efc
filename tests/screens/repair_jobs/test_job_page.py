"""The page of one job: its head, its jumps, its neighbours, and words that were only typed."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TypeVar

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QAbstractButton, QLabel, QLineEdit, QPlainTextEdit, QWidget
from pytestqt.qtbot import QtBot
from sqlalchemy import event

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.screen.found_section import FoundSection
from desktop_app.repair_jobs.screen.gone_section import GoneSection
from desktop_app.repair_jobs.screen.heard_section import HeardSection
from desktop_app.repair_jobs.screen.job_page import JobPage
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import LineField, save_everything, unsaved_fields
from tests.from_outside import damage

W = TypeVar("W", bound=QWidget)
CONTROL = Qt.KeyboardModifier.ControlModifier
CONCERN = "Concern, in the customer's own words"
FINDING = "What was seen or tried"
CODE = "Trouble codes, found"


@pytest.fixture
def page(qtbot: QtBot, shop: ShopRecord) -> Iterator[JobPage]:
    """Two jobs of one visit; the first is shown, and may be a return of a job numbered J-7."""
    car = WriteUp("misses when damp", plate="TH 1", description="hatchback", odometer=1000)
    actions.write_up(shop, car)
    with shop.reading() as connection:
        visit = read_job(connection, 1).visit_id
    actions.add_job(shop, visit, "also squeals")
    desk = Desk(shop)
    page = JobPage(
        desk,
        [
            ("Heard", HeardSection(desk, lambda _words: (), lambda symptom: symptom)),
            ("Found", FoundSection(desk)),
            ("Gone", GoneSection(desk, lambda _job: ())),
        ],
        lambda job: f"came {job.came_on}",
        lambda job_id: [(7, "J-7")] if job_id == 1 else [],
    )
    qtbot.addWidget(page)
    page.resize(1100, 500)
    page.show()
    qtbot.waitUntil(page.isVisible)
    page.activateWindow()
    page.open_job(1)
    yield page
    desk.errands.finish()


def named(page: JobPage, sort: type[W], name: str) -> W:
    return next(w for w in page.findChildren(sort) if w.accessibleName() == name)


def button(page: JobPage, words: str) -> QAbstractButton:
    buttons = [b for b in page.findChildren(QAbstractButton) if b.isVisible()]
    return next(b for b in buttons if words in b.text())


def job(shop: ShopRecord, job_id: int) -> JobView:
    with shop.reading() as connection:
        return read_job(connection, job_id)


def findings(shop: ShopRecord, job_id: int) -> list[str]:
    return [check.words for check in job(shop, job_id).checks]


def test_the_head_says_which_job_and_car_this_is(page: JobPage) -> None:
    said = [label.text() for label in page.findChildren(QLabel) if label.isVisible()]
    assert page.number() == "J-101"
    assert any(text.startswith("J-101") and "hatchback" in text for text in said)
    assert "came 2026-11-16" in said


def test_control_and_a_number_go_to_the_first_field_of_a_section(
    qtbot: QtBot, page: JobPage
) -> None:
    qtbot.keyClick(page, Qt.Key.Key_2, CONTROL)
    assert page.focusWidget().accessibleName() == "System"
    qtbot.keyClick(page, Qt.Key.Key_1, CONTROL)
    assert page.focusWidget().accessibleName() == CONCERN
    qtbot.mouseClick(button(page, "Gone"), Qt.MouseButton.LeftButton)
    assert page.focusWidget().accessibleName() == "Declined or left undone"
    assert not page.focusWidget().visibleRegion().isEmpty()


def test_the_head_leads_to_the_other_job_the_earlier_one_and_the_sheet(
    qtbot: QtBot, page: JobPage
) -> None:
    with qtbot.waitSignal(page.job_wanted) as other:
        qtbot.mouseClick(button(page, "J-102"), Qt.MouseButton.LeftButton)
    assert other.args == [2]
    with qtbot.waitSignal(page.back_wanted) as back:
        qtbot.mouseClick(button(page, "Is it J-7 again?"), Qt.MouseButton.LeftButton)
    assert back.args == [7, 1]
    with qtbot.waitSignal(page.sheet_wanted) as sheet:
        qtbot.keyClick(page, Qt.Key.Key_P, CONTROL)
    assert sheet.args == [1]
    with qtbot.waitSignal(page.another_concern) as more:
        qtbot.mouseClick(button(page, "Another concern"), Qt.MouseButton.LeftButton)
    assert more.args == [1]


def test_a_car_that_has_left_takes_no_other_concern(page: JobPage, shop: ShopRecord) -> None:
    assert button(page, "Another concern")
    actions.hand_over(shop, 1, 1000, ())
    page.came_here()
    page.came_here()
    with pytest.raises(StopIteration):
        button(page, "Another concern")
    with pytest.raises(StopIteration):
        button(page, "Hand the car over")


def test_words_only_typed_outlive_a_deed_somewhere_else(
    qtbot: QtBot, page: JobPage, shop: ShopRecord
) -> None:
    concern = named(page, QPlainTextEdit, CONCERN)
    qtbot.keyClicks(concern, "only ")
    typed = concern.toPlainText()
    qtbot.mouseClick(button(page, "Not caught"), Qt.MouseButton.LeftButton)
    assert job(shop, 1).cause_found is False
    assert concern.toPlainText() == typed


def test_words_only_typed_go_to_the_job_they_were_typed_on(
    qtbot: QtBot, page: JobPage, shop: ShopRecord
) -> None:
    concern = named(page, QPlainTextEdit, CONCERN)
    concern.selectAll()
    qtbot.keyClicks(concern, "stalls when hot")
    qtbot.keyClicks(named(page, QLineEdit, "Plate"), "2")
    qtbot.keyClicks(named(page, QPlainTextEdit, "Cause: X because Y, shown by Z"), "cap cracked")
    qtbot.keyClicks(named(page, QPlainTextEdit, "Declined or left undone"), "plug wires")
    page.open_job(2)
    first, second = job(shop, 1), job(shop, 2)
    assert (first.concern, first.cause, first.declined) == (
        "stalls when hot",
        "cap cracked",
        "plug wires",
    )
    assert (second.concern, second.cause, second.declined) == ("also squeals", "", None)
    assert first.vehicle.plate == "TH 12"
    assert concern.toPlainText() == "also squeals"


def test_a_finding_and_a_code_without_enter_go_to_their_own_job(
    qtbot: QtBot, page: JobPage, shop: ShopRecord
) -> None:
    finding, code = named(page, QLineEdit, FINDING), named(page, QLineEdit, CODE)
    qtbot.keyClicks(finding, "cap crusted")
    qtbot.keyClicks(code, "P0300")
    page.open_job(2)
    assert (finding.text(), code.text()) == ("", "")
    assert findings(shop, 1) == ["cap crusted"]
    assert [c.code for c in job(shop, 1).codes] == ["P0300"]
    assert findings(shop, 2) == []


def test_points_of_closing_up_without_an_answer_are_said_and_stop_nothing(
    qtbot: QtBot, shop: ShopRecord
) -> None:
    actions.write_up(shop, WriteUp("misses", plate="TH 1", description="hatchback", odometer=1))
    desk = Desk(shop)
    checks = [("Nuts to the maker's torque.", True), ("Key fully home.", False)]
    gone = GoneSection(desk, lambda _job: (), lambda _job: checks)
    qtbot.addWidget(gone)
    gone.show()
    gone.show_job(job(shop, 1))

    def said() -> str:
        return " ".join(label.text() for label in gone.findChildren(QLabel))

    assert "2 points have no answer" in said()
    assert "1 of them where someone can get hurt" in said()
    actions.tick_check(shop, 1, "refit", "Nuts to the maker's torque.", "done")
    gone.show_job(job(shop, 1))
    assert "1 point has no answer" in said()
    assert "get hurt" not in said()
    desk.errands.finish()


def test_odometers_are_read_once_a_show_and_the_shops_use_once_until_a_visit_changes(
    page: JobPage, shop: ShopRecord
) -> None:
    read: list[str] = []

    def hear(_connection: object, _cursor: object, words: str, *_more: object) -> None:
        read.append(" ".join(words.split()))

    def count(begins: str) -> int:
        return sum(one.startswith(begins) for one in read)

    odometers = "SELECT visit.id, visit.came_at, visit.odometer_in"
    use = "SELECT visit.vehicle_id, visit.came_at"
    with shop.reading() as connection:
        engine = connection.engine
    event.listen(engine, "before_cursor_execute", hear)
    try:
        page.open_job(2)
        assert (count(odometers), count(use)) == (1, 0)
        actions.tick_condition(shop, 1, "damp", True)
        page.open_job(1)
        assert (count(odometers), count(use)) == (2, 0)
        odometer = named(page, LineField, "Odometer in")
        odometer.setText("1,020")
        odometer.save_now()
        assert (count(odometers), count(use)) == (3, 1)
    finally:
        event.remove(engine, "before_cursor_execute", hear)


def test_a_damaged_part_is_said_and_the_rest_of_the_page_stays(
    page: JobPage, shop: ShopRecord
) -> None:
    damage(
        shop,
        "INSERT INTO vehicle_event (vehicle_id, kind, happened_on, note)"
        " VALUES (1, 'sold', '2026-13-45', '')",
    )
    page.open_job(1)
    assert page.findChild(FoundSection).isEnabled()
    assert any("misses when damp" in one.toPlainText() for one in page.findChildren(QPlainTextEdit))


@pytest.mark.parametrize(
    "change", ["proof_level = 9", "proof_level = -1", "window_rule = 'nope'", "window_days = -3"]
)
def test_a_job_that_is_damaged_itself_is_not_shown_as_taken_out(
    page: JobPage, shop: ShopRecord, change: str
) -> None:
    damage(shop, f"UPDATE job SET {change}")
    page.open_job(1)
    titles = [label.text() for label in page.findChildren(QLabel)]
    assert "This job can't be shown: the record is damaged there" in titles


def test_a_code_that_was_refused_and_taken_out_again_is_not_asked_for(
    qtbot: QtBot, shop: ShopRecord, page: JobPage
) -> None:
    field = named(page, QLineEdit, CODE)
    field.setFocus()
    qtbot.keyClicks(field, "P0505 XYZ\r")
    assert [code.code for code in job(shop, 1).codes] == ["P0505"]
    assert field.text() == "XYZ"
    assert [one.accessibleName() for one in unsaved_fields(page)] == [CODE]  # or it would be lost
    said = (
        "✎ “XYZ” is not a trouble code; the others are. "
        "A code is a letter P, C, B or U and four digits, such as P0300."
    )
    assert says(page, said)
    field.selectAll()
    qtbot.keyClick(field, Qt.Key.Key_Delete)
    assert not says(page, said)
    save_everything(page)
    assert unsaved_fields(page) == []


def says(page: JobPage, words: str) -> bool:
    return any(one.text() == words for one in page.findChildren(QLabel) if one.isVisible())

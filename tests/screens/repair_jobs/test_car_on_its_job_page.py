"""The car on its job's page: odometer in and out, its unit, its events, and another car's visit."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TypeVar

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QComboBox, QLabel, QLineEdit, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.screen.back_on_section import BackOnSection
from desktop_app.repair_jobs.screen.gone_section import GoneSection
from desktop_app.repair_jobs.screen.heard_section import HeardSection
from desktop_app.repair_jobs.screen.job_page import JobPage
from desktop_app.repair_jobs.screen.proof_section import ProofSection
from desktop_app.repair_jobs.stored_reading import events_of, read_job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.returns_watched.actions import judge_return
from desktop_app.returns_watched.stored_judged_between import refuse_where_judged
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk

W = TypeVar("W", bound=QWidget)
VAN = WriteUp(
    "grinds", plate="KM 77", description="2.2-litre van", odometer=84_210, odometer_unit="km"
)


@pytest.fixture
def page(qtbot: QtBot, shop: ShopRecord) -> Iterator[JobPage]:
    """A van that counts kilometres, here twice; its second job is shown."""
    first = WriteUp(**{**_facts(VAN), "came_at": "2026-11-02T09:00:00+00:00", "odometer": 84_000})
    actions.write_up(shop, first)
    actions.write_up(shop, WriteUp(**{**_facts(VAN), "vehicle_id": 1}))
    desk = Desk(shop)
    desk.told.connect(lambda news: page.setProperty("told", str(news)))
    page = JobPage(
        desk,
        [
            (
                "Heard",
                HeardSection(desk, lambda _words: (), lambda symptom: symptom, refuse_where_judged),
            ),
            ("Back On", BackOnSection(desk, lambda _job: ())),
            ("Proof", ProofSection(desk)),
            ("Gone", GoneSection(desk, lambda _job: ())),
        ],
        lambda job: f"came {job.came_on}",
        lambda _job: [],
    )
    qtbot.addWidget(page)
    page.resize(1040, 600)
    page.show()
    page.open_job(2)
    yield page
    desk.errands.finish()


def _facts(said: WriteUp) -> dict[str, object]:
    return {name: getattr(said, name) for name in said.__slots__}


def job(shop: ShopRecord, job_id: int = 2) -> JobView:
    with shop.reading() as connection:
        return read_job(connection, job_id)


def named(page: JobPage, sort: type[W], name: str) -> W:
    return next(w for w in page.findChildren(sort) if w.accessibleName().startswith(name))


def write(qtbot: QtBot, page: JobPage, name: str, text: str) -> None:
    field = named(page, QLineEdit, name)
    field.setFocus()
    field.selectAll()
    qtbot.keyClicks(field, text)
    qtbot.keyClick(field, Qt.Key.Key_Return)


def press(qtbot: QtBot, page: JobPage, words: str) -> None:
    QApplication.processEvents()  # what was shown just now gets its place
    shown = [b for b in page.findChildren(QPushButton) if b.isVisible() and words in b.text()]
    qtbot.mouseClick(shown[0], Qt.MouseButton.LeftButton)


def reads(page: JobPage, words: str) -> bool:
    return any(words in one.text() for one in page.findChildren(QLabel) if one.isVisible())


def ready(shop: ShopRecord) -> None:
    actions.say_not_caught(shop, 2)
    actions.say_proof(shop, 2, 0)
    actions.say_declined(shop, 2, "nothing")


def test_an_odometer_out_below_the_one_in_holds_the_hand_over_up(
    qtbot: QtBot, shop: ShopRecord, page: JobPage
) -> None:
    ready(shop)
    page.open_job(2)
    write(qtbot, page, "Odometer out", "84,100")
    assert reads(page, "84,100 km, but on 16 November 2026 it said 84,210 km")
    press(qtbot, page, "Hand the car over")
    assert job(shop).left_at is None
    press(qtbot, page, "Right as typed")
    press(qtbot, page, "Hand the car over")
    assert job(shop).odometer_out == 84_100
    assert reads(page, "Left on 16 November 2026 at 84,100 km.")
    write(qtbot, page, "Odometer out", "84,215")
    assert job(shop).odometer_out == 84_215
    assert reads(page, "at 84,215 km.")


def test_a_reading_typed_for_the_hand_over_waits_for_its_own_job(
    qtbot: QtBot, shop: ShopRecord, page: JobPage
) -> None:
    write(qtbot, page, "Odometer out", "84,300")
    page.open_job(1)
    assert named(page, QLineEdit, "Odometer out").text() == ""
    page.open_job(2)
    assert named(page, QLineEdit, "Odometer out").text() == "84,300"


def test_words_with_a_year_say_why_the_odometer_cannot_be_read(
    qtbot: QtBot, shop: ShopRecord, page: JobPage
) -> None:
    write(qtbot, page, "Odometer in", "display dead since 2025")
    assert job(shop).odometer_unread == "display dead since 2025"
    write(qtbot, page, "Odometer in", "~84,850")
    assert job(shop).odometer_in is None
    assert reads(page, "is not an odometer reading")


def test_a_wrong_unit_is_mended_for_all_readings_of_the_car(
    qtbot: QtBot, shop: ShopRecord, page: JobPage
) -> None:
    choice = named(page, QComboBox, "The odometer counts in")
    assert choice.currentText() == "km"
    choice.setFocus()
    qtbot.keyClick(choice, Qt.Key.Key_Up)
    assert job(shop, 1).vehicle.odometer_unit == "mi"
    assert job(shop, 1).odometer_in == 84_000
    assert "count in miles from now on; their numbers are as they were" in page.property("told")


def test_how_often_it_came_is_asked_in_what_the_car_counts(page: JobPage) -> None:
    assert named(page, QComboBox, "It came about once in: unit").currentData() == "km"


def test_a_visit_that_was_another_cars_gets_a_car_of_its_own(
    qtbot: QtBot, shop: ShopRecord, page: JobPage
) -> None:
    assert reads(page, "What is written of the car stands on J-101 too.")
    press(qtbot, page, "This was another car")
    assert job(shop, 2).vehicle.id != job(shop, 1).vehicle.id
    assert not reads(page, "stands on J-101")
    write(qtbot, page, "What kind of car", "1.2-litre city car")
    assert job(shop, 1).vehicle.description == "2.2-litre van"


def test_a_judged_return_is_not_made_another_car_unasked(
    qtbot: QtBot, shop: ShopRecord, page: JobPage
) -> None:
    actions.hand_over(shop, 1, left_at="2026-11-03T09:00:00+00:00")
    judge_return(shop, 1, 2, "same symptom", by="Ana")
    press(qtbot, page, "This was another car")
    assert job(shop, 2).vehicle.id == job(shop, 1).vehicle.id
    assert reads(page, "stands on J-101")


def test_what_happened_to_a_car_is_asked_for_anew_on_each_job(
    qtbot: QtBot, shop: ShopRecord, page: JobPage
) -> None:
    press(qtbot, page, "Odometer replaced, or car sold")
    assert reads(page, "The old odometer's last reading")
    kind = named(page, QComboBox, "What happened")
    kind.setFocus()
    qtbot.keyClick(kind, Qt.Key.Key_Down)
    assert kind.currentText() == "sold"
    assert not reads(page, "The old odometer's last reading")
    page.open_job(1)
    assert not reads(page, "On which day")
    page.open_job(2)
    press(qtbot, page, "Odometer replaced, or car sold")
    write(qtbot, page, "Note", "to the neighbour")
    page.open_job(1)
    assert named(page, QLineEdit, "Note").text() == "to the neighbour"  # it is the same car


def test_an_odometer_replaced_at_a_reading_that_cannot_be_is_asked_about(
    qtbot: QtBot, shop: ShopRecord, page: JobPage
) -> None:
    def noted() -> int:
        with shop.reading() as connection:
            return len(events_of(connection, 1))

    press(qtbot, page, "Odometer replaced, or car sold")
    write(qtbot, page, "On which day", "9999-12-31")
    write(qtbot, page, "The old odometer's last reading", "5")
    press(qtbot, page, "Note it")
    assert reads(page, "9999-12-31 is still to come.")
    write(qtbot, page, "On which day", "2026-11-16")
    press(qtbot, page, "Note it")
    assert reads(page, "but on 16 November 2026 it said 84,210 km")
    assert noted() == 0
    press(qtbot, page, "Right as typed")
    assert noted() == 1


def test_a_price_that_is_refused_says_so_until_it_is_mended(
    qtbot: QtBot, shop: ShopRecord, page: JobPage
) -> None:
    actions.write_price(shop, 2, 10_000)
    page.open_job(2)
    write(qtbot, page, "Price", "1.300")
    write(qtbot, page, "Hours", "2")
    assert named(page, QLineEdit, "Price").text() == "1.300"
    assert reads(page, "can be read in two ways. Type 1300, or 1.3.")
    write(qtbot, page, "Price", "1,300")
    assert job(shop).price_cents == 130_000
    assert not reads(page, "two ways")

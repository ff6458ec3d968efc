"""At the counter: a plate that is known, the question whether it is the same car, its unit."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QLabel, QLineEdit, QPlainTextEdit, QPushButton
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs import actions, odometer_actions
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.screen.write_up_page import WriteUpPage
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.drafts import Drafts

PLATE, VIN, ABOUT = "Plate, or the shop's own tag", "VIN, if it is at hand", "What kind of car"
VAN = WriteUp(
    "grinds in third",
    plate="KM 77",
    description="2.2-litre van",
    odometer=180_000,
    odometer_unit="km",
    customer="J. Ferrow",
    phone="555-0142",
    came_at="2026-11-02T09:00:00+00:00",
)


@pytest.fixture
def page(qtbot: QtBot, shop: ShopRecord) -> WriteUpPage:
    actions.write_up(shop, VAN)
    actions.hand_over(shop, 1, left_at="2026-11-03T09:00:00+00:00")
    return opened(qtbot, shop)


def opened(qtbot: QtBot, shop: ShopRecord, desk: Desk | None = None) -> WriteUpPage:
    page = WriteUpPage(
        desk or Desk(shop),
        Drafts(shop.folder),
        lambda _words: (),
        lambda _words: (),
        lambda job, _reading: f"promise of {job}",
    )
    qtbot.addWidget(page)
    page.resize(1100, 800)
    page.show()
    page.came_here()
    return page


def line(page: WriteUpPage, name: str) -> QLineEdit:
    return next(f for f in page.findChildren(QLineEdit) if f.accessibleName() == name)


def unit(page: WriteUpPage) -> QComboBox:
    name = "Unit of the odometer"
    return next(c for c in page.findChildren(QComboBox) if c.accessibleName() == name)


def write(qtbot: QtBot, page: WriteUpPage, name: str, text: str) -> None:
    field = line(page, name)
    field.setFocus()
    field.selectAll()
    qtbot.keyClicks(field, text)
    qtbot.keyClick(field, Qt.Key.Key_Return)


def press(qtbot: QtBot, page: WriteUpPage, words: str) -> None:
    shown = [b for b in page.findChildren(QPushButton) if b.isVisible() and words in b.text()]
    qtbot.mouseClick(shown[0], Qt.MouseButton.LeftButton)


def reads(page: WriteUpPage, words: str) -> bool:
    return any(words in one.text() for one in page.findChildren(QLabel) if one.isVisible())


def taken(qtbot: QtBot, page: WriteUpPage, shop: ShopRecord) -> JobView:
    page.findChildren(QPlainTextEdit)[0].setPlainText("squeals")
    with qtbot.waitSignal(page.taken_in) as signal:
        press(qtbot, page, "Take the car in")
    with shop.reading() as connection:
        return read_job(connection, signal.args[0])


def test_a_known_plate_fills_in_what_is_known_of_the_car(
    qtbot: QtBot, shop: ShopRecord, page: WriteUpPage
) -> None:
    write(qtbot, page, PLATE, "km77")
    assert reads(page, "no VIN known · last here on 2 November 2026, 14 days ago")
    assert reads(page, "promise of 1")
    assert line(page, "Customer").text() == "J. Ferrow"
    assert unit(page).currentText() == "km"
    assert not unit(page).isEnabled()
    assert not reads(page, "Is it the same car?")
    press(qtbot, page, "It is another car")
    assert line(page, ABOUT).text() == ""
    press(qtbot, page, "The same car")
    write(qtbot, page, "Odometer", "180,500")
    again = taken(qtbot, page, shop)
    assert again.vehicle.name == "KM 77 · 2.2-litre van"
    assert (again.vehicle.id, again.customer) == (1, "J. Ferrow")


def test_another_car_on_the_plate_is_asked_about_before_it_is_taken_in(
    qtbot: QtBot, shop: ShopRecord, page: WriteUpPage
) -> None:
    odometer_actions.note_vehicle_event(shop, 1, "sold", "2026-11-10")
    write(qtbot, page, PLATE, "KM 77")
    assert line(page, "Customer").text() == ""  # it has another owner now
    write(qtbot, page, ABOUT, "1.2-litre city car")
    write(qtbot, page, VIN, "1M8GDM9AXKP042788")
    write(qtbot, page, "Odometer", "20,100")
    for words in ("was sold on 10 November 2026", "“2.2-litre van”", "no whole VIN", "go on from"):
        assert reads(page, words)
    page.findChildren(QPlainTextEdit)[0].setPlainText("squeals")
    press(qtbot, page, "Take the car in")
    assert reads(page, "Answer that above first.")
    press(qtbot, page, "Another car")
    assert unit(page).isEnabled()
    assert unit(page).currentText() == "miles"
    assert line(page, ABOUT).text() == "1.2-litre city car"
    city = taken(qtbot, page, shop)
    assert (city.vehicle.id, city.vehicle.odometer_unit, city.odometer_in) == (2, "mi", 20_100)
    with shop.reading() as connection:
        van = read_job(connection, 1).vehicle
    assert (van.description, van.vin, van.plate) == ("2.2-litre van", "", "KM 77")


def test_the_same_car_after_all_gets_its_unit_and_owner_back(
    qtbot: QtBot, page: WriteUpPage
) -> None:
    write(qtbot, page, PLATE, "KM 77")
    write(qtbot, page, VIN, "1M8GDM9AXKP042788")
    press(qtbot, page, "Another car")
    assert (line(page, "Customer").text(), unit(page).currentText()) == ("", "miles")
    assert reads(page, "Taken for another car")
    press(qtbot, page, "The same car")
    assert (line(page, "Customer").text(), unit(page).currentText()) == ("J. Ferrow", "km")
    assert not reads(page, "Is it the same car?")


def test_a_corrected_plate_takes_the_unit_and_the_owner_back(
    qtbot: QtBot, page: WriteUpPage
) -> None:
    write(qtbot, page, PLATE, "KM 77")
    write(qtbot, page, PLATE, "ZZ 77")
    assert unit(page).currentText() == "miles"
    assert unit(page).isEnabled()
    assert (line(page, "Customer").text(), line(page, ABOUT).text()) == ("", "")


def test_a_shop_in_kilometres_is_offered_kilometres(qtbot: QtBot, shop: ShopRecord) -> None:
    change_rule(shop, "distance_unit", "km")
    assert unit(opened(qtbot, shop)).currentText() == "km"


def test_a_reading_that_would_fit_is_taken_by_a_press(
    qtbot: QtBot, shop: ShopRecord, page: WriteUpPage
) -> None:
    write(qtbot, page, PLATE, "KM 77")
    write(qtbot, page, "Odometer", "108,500")
    press(qtbot, page, "Take 180,500 km")
    assert line(page, "Odometer").text() == "180,500"
    assert not reads(page, "Is it the same car?")


def test_a_car_that_is_still_here_gets_another_concern(qtbot: QtBot, shop: ShopRecord) -> None:
    actions.write_up(shop, VAN)
    desk, told = Desk(shop), list[object]()
    desk.told.connect(told.append)
    page = opened(qtbot, shop, desk)
    write(qtbot, page, PLATE, "KM 77")
    assert reads(page, "in the shop since 2 November 2026: J-101 was not handed over.")
    write(qtbot, page, "Odometer", "180,500")
    press(qtbot, page, "Add this concern")
    assert reads(page, "What does the customer say?")
    page.findChildren(QPlainTextEdit)[0].setPlainText("squeals")
    with qtbot.waitSignal(page.taken_in) as added:
        press(qtbot, page, "Add this concern")
    with shop.reading() as connection:
        job = read_job(connection, added.args[0])
    assert (job.visit_id, job.concern, job.odometer_in) == (1, "squeals", 180_000)
    assert told == [
        "The concern is added to that visit. Typed here, not kept, for the visit has its own: "
        "Odometer “180,500”."
    ]
    assert not reads(page, "still in the shop")


def test_a_car_that_is_still_here_is_taken_in_again_knowingly(
    qtbot: QtBot, shop: ShopRecord
) -> None:
    actions.write_up(shop, VAN)
    page = opened(qtbot, shop)
    write(qtbot, page, PLATE, "KM 77")
    write(qtbot, page, "Odometer", "180,500")
    page.findChildren(QPlainTextEdit)[0].setPlainText("squeals")
    press(qtbot, page, "Take the car in")
    assert reads(page, "The car is still in the shop by the record. Answer that above first.")
    press(qtbot, page, "Take it in again all the same")
    assert not reads(page, "Answer that above first.")
    again = taken(qtbot, page, shop)
    assert (again.visit_id, again.vehicle.id) == (2, 1)

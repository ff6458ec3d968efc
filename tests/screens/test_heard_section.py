"""Heard on a job's page: what happened to the car, who is at the desk, a symptom taken out."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit, QPushButton, QWidget
from pytestqt.qtbot import QtBot
from sqlalchemy import select

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.screen.heard_section import HeardSection
from desktop_app.repair_jobs.screen.who_is_here import WhoIsHere
from desktop_app.repair_jobs.stored import VehicleEvent
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk


def named(page: QWidget, kind: type, name: str):  # type: ignore[no-untyped-def]
    return next(w for w in page.findChildren(kind) if w.accessibleName().startswith(name))


def heard(qtbot: QtBot, shop: ShopRecord) -> HeardSection:
    said = WriteUp("misses", plate="TH 1", odometer=1000, symptoms=("misfire-random",))
    actions.write_up(shop, said)
    section = HeardSection(Desk(shop), lambda _words: (), lambda symptom: symptom)
    qtbot.addWidget(section)
    with shop.reading() as connection:
        section.show_job(read_job(connection, 1))
    section.show()
    return section


def test_a_replaced_odometer_is_noted_and_a_wrong_day_refused(
    qtbot: QtBot, shop: ShopRecord
) -> None:
    section = heard(qtbot, shop)
    fold = named(section, QPushButton, "Odometer replaced")
    qtbot.mouseClick(fold, Qt.MouseButton.LeftButton)
    day = named(section, QLineEdit, "On which day")
    day.clear()
    qtbot.keyClicks(day, "yesterday")
    qtbot.keyClicks(named(section, QLineEdit, "The old odometer"), "118,420")
    note = named(section, QPushButton, "Note what happened")
    qtbot.mouseClick(note, Qt.MouseButton.LeftButton)
    assert day.text() == "yesterday"
    day.clear()
    qtbot.keyClicks(day, "2026-11-01")
    qtbot.mouseClick(note, Qt.MouseButton.LeftButton)
    with shop.reading() as connection:
        rows = connection.execute(
            select(VehicleEvent.kind, VehicleEvent.happened_on, VehicleEvent.reading_before)
        ).all()
    assert rows == [("odometer replaced", "2026-11-01", 118_420)]


def test_a_symptom_read_from_the_words_can_be_taken_out(qtbot: QtBot, shop: ShopRecord) -> None:
    section = heard(qtbot, shop)
    qtbot.mouseClick(named(section, QPushButton, "Take out the symptom"), Qt.MouseButton.LeftButton)
    with shop.reading() as connection:
        assert read_job(connection, 1).symptoms == ()


def test_what_is_done_carries_the_name_of_who_is_at_the_desk(
    qtbot: QtBot, shop: ShopRecord
) -> None:
    desk = Desk(shop)
    who = WhoIsHere(desk)
    qtbot.addWidget(who)
    who.show()
    assert who.count() == 1
    desk.do(actions.add_person, "Tuuli")
    qtbot.keyClick(who, Qt.Key.Key_Down)
    assert shop.who == "Tuuli"
    desk.do(actions.person_left, 1)
    assert shop.who == ""

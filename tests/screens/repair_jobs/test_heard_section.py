"""Heard on a job's page: what happened to the car, who is at the desk, a symptom taken out."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QLabel, QLineEdit, QPushButton, QWidget
from pytestqt.qtbot import QtBot
from sqlalchemy import select

from desktop_app.repair_jobs import actions, odometer_actions
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


def test_what_was_noted_by_mistake_is_taken_out(qtbot: QtBot, shop: ShopRecord) -> None:
    section = heard(qtbot, shop)
    odometer_actions.note_vehicle_event(shop, 1, "odometer replaced", "2026-11-01", 118_420, None)
    with shop.reading() as connection:
        section.show_job(read_job(connection, 1))
    out = named(section, QPushButton, "Take it out: 1 November 2026: odometer replaced")
    assert "the old one at 118,420 mi, the new one at not known" in out.accessibleName()
    qtbot.mouseClick(out, Qt.MouseButton.LeftButton)
    with shop.reading() as connection:
        assert connection.execute(select(VehicleEvent.id)).all() == []


def test_conditions_that_the_words_tell_are_named_as_such_while_they_are_ticked(
    qtbot: QtBot, shop: ShopRecord
) -> None:
    said = WriteUp("misses when damp", plate="TH 1", odometer=1000, conditions=("damp",))
    actions.write_up(shop, said)
    actions.tick_condition(shop, 1, "hot", True)
    read = lambda words: ("damp", "rain") if "damp" in words else ()  # noqa: E731
    section = HeardSection(
        Desk(shop), lambda _words: (), lambda symptom: symptom, read_conditions=read
    )
    qtbot.addWidget(section)
    section.show()

    def told() -> list[str]:
        with shop.reading() as connection:
            section.show_job(read_job(connection, 1))
        lines = [one.text() for one in section.findChildren(QLabel) if one.isVisible()]
        return [one for one in lines if "themselves" in one]

    assert told() == ["The customer's words say it themselves: damp."]
    actions.tick_condition(shop, 1, "damp", False)
    assert told() == []


def came_again(shop: ShopRecord, on: str, odometer: int) -> int:
    said = WriteUp("misses", vehicle_id=1, odometer=odometer, came_at=f"{on}T09:00:00+00:00")
    made = actions.write_up(shop, said).made
    assert made is not None
    return made


def test_a_swapped_digit_is_put_right_by_one_press(qtbot: QtBot, shop: ShopRecord) -> None:
    actions.write_up(
        shop, WriteUp("misses", plate="TH 1", odometer=79_900, came_at="2026-03-02T09:00:00+00:00")
    )
    job = came_again(shop, "2026-05-01", 18_240)
    section = HeardSection(Desk(shop), lambda _words: (), lambda symptom: symptom)
    qtbot.addWidget(section)
    with shop.reading() as connection:
        section.show_job(read_job(connection, job))
    section.show()
    take = named(section, QPushButton, "Take 81,240 mi: two digits swapped")
    qtbot.mouseClick(take, Qt.MouseButton.LeftButton)
    with shop.reading() as connection:
        seen = read_job(connection, job)
        assert seen.odometer_in == 81_240
        section.show_job(seen)
    assert not take.isVisibleTo(section)
    said = [label.text() for label in section.findChildren(QLabel)]
    assert any(words.startswith("Driven about 2") and "miles a day" in words for words in said)


def test_what_the_customer_told_is_not_asked_about(qtbot: QtBot, shop: ShopRecord) -> None:
    section = heard(qtbot, shop)
    how = named(section, QComboBox, "How the odometer is known")
    how.setFocus()
    qtbot.keyClick(how, Qt.Key.Key_Down)
    with shop.reading() as connection:
        assert read_job(connection, 1).odometer_source == "told"


def test_kilometres_typed_into_a_car_that_counts_miles(qtbot: QtBot, shop: ShopRecord) -> None:
    section = heard(qtbot, shop)
    field = named(section, QLineEdit, "Odometer in")
    field.clear()
    qtbot.keyClicks(field, "16,093 km")
    qtbot.keyClick(field, Qt.Key.Key_Return)
    assert field.text() == "10,000"
    with shop.reading() as connection:
        assert read_job(connection, 1).odometer_in == 10_000


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
    assert "Add names" in who.itemText(1)
    desk.do(actions.add_person, "Tuuli")
    qtbot.keyClick(who, Qt.Key.Key_Down)
    assert shop.who == "Tuuli"
    desk.do(actions.person_left, 1)
    assert shop.who == ""


def test_where_nobody_is_on_the_list_a_choice_of_people_leads_to_it(
    qtbot: QtBot, shop: ShopRecord
) -> None:
    desk = Desk(shop)
    who = WhoIsHere(desk)
    qtbot.addWidget(who)
    who.show()
    with qtbot.waitSignal(desk.names_wanted):
        qtbot.keyClick(who, Qt.Key.Key_Down)
    assert (shop.who, who.currentText()) == ("", "Who is here?")
    desk.do(actions.add_person, "Tuuli")
    assert [who.itemText(at) for at in range(who.count())] == ["Who is here?", "Tuuli"]

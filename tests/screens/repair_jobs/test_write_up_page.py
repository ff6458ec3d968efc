"""Taking a car in, as the counter does it: keys, a known plate, odd entries, a lost draft."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QLineEdit, QPlainTextEdit, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.screen.write_up_page import WriteUpPage
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.fields import QuestionLine

PLATE, ODOMETER = "Plate, or the shop's own tag", "Odometer"


def field(page: QWidget, name: str) -> QLineEdit:
    return next(f for f in page.findChildren(QLineEdit) if f.accessibleName() == name)


def button(page: QWidget, text: str) -> QPushButton:
    return next(b for b in page.findChildren(QPushButton) if text in b.text())


def questions(page: QWidget) -> list[str]:
    return [q.question() for q in page.findChildren(QuestionLine) if q.question()]


def made(qtbot: QtBot, shop: ShopRecord) -> WriteUpPage:
    page = WriteUpPage(
        Desk(shop),
        Drafts(shop.folder),
        lambda words: ("misfire-random",) if "misses" in words else (),
        lambda words: ("damp",) if "damp" in words else (),
    )
    qtbot.addWidget(page)
    page.resize(1100, 800)
    page.show()
    page.came_here()
    return page


@pytest.fixture
def page(qtbot: QtBot, shop: ShopRecord) -> WriteUpPage:
    return made(qtbot, shop)


def test_a_new_car_is_taken_in_by_keys_alone(
    qtbot: QtBot, shop: ShopRecord, page: WriteUpPage
) -> None:
    qtbot.keyClicks(field(page, PLATE), "TH 1042")
    qtbot.keyClicks(field(page, ODOMETER), "118,420")
    words = page.findChildren(QPlainTextEdit)[0]
    qtbot.keyClicks(words, "misses when damp")
    with qtbot.waitSignal(page.taken_in) as taken:
        qtbot.keyClick(button(page, "Take the car in"), Qt.Key.Key_Space)
    with shop.reading() as connection:
        job = read_job(connection, taken.args[0])
    assert job.vehicle.plate == "TH 1042"
    assert job.odometer_in == 118_420
    assert job.symptoms == ("misfire-random",)
    assert job.conditions == {"damp": True}
    assert field(page, PLATE).text() == ""


def test_what_is_missing_is_said_and_nothing_is_lost(
    qtbot: QtBot, shop: ShopRecord, page: WriteUpPage
) -> None:
    qtbot.keyClicks(field(page, PLATE), "TH 1042")
    qtbot.mouseClick(button(page, "Take the car in"), Qt.MouseButton.LeftButton)
    said = [label.text() for label in page.findChildren(QWidget, "") if hasattr(label, "text")]
    assert any("What does the odometer say?" in text for text in said if isinstance(text, str))
    assert field(page, PLATE).text() == "TH 1042"
    assert shop.can_undo() is None


def test_what_is_missing_is_said_no_more_once_it_is_typed(qtbot: QtBot, page: WriteUpPage) -> None:
    def reads(words: str) -> bool:
        return any(words in one.text() for one in page.findChildren(QLabel) if one.isVisible())

    qtbot.keyClicks(field(page, PLATE), "TH 1042")
    qtbot.mouseClick(button(page, "Take the car in"), Qt.MouseButton.LeftButton)
    assert reads("What does the odometer say?")
    qtbot.keyClicks(field(page, ODOMETER), "118,420")
    qtbot.waitUntil(lambda: not reads("What does the odometer say?"))
    assert reads("What does the customer say?")
    qtbot.keyClicks(page.findChildren(QPlainTextEdit)[0], "misses")
    qtbot.waitUntil(lambda: not reads("What does the customer say?"))


def test_a_car_that_was_here_shows_its_earlier_jobs(
    qtbot: QtBot, shop: ShopRecord, page: WriteUpPage
) -> None:
    actions.write_up(shop, WriteUp("misses when damp", plate="TH 1042", odometer=118_420))
    qtbot.keyClicks(field(page, PLATE), "th1042")
    qtbot.waitUntil(lambda: any("J-101" in b.text() for b in page.findChildren(QPushButton)))
    with qtbot.waitSignal(page.job_wanted) as wanted:
        qtbot.mouseClick(button(page, "J-101"), Qt.MouseButton.LeftButton)
    assert wanted.args == [1]


def test_odd_entries_are_asked_about_and_kept(
    qtbot: QtBot, shop: ShopRecord, page: WriteUpPage
) -> None:
    actions.write_up(shop, WriteUp("misses", plate="TH 1042", odometer=118_420))
    actions.hand_over(shop, 1)
    qtbot.keyClicks(field(page, PLATE), "TH 1042")
    qtbot.keyClicks(field(page, "VIN, if it is at hand"), "1M8GDM9A1KP042788")
    qtbot.keyClicks(field(page, ODOMETER), "11842")
    qtbot.waitUntil(lambda: len(questions(page)) == 2)
    assert any("118,420" in q for q in questions(page))
    qtbot.mouseClick(button(page, "The same car"), Qt.MouseButton.LeftButton)
    page.findChildren(QPlainTextEdit)[0].setPlainText("misses again")
    with qtbot.waitSignal(page.taken_in) as taken:
        qtbot.mouseClick(button(page, "Take the car in"), Qt.MouseButton.LeftButton)
    with shop.reading() as connection:
        assert read_job(connection, taken.args[0]).odometer_in == 11_842


def test_a_half_filled_form_comes_back_after_a_crash(
    qtbot: QtBot, shop: ShopRecord, page: WriteUpPage
) -> None:
    qtbot.keyClicks(field(page, PLATE), "TH 1042")
    qtbot.keyClicks(page.findChildren(QPlainTextEdit)[0], "it clonks")
    draft = Drafts(shop.folder)
    qtbot.waitUntil(lambda: draft.read("write-up").get("concern") == "it clonks")
    again = made(qtbot, shop)
    assert field(again, PLATE).text() == "TH 1042"
    assert again.findChildren(QPlainTextEdit)[0].toPlainText() == "it clonks"


def test_a_damaged_draft_is_no_trouble(tmp_path: Path) -> None:
    (tmp_path / "drafts.json").write_bytes(b"\xff{")
    assert Drafts(tmp_path).read("write-up") == {}

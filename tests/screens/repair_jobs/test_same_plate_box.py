"""A plate changed to one that another car has is asked about on the job's page."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QLineEdit, QPushButton
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.screen.heard_section import HeardSection
from desktop_app.repair_jobs.screen.job_page import JobPage
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.returns_watched.stored_facts import read_facts
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk

CAR, VIN = {"odometer": 84_210, "symptoms": ("misfire",)}, "1M8GDM9AXKP042788"


@pytest.fixture
def page(qtbot: QtBot, shop: ShopRecord) -> Iterator[JobPage]:
    """Two cars; the page of the second one's job is shown."""
    day = "2026-11-02T09:00:00+00:00"
    actions.write_up(shop, WriteUp("misses", plate="KM 77", description="van", came_at=day, **CAR))
    actions.write_up(shop, WriteUp("misses", plate="TH 1", description="estate", **CAR))
    desk = Desk(shop)
    heard = HeardSection(desk, lambda _words: (), lambda symptom: symptom)
    page = JobPage(desk, [("Heard", heard)], lambda _job: "", lambda _job: [])
    qtbot.addWidget(page)
    page.resize(1040, 700)
    page.show()
    page.open_job(2)
    yield page
    desk.errands.finish()


def write(page: JobPage, qtbot: QtBot, name: str, text: str) -> None:
    field = next(w for w in page.findChildren(QLineEdit) if w.accessibleName() == name)
    field.setFocus()
    field.selectAll()
    qtbot.keyClicks(field, text)
    qtbot.keyClick(field, Qt.Key.Key_Return)


def asked(page: JobPage) -> str:
    labels = [w.text() for w in page.findChildren(QLabel) if w.isVisible()]
    return next((text for text in labels if text.startswith("Another car is written")), "")


def press(page: JobPage, qtbot: QtBot, words: str) -> None:
    buttons = [w for w in page.findChildren(QPushButton) if w.isVisible() and w.text() == words]
    qtbot.mouseClick(buttons[0], Qt.MouseButton.LeftButton)


def cars(shop: ShopRecord) -> int:
    with shop.reading() as connection:
        return len({job.vehicle for job in read_facts(connection).jobs})


def test_the_same_car_is_asked_about_once(page: JobPage, shop: ShopRecord, qtbot: QtBot) -> None:
    assert asked(page) == ""
    write(page, qtbot, "Plate", "km-77")
    assert "KM 77 · van" in asked(page)
    assert "Is it the same car?" in asked(page)
    press(page, qtbot, "The same car")
    assert asked(page) == ""
    assert cars(shop) == 1
    page.open_job(1)
    assert asked(page) == ""  # the other one's page need not be asked
    shop.undo()
    page.open_job(2)
    assert asked(page)


def test_another_car_keeps_its_visits_apart(page: JobPage, shop: ShopRecord, qtbot: QtBot) -> None:
    write(page, qtbot, "Plate", "KM 77")
    assert cars(shop) == 1
    press(page, qtbot, "Another car")
    assert asked(page) == ""
    assert cars(shop) == 2


def test_two_vins_tell_by_themselves(page: JobPage, shop: ShopRecord, qtbot: QtBot) -> None:
    write(page, qtbot, "VIN", VIN)
    write(page, qtbot, "Plate", "KM 77")
    assert asked(page)
    page.open_job(1)
    write(page, qtbot, "VIN", f"{VIN[:-1]}9")
    assert asked(page) == ""
    assert cars(shop) == 2

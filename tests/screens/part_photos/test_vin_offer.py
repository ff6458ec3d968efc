"""A VIN that a photo of the job shows: offered beside the VIN's field, put in by a press alone."""

from __future__ import annotations

from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit, QPushButton
from zxingcpp import BarcodeFormat as Form

from desktop_app.part_photos.screen.vin_offer import VinOffer
from desktop_app.repair_jobs import vehicle_actions
from desktop_app.repair_jobs.screen.heard_section import HeardSection
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from tests.part_photos.bench_pictures import encoded, noisy
from tests.part_photos.code_scenes import VIN, bars, label, photo_of
from tests.screens.bench_desk import named, new_job, words_of
from tests.screens.photo_desk import kept

DOOR = encoded(photo_of(label(bars("I" + VIN, Form.Code39)), across=1200))
OTHER = VIN[:-1] + "9"  # its check digit would be another
PUT_IN = "Put in as the VIN"


class Heard:
    """Heard of a job as its page shows it, and again after every deed."""

    def __init__(self, shop: ShopRecord, qtbot: Any) -> None:
        self.qtbot, self.desk = qtbot, Desk(shop)
        self.job = new_job(shop)
        self.section = HeardSection(
            self.desk, lambda _: (), lambda name: name, beside_vin=VinOffer(self.desk)
        )
        qtbot.addWidget(self.section)
        self.desk.changed.connect(self.reread)
        self.reread()
        self.section.resize(1000, 800)
        self.section.show()
        qtbot.waitExposed(self.section)
        self.section.activateWindow()

    def reread(self, _done: object = None) -> None:
        """Show the job as it is kept."""
        self.section.show_job(self.desk.ask(read_job, self.job))

    def vin(self) -> str:
        """Return the VIN that is kept."""
        return str(self.desk.ask(read_job, self.job).vehicle.vin)

    def buttons(self, words: str) -> list[QPushButton]:
        """Return what can be pressed and begins so."""
        found = self.section.findChildren(QPushButton)
        return [b for b in found if b.isVisible() and b.accessibleName().startswith(words)]

    def offered(self) -> QPushButton:
        """Wait for the offer."""
        self.qtbot.waitUntil(lambda: len(self.buttons(PUT_IN)) == 1, timeout=60_000)
        return self.buttons(PUT_IN)[0]

    def looked(self) -> None:
        """Wait until nothing is under way."""
        self.qtbot.waitUntil(lambda: not self.desk.errands.busy(), timeout=60_000)


@pytest.fixture
def heard(shop: ShopRecord, qtbot: Any) -> Any:
    """Heard of a new job whose VIN nobody wrote down."""
    heard = Heard(shop, qtbot)
    yield heard
    heard.desk.errands.finish()


def test_the_vin_on_the_car_s_label_is_offered_and_put_in_by_a_key(heard: Heard) -> None:
    kept(heard.desk, heard.job, encoded(noisy(200, 200)), DOOR)
    button = heard.offered()
    says = "The photo “photo 1.jpg” shows the VIN 1M8 GDM9AX KP042788."
    assert says in words_of(heard.section)
    assert button.accessibleName() == f"{PUT_IN}: {VIN}. {says}"
    assert heard.vin() == ""
    button.setFocus()
    heard.qtbot.keyClick(button, Qt.Key.Key_Space)
    assert heard.vin() == VIN
    assert named(heard.section, QLineEdit, "VIN").hasFocus()
    assert heard.buttons(PUT_IN) == []


def test_not_this_leaves_the_field_alone_and_the_offer_goes(heard: Heard) -> None:
    kept(heard.desk, heard.job, DOOR)
    heard.offered()
    [away] = heard.buttons("Not this")
    heard.qtbot.mouseClick(away, Qt.MouseButton.LeftButton)
    assert heard.vin() == ""
    heard.reread()
    assert heard.buttons(PUT_IN) == heard.buttons("Not this") == []


def test_another_vin_in_the_field_is_said_and_only_a_press_replaces_it(heard: Heard) -> None:
    vehicle = heard.desk.ask(read_job, heard.job).vehicle.id
    heard.desk.do(vehicle_actions.change_vehicle, vehicle, vin=OTHER)
    kept(heard.desk, heard.job, DOOR)
    button = heard.offered()
    assert f"The field has {OTHER} now." in words_of(heard.section)
    assert heard.vin() == OTHER
    heard.qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    assert heard.vin() == VIN
    heard.desk.undo()
    assert heard.vin() == OTHER


def test_the_vin_that_is_written_down_already_is_not_offered(heard: Heard) -> None:
    vehicle = heard.desk.ask(read_job, heard.job).vehicle.id
    heard.desk.do(vehicle_actions.change_vehicle, vehicle, vin=VIN.lower())
    kept(heard.desk, heard.job, DOOR)
    heard.looked()
    assert heard.buttons(PUT_IN) == []


def test_what_is_just_being_typed_is_never_written_over(heard: Heard) -> None:
    kept(heard.desk, heard.job, DOOR)
    button = heard.offered()
    field = named(heard.section, QLineEdit, "VIN")
    field.setFocus()
    heard.qtbot.keyClicks(field, OTHER)
    heard.qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    assert heard.vin() == OTHER
    heard.offered()
    assert f"The field has {OTHER} now." in words_of(heard.section)


def test_a_label_with_a_doubtful_check_digit_is_offered_with_the_doubt(heard: Heard) -> None:
    kept(heard.desk, heard.job, encoded(photo_of(label(bars(OTHER, Form.DataMatrix)), 300)))
    heard.offered()
    assert "on cars of many markets it is right all the same" in words_of(heard.section)


def test_a_photo_of_another_job_offers_nothing_here(heard: Heard) -> None:
    kept(heard.desk, new_job(heard.desk.record, "TH 2"), DOOR)
    heard.looked()
    assert heard.buttons(PUT_IN) == []


def test_photos_from_before_the_window_was_opened_are_left_alone(
    shop: ShopRecord, qtbot: Any
) -> None:
    before = Desk(shop)
    kept(before, new_job(shop, "TH 3"), DOOR)
    heard = Heard(shop, qtbot)
    heard.job = 1
    heard.reread()
    kept(heard.desk, 1, encoded(noisy(200, 200)))
    heard.looked()
    assert heard.buttons(PUT_IN) == []
    heard.desk.errands.finish()


def test_of_a_whole_record_that_comes_in_only_the_first_photos_are_looked_at(heard: Heard) -> None:
    kept(heard.desk, heard.job, *(encoded(noisy(60, 40, seed)) for seed in range(24)), DOOR)
    heard.looked()
    assert heard.buttons(PUT_IN) == []
    kept(heard.desk, heard.job, encoded(photo_of(label(bars(VIN, Form.QRCode)), 300)))
    heard.offered()

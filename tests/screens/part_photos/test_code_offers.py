"""Numbers in barcodes of a pair's photos: offered beside their fields, put in by a press alone."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent, QGuiApplication
from PySide6.QtWidgets import QApplication, QFileDialog, QLineEdit, QPushButton
from zxingcpp import BarcodeFormat as Form

from desktop_app.part_photos.actions import take_in
from desktop_app.part_photos.arrival import Arrival
from desktop_app.part_photos.read_apart import photo_reader
from desktop_app.part_photos.read_apart.photo_reader import PhotoReader
from desktop_app.part_photos.screen.photo_tray import PhotoTray
from desktop_app.part_photos.stored_reading import photos_of_job
from desktop_app.parts_compared import actions
from desktop_app.parts_compared.pair_view import PairView
from desktop_app.parts_compared.phone_photo_actions import put_to_part
from desktop_app.parts_compared.stored_pairs import read_pair
from desktop_app.shop_window.desk import Desk
from tests.faults.hostile_pictures.brittle_reading import BREAKS_OVER_CODES
from tests.faults.test_backup_faults import ROOT
from tests.part_photos.bench_pictures import encoded, noisy
from tests.part_photos.code_scenes import VIN, bars, label, photo_of
from tests.screens.bench_desk import Bench, named, new_job, words_of
from tests.screens.photo_desk import kept

EAN, PART = "4006381333931", "4711-22"
BOX = encoded(photo_of(label(bars(EAN, Form.EAN13))))
ON_PART = encoded(photo_of(label(bars(PART, Form.DataMatrix)), across=300))
NEW, OLD = "photos of the replacement", "photos of the removed part"
ON_BOX = "number on the box, distributor rotor"


class Pair:
    """A distributor rotor on the bench, its page on the screen."""

    def __init__(self, desk: Desk, qtbot: Any, *there: bytes) -> None:
        self.desk, self.qtbot = desk, qtbot
        self.told: list[str] = []
        desk.told.connect(lambda news: self.told.append(str(news)))
        job = new_job(desk.record)
        if there:
            kept(desk, job, *there)
        made = desk.do(actions.lay_side_by_side, job, "distributor-rotor")
        assert made is not None
        assert made.made is not None
        self.id = made.made
        self.page = Bench(desk, job)
        qtbot.addWidget(self.page)
        self.page.resize(1100, 900)
        self.page.show()
        qtbot.waitExposed(self.page)
        self.page.activateWindow()

    def now(self) -> PairView:
        """Return the pair as it is kept."""
        pair = self.desk.ask(read_pair, self.id)
        assert isinstance(pair, PairView)
        return pair

    def tray(self, whose: str) -> PhotoTray:
        """Return the tray of one side."""
        return named(self.page, PhotoTray, f"{whose}, distributor rotor")

    def buttons(self, words: str) -> list[QPushButton]:
        """Return what can be pressed and begins so, for a screen reader."""
        found = self.page.findChildren(QPushButton)
        return [b for b in found if b.isVisible() and b.accessibleName().startswith(words)]

    def offered(self, words: str) -> QPushButton:
        """Wait for an offer, and return its button."""
        self.qtbot.waitUntil(lambda: len(self.buttons(words)) == 1, timeout=60_000)
        return self.buttons(words)[0]

    def press(self, words: str) -> None:
        """Press an offer's button with the mouse."""
        self.qtbot.mouseClick(self.offered(words), Qt.MouseButton.LeftButton)

    def settle(self, photos: int) -> None:
        """Wait until so many photos are with the pair, and nothing is under way."""
        there = lambda: len(self.now().photos) == photos  # noqa: E731
        self.qtbot.waitUntil(there, timeout=60_000)
        self.qtbot.waitUntil(lambda: not self.desk.errands.busy(), timeout=60_000)

    def drop(self, whose: str, *files: Path) -> None:
        """Drag files over a tray and let them go."""
        mime, tray = QMimeData(), self.tray(whose)
        mime.setUrls([QUrl.fromLocalFile(str(file)) for file in files])
        copy, left = Qt.DropAction.CopyAction, Qt.MouseButton.LeftButton
        keys = Qt.KeyboardModifier.NoModifier
        QApplication.sendEvent(tray, QDragEnterEvent(QPoint(9, 9), copy, mime, left, keys))
        QApplication.sendEvent(tray, QDropEvent(QPointF(9, 9), copy, mime, left, keys))


@pytest.fixture
def pair(desk: Desk, qtbot: Any) -> Pair:
    """A pair without photos."""
    return Pair(desk, qtbot)


@pytest.fixture
def files(tmp_path: Path) -> Path:
    """A folder with a photo of a box, one of a marked part, and one of neither."""
    for name, content in (("box.jpg", BOX), ("part.jpg", ON_PART), ("bare.jpg", BARE)):
        (tmp_path / name).write_bytes(content)
    return tmp_path


BARE = encoded(noisy(400, 300))


def dropped(pair: Pair, file: Path, _patch: pytest.MonkeyPatch) -> None:
    pair.drop(NEW, file)


def picked(pair: Pair, file: Path, patch: pytest.MonkeyPatch) -> None:
    patch.setattr(QFileDialog, "getOpenFileNames", lambda *_: ([str(file)], ""))
    pair.press(f"Choose photo files: {NEW}")


def pasted(pair: Pair, file: Path, _patch: pytest.MonkeyPatch) -> None:
    QGuiApplication.clipboard().setText(str(file))
    pair.press(f"Paste photos from the clipboard (Ctrl+V): {NEW}")


def from_a_phone(pair: Pair, file: Path, _patch: pytest.MonkeyPatch) -> None:
    record = pair.desk.record
    taken = take_in(record, Arrival(file.name, content=file.read_bytes()))
    assert pair.desk.do(put_to_part, pair.id, [taken], "replacement", "whole part")


Way = Callable[[Pair, Path, pytest.MonkeyPatch], None]


@pytest.mark.parametrize("way", [dropped, picked, pasted, from_a_phone])
def test_what_a_photo_of_the_box_shows_is_offered_and_put_in_by_a_press(
    pair: Pair, files: Path, monkeypatch: pytest.MonkeyPatch, way: Way
) -> None:
    way(pair, files / "box.jpg", monkeypatch)
    pair.offered("Put in: number on the box")
    assert "The photo “box.jpg” (replacement, " in words_of(pair.page)
    assert f"shows the article number (EAN or UPC) {EAN}." in words_of(pair.page)
    assert pair.now().number_on_box == ""
    assert pair.buttons("Put in: number on the new part") == []  # a package's number is no part's
    pair.press("Put in: number on the box")
    assert (pair.now().number_on_box, pair.now().number_on_part) == (EAN, "")
    assert pair.buttons("Put in") == pair.buttons("Not this") == []
    pair.desk.undo()
    assert pair.now().number_on_box == ""


def test_by_keys_alone_with_names_that_say_what_they_put_in(pair: Pair, files: Path) -> None:
    pair.drop(NEW, files / "part.jpg")
    button = pair.offered("Put in: number on the new part")
    assert f": {PART}. The photo “part.jpg”" in button.accessibleName()
    assert button.focusPolicy() & Qt.FocusPolicy.TabFocus
    button.setFocus()
    pair.qtbot.keyClick(button, Qt.Key.Key_Space)
    assert (pair.now().number_on_box, pair.now().number_on_part) == ("", PART)
    assert named(pair.page, QLineEdit, "number on the new part, distributor rotor").hasFocus()
    assert pair.buttons("Put in") == []


def test_not_this_puts_nothing_in_and_asks_no_more(pair: Pair, files: Path) -> None:
    pair.drop(NEW, files / "box.jpg", files / "part.jpg")
    pair.settle(photos=2)
    pair.qtbot.waitUntil(lambda: len(pair.buttons("Not this")) == 2, timeout=60_000)
    pair.press(f"Not this: {EAN}")
    assert pair.buttons(f"Not this: {EAN}") == []
    pair.press("Not this")
    assert pair.buttons("Not this") == []
    pair.drop(NEW, files / "bare.jpg")
    pair.settle(photos=3)
    assert pair.buttons("Not this") == []
    assert (pair.now().number_on_box, pair.now().number_on_part) == ("", "")
    assert pair.told == []


def test_the_old_part_s_photo_offers_the_old_part_s_number(pair: Pair, files: Path) -> None:
    pair.drop(OLD, files / "part.jpg")
    pair.press("Put in")
    assert pair.now().number_removed == PART
    pair.drop(OLD, files / "box.jpg")  # nothing of the old part's is a package's
    pair.settle(photos=2)
    assert pair.buttons("Put in") == []


def test_what_the_field_has_is_said_and_kept_until_the_press(pair: Pair, files: Path) -> None:
    pair.desk.do(actions.write_about_pair, pair.id, "number_on_box", "0815")
    pair.drop(NEW, files / "box.jpg")
    pair.offered("Put in: number on the box")
    assert "“Number on the box” has 0815 now." in words_of(pair.page)
    assert pair.now().number_on_box == "0815"
    pair.press("Put in: number on the box")
    assert pair.now().number_on_box == EAN


def test_a_number_that_stands_there_already_is_not_offered(pair: Pair, files: Path) -> None:
    pair.desk.do(actions.write_about_pair, pair.id, "number_on_box", "4006381-333931")
    pair.drop(NEW, files / "box.jpg")
    pair.settle(photos=1)
    assert pair.buttons("Put in") == []


def test_what_is_just_being_typed_is_never_written_over(pair: Pair, files: Path) -> None:
    pair.drop(NEW, files / "box.jpg")
    button = pair.offered("Put in: number on the box")
    field = named(pair.page, QLineEdit, ON_BOX)
    field.setFocus()
    pair.qtbot.keyClicks(field, "0815")
    pair.qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    assert pair.now().number_on_box == "0815"
    pair.offered("Put in: number on the box")
    assert "“Number on the box” has 0815 now." in words_of(pair.page)


def test_a_vin_is_no_part_s_number(pair: Pair, tmp_path: Path) -> None:
    (tmp_path / "door.jpg").write_bytes(encoded(photo_of(label(bars(VIN, Form.QRCode)), 300)))
    pair.drop(OLD, tmp_path / "door.jpg")
    pair.settle(photos=1)
    assert pair.buttons("Put in") == []


def test_a_photo_from_before_is_looked_at_when_it_is_put_to_a_part(
    desk: Desk, qtbot: Any, files: Path
) -> None:
    pair = Pair(desk, qtbot, BOX)
    pair.drop(NEW, files / "box.jpg")
    pair.offered("Put in: number on the box")
    assert len(desk.ask(photos_of_job, pair.page.job_id)) == 1


def test_a_photo_that_breaks_the_reader_costs_its_offer_alone(
    pair: Pair, files: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("PYTHONPATH", str(ROOT))
    brittle = PhotoReader("tests.faults.hostile_pictures.brittle_reading")
    monkeypatch.setattr(photo_reader, "READER", brittle)
    (tmp_path / "odd.jpg").write_bytes(ON_PART + BREAKS_OVER_CODES)
    pair.drop(NEW, tmp_path / "odd.jpg", files / "box.jpg")
    pair.settle(photos=2)
    pair.offered("Put in: number on the box")
    assert pair.buttons(f"Not this: {PART}") == []
    assert pair.told == []
    brittle.end()

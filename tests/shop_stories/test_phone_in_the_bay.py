"""Photos from a phone, the whole way: the code in the window, the sending, the part, undo."""

from __future__ import annotations

import hashlib
import http.client
import json
import socket
import ssl
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import numpy as np
import pytest
import zxingcpp
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QComboBox, QLabel, QListWidget, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.part_photos.phone import limits
from desktop_app.part_photos.phone.addresses import Address
from desktop_app.part_photos.screen import phone_panel
from desktop_app.part_photos.screen.phone_panel import PhonePanel
from desktop_app.part_photos.screen.phone_status import PhoneStatus
from desktop_app.part_photos.stored_reading import photos_of_job
from desktop_app.parts_compared.actions import lay_side_by_side, take_pair_away
from desktop_app.parts_compared.stored_pairs import read_pair
from tests.part_photos.bench_pictures import encoded, noisy
from tests.screens.bench_desk import new_job
from tests.shop_stories.counter import Counter, sitting

NOW = datetime(2026, 11, 18, 10, 30, tzinfo=UTC)
ALONE = "127.0.0.1  (this computer alone, to try it)"
PHOTOS = [encoded(noisy(400, 300, seed)) for seed in range(4)]
REMOVED = "From a phone: photos of the removed part, distributor rotor"
STATUS = "Phone: "


class Bay:
    """A shop with one rotor laid side by side, and whoever holds the phone."""

    def __init__(self, counter: Counter) -> None:
        self.counter = counter
        desk = counter.program.desk
        assert desk is not None
        self.desk = desk
        self.job = new_job(desk.record)
        made = desk.do(lay_side_by_side, self.job, "distributor-rotor")
        assert made is not None
        assert made.made is not None
        self.pair = made.made
        desk.parent().open_job(self.job)  # type: ignore[union-attr]
        counter.quiet()

    def open(self) -> None:
        """Press the button at the removed part and open the page."""
        self.counter.press(REMOVED)
        self.counter.choose("Address of this computer", ALONE)
        self.counter.press("Open the page for phones")

    @property
    def panel(self) -> PhonePanel:
        """The window beside the window."""
        (panel,) = self.counter.window.findChildren(PhonePanel)
        return panel

    @property
    def address(self) -> str:
        """What the phone has to open, as it stands in the panel."""
        return self.counter.find(QLabel, "Address for the phone").text()

    def ask(self, method: str, path: str, body: bytes, **heads: str) -> tuple[int, Any]:
        """Be the phone's browser, which knows nothing but what it scanned."""
        here, _, key = self.address.removeprefix("http://").partition("/#")
        host, _, port = here.partition(":")
        line = http.client.HTTPConnection(host, int(port), timeout=30)
        try:
            own = {"X-Bay-Key": key, "Origin": f"http://{here}"}
            own |= {name.replace("_", "-"): value for name, value in heads.items()}
            line.request(method, path, body, own | {"Content-Length": str(len(body))})
            answer = line.getresponse()
            return answer.status, json.loads(answer.read())
        finally:
            line.close()

    def label(self) -> dict[str, Any]:
        """What the phone shows."""
        status, said = self.ask("POST", "/place", b"")
        assert status == 200
        return dict(said)

    def send(self, photo: bytes, place: str, name: str = "IMG_1.jpg") -> int:
        """Send a photo and check that its hash comes back."""
        sha = hashlib.sha256(photo).hexdigest()
        heads = {"X_Photo_SHA256": sha, "X_Photo_Place": place, "X_Photo_Name": name}
        status, said = self.ask("PUT", "/photo", photo, **heads)
        if status == 200:
            assert said == {"sha256": sha, "bytes": len(photo)}
        return status

    def shown(self) -> list[tuple[str, str, str]]:
        """Which photos stand for which side in which view."""
        pair = self.desk.ask(read_pair, self.pair)
        return [(one.name, one.side, one.view) for one in pair.photos]

    def says_above(self) -> str:
        """What stands above every page, which comes once the window has laid its tools out."""
        found = self.counter.window.findChildren
        self.counter.bot.waitUntil(lambda: len(found(PhoneStatus)) == 1, timeout=10000)
        (status,) = found(PhoneStatus)
        self.counter.bot.waitUntil(lambda: bool(status.text()), timeout=10000)
        return status.text()

    def wait_for(self, count: int) -> None:
        """Wait until so many photos stand with the part."""
        self.counter.bot.waitUntil(lambda: len(self.shown()) == count, timeout=10000)
        self.counter.quiet()

    def in_tray(self) -> list[str]:
        """The files in the tray of phones."""
        folder = self.desk.record.folder / "phone-tray"
        return sorted(file.name for file in folder.iterdir()) if folder.is_dir() else []


@pytest.fixture
def bay(tmp_path: Path, qtbot: QtBot) -> Iterator[Bay]:
    """The window on a shop with one pair."""
    with sitting(qtbot, tmp_path / "shop", NOW) as counter:
        yield Bay(counter)


def read_code(panel: QWidget) -> str:
    """Read the code in the panel as a camera does."""
    image = panel.grab().toImage().convertToFormat(QImage.Format.Format_Grayscale8)
    rows = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), -1)
    found = zxingcpp.read_barcodes(rows[:, : image.width()].copy())
    return found[0].text if found else ""


def test_a_photo_goes_from_the_phone_to_its_part_and_undo_takes_it_back(bay: Bay) -> None:
    bay.open()
    assert read_code(bay.panel) == bay.address
    assert bay.counter.reads("others on this Wi-Fi can watch")
    said = bay.label()
    assert (said["part"], said["side"]) == ("distributor rotor", 0)
    view = said["views"][1]
    assert bay.send(PHOTOS[0], f"{said['key']}.0.0", "tip.jpg") == 200
    bay.wait_for(1)
    assert bay.send(PHOTOS[1], f"{said['key']}.1.1", "new.jpg") == 200
    bay.wait_for(2)
    assert bay.shown() == [
        ("tip.jpg", "removed", said["views"][0]),
        ("new.jpg", "replacement", view),
    ]
    strip = bay.counter.find(QListWidget, "photos of the removed part, distributor rotor")
    assert [strip.item(row).text() for row in range(strip.count())] == ["tip.jpg"]
    assert bay.counter.reads("2 different photos came.")
    assert bay.says_above() == "Phone: open, 2 different photos"
    assert bay.in_tray() == []
    bay.counter.press("Undo: Put a photo from the phone to a part")
    bay.wait_for(1)
    assert [photo.name for photo in bay.desk.ask(photos_of_job, bay.job)] == ["tip.jpg"]


def test_the_same_photo_sent_again_is_there_once(bay: Bay) -> None:
    bay.open()
    place = f"{bay.label()['key']}.0.0"
    for _ in range(3):
        assert bay.send(PHOTOS[0], place) == 200
        bay.wait_for(1)
    assert bay.counter.reads("One photo came.")
    assert bay.says_above() == "Phone: open, one photo"
    assert len(bay.desk.ask(photos_of_job, bay.job)) == 1
    bay.counter.bot.waitUntil(lambda: bay.in_tray() == [], timeout=10000)


def test_a_photo_that_breaks_off_is_refused_in_the_window_and_on_the_phone(bay: Bay) -> None:
    bay.open()
    torn = PHOTOS[0][: len(PHOTOS[0]) // 2]
    assert bay.send(torn, f"{bay.label()['key']}.0.0", "torn.jpg") == 200
    bay.counter.wait_for("torn.jpg: ")
    (why,) = bay.label()["refused"].values()
    assert why.startswith("torn.jpg: ")
    assert bay.shown() == []
    assert bay.in_tray() == []


def test_photos_without_a_place_wait_and_are_put_to_a_part_or_thrown_away(bay: Bay) -> None:
    bay.open()
    for number in range(3):
        assert bay.send(PHOTOS[number], "none", f"IMG_{number}.jpg") == 200
    bay.counter.wait_for("3 photos wait for a place")
    assert bay.shown() == []
    waiting = bay.counter.find(QListWidget, "Photos that wait for a place")
    first = waiting.visualItemRect(waiting.item(0)).center()
    bay.counter.bot.mouseClick(waiting.viewport(), Qt.MouseButton.LeftButton, pos=first)
    bay.counter.press("Put the 1 marked to the part above")
    bay.wait_for(1)
    assert [(name, side) for name, side, _ in bay.shown()] == [("IMG_0.jpg", "removed")]
    bay.counter.press("Throw all 2 away")
    assert not waiting.isVisible()
    assert bay.in_tray() == []
    thrown = list((bay.desk.record.folder / "trash").rglob("*.none"))
    assert sorted(file.read_bytes() for file in thrown) == sorted(PHOTOS[1:3])


def test_a_pair_that_was_taken_away_loses_no_photo(bay: Bay) -> None:
    bay.open()
    place = f"{bay.label()['key']}.0.0"
    assert bay.desk.do(take_pair_away, bay.pair) is not None
    assert bay.counter.reads("No part is chosen")
    assert bay.label()["key"] == ""
    assert bay.send(PHOTOS[0], place) == 200
    bay.counter.wait_for("One photo waits for a place")
    assert bay.counter.reads("The pair that the phone's photo was taken for is no longer there.")
    assert bay.counter.reads("Taken for: removed part")
    assert not bay.counter.button("Put it to the part above").isEnabled()
    assert bay.desk.undo() is not None
    bay.counter.quiet()
    bay.counter.press(REMOVED)
    bay.counter.press("Put it to the part above")
    bay.wait_for(1)
    assert bay.in_tray() == []


def test_what_waits_when_the_program_stops_waits_when_it_starts(
    tmp_path: Path, qtbot: QtBot
) -> None:
    with sitting(qtbot, tmp_path / "shop", NOW) as counter:
        bay = Bay(counter)
        bay.open()
        assert bay.send(PHOTOS[0], "none", "late.jpg") == 200
        counter.wait_for("One photo waits for a place")
    with sitting(qtbot, tmp_path / "shop", NOW) as counter:
        counter.bot.waitUntil(lambda: bool(counter._buttons(f"{STATUS}one photo waits")))
        counter.press(f"{STATUS}one photo waits")
        waiting = counter.find(QListWidget, "Photos that wait for a place")
        assert waiting.item(0).text() == "late.jpg"


def test_closing_the_page_lets_nobody_in_any_more(bay: Bay) -> None:
    assert not bay.counter._buttons(STATUS)
    bay.open()
    bay.counter.bot.waitUntil(lambda: bool(bay.counter._buttons(f"{STATUS}open")))
    here = bay.address.removeprefix("http://").partition("/#")[0].split(":")
    first = bay.address
    bay.counter.press("Close the page")
    assert not bay.counter._buttons(STATUS)
    bay.counter.bot.waitUntil(lambda: not listens(here), timeout=5000)
    bay.counter.press("Open the page for phones")
    assert bay.address.partition("#")[2] != first.partition("#")[2]


def test_half_an_hour_without_a_photo_closes_the_page(
    bay: Bay, monkeypatch: pytest.MonkeyPatch
) -> None:
    bay.open()
    here = bay.address.removeprefix("http://").partition("/#")[0].split(":")
    monkeypatch.setattr(limits, "IDLE_SECONDS", 0.0)
    bay.counter.wait_for("no photo came for half an hour")
    bay.counter.bot.waitUntil(lambda: not listens(here), timeout=5000)


def test_closing_the_window_closes_the_page(tmp_path: Path, qtbot: QtBot) -> None:
    with sitting(qtbot, tmp_path / "shop", NOW) as counter:
        bay = Bay(counter)
        bay.open()
        here = bay.address.removeprefix("http://").partition("/#")[0].split(":")
        assert listens(here)
    assert not listens(here)


def test_the_panel_by_keyboard_alone(bay: Bay) -> None:
    button = bay.counter.tab_to("From a phone")
    bay.counter.bot.keyClick(button, Qt.Key.Key_Space)
    panel = bay.panel
    bay.counter.bot.waitUntil(panel.isActiveWindow)
    choice = bay.counter.find(QComboBox, "Address of this computer")
    bay.counter.choose("Address of this computer", ALONE)
    bay.counter.bot.keyClick(choice, Qt.Key.Key_Tab)
    bay.counter.bot.keyClick(panel.focusWidget(), Qt.Key.Key_Space)
    assert bay.label()["part"] == "distributor rotor"
    focus = panel.focusWidget()
    assert isinstance(focus, QPushButton)
    assert focus.text() == "Close the page"
    bay.counter.bot.keyClick(focus, Qt.Key.Key_Space)
    assert panel.focusWidget() is bay.counter.button("Open the page for phones")
    bay.counter.bot.keyClick(panel, Qt.Key.Key_Escape)
    assert not panel.isVisible()


def test_behind_a_lock_the_window_shows_the_mark_of_its_certificate(bay: Bay) -> None:
    bay.counter.press(REMOVED)
    bay.counter.choose("Address of this computer", ALONE)
    bay.counter.press("Lock what travels (TLS, a certificate of this computer's own)")
    bay.counter.press("Open the page for phones")
    bay.counter.wait_for("Photos travel locked.")
    assert bay.address.startswith("https://127.0.0.1:")
    here = bay.address.removeprefix("https://").partition("/#")[0].split(":")
    told = ssl.PEM_cert_to_DER_cert(ssl.get_server_certificate((here[0], int(here[1]))))
    digest = hashlib.sha256(told).hexdigest().upper()
    assert bay.counter.reads(" ".join(digest[at : at + 4] for at in range(0, 64, 4)))
    assert not bay.counter.reads("unlocked")
    assert bay.panel.focusWidget() is bay.counter.button("Close the page")


def test_without_its_library_there_is_no_lock_and_it_is_said_how_to_get_it(
    bay: Bay, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(phone_panel, "can_lock", lambda: False)
    bay.counter.press(REMOVED)
    lock = bay.counter.button("Lock what travels (TLS, a certificate of this computer's own)")
    assert not lock.isEnabled()
    assert "pip install" in lock.toolTip()


def test_another_part_in_the_window_is_another_place_on_the_phone(bay: Bay) -> None:
    bay.open()
    before = bay.label()
    bay.counter.press("From a phone: photos of the replacement, distributor rotor")
    after = bay.label()
    assert (before["side"], after["side"]) == (0, 1)
    assert before["key"] != after["key"]
    assert bay.send(PHOTOS[0], f"{before['key']}.0.0") == 200  # taken before, sent late
    bay.wait_for(1)
    assert bay.shown()[0][1] == "removed"


def test_an_address_that_is_taken_is_said(bay: Bay, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(phone_panel, "addresses_here", lambda: [Address("192.0.2.77", "gone")])
    bay.counter.press(REMOVED)
    bay.counter.press("Open the page for phones")
    assert bay.counter.reads("can't be opened at 192.0.2.77")
    assert not bay.counter._buttons(STATUS)


def listens(here: list[str]) -> bool:
    """Tell whether somebody answers there."""
    try:
        socket.create_connection((here[0], int(here[1])), timeout=5).close()
    except OSError:
        return False
    return True

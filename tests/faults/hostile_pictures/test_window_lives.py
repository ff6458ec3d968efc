"""Hostile pictures dropped into the window: it lives, says what it refused, and takes the next."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, Qt
from PySide6.QtGui import QGuiApplication, QImage
from PySide6.QtWidgets import QApplication, QLabel, QPushButton
from pytestqt.qtbot import QtBot

from desktop_app.part_photos.read_apart import photo_reader
from desktop_app.part_photos.read_apart.photo_reader import PhotoReader
from desktop_app.part_photos.screen.photo_tray import PhotoTray
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from tests.faults.hostile_pictures.brittle_reading import CRASHES, HANGS
from tests.faults.hostile_pictures.collection import HOSTILE, TAKEN
from tests.faults.hostile_pictures.posing import SVG
from tests.faults.hostile_pictures.test_reader_breaks import BRITTLE, BROKE, PHOTO
from tests.faults.test_backup_faults import ROOT
from tests.part_photos.bench_pictures import encoded, job_with_no_photos, picture
from tests.screens.bench_desk import Bench, new_job
from tests.screens.bench_desk import named as on_bench
from tests.screens.part_photos.test_photos import Told, drop, urls
from tests.screens.parts_compared.test_old_and_new import lay
from tests.screens.photo_desk import named

LONG_MS = 60_000


@pytest.fixture
def desk(shop: ShopRecord, qapp: QApplication) -> Iterator[Desk]:
    """A desk on a new shop; its errands have ended when the test ends."""
    desk = Desk(shop)
    yield desk
    desk.errands.finish()


@pytest.fixture
def tray(qtbot: QtBot, desk: Desk) -> PhotoTray:
    """The tray of a job without photos, on the screen."""
    tray = PhotoTray(desk)
    qtbot.addWidget(tray)
    tray.show_job(job_with_no_photos(desk.record))
    tray.show()
    return tray


def names(tray: PhotoTray) -> list[str]:
    """The names of the photos in the tray."""
    return [photo.name for photo in tray.photos()]


def paste(qtbot: QtBot, tray: PhotoTray, mime: QMimeData) -> None:
    """Put something on the clipboard and press the button that pastes it."""
    QGuiApplication.clipboard().setMimeData(mime)
    button = named(tray, QPushButton, "Paste photos from the clipboard (Ctrl+V)")
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)


def test_of_a_folder_full_of_them_the_good_ones_are_taken(
    qtbot: QtBot, desk: Desk, tray: PhotoTray, tmp_path: Path
) -> None:
    folder = tmp_path / "phone"
    folder.mkdir()
    for hostile in HOSTILE:
        (folder / hostile.name).write_bytes(hostile.make())
    told = Told(desk)
    with qtbot.waitSignal(tray.photos_added, timeout=LONG_MS):
        drop(tray, urls(folder))
    good = sorted(hostile.name for hostile in HOSTILE if hostile.said == TAKEN)
    assert names(tray) == good
    (news,) = told.words
    assert news.startswith(f"{len(good)} photos were added. Not taken: bmp.jpg: this is a BMP")
    assert news.endswith(f"and {len(HOSTILE) - len(good) - 4} more")


def test_a_crash_and_a_hang_are_said_and_the_next_photo_is_taken(
    qtbot: QtBot, desk: Desk, tray: PhotoTray, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("PYTHONPATH", str(ROOT))
    reader = PhotoReader(BRITTLE, 10.0)
    monkeypatch.setattr(photo_reader, "READER", reader)
    (tmp_path / "left.jpg").write_bytes(PHOTO + CRASHES)
    (tmp_path / "rear.jpg").write_bytes(PHOTO + HANGS)
    (tmp_path / "top.jpg").write_bytes(PHOTO)
    told = Told(desk)
    with qtbot.waitSignal(tray.photos_added, timeout=LONG_MS):
        drop(tray, urls(*(tmp_path / f"{name}.jpg" for name in ("left", "rear", "top"))))
    assert names(tray) == ["top.jpg"]
    (news,) = told.words
    assert news.startswith(f"One photo was added. Not taken: {BROKE} rear.jpg: ")
    assert "it takes longer than 10 seconds" in news
    desk.errands.finish()
    reader.end()


def test_the_same_file_as_old_and_new_part_is_said(
    qtbot: QtBot, desk: Desk, tmp_path: Path
) -> None:
    bench = Bench(desk, new_job(desk.record))
    qtbot.addWidget(bench)
    bench.resize(1100, 760)
    bench.show()
    qtbot.waitExposed(bench)
    lay(bench, qtbot, "distributor rotor")
    file = tmp_path / "rotor.jpg"
    file.write_bytes(encoded(picture()))
    for side in ("removed part", "replacement"):
        tray = on_bench(bench, PhotoTray, f"photos of the {side}, distributor rotor")
        with qtbot.waitSignal(tray.photos_added):
            drop(tray, urls(file))

    def is_said() -> bool:
        labels = bench.findChildren(QLabel)
        return any("the same picture" in each.text() and not each.isHidden() for each in labels)

    qtbot.waitUntil(is_said)


def test_a_drawing_on_the_clipboard_is_never_drawn(
    qtbot: QtBot, desk: Desk, tray: PhotoTray, tmp_path: Path
) -> None:
    secret = tmp_path / "secret.png"
    secret.write_bytes(encoded(picture(), "PNG"))
    told = Told(desk)
    for kind in ("image/svg", "image/svg+xml", "image/pdf"):
        mime = QMimeData()
        mime.setData(kind, SVG.replace(b"secret.png", str(secret).encode()))
        mime.setImageData(QImage(8, 8, QImage.Format.Format_RGB32))  # what Qt would make of it
        paste(qtbot, tray, mime)
    qtbot.waitUntil(lambda: len(told.words) == 3 and not desk.errands.busy())
    assert {words.partition(": ")[2] for words in told.words} == {
        "pasted 2026-11-16 12.00.00: it is a drawing; photos are JPEG, PNG, HEIC and WebP. "
        "Save it as one of these first."
    }
    assert names(tray) == []


def test_a_photo_beside_a_drawing_of_it_is_taken(qtbot: QtBot, desk: Desk, tray: PhotoTray) -> None:
    mime = QMimeData()
    mime.setData("image/svg+xml", SVG)
    mime.setData("image/png", encoded(picture(), "PNG"))
    with qtbot.waitSignal(tray.photos_added):
        paste(qtbot, tray, mime)
    assert names(tray) == ["pasted 2026-11-16 12.00.00.png"]

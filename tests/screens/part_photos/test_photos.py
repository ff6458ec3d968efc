"""Photos in the window: dropped, chosen and pasted into the tray, noted, taken off."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, QSize, QStandardPaths, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent, QGuiApplication, QImage
from PySide6.QtWidgets import (
    QApplication,
    QFileDialog,
    QLabel,
    QLineEdit,
    QListWidget,
    QPushButton,
    QWidget,
)
from pytestqt.qtbot import QtBot

from desktop_app.part_photos.kept_photo import KeptPhoto
from desktop_app.part_photos.screen.photo_tray import PhotoTray
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.errands import Errand
from tests.from_outside import lose_photo
from tests.part_photos.bench_pictures import (
    job_with_no_photos,
)
from tests.screens.photo_desk import CAP, ROTOR, kept, named

LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def job_id(desk: Desk) -> int:
    """A job without photos."""
    return job_with_no_photos(desk.record)


@pytest.fixture
def tray(qtbot: QtBot, desk: Desk, job_id: int) -> PhotoTray:
    """The tray of that job, on the screen."""
    tray = PhotoTray(desk)
    qtbot.addWidget(tray)
    tray.resize(1000, 260)
    tray.show_job(job_id)
    tray.show()
    return tray


@pytest.fixture
def files(tmp_path: Path) -> Path:
    """A folder with two photos, a text, an empty file and a drawing that calls itself a photo."""
    folder = tmp_path / "phone"
    folder.mkdir()
    (folder / "cap.jpg").write_bytes(CAP)
    (folder / "rotor.webp").write_bytes(ROTOR)
    (folder / "gap.txt").write_text("gap 0.8 mm", encoding="utf-8")
    (folder / "empty.jpg").write_bytes(b"")
    (folder / "drawing.jpg").write_text("<svg/>", encoding="utf-8")
    return folder


class Told:
    """Keeps what the desk said."""

    def __init__(self, desk: Desk) -> None:
        self.words: list[str] = []
        desk.told.connect(self.hear)

    def hear(self, news: object) -> None:
        """Keep one piece of news."""
        self.words.append(str(news))


def names(tray: PhotoTray) -> list[str]:
    """Return the names of the photos in the tray."""
    return [photo.name for photo in tray.photos()]


def drop(tray: PhotoTray, mime: QMimeData) -> None:
    """Drag something over the tray and let it go."""
    where = QPoint(20, 20)
    copy, left, none = (
        Qt.DropAction.CopyAction,
        Qt.MouseButton.LeftButton,
        Qt.KeyboardModifier.NoModifier,
    )
    enter = QDragEnterEvent(where, copy, mime, left, none)
    QApplication.sendEvent(tray, enter)
    assert enter.isAccepted()
    let_go = QDropEvent(QPointF(where), copy, mime, left, none)
    QApplication.sendEvent(tray, let_go)
    assert let_go.isAccepted()
    assert let_go.dropAction() == copy


def urls(*paths: Path | str) -> QMimeData:
    """What a file manager hands over."""
    mime = QMimeData()
    mime.setUrls(
        [QUrl.fromLocalFile(str(each)) if isinstance(each, Path) else QUrl(each) for each in paths]
    )
    return mime


def test_a_drop_takes_the_good_files_and_names_the_others(
    qtbot: QtBot, desk: Desk, tray: PhotoTray, files: Path
) -> None:
    told = Told(desk)
    every = sorted(files.iterdir())
    with qtbot.waitSignal(tray.photos_added) as added:
        drop(tray, urls(*every, "https://example.org/cap.jpg"))
    assert names(tray) == ["cap.jpg", "rotor.webp"]
    assert added.args == [[photo.id for photo in tray.photos()]]
    assert told.words == [
        "2 photos were added. Not taken: "
        "cap.jpg: it lies on the web, not on this computer. Save it as a file first. "
        "drawing.jpg: this is an SVG drawing; photos are JPEG, PNG, HEIC and WebP. "
        "empty.jpg: the file is empty. "
        "gap.txt: this is not a photo; photos are JPEG, PNG, HEIC and WebP."
    ]
    assert desk.record.can_undo() == "Add 2 photos"


def test_a_dropped_folder_is_searched(qtbot: QtBot, tray: PhotoTray, files: Path) -> None:
    with qtbot.waitSignal(tray.photos_added):
        drop(tray, urls(files))
    assert names(tray) == ["cap.jpg", "rotor.webp"]


def test_the_same_photo_again_is_said_and_handed_on_but_not_added(
    qtbot: QtBot, desk: Desk, tray: PhotoTray, files: Path
) -> None:
    with qtbot.waitSignal(tray.photos_added) as first:
        drop(tray, urls(files / "cap.jpg"))
    told = Told(desk)
    with qtbot.waitSignal(tray.photos_added) as second:
        drop(tray, urls(files / "cap.jpg"))
    assert first.args == second.args
    assert names(tray) == ["cap.jpg"]
    assert told.words == ["No photo was added. It is on this job already: cap.jpg."]


def test_files_are_chosen_in_the_dialog(
    qtbot: QtBot, tray: PhotoTray, files: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    chosen = [str(files / "cap.jpg")]
    monkeypatch.setattr(QFileDialog, "getOpenFileNames", lambda *_: (chosen, ""))
    button = named(tray, QPushButton, "Choose photo files")
    with qtbot.waitSignal(tray.photos_added):
        qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    assert names(tray) == ["cap.jpg"]


def test_the_dialog_begins_among_pictures_then_where_the_last_photos_lay_for_every_tray(
    qtbot: QtBot, desk: Desk, tray: PhotoTray, files: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    begun: list[str] = []

    def choose(*asked: object) -> tuple[list[str], str]:
        begun.append(str(asked[2]))
        return ([str(files / "cap.jpg")] if len(begun) == 1 else []), ""

    monkeypatch.setattr(QFileDialog, "getOpenFileNames", choose)
    other = PhotoTray(desk, "photos of the new part")
    qtbot.addWidget(other)
    with qtbot.waitSignal(tray.photos_added):
        qtbot.mouseClick(named(tray, QPushButton, "Choose photo files"), LEFT)
    for _ in range(2):  # nothing chosen changes nothing
        button = named(other, QPushButton, "Choose photo files: photos of the new part")
        qtbot.mouseClick(button, LEFT)
    pictures = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.PicturesLocation)
    assert begun == [pictures, str(files), str(files)]


def test_a_picture_is_pasted(qtbot: QtBot, tray: PhotoTray) -> None:
    image = QImage(40, 30, QImage.Format.Format_RGB32)
    image.fill(Qt.GlobalColor.gray)
    QGuiApplication.clipboard().setImage(image)
    with qtbot.waitSignal(tray.photos_added):
        qtbot.mouseClick(
            named(tray, QPushButton, "Paste photos from the clipboard (Ctrl+V)"),
            Qt.MouseButton.LeftButton,
        )
    (photo,) = tray.photos()
    assert (photo.name, photo.media_type) == ("pasted 2026-11-16 08.00.00.png", "image/png")
    assert (photo.width, photo.height) == (40, 30)


def test_bytes_on_the_clipboard_are_kept_as_they_came(
    qtbot: QtBot, desk: Desk, tray: PhotoTray
) -> None:
    mime = QMimeData()
    mime.setData("image/jpeg", CAP)
    QGuiApplication.clipboard().setMimeData(mime)
    with qtbot.waitSignal(tray.photos_added):
        tray.paste()
    assert desk.record.photos.read(tray.photos()[0].sha256) == CAP


def test_paths_are_pasted_with_the_keys(
    qtbot: QtBot, desk: Desk, tray: PhotoTray, files: Path
) -> None:
    text = f'"{files / "cap.jpg"}"\n{(files / "rotor.webp").as_uri()}\n'
    QGuiApplication.clipboard().setText(text)
    tray.activateWindow()
    button = named(tray, QPushButton, "Choose photo files")
    button.setFocus()
    qtbot.waitUntil(button.hasFocus)
    with qtbot.waitSignal(tray.photos_added):
        qtbot.keyClick(button, Qt.Key.Key_V, Qt.KeyboardModifier.ControlModifier)
    assert names(tray) == ["cap.jpg", "rotor.webp"]


def test_whoever_presses_where_photos_are_to_come_can_paste_there(
    qtbot: QtBot, tray: PhotoTray
) -> None:
    QGuiApplication.clipboard().setImage(QImage(40, 30, QImage.Format.Format_RGB32))
    tray.activateWindow()
    words = "Drop photos here, paste them (Ctrl+V), or choose files."
    label = next(one for one in tray.findChildren(QLabel) if one.text() == words)
    qtbot.mouseClick(label, Qt.MouseButton.LeftButton)
    paste = named(tray, QPushButton, "Paste photos from the clipboard (Ctrl+V)")
    qtbot.waitUntil(paste.hasFocus)
    with qtbot.waitSignal(tray.photos_added):
        qtbot.keyClick(paste, Qt.Key.Key_V, Qt.KeyboardModifier.ControlModifier)


def test_words_on_the_clipboard_are_no_photo(desk: Desk, tray: PhotoTray) -> None:
    told = Told(desk)
    QGuiApplication.clipboard().setText("gap 0.8 mm")
    tray.paste()
    assert told.words == ["The clipboard holds no picture and no files."]


def test_a_note_stays_with_its_photo(
    qtbot: QtBot, desk: Desk, tray: PhotoTray, job_id: int
) -> None:
    kept(desk, job_id, CAP, ROTOR)
    strip = named(tray, QListWidget, "Photos")
    note = named(tray, QLineEdit, "Note on the chosen photo")
    qtbot.keyClicks(note, "carbon track")
    strip.setFocus()
    qtbot.keyClick(strip, Qt.Key.Key_Right)
    assert note.text() == ""
    assert [photo.note for photo in tray.photos()] == ["carbon track", ""]
    qtbot.keyClick(strip, Qt.Key.Key_Left)
    assert note.text() == "carbon track"
    desk.undo()
    assert note.text() == ""


def test_a_photo_is_taken_off_and_brought_back(
    qtbot: QtBot, desk: Desk, tray: PhotoTray, job_id: int
) -> None:
    kept(desk, job_id, CAP, ROTOR)
    strip = named(tray, QListWidget, "Photos")
    qtbot.keyClick(strip, Qt.Key.Key_Delete)
    assert names(tray) == ["photo 1.jpg"]
    qtbot.mouseClick(
        named(tray, QPushButton, "Take the chosen photo off (Delete)"), Qt.MouseButton.LeftButton
    )
    assert names(tray) == []
    desk.undo()
    desk.undo()
    assert names(tray) == ["photo 0.jpg", "photo 1.jpg"]


def test_words_for_a_photo_that_is_gone_do_not_land_on_another(
    qtbot: QtBot, desk: Desk, tray: PhotoTray, job_id: int
) -> None:
    kept(desk, job_id, CAP)
    kept(desk, job_id, ROTOR)
    tray.choose(tray.photos()[1].id)
    qtbot.keyClicks(named(tray, QLineEdit, "Note on the chosen photo"), "burned tip")
    desk.undo()  # the photo goes while the note is only typed
    assert [(photo.name, photo.note) for photo in tray.photos()] == [("photo 0.jpg", "")]
    assert named(tray, QLineEdit, "Note on the chosen photo").text() == ""


def test_thumbnails_come_and_a_lost_original_is_said(
    qtbot: QtBot, desk: Desk, tray: PhotoTray, job_id: int
) -> None:
    first, second = kept(desk, job_id, CAP, ROTOR)
    desk.errands.finish()
    strip = named(tray, QListWidget, "Photos")
    assert strip.count() == 2
    folder = desk.record.folder / "thumbnails"
    qtbot.waitUntil(lambda: not desk.errands.busy())
    lose_photo(desk.record, second.sha256)
    for path in folder.rglob("*.jpg"):
        path.unlink()
    other = Desk(desk.record)
    fresh = PhotoTray(other)
    qtbot.addWidget(fresh)
    fresh.show_job(job_id)
    lost = named(fresh, QListWidget, "Photos")
    qtbot.waitUntil(lambda: "missing" in lost.item(1).text())
    assert "missing" not in lost.item(0).text()
    assert [path.name for path in folder.rglob("*.jpg")] == [f"{first.sha256}-256.jpg"]
    other.errands.finish()


def test_a_tray_of_one_side_shows_what_it_is_given(qtbot: QtBot, desk: Desk, job_id: int) -> None:
    first, second = kept(desk, job_id, CAP, ROTOR)
    side = PhotoTray(desk, "Photos of the removed part")
    qtbot.addWidget(side)
    side.show_photos(job_id, [second])
    side.show()
    with qtbot.waitSignal(side.photos_added) as added:
        drop(side, urls_of(desk, first))
    assert added.args == [[first.id]]
    assert [photo.id for photo in side.photos()] == [second.id]
    note = named(side, QLineEdit, "Note on the chosen photo: Photos of the removed part")
    qtbot.keyClicks(note, "tip burned")
    qtbot.keyClick(note, Qt.Key.Key_Return)
    assert side.photos()[0].note == "tip burned"
    desk.undo()
    assert (note.text(), side.photos()[0].note) == ("", "")


def urls_of(desk: Desk, photo: KeptPhoto) -> QMimeData:
    """Drop the kept original itself."""
    return urls(desk.record.photos.path(photo.sha256))


def test_everything_that_takes_the_focus_has_a_name(tray: PhotoTray) -> None:
    for widget in tray.findChildren(QWidget):
        if widget.focusPolicy() & Qt.FocusPolicy.TabFocus and widget.focusProxy() is None:
            assert widget.accessibleName(), widget


def test_a_drop_that_is_stopped_adds_nothing(
    qtbot: QtBot, desk: Desk, tray: PhotoTray, files: Path
) -> None:
    running: list[Errand] = []
    desk.errands.started.connect(running.append)
    drop(tray, urls(files))
    running[0].stop()
    qtbot.waitUntil(lambda: not desk.errands.busy())
    assert names(tray) == []
    assert desk.record.can_undo() == "Take a car in"


def test_the_chosen_photo_is_copied_with_every_pixel(
    qtbot: QtBot, tray: PhotoTray, files: Path
) -> None:
    drop(tray, urls(files / "cap.jpg"))
    qtbot.waitUntil(lambda: len(names(tray)) == 1)
    QApplication.clipboard().clear()
    strip = named(tray, QListWidget, "Photos")
    strip.setFocus()
    qtbot.keyClick(strip, Qt.Key.Key_C, Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: not QApplication.clipboard().image().isNull())
    photo = tray.chosen_photo()
    assert photo is not None
    assert QApplication.clipboard().image().size() == QSize(photo.width, photo.height)

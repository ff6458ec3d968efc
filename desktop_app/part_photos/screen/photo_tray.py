"""The tray for photos: drop, choose or paste them, note what they show, take them off again."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from pathlib import Path

from PySide6.QtCore import QMimeData, QStandardPaths, Qt, Signal, Slot
from PySide6.QtGui import (
    QDragEnterEvent,
    QDropEvent,
    QGuiApplication,
    QImage,
    QKeySequence,
    QMouseEvent,
    QShowEvent,
)
from PySide6.QtWidgets import QFileDialog, QFrame, QPushButton, QVBoxLayout, QWidget
from shiboken6 import isValid

from desktop_app.language import tr
from desktop_app.part_photos.actions import add_photos, take_off_job, write_photo_note
from desktop_app.part_photos.arrival import Arrival, arrived
from desktop_app.part_photos.intake_news import intake_news
from desktop_app.part_photos.kept_photo import KeptPhoto
from desktop_app.part_photos.photo_taken import PhotoTaken
from desktop_app.part_photos.photo_trouble import PhotoTrouble
from desktop_app.part_photos.screen.bringing_in import BroughtIn, bring_in
from desktop_app.part_photos.screen.dropped import arrivals_in, may_hold_photos
from desktop_app.part_photos.screen.photo_strip import PhotoStrip
from desktop_app.part_photos.screen.picture_image import full_picture
from desktop_app.part_photos.stored_reading import (
    photo_ids_by_hash,
    photos_by_id,
    photos_of_job,
)
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.copied_by_drop import take_a_copy
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import LineField
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.keys import on_key
from desktop_app.shop_window.last_folder import keep_folder, last_folder
from desktop_app.shop_window.off_because import off_because
from desktop_app.shop_window.texts import plain_label, tooltip

Add = Callable[[ShopRecord, int, Sequence[PhotoTaken]], Done]
PHOTOS = tr("Photos")
_INVITATION = tr("Drop photos here, paste them (Ctrl+V), or choose files.")
_OFF = tr("Take the chosen photo off (Delete)")
_UNCHOSEN = tr("No photo is chosen. Press one first.")
_FILTER = tr("Photos (*.jpg *.jpeg *.png *.heic *.heif *.webp);;All files (*)")


class PhotoTray(QFrame):
    """Takes photos in for one job and shows thumbnails of them.

    `add` adds photos to a job in one deed; an owner hands in one that does more with them.
    After `show_job` it shows all photos of the job and keeps itself up to date. After
    `show_photos` it shows just those it was given (one side of a pair); which, its owner decides.
    """

    photos_added = Signal(object)  # list[int]: ids of what was dropped, also if there before
    photo_chosen = Signal(object)  # KeptPhoto or None
    photo_opened = Signal(object)  # KeptPhoto

    def __init__(
        self,
        desk: Desk,
        name: str = PHOTOS,
        parent: QWidget | None = None,
        *,
        add: Add = add_photos,
    ) -> None:
        super().__init__(parent)
        self._add_deed = add
        self._desk, self._job_id, self._all, self._stale = desk, None, True, False
        self._noted: int | None = None  # the photo that the note field speaks of
        self._kept_note = ""
        self.setAccessibleName(name)
        self.setAcceptDrops(True)
        self._strip = PhotoStrip(desk, name)
        self._empty = plain_label(_INVITATION, "quiet", wrap=True)
        self._note = LineField(tr("Note on the chosen photo"), self._save_note)
        self._note.setPlaceholderText(tr("What does the chosen photo show?"))
        self._add = _button(tr("Add photos…"), tr("Choose photo files"), self.choose_files)
        self._paste = _button(
            tr("Paste"), tr("Paste photos from the clipboard (Ctrl+V)"), self.paste
        )
        self._off = _button(tr("Take off this job"), _OFF, self._drop)
        if name != PHOTOS:  # two trays on one page: each control says whose it is
            for control in (self._add, self._paste, self._off, self._note):
                control.setAccessibleName(f"{control.accessibleName()}: {name}")
        self._lay_out()
        self._strip.chosen.connect(self._chosen)
        self._strip.opened.connect(self._opened)
        self._strip.unwanted.connect(self._take_off)
        inside = Qt.ShortcutContext.WidgetWithChildrenShortcut
        paste = QKeySequence.StandardKey.Paste
        does = tr("puts in a copied picture, among the photos")
        on_key(self, paste, does, self.paste, inside)
        copy = QKeySequence.StandardKey.Copy
        on_key(self._strip, copy, tr("copies the chosen photo"), self.copy, inside)
        desk.changed.connect(self._heard)
        self._show([])
        self._allow(None)

    def show_job(self, job_id: int | None) -> None:
        """Show all photos of a job, now and whenever they change."""
        self._note.save_now()
        self._job_id, self._all = job_id, True
        self._read()

    def show_photos(self, job_id: int, photos: Sequence[KeptPhoto]) -> None:
        """Show these photos of a job; what is dropped still goes to the job, then to the owner."""
        self._note.save_now()
        self._job_id, self._all = job_id, False
        self._show(photos)

    def photos(self) -> tuple[KeptPhoto, ...]:
        """Return the photos that are shown."""
        return self._strip.photos()

    def chosen_photo(self) -> KeptPhoto | None:
        """Return the photo that is chosen in the strip."""
        return self._by_id(self._strip.chosen_id())

    def choose(self, photo_id: int) -> None:
        """Choose one of the photos that are shown."""
        self._strip.choose(photo_id)

    def add_way(self, button: QPushButton) -> None:
        """Put another way by which photos come beside those that are there."""
        self._ways.removeWidget(self._off)
        self._ways.addWidget(button)
        self._ways.addWidget(self._off)

    @Slot()
    def choose_files(self) -> None:
        """Ask for photo files, where the last ones lay, and take them in."""
        pictures = QStandardPaths.StandardLocation.PicturesLocation
        where = last_folder("photos") or QStandardPaths.writableLocation(pictures)
        paths, _ = QFileDialog.getOpenFileNames(self, tr("Add photos"), where, _FILTER)
        if paths:
            keep_folder("photos", paths[0])
        self.add_paths(paths)

    @Slot()
    def paste(self) -> None:
        """Take in what the clipboard holds: a picture, files, or a list of paths."""
        mime = QGuiApplication.clipboard().mimeData()
        if mime is None or not self._take(mime):
            self._desk.told.emit(tr("The clipboard holds no picture and no files."))

    @Slot()
    def copy(self) -> None:
        """Put the chosen photo on the clipboard, every pixel of it."""
        photo, record = self.chosen_photo(), self._desk.record
        if photo is not None:
            self._desk.errands.run(
                tr("Copying the photo"), lambda: full_picture(record, photo)[0], self._copied
            )

    def _copied(self, picture: QImage) -> None:
        QGuiApplication.clipboard().setImage(picture)
        self._desk.told.emit(tr("The photo is copied; paste it where a picture is wanted."))

    def add_paths(self, paths: Sequence[str]) -> None:
        """Take in files and folders by their paths."""
        self._bring([arrived(Path(path)) for path in paths], [])

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Let whoever presses where photos are to come paste them there."""
        super().mousePressEvent(event)
        self._paste.setFocus(Qt.FocusReason.MouseFocusReason)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        if self._job_id is not None and may_hold_photos(event.mimeData()):
            take_a_copy(event)

    def dropEvent(self, event: QDropEvent) -> None:
        if self._take(event.mimeData()):
            take_a_copy(event)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if self._stale:
            self._read()

    def _lay_out(self) -> None:
        ways = QWidget()
        self._ways = FlowRow(ways)  # on a narrow page they take two lines
        for button in (self._add, self._paste, self._off):
            self._ways.addWidget(button)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(ways)  # above the photos, which push nothing away
        for widget in (self._empty, self._strip, self._note):
            column.addWidget(widget)

    def _take(self, mime: QMimeData) -> bool:
        came, elsewhere = arrivals_in(mime, self._desk.now())
        self._bring(came, elsewhere)
        return bool(came or elsewhere)

    def _bring(
        self, came: Sequence[Arrival | tuple[str, QImage]], elsewhere: Sequence[PhotoTrouble]
    ) -> None:
        job_id, record = self._job_id, self._desk.record
        if job_id is None or not (came or elsewhere):
            return
        self._desk.errands.run(
            tr("Taking photos in"), lambda: bring_in(record, job_id, came, elsewhere), self._brought
        )

    def _brought(self, brought: BroughtIn) -> None:
        """Write the rows of what is on disk by now, and say what was refused."""
        if not isValid(self):
            return
        is_here = brought.job_id == self._job_id
        before = self._desk.ask(photo_ids_by_hash, brought.job_id)
        put = {} if self._all or not is_here else self._put_here(brought, before or {})
        add = self._add_deed if is_here else add_photos
        if brought.taken and self._desk.do(add, brought.job_id, brought.taken) is None:
            return
        ids = self._desk.ask(photo_ids_by_hash, brought.job_id)
        hashes = list(dict.fromkeys(photo.sha256 for photo in brought.taken))
        if ids is None or before is None:
            return
        fresh = [sha256 for sha256 in hashes if sha256 not in before]
        doubles = _doubles(brought, set(before) - set(put))
        news = intake_news(len(fresh), brought.refused, doubles, tuple(put.values()))
        if news:
            self._desk.told.emit(news)
        if hashes and is_here:
            self.photos_added.emit([ids[sha256] for sha256 in hashes])
            self._strip.choose(ids[hashes[0]])

    def _put_here(self, brought: BroughtIn, before: Mapping[str, int]) -> dict[str, str]:
        """Return the hash and name of each photo that the job had, and this tray did not show."""
        here = {photo.id for photo in self._strip.photos()}
        had = (photo for photo in brought.taken if before.get(photo.sha256, 0) not in {0, *here})
        return {photo.sha256: photo.name for photo in had}

    def _show(self, photos: Sequence[KeptPhoto]) -> None:
        self._strip.show_photos(photos)
        self._empty.setVisible(not photos)
        self._strip.setVisible(bool(photos))
        self._note.setVisible(bool(photos))
        self._off.setVisible(self._all and bool(photos))
        if self._noted == self._strip.chosen_id():
            self._show_note(self.chosen_photo())

    def _read(self) -> None:
        self._stale = False
        if self._job_id is None:
            found: Sequence[KeptPhoto] | None = ()
        elif self._all:
            found = self._desk.ask(photos_of_job, self._job_id)
        else:
            shown = [photo.id for photo in self._strip.photos()]
            now = self._desk.ask(photos_by_id, shown)
            found = None if now is None else [now[each] for each in shown if each in now]
        if found is not None:
            self._show(found)

    def _by_id(self, photo_id: int | None) -> KeptPhoto | None:
        return next((photo for photo in self._strip.photos() if photo.id == photo_id), None)

    def _save_note(self, text: str) -> Done | None:
        if self._noted is None:
            return None
        done = self._desk.do(write_photo_note, self._noted, text)
        if done is not None:
            self._kept_note = text
        return done

    @Slot(object)
    def _heard(self, done: Done) -> None:
        if "photo" in done.touched:
            self._stale = True
            if self.isVisible():
                self._read()

    @Slot(object)
    def _chosen(self, photo_id: int | None) -> None:
        photo = self._by_id(photo_id)
        if self._noted != photo_id:
            self._note.save_now()
            self._note.setText(self._kept_note)  # words for one photo never land on the next
            self._noted = photo_id
        self._allow(photo)
        self._show_note(photo)
        self.photo_chosen.emit(photo)

    def _allow(self, photo: KeptPhoto | None) -> None:
        why = _UNCHOSEN if photo is None else ""
        off_because(self._note, why)
        off_because(self._off, why, _OFF)

    def _show_note(self, photo: KeptPhoto | None) -> None:
        note = photo.note if photo is not None else ""
        self._note.show_value(note)
        if self._note.text() == note:
            self._kept_note = note

    @Slot(object)
    def _opened(self, photo_id: int) -> None:
        self.photo_opened.emit(self._by_id(photo_id))

    @Slot()
    def _drop(self) -> None:
        photo_id = self._strip.chosen_id()
        if photo_id is not None:
            self._take_off(photo_id)

    @Slot(object)
    def _take_off(self, photo_id: int) -> None:
        self._note.save_now()
        self._desk.do(take_off_job, photo_id)


def _doubles(brought: BroughtIn, known: set[str]) -> list[str]:
    """Name the photos that the job had already, or that came twice in one drop."""
    names = []
    for photo in brought.taken:
        if photo.sha256 in known:
            names.append(photo.name)
        known.add(photo.sha256)
    return names


def _button(words: str, name: str, pressed: object) -> QPushButton:
    button = QPushButton(words)
    button.setAccessibleName(name)
    button.setToolTip(tooltip(name))
    button.clicked.connect(pressed)
    return button

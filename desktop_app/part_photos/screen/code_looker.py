"""Looks for barcodes in photos that come, beside the window, and keeps what they said.

It keeps it in memory alone: with the window what was found goes, and what was refused.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable

from PySide6.QtCore import QObject, Signal, Slot

from desktop_app.language import tr
from desktop_app.part_photos.codes.code_meaning import CodeMeaning, meanings_of
from desktop_app.part_photos.kept_photo import KeptPhoto
from desktop_app.part_photos.photo_trouble import Unfit
from desktop_app.part_photos.read_apart import photo_reader
from desktop_app.part_photos.stored_reading import newest_photo, photos_after
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk

MOST_AT_ONCE = 24  # more come from a record that is brought in, and nobody waits for their codes


class CodeLooker(QObject):
    """One of a desk. It looks at each photo that comes, by whatever way; what is shown asks it."""

    changed = Signal()  # something was found, or is settled

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._desk = desk
        self._newest = desk.ask(newest_photo) or 0
        self._known: set[int] = set()
        self._found: dict[int, tuple[CodeMeaning, ...]] = {}
        self._settled: set[tuple[int, str]] = set()
        self._coming: list[KeptPhoto] = []
        self._looking = False
        desk.changed.connect(self._follow)

    def look(self, photos: Iterable[KeptPhoto]) -> None:
        """Look at photos that were not looked at yet."""
        fresh = [photo for photo in photos if photo.id not in self._known]
        self._known.update(photo.id for photo in fresh)
        self._coming += fresh
        self._next()

    def any_found(self) -> bool:
        """Tell whether a photo said anything since the window was opened."""
        return bool(self._found)

    def open_meanings(self, photo_id: int) -> tuple[CodeMeaning, ...]:
        """Return what a photo said that nobody has taken or refused."""
        said = self._found.get(photo_id, ())
        return tuple(one for one in said if (photo_id, one.value) not in self._settled)

    def settle(self, value: str, photo_ids: Collection[int]) -> None:
        """Offer a value of these photos no more: it was put in, or refused."""
        self._settled.update((photo_id, value) for photo_id in photo_ids)
        self.changed.emit()

    @Slot(object)
    def _follow(self, done: Done) -> None:
        if "photo" not in done.touched:
            return
        came = self._desk.ask(photos_after, self._newest, MOST_AT_ONCE)
        if came:
            self._newest = came[-1].id
            if len(came) == MOST_AT_ONCE:
                self._newest = self._desk.ask(newest_photo) or self._newest
            self.look(came)

    def _next(self) -> None:
        """Look at the next photo: one an errand, so that whatever else is wanted comes between."""
        if self._looking or not self._coming:
            return
        photo, record, self._looking = self._coming.pop(0), self._desk.record, True
        errand = self._desk.errands.run(
            tr("Looking for barcodes"),
            lambda: _meanings(record, photo),
            lambda said: self._looked(photo.id, said),
        )
        errand.failed.connect(self._stopped)

    def _looked(self, photo_id: int, said: tuple[CodeMeaning, ...]) -> None:
        self._looking = False
        if said:
            self._found[photo_id] = said
            self.changed.emit()
        self._next()

    @Slot(object)
    def _stopped(self, _trouble: object) -> None:
        self._looking = False
        self._next()


def looker_of(desk: Desk) -> CodeLooker:
    """Return the one looker of a desk."""
    found = desk.findChild(CodeLooker)
    return found if isinstance(found, CodeLooker) else CodeLooker(desk)


def _meanings(record: ShopRecord, photo: KeptPhoto) -> tuple[CodeMeaning, ...]:
    """Have a photo's codes read, apart from the window; one that can't be read offers nothing."""
    try:
        content = record.photos.read(photo.sha256)
        return meanings_of(photo_reader.READER.codes(content, photo.media_type))
    except (ShopTrouble, Unfit):
        return ()

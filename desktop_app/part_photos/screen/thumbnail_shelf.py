"""The thumbnails that are at hand in memory, and the errand that fetches the others."""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Generator, Iterable

from PySide6.QtCore import QObject, Signal, Slot
from PySide6.QtGui import QImage

from desktop_app.language import tr
from desktop_app.part_photos.kept_photo import KeptPhoto
from desktop_app.part_photos.screen.picture_image import small_picture
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.errands import Errand

MOST_AT_HAND = 400  # about 80 MB at 256 × 192 pixels


class ThumbnailShelf(QObject):
    """Gives thumbnails at once where they are at hand; says `fetched` when others have come.

    A null image means that the original is gone or damaged.
    """

    fetched = Signal(str, QImage)  # SHA-256, thumbnail
    _made = Signal(str, QImage)

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._desk = desk
        self._at_hand: OrderedDict[str, QImage] = OrderedDict()
        self._on_the_way: dict[str, Errand] = {}
        self._made.connect(self._arrived)

    def at_hand(self, photo: KeptPhoto) -> QImage | None:
        """Return a thumbnail that is in memory, or None."""
        image = self._at_hand.get(photo.sha256)
        if image is not None:
            self._at_hand.move_to_end(photo.sha256)
        return image

    def fetch(self, photos: Iterable[KeptPhoto]) -> None:
        """Fetch, beside the window, those that are neither at hand nor on their way."""
        missing = {
            photo.sha256: photo
            for photo in photos
            if photo.sha256 not in self._at_hand and not self._comes(photo.sha256)
        }
        if not missing:
            return
        wanted = tuple(missing.values())
        errand = self._desk.errands.run(tr("Fetching small pictures"), lambda: self._walk(wanted))
        self._on_the_way.update(dict.fromkeys(missing, errand))

    def _comes(self, sha256: str) -> bool:
        """Tell whether a thumbnail is on its way, by an errand that nobody stopped."""
        errand = self._on_the_way.get(sha256)
        return errand is not None and errand.wanted

    def _walk(self, photos: tuple[KeptPhoto, ...]) -> Generator[Step, None, None]:
        record: ShopRecord = self._desk.record
        for done, photo in enumerate(photos):
            yield Step(done, len(photos), tr("Fetching small pictures: {name}", name=photo.name))
            try:
                image = small_picture(record, photo)
            except ShopTrouble:
                image = QImage()
            self._made.emit(photo.sha256, image)

    @Slot(str, QImage)
    def _arrived(self, sha256: str, image: QImage) -> None:
        self._on_the_way.pop(sha256, None)
        if not image.isNull():  # a file that is brought back must be seen the next time
            self._at_hand[sha256] = image
            if len(self._at_hand) > MOST_AT_HAND:
                self._at_hand.popitem(last=False)
        self.fetched.emit(sha256, image)


def shelf_of(desk: Desk) -> ThumbnailShelf:
    """Return the one shelf of a desk; all trays share what it has at hand."""
    found = desk.findChild(ThumbnailShelf)
    return found if isinstance(found, ThumbnailShelf) else ThumbnailShelf(desk)

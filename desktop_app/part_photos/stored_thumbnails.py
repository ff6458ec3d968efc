"""How thumbnails are kept: beside the originals, by hash and size, made again when missing."""

from __future__ import annotations

import os
import threading
from contextlib import suppress
from pathlib import Path

from desktop_app.part_photos.kept_photo import KeptPhoto
from desktop_app.part_photos.photo_trouble import Unfit
from desktop_app.part_photos.read_apart import photo_reader
from desktop_app.part_photos.thumbnail import THUMBNAIL, damaged
from desktop_app.shop_record.photos.photo_files import PhotoFiles
from desktop_app.shop_record.record import ShopRecord

FOLDER = "thumbnails"
_JPEG_START, _JPEG_END = b"\xff\xd8\xff", b"\xff\xd9"


class ThumbnailFolder:
    """The folder of small copies; everything in it can be thrown away at any time."""

    def __init__(self, folder: Path, photos: PhotoFiles) -> None:
        self.folder = folder
        self._photos = photos

    def path(self, sha256: str, size: int = THUMBNAIL) -> Path:
        """Return where the thumbnail of this size of this original is kept."""
        return self.folder / sha256[:2] / f"{sha256}-{size}.jpg"

    def jpeg(self, sha256: str, media_type: str, size: int = THUMBNAIL) -> bytes:
        """Return the thumbnail, made and kept first where it is missing or torn.

        Raises ShopTrouble where the original is gone or damaged. Takes its time: call it beside
        the window.
        """
        try:
            kept = self.path(sha256, size).read_bytes()
        except OSError:
            kept = b""
        if not is_torn(kept):
            return kept
        content = self._photos.read(sha256)
        try:
            made = photo_reader.READER.thumbnail(content, media_type, size)
        except Unfit as unfit:
            raise damaged() from unfit
        self.keep(sha256, made, size)
        return made

    def keep(self, sha256: str, made: bytes, size: int = THUMBNAIL) -> None:
        """Write a thumbnail; a full or locked disk only means that it is made again next time."""
        path = self.path(sha256, size)
        beside = path.with_suffix(f".{os.getpid()}-{threading.get_ident()}.tmp")
        try:
            path.parent.mkdir(parents=True, exist_ok=True)
            beside.write_bytes(made)
            beside.replace(path)
        except OSError:
            with suppress(OSError):
                beside.unlink()


def is_torn(kept: bytes) -> bool:
    """Tell whether these bytes are no whole thumbnail."""
    return not (kept.startswith(_JPEG_START) and kept.endswith(_JPEG_END))


def thumbnails_of(record: ShopRecord) -> ThumbnailFolder:
    """Return the thumbnail folder of a shop."""
    return ThumbnailFolder(record.folder / FOLDER, record.photos)


def seen_original(record: ShopRecord, photo: KeptPhoto) -> bytes:
    """Return a kept photo's bytes, of which a small copy was made, apart from the window.

    A record that was brought in may hold any photo: none is decoded here for the first time.
    Raises ShopTrouble where the original is gone or damaged. Call it beside the window.
    """
    thumbnails_of(record).jpeg(photo.sha256, photo.media_type)
    return record.photos.read(photo.sha256)

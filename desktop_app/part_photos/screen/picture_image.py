"""A photo as Qt draws it: the decoded pixels, and the same at a half, a quarter and so on."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtGui import QImage

from desktop_app.part_photos.kept_photo import KeptPhoto
from desktop_app.part_photos.picture_kind import JPEG
from desktop_app.part_photos.stored_thumbnails import thumbnails_of
from desktop_app.part_photos.thumbnail import damaged
from desktop_app.part_photos.upright_picture import UNREADABLE, open_picture, upright_rgb
from desktop_app.shop_record.record import ShopRecord

if TYPE_CHECKING:
    from PIL.Image import Image

MOST_SHOWN = 40_000_000  # pixels; more than that is shown at half its size to spare memory
_SMALLEST = 400  # pixels; smaller copies than this save nothing


def full_picture(record: ShopRecord, photo: KeptPhoto) -> list[QImage]:
    """Decode a kept photo, upright, largest first; call it beside the window.

    Raises ShopTrouble where the original is gone or damaged.
    """
    from PIL.Image import DecompressionBombError

    content = record.photos.read(photo.sha256)
    longest = None
    if photo.width * photo.height > MOST_SHOWN:
        longest = max(photo.width, photo.height) // 2
    try:
        picture = upright_rgb(open_picture(content, photo.media_type), longest)
    except (*UNREADABLE, DecompressionBombError) as error:
        raise damaged() from error
    sizes = [as_image(picture)]
    while min(picture.size) > 2 * _SMALLEST:
        picture = picture.reduce(2)
        sizes.append(as_image(picture))
    return sizes


def small_picture(record: ShopRecord, photo: KeptPhoto) -> QImage:
    """Return a kept photo's thumbnail, made first where there is none; beside the window."""
    jpeg = thumbnails_of(record).jpeg(photo.sha256, photo.media_type)
    try:
        return as_image(upright_rgb(open_picture(jpeg, JPEG)))
    except UNREADABLE as error:
        raise damaged() from error


def as_image(picture: Image) -> QImage:
    """Turn decoded pixels into an image that Qt draws without converting it again."""
    rows = picture.convert("RGBA").tobytes("raw", "BGRA")
    width, height = picture.size
    return QImage(rows, width, height, 4 * width, QImage.Format.Format_RGB32).copy()

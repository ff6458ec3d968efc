"""A photo as Qt draws it: the decoded pixels, and the same at a half, a quarter and so on."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtGui import QImage, QPainter

from desktop_app.part_photos.kept_photo import KeptPhoto
from desktop_app.part_photos.picture_kind import JPEG
from desktop_app.part_photos.stored_thumbnails import seen_original, thumbnails_of
from desktop_app.part_photos.thumbnail import damaged
from desktop_app.part_photos.upright_picture import UNREADABLE, open_picture, upright_rgb
from desktop_app.shop_record.record import ShopRecord

if TYPE_CHECKING:
    from PIL.Image import Image

# Above so many pixels, three bytes a pixel are kept and not four: drawn three times slower
# between half and full size, but 100 megapixels take 300 MB.
MOST_IN_FOUR_BYTES = 60_000_000
_SMALLEST = 400  # pixels; smaller copies than this save nothing
_STRIP = 512  # rows turned at a time, so that no second whole picture is needed on the way


def full_picture(record: ShopRecord, photo: KeptPhoto) -> list[QImage]:
    """Decode a kept photo, upright, every pixel of it, largest first; call it beside the window.

    Raises ShopTrouble where the original is gone or damaged.
    """
    content = seen_original(record, photo)
    try:
        picture = upright_rgb(open_picture(content, photo.media_type))
    except UNREADABLE as error:
        raise damaged() from error
    sizes = [as_image(picture)]
    while min(picture.size) > 2 * _SMALLEST:
        picture = picture.reduce(2)
        sizes.append(as_image(picture))
    return sizes


def first_view(record: ShopRecord, photo: KeptPhoto, longest: int) -> QImage | None:
    """Decode a kept JPEG at a half, a quarter or an eighth, at least `longest` pixels long.

    For the moment until `full_picture` is there; None where nothing is quicker than that (another
    kind of file, or a photo that is not twice as long). Call it beside the window. Raises
    ShopTrouble where the original is gone or damaged.
    """
    if photo.media_type != JPEG or max(photo.width, photo.height) < 2 * longest:
        return None
    try:
        picture = open_picture(seen_original(record, photo), JPEG)
        share = longest / max(picture.size)
        picture.draft("RGB", (round(picture.width * share), round(picture.height * share)))
        return as_image(upright_rgb(picture))
    except UNREADABLE as error:
        raise damaged() from error


def small_picture(record: ShopRecord, photo: KeptPhoto) -> QImage:
    """Return a kept photo's thumbnail, made first where there is none; beside the window."""
    return small_image(thumbnails_of(record).jpeg(photo.sha256, photo.media_type))


def small_image(thumbnail: bytes) -> QImage:
    """Decode a thumbnail; a ShopTrouble where it is torn."""
    try:
        return as_image(upright_rgb(open_picture(thumbnail, JPEG)))
    except UNREADABLE as error:
        raise damaged() from error


def as_image(picture: Image) -> QImage:
    """Turn decoded RGB pixels into an image that Qt draws without converting it again."""
    width, height = picture.size
    formats = QImage.Format
    large = width * height > MOST_IN_FOUR_BYTES
    image = QImage(width, height, formats.Format_RGB888 if large else formats.Format_RGB32)
    painter = QPainter(image)
    painter.setCompositionMode(QPainter.CompositionMode.CompositionMode_Source)
    for top in range(0, height, _STRIP):
        strip = picture.crop((0, top, width, min(height, top + _STRIP)))
        rows = strip.tobytes()
        painter.drawImage(
            0, top, QImage(rows, width, strip.height, 3 * width, formats.Format_RGB888)
        )
    painter.end()
    return image

"""A small upright copy of a photo, as JPEG without any of the camera's notes."""

from __future__ import annotations

from io import BytesIO
from typing import TYPE_CHECKING

from desktop_app.language import tr
from desktop_app.part_photos.upright_picture import UNREADABLE, open_picture, upright_rgb
from desktop_app.shop_record.trouble import ShopTrouble

if TYPE_CHECKING:
    from PIL.Image import Image

THUMBNAIL = 256  # pixels of the longer side; twice what is shown, for dense screens
_QUALITY = 82


def make_thumbnail(content: bytes, media_type: str, size: int = THUMBNAIL) -> bytes:
    """Return a JPEG whose longer side has at most `size` pixels.

    Raises ShopTrouble where the photo has been damaged since it was taken in.
    """
    try:
        return small_copy(open_picture(content, media_type), size)
    except UNREADABLE as error:
        raise damaged() from error


def small_copy(picture: Image, size: int = THUMBNAIL) -> bytes:
    """Return a thumbnail of a picture that is open; the picture itself is small afterwards.

    Raises one of UNREADABLE.
    """
    small = upright_rgb(picture, longest=size)
    jpeg = BytesIO()
    small.info.clear()  # what somebody wrote into the original would be written again
    small.save(jpeg, "JPEG", quality=_QUALITY)
    return jpeg.getvalue()


def damaged() -> ShopTrouble:
    """Return what is said of an original that cannot be decoded any more."""
    return ShopTrouble(
        tr("A photo in the shop's folder can't be read any more."),
        kept=tr("The job and its other photos are as they were."),
        do=tr("Bring the file back from your last copy of the folder."),
    )

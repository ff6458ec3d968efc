"""A piece cut out of a photo, as JPEG without any of the camera's notes."""

from __future__ import annotations

from io import BytesIO

from desktop_app.part_photos.thumbnail import damaged
from desktop_app.part_photos.upright_picture import UNREADABLE, open_picture, upright_rgb

_QUALITY = 88


def cut_out(content: bytes, media_type: str, box: tuple[int, int, int, int], longest: int) -> bytes:
    """Return the piece within `box` (left, top, right, bottom in pixels of the upright photo).

    Its longer side has at most `longest` pixels; it is never enlarged. Raises ShopTrouble where
    the photo has been damaged since it was taken in.
    """
    from PIL import Image

    try:
        piece = upright_rgb(open_picture(content, media_type)).crop(box)
    except UNREADABLE as error:
        raise damaged() from error
    piece.thumbnail((longest, longest), Image.Resampling.LANCZOS)
    piece.info.clear()
    jpeg = BytesIO()
    piece.save(jpeg, "JPEG", quality=_QUALITY)
    return jpeg.getvalue()

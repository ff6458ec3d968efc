"""The gate for photos: what may come in, and why something may not."""

from __future__ import annotations

import hashlib
from typing import TYPE_CHECKING

from desktop_app.part_photos.capture_time import capture_time
from desktop_app.part_photos.photo_taken import PhotoTaken
from desktop_app.part_photos.photo_trouble import PhotoTrouble, shown_name
from desktop_app.part_photos.picture_kind import ACCEPTED, JPEG, other_kind, picture_kind
from desktop_app.part_photos.picture_pieces import in_too_many_pieces
from desktop_app.part_photos.upright_picture import (
    MOST_PIXELS,
    UNREADABLE,
    open_picture,
    upright_size,
)

if TYPE_CHECKING:
    from PIL.Image import Image

MOST_BYTES = 40 * 1024 * 1024
LONGEST_SIDE = 20_000


def look_at(name: str, content: bytes) -> PhotoTaken:
    """Look a photo over, decode it once in full, and say what it is.

    Raises PhotoTrouble, naming the file and the reason, for anything but a whole JPEG, PNG, HEIC
    or WebP of at most 40 MB, 100 million pixels and 20,000 pixels a side. Of an animation the
    first picture counts. Bytes behind the picture are kept with it and never looked at.
    """
    from PIL.Image import DecompressionBombError

    if not content:
        raise PhotoTrouble(name, "the file is empty.")
    if len(content) > MOST_BYTES:
        raise too_big(name)
    kind = picture_kind(content)
    if kind is None:
        raise PhotoTrouble(name, f"this is {other_kind(content)}; photos are {ACCEPTED}.")
    if in_too_many_pieces(content, kind):
        raise PhotoTrouble(name, "the file is cut into far more pieces than a camera writes.")
    try:
        picture = open_picture(content, kind)
        _refuse_too_large(name, *picture.size)
        width, height = upright_size(picture)
        taken_at = capture_time(picture)
        _decode(picture, kind)
    except DecompressionBombError as error:
        raise _too_many_pixels(name) from error
    except UNREADABLE as error:
        reason = "the picture is damaged or only part of it is there."
        raise PhotoTrouble(name, reason, "Take it from the camera again.") from error
    return PhotoTaken(
        name=shown_name(name),
        sha256=hashlib.sha256(content).hexdigest(),
        media_type=kind,
        size_bytes=len(content),
        width=width,
        height=height,
        taken_at=taken_at,
    )


def too_big(name: str) -> PhotoTrouble:
    """Return the refusal of a file with too many bytes."""
    return PhotoTrouble(name, f"the file has more than {MOST_BYTES // 1024**2} MB.")


def _refuse_too_large(name: str, width: int, height: int) -> None:
    """Refuse what would fill the computer's memory, by what the header says alone."""
    if max(width, height) > LONGEST_SIDE:
        raise PhotoTrouble(
            name, f"{width} × {height} pixels; a side may have at most {LONGEST_SIDE:,}."
        )
    if width * height > MOST_PIXELS:
        raise _too_many_pixels(name)


def _too_many_pixels(name: str) -> PhotoTrouble:
    return PhotoTrouble(name, f"more than {MOST_PIXELS // 1_000_000} million pixels.")


def _decode(picture: Image, kind: str) -> None:
    """Go through the whole file once; a missing end shows here and nowhere earlier."""
    if kind == JPEG:
        picture.draft("RGB", (picture.width // 8, picture.height // 8))
    picture.load()

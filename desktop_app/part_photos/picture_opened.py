"""A photo decoded from its first to its last row for the first time.

Run for bytes from outside by `read_apart`, in a process that may break over them.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from desktop_app.language import tr
from desktop_app.part_photos.capture_time import capture_time
from desktop_app.part_photos.photo_limits import MOST_NOTES, too_large_words
from desktop_app.part_photos.photo_trouble import SMALLER, Unfit
from desktop_app.part_photos.picture_kind import PNG
from desktop_app.part_photos.thumbnail import small_copy
from desktop_app.part_photos.upright_picture import (
    UNREADABLE,
    PictureTooLarge,
    open_picture,
    upright_size,
)

if TYPE_CHECKING:
    from PIL.Image import Image

_PNG_END = b"IEND\xaeB`\x82"


@dataclass(frozen=True, slots=True)
class Opened:
    """What a whole photo is: its upright size in pixels, the time (None: not said), a thumbnail."""

    width: int
    height: int
    taken_at: str | None
    thumbnail: bytes


def opened(content: bytes, media_type: str) -> Opened:
    """Decode a photo in full; a missing end shows here and nowhere earlier. Raises Unfit."""
    try:
        picture = open_picture(content, media_type)
        _refuse_notes(picture)
        width, height = upright_size(picture)
        taken_at = capture_time(picture)
        picture.load()
        _refuse_notes(picture)  # a PNG may bring them behind its rows
        if media_type == PNG and _PNG_END not in content:
            raise EOFError("cut behind its rows")
        thumbnail = small_copy(picture)
    except PictureTooLarge as error:
        raise Unfit(too_large_words(error.width, error.height), SMALLER) from error
    except MemoryError as error:
        raise Unfit(tr("reading it takes more memory than any photo does."), SMALLER) from error
    except UNREADABLE as error:
        reason = tr("the picture is damaged or incomplete.")
        raise Unfit(reason, tr("Send it again, or take it from the camera once more.")) from error
    return Opened(width, height, taken_at, thumbnail)


def _refuse_notes(picture: Image) -> None:
    """Refuse notes that swell when they are taken apart, each time the photo is opened."""
    for name in ("exif", "Raw profile type exif"):
        notes = picture.info.get(name, b"")
        if isinstance(notes, bytes | str) and len(notes) > MOST_NOTES:
            raise Unfit(
                tr(
                    "the camera's notes in it take {megabytes} MB, more than any camera writes.",
                    megabytes=len(notes) // 1024**2,
                ),
                tr("Open it in a picture program and save it as JPEG."),
            )

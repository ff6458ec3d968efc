"""When a photo was taken, by the camera's own clock (Exif 2.32, DateTimeOriginal)."""

from __future__ import annotations

import re
from datetime import datetime
from typing import TYPE_CHECKING

from desktop_app.part_photos.upright_picture import UNREADABLE

if TYPE_CHECKING:
    from PIL.Image import Image

_EXIF_IFD, _ORIGINAL, _OFFSET = 0x8769, 0x9003, 0x9011
_MOMENT = re.compile(r"([0-9]{4}):([0-9]{2}):([0-9]{2}) ([0-9]{2}:[0-9]{2}:[0-9]{2})")
_SHIFT = re.compile(r"[+-](0[0-9]|1[0-4]):[0-5][0-9]")


def capture_time(picture: Image) -> str | None:
    """Return DateTimeOriginal as an ISO moment, with OffsetTimeOriginal where it is given."""
    try:
        exif = picture.getexif().get_ifd(_EXIF_IFD)
    except UNREADABLE:
        return None
    return iso_moment(exif.get(_ORIGINAL), exif.get(_OFFSET))


def iso_moment(moment: object, offset: object = None) -> str | None:
    """Turn EXIF's "2026:11:16 08:01:02" and "+02:00" into ISO; None for what is no such time."""
    found = _MOMENT.fullmatch(str(moment).strip(" \x00"))
    if found is None:
        return None
    year, month, day, clock = found.groups()
    shift = str(offset).strip(" \x00")
    text = f"{year}-{month}-{day}T{clock}{shift if _SHIFT.fullmatch(shift) else ''}"
    try:
        datetime.fromisoformat(text)
    except ValueError:
        return None
    return text

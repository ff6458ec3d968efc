"""The gate for photos: what may come in, and why something may not."""

from __future__ import annotations

import hashlib

from desktop_app.language import tr
from desktop_app.part_photos.claimed_size import claimed_size
from desktop_app.part_photos.photo_limits import MOST_BYTES, too_large, too_large_words
from desktop_app.part_photos.photo_taken import PhotoTaken
from desktop_app.part_photos.photo_trouble import SMALLER, PhotoTrouble, Unfit, shown_name
from desktop_app.part_photos.picture_kind import ACCEPTED, other_kind, picture_kind
from desktop_app.part_photos.picture_pieces import in_too_many_pieces
from desktop_app.part_photos.read_apart import photo_reader


def look_at(name: str, content: bytes) -> PhotoTaken:
    """Look a photo over, have it decoded once in full, apart from the window, and say what it is.

    Raises PhotoTrouble, naming the file and the reason, for anything but a whole JPEG, PNG, HEIC
    or WebP of at most 40 MB, 100 million pixels and 20,000 pixels a side. Of an animation the
    first picture counts. Bytes behind the picture are kept with it and never looked at.
    """
    try:
        kind = kind_before_decoding(content)
        opened = photo_reader.READER.opened(content, kind)
    except Unfit as unfit:
        raise PhotoTrouble(name, unfit.reason, unfit.do) from unfit
    return PhotoTaken(
        name=shown_name(name),
        sha256=hashlib.sha256(content).hexdigest(),
        media_type=kind,
        size_bytes=len(content),
        width=opened.width,
        height=opened.height,
        taken_at=opened.taken_at,
        thumbnail=opened.thumbnail,
    )


def kind_before_decoding(content: bytes) -> str:
    """Return the media type of what may be given to a decoder. Raises Unfit for all else."""
    if not content:
        raise Unfit(tr("the file is empty."))
    if len(content) > MOST_BYTES:
        raise too_many_bytes()
    kind = picture_kind(content)
    if kind is None:
        raise Unfit(
            tr(
                "this is {kind}; photos are {accepted}.",
                kind=other_kind(content),
                accepted=ACCEPTED,
            )
        )
    if in_too_many_pieces(content, kind):
        raise Unfit(tr("the file is cut into far more pieces than a camera writes."))
    size = claimed_size(content, kind)
    if size is not None and too_large(*size):
        raise Unfit(too_large_words(*size), SMALLER)
    return kind


def too_many_bytes() -> Unfit:
    """Return the refusal of a file with too many bytes."""
    return Unfit(tr("the file has more than {number} MB.", number=MOST_BYTES // 1024**2), SMALLER)

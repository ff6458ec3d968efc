"""What is known of a photo that passed the gate."""

from __future__ import annotations

from dataclasses import dataclass, field


@dataclass(frozen=True, slots=True)
class PhotoTaken:
    """A photo that can be kept: width and height in pixels of the upright picture.

    `taken_at` is an ISO moment as the camera wrote it: with an offset where the camera gave one,
    else without; None where it gave no time. `thumbnail` is a small JPEG of it.
    """

    name: str
    sha256: str
    media_type: str
    size_bytes: int
    width: int
    height: int
    taken_at: str | None
    thumbnail: bytes = field(repr=False)

"""The size that a picture's own header claims, read from its bytes without any decoder."""

from __future__ import annotations

from desktop_app.part_photos.picture_kind import HEIC, JPEG, PNG, WEBP
from desktop_app.part_photos.picture_pieces import jpeg_segments

# The frame headers of ISO/IEC 10918-1, table B.1; C4, C8 and CC are something else.
_FRAMES = frozenset({*range(0xC0, 0xD0)} - {0xC4, 0xC8, 0xCC})
_EXTENT = b"\x00\x00\x00\x14ispe"  # ISO/IEC 23008-12, 6.5.3: a box of 20 bytes
_MOST_EXTENTS = 10_000


def claimed_size(content: bytes, media_type: str) -> tuple[int, int] | None:
    """Return width and height in pixels as they are stored, None where no header is found.

    Of a HEIC the largest picture in it counts. What a header leaves open, or a second one says
    otherwise, is found where the picture is decoded.
    """
    return {JPEG: _jpeg, PNG: _png, WEBP: _webp, HEIC: _heic}[media_type](content)


def _jpeg(content: bytes) -> tuple[int, int] | None:
    for marker, at in jpeg_segments(content):
        if marker in _FRAMES and len(content) >= at + 7:
            return _number(content, at + 5, 2), _number(content, at + 3, 2)
    return None


def _png(content: bytes) -> tuple[int, int] | None:
    if content[12:16] != b"IHDR" or len(content) < 24:
        return None
    return _number(content, 16, 4), _number(content, 20, 4)


def _webp(content: bytes) -> tuple[int, int] | None:
    """Read the frame or canvas of RFC 9649, 2.5 to 2.7."""
    if len(content) < 30:
        return None
    kind, little = content[12:16], int.from_bytes
    if kind == b"VP8X":
        return little(content[24:27], "little") + 1, little(content[27:30], "little") + 1
    if kind == b"VP8L":
        bits = little(content[21:25], "little")
        return (bits & 0x3FFF) + 1, (bits >> 14 & 0x3FFF) + 1
    if kind == b"VP8 ":
        return (
            little(content[26:28], "little") & 0x3FFF,
            little(content[28:30], "little") & 0x3FFF,
        )
    return None


def _heic(content: bytes) -> tuple[int, int] | None:
    found: list[tuple[int, int]] = []
    at = -1
    while len(found) < _MOST_EXTENTS and (at := content.find(_EXTENT, at + 1)) >= 0:
        found.append((_number(content, at + 12, 4), _number(content, at + 16, 4)))
    return max(found, key=lambda size: size[0] * size[1], default=None)


def _number(content: bytes, at: int, length: int) -> int:
    return int.from_bytes(content[at : at + length], "big")

"""How many pieces a picture's file is made of, counted before a decoder goes through them.

A decoder's time grows with the segments, chunks and scans of a file and not with its bytes alone:
a JPEG of 360 kB with 300 scans keeps it busy for 20 seconds. Cameras write a few dozen.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from desktop_app.part_photos.picture_kind import JPEG, PNG

MOST_SEGMENTS = 1_000  # 16 MB of extended XMP are 250
MOST_SCANS = 30  # libjpeg's own progressive files have 10
MOST_CHUNKS = 50_000  # 40 MB in chunks of 1 kB, far smaller than writers make them

# A marker of ISO/IEC 10918-1, B.1.1: 0xFF and a code; 0xFF00 and the restarts D0 to D7 are data.
# Of several 0xFF the last counts; a pattern with one of them is searched twenty times faster.
_MARKER = re.compile(rb"\xff([\x01-\xcf\xd8-\xfe])")
_LONE = frozenset({0x01, 0xD8})  # TEM and SOI have no length behind them
_SCAN, _END = 0xDA, 0xD9


def in_too_many_pieces(content: bytes, media_type: str) -> bool:
    """Tell whether a JPEG or PNG is cut into far more pieces than a camera's; others never are."""
    if media_type == JPEG:
        return _jpeg(content)
    return media_type == PNG and _png(content)


def jpeg_segments(content: bytes) -> Iterator[tuple[int, int]]:
    """Give each marker of a JPEG up to its end, and where what belongs to it begins."""
    at = 0
    while (found := _MARKER.search(content, at)) is not None and found[1][0] != _END:
        at = found.end()
        yield found[1][0], at
        if found[1][0] not in _LONE:
            at += int.from_bytes(content[at : at + 2], "big")


def _jpeg(content: bytes) -> bool:
    scans = 0
    for number, (marker, _) in enumerate(jpeg_segments(content), 1):
        scans += marker == _SCAN
        if number >= MOST_SEGMENTS or scans > MOST_SCANS:
            return True
    return False


def _png(content: bytes) -> bool:
    at = 8  # behind the signature; PNG 1.2, 3.2: length, name, data, check
    for _ in range(MOST_CHUNKS):
        if at + 12 > len(content):
            return False
        at += 12 + int.from_bytes(content[at : at + 4], "big")
    return True

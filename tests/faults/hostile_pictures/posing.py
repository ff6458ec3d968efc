"""Files that are named like a photo and are something else, or less than one."""

from __future__ import annotations

import zipfile
from io import BytesIO

from tests.part_photos.bench_pictures import encoded, noisy, picture

SVG = (
    b'<svg xmlns="http://www.w3.org/2000/svg" width="64" height="48">'
    b'<image href="secret.png" width="64" height="48"/></svg>'
)
EPS = b"%!PS-Adobe-3.0 EPSF-3.0\n%%BoundingBox: 0 0 64 48\nshowpage\n"
HTML = b"<!DOCTYPE html><html><img src='secret.png'><script>go()</script></html>"


def saved_as(kind: str) -> bytes:
    """A small picture of a kind that is not taken."""
    file = BytesIO()
    picture().save(file, kind)
    return file.getvalue()


def archive() -> bytes:
    """A ZIP with a photo in it."""
    file = BytesIO()
    with zipfile.ZipFile(file, "w") as packed:
        packed.writestr("cap.jpg", encoded(picture()))
    return file.getvalue()


def huge_gif() -> bytes:
    """A GIF that says it is as large as a GIF can be."""
    return b"GIF89a\xff\xff\xff\xff\x00\x00\x00,\x00\x00\x00\x00\xff\xff\xff\xff\x00\x02\x00;"


def wrong_sum() -> bytes:
    """A PNG of which one packed byte was changed, and not its check."""
    whole = bytearray(encoded(noisy(200, 150), "PNG"))
    whole[len(whole) // 2] ^= 0x55
    return bytes(whole)


def cut_at(content: bytes, points: int) -> list[bytes]:
    """The same file ended at so many points, the last of them one byte before its end."""
    return [content[: (len(content) - 1) * n // points] for n in range(1, points + 1)]

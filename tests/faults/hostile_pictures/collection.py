"""Hostile pictures, made here and never kept: each with the outcome it must have."""

from __future__ import annotations

from collections.abc import Callable
from typing import NamedTuple

from tests.faults.hostile_pictures import bombs, posing
from tests.part_photos.bench_pictures import encoded, noisy, picture
from tests.part_photos.test_intake import many_chunks, many_scans, many_segments

TAKEN = ""
KINDS = "; photos are JPEG, PNG, HEIC and WebP."
DAMAGED = "the picture is damaged or incomplete. Send it again"
PIXELS = (
    "pixels; a photo may have at most 20,000 a side and 100 million in all. Send a smaller one."
)
NOTES = "the camera's notes in it take 28 MB, more than any camera writes."
PIECES = "far more pieces than a camera writes."


class Hostile(NamedTuple):
    """A file: its name, how its bytes are made, and what is said of it; TAKEN where it is taken."""

    name: str
    make: Callable[[], bytes]
    said: str


def _bytes(content: bytes) -> Callable[[], bytes]:
    return lambda: content


HOSTILE = (
    Hostile("one bit.png", bombs.one_bit, f"it is 30,000 × 30,000 {PIXELS}"),
    Hostile("colour.png", bombs.full_colour, f"it is 20,000 × 20,000 {PIXELS}"),
    Hostile("two headers.png", bombs.two_headers, DAMAGED),
    Hostile("tall.jpg", bombs.tall_jpeg, f"it is 65,535 × 65,535 {PIXELS}"),
    Hostile("wide.webp", bombs.wide_webp, f"it is 16,777,216 × 16,777,216 {PIXELS}"),
    Hostile("vast.heic", bombs.vast_heic, f"it is 32,000 × 32,000 {PIXELS}"),
    Hostile("swelling words.png", bombs.words_that_swell, DAMAGED),
    Hostile("heavy notes.png", bombs.heavy_notes, NOTES),
    Hostile("late notes.png", bombs.late_notes, NOTES),
    Hostile("circle.jpg", bombs.notes_in_a_circle, TAKEN),
    Hostile("overlap.jpg", bombs.notes_that_overlap, TAKEN),
    Hostile("segments.jpg", many_segments, PIECES),
    Hostile("scans.jpg", many_scans, PIECES),
    Hostile("chunks.png", many_chunks, PIECES),
    Hostile("nothing.jpg", bytes, "the file is empty."),
    Hostile("wrong sum.png", posing.wrong_sum, DAMAGED),
    Hostile("fake.heic", _bytes(b"\x00\x00\x00\x1cftypheic" + bytes(400)), DAMAGED),
    Hostile("fake.webp", _bytes(b"RIFF\x90\x01\x00\x00WEBPVP8 " + bytes(400)), DAMAGED),
    Hostile("turning.jpg", posing.huge_gif, f"this is a GIF{KINDS}"),
    Hostile("tiff.jpg", lambda: posing.saved_as("TIFF"), f"a TIFF or a camera's raw file{KINDS}"),
    Hostile("bmp.jpg", lambda: posing.saved_as("BMP"), f"this is a BMP picture{KINDS}"),
    Hostile("svg.jpg", _bytes(posing.SVG), f"this is an SVG drawing{KINDS}"),
    Hostile("eps.jpg", _bytes(posing.EPS), f"this is a PostScript drawing{KINDS}"),
    Hostile("pdf.jpg", _bytes(b"%PDF-1.7\n"), f"this is a PDF document{KINDS}"),
    Hostile("html.jpg", _bytes(posing.HTML), f"this is a web page{KINDS}"),
    Hostile("zip.jpg", posing.archive, f"this is a ZIP archive or an office document{KINDS}"),
    Hostile("with zip.jpg", lambda: encoded(picture()) + posing.archive(), TAKEN),
    Hostile("with html.jpg", lambda: encoded(picture(), "JPEG") + posing.HTML, TAKEN),
    Hostile("good.jpg", lambda: encoded(noisy(400, 300)), TAKEN),
)

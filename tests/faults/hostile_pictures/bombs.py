"""Pictures that are small on disk and would fill the memory."""

from __future__ import annotations

import struct
import zlib

from tests.part_photos.bench_pictures import encoded, noisy, picture
from tests.part_photos.test_intake import PNG_START, chunk, segment

_BLOCK = 1 << 20
_ADLER = 65_521


def packed_zeros(length: int) -> bytes:
    """Pack so many zeros as zlib does, without packing more than a million of them."""
    packer = zlib.compressobj(9)
    start = packer.compress(b"") + packer.flush(zlib.Z_FULL_FLUSH)
    block = packer.compress(bytes(_BLOCK)) + packer.flush(zlib.Z_FULL_FLUSH)
    whole, rest = divmod(length, _BLOCK)
    last = packer.compress(bytes(rest)) + packer.flush()
    # The sum that stands at the end (RFC 1950, 2.2) of nothing but zeros.
    return start + block * whole + last[:-4] + struct.pack(">HH", length % _ADLER, 1)


def header(width: int, height: int, bits: int = 8, colour: int = 2) -> bytes:
    """The header of a PNG."""
    return chunk(b"IHDR", struct.pack(">IIBBBBB", width, height, bits, colour, 0, 0, 0))


def black_png(width: int, height: int, bits: int, colour: int, samples: int) -> bytes:
    """A whole black PNG."""
    row = 1 + (width * bits * samples + 7) // 8
    rows = chunk(b"IDAT", packed_zeros(row * height))
    return PNG_START + header(width, height, bits, colour) + rows + chunk(b"IEND", b"")


def one_bit() -> bytes:
    """900 million pixels of one bit in some 100 kB."""
    return black_png(30_000, 30_000, 1, 0, 1)


def full_colour() -> bytes:
    """400 million pixels in colour, 1.2 GB of rows."""
    return black_png(20_000, 20_000, 8, 2, 3)


def two_headers() -> bytes:
    """A PNG whose second header says what its first one hid."""
    whole = one_bit()
    return PNG_START + header(64, 48) + whole[len(PNG_START) :]


def tall_jpeg() -> bytes:
    """A photo whose frame says that it is as large as a JPEG can be."""
    whole = bytearray(encoded(picture()))
    frame = whole.index(b"\xff\xc0") + 5
    whole[frame : frame + 4] = b"\xff\xff\xff\xff"
    return bytes(whole)


def wide_webp() -> bytes:
    """A WebP with the largest canvas that can be said."""
    picked = encoded(picture(), "WEBP")
    canvas = b"VP8X" + struct.pack("<I", 10) + bytes(4) + b"\xff" * 6
    body = b"WEBP" + canvas + picked[12:]
    return b"RIFF" + struct.pack("<I", len(body)) + body


def vast_heic() -> bytes:
    """A HEIC that says it is a billion pixels."""
    whole = bytearray(encoded(noisy(200, 150), "HEIF"))
    at = whole.index(b"ispe") + 8
    whole[at : at + 8] = struct.pack(">II", 32_000, 32_000)
    return bytes(whole)


def words_that_swell() -> bytes:
    """A PNG with a packed text of 500 MB."""
    whole = encoded(picture(), "PNG")
    text = chunk(b"zTXt", b"k\x00\x00" + packed_zeros(500_000_000))
    return whole[:33] + text + whole[33:]


def heavy_notes() -> bytes:
    """A PNG with 30 MB of what calls itself a camera's notes."""
    whole = encoded(picture(), "PNG")
    return _noted_before(whole, whole.index(b"IDAT") - 4)


def late_notes() -> bytes:
    """The same, with the notes behind the rows."""
    whole = encoded(picture(), "PNG")
    return _noted_before(whole, whole.index(b"IEND") - 4)


def _noted_before(whole: bytes, at: int) -> bytes:
    notes = chunk(b"eXIf", b"II*\x00\x08\x00\x00\x00" + bytes(30_000_000))
    return whole[:at] + notes + whole[at:]


def notes_in_a_circle() -> bytes:
    """A photo whose notes name themselves as what follows them, again and again."""
    entry = struct.pack("<HHII", 0x8769, 4, 1, 8)
    notes = b"Exif\x00\x00II*\x00\x08\x00\x00\x00" + struct.pack("<H", 1) + entry
    whole = encoded(picture())
    return whole[:2] + segment(0xE1, notes + struct.pack("<I", 8)) + whole[2:]


def notes_that_overlap() -> bytes:
    """A photo of 70 kB with 5,000 notes, each of which claims the same 60 kB."""
    entries = b"".join(struct.pack("<HHII", 0xA500 + n, 7, 60_000, 8) for n in range(5_000))
    notes = b"Exif\x00\x00II*\x00\x08\x00\x00\x00" + struct.pack("<H", 5_000) + entries
    whole = encoded(picture())
    return whole[:2] + segment(0xE1, notes + bytes(4)) + whole[2:]

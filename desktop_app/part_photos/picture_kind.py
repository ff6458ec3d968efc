"""The kind of a picture, told from its first bytes and never from its file's name."""

from __future__ import annotations

from desktop_app.language import tr

JPEG, PNG, WEBP, HEIC = "image/jpeg", "image/png", "image/webp", "image/heic"
# How the files are called in which photos leave the shop.
ENDINGS = {JPEG: "jpg", PNG: "png", HEIC: "heic", WEBP: "webp"}

ACCEPTED = tr("JPEG, PNG, HEIC and WebP")

# The brands of ISO/IEC 23008-12 (HEIF) whose pictures are coded as HEVC. From memory.
_HEVC_BRANDS = frozenset({b"heic", b"heix", b"heim", b"heis", b"hevc", b"hevx"})
_WRAPPER_BRANDS = frozenset({b"mif1", b"msf1"})

# What people do drop now and then, so that the refusal can name it.
_OTHERS = (
    (b"%PDF", tr("a PDF document")),
    (b"%!PS", tr("a PostScript drawing")),
    (b"\xc5\xd0\xd3\xc6", tr("a PostScript drawing")),
    (b"GIF8", tr("a GIF")),
    (b"II*\x00", tr("a TIFF or a camera's raw file")),
    (b"MM\x00*", tr("a TIFF or a camera's raw file")),
    (b"BM", tr("a BMP picture")),
    (b"PK\x03\x04", tr("a ZIP archive or an office document")),
)


def picture_kind(content: bytes) -> str | None:
    """Return the media type of an accepted picture, or None for everything else."""
    if content.startswith(b"\xff\xd8\xff"):
        return JPEG
    if content.startswith(b"\x89PNG\r\n\x1a\n"):
        return PNG
    if content[:4] == b"RIFF" and content[8:12] == b"WEBP":
        return WEBP
    if content[4:8] == b"ftyp" and _is_hevc(content):
        return HEIC
    return None


def other_kind(content: bytes) -> str:
    """Name what these bytes are instead, as far as their beginning shows."""
    for start, words in _OTHERS:
        if content.startswith(start):
            return words
    if content[4:8] == b"ftyp":
        return tr("a film or a picture of another kind")
    head = content[:1024].lstrip(b"\xef\xbb\xbf \t\r\n").lower()
    if head.startswith((b"<svg", b"<?xml")) or b"<svg" in head:
        return tr("an SVG drawing")
    if head.startswith((b"<!doctype html", b"<html")):
        return tr("a web page")
    return tr("not a photo")


def _is_hevc(content: bytes) -> bool:
    length = min(int.from_bytes(content[:4], "big"), 256)
    brand = content[8:12]
    beside = {content[at : at + 4] for at in range(16, length - 3, 4)}
    return brand in _HEVC_BRANDS or (brand in _WRAPPER_BRANDS and bool(beside & _HEVC_BRANDS))

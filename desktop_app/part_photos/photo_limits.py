"""How much a photo may be. A camera's largest fits; what fills the computer does not."""

from __future__ import annotations

from desktop_app.language import tr

MOST_BYTES = 40 * 1024 * 1024
MOST_PIXELS = 100_000_000
LONGEST_SIDE = 20_000
MOST_NOTES = 4 * 1024 * 1024  # bytes of EXIF; a JPEG's block holds 64 kB of it


def too_large(width: int, height: int) -> bool:
    """Tell whether a picture of so many pixels is more than is taken."""
    return max(width, height) > LONGEST_SIDE or width * height > MOST_PIXELS


def too_large_words(width: int, height: int) -> str:
    """Say how large it is and how large it may be."""
    return tr(
        "it is {width:,} × {height:,} pixels; a photo may have at most "
        "{longest:,} a side and {millions} million in all.",
        width=width,
        height=height,
        longest=LONGEST_SIDE,
        millions=MOST_PIXELS // 1_000_000,
    )

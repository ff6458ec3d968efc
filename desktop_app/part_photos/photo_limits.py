"""How much a photo may be. A camera's largest fits; what fills the computer does not."""

from __future__ import annotations

MOST_BYTES = 40 * 1024 * 1024
MOST_PIXELS = 100_000_000
LONGEST_SIDE = 20_000
MOST_NOTES = 4 * 1024 * 1024  # bytes of EXIF; a JPEG's block holds 64 kB of it


def too_large(width: int, height: int) -> bool:
    """Tell whether a picture of so many pixels is more than is taken."""
    return max(width, height) > LONGEST_SIDE or width * height > MOST_PIXELS


def too_large_words(width: int, height: int) -> str:
    """Say how large it is and how large it may be."""
    return (
        f"it is {width:,} × {height:,} pixels; a photo may have at most {LONGEST_SIDE:,} a side "
        f"and {MOST_PIXELS // 1_000_000} million in all."
    )

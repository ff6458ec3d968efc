"""A photo's pixels, decoded in one way for every use: upright, red-green-blue."""

from __future__ import annotations

import struct
import warnings
from io import BytesIO
from typing import TYPE_CHECKING

from desktop_app.part_photos.photo_limits import MOST_PIXELS, too_large
from desktop_app.part_photos.picture_kind import HEIC, JPEG, PNG, WEBP

if TYPE_CHECKING:
    from PIL.Image import Image

_DECODERS = {JPEG: "JPEG", PNG: "PNG", WEBP: "WEBP", HEIC: "HEIF"}

# What the decoders raise on damaged files; anything else would be a mistake of the program.
UNREADABLE = (
    *(OSError, ValueError, SyntaxError, RuntimeError, EOFError, MemoryError),
    *(struct.error, IndexError, KeyError, TypeError, OverflowError, ZeroDivisionError),
)


# How each EXIF orientation is set upright (Exif 2.32, tag 0x0112), in Pillow's words.
_TURNS = {
    2: "FLIP_LEFT_RIGHT",
    3: "ROTATE_180",
    4: "FLIP_TOP_BOTTOM",
    5: "TRANSPOSE",
    6: "ROTATE_270",
    7: "TRANSVERSE",
    8: "ROTATE_90",
}


class PictureTooLarge(ValueError):
    """A picture of more pixels than is taken; one of UNREADABLE."""

    def __init__(self, width: int, height: int) -> None:
        super().__init__(f"{width} x {height} pixels")
        self.width = width
        self.height = height


def open_picture(content: bytes, media_type: str) -> Image:
    """Open a photo with the one decoder of its kind; no pixel is decoded yet.

    Raises one of UNREADABLE; PictureTooLarge where it is larger than `photo_limits` lets it be.
    """
    from PIL import Image

    # Damaged EXIF is told by a missing time, not by a warning on a console nobody looks at.
    warnings.filterwarnings("ignore", module=r"PIL\.")
    Image.MAX_IMAGE_PIXELS = MOST_PIXELS  # beyond twice as many nothing is opened
    if media_type == HEIC:
        import pillow_heif

        pillow_heif.register_heif_opener()
    try:
        picture = Image.open(BytesIO(content), formats=[_DECODERS[media_type]])
    except Image.DecompressionBombError as error:
        raise ValueError("far more pixels than are opened") from error
    if too_large(*picture.size):
        raise PictureTooLarge(*picture.size)
    return picture


def upright_size(picture: Image) -> tuple[int, int]:
    """Return width and height as they are once EXIF orientation is applied, in pixels."""
    width, height = picture.size
    return (height, width) if orientation(picture) >= 5 else (width, height)


def orientation(picture: Image) -> int:
    """Return the EXIF orientation 1 to 8; 1 where it is missing or damaged.

    HEIC is turned by its decoder already, which then says 1.
    """
    try:
        value = picture.getexif().get(0x0112, 1)
    except UNREADABLE:
        return 1
    return value if isinstance(value, int) and 1 <= value <= 8 else 1


def upright_rgb(picture: Image, longest: int | None = None) -> Image:
    """Decode and return the upright picture as RGB, on white where it is transparent.

    With `longest`, the picture is made smaller first so that neither side is longer; JPEG is then
    decoded at a fraction of its size, which is many times faster.
    """
    from PIL import Image

    turned = orientation(picture)
    if longest is not None:
        # A ready decoder scales palettes and 16-bit greys badly: those are made RGB first.
        if picture.mode not in ("RGB", "L", "CMYK", "YCbCr"):
            picture = _as_rgb(picture, picture.info)
        picture.thumbnail((longest, longest), Image.Resampling.BICUBIC, reducing_gap=2.0)
    flat = _as_rgb(picture, picture.info)
    turn = _TURNS.get(turned)
    return flat if turn is None else flat.transpose(Image.Transpose[turn])


def _as_rgb(picture: Image, info: dict[str | tuple[int, int], object]) -> Image:
    from PIL import Image

    if picture.mode.startswith("I"):  # 16 bits a pixel: keep the upper eight
        return picture.point(lambda value: value * (1 / 256)).convert("L").convert("RGB")
    if picture.mode in ("RGBA", "LA", "PA", "RGBa", "La") or "transparency" in info:
        layered = picture.convert("RGBA")
        white = Image.new("RGB", layered.size, "white")
        white.paste(layered, mask=layered.getchannel("A"))
        return white
    return picture.convert("RGB")

"""One decoded photo to measure in: upright pixels, and what EXIF says of the lens."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from desktop_app.part_photos.upright_picture import (
    UNREADABLE,
    open_picture,
    orientation,
    upright_rgb,
)

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray
    from PIL.Image import Image

_EXIF_IFD, _FOCAL_35 = 0x8769, 0xA405
_MAKE, _MODEL = 0x010F, 0x0110
_ACROSS, _DOWN = 0xA002, 0xA003  # PixelXDimension, PixelYDimension


@dataclass(frozen=True, slots=True, eq=False)
class PhotoPixels:
    """The one array that everything is measured in.

    `rgb` has shape (height, width, 3), uint8, sRGB, upright (EXIF orientation applied). Points in
    pixels are (x, y) with pixel centres at whole numbers: (0, 0) is the middle of the first pixel.
    `focal_35_mm` is EXIF's focal length for 35 mm film (None: not said); `camera` is maker and
    model as EXIF names them, "" where it doesn't. `mirrored` is true where EXIF had the picture
    mirrored when it was stored. `as_taken` is true where the picture is as large as EXIF says the
    camera made it: a picture that was cut or shrunk seldom is. Colours are as the file
    has them: a wide profile such as Display P3 is not converted, which makes strong colours a
    little duller and moves no edge and no grey.
    """

    rgb: NDArray[np.uint8]
    focal_35_mm: float | None = None
    camera: str = ""
    mirrored: bool = False
    as_taken: bool = False

    @property
    def width(self) -> int:
        """Pixels across."""
        return int(self.rgb.shape[1])

    @property
    def height(self) -> int:
        """Pixels down."""
        return int(self.rgb.shape[0])


def photo_pixels(content: bytes, media_type: str) -> PhotoPixels:
    """Decode a photo that passed the gate (`intake.look_at`) and read what EXIF says of its lens.

    Raises what `open_picture` and `upright_rgb` raise. Takes its time: call it beside the window.
    """
    import numpy as np

    picture = open_picture(content, media_type)
    focal, camera = _lens(picture)
    # HEIC is turned by its decoder, which keeps what the orientation was.
    stored = picture.info.get("original_orientation") or orientation(picture)
    mirrored = stored in (2, 4, 5, 7)
    rgb = np.asarray(upright_rgb(picture), np.uint8)
    return PhotoPixels(rgb, focal, camera, mirrored, _as_taken(picture))


def _lens(picture: Image) -> tuple[float | None, str]:
    try:
        exif = picture.getexif()
        focal = exif.get_ifd(_EXIF_IFD).get(_FOCAL_35)
        words = (str(exif.get(tag, "")).strip(" \x00") for tag in (_MAKE, _MODEL))
        camera = " ".join(word for word in words if word)[:100]
        length = float(focal) if focal is not None else 0.0
    except UNREADABLE:
        return None, ""
    return (length if 5 <= length <= 1000 else None), camera


def _as_taken(picture: Image) -> bool:
    """Tell whether the picture is as large as EXIF says, upright or on its side.

    Exif 2.32, 4.6.5: both sizes must be recorded when a camera compresses a picture; what cuts or
    shrinks it later mostly copies EXIF as it was.
    """
    try:
        exif = picture.getexif().get_ifd(_EXIF_IFD)
        said = sorted(int(exif.get(tag, 0)) for tag in (_ACROSS, _DOWN))
    except UNREADABLE:
        return False
    return said == sorted(picture.size)

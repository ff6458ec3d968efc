"""What is known of the lens before the card is looked at."""

from __future__ import annotations

from dataclasses import dataclass
from math import hypot

FILM_DIAGONAL_MM = 43.267  # of 36 by 24 mm: what EXIF's "35 mm" focal lengths refer to
PHONE_MM = 26.0  # a phone's main camera, as 35 mm film; common practice, no source
# Of a picture that may be a crop, from a wide or a long lens: by trials with crops to half the
# picture's sides, stretches to 6 % and lenses of 13 to 70 mm, as 35 mm film.
UNKNOWN_REL_U, UNKNOWN_CENTRE_U, BELIEVED_REL_U = 0.5, 0.05, 0.35
SENSOR_SHAPES = (4 / 3, 3 / 2, 16 / 9)  # long side to short side


@dataclass(frozen=True, slots=True)
class LensPrior:
    """Focal length, px, and how well it is known: relative standard uncertainty.

    `centre_u` is that of the lens's axis off the picture's middle, as a share of its long side.
    The prior is `sure` where EXIF names the focal length of a whole, uncropped picture. Else the
    picture may be a part of what the camera saw, or stretched, and even a lens that the card seems
    to tell of is believed no better than to `least_rel_u`.
    """

    focal_px: float
    focal_rel_u: float
    centre_u: float
    sure: bool
    least_rel_u: float = 0.0


def lens_prior(width: int, height: int, focal_35_mm: float | None) -> LensPrior:
    """Return the prior of a picture of this size in pixels.

    A picture of a shape that no sensor has was cropped: its diagonal is not the one that EXIF
    speaks of, and its middle not the lens's. Where EXIF is gone, so may a part of the picture be,
    whatever its shape.
    """
    shape = max(width, height) / min(width, height)
    whole = any(abs(shape / known - 1) < 0.01 for known in SENSOR_SHAPES)
    focal_px = (focal_35_mm or PHONE_MM) / FILM_DIAGONAL_MM * hypot(width, height)
    if whole and focal_35_mm is not None:
        return LensPrior(focal_px, 0.03, 0.006, True)
    return LensPrior(focal_px, UNKNOWN_REL_U, UNKNOWN_CENTRE_U, False, BELIEVED_REL_U)

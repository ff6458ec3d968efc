"""What is known of the lens before the card is looked at."""

from __future__ import annotations

from dataclasses import dataclass, replace
from math import hypot, log
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

FILM_DIAGONAL_MM = 43.267  # of 36 by 24 mm: what EXIF's "35 mm" focal lengths refer to
PHONE_MM = 26.0  # a phone's main camera, as 35 mm film; common practice, no source
KNOWN_REL_U, KNOWN_CENTRE_U = 0.03, 0.006
# Of a picture that may be a cut-out, from a wide or a long lens: by trials with cuts to two thirds
# of the picture's sides out of a corner, stretches to 6 % and lenses of 13 to 70 mm, as 35 mm film.
UNKNOWN_REL_U, UNKNOWN_CENTRE_U, BELIEVED_REL_U = 0.5, 0.15, 0.35
SENSOR_SHAPES = (4 / 3, 3 / 2, 16 / 9)  # long side to short side
# By trials: no whole picture pulls so, a corner cut to 93 % of its sides always does.
MOST_PULL = 2.5


@dataclass(frozen=True, slots=True)
class LensPrior:
    """Focal length and the lens's axis, px, and how well they are known.

    `focal_rel_u` is a relative standard uncertainty, `centre_u_px` the axis's along x or y. The
    prior is `sure` where EXIF names the focal length of a picture as the camera made it. Else the
    picture may be a part of what the camera saw, or stretched, and even a lens that the card seems
    to tell of is believed no better than to `least_rel_u`. It is `contradicted` where EXIF named a
    lens, and the card was seen through another one.
    """

    focal_px: float
    focal_rel_u: float
    centre_px: tuple[float, float]
    centre_u_px: float
    sure: bool
    least_rel_u: float = 0.0
    contradicted: bool = False

    def strained(self, theta: NDArray[np.float64]) -> bool:
        """Tell whether a fitted camera (see lens.py) has another focal length or axis than this."""
        x, y = self.centre_px
        pulls = (
            (float(theta[0]) - log(self.focal_px)) / self.focal_rel_u,
            (float(theta[1]) - x) / self.centre_u_px,
            (float(theta[2]) - y) / self.centre_u_px,
        )
        return max(map(abs, pulls)) > MOST_PULL


def lens_prior(width: int, height: int, focal_35_mm: float | None, as_taken: bool) -> LensPrior:
    """Return the prior of a picture of this size in pixels.

    A picture of another size than EXIF says (not `as_taken`), or of a shape that no sensor has,
    was cut or shrunk: its diagonal is not the one that EXIF speaks of, and its middle not the
    lens's. Where EXIF is gone, so may a part of the picture be, whatever its shape.
    """
    shape = max(width, height) / min(width, height)
    whole = as_taken and any(abs(shape / known - 1) < 0.01 for known in SENSOR_SHAPES)
    prior = LensPrior(
        focal_px=(focal_35_mm or PHONE_MM) / FILM_DIAGONAL_MM * hypot(width, height),
        focal_rel_u=KNOWN_REL_U,
        centre_px=((width - 1) / 2, (height - 1) / 2),
        centre_u_px=KNOWN_CENTRE_U * max(width, height),
        sure=True,
    )
    return prior if whole and focal_35_mm is not None else _unknown(prior)


def contradicted(prior: LensPrior) -> LensPrior:
    """Return what is left of a sure prior that the card contradicts: as if EXIF named no lens."""
    return replace(_unknown(prior), contradicted=True)


def _unknown(prior: LensPrior) -> LensPrior:
    return replace(
        prior,
        focal_rel_u=UNKNOWN_REL_U,
        centre_u_px=prior.centre_u_px * (UNKNOWN_CENTRE_U / KNOWN_CENTRE_U),
        sure=False,
        least_rel_u=BELIEVED_REL_U,
    )

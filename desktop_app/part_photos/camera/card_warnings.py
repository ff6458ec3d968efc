"""What a card's fit can't promise, said in plain sentences, and when its doubt counts double."""

from __future__ import annotations

from typing import TYPE_CHECKING

from desktop_app.language import tr
from desktop_app.part_photos.camera.camera_fit import CameraFit
from desktop_app.part_photos.camera.focal_prior import LensPrior
from desktop_app.part_photos.camera.lens import CAMERA

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Floats = NDArray[np.float64]

# By trials: gently arched paper leaves .1 px or less, a saddle of half a millimetre .4; a fold or
# an edge lifted by 2 mm hides: a tenth of the corners is left out, or it shows as an arch of 1 mm.
MOST_SPREAD_PX, MOST_LEFT_OUT, MOST_ARCH_MM = 0.25, 0.05, 1.0
SURE_CHI2 = 9.0  # by how much the other pose must fit worse
SHARP_PX = 2.0


def camera_covariance(fit: CameraFit, prior: LensPrior) -> Floats:
    """Return the covariance of the camera theta, (11, 11), with what the fit can't know of itself.

    Four times as large (uncertainty doubled) where the fit is poor. A picture that was cropped or
    stretched fits a whole one's camera with another lens: the focal length stays as uncertain as
    the prior says, and all that moves with it along what the card fixes. Sizes on the card's plane
    hardly change by that, those above it do.
    """
    import numpy as np

    spread = fit.covariance[:CAMERA, :CAMERA] * (4.0 if _poor(fit, prior) else 1.0)
    missing = prior.least_rel_u**2 - spread[0, 0]
    if missing <= 0 or spread[0, 0] <= 0:
        return spread
    along = spread[:, 0] / spread[0, 0]
    return np.asarray(spread + missing * np.outer(along, along))


def card_warnings(fit: CameraFit, prior: LensPrior, blur_px: float) -> tuple[str, ...]:
    """Return what to say about a fit that counts all the same."""
    said = list(_poor(fit, prior))
    if prior.contradicted:
        said.append(
            tr(
                "The card looks as through another lens than the photo names, as if the "
                "photo was cropped, stretched or zoomed: sizes above the card are less "
                "certain the higher they lie. Bring the photo as the camera made it."
            )
        )
    elif not prior.sure:
        said.append(
            tr(
                "The photo doesn't name its lens, or isn't as the camera made it but "
                "cropped, shrunk or stored anew: sizes above the card are less certain the "
                "higher they lie. Bring the photo as the camera made it."
            )
        )
    if blur_px > SHARP_PX:
        said.append(tr("The photo is not quite sharp: mark edges with care."))
    return tuple(said)


def _poor(fit: CameraFit, prior: LensPrior) -> list[str]:
    said = []
    off, arch = fit.spread_px > MOST_SPREAD_PX, fit.arch_mm > MOST_ARCH_MM
    if off or arch or fit.left_out > MOST_LEFT_OUT:
        said.append(
            tr(
                "The card doesn't lie quite flat: its markers are {spread_px:.2f} pixels "
                "off, {left_out:.0%} of their corners further. The scale's uncertainty "
                "counts double.",
                spread_px=fit.spread_px,
                left_out=fit.left_out,
            )
        )
    if prior.strained(fit.values):
        said.append(
            tr(
                "The card looks as if the photo was cut out far from the middle of what "
                "the camera saw, or taken through a very long lens. The scale's "
                "uncertainty counts double."
            )
        )
    if fit.second_chi2 is not None and fit.second_chi2 < SURE_CHI2:
        said.append(
            tr(
                "From so few markers the card's tilt could be read two ways. The scale's "
                "uncertainty counts double."
            )
        )
    return said

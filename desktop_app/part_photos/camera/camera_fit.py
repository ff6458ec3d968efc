"""Fits the camera to the card's corners: the most probable values, and how surely.

Maximum a posteriori: least squares over corners and priors together, so that one marker or a view
from straight above still gives an answer, with the doubt that goes with it.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, cast

from desktop_app.part_photos.camera.camera_model import ALL, CornerModel, Priors
from desktop_app.part_photos.camera.first_pose import first_poses
from desktop_app.part_photos.camera.lens import turned

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Floats = NDArray[np.float64]
    Flags = NDArray[np.bool_]

LEAST_SIGMA_PX = 0.1  # neighbouring corners share their errors: more of them don't help below this
USUAL_SIGMA_PX = 0.15  # of a corner in a sharp photo: counts as four residuals already seen
USUAL_WEIGHT = 4
FAR_OFF = 3.5  # robust standard deviations beyond which a corner isn't one
MOST_ROUNDS = 6


@dataclass(frozen=True, slots=True, eq=False)
class CameraFit:
    """What was fitted: values (14,), their covariance (14, 14), and what remained.

    The values are theta (see lens.py), growth, arch along x and along y (mm). `used` (n,) tells
    which corners counted, `residuals_px` (n, 2) how far each is off; `sigma_px` is the corners'
    standard uncertainty along x or y, `rms_px` the root mean square of the used ones' residuals.
    `second_chi2` is how much worse (chi squared) the other of the two possible poses fits; None
    where both starts led to the same one.
    """

    values: Floats
    covariance: Floats
    used: Flags
    residuals_px: Floats
    sigma_px: float
    rms_px: float
    second_chi2: float | None

    @property
    def spread_px(self) -> float:
        """Like rms_px, over all corners but the worst twentieth: left-out ones tell of a bend."""
        import numpy as np

        squares = np.sort((self.residuals_px**2).mean(1))
        return float(np.sqrt(squares[: max(1, int(0.95 * len(squares)))].mean()))

    @property
    def arch_mm(self) -> float:
        """How far the paper arches at 100 mm from the markers' middle, along x or y."""
        return float(abs(self.values[-2:]).max())

    @property
    def left_out(self) -> float:
        """The share of the corners that didn't count."""
        return 1.0 - float(self.used.mean())


def fit_camera(
    object_mm: Floats, image_px: Floats, priors: Priors, outward: Floats | None = None
) -> CameraFit:
    """Fit the camera to corners (n, 2) on the flat card and where they are seen (n, 2), n >= 4.

    `outward` (n, 2) is how each corner moves where the black grows by 1 mm; without it growth is
    held at nought. Corners further off than 3.5 robust standard deviations are left out. Raises
    numpy.linalg.LinAlgError where the corners lie in one line.
    """
    import numpy as np

    held = outward is None
    model = CornerModel(object_mm, np.zeros_like(object_mm) if outward is None else outward)
    fit = _Fit(model, image_px, priors, held)
    used = np.ones(len(object_mm), bool)
    sigma = USUAL_SIGMA_PX
    ends = [fit.solved(start, used, sigma) for start in first_poses(object_mm, image_px, priors)]
    ends.sort(key=lambda values: fit.chi2(values, used, sigma))
    values = ends[0]
    for _ in range(MOST_ROUNDS):
        before, was = used, sigma
        used = fit.believable(values, sigma)
        sigma = fit.corner_sigma(values, used, sigma)
        values = fit.solved(values, used, sigma)
        if np.array_equal(before, used) and abs(sigma / was - 1) < 0.05:
            break
    off = model.pixels(values) - image_px
    rms = float(np.sqrt((off[used] ** 2).mean()))
    second = fit.second_chi2(values, ends[1:], used, sigma)
    return CameraFit(values, fit.covariance(values, used, sigma), used, off, sigma, rms, second)


class _Fit:
    """One set of corners with its priors, asked for residuals, solutions and covariance."""

    def __init__(self, model: CornerModel, image_px: Floats, priors: Priors, held: bool) -> None:
        import numpy as np

        self.model, self.image = model, image_px
        self.means, self.spreads = priors.means(), priors.spreads()
        if held:
            self.spreads[-3] = 0.0
        self.free = np.flatnonzero(self.spreads > 0)
        self.known = self.free[np.isfinite(self.spreads[self.free])]

    def residuals(self, values: Floats, used: Flags, sigma: float) -> Floats:
        import numpy as np

        off = (self.model.pixels(values) - self.image)[used].ravel() / sigma
        pulls = (values - self.means)[self.known] / self.spreads[self.known]
        # A trial step behind the camera: as far off as anything can be.
        return np.concatenate([np.nan_to_num(off, nan=1e6), pulls])

    def slopes(self, values: Floats, used: Flags, sigma: float) -> Floats:
        import numpy as np

        corners = self.model.slopes(values)[used].reshape(-1, ALL) / sigma
        pulls = np.zeros((len(self.known), ALL))
        pulls[np.arange(len(self.known)), self.known] = 1 / self.spreads[self.known]
        return cast("Floats", np.nan_to_num(np.concatenate([corners, pulls]))[:, self.free])

    def chi2(self, values: Floats, used: Flags, sigma: float) -> float:
        return float((self.residuals(values, used, sigma) ** 2).sum())

    def solved(self, start: Floats, used: Flags, sigma: float) -> Floats:
        from scipy.optimize import least_squares

        def whole(free: Floats) -> Floats:
            values = start.copy()
            values[self.free] = free
            return values

        def residuals(free: Floats) -> Floats:
            return self.residuals(whole(free), used, sigma)

        def slopes(free: Floats) -> Floats:
            return self.slopes(whole(free), used, sigma)

        first = start[self.free]
        found = least_squares(residuals, first, slopes, method="lm", x_scale="jac", max_nfev=60)
        return whole(found.x)

    def believable(self, values: Floats, sigma: float) -> Flags:
        """The corners within 3.5 robust standard deviations; all where too few would stay."""
        import numpy as np

        off = np.abs(self.model.pixels(values) - self.image)
        robust = max(1.4826 * float(np.nanmedian(off)), LEAST_SIGMA_PX)
        near = np.nan_to_num(off.max(1), nan=np.inf) < FAR_OFF * robust
        return near if near.sum() >= max(4, len(near) // 2) else np.ones(len(near), bool)

    def corner_sigma(self, values: Floats, used: Flags, sigma: float) -> float:
        """From the residuals, each fitted value costing what the corners gave it."""
        import numpy as np

        slopes = self.slopes(values, used, sigma)
        corners = slopes[: 2 * int(used.sum())]
        spent = float(np.trace(np.linalg.solve(slopes.T @ slopes, corners.T @ corners)))
        off = (self.model.pixels(values) - self.image)[used]
        total = float((off**2).sum()) + USUAL_WEIGHT * USUAL_SIGMA_PX**2
        return max(LEAST_SIGMA_PX, float(np.sqrt(total / (off.size - spent + USUAL_WEIGHT))))

    def covariance(self, values: Floats, used: Flags, sigma: float) -> Floats:
        import numpy as np

        slopes = self.slopes(values, used, sigma)
        scale = np.linalg.norm(slopes, axis=0)
        scaled = slopes / scale
        inverse = np.linalg.inv(scaled.T @ scaled) / np.outer(scale, scale)
        whole = np.zeros((ALL, ALL))
        whole[np.ix_(self.free, self.free)] = (inverse + inverse.T) / 2
        return cast("Floats", whole)

    def second_chi2(
        self, values: Floats, others: list[Floats], used: Flags, sigma: float
    ) -> float | None:
        import numpy as np

        best = self.chi2(values, used, sigma)
        same = turned(values[5:8])
        apart = [one for one in others if np.abs(turned(one[5:8]) - same).max() > 0.05]
        return min((self.chi2(one, used, sigma) - best for one in apart), default=None)

"""What a photo of the card's corners depends on: the camera, the black's growth, the paper's arch.

Paper that arches by half a millimetre looks like another focal length; so the arch is fitted too.
A printer's black grows over its edge, and with it every marker's corner, along its diagonal.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, cast

from desktop_app.part_photos.camera.lens import CAMERA, project

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Floats = NDArray[np.float64]

ALL = CAMERA + 3  # theta, then growth, arch along x, arch along y, in mm
ARCH_AT_MM = 100.0  # from the corners' middle: there the paper has sunk or risen by "arch" mm
USUAL_ARCH_MM = 0.4  # standard deviation; found by trials


@dataclass(frozen=True, slots=True)
class Priors:
    """What is known before the fit: standard uncertainties, each an independent normal.

    A value whose uncertainty is 0 is held. The focal length's is relative, the centre's in pixels,
    growth and arch in mm. The pose has no prior.
    """

    focal_px: float
    focal_rel_u: float
    centre_px: tuple[float, float]
    centre_u_px: float
    k1_u: float = 0.06
    k2_u: float = 0.10
    growth_u_mm: float = 0.15
    arch_u_mm: float = USUAL_ARCH_MM

    def means(self) -> Floats:
        """Return the expected values, shape (14,); 0 for the pose."""
        import numpy as np

        return np.array([np.log(self.focal_px), *self.centre_px, *([0.0] * (ALL - 3))])

    def spreads(self) -> Floats:
        """Return the standard uncertainties, shape (14,); infinite for the pose."""
        import numpy as np

        centre, arch = self.centre_u_px, self.arch_u_mm
        lens = [self.focal_rel_u, centre, centre, self.k1_u, self.k2_u]
        return np.array([*lens, *([np.inf] * 6), self.growth_u_mm, arch, arch])


@dataclass(frozen=True, slots=True, eq=False)
class CornerModel:
    """Corners on the paper, mm, shape (n, 2), and which way each moves where black grows."""

    object_mm: Floats
    outward: Floats

    def pixels(self, values: Floats) -> Floats:
        """Return where the corners are seen, (..., n, 2), for values of shape (..., 14).

        The arch has mean nought over the corners, so z = 0 is the markers' mean plane.
        """
        import numpy as np

        growth, arch = values[..., CAMERA, None, None], values[..., None, CAMERA + 1 :]
        bow = ((self.object_mm - self.object_mm.mean(0)) / ARCH_AT_MM) ** 2
        depth = -((bow - bow.mean(0)) * arch).sum(-1, keepdims=True)
        flat = self.object_mm + growth * self.outward
        return project(values[..., :CAMERA], np.concatenate([flat, depth], -1))

    def slopes(self, values: Floats) -> Floats:
        """Return the pixels' derivatives by the values, shape (n, 2, 14): central differences."""
        import numpy as np

        focal = float(np.exp(values[0]))
        far = float(np.linalg.norm(values[8:11]))
        steps = [1e-5, focal * 1e-5, focal * 1e-5, 1e-4, 1e-4, *([1e-5] * 3), *([far * 1e-5] * 3)]
        steps += [1e-3] * 3
        moved = np.diag(steps)
        both = self.pixels(values + np.concatenate([moved, -moved]))
        slopes = (both[:ALL] - both[ALL:]) / (2 * np.array(steps))[:, None, None]
        return cast("Floats", np.moveaxis(slopes, 0, -1))


def outward(corners_mm: Floats) -> Floats:
    """Return how far each corner moves for 1 mm of growth; shapes (m, 4, 2), corners in order."""
    import numpy as np

    ahead = corners_mm - np.roll(corners_mm, -1, axis=1)
    behind = corners_mm - np.roll(corners_mm, 1, axis=1)
    length = np.linalg.norm(ahead, axis=-1, keepdims=True)
    other = np.linalg.norm(behind, axis=-1, keepdims=True)
    return cast("Floats", ahead / length + behind / other)

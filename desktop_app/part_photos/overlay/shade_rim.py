"""Where an outline may be the rim of a shadow: what lies inside it looks like shaded paper."""

from __future__ import annotations

from typing import TYPE_CHECKING

from desktop_app.part_photos.overlay.over_paper import OverPaper
from desktop_app.part_photos.overlay.part_mask import CHROMA_WITHIN, DARKER

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

STEP_MM = 0.1
BLUR_MM = 0.35  # an edge's own mixture of part and paper looks like shade
LEAST_SHADE = -0.15
BESIDE = 3  # points on either side that share the doubt


def shade_rim(
    seen: OverPaper, edge_mm: NDArray[np.float64], normals: NDArray[np.float64], most_mm: float
) -> NDArray[np.float64]:
    """Return how far inwards, mm, what looks like shaded paper goes on, (n,); `most_mm` at most.

    A grey part on grey paper looks like that all over: nothing tells its rim from a shadow's.
    """
    import numpy as np
    from scipy.ndimage import maximum_filter1d

    like = (seen.colour < CHROMA_WITHIN) & (seen.bright > DARKER) & (seen.bright < LEAST_SHADE)
    offsets = np.arange(BLUR_MM, most_mm, STEP_MM)
    goes_on = seen.across(like, edge_mm, normals, -offsets)
    runs = np.minimum.accumulate(goes_on, axis=1).sum(axis=1)
    far = np.where(runs > 1, BLUR_MM + runs * STEP_MM, 0.0)
    return np.asarray(maximum_filter1d(far, 2 * BESIDE + 1, mode="wrap"), np.float64)

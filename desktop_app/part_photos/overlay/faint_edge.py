"""Where an outline runs beside shade that is about as dark as the part: its edge can't be told."""

from __future__ import annotations

from typing import TYPE_CHECKING

from desktop_app.part_photos.overlay.over_paper import OverPaper
from desktop_app.part_photos.overlay.part_mask import SOFT_PER_MM

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

IN_SHADE = -0.3  # natural logarithm of the light beside the outline, in ratio to the paper's
BESIDE_MM = (0.4, 0.6, 0.8)  # looked at on both sides of the outline
LEAST_STEP = 0.8  # in one of the colours; a penumbra has SOFT_PER_MM times the 1.2 mm between
ALONG_MM = 1.0  # half a width: a spur into the shade has sides as sharp as a part's
BETWEEN_MM = 6.0  # along the outline: the way from shade into a part crosses edges of its face
assert SOFT_PER_MM * 2 * BESIDE_MM[1] < LEAST_STEP


def faint_edge(
    seen: OverPaper, edge_mm: NDArray[np.float64], normals: NDArray[np.float64]
) -> NDArray[np.bool_]:
    """Return where nothing tells the part's edge from shaded paper, (n,).

    There the paper just outside is in shade, and across the outline light and colour change by
    no more than within a shadow's own rim. Whatever lies within a millimetre of such a place along
    the outline shares its doubt, and so does what lies between two of them.
    """
    import numpy as np
    from scipy.ndimage import maximum_filter1d, median_filter

    offsets = np.array(BESIDE_MM)
    outside, inside = (seen.light_at(edge_mm, normals, side * offsets) for side in (1, -1))
    shaded = median_filter(outside.mean(axis=-1), 5, mode="wrap") < IN_SHADE
    step = median_filter(np.abs(outside - inside).max(axis=-1), 5, mode="wrap")
    length = float(np.hypot(*np.diff(edge_mm, axis=0).T).mean())
    faint = (shaded & (step < LEAST_STEP)).astype(np.uint8)
    wide = 2 * max(1, round(ALONG_MM / max(length, 1e-9))) + 1
    return closed_runs(maximum_filter1d(faint, wide, mode="wrap") > 0, BETWEEN_MM / length)


def closed_runs(there: NDArray[np.bool_], longest: float) -> NDArray[np.bool_]:
    """Return a ring of flags with its gaps of at most `longest` points filled, (n,)."""
    import numpy as np

    places = np.flatnonzero(there)
    filled = there.copy()
    for place, after in zip(places, np.roll(places, -1), strict=True):
        gap = int((after - place - 1) % len(there))
        if gap <= longest:
            filled[(place + 1 + np.arange(gap)) % len(there)] = True
    return filled

"""The light of a part's near surroundings in ratio to the bare paper's, and samples across it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from desktop_app.part_photos.linear_light import to_linear
from desktop_app.part_photos.overlay.part_mask import CHROMA_WITHIN, DARK, SHADE_CHROMA

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    from desktop_app.part_photos.overlay.part_view import PartView

CLEAR_MM = 2.0  # from here on most of what lies round a part is bare paper


@dataclass(frozen=True, slots=True, eq=False)
class OverPaper:
    """All over a view: natural logarithms, 0 on bare paper, and distances.

    `light` (h, w, 3) is each colour's, `bright` (h, w) their mean and `colour` (h, w) how far they
    lie from it. `away` (h, w) is how far outside the outline a pixel lies, mm, 0 inside.
    """

    view: PartView
    light: NDArray[np.float32]
    bright: NDArray[np.float32]
    colour: NDArray[np.float32]
    away: NDArray[np.float32]

    def coloured(self) -> NDArray[np.bool_]:
        """Return where the colour is neither paper's nor that of shade on it."""
        import numpy as np

        most = CHROMA_WITHIN + SHADE_CHROMA * np.maximum(-self.bright, 0.0)
        return np.asarray(self.colour > most, np.bool_)

    def across(
        self,
        what: NDArray[np.bool_],
        edge_mm: NDArray[np.float64],
        normals: NDArray[np.float64],
        offsets: NDArray[np.float64],
    ) -> NDArray[np.bool_]:
        """Return `what` at offsets (k,) along the normals of each point, (n, k)."""
        import cv2
        import numpy as np

        smooth = cv2.GaussianBlur(what.astype(np.float32), (0, 0), 1.0)
        x, y = self._places(edge_mm, normals, offsets)
        return np.asarray(cv2.remap(smooth, x, y, cv2.INTER_LINEAR) > 0.5, np.bool_)

    def light_at(
        self,
        edge_mm: NDArray[np.float64],
        normals: NDArray[np.float64],
        offsets: NDArray[np.float64],
    ) -> NDArray[np.float64]:
        """Return the light over all of the offsets (k,) along the normal of each point, (n, 3)."""
        import cv2
        import numpy as np

        x, y = self._places(edge_mm, normals, offsets)
        seen = cv2.remap(self.light, x, y, cv2.INTER_LINEAR, borderMode=cv2.BORDER_REPLICATE)
        return np.asarray(np.median(seen, axis=1), np.float64)

    def _places(
        self,
        edge_mm: NDArray[np.float64],
        normals: NDArray[np.float64],
        offsets: NDArray[np.float64],
    ) -> tuple[NDArray[np.float32], NDArray[np.float32]]:
        import numpy as np

        at = edge_mm[:, None] + normals[:, None] * offsets[None, :, None]
        places = self.view.to_view(at.reshape(-1, 2)).astype(np.float32)
        x, y = (np.ascontiguousarray(places[:, k]).reshape(at.shape[:2]) for k in (0, 1))
        return x, y


def over_paper(view: PartView, edge_mm: NDArray[np.float64]) -> OverPaper:
    """Compare a view with its own paper, which is the usual light clear of the part."""
    import cv2
    import numpy as np

    part = np.zeros(view.seen.shape, np.uint8)
    cv2.fillPoly(part, [np.round(view.to_view(edge_mm) * 16).astype(np.int32)], 1, shift=4)
    away = cv2.distanceTransform(1 - part, cv2.DIST_L2, 5) / np.float32(view.per_mm)
    light = np.log(cv2.GaussianBlur(to_linear(view.rgb), (0, 0), 1.0) + np.float32(DARK))
    light -= np.median(light[(away > CLEAR_MM) & view.seen][::7], axis=0)
    bright = light.mean(axis=-1)
    colour = np.linalg.norm(light - bright[..., None], axis=-1)
    return OverPaper(
        view, light, bright, np.asarray(colour, np.float32), np.asarray(away, np.float32)
    )

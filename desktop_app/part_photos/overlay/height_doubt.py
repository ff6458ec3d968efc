"""How sure the height of an outline above the card is: said by somebody, or by nobody."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from desktop_app.part_photos.overlay.outline import Outline

U_SAID_MM = 1.0 / 3**0.5  # a height is rarely known better than to 1 mm either way
UNEVEN = 0.06  # of the height: an outline's pieces lie at heights of their own, common practice
MOST_MM = 50.0  # what is laid on a card to be photographed is hardly higher; common practice


@dataclass(frozen=True, slots=True)
class HeightDoubt:
    """The outline is looked at `height_mm` above the card; standard uncertainties in mm.

    `whole_u` is that of the outline as a whole, `pieces_u` that of its pieces against each other.
    `highest_mm` is None where the height was said.
    """

    height_mm: float
    whole_u: float
    pieces_u: float
    highest_mm: float | None = None

    def share(self, eye_mm: float) -> float:
        """Return by what share of itself a length may be wrong, expanded (95 %).

        `eye_mm` is how high the camera stands. An outline that lies higher than it was taken for
        is smaller than it looks.
        """
        if self.highest_mm is not None:
            return self.highest_mm / eye_mm
        return 1.96 * self.whole_u / (eye_mm - self.height_mm)


def said_height(height_mm: float) -> HeightDoubt:
    """Return the doubt of a height that somebody said."""
    return HeightDoubt(height_mm, U_SAID_MM, UNEVEN * height_mm)


def unsaid_height(outlines: tuple[Outline, Outline]) -> HeightDoubt:
    """Return the doubt where nobody said a height: any up to a plausible one may be true.

    A part is laid on its broad side, so it is hardly higher than its outline is wide; common
    practice, no source. Pieces of an outline may lie at the card and at the top (an upright wall
    shows its foot on the near side and its top on the far side).
    """
    highest = min(max(_width(one) for one in outlines), MOST_MM)
    evenly_spread = highest / 3**0.5
    return HeightDoubt(0.0, evenly_spread, evenly_spread, highest)


def _width(outline: Outline) -> float:
    """Return the shorter side of the smallest rectangle round the outline."""
    import cv2
    import numpy as np

    points = (outline.points - outline.points[0]).astype(np.float32)
    return float(min(cv2.minAreaRect(points[:, None])[1]))

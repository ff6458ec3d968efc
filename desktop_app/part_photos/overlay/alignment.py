"""How two photos lie on each other: data, never a changed photo."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Literal

from desktop_app.language import tr

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

# The photo of the old part and that of the new one, as a refusal names them.
OLD, NEW = tr("old"), tr("new")

Method = Literal[
    "same picture",
    "card and outline",
    "card and two clicks",
    "card, two clicks and outline",
    "outline",
    "features",
    "clicks",
    "none",
]


@dataclass(frozen=True, slots=True, eq=False)
class LaidOutlines:
    """Both outlines on the old photo, each (n, 2) and once round the part.

    `*_px` are old pixels; `*_mm` lie in the old card's plane at the part's height, None without
    cards. `old_u` and `new_u` are, for each point of the one outline, the expanded uncertainty
    (95 %) of its distance from the other, in mm, or in px without cards. `old_untold` and
    `new_untold` (n,) are true where nothing tells this outline, or the other one beside it, from
    shade on the paper; None where nobody looked.
    """

    old_px: NDArray[np.float64]
    new_px: NDArray[np.float64]
    old_mm: NDArray[np.float64] | None
    new_mm: NDArray[np.float64] | None
    old_u: NDArray[np.float64]
    new_u: NDArray[np.float64]
    old_untold: NDArray[np.bool_] | None = None
    new_untold: NDArray[np.bool_] | None = None


@dataclass(frozen=True, slots=True, eq=False)
class Alignment:
    """What came of aligning a new photo with an old one.

    `why` is one sentence or two for the user: how it was done, or why it can't be and what to do.
    `transform` is a 3 x 3 homography, new pixels to old pixels (centres at whole numbers); None
    where the photos can't be aligned. The residuals are root mean squares over the part, lens
    distortion that no homography holds included; None where there is nothing to tell them from.
    `px_per_mm` is the old photo's scale at the part, None without a card. With cards, `height_mm`
    is what was said; where nothing was, `highest_mm` is how high the outline may lie, and counted
    with. `size_u` is the expanded uncertainty (95 %) of every length from the height and the print,
    as a share of it.
    """

    aligned: bool
    why: str
    method: Method
    transform: NDArray[np.float64] | None = None
    residual_px: float | None = None
    residual_mm: float | None = None
    height_mm: float | None = None
    px_per_mm: float | None = None
    outlines: LaidOutlines | None = None
    highest_mm: float | None = None
    size_u: float = 0.0

    def caution(self) -> str:
        """Return what to know before anything else, as two sentences; "" where there is nothing."""
        if self.highest_mm is None:
            return ""
        return tr(
            "How high the outline lies above the card is not known: anything up to "
            "{highest_mm:.0f} mm was reckoned with, so only coarse differences show. "
            "Say the height, in mm, for finer ones.",
            highest_mm=self.highest_mm,
        )


def cannot(why: str) -> Alignment:
    """Return the answer for photos that can't be aligned."""
    return Alignment(False, why, "none")

"""Pictures of two aligned photos: blended, wiped, and with their differences outlined.

They are derived for looking at and for paper; the photos themselves stay as they are.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from desktop_app.language import tr
from desktop_app.part_photos.overlay.alignment import Alignment
from desktop_app.part_photos.overlay.difference import Difference
from desktop_app.part_photos.overlay.not_compared import dotted_places
from desktop_app.part_photos.overlay.picture_lines import Ink, Pen, Rgb

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray
    from PIL.Image import Image

    from desktop_app.part_photos.photo_pixels import PhotoPixels

LONGEST_PX = 1600
MOST_ENLARGED = 4.0
ROUND_PART = 0.25  # of the part's size, shown round it
# Two colours of the Okabe-Ito palette, told apart in grey too.
OLD_RGB, NEW_RGB = (230, 159, 0), (0, 114, 178)
FADED = 0.55  # of the photo's contrast is left under the lines
DOTTED = tr("not compared, or only coarsely")
BAR_MM = (1, 2, 5, 10, 20, 50, 100, 200)


def blend(
    old: PhotoPixels,
    new: PhotoPixels,
    transform: NDArray[np.float64],
    share: float = 0.5,
    longest: int = LONGEST_PX,
) -> Image:
    """Return both photos over each other: `share` of the new one; beyond its rim the old alone."""
    import numpy as np

    first, second, seen = _both(old, new, transform, longest)
    part = np.where(seen[..., None], share, 0.0)
    return _image(first * (1 - part) + second * part)


def wipe(
    old: PhotoPixels,
    new: PhotoPixels,
    transform: NDArray[np.float64],
    at: float = 0.5,
    longest: int = LONGEST_PX,
) -> Image:
    """Return the old photo up to `at` (0 to 1) of the width, and the new one from there on."""
    import numpy as np

    first, second, seen = _both(old, new, transform, longest)
    right = np.arange(first.shape[1]) >= at * first.shape[1]
    return _image(np.where((right & seen)[..., None], second, first))


def difference_picture(
    old: PhotoPixels,
    alignment: Alignment,
    found: Sequence[Difference],
    old_rgb: Rgb = OLD_RGB,
    new_rgb: Rgb = NEW_RGB,
    longest: int = LONGEST_PX,
    length_unit: str = "mm",
) -> Image:
    """Return the old part in grey with both outlines and, framed, where they differ by what ± U.

    The old outline is solid with diamonds, the new one dashed with discs, so that neither hangs
    on its colour; what is not compared, or only coarsely, is thin and dotted. Raises ValueError
    where no outlines were laid on each other.
    """
    import numpy as np

    laid = alignment.outlines
    if laid is None:
        raise ValueError("there are no outlines to draw")
    both = np.vstack([laid.old_px, laid.new_px])
    margin = ROUND_PART * float(np.ptp(both, axis=0).max()) + 10
    limit = np.array([old.width, old.height])
    low = np.clip(np.floor(both.min(axis=0) - margin), 0, limit - 2).astype(int)
    high = np.clip(np.ceil(both.max(axis=0) + margin), low + 2, limit).astype(int)
    enlarged = min(MOST_ENLARGED, longest / float((high - low).max()))
    pen = Pen(_faded(old, low, high, enlarged), low, enlarged)
    old_ink, new_ink = Ink(old_rgb, False, "diamond"), Ink(new_rgb, True, "disc")
    old_dotted, new_dotted = dotted_places(laid)
    pen.closed(((laid.old_px, old_dotted, old_ink), (laid.new_px, new_dotted, new_ink)))
    for number, one in enumerate(found):
        pen.framed(one.polygon_px, one.label(length_unit), number)
    said = DOTTED if old_dotted.any() or new_dotted.any() else ""
    pen.legend(((tr("removed part"), old_ink), (tr("replacement"), new_ink)), said)
    if alignment.px_per_mm is not None:
        across = float(high[0] - low[0])
        fitting = [bar for bar in BAR_MM if bar * alignment.px_per_mm < 0.3 * across]
        if fitting:
            pen.bar(fitting[-1] * alignment.px_per_mm, f"{fitting[-1]} mm")
    return pen.picture


def _faded(
    old: PhotoPixels, low: NDArray[np.intp], high: NDArray[np.intp], enlarged: float
) -> Image:
    import numpy as np
    from PIL import Image

    cut = Image.fromarray(old.rgb[low[1] : high[1], low[0] : high[0]]).convert("L")
    size = [max(1, round(float(side) * enlarged)) for side in high - low]
    grey = np.asarray(cut.resize((size[0], size[1]), Image.Resampling.BICUBIC), np.float32)
    return _image(np.repeat((grey * FADED + 255 * (1 - FADED))[..., None], 3, axis=2))


def _both(
    old: PhotoPixels, new: PhotoPixels, transform: NDArray[np.float64], longest: int
) -> tuple[NDArray[np.float32], NDArray[np.float32], NDArray[np.bool_]]:
    """Return the old photo, the new one laid on it, and where that has pixels; made smaller."""
    import cv2
    import numpy as np

    factor = max(1.0, max(old.width, old.height) / longest)
    size = (max(1, round(old.width / factor)), max(1, round(old.height / factor)))
    first = cv2.resize(old.rgb, size, interpolation=cv2.INTER_AREA)
    # Centres at whole numbers: the middle of the first small pixel lies at (factor - 1) / 2.
    x, y = size[0] / old.width, size[1] / old.height
    smaller = np.array([[x, 0, (x - 1) / 2], [0, y, (y - 1) / 2], [0, 0, 1]])
    laid = smaller @ transform
    grain = max(0.0, factor / 2.5)
    source = cv2.GaussianBlur(new.rgb, (0, 0), grain) if grain > 0.5 else new.rgb
    second = cv2.warpPerspective(source, laid, size, flags=cv2.INTER_LINEAR)
    whole = np.full(new.rgb.shape[:2], 255, np.uint8)
    seen = cv2.warpPerspective(whole, laid, size, flags=cv2.INTER_NEAREST) > 0
    return np.asarray(first, np.float32), np.asarray(second, np.float32), np.asarray(seen)


def _image(values: NDArray[np.floating]) -> Image:
    import numpy as np
    from PIL import Image

    return Image.fromarray(np.clip(np.round(values), 0, 255).astype(np.uint8))

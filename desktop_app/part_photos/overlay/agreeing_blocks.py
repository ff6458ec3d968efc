"""Do two pictures that were laid on each other show the same, block by block?"""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

BLOCK_PX = 24
BUSY = 12.0  # variance of grey levels below which a block has nothing in it
ALIKE = 0.5  # correlation
FEWEST = 8


def agreeing_blocks(
    old: NDArray[np.uint8],
    new: NDArray[np.uint8],
    transform: NDArray[np.float64],
    within: NDArray[np.bool_] | None = None,
) -> float | None:
    """Return the share of blocks with something in them whose grey patterns are alike.

    `old` and `new` are grey (h, w), `transform` new px -> old px; with `within`, (h, w) of the old
    picture, only blocks that lie wholly in it count. None where fewer than eight have anything.
    """
    import cv2
    import numpy as np

    high, wide = old.shape
    laid = cv2.warpPerspective(new, transform, (wide, high), flags=cv2.INTER_LINEAR)
    seen = cv2.warpPerspective(np.full_like(new, 255), transform, (wide, high)) == 255
    if within is not None:
        seen &= within
    first, second = (
        np.asarray(cv2.GaussianBlur(one, (0, 0), 1.5), np.float32) for one in (old, laid)
    )
    spread = [_mean(one * one) - _mean(one) ** 2 for one in (first, second)]
    product = _mean(first * second) - _mean(first) * _mean(second)
    busy = (_mean(seen.astype(np.float32)) > 0.999) & (np.maximum(*spread) > BUSY)
    if busy.sum() < FEWEST:
        return None
    alike = product > ALIKE * np.sqrt(np.maximum(spread[0] * spread[1], 1e-6))
    return float((alike & busy).sum() / busy.sum())


def _mean(values: NDArray[np.float32]) -> NDArray[np.float32]:
    """Return the mean of each block."""
    import cv2
    import numpy as np

    middle = BLOCK_PX // 2
    blurred = cv2.blur(values, (BLOCK_PX, BLOCK_PX))
    return np.asarray(blurred[middle::BLOCK_PX, middle::BLOCK_PX], np.float32)

"""How much a share would change with another outline on the same surface."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

BLOCKS_ACROSS = 10  # over the longer side of the outline


def block_doubt(at: NDArray[np.int64], differs: NDArray[np.bool_]) -> float:
    """Return the standard uncertainty of a share from how it differs between blocks.

    `at` (n, 2) are pixels, `differs` (n,) whether each counts. The surface is cut into square
    blocks, because neighbouring pixels are no independent witnesses; the estimator is that of a
    ratio over clusters of unequal size (Cochran, Sampling Techniques, 3rd edition 1977, 6.4; from
    memory).
    """
    import numpy as np

    low = at.min(0)
    side = max(1, -(-int((at.max(0) - low).max() + 1) // BLOCKS_ACROSS))
    column, row = ((at - low) // side).T
    block = row * BLOCKS_ACROSS + column
    held = np.bincount(block)
    counted = np.bincount(block, differs)[held > 0]
    held = held[held > 0]
    blocks = len(held)
    if blocks < 2:
        return 0.5  # one block says nothing of the spread
    apart = counted - held * (counted.sum() / held.sum())
    return float(np.sqrt((apart**2).sum() * blocks / (blocks - 1)) / held.sum())

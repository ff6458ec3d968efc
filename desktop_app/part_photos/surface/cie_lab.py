"""Colour as the eye parts it: CIE 1976 L*a*b* from linear light, balanced to a white in the photo.

Sources: CIE 15:2004, 8.2.1 (L*a*b*); IEC 61966-2-1 (what red, green and blue of sRGB are).
"""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

_TO_XYZ = ((0.4124, 0.3576, 0.1805), (0.2126, 0.7152, 0.0722), (0.0193, 0.1192, 0.9505))
_BEND = (6 / 29) ** 3


def lab(light: NDArray[np.float32], white: NDArray[np.float64]) -> NDArray[np.float64]:
    """Return L*, a*, b*, shape (n, 3), of linear red, green, blue, shape (n, 3).

    `white`, shape (3,), is the linear light of what counts as white: it becomes (100, 0, 0). Each
    channel is divided by it, as a camera's own white balance does.
    """
    import numpy as np

    to_xyz = np.array(_TO_XYZ)
    share = (light / white) @ (to_xyz / to_xyz.sum(1, keepdims=True)).T  # X/Xn, Y/Yn, Z/Zn
    bent = np.where(share > _BEND, np.cbrt(share), share * (841 / 108) + 4 / 29)
    x, y, z = bent.T
    return np.stack([116 * y - 16, 500 * (x - y), 200 * (y - z)], axis=-1)

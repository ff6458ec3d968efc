"""A camera as eleven numbers, and the way from the card to its pixels and back.

theta = (ln f, cx, cy, k1, k2, rotation vector, shift in mm): a pinhole with two radial terms,
x' = x (1 + k1 r² + k2 r⁴), as in Brown, "Close-range camera calibration", 1971. The card's frame
here is right-handed: x to the right, y down, z INTO the table, so a height is a negative z.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, cast

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Floats = NDArray[np.float64]

CAMERA = 11  # how many values theta has
LENS = slice(3, 5)  # which of them are the lens's bending


def turned(rotation: Floats) -> Floats:
    """Return rotation matrices (..., 3, 3) of rotation vectors (..., 3), by Rodrigues' formula."""
    import numpy as np

    x, y, z = np.moveaxis(rotation, -1, 0)
    nought = np.zeros_like(x)
    cross = np.stack([nought, -z, y, z, nought, -x, -y, x, nought], -1)
    cross = cross.reshape(*x.shape, 3, 3)
    angle = np.sqrt(x * x + y * y + z * z)[..., None, None]
    # sinc keeps both quotients finite at angle nought.
    once, twice = np.sinc(angle / np.pi), 0.5 * np.sinc(angle / (2 * np.pi)) ** 2
    return cast("Floats", np.eye(3) + once * cross + twice * (cross @ cross))


def project(theta: Floats, points: Floats) -> Floats:
    """Return pixels (..., n, 2) of card points (..., n, 3), for cameras theta (..., 11).

    nan where a point lies behind the camera.
    """
    import numpy as np

    seen = points @ np.swapaxes(turned(theta[..., 5:8]), -1, -2) + theta[..., None, 8:11]
    depth = seen[..., 2:]
    plain = seen[..., :2] / np.where(depth > 0, depth, np.nan)
    k1, k2 = theta[..., 3, None, None], theta[..., 4, None, None]
    square = (plain * plain).sum(-1, keepdims=True)
    bent = plain * (1 + square * (k1 + square * k2))
    return cast("Floats", np.exp(theta[..., 0, None, None]) * bent + theta[..., None, 1:3])


def unbent(bent: Floats, k1: float | Floats, k2: float | Floats) -> Floats:
    """Return lens coordinates (..., n, 2) without the lens's bending; project's step back.

    `k1` and `k2` are numbers, or (...) for as many lenses.

    Newton on the radius, to the last digits of a float. nan beyond the radius where the two terms
    stop to grow: there the model describes no lens.
    """
    import numpy as np

    k1, k2 = (np.asarray(one, float)[..., None] for one in (k1, k2))
    target = np.hypot(bent[..., 0], bent[..., 1])
    radius = target.copy()
    most = np.sqrt(_turning_square(k1, k2))
    for _ in range(30):
        square = radius * radius
        slope = 1 + square * (3 * k1 + square * 5 * k2)
        step = (radius * (1 + square * (k1 + square * k2)) - target) / np.maximum(slope, 0.05)
        radius = np.clip(radius - step, 0.0, most)
        if not np.any(np.abs(step) > 1e-15):
            break
    square = radius * radius
    stretch = 1 + square * (k1 + square * k2)
    missed = np.abs(radius * stretch - target) > 1e-12
    return bent / np.where(missed, np.nan, stretch)[..., None]


def rays_from(theta: Floats, points_px: Floats) -> tuple[Floats, Floats]:
    """Return a camera's place (..., 3) and the directions (..., n, 3) of pixels (n, 2).

    For cameras theta (..., 11); z into the table. Directions have depth 1 before the lens; nan
    where the lens model ends.
    """
    import numpy as np

    there = np.asarray(points_px, float) - theta[..., None, 1:3]
    plain = unbent(there / np.exp(theta[..., 0, None, None]), theta[..., 3], theta[..., 4])
    to_camera = turned(theta[..., 5:8])
    directions = np.concatenate([plain, np.ones_like(plain[..., :1])], -1) @ to_camera
    place = -(theta[..., None, 8:11] @ to_camera)[..., 0, :]
    return place, directions


def _turning_square(k1: Floats, k2: Floats) -> Floats:
    """The smallest r² with 1 + 3 k1 r² + 5 k2 r⁴ = 0; 100 (84 degrees off the axis) at most."""
    import numpy as np

    inside = 9 * k1 * k1 - 20 * k2
    below = np.where(inside >= 0, np.sqrt(np.maximum(inside, 0)) - 3 * k1, 0.0)
    return 2 / np.maximum(below, 0.02)

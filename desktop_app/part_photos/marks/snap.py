"""Moves a mark's points onto the edges they were meant for, where these are clear."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from desktop_app.part_photos.camera.plane_scale import PlaneScale
from desktop_app.part_photos.marks.edge_near import (
    ALONE_PX,
    REACH_PX,
    USUAL_BLUR_PX,
    edge_near,
)
from desktop_app.part_photos.marks.mark import SIZED, Mark, Pixel
from desktop_app.part_photos.marks.snap_ways import bend_of, ways_of
from desktop_app.part_photos.marks.wall_near import feet_of, hides_a_wall
from desktop_app.part_photos.photo_pixels import PhotoPixels

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Floats = NDArray[np.float64]

_NEAR_CORNER = 0.35  # share of a leg, where its edge is looked for a second time
_LEAST_SINE = 0.1  # legs flatter than that don't tell where they meet
_FARTHEST_PX = 6.0  # by which a corner may move


def snapped(
    mark: Mark,
    pixels: PhotoPixels,
    scale: PlaneScale | None = None,
    card_blur_px: float | None = None,
) -> Mark:
    """Return the mark with each point on the edge near it; where none is clear, it stays.

    A length's ends move along it; the points of lines, and the point measured to a line, across
    the line; a circle's to and fro from its middle. An angle's corner moves to where its legs'
    edges meet, if both are clear. `snapped` of the mark tells which points lie on an edge.
    `card_blur_px` is the spread of the card's own edges (standard deviation). Where the height and
    the camera say that a wall too narrow to be told from its rim is in sight, the point stays too.
    Counts, notes and outlines stay as they are. Takes a few milliseconds for each point.
    """
    import numpy as np

    if mark.type not in SIZED:
        return mark
    blur = card_blur_px or getattr(scale, "blur_px", None) or USUAL_BLUR_PX
    points = np.array(mark.points_px, float).reshape(-1, 2)
    ways = ways_of(mark, scale)
    bend = bend_of(mark)
    feet = feet_of(points, ways, mark.height_mm, scale)
    moved = [
        _moved(pixels, point, way, blur, bend, float(foot))
        for point, way, foot in zip(points, ways, feet, strict=True)
    ]
    if mark.type == "angle" and len(points) == 3 and moved[0] is not None and moved[2] is not None:
        moved[1] = _corner(pixels, points, ways, (moved[0], moved[2]), blur)
    return replace(
        mark,
        points_px=tuple(
            _pixel(old if new is None else new) for old, new in zip(points, moved, strict=True)
        ),
        snapped=tuple(new is not None for new in moved),
    )


def _moved(
    pixels: PhotoPixels,
    point: Floats,
    way: Floats,
    blur: float,
    bend: float = 0.0,
    foot: float = 0.0,
) -> Floats | None:
    import numpy as np

    if not np.isfinite([point, way]).all():
        return None
    found = edge_near(pixels.rgb, point, way, blur, bend)
    if found is None:
        return None
    edge, wider = point + found * way, max(blur, USUAL_BLUR_PX) / USUAL_BLUR_PX
    hidden = hides_a_wall(pixels.rgb, edge, way, foot, wider, (ALONE_PX + REACH_PX) * wider)
    return None if hidden else edge


def _corner(
    pixels: PhotoPixels, points: Floats, ways: Floats, ends: tuple[Floats, Floats], blur: float
) -> Floats | None:
    """Where the edges of both legs meet: each looked for a second time nearer to the corner."""
    import numpy as np

    corner = points[1]
    legs = []
    for end, way, far in zip(points[[0, 2]], ways[[0, 2]], ends, strict=True):
        near = _moved(pixels, corner + _NEAR_CORNER * (end - corner), way, blur)
        if near is None:
            return None
        legs.append((far, near - far))
    (one, first), (other, second) = legs
    turn = first[0] * second[1] - first[1] * second[0]
    if abs(turn) < _LEAST_SINE * np.hypot(*first) * np.hypot(*second):
        return None
    between = other - one
    met = one + (between[0] * second[1] - between[1] * second[0]) / turn * first
    return np.asarray(met) if np.hypot(*(met - corner)) <= _FARTHEST_PX else None


def _pixel(point: Floats) -> Pixel:
    return float(point[0]), float(point[1])

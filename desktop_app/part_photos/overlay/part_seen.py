"""The part in one photo with a card: found in the free field, its outline in millimetres."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from desktop_app.language import tr
from desktop_app.part_photos.overlay.faint_edge import faint_edge
from desktop_app.part_photos.overlay.outline import (
    SPACING_MM,
    Outline,
    evenly,
    mask_rim,
    on_the_edge,
    outward_normals,
)
from desktop_app.part_photos.overlay.over_paper import over_paper
from desktop_app.part_photos.overlay.pale_rim import pale_rim
from desktop_app.part_photos.overlay.part_mask import ALONG_RIM, part_masks
from desktop_app.part_photos.overlay.part_view import PartView, Rect, part_view
from desktop_app.part_photos.overlay.shade_rim import shade_rim
from desktop_app.part_photos.photo_cannot import PhotoCannot

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    from desktop_app.part_photos.camera.plane_scale import PlaneScale
    from desktop_app.part_photos.photo_pixels import PhotoPixels

COARSE_PER_MM = 2.0
FINE_PER_MM = 8.0
MOST_VIEW_PX = 1600  # along one side of a view
INSET_MM = 2.0  # the printed rim of the field is left out
ROUND_MM = 4.0  # shown round the part
MOST_SHADE_MM = 8.0
U_PALE_MM = 0.3  # of an edge that only colour tells; too much to align by


@dataclass(frozen=True, slots=True, eq=False)
class PartSeen:
    """A part's `outline` in mm on the plane at its height, and a fine `view` of that plane.

    `mm_per_px` is the photo's own scale there; `eye_mm` is where the camera stands, (x, y, height
    above the card). `untold` (n,) is where nothing tells the outline from shade on the paper.
    """

    outline: Outline
    untold: NDArray[np.bool_]
    view: PartView
    mm_per_px: float
    eye_mm: NDArray[np.float64]


def part_seen(
    pixels: PhotoPixels, scale: PlaneScale, field: Rect, height_mm: float, which: str
) -> PartSeen:
    """Find the part that lies in the free field; its outline lies `height_mm` above the card.

    `which` names the photo in messages. Raises PhotoCannot where there is no part, or half of one.
    """
    import numpy as np

    corners = _corners(field)
    at_height = scale.on_plane(scale.to_pixels(corners, 0.0), height_mm)
    low = np.minimum(at_height.min(axis=0), corners.min(axis=0))
    high = np.maximum(at_height.max(axis=0), corners.max(axis=0))
    per_mm = min(COARSE_PER_MM, MOST_VIEW_PX / float((high - low).max()))
    coarse = part_view(pixels, scale, (*low, *high), height_mm, per_mm)
    room = _room(coarse, at_height)
    masks = part_masks(coarse.rgb, room, per_mm)
    if masks is None:
        raise PhotoCannot(
            tr("No single part stands out in the free field of the {which} photo.", which=which),
            do=tr("Lay the part alone in the field, in even light, or click two common points."),
        )
    _check_whole(masks[0], room, which)
    rim, outer = (evenly(coarse.to_mm(mask_rim(mask)), SPACING_MM, 0.6 / per_mm) for mask in masks)
    low, high = rim.min(axis=0) - ROUND_MM, rim.max(axis=0) + ROUND_MM
    per_px = mm_per_px(scale, (low + high) / 2, height_mm)
    finest = min(FINE_PER_MM, MOST_VIEW_PX / float((high - low).max()), 1.2 / per_px)
    view = part_view(pixels, scale, (*low, *high), height_mm, finest)
    edge = on_the_edge(view, rim)
    normals = outward_normals(evenly_smooth(edge))
    around = over_paper(view, edge)
    shade = shade_rim(around, edge, normals, MOST_SHADE_MM)
    pale = pale_rim(around, edge, normals)
    edge = edge + normals * pale[:, None]
    normals = outward_normals(evenly_smooth(edge)) if pale.any() else normals
    eye = np.asarray(scale.rays(scale.to_pixels(edge[:1], height_mm))[0])
    doubt = np.maximum(_goes_on(rim, outer, 1.2 / per_mm), shade)
    faint = faint_edge(around, edge, normals)
    doubt = np.where(faint, np.maximum(doubt, MOST_SHADE_MM), doubt)
    wall = np.maximum(_wall(edge, normals, eye, height_mm), np.where(pale > 0, U_PALE_MM, doubt))
    return PartSeen(Outline(edge, normals, wall), (doubt > 0) & (pale == 0), view, per_px, eye)


def evenly_smooth(edge: NDArray[np.float64]) -> NDArray[np.float64]:
    """Return the outline smoothed over half a millimetre, point by point, for its normals."""
    import numpy as np
    from scipy.ndimage import gaussian_filter1d

    return np.asarray(gaussian_filter1d(edge, 2.0, axis=0, mode="wrap"))


def mm_per_px(scale: PlaneScale, at_mm: NDArray[np.float64], height_mm: float) -> float:
    """Return the size of a photo's pixel at a point of the plane, the mean of both directions."""
    import numpy as np

    x, y = scale.to_pixels(at_mm[None], height_mm)[0]
    beside = np.array([[x, y], [x + 1, y], [x, y + 1]])
    here, right, down = scale.on_plane(beside, height_mm)
    return float((np.hypot(*(right - here)) + np.hypot(*(down - here))) / 2)


def _corners(field: Rect) -> NDArray[np.float64]:
    import numpy as np

    left, top, right, bottom = field
    return np.array([[left, top], [right, top], [right, bottom], [left, bottom]], float)


def _room(view: PartView, corners_mm: NDArray[np.float64]) -> NDArray[np.bool_]:
    """Return where in the view the field is seen, its rim left out."""
    import cv2
    import numpy as np

    room = np.zeros(view.seen.shape, np.uint8)
    corners = np.round(view.to_view(corners_mm) * 16).astype(np.int32)
    cv2.fillConvexPoly(room, corners, 1, shift=4)
    room &= view.seen.astype(np.uint8)
    wide = 2 * round(INSET_MM * view.per_mm) + 1
    kernel = np.ones((wide, wide), np.uint8)
    shrunk = cv2.erode(room, kernel, borderType=cv2.BORDER_CONSTANT, borderValue=0)
    return np.asarray(shrunk > 0)


def _check_whole(mask: NDArray[np.bool_], room: NDArray[np.bool_], which: str) -> None:
    import cv2
    import numpy as np

    kernel = np.ones((5, 5), np.uint8)
    rim = mask & (cv2.erode(mask.astype(np.uint8), np.ones((3, 3), np.uint8)) == 0)
    edge = cv2.erode(np.pad(room, 1).astype(np.uint8), kernel)[1:-1, 1:-1] == 0
    if (rim & edge).sum() > ALONG_RIM * rim.sum():
        raise PhotoCannot(
            tr("In the {which} photo the part reaches out of the card's free field.", which=which),
            do=tr("Lay all of it in the field, or click two common points."),
        )


def _goes_on(
    rim: NDArray[np.float64], outer: NDArray[np.float64], least: float
) -> NDArray[np.float64]:
    """Return how far the part may go on outwards of its rim where it looks like shade, (n,)."""
    import numpy as np
    from scipy.ndimage import maximum_filter1d
    from scipy.spatial import cKDTree

    apart = np.asarray(cKDTree(outer).query(rim)[0])
    return np.asarray(maximum_filter1d(np.where(apart > least, apart, 0.0), 9, mode="wrap"))


def _wall(
    edge: NDArray[np.float64],
    normals: NDArray[np.float64],
    eye: NDArray[np.float64],
    height_mm: float,
) -> NDArray[np.float64]:
    """Return how far, mm, a wall down to the card may show beyond the outline, (n,).

    A point of the wall at height z appears on the outline's plane moved towards the point below
    the camera by (h - z) times the slope of the view. Where the outline faces away from that point
    the wall hides behind the edge.
    """
    import numpy as np

    slope = (eye[:2] - edge) / (eye[2] - height_mm)
    return np.asarray(np.maximum(0.0, (slope * normals).sum(axis=1)) * height_mm)

"""Where two laid outlines differ by more than can be doubt."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Literal

from desktop_app.figures_shown import figure
from desktop_app.language import tr
from desktop_app.part_photos.overlay.alignment import Alignment, LaidOutlines
from desktop_app.repair_jobs.distance import mm_to_inch

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

Side = Literal["more", "less"]

LEAST_LONG = 1.5  # mm along the outline; a shorter piece is grain or a scratch by the edge
LEAST_SURE = 0.8  # mm of it that exceed the doubt
LEAST_LONG_PX = 4.0
OVER = 0.6  # mm along the outline over which distances are averaged
SIDES = (  # clockwise as a photo shows them
    tr("right"),
    tr("lower right"),
    tr("bottom"),
    tr("lower left"),
    tr("left"),
    tr("upper left"),
    tr("top"),
    tr("upper right"),
)


@dataclass(frozen=True, slots=True)
class Difference:
    """A stretch where the new part reaches further ("more") or less far than the old one.

    `size_mm` is the distance along the normal where it exceeds its expanded uncertainty (95 %),
    `expanded_u_mm`, by most; both None without cards. `polygon_px` encloses what lies between the
    outlines, old pixels. `where` says on which side of the part, as the old photo shows it.
    """

    side: Side
    size_mm: float | None
    expanded_u_mm: float | None
    size_px: float
    polygon_px: tuple[tuple[float, float], ...]
    where: str

    def words(self, length_unit: str = "mm") -> str:
        """Return the difference as one sentence, its size in "mm" or "inch"."""
        where, more = self.where.capitalize(), self.side == "more"
        if self.size_mm is None or self.expanded_u_mm is None:
            if more:
                return tr(
                    "{where}: the new part reaches further; no card says how much.", where=where
                )
            return tr("{where}: the new part reaches less far; no card says how much.", where=where)
        size, unit = said_length(self.size_mm, length_unit)
        size = f"{size} {unit} (± {said_length(self.expanded_u_mm, length_unit)[0]})"
        if more:
            return tr("{where}: the new part reaches {size} further.", where=where, size=size)
        return tr("{where}: the new part reaches {size} less far.", where=where, size=size)

    def label(self, length_unit: str = "mm") -> str:
        """Return what stands beside it: "+1.02 ± 0.10 mm", as the new part against the old."""
        sign = "+" if self.side == "more" else "−"
        if self.size_mm is None or self.expanded_u_mm is None:
            return sign + " " + tr("(no card, no size)")
        size, unit = said_length(self.size_mm, length_unit)
        return f"{sign}{size} ± {said_length(self.expanded_u_mm, length_unit)[0]} {unit}"


def said_length(mm: float, length_unit: str, digits: int = 2) -> tuple[str, str]:
    """Return a length and its unit as the shop reads it; an inch shows one digit more."""
    if length_unit == "inch":
        return figure(mm_to_inch(mm), f".{digits + 1}f"), "in"
    return figure(mm, f".{digits}f"), "mm"


def differences(alignment: Alignment) -> tuple[Difference, ...]:
    """Return the stretches of the outline that differ by more than their uncertainty.

    What may be a shadow's rim is not compared: see `not_compared`.
    The largest comes first. Empty where no outlines were laid on each other. Of 67 drawn and
    aligned pairs of one part, at up to 30 degrees and with a height wrong by up to 1 mm, none
    said a difference. Of 19 drawn and aligned pairs of a worn and a new rotor, 29 mm high, in deep
    shade on one side, none said one but at the worn tip, nor where nobody said the height.
    """
    laid = alignment.outlines
    if laid is None:
        return ()
    old, new, flat = laid.old_px, laid.new_px, True
    if laid.old_mm is not None and laid.new_mm is not None:
        old, new, flat = laid.old_mm, laid.new_mm, False
    per_px = 1.0 if flat else (alignment.px_per_mm or 1.0)
    found = []
    # Further: walk round the new outline. Less far: round the old one.
    for side, walked, other in (("more", new, old), ("less", old, new)):
        found += _along(laid, side, walked, other, flat, per_px, alignment.size_u)
    return tuple(sorted(found, key=lambda one: -one.size_px))


def _along(
    laid: LaidOutlines,
    side: str,
    walked: NDArray[np.float64],
    other: NDArray[np.float64],
    flat: bool,
    per_px: float,
    size_u: float,
) -> list[Difference]:
    import math

    import numpy as np
    from scipy.ndimage import gaussian_filter1d

    more = side == "more"
    beyond, foot = _beyond(walked, other)
    step = float(np.median(np.hypot(*np.diff(walked, axis=0).T)))
    over = OVER if not flat else LEAST_LONG_PX
    smooth = gaussian_filter1d(beyond, max(0.3, over / step / 2.5), mode="wrap")
    u = laid.new_u if more else laid.old_u
    told = _told(laid, more, smooth, other[foot], other)
    walked_px, other_px = (laid.new_px, laid.old_px) if more else (laid.old_px, laid.new_px)
    middle = laid.old_px.mean(axis=0)
    found = []
    for run in _runs(told & (smooth > u), told & (smooth > 0.3 * u)):
        sure = run[smooth[run] > u[run]]
        if len(run) * step < (LEAST_LONG_PX if flat else LEAST_LONG):
            continue
        if len(sure) * step < (LEAST_LONG_PX / 2 if flat else LEAST_SURE):
            continue
        top = run[int(np.argmax(smooth[run] - u[run]))]
        size = float(smooth[top])
        doubt = math.hypot(float(u[top]), size_u * size)
        polygon = np.vstack([walked_px[run], other_px[foot[run]][::-1]])
        found.append(
            Difference(
                "more" if more else "less",
                None if flat else size,
                None if flat else doubt,
                size * per_px,
                tuple((float(x), float(y)) for x, y in polygon),
                _where(np.average(walked_px[run], axis=0, weights=smooth[run]) - middle),
            )
        )
    return found


def _told(
    laid: LaidOutlines,
    more: bool,
    beyond: NDArray[np.float64],
    feet: NDArray[np.float64],
    other: NDArray[np.float64],
) -> NDArray[np.bool_]:
    """Return where a distance is sure not to end in shade, (n,).

    Where nothing tells the other outline from shade it may have been led away, by about as much
    as the distance that is measured to it nearby.
    """
    import numpy as np
    from scipy.spatial import cKDTree

    own, others = laid.old_untold, laid.new_untold
    if own is None or others is None:
        return np.ones(len(beyond), bool)
    own, others = (others, own) if more else (own, others)
    if not others.any():
        return ~own
    near = np.asarray(cKDTree(other[others]).query(feet)[0])
    return np.asarray(~own & (near > beyond), np.bool_)


def _beyond(
    points: NDArray[np.float64], line: NDArray[np.float64]
) -> tuple[NDArray[np.float64], NDArray[np.intp]]:
    """Return how far points lie outside a closed line (inside below 0), and the nearest of its."""
    import cv2
    import numpy as np
    from scipy.spatial import cKDTree

    near = np.asarray(cKDTree(line).query(points)[1])
    best = np.full(len(points), np.inf)
    for ends in (near - 1, near):  # the two pieces that meet in the nearest point
        start = line[ends]
        along = line[(ends + 1) % len(line)] - start
        length = np.maximum((along**2).sum(axis=1), 1e-18)
        at = np.clip(((points - start) * along).sum(axis=1) / length, 0, 1)
        best = np.minimum(best, np.hypot(*(points - start - at[:, None] * along).T))
    middle = line.mean(axis=0)
    contour = (line - middle).astype(np.float32)[:, None]
    shifted = (points - middle).tolist()
    side = np.array([cv2.pointPolygonTest(contour, (x, y), False) for x, y in shifted])
    return np.where(side > 0, -best, best), near


def _runs(core: NDArray[np.bool_], around: NDArray[np.bool_]) -> list[NDArray[np.intp]]:
    """Return index runs of a closed line where `around` holds and `core` holds somewhere."""
    import numpy as np

    count = len(core)
    if not core.any():
        return []
    if around.all():
        return [np.arange(count)]
    first = int(np.argmin(around))  # begin where nothing is, so that no run is cut
    order = (np.arange(count) + first) % count
    held = around[order].astype(int)
    starts = np.flatnonzero(np.diff(held, prepend=0) == 1)
    ends = np.flatnonzero(np.diff(held, append=0) == -1) + 1
    runs = [order[start:end] for start, end in zip(starts, ends, strict=True)]
    return [run for run in runs if core[run].any()]


def side_numbers(arms: NDArray[np.float64]) -> NDArray[np.intp]:
    """Return the place in SIDES of each direction from the part's middle, (n, 2) pixels."""
    import numpy as np

    turns = np.degrees(np.arctan2(arms[:, 1], arms[:, 0]))
    return np.asarray(np.round(turns / 45).astype(np.intp) % len(SIDES))


def _where(arm: NDArray[np.float64]) -> str:
    return SIDES[int(side_numbers(arm[None])[0])]

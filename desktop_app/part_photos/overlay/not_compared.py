"""Which places of an outline were not compared, or only coarsely, and why."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Literal

from desktop_app.figures_shown import figure
from desktop_app.language import tr
from desktop_app.part_photos.overlay.alignment import Alignment, LaidOutlines
from desktop_app.part_photos.overlay.difference import SIDES, said_length, side_numbers

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

Reason = Literal["shade", "wall", "height"]

COARSE_MM = 1.0  # an expanded uncertainty beyond it finds no wear
LEAST_SHARE = 0.02  # of the outline; less is a point here and there
ALL = tr("all sides")
OF_A_SIDE = 0.25  # of a side's outline: so much of it makes the side one that is named

_WHY: dict[Reason, str] = {
    "shade": tr(
        "{share} of the outline was not compared (dotted, {sides}): there is shade on the "
        "paper beside it, and the part's end can't be told from that."
    ),
    "wall": tr(
        "{share} of the outline was compared only coarsely (dotted, {sides}): walls of the "
        "part show there. What is dotted is framed only where it differs by more than "
        "{least}."
    ),
    "height": tr(
        "{share} of the outline was compared only coarsely (dotted, {sides}), for want of "
        "a height. What is dotted is framed only where it differs by more than {least}."
    ),
}


@dataclass(frozen=True, slots=True)
class NotCompared:
    """`share` (0 to 1) of the old outline, on these `sides` of the part as the old photo shows it.

    With "shade" nothing is ever framed there; else what is larger than its uncertainty, which lies
    within `framed_above_mm` (on nine tenths of these places).
    """

    reason: Reason
    share: float
    sides: tuple[str, ...]
    framed_above_mm: tuple[float, float] | None = None

    def words(self, length_unit: str = "mm") -> str:
        """Return it as one sentence, lengths in "mm" or "inch"."""
        share = figure(self.share, ".0%")
        *some, last = self.sides
        sides = tr("{some} and {last}", some=", ".join(some), last=last) if some else last
        ends = (said_length(mm, length_unit, 1) for mm in self.framed_above_mm or (0.0, 0.0))
        (low, unit), (high, _) = ends
        least = (
            f"{high} {unit}"
            if low == high
            else tr("{low} to {high} {unit}", low=low, high=high, unit=unit)
        )
        where = (
            tr("on {sides}", sides=sides)
            if self.sides == (ALL,)
            else tr("at the {sides}", sides=sides)
        )
        return _WHY[self.reason].format(share=share, sides=where, least=least)


def not_compared(alignment: Alignment) -> tuple[NotCompared, ...]:
    """Return what of the outline was not compared, and what only coarsely; for cards alone.

    Without cards nothing has a size, and the whole is compared coarsely anyway.
    """
    import numpy as np

    laid = alignment.outlines
    if laid is None or laid.old_mm is None:
        return ()
    numbers = side_numbers(laid.old_px - laid.old_px.mean(axis=0))
    none = np.zeros(len(numbers), bool)
    untold = none if laid.old_untold is None else laid.old_untold
    coarse = ~untold & (laid.old_u > COARSE_MM)
    reason: Reason = "wall" if alignment.highest_mm is None else "height"
    found = []
    if untold.mean() >= LEAST_SHARE:
        found.append(NotCompared("shade", float(untold.mean()), _sides(untold, numbers)))
    if coarse.mean() >= LEAST_SHARE:
        low, high = (float(one) for one in np.percentile(laid.old_u[coarse], [5, 95]))
        sides = _sides(coarse, numbers)
        found.append(NotCompared(reason, float(coarse.mean()), sides, (low, high)))
    return tuple(found)


def dotted_places(laid: LaidOutlines) -> tuple[NDArray[np.bool_], NDArray[np.bool_]]:
    """Return where the old and the new outline, (n,) each, are not compared or only coarsely.

    They are drawn dotted. Nowhere without cards, where the whole is compared coarsely.
    """
    import numpy as np

    found = []
    for u, untold in ((laid.old_u, laid.old_untold), (laid.new_u, laid.new_untold)):
        none = np.zeros(len(u), bool)
        coarse = none if laid.old_mm is None else u > COARSE_MM
        found.append(coarse | (none if untold is None else untold))
    return found[0], found[1]


def _sides(there: NDArray[np.bool_], numbers: NDArray[np.intp]) -> tuple[str, ...]:
    """Return the names of the sides of which a good part is meant, the one with most at least."""
    import numpy as np

    of_each = np.bincount(numbers, minlength=len(SIDES))
    meant = np.bincount(numbers[there], minlength=len(SIDES))
    share = meant / np.maximum(of_each, 1)
    named = [name for name, part in zip(SIDES, share, strict=True) if part >= OF_A_SIDE]
    if len(named) == len(SIDES):
        return (ALL,)
    return tuple(named) or (SIDES[int(np.argmax(meant))],)

"""Three figures that a reader can check by hand: replacement minus removed is the difference.

Each rounded to its own doubt, they need not agree: 24.10 and 25.00 beside +0.89. So all three have
the decimals of the finest, and one more where the sum would not come out. Two roundings can still
leave one unit there; it goes to the difference, which is then off by less than a tenth of its
doubt's own last digit. The doubt of the difference has the decimals of the two it came from.
Verdicts come from what was never rounded.
"""

from __future__ import annotations

from dataclasses import dataclass

from desktop_app.parts_compared.shown_value import decimals_for, doubt_decimals
from desktop_app.parts_compared.uncertainty import wrapped


@dataclass(frozen=True, slots=True)
class Figure:
    """A value with its expanded uncertainty."""

    value: float
    expanded: float

    def times(self, factor: float) -> Figure:
        """Return it in another unit."""
        return Figure(self.value * factor, self.expanded * factor)


@dataclass(frozen=True, slots=True)
class ShownSum:
    """How many decimals the figures of a row have (None: each by its own doubt), what is shown as
    their difference, and how many decimals the doubt of that has (None: by itself)."""

    decimals: int | None = None
    difference: float | None = None
    doubt_decimals: int | None = None


def shown_sum(
    removed: Figure | None, replacement: Figure | None, difference: Figure | None
) -> ShownSum:
    """Return how the two sides and their difference are shown beside each other.

    Angles are checked around the full circle. What is no plain difference of the two (a size that
    still enters, beside a measured one) stays as it is.
    """
    figures = [one for one in (removed, replacement, difference) if one and one.expanded > 0]
    if difference is None or len(figures) < 3:
        return ShownSum(difference=difference.value if difference else None)
    *sides, own = (decimals_for(one.expanded) for one in figures)
    least, off = max(*sides, own), doubt_decimals(difference.expanded, max(sides))
    for decimals in (least, least + 1):
        old, new, between = (round(one.value, decimals) for one in figures)
        left, unit = wrapped(new - old - between), 10.0**-decimals
        if abs(left) < unit / 2:
            return ShownSum(decimals, difference.value, off)
    if abs(left) < 1.5 * unit:
        return ShownSum(decimals, between + left, off)
    return ShownSum(least, difference.value, off)

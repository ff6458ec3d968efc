"""What a dimension's drawing shows: two values with their intervals and the allowed band."""

from __future__ import annotations

from dataclasses import dataclass

from desktop_app.language import tr
from desktop_app.parts_compared.comparison import DimensionComparison, SideValue
from desktop_app.parts_compared.in_shop_unit import shop_unit
from desktop_app.parts_compared.part_kinds.part_kind import Span
from desktop_app.parts_compared.shown_sum import Figure, shown_sum
from desktop_app.parts_compared.shown_value import amount, doubt


@dataclass(frozen=True, slots=True)
class DrawnValues:
    """Both sides, the doubt of their difference, and the band for the replacement's value."""

    label: str
    unit: str
    role: str
    removed: Figure | None
    replacement: Figure | None
    difference_doubt: float | None
    band: Span | None
    decimals: int | None = None  # of both values in words, so that they agree with their difference

    def edges(self) -> tuple[float, ...]:
        """Return every value that the axis must hold."""
        sides = [one for one in (self.removed, self.replacement) if one is not None]
        ends = [end for end in self.band or () if end is not None]
        low = [one.value - one.expanded for one in sides]
        return (*low, *(one.value + one.expanded for one in sides), *ends)

    def words(self) -> str:
        """Say the drawing in words."""
        if self.removed is None and self.replacement is None:
            return tr("{label}: nothing measured yet.", label=self.label)
        said = [
            f"{name} {self.said(one)}{doubt(one.expanded)}"
            for name, one in ((tr("removed"), self.removed), (tr("replacement"), self.replacement))
            if one is not None
        ]
        if self.band is not None:
            said.append(_allowed_words(*self.band, self.unit))
        return f"{self.label}: {'; '.join(said)}."

    def legend(self) -> str:
        """Say what the marks, lines and hatches of the drawing are."""
        said = [tr("◆ is the removed part, ● the replacement.")]
        on_axis = self.role not in ("count", "orientation")
        if on_axis and any(
            one is not None and one.expanded > 0 for one in (self.removed, self.replacement)
        ):
            said.append(tr("The line through a mark is its ±."))
        if on_axis and self.difference_doubt is not None and self.replacement is not None:
            said.append(tr("The thick line is how well the difference is known."))
        if self.band is not None and self.role != "count":
            said.append(tr("Hatched is where the replacement may lie."))
        return " ".join(said)

    def said(self, one: Figure) -> str:
        """Return the value of a side with its unit."""
        return amount(one.value, self.unit, one.expanded, self.decimals)


def drawn_values(one: DimensionComparison, length_unit: str) -> DrawnValues | None:
    """Return what is drawn of a compared dimension; None for words, which have no picture.

    The band is where the replacement's value may lie: beside the removed value, or for the role
    `limit` between the maker's limits.
    """
    if one.role == "word":
        return None
    unit, factor = shop_unit(one.unit, length_unit)
    old, new = (_drawn(side, factor) for side in (one.removed, one.replacement))
    between = one.between.times(factor) if one.between else None
    return DrawnValues(
        one.label,
        unit,
        one.role,
        old,
        new,
        between.expanded if between else None,
        _band(one, old, factor),
        shown_sum(old, new, between).decimals,
    )


def _drawn(side: SideValue | None, factor: float) -> Figure | None:
    seen = side.figure if side else None
    return seen.times(factor) if seen else None


def _band(one: DimensionComparison, old: Figure | None, factor: float) -> Span | None:
    if one.allowed is None or (one.role != "limit" and old is None):
        return None
    base = 0.0 if one.role == "limit" or old is None else old.value
    low, high = one.allowed
    return (
        None if low is None else base + low * factor,
        None if high is None else base + high * factor,
    )


def _allowed_words(low: float | None, high: float | None, unit: str) -> str:
    if low is not None and high is not None:
        return tr("allowed from {low} to {high}", low=_end(low, unit), high=_end(high, unit))
    if low is not None:
        return tr("allowed from {low}", low=_end(low, unit))
    return tr("allowed") if high is None else tr("allowed to {high}", high=_end(high, unit))


def _end(value: float, unit: str) -> str:
    return amount(float(f"{value:.5g}"), unit)

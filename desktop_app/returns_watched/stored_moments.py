"""Kept moments, read as days and as numbers that stand for the times of day."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, TypeAlias

from desktop_app.returns_watched.many_visits.visit_columns import NO_DAY
from desktop_app.shop_record.kept_value import kept_day, row_place
from desktop_app.shop_record.trouble import ShopDamaged

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Whole: TypeAlias = NDArray[np.int32]


@dataclass(frozen=True, slots=True)
class MomentColumns:
    """Moments (n,): the day, NO_DAY where there is none, and what tells the order within a day."""

    day: Whole
    time: Whole


class _OrdinalDays(dict[str, int]):
    """Days as `date.toordinal` counts them, by the text that a kept moment begins with."""

    def __missing__(self, at: str) -> int:
        self[at] = day = kept_day(at).toordinal()
        return day


class _Times(dict[str, int]):
    """A number for each time of day, in the order of first mention."""

    def __missing__(self, at: str) -> int:
        self[at] = number = len(self)
        return number


class Days:
    """Reads kept moments as a day and a number for the time, whose text the number stands for."""

    def __init__(self) -> None:
        self._days = _OrdinalDays()
        self._times = _Times()

    def of(
        self, moments: Sequence[str | None], table: str, ids: Sequence[int]
    ) -> tuple[list[int], list[int]]:
        """Return the days of kept moments, NO_DAY where there is none, and the times' numbers.

        A ShopDamaged names the row of the table that holds what is no moment.
        """
        times = self._times
        if moments.count(None) == len(moments):
            return [NO_DAY] * len(moments), [0] * len(moments)
        found = self.alone(moments, table, ids)
        return found, [0 if at is None else times[at[10:]] for at in moments]

    def alone(self, moments: Sequence[str | None], table: str, ids: Sequence[int]) -> list[int]:
        """Return the days as `of` does, where no time of day matters."""
        days = self._days
        try:
            return [NO_DAY if at is None else days[at[:10]] for at in moments]
        except ShopDamaged:
            for row, at in zip(ids, moments, strict=True):
                if at is not None:
                    kept_day(at, row_place(table, row))  # names the whole of what is damaged
            raise

    def ranks(self) -> Whole:
        """Return by number where each time stands in the order of the texts."""
        import numpy as np

        ranks = np.zeros(max(len(self._times), 1), dtype=np.int32)
        for rank, text in enumerate(sorted(self._times)):
            ranks[self._times[text]] = rank
        return ranks

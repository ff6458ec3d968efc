"""What the photo bench asks of the pair it works for: which dimensions a mark can be read as."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, NamedTuple, Protocol

from desktop_app.part_photos.marks.mark import MarkType

if TYPE_CHECKING:
    from desktop_app.shop_record.deed import Deed


class BenchDimension(NamedTuple):
    """One dimension of the part: its name in the record, its label, unit, and the mark for it.

    `there` is what the pair has read of it on this side, such as "26.90 ± 0.05 mm by calliper".
    """

    name: str
    label: str
    unit: str
    mark_type: MarkType
    there: str = ""


class BenchHeight(NamedTuple):
    """A reading of the part that may be a height above the card: the range it lies in, mm."""

    label: str
    value_mm: float
    half_width_mm: float


class BenchReadings(Protocol):
    """The readings of one pair; a side is "removed" or "replacement"."""

    def dimensions(self, side: str) -> Sequence[BenchDimension]:
        """Return the dimensions that a mark on a photo of this side can be the reading of."""
        ...

    def heights(self, side: str) -> Sequence[BenchHeight]:
        """Return the lengths read of this side's part that may be a height above the card."""
        ...

    def take(self, mark_id: int, side: str, dimension: str) -> None:
        """Make a mark the reading of a dimension, as a deed; a refusal is told at the desk."""
        ...

    def let_go(self, mark_id: int) -> None:
        """Let a mark be no reading of the pair any more, as a deed; the mark stays."""
        ...

    def taken(self, mark_id: int) -> str | None:
        """Return in words which reading a mark is, or None."""
        ...

    def follow(self, deed: Deed, mark_id: int) -> None:
        """Let the readings from a mark say what it says now, within the deed that moved it."""
        ...

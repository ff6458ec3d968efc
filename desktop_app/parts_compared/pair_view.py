"""A pair of parts as a page shows it: what was written, read, seen and photographed."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from desktop_app.language import tr
from desktop_app.parts_compared.comparison import PairComparison
from desktop_app.parts_compared.decision import CONFIDENCE
from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.parts_compared.pair_verdict import compare
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.reading import (
    ConditionSeen,
    Explanation,
    MakerLimit,
    Reading,
    Side,
)

# Where a replacement comes from: the one question about it that must be answered. As it is kept,
# and as it is shown.
ORIGINS = (
    ("new, vehicle maker's", tr("new, from the vehicle's maker")),
    ("new, other maker's", tr("new, from another maker")),
    ("reman", tr("remanufactured")),
    ("rebuilt here", tr("rebuilt in this shop")),
    ("used", tr("used")),
    ("customer's own", tr("brought by the customer")),
)


@dataclass(frozen=True, slots=True)
class PhotoShown:
    """A photo of one side in one view: the row of the link, the photo, its file's hash."""

    link_id: int
    photo_id: int
    sha256: str
    side: Side
    view: str
    name: str
    note: str


@dataclass(frozen=True, slots=True)
class PairView:
    """One pair; `typed` holds the readings as typed, by (dimension, side).

    `marks` holds the mark that each of them was taken from, where one of them was.
    """

    id: int
    job_id: int
    part_kind: str
    position: str
    origin: str | None
    supplier: str
    lot: str
    number_removed: str
    number_on_box: str
    number_on_part: str
    price_cents: int | None
    fate: str
    note_removed: str
    note_replacement: str
    fitted: bool
    readings: tuple[Reading, ...]
    typed: Mapping[tuple[str, Side], tuple[str, ...]]
    instruments_used: Mapping[tuple[str, Side], str]
    conditions: tuple[ConditionSeen, ...]
    explained: tuple[Explanation, ...]
    limits: tuple[MakerLimit, ...]
    photos: tuple[PhotoShown, ...]
    marks: Mapping[tuple[str, Side], tuple[int | None, ...]] = field(default_factory=dict)

    def terms(self, side: Side) -> tuple[str, ...]:
        """Return the condition terms seen on one side."""
        return next((seen.terms for seen in self.conditions if seen.side == side), ())

    def tool_of_typed(self, dimension: str, side: Side) -> str | None:
        """Return the instrument of what was typed on a side; None where nothing was typed."""
        marks = self.marks.get((dimension, side))
        if marks and all(one is not None for one in marks):
            return None
        return self.instruments_used.get((dimension, side))

    def photo(self, side: Side, view: str) -> PhotoShown | None:
        """Return the newest photo of a side in a view."""
        fitting = [p for p in self.photos if p.side == side and p.view == view]
        return fitting[-1] if fitting else None


def judge(
    pair: PairView,
    kind: PartKind,
    drawer: Mapping[str, Instrument],
    confidence: float = CONFIDENCE,
) -> PairComparison:
    """Compare the two parts of a pair with the shop's own instruments."""
    return compare(
        kind, pair.readings, pair.conditions, drawer, pair.explained, pair.limits, confidence
    )

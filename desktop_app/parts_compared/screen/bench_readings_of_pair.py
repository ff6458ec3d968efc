"""The readings of one pair, as the photo bench asks for them."""

from __future__ import annotations

from collections.abc import Sequence

from desktop_app.part_photos.bench_readings import BenchDimension, BenchHeight
from desktop_app.parts_compared import photo_reading_actions as actions
from desktop_app.parts_compared.in_shop_unit import SPOKEN_UNITS
from desktop_app.parts_compared.mark_for_dimension import mark_for
from desktop_app.parts_compared.pair_view import judge
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.reading import SIDES, Side
from desktop_app.parts_compared.stored_pairs import drawer, read_pair
from desktop_app.parts_compared.stored_photo_readings import readings_from_mark
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_window.desk import Desk


class BenchReadingsOfPair:
    """Answers the photo bench (its BenchReadings) for one pair of a kind."""

    def __init__(self, desk: Desk, pair_id: int, kind: PartKind) -> None:
        self._desk = desk
        self._pair_id = pair_id
        self._kind = kind

    def dimensions(self, side: str) -> Sequence[BenchDimension]:
        """Return the dimensions that a mark can be the reading of, as the kind lists them."""
        return [
            BenchDimension(one.name, one.label, SPOKEN_UNITS.get(one.unit, one.unit), mark)
            for one in self._kind.dimensions
            if (mark := mark_for(one)) is not None
        ]

    def heights(self, side: str) -> Sequence[BenchHeight]:
        """Return the lengths that were read of this side's part, with their expanded doubt."""
        pair, tools = self._desk.ask(read_pair, self._pair_id), self._desk.ask(drawer)
        if pair is None or tools is None:
            return ()
        found = []
        for one in judge(pair, self._kind, tools).dimensions:
            read = one.removed if _side(side) == SIDES[0] else one.replacement
            if one.unit == "mm" and read is not None and isinstance(read.value, float):
                found.append(BenchHeight(one.label, read.value, read.expanded_uncertainty or 0.0))
        return found

    def take(self, mark_id: int, side: str, dimension: str) -> None:
        """Make a mark the reading of a dimension; a refusal is told at the desk."""
        known = self._kind.dimension(dimension)
        if known is not None:
            at = _side(side)
            self._desk.do(actions.take_reading_from_mark, self._pair_id, known, at, mark_id)

    def taken(self, mark_id: int) -> str | None:
        """Return in words which readings a mark is, or None."""
        rows = self._desk.ask(readings_from_mark, mark_id) or ()
        return "; ".join(f"{self._label(name)}, {side}" for name, side in rows) or None

    def follow(self, deed: Deed, mark_id: int) -> None:
        """Let the readings from a mark say what it says now."""
        actions.follow(deed, mark_id)

    def _label(self, name: str) -> str:
        known = self._kind.dimension(name)
        return name.replace("-", " ") if known is None else known.label


def _side(side: str) -> Side:
    return SIDES[0] if side == SIDES[0] else SIDES[1]

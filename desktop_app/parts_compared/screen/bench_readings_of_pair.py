"""The readings of one pair, as the photo bench asks for them."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence

from desktop_app.language import tr
from desktop_app.part_photos.bench_readings import BenchDimension, BenchHeight
from desktop_app.part_photos.mark_words import value_words
from desktop_app.parts_compared import photo_reading_actions as actions
from desktop_app.parts_compared.comparison import DimensionComparison, SideValue
from desktop_app.parts_compared.heights_read import may_be_height
from desktop_app.parts_compared.in_shop_unit import SPOKEN_UNITS
from desktop_app.parts_compared.instruments.instrument import tool_words
from desktop_app.parts_compared.instruments.photo_marks import PHOTO
from desktop_app.parts_compared.mark_for_dimension import mark_for
from desktop_app.parts_compared.mark_let_go_actions import let_mark_go
from desktop_app.parts_compared.pair_view import judge
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.reading import SIDES, Side
from desktop_app.parts_compared.stored_pairs import drawer, read_pair
from desktop_app.parts_compared.stored_photo_readings import readings_from_mark
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_window.desk import Desk


class BenchReadingsOfPair:
    """Answers the photo bench (its BenchReadings) for one pair.

    `kinds` gives the shop's kinds as they are now. Where the pair's kind is gone, nothing can be
    taken, but readings that were taken still follow their marks.
    """

    def __init__(
        self, desk: Desk, pair_id: int, kinds: Callable[[], Mapping[str, PartKind]]
    ) -> None:
        self._desk = desk
        self._pair_id = pair_id
        self._kinds = kinds
        pair = desk.ask(read_pair, pair_id)
        self._named = pair.part_kind if pair is not None else ""

    def dimensions(self, side: str) -> Sequence[BenchDimension]:
        """Return the dimensions that a mark can be the reading of, as the kind lists them."""
        kind = self._kind()
        if kind is None:
            return ()
        there = {one.name: self._words(one, read) for one, read in self._read(side)}
        return [
            BenchDimension(
                one.name,
                one.label,
                SPOKEN_UNITS.get(one.unit, one.unit),
                mark,
                there.get(one.name, ""),
            )
            for one in kind.dimensions
            if (mark := mark_for(one)) is not None
        ]

    def heights(self, side: str) -> Sequence[BenchHeight]:
        """Return what was read of this side's part that may be a height, with its expanded doubt.

        A length from a photo is none of them: it depends on a height itself.
        """
        kind, found = self._kind(), []
        for one, read in self._read(side):
            known = kind.dimension(one.name) if kind is not None else None
            if known is None or not may_be_height(known) or read.instrument == PHOTO:
                continue
            if isinstance(read.value, float):
                found.append(BenchHeight(one.label, read.value, read.expanded_uncertainty or 0.0))
        return found

    def take(self, mark_id: int, side: str, dimension: str) -> None:
        """Make a mark the reading of a dimension; a refusal is told at the desk."""
        kind = self._kind()
        known = kind.dimension(dimension) if kind is not None else None
        if known is not None:
            at = _side(side)
            self._desk.do(actions.take_reading_from_mark, self._pair_id, known, at, mark_id)

    def let_go(self, mark_id: int) -> None:
        """Let a mark be no reading of the pair any more; the mark stays."""
        self._desk.do(let_mark_go, self._pair_id, mark_id)

    def taken(self, mark_id: int) -> str | None:
        """Return in words which readings a mark is, or None; as read before where it stayed so."""
        found = []
        for one in self._desk.ask(readings_from_mark, mark_id) or ():
            words = f"{self._label(one.dimension)}, {tr(one.side)}"
            found.append(
                tr("{reading} (as it was read before)", reading=words) if one.as_before else words
            )
        return "; ".join(found) or None

    def follow(self, deed: Deed, mark_id: int) -> None:
        """Let the readings from a mark say what it says now."""
        actions.follow(deed, mark_id)

    def _kind(self) -> PartKind | None:
        return self._kinds().get(self._named)

    def _read(self, side: str) -> Iterator[tuple[DimensionComparison, SideValue]]:
        """Give each dimension that was read on this side, with what counts of it."""
        kind = self._kind()
        pair, tools = self._desk.ask(read_pair, self._pair_id), self._desk.ask(drawer)
        if pair is None or tools is None or kind is None:
            return
        for one in judge(pair, kind, tools).dimensions:
            read = one.removed if _side(side) == SIDES[0] else one.replacement
            if read is not None:
                yield one, read

    def _words(self, one: DimensionComparison, read: SideValue) -> str:
        """Return what was read: "26.90 ± 0.05 mm by calliper"."""
        value = read.value
        if isinstance(value, float):
            unit = "" if one.unit == "n" else one.unit
            doubt, shop = read.expanded_uncertainty, self._desk.rules.length_unit
            value = value_words(value, unit, doubt, shop)
        return (
            tr("{value} by {instrument}", value=value, instrument=tool_words(read.instrument))
            if read.instrument
            else value
        )

    def _label(self, name: str) -> str:
        kind = self._kind()
        known = kind.dimension(name) if kind is not None else None
        return name.replace("-", " ") if known is None else known.label


def _side(side: str) -> Side:
    return SIDES[0] if side == SIDES[0] else SIDES[1]

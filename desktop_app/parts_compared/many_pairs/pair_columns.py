"""Many pairs of one part kind, laid out in columns: one row a reading, whatever the pair."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import repeat
from typing import TYPE_CHECKING, Protocol

from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.photo_doubt import PhotoDoubt
from desktop_app.parts_compared.reading import (
    SIDES,
    ConditionSeen,
    Explanation,
    MakerLimit,
    Reading,
)

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

NO_WORD = -1
NO_MARK = -1
STRANGE = -1  # the dimension of a reading that the kind doesn't have


class PairSeen(Protocol):
    """What is needed of one pair to judge it."""

    @property
    def readings(self) -> Sequence[Reading]:
        """What was measured on both sides."""

    @property
    def conditions(self) -> Sequence[ConditionSeen]:
        """What was seen on both sides."""

    @property
    def explained(self) -> Sequence[Explanation]:
        """Which differences are in order, and by whose word."""

    @property
    def limits(self) -> Sequence[MakerLimit]:
        """The maker's limits."""


@dataclass(frozen=True, slots=True)
class ReadingColumns:
    """Readings, one value a row, in the dimension's unit; all columns have one length.

    `pair` counts the pairs from 0, `dimension` the kind's dimensions from 0 (STRANGE: none of
    them), `side` is a place in SIDES. A word is a place in `words` (NO_WORD: the row holds a
    number), an instrument one in `instruments`, where None is what the kind suggests. `mark` is a
    place in `doubts` for what was taken from a mark on a photo (NO_MARK: it wasn't).
    """

    pair: NDArray[np.int64]
    dimension: NDArray[np.int64]
    side: NDArray[np.int64]
    value: NDArray[np.float64]
    word: NDArray[np.int64]
    instrument: NDArray[np.int64]
    mark: NDArray[np.int64]
    words: tuple[str, ...] = ()
    instruments: tuple[str | None, ...] = (None,)
    doubts: tuple[PhotoDoubt, ...] = ()

    def only(self, rows: NDArray[np.bool_]) -> ReadingColumns:
        """Return the rows that are marked."""
        return ReadingColumns(
            self.pair[rows], self.dimension[rows], self.side[rows], self.value[rows],
            self.word[rows], self.instrument[rows], self.mark[rows], self.words,
            self.instruments, self.doubts,
        )  # fmt: skip


@dataclass(frozen=True, slots=True)
class PairColumns:
    """So many pairs of one kind: their readings, and the little that is known beside them.

    `new_terms` are (pair, condition term) of replacements, `explained` are (pair, dimension),
    `limits` are (pair, dimension, at least, at most) with None for an open end. A later limit of
    the same dimension takes the place of an earlier one.
    """

    pairs: int
    readings: ReadingColumns
    new_terms: Sequence[tuple[int, str]] = ()
    explained: Sequence[tuple[int, int]] = ()
    limits: Sequence[tuple[int, int, float | None, float | None]] = ()


class Places:
    """Gives each different value the next place, so that a column holds small numbers."""

    def __init__(self) -> None:
        """Begin without values."""
        self.found: dict[str | None, int] = {}

    def __call__(self, value: str | None) -> int:
        """Return the place of a value."""
        return self.found.setdefault(value, len(self.found))


def columns_of(kind: PartKind, pairs: Sequence[PairSeen]) -> PairColumns:
    """Lay out pairs of one kind in columns, in their order."""
    import numpy as np

    place = {one.name: number for number, one in enumerate(kind.dimensions)}
    words, tools = Places(), Places()
    doubts: list[PhotoDoubt] = []
    rows = [
        (
            number,
            place.get(one.dimension, STRANGE),
            SIDES.index(one.side),
            NO_WORD if not isinstance(value, str) else words(value),
            tools(one.instrument or None),
            NO_MARK if doubt is None else _placed(doubt, doubts),
            0.0 if isinstance(value, str) else value,
        )
        for number, pair in enumerate(pairs)
        for one in pair.readings
        for value, doubt in zip(one.values, one.photo or repeat(None), strict=False)
    ]
    table = np.array([row[:6] for row in rows], dtype=np.int64).reshape(-1, 6).T
    values = np.array([row[6] for row in rows], dtype=np.float64)
    readings = ReadingColumns(
        table[0], table[1], table[2], values, table[3], table[4], table[5],
        tuple(word or "" for word in words.found), tuple(tools.found), tuple(doubts),
    )  # fmt: skip
    return PairColumns(
        len(pairs),
        readings,
        [
            (number, term)
            for number, pair in enumerate(pairs)
            for seen in pair.conditions
            if seen.side == SIDES[1]
            for term in seen.terms
        ],
        [
            (number, place[one.dimension])
            for number, pair in enumerate(pairs)
            for one in pair.explained
            if one.dimension in place
        ],
        [
            (number, place[one.dimension], one.at_least, one.at_most)
            for number, pair in enumerate(pairs)
            for one in pair.limits
            if one.dimension in place
        ],
    )


def _placed(doubt: PhotoDoubt, doubts: list[PhotoDoubt]) -> int:
    doubts.append(doubt)
    return len(doubts) - 1

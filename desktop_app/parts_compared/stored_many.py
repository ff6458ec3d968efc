"""All pairs of the record laid out in columns, and the verdicts on them as the kinds stand now."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from sqlalchemy import Connection, case, select

from desktop_app.parts_compared.comparison import PairVerdict
from desktop_app.parts_compared.decision import CONFIDENCE
from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.parts_compared.many_pairs.judge_many import judge_many
from desktop_app.parts_compared.many_pairs.pair_columns import (
    NO_MARK,
    NO_WORD,
    STRANGE,
    PairColumns,
    ReadingColumns,
)
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.photo_doubt import PhotoDoubt
from desktop_app.parts_compared.reading import SIDES
from desktop_app.parts_compared.stored import (
    Explanation,
    MakerLimit,
    Pair,
    PartCondition,
    PhotoReading,
    Reading,
)
from desktop_app.parts_compared.stored_photo_readings import kept_doubt

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Numbers = NDArray[np.int64]

#: So many pairs are held in memory at a time.
PAIRS_AT_ONCE = 5_000
ROWS_AT_ONCE = 2_000


@dataclass(frozen=True, slots=True)
class KindPairs:
    """Some pairs of one kind: their ids, ascending, and what was seen of them in that order."""

    kind: PartKind
    ids: tuple[int, ...]
    columns: PairColumns


def verdicts_of_record(
    connection: Connection,
    kinds: Mapping[str, PartKind],
    drawer: Mapping[str, Instrument],
    confidence: float = CONFIDENCE,
    only: str | None = None,
    of: Collection[int] | None = None,
) -> dict[int, PairVerdict]:
    """Judge every pair of the record, or those of the one kind; pair id -> verdict.

    Pairs whose kind isn't among `kinds` are left out. `of` holds the ids of the pairs that are
    wanted, all for None.
    """
    verdicts: dict[int, PairVerdict] = {}
    for some in pairs_by_kind(connection, kinds, only, of):
        judged = judge_many(some.kind, some.columns, drawer, confidence)
        verdicts.update(zip(some.ids, judged.verdicts(), strict=True))
    return dict(sorted(verdicts.items()))


def pairs_by_kind(
    connection: Connection,
    kinds: Mapping[str, PartKind],
    only: str | None = None,
    of: Collection[int] | None = None,
) -> Iterator[KindPairs]:
    """Give the pairs of the record kind by kind, PAIRS_AT_ONCE in six statements.

    One kind may come several times, each time with other pairs. `only` is the id of the one kind
    that is wanted, `of` the ids of the pairs.
    """
    wanted = select(Pair.id, Pair.part_kind).order_by(Pair.id)
    if only is not None:
        wanted = wanted.where(Pair.part_kind == only)
    found = connection.execute(wanted)
    pairs = [(p, kind) for p, kind in found if kind in kinds and (of is None or p in of)]
    for start in range(0, len(pairs), PAIRS_AT_ONCE):
        some = pairs[start : start + PAIRS_AT_ONCE]
        seen = _Seen.read(connection, (some[0][0], some[-1][0]), only)
        by_kind: dict[str, list[int]] = defaultdict(list)
        for pair, kind in some:
            by_kind[kind].append(pair)
        for kind, ids in sorted(by_kind.items()):
            yield KindPairs(kinds[kind], tuple(ids), seen.columns(kinds[kind], ids))


@dataclass(frozen=True, slots=True)
class _Seen:
    """What is kept of pairs within a range of ids; names, words and tools are places in tuples."""

    pair: Numbers
    name: Numbers
    side: Numbers
    value: NDArray[np.float64]
    word: Numbers
    tool: Numbers
    mark: Numbers
    names: tuple[str, ...]
    words: tuple[str, ...]
    tools: tuple[str | None, ...]
    doubts: tuple[PhotoDoubt, ...]
    terms: Mapping[int, Sequence[str]]
    explained: Mapping[int, Sequence[str]]
    limits: Mapping[int, Sequence[tuple[str, float | None, float | None]]]

    @classmethod
    def read(cls, connection: Connection, ids: tuple[int, int], only: str | None) -> _Seen:
        """Read the rows of the pairs from the first to the last id."""
        import numpy as np

        asked = select(
            Reading.pair_id,
            Reading.dimension,
            case((Reading.side == SIDES[0], 0), else_=1),
            Reading.instrument,
            Reading.value,
            Reading.word,
            Reading.id,
        )
        doubts = _doubts(connection, ids, only)
        unsure = [reading for reading, doubt in doubts.items() if doubt is None]
        asked = asked.where(Reading.id.not_in(unsure))  # nothing tells how far these may be off
        rows = connection.execute(_within(asked, Reading, ids, only))
        pair, name, side, tool, value, word, row = _in_columns(rows)
        name_places, names = _places(name)
        tool_places, tools = _places(tool)
        numbers = np.array(value, dtype=np.float64)  # not a number where there is a word
        spoken = np.flatnonzero(np.isnan(numbers))
        word_places, words = _places(word[one] or "" for one in spoken.tolist())
        all_words = np.full(len(word), NO_WORD)
        all_words[spoken] = word_places
        marks, marked = _marks(row, doubts)
        return cls(
            np.array(pair, dtype=np.int64),
            name_places,
            np.array(side, dtype=np.int64),
            np.nan_to_num(numbers),
            all_words,
            tool_places,
            marks,
            names,
            words,
            tuple(one or None for one in tools),
            marked,
            _terms(connection, ids, only),
            _explained(connection, ids, only),
            _limits(connection, ids, only),
        )

    def columns(self, kind: PartKind, ids: Sequence[int]) -> PairColumns:
        """Lay out the pairs of these ids (ascending), all of that kind."""
        import numpy as np

        place = {one.name: number for number, one in enumerate(kind.dimensions)}
        places = np.array([place.get(one, STRANGE) for one in self.names] + [STRANGE])
        known = np.array(ids)
        at = np.searchsorted(known, self.pair).clip(max=len(ids) - 1)
        rows = np.flatnonzero(known[at] == self.pair)
        readings = ReadingColumns(
            at[rows], places[self.name[rows]], self.side[rows], self.value[rows],
            self.word[rows], self.tool[rows], self.mark[rows], self.words, self.tools,
            self.doubts,
        )  # fmt: skip
        numbered = list(enumerate(ids))
        return PairColumns(
            len(ids),
            readings,
            [(number, term) for number, pair in numbered for term in self.terms.get(pair, ())],
            [
                (number, place[name])
                for number, pair in numbered
                for name in self.explained.get(pair, ())
                if name in place
            ],
            [
                (number, place[name], low, high)
                for number, pair in numbered
                for name, low, high in self.limits.get(pair, ())
                if name in place
            ],
        )


def _doubts(
    connection: Connection, ids: tuple[int, int], only: str | None
) -> dict[int, PhotoDoubt | None]:
    """Return the doubt of each reading from a mark, by the reading; None where it is unreadable."""
    asked = select(Reading.id, PhotoReading.doubt).select_from(PhotoReading).join(Reading)
    found: Any = connection.execute(_within(asked, Reading, ids, only))
    return {reading: kept_doubt(text) for reading, text in found}


def _marks(
    rows: Sequence[int], doubts: Mapping[int, PhotoDoubt | None]
) -> tuple[Numbers, tuple[PhotoDoubt, ...]]:
    """Return the place of each reading's doubt where it came from a mark, and those doubts."""
    import numpy as np

    kept = {reading: doubt for reading, doubt in doubts.items() if doubt is not None}
    places = np.full(len(rows), NO_MARK)
    at = np.flatnonzero(np.isin(rows, list(kept))) if kept else np.arange(0)
    places[at] = np.arange(len(at))
    return places, tuple(kept[rows[one]] for one in at.tolist())


def _terms(connection: Connection, ids: tuple[int, int], only: str | None) -> dict[int, list[str]]:
    """Return the terms for the state of each replacement."""
    asked = select(PartCondition.pair_id, PartCondition.term).where(PartCondition.side == SIDES[1])
    found: dict[int, list[str]] = defaultdict(list)
    rows: Any = connection.execute(_within(asked, PartCondition, ids, only))
    for pair, term in rows:
        found[pair].append(term)
    return found


def _explained(
    connection: Connection, ids: tuple[int, int], only: str | None
) -> dict[int, list[str]]:
    asked = select(Explanation.pair_id, Explanation.dimension)
    found: dict[int, list[str]] = defaultdict(list)
    rows: Any = connection.execute(_within(asked, Explanation, ids, only))
    for pair, name in rows:
        found[pair].append(name)
    return found


def _limits(
    connection: Connection, ids: tuple[int, int], only: str | None
) -> dict[int, list[tuple[str, float | None, float | None]]]:
    asked = select(MakerLimit.pair_id, MakerLimit.dimension, MakerLimit.low, MakerLimit.high)
    found: dict[int, list[tuple[str, float | None, float | None]]] = defaultdict(list)
    rows: Any = connection.execute(_within(asked, MakerLimit, ids, only))
    for pair, name, low, high in rows:
        found[pair].append((name, low, high))
    return found


def _within(asked: Any, table: Any, ids: tuple[int, int], only: str | None) -> Any:
    """Narrow a question down to the pairs from the first to the last id, in their order."""
    narrow = asked.where(table.pair_id.between(*ids)).order_by(table.pair_id, table.id)
    if only is None:
        return narrow
    return narrow.join(Pair, Pair.id == table.pair_id).where(Pair.part_kind == only)


def _in_columns(rows: Any) -> list[list[Any]]:
    """Return the seven columns of many rows; rows are let go of as soon as they are read."""
    columns: list[list[Any]] = [[] for _ in range(7)]
    for some in rows.partitions(ROWS_AT_ONCE):
        for column, values in zip(columns, zip(*some, strict=True), strict=True):
            column.extend(values)
    return columns


def _places(column: Iterable[str]) -> tuple[Numbers, tuple[str, ...]]:
    """Return each value's place among the different ones, and those."""
    import numpy as np

    values = list(column)
    different = tuple(dict.fromkeys(values))
    place = {value: number for number, value in enumerate(different)}
    return np.fromiter(map(place.__getitem__, values), np.int64, len(values)), different

"""What the repeats on each side of many pairs say: means and spreads in columns."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, TypeAlias

from desktop_app.parts_compared.looked_at import plain_word
from desktop_app.parts_compared.many_pairs.many_tools import UNKNOWN, Tools
from desktop_app.parts_compared.many_pairs.pair_columns import (
    NO_MARK,
    NO_WORD,
    PairColumns,
    ReadingColumns,
)
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.scatter_test import refuting_factor
from desktop_app.parts_compared.uncertainty import side_reading

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Column: TypeAlias = NDArray[np.float64]
    Marks: TypeAlias = NDArray[np.bool_]
    Numbers: TypeAlias = NDArray[np.int64]

LOOKED_AT = ("count", "word")
#: Within this share of a limit, rounding in the sums may decide.
_HAIR = 1e-9


@dataclass(frozen=True, slots=True)
class ManySides:
    """Each field by (dimension, side, pair); a count of 0 is a side without readings.

    `tool` is a place in Tools.instruments. `unknown` (an instrument that nothing is known of) and
    `unsure` (what columns can't settle beyond doubt) go by (dimension, pair). What was looked at
    has its lowest and highest word or count, and no spread. `share` is how much of the spread's
    variance comes from what the instrument usually scatters.
    """

    count: Numbers
    mean: Column
    least: Column
    most: Column
    spread: Column
    dof: Column
    share: Column
    tool: Numbers
    unknown: Marks
    unsure: Marks


@dataclass(frozen=True, slots=True)
class _Rows:
    """Readings as numbers; `group` is a place in (dimension, side, pair), `rank` their tool."""

    group: Numbers
    value: Column
    rank: Numbers


def sides_of(kind: PartKind, pairs: PairColumns, tools: Tools) -> ManySides:
    """Pool the readings of each side; what was read with several instruments is judged alone."""
    import numpy as np

    seen = pairs.readings
    if (seen.dimension < 0).any():
        seen = seen.only(seen.dimension >= 0)
    shape = (len(kind.dimensions), 2, pairs.pairs)
    rows = _rows(kind, seen, tools, pairs.pairs)
    unknown = np.zeros((shape[0], shape[2]), dtype=bool)
    lost = rows.rank == UNKNOWN
    unknown[seen.dimension[lost], seen.pair[lost]] = True
    unsure = np.zeros_like(unknown)
    # Marks on photos carry each its own doubt, shared or not: they are judged alone.
    strange = _of_another_sort(kind, seen) | (seen.mark != NO_MARK)
    unsure[seen.dimension[strange], seen.pair[strange]] = True

    tool = np.full(np.prod(shape), len(tools.instruments))
    np.minimum.at(tool, rows.group, rows.rank)
    finest = rows.rank == tool[rows.group]
    if not finest.all():
        # Which of several instruments count depends on both sides together.
        unsure[seen.dimension[~finest], seen.pair[~finest]] = True
        rows = _Rows(rows.group[finest], rows.value[finest], rows.rank[finest])
    value, turned, doubtful = _unwound(kind, rows, shape)
    rows = _Rows(rows.group, value, rows.rank)
    pooled = _pooled(rows, tool, tools)
    pooled.settle(rows, pooled.hair & ~turned, tool, tools)
    doubtful |= pooled.hair & turned
    unsure |= doubtful.reshape(shape).any(axis=1)
    return ManySides(
        pooled.count.reshape(shape),
        pooled.mean.reshape(shape),
        pooled.least.reshape(shape),
        pooled.most.reshape(shape),
        pooled.spread.reshape(shape),
        pooled.dof.reshape(shape),
        pooled.share.reshape(shape),
        tool.reshape(shape),
        unknown,
        unsure,
    )


def _rows(kind: PartKind, seen: ReadingColumns, tools: Tools, pairs: int) -> _Rows:
    """Turn words into numbers, equal for words that say the same, and find each tool."""
    import numpy as np

    plain = {word: number for number, word in enumerate(map(plain_word, seen.words))}
    codes = np.array([plain[plain_word(word)] for word in seen.words] + [0], dtype=np.float64)
    looked_at = np.array([one.role in LOOKED_AT for one in kind.dimensions], dtype=bool)
    last = len(tools.instruments)
    return _Rows(
        (seen.dimension * 2 + seen.side) * pairs + seen.pair,
        np.where(seen.word == NO_WORD, seen.value, codes[seen.word]),
        np.where(
            looked_at[seen.dimension], last, tools.of_reading[seen.dimension, seen.instrument]
        ),
    )


def _of_another_sort(kind: PartKind, seen: ReadingColumns) -> Marks:
    """Mark words where the dimension wants a number, and numbers where it wants a word."""
    import numpy as np

    worded = np.array([one.role == "word" for one in kind.dimensions], dtype=bool)
    marks: Marks = (seen.word != NO_WORD) != worded[seen.dimension]
    return marks | ~np.isfinite(seen.value)


def _unwound(
    kind: PartKind, rows: _Rows, shape: tuple[int, int, int]
) -> tuple[Column, Marks, Marks]:
    """Turn angles (degrees) to near their common direction.

    Also marks the groups that were turned, and among them those whose direction is in doubt.
    """
    import numpy as np

    size = int(np.prod(shape))
    doubtful = np.zeros(size, dtype=bool)
    turns = [one.unit == "deg" and one.role not in LOOKED_AT for one in kind.dimensions]
    angles = np.flatnonzero(np.repeat(turns, shape[1] * shape[2])[rows.group])
    least, most = _ends(rows.group[angles], rows.value[angles], size)
    wide = most - least >= 180
    if not wide.any():
        return rows.value, wide, doubtful
    angles = angles[wide[rows.group[angles]]]
    group, value = rows.group[angles], rows.value[angles]
    x = np.bincount(group, np.cos(np.radians(value)), size)
    y = np.bincount(group, np.sin(np.radians(value)), size)
    centre = np.degrees(np.arctan2(y, x))
    away = (value - centre[group] + 180.0) % 360.0 - 180.0
    doubtful[group[180.0 - np.abs(away) < 1e-6]] = True
    least, most = _ends(group, away, size)
    doubtful |= wide & ((np.hypot(x, y) < 1e-6) | (most - least < 1e-6))
    turned = rows.value.copy()
    turned[angles] = centre[group] + away
    return turned, wide, doubtful


def _ends(group: Numbers, value: Column, size: int) -> tuple[Column, Column]:
    """Return the least and the most of each group; infinite for a group without values."""
    import numpy as np

    least, most = np.full(size, np.inf), np.full(size, -np.inf)
    np.minimum.at(least, group, value)
    np.maximum.at(most, group, value)
    return least, most


@dataclass(slots=True)
class _Pooled:
    """What the repeats of each group say; `hair` marks where rounding may decide."""

    count: Numbers
    mean: Column
    least: Column
    most: Column
    spread: Column
    dof: Column
    share: Column
    hair: Marks

    def settle(self, rows: _Rows, alone: Marks, tool: Numbers, tools: Tools) -> None:
        """Work out the marked groups again, each by the rules for one side."""
        import numpy as np

        found: dict[int, list[float]] = {}
        mine = np.flatnonzero(alone[rows.group])
        for group, value in zip(rows.group[mine].tolist(), rows.value[mine].tolist(), strict=True):
            found.setdefault(group, []).append(value)
        for group, values in found.items():
            side = side_reading(values, tools.instruments[tool[group]])
            self.mean[group], self.spread[group] = side.mean, side.spread
            self.dof[group], self.share[group] = side.spread_dof, side.prior_share


def _pooled(rows: _Rows, tool: Numbers, tools: Tools) -> _Pooled:
    """Return mean and spread of each group (JCGM 100, 4.2), the spread with the usual one."""
    import numpy as np

    size = len(tool)
    count = np.bincount(rows.group, minlength=size)
    least, most = _ends(rows.group, rows.value, size)
    # About the least value, so that equal readings have a spread of exactly nothing.
    off = rows.value - least[rows.group]
    shift = np.bincount(rows.group, off, size) / count
    squares = np.bincount(rows.group, (off - shift[rows.group]) ** 2, size)
    spread = np.sqrt(squares / np.maximum(count - 1, 1))
    usual, known = (tools.figures(name)[tool] for name in ("usual_spread", "usual_dof"))
    measured = (tool >= 0) & (tool < len(tools.instruments)) & (count > 1)
    most_usual = _refuting(count, tool, measured, tools) * usual
    # Readings in steps may scatter just as much as sets the usual spread aside.
    near = _HAIR * most_usual + _HAIR / 100 * (np.abs(least) + np.abs(most))
    hair = measured & (most > least)
    hair &= (np.abs(spread - most_usual) <= near) | (spread < 1e-100)
    refuted = measured & (spread > most_usual)
    from_usual = np.where(refuted, 0.0, known * usual**2)
    extra = (count - 1).astype(np.float64)
    dof = extra + np.where(refuted, 0.0, known)
    squares = from_usual + extra * spread**2
    pooled = np.where(refuted, spread, np.sqrt(squares / np.where(dof > 0, dof, 1.0)))
    share = np.where(squares > 0, from_usual / np.where(squares > 0, squares, 1.0), 1.0)
    return _Pooled(count, least + shift, least, most, pooled, dof, share, hair)


def _refuting(count: Numbers, tool: Numbers, measured: Marks, tools: Tools) -> Column:
    """Return how many times the usual spread sets it aside, for each group that is measured."""
    import numpy as np

    factors = np.ones((len(tools.instruments) + 1, int(count.max(initial=0)) + 1))
    asked = np.zeros(factors.shape, dtype=bool)
    asked[tool[measured], count[measured]] = True
    for place, number in np.argwhere(asked).tolist():
        known = tools.instruments[place].usual_dof
        factors[place, number] = refuting_factor(number - 1, known)
    chosen: Column = factors[tool, count]
    return chosen

"""Columns as wide as their words ask, as narrow as the paper asks, and rows as high as they wrap.

A column's width counts digits of 7 pixels and 5 pixels of edge (ISO/IEC 29500-1, 18.3.1.13); a page
counts 96 pixels an inch.
"""

from __future__ import annotations

import itertools
from collections.abc import Iterable, Sequence
from datetime import date
from functools import lru_cache
from typing import NamedTuple

from desktop_app.figures_shown import figure
from desktop_app.returns_watched.share_words import share_words
from desktop_app.weekly_report.sheet_form import Cell, Column, Kind

SIZE = 10  # points of the letters
LEAST_SIZE = 7.5  # points; a sheet that is meant to be read is not printed smaller
WIDEST = 56  # digits; longer words wrap even where there is room
LEAST_WORDS = 13  # digits; a column of long words is not squeezed further
LINE, EDGE = 13, 4  # points: one line of a row, and what stands above and below
TALLEST = 400  # points; the format allows a row 409
_SIDE_MARGINS = 1.0  # inch, both together
_LANDSCAPE = {"Letter": 11.0, "A4": 11.69}  # inch
_HEIGHT = {"Letter": 8.5, "A4": 8.27}  # inch
_MARGINS_ABOVE_AND_BELOW = 1.3  # inch
_PIXELS_A_DIGIT, _CELL_EDGE, _INDENT = 7, 6, 9
_EM = SIZE / 72 * 96  # pixels
# Widths of a plain sans serif's letters in thousandths of its size (from memory, rounded).
_KNOWN = {
    letter: wide
    for wide, letters in (
        (222, "ijl'|"),
        (278, "ft.,:;!/\\I[] "),
        (333, 'r()-`"'),
        (500, "ckszxvyJ"),
        (611, "FTZ+<=>~"),
        (667, "ABEKPSVXY&"),
        (722, "CDHNRUw"),
        (778, "GOQ"),
        (840, "mM"),
        (944, "W%…→"),
        (1015, "@"),
    )
    for letter in letters
}
_LATIN, _CJK, _FIRST_CJK = 556, 1000, "\u2e80"
_DIGITS = str.maketrans("123456789", "000000000")
_WORDS: tuple[Kind, ...] = ("words", "long words")


class Asked(NamedTuple):
    """What a column asks for, in digits: the least, what it would like, how much of the room."""

    least: int
    wide: int
    share: int = 1


def room_on_paper(paper: str, pages_across: int = 1) -> int:
    """Return how many pixels of columns a landscape page takes at the least size of letters."""
    inches = (_LANDSCAPE[paper] - _SIDE_MARGINS) * pages_across
    return int(inches * 96 * SIZE / LEAST_SIZE)


def rows_on_paper(paper: str, wide: int) -> int:
    """Return how many rows of one line a landscape page takes that is `wide` pixels wide."""
    size = min(1.0, (_LANDSCAPE[paper] - _SIDE_MARGINS) * 96 / max(wide, 1))
    inches = _HEIGHT[paper] - _MARGINS_ABOVE_AND_BELOW
    return int(inches * 72 / size / row_height(1)) - 1  # the title is higher than one line


def pixels(width: int) -> int:
    """Return how wide a column of that many digits is."""
    return width * _PIXELS_A_DIGIT + 5


class _Widths(dict[str, int]):
    """The widths of letters; one that is not known is as wide as most are."""

    def __missing__(self, letter: str) -> int:
        return _LATIN if letter < _FIRST_CJK else _CJK


_width_of = _Widths(_KNOWN).__getitem__


def text_pixels(text: str) -> float:
    """Return about how wide a text is in one line."""
    return sum(map(_width_of, text)) * (_EM / 1000)


@lru_cache(maxsize=8192)
def lines_needed(text: str, width: int) -> int:
    """Return how many lines a text takes in a column of that many digits, broken between words."""
    room = pixels(width) - _CELL_EDGE - _INDENT
    return sum(_lines(line, room) for line in text.split("\n"))


def lines_in_rows(columns: Sequence[Sequence[Cell]], widths: Sequence[int]) -> list[int]:
    """Return how many lines the highest cell of each row takes, from the cells of each column."""
    high: list[Iterable[int]] = [itertools.repeat(1, max(map(len, columns), default=0))]
    for cells, width in zip(columns, widths, strict=False):
        texts = [cell for cell in set(cells) if isinstance(cell, str)]
        shapes = {shape: lines_needed(shape, width) for shape in _shapes(texts)}
        if max(shapes.values(), default=1) > 1:
            known: dict[Cell, int] = {text: shapes[text.translate(_DIGITS)] for text in texts}
            high.append([known.get(cell, 1) for cell in cells])
    return list(map(max, *high)) if high[1:] else list(high[0])


def row_height(lines: int) -> int:
    """Return the height of a row of so many lines, in points."""
    return min(lines * LINE + EDGE, TALLEST)


def printed_height(lines: int) -> float:
    """Return the height of a row as a file states it: so many whole pixels, in points."""
    return round(row_height(lines) * 4 / 3) * 3 / 4


def asked_widths(column: Column, cells: Sequence[Cell], sign: str = "") -> Asked:
    """Return what a column of these cells asks for; long words ask twice the room of others.

    Figures and days never wrap: a spreadsheet shows hashes in place of a figure that has no room.
    `sign` stands before amounts.
    """
    head = max(_digits(word, bold=True) for word in column.header.split())
    once = set(cells)
    texts = _shapes(cell for cell in once if isinstance(cell, str))
    if column.kind not in _WORDS:
        figure = max((_digits(one) for one in _widest_figures(once, column.kind, sign)), default=0)
        word, wide = _widest_word(texts), _widest(texts)
        return Asked(max(head, figure, word), max(head, figure, word, min(wide, 14)))
    longest = _widest(line for text in texts for line in text.split("\n"))
    word = _widest_word(texts)
    wide = max(head, min(WIDEST, longest))
    if column.kind == "words":
        return Asked(max(head, min(WIDEST, word)), wide)
    return Asked(max(head, min(LEAST_WORDS, longest)), wide, 2)


def both_asked(one: Asked, other: Asked) -> Asked:
    """Return what two columns ask for that stand one above the other."""
    least = max(one.least, other.least)
    return Asked(least, max(one.wide, other.wide, least), max(one.share, other.share))


def fitted_widths(asked: Iterable[Asked], room: int) -> list[int]:
    """Return widths between the least and the wished ones that fit in `room` pixels together.

    The widest give way first. Where even the least do not fit, the least are returned.
    """
    every = list(asked)
    cap = max((one.wide for one in every), default=0)
    while cap > 0:
        widths = [max(one.least, min(one.wide, cap * one.share)) for one in every]
        if sum(map(pixels, widths)) <= room:
            return widths
        cap -= 1
    return [one.least for one in every]


def as_shown(value: float | date | None, kind: Kind, sign: str = "") -> str:
    """Return a figure about as the spreadsheet shows it, for its place on the paper."""
    if value is None:
        return ""
    if isinstance(value, date):
        return value.isoformat()
    if kind == "money":
        return f"{sign}{figure(value, ',.2f')}"
    if kind == "count":
        return figure(value, ",.0f")
    return share_words(value) if kind == "share" else figure(value, ",.2f")


def _shapes(texts: Iterable[str]) -> set[str]:
    """Return the texts with one digit for all: digits are alike in width, and numbers many."""
    return {text.translate(_DIGITS) for text in texts}


def _widest_figures(cells: Iterable[Cell], kind: Kind, sign: str) -> list[str]:
    numbers = [cell for cell in cells if isinstance(cell, (int, float))]
    ends: list[float | date | None] = [min(numbers), max(numbers)] if numbers else []
    ends += [next((cell for cell in cells if isinstance(cell, date)), None)]
    return [as_shown(end, kind, sign) for end in ends]


def _digits(text: str, *, bold: bool = False) -> int:
    return _digits_of(text_pixels(text) * (1.08 if bold else 1.02))


def _digits_of(wide: float) -> int:
    return int(-(-(wide + _CELL_EDGE + _INDENT - 5) // _PIXELS_A_DIGIT))


def _widest(texts: Iterable[str]) -> int:
    wide = max(map(text_pixels, texts), default=None)
    return 0 if wide is None else _digits_of(wide * 1.02)


def _widest_word(texts: Iterable[str]) -> int:
    return _widest({word for text in texts for word in text.split()})


def _lines(line: str, room: float) -> int:
    if text_pixels(line) <= room:
        return 1
    lines, used, space = 1, 0.0, text_pixels(" ")
    for word in line.split():
        wide = text_pixels(word) * 1.03
        if used and used + space + wide > room:
            lines, used = lines + 1, 0.0
        used += wide + (space if used else 0)
        while used > room:  # a word longer than the column is broken inside
            lines, used = lines + 1, used - room
    return lines

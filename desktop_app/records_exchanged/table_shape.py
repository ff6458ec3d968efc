"""How a text is cut into cells: the sign between them, and the quotation mark around them."""

from __future__ import annotations

import csv
from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from desktop_app.records_exchanged.everyday_headers import KNOWN_HEADERS, header_words
from desktop_app.records_exchanged.formula_text import unguarded

_LIKELY = (",", ";", "\t", "|", "^", "~", "¦", "\x1f", "\x1e", ":")
_SAMPLE_ROWS = 100


@dataclass(frozen=True, slots=True)
class TableShape:
    """`space_after` says that a space stands behind each delimiter and is no part of the cell."""

    delimiter: str = ","
    quote: str = '"'
    space_after: bool = False

    def reader(self, lines: Iterable[str]) -> Iterator[list[str]]:
        """Return a csv.reader of the lines that refuses what is quoted wrongly."""
        return csv.reader(
            lines,
            delimiter=self.delimiter,
            quotechar=self.quote,
            skipinitialspace=self.space_after,
            strict=True,
        )


def named_delimiter(line: str) -> str | None:
    """Return the sign that a first line such as "sep=;" names, or None."""
    bare = line.rstrip("\r\n")
    return bare[4] if len(bare) == 5 and bare[:4].casefold() == "sep=" else None


def guessed_shape(lines: Sequence[str], delimiter: str | None = None) -> TableShape:
    """Return the shape of a table, told from its first lines (the headers first).

    Of the likely signs that one is taken which gives the most headers that are understood; then
    the one that cuts most lines into as many cells as the headers are.
    """
    header = next((line for line in lines if line.strip()), "")
    marked = header.startswith("'") and unguarded(header) == header
    quote = "'" if marked and header.count("'") >= 2 and '"' not in header else '"'
    delimiters = (delimiter,) if delimiter else _LIKELY
    shapes = [_with_spaces(TableShape(sign, quote), header) for sign in delimiters]
    return max(shapes, key=lambda shape: _fitness(shape, lines))


def _with_spaces(shape: TableShape, header: str) -> TableShape:
    signs = header.count(shape.delimiter)
    if shape.delimiter == "\t" or not signs or header.count(f"{shape.delimiter} ") != signs:
        return shape
    return TableShape(shape.delimiter, shape.quote, space_after=True)


def _fitness(shape: TableShape, lines: Sequence[str]) -> tuple[int, float, int]:
    rows: list[list[str]] = []
    reader = shape.reader(iter(lines))
    while len(rows) < _SAMPLE_ROWS:
        try:
            row = next(reader)
        except csv.Error:
            continue
        except StopIteration:
            break
        if row:
            rows.append(row)
    if not rows or len(rows[0]) < 2:
        known = sum(header_words(cell) in KNOWN_HEADERS for cell in rows[0]) if rows else 0
        return known, 0.0, 0
    known = sum(header_words(cell) in KNOWN_HEADERS for cell in rows[0])
    widths = Counter(len(row) for row in rows)
    return known, widths[len(rows[0])] / len(rows), len(rows[0])

"""A file's headers: named so that each can be told from the others, and known again next time."""

from __future__ import annotations

import hashlib
from collections.abc import Sequence

from desktop_app.language import tr
from desktop_app.records_exchanged.column_guess import Columns, guessed_columns
from desktop_app.records_exchanged.column_map import ALL_OTHERS, ColumnMap
from desktop_app.records_exchanged.everyday_headers import header_words
from desktop_app.records_exchanged.formula_text import unguarded
from desktop_app.shop_record.trouble import ShopTrouble

MOST_COLUMNS = 256


def named_headers(cells: Sequence[str]) -> tuple[str, ...]:
    """Return a name for each column: its header, "column C" for an empty one, "Code (2)" twice.

    A map names columns so, whatever language is spoken.
    """
    names: list[str] = []
    seen: set[str] = set()
    for index, cell in enumerate(cells):
        name = " ".join(unguarded(cell.strip()).split()) or f"column {column_letters(index)}"
        base, count = name, 1
        while name in seen:
            count += 1
            name = f"{base} ({count})"
        names.append(name)
        seen.add(name)
    return tuple(names)


def column_letters(index: int) -> str:
    """Return a column's letters as spreadsheets count: 0 is A, 26 is AA."""
    letters = ""
    index += 1
    while index:
        index, rest = divmod(index - 1, 26)
        letters = chr(65 + rest) + letters
    return letters


def header_key(headers: Sequence[str]) -> str:
    """Return what a file's headers are remembered by, whatever the order of the columns."""
    said = "\n".join(sorted(header.casefold() for header in headers))
    return hashlib.sha256(said.encode("utf-8", "surrogatepass")).hexdigest()[:32]


def columns_of(
    headers: Sequence[str], rows: Sequence[Sequence[str]], column_map: ColumnMap, file: str
) -> Columns:
    """Return the columns that a map lays down, and of the others those that are guessed.

    Raises ShopTrouble where the map names a header that the file has not.
    """
    exact = {header: index for index, header in enumerate(headers)}
    alike = {header_words(header): index for index, header in reversed(list(enumerate(headers)))}

    def at(header: str, field: str = "") -> int:
        name = " ".join(header.split())
        index = exact.get(name, alike.get(header_words(name)))
        if index is None:
            there = ", ".join(headers)[:300]
            raise ShopTrouble(
                tr(
                    "{file} has no column “{name}” for {field}.",
                    file=file,
                    name=name[:60],
                    field=field,
                )
                if field
                else tr("{file} has no column “{name}” to leave out.", file=file, name=name[:60]),
                do=tr("It has: {there}.", there=there),
            )
        return index

    laid_down = {
        field: tuple(at(header, field) for header in wanted)
        for field, wanted in column_map.columns.items()
    }
    if column_map.left_out == ALL_OTHERS:
        return laid_down
    left_out = {at(each) for each in column_map.left_out}
    return guessed_columns(headers, rows, laid_down, left_out)

"""A file looked through once before anything of it is read: what it is, and what it leaves open."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from itertools import chain
from types import MappingProxyType

from desktop_app.language import tr
from desktop_app.records_exchanged.column_guess import Columns
from desktop_app.records_exchanged.column_map import ALL_OTHERS, ColumnMap
from desktop_app.records_exchanged.csv_rows import Broken, is_blank
from desktop_app.records_exchanged.date_order import OrderSeen
from desktop_app.records_exchanged.date_words import DateOrder
from desktop_app.records_exchanged.decimal_sign import OdometersSeen, SignSeen
from desktop_app.records_exchanged.everyday_headers import header_unit
from desktop_app.records_exchanged.header_row import (
    MOST_COLUMNS,
    columns_of,
    header_key,
    named_headers,
)
from desktop_app.records_exchanged.letters_of import guessed_encoding, is_guess
from desktop_app.records_exchanged.number_words import DecimalSign
from desktop_app.records_exchanged.question import Question
from desktop_app.records_exchanged.table_shape import TableShape, guessed_shape, named_delimiter
from desktop_app.records_exchanged.table_source import OpenTable, Progress, TableSource
from desktop_app.records_exchanged.text_lines import TextLines
from desktop_app.shop_record.counted_words import rows_counted
from desktop_app.shop_record.trouble import ShopTrouble

ROWS_SHOWN = 100
_MOST_REMEMBERED = 100_000
_Numbered = tuple[int, list[str] | Broken]


@dataclass(frozen=True, slots=True)
class Survey:
    """What was found out about a file.

    `first_rows` are the first rows below the headers with their numbers, `rows` counts all of them
    that are not blank. `currency` is the only one of the file's prices, or the most frequent.
    `is_guessed` says that the encoding was told by its letters alone, and may be wrong;
    `short_years` that there are days with years of two figures. `odometer_sign` tells whether an
    odometer of 120.000 is 120 (a decimal point) or 120,000: by the column alone, None where it has
    it both ways, so that such rows are refused; `odometer_in_doubt` is the first such.
    """

    headers: tuple[str, ...]
    header_cells: tuple[str, ...]
    header_row: int
    columns: Columns
    from_workbook: bool
    encoding: str
    is_guessed: bool
    shape: TableShape
    rows: int
    first_rows: tuple[tuple[int, tuple[str, ...]], ...]
    date_order: DateOrder | None
    decimal_sign: DecimalSign | None
    odometer_sign: DecimalSign | None
    odometer_in_doubt: str
    odometer_unit: str
    short_years: bool
    currency: str
    questions: tuple[Question, ...]

    @property
    def key(self) -> str:
        """What the file's headers are remembered by."""
        return header_key(self.headers)

    def settled_map(self, column_map: ColumnMap) -> ColumnMap:
        """Return the map with all that was found out filled in, for the next file of this kind."""
        named = {f: tuple(self.headers[i] for i in at) for f, at in self.columns.items()}
        return replace(
            column_map,
            columns=MappingProxyType(named),
            left_out=ALL_OTHERS,
            date_order=self.date_order,
            decimal_sign=self.decimal_sign,
            odometer_unit=self.odometer_unit or None,
        )


def survey(source: TableSource, column_map: ColumnMap, progress: Progress | None = None) -> Survey:
    """Look through the whole file; a ShopTrouble where it is no table at all.

    Raises what `progress` raises.
    """
    encoding = "utf-8" if source.from_workbook else column_map.encoding
    if encoding is None:
        encoding = guessed_encoding(source.pieces())
    first_lines = _first_lines(source, encoding)
    shape, header_row = _shape(source, column_map, first_lines)
    with OpenTable(source, encoding, shape, progress) as rows:
        header_cells, header_row = _header(source, rows, column_map.header_row or header_row)
        rows.expect(len(header_cells))
        headers = named_headers(header_cells)
        first, shown = _first(rows)
        columns = columns_of(headers, [cells for _, cells in shown], column_map, source.name)
        seen = _Seen(columns)
        for number, cells in chain(first, rows):
            seen.look(number, cells)
    order, order_question = seen.order.decided()
    sign, sign_question = seen.sign.decided()
    if source.from_workbook:
        sign, sign_question = "point", None
    order_question = None if column_map.date_order else order_question
    sign_question = None if column_map.decimal_sign else sign_question
    return Survey(
        headers=headers,
        header_cells=tuple(header_cells),
        header_row=header_row,
        columns=columns,
        from_workbook=source.from_workbook,
        encoding=encoding,
        is_guessed=not source.from_workbook and not column_map.encoding and is_guess(encoding),
        shape=shape,
        rows=seen.rows,
        first_rows=tuple((number, tuple(cells)) for number, cells in shown),
        date_order=column_map.date_order or order,
        decimal_sign=column_map.decimal_sign or sign,
        odometer_sign=seen.odometers.decided(),
        odometer_in_doubt=seen.odometers.in_doubt,
        odometer_unit=column_map.odometer_unit or _unit(headers, columns),
        short_years=seen.order.short_years,
        currency=next((name for name, _ in seen.sign.currencies.most_common(1)), ""),
        questions=tuple(q for q in (order_question, sign_question) if q is not None),
    )


class _Seen:
    """All cells whose meaning depends on the others of the file, looked at once each."""

    def __init__(self, columns: Columns) -> None:
        self.order = OrderSeen()
        self.sign = SignSeen()
        self.odometers = OdometersSeen()
        self.rows = 0
        looks = {
            "opened_on": self.order.look,
            "closed_on": self.order.look,
            "price": self.sign.look_at_money,
            "hours": self.sign.look_at_hours,
            "odometer": self.odometers.look,
        }
        self._looks = [
            (column, look, set[str]())
            for field, look in looks.items()
            for column in columns.get(field, ())
        ]

    def look(self, number: int, cells: list[str] | Broken) -> None:
        if isinstance(cells, Broken):
            self.rows += 1
            return
        if is_blank(cells):
            return
        self.rows += 1
        for column, look, remembered in self._looks:
            if column < len(cells) and (cell := cells[column]) not in remembered:
                if len(remembered) > _MOST_REMEMBERED:
                    remembered.clear()
                remembered.add(cell)
                look(cell, number)


def _first_lines(source: TableSource, encoding: str) -> list[str]:
    lines = TextLines(source.opened(), encoding)
    try:
        return [line[:200_000] for line in lines.batch(100)]
    except UnicodeError:
        return []  # told with its row when the rows are read
    finally:
        lines.close()


def _shape(source: TableSource, column_map: ColumnMap, lines: list[str]) -> tuple[TableShape, int]:
    """Return the shape and the row at which the headers are looked for."""
    if source.from_workbook:
        return TableShape(), 1
    named = named_delimiter(lines[0]) if lines else None
    below = lines[1:] if named else lines[(column_map.header_row or 1) - 1 :] or lines
    return guessed_shape(below, column_map.delimiter or named), 2 if named else 1


def _header(
    source: TableSource, rows: Iterable[tuple[int, list[str] | Broken]], at: int
) -> tuple[list[str], int]:
    """Return the cells of the first row that isn't blank, from the row `at` on."""
    number = 0
    for number, cells in rows:
        if number < at or not (isinstance(cells, Broken) or any(cells)):
            continue
        if isinstance(cells, Broken):
            why = cells.why or next(iter(cells.no_values.values()))
            raise ShopTrouble(
                tr(
                    "{file}, row {row}, the headers: {why}",
                    file=source.name,
                    row=number,
                    why=why,
                )
            )
        cells[:1] = [cell.removeprefix("\ufeff") for cell in cells[:1]]
        while cells and not cells[-1].strip():
            cells.pop()
        if len(cells) > MOST_COLUMNS:
            raise ShopTrouble(
                tr("{file} has {columns:,} columns.", file=source.name, columns=len(cells)),
                do=tr("At most {most} are read.", most=MOST_COLUMNS),
            )
        return cells, number
    if 0 < number < at:
        raise ShopTrouble(
            tr(
                "{file} has {rows}; the headers can't stand in row {row}.",
                file=source.name,
                rows=rows_counted(number),
                row=at,
            ),
            do=tr("Say another row for them (from the shell: header_row in the map)."),
        )
    raise ShopTrouble(
        tr("{file} holds no table.", file=source.name),
        do=tr("Give a CSV or XLSX file with headers."),
    )


def _first(rows: Iterable[_Numbered]) -> tuple[list[_Numbered], list[tuple[int, list[str]]]]:
    """Return the first rows, and those of them that are shown: filled, and cut into cells."""
    first: list[_Numbered] = []
    shown: list[tuple[int, list[str]]] = []
    for number, cells in rows:
        if isinstance(cells, Broken):
            first.append((number, cells))
        elif not is_blank(cells):
            first.append((number, cells))
            shown.append((number, cells))
        if len(shown) == ROWS_SHOWN or len(first) == 10 * ROWS_SHOWN:
            break
    return first, shown


def _unit(headers: tuple[str, ...], columns: Columns) -> str:
    """Return the unit that the odometer's header names."""
    return next((header_unit(headers[column]) for column in columns.get("odometer", ())), "")

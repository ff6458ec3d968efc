"""The week's workbook: sheets of plain values written as a spreadsheet file (ISO/IEC 29500)."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date
from io import BytesIO
from typing import TYPE_CHECKING, Any

from desktop_app.weekly_report.sheet_form import (
    WIDEST,
    Cell,
    Chart,
    Column,
    Kind,
    Sheet,
    Table,
    Total,
    column_width,
    fitting_text,
    lines_needed,
)

if TYPE_CHECKING:
    from xlsxwriter import Workbook
    from xlsxwriter.worksheet import Worksheet

HEADER_ROW = 3  # title, the repeated line, a blank row, then the table's header
SENTENCE_WIDTH = 84
LINE_HEIGHT = 14  # points
TALLEST = 400  # points; the format allows a row 409
_PAPERS = {"Letter": 1, "A4": 9}
# Colours of the Okabe-Ito palette; each also has a pattern of its own, for print in black.
_SERIES = (
    ("#0072B2", "wide_upward_diagonal"),
    ("#E69F00", "dark_horizontal"),
    ("#555555", "small_grid"),
)
_TOTAL_COLUMNS = (Column("What", "words"), Column("Figure", "number"), Column("How", "long words"))


def workbook_bytes(sheets: Sequence[Sheet], paper: str, currency: str) -> Iterator[bytes]:
    """Yield an empty piece after each sheet that was laid out, then the whole file.

    Every formula carries its result, so that viewers that do not calculate show it too; nothing
    that was typed can become a formula or a link.
    """
    from xlsxwriter import Workbook

    kept = BytesIO()
    options = {
        "in_memory": True,
        "strings_to_formulas": False,
        "strings_to_urls": False,
        "default_format_properties": {"font_name": "Arial", "font_size": 10},
    }
    book = Workbook(kept, options)
    looks = _Looks(book, currency)
    for sheet in sheets:
        page = book.add_worksheet(sheet.name)
        _SheetWriter(book, page, looks, sheet).write(paper)
        yield b""
    book.close()
    yield kept.getvalue()


class _Looks:
    """The formats of the workbook, one for each kind of cell."""

    def __init__(self, book: Workbook, currency: str) -> None:
        sign = currency.replace('"', "")
        forms: dict[Kind, dict[str, Any]] = {
            "words": {"text_wrap": True, "align": "left", "indent": 1},
            "long words": {"text_wrap": True, "align": "left", "indent": 1},
            "day": {"num_format": "yyyy-mm-dd", "align": "left", "indent": 1},
            "count": {"num_format": "#,##0"},
            "number": {"num_format": "#,##0.##"},
            "hours": {"num_format": "0.00"},
            "share": {"num_format": "0%"},
            "money": {"num_format": f'"{sign}"#,##0.00'},
        }
        self.of = {kind: book.add_format({"valign": "top", **f}) for kind, f in forms.items()}
        self.wrapped = book.add_format({"valign": "top", "text_wrap": True})
        self.beside_numbers = book.add_format({"valign": "top", "align": "right"})
        self.title = book.add_format({"bold": True, "font_size": 16})
        self.quiet = book.add_format({"font_color": "#555555"})
        self.header = book.add_format(
            {
                "bold": True,
                "valign": "top",
                "bottom": 1,
                "text_wrap": True,
                "align": "left",
                "indent": 1,
            }
        )


class _SheetWriter:
    """Writes one sheet."""

    def __init__(self, book: Workbook, page: Worksheet, looks: _Looks, sheet: Sheet) -> None:
        self.book = book
        self.page = page
        self.looks = looks
        self.sheet = sheet

    def write(self, paper: str) -> None:
        self.page.write_string(0, 0, fitting_text(self.sheet.name), self.looks.title)
        self.page.write_string(1, 0, fitting_text(self.sheet.about), self.looks.quiet)
        self._print_set_up(paper)
        if self.sheet.sentences:
            self._sentences(self.sheet.sentences)
        if self.sheet.table is not None:
            self._table(self.sheet.table)
            if self.sheet.chart is not None:
                self._chart(self.sheet.table, self.sheet.chart)
        if self.sheet.totals:
            self._totals(self.sheet.totals)

    def _print_set_up(self, paper: str) -> None:
        self.page.set_paper(_PAPERS[paper])
        self.page.set_margins(left=0.5, right=0.5, top=0.6, bottom=0.7)
        self.page.set_footer("&L&A&R&P / &N")
        self.page.fit_to_pages(1, 0)
        if self.sheet.table is not None:
            self.page.set_landscape()
        if not self.sheet.sentences:
            self.page.repeat_rows(0, HEADER_ROW)
            self.page.freeze_panes(HEADER_ROW + 1, 1)

    def _sentences(self, sentences: Sequence[str]) -> None:
        self.page.set_column(0, 0, SENTENCE_WIDTH)
        for row, words in enumerate(sentences, HEADER_ROW):
            self.page.write_string(row, 0, fitting_text(words), self.looks.wrapped)
            self._set_height(row, lines_needed(words, SENTENCE_WIDTH - 6))

    def _table(self, table: Table) -> None:
        shown = [
            [_as_shown(row[number], column.kind) for row in table.rows]
            for number, column in enumerate(table.columns)
        ]
        widths = self._set_widths(table.columns, shown)
        for row, cells in enumerate(table.rows, HEADER_ROW + 1):
            for number, column in enumerate(table.columns):
                self._cell(row, number, cells[number], column.kind)
            lines = (
                lines_needed(some[row - HEADER_ROW - 1], width)
                for some, width in zip(shown, widths, strict=True)
            )
            self._set_height(row, max(lines))
        self._mark_table(table.name, table.columns, len(table.rows))

    def _totals(self, totals: Sequence[Total]) -> None:
        for row, total in enumerate(totals, HEADER_ROW + 1):
            self._cell(row, 0, total.words, "words")
            look = self.looks.of[total.kind]
            self.page.write_formula(row, 1, total.formula, look, total.value)
            self._cell(row, 2, total.note, "long words")
            self._set_height(row, lines_needed(total.note, WIDEST))
        words, notes = [total.words for total in totals], [total.note for total in totals]
        figures = [_as_shown(total.value, total.kind) for total in totals]
        self._set_widths(_TOTAL_COLUMNS, [words, figures, notes])
        self._mark_table("WeekTotals", _TOTAL_COLUMNS, len(totals))

    def _set_widths(self, columns: Sequence[Column], shown: Sequence[Sequence[str]]) -> list[int]:
        widths = [column_width(column, some) for column, some in zip(columns, shown, strict=True)]
        for number, width in enumerate(widths):
            self.page.set_column(number, number, width)
        lines = (lines_needed(c.header, w - 3) for c, w in zip(columns, widths, strict=True))
        self._set_height(HEADER_ROW, max(lines))
        return widths

    def _set_height(self, row: int, lines: int) -> None:
        """Give a row its height: programs differ in whether they find it by themselves."""
        if lines > 1:
            self.page.set_row(row, min(lines * LINE_HEIGHT, TALLEST))

    def _mark_table(self, name: str, columns: Sequence[Column], rows: int) -> None:
        """Declare the written cells a table; the format wants one row even where there is none."""
        headers = [{"header": c.header, "header_format": self.looks.header} for c in columns]
        style = "Table Style Light 1"
        options = {"name": name, "columns": headers, "style": style}
        last = HEADER_ROW + max(rows, 1)
        self.page.add_table(HEADER_ROW, 0, last, len(columns) - 1, options)

    def _cell(self, row: int, column: int, value: Cell, kind: Kind) -> None:
        look = self.looks.of[kind]
        if value is None or value == "":
            self.page.write_blank(row, column, None, look)
        elif isinstance(value, str):
            words = kind in ("words", "long words")
            look = look if words else self.looks.beside_numbers
            self.page.write_string(row, column, fitting_text(value), look)
        elif isinstance(value, date):
            self.page.write_datetime(row, column, value, look)
        else:
            self.page.write_number(row, column, value, look)

    def _chart(self, table: Table, chart: Chart) -> None:
        drawn = self.book.add_chart({"type": "column"})
        last = HEADER_ROW + len(table.rows)
        headers = [column.header for column in table.columns]
        for header, (colour, pattern) in zip(chart.headers, _SERIES, strict=True):
            at = headers.index(header)
            name = self.sheet.name
            fill = {"pattern": pattern, "fg_color": colour, "bg_color": "white"}
            drawn.add_series(
                {
                    "name": [name, HEADER_ROW, at],
                    "categories": [name, HEADER_ROW + 1, 0, last, 0],
                    "values": [name, HEADER_ROW + 1, at, last, at],
                    "pattern": fill,
                    "border": {"color": colour},
                }
            )
        drawn.set_title({"name": chart.title, "overlay": False})
        drawn.set_x_axis({"name": "Week", "num_font": {"rotation": -60}})
        drawn.set_y_axis({"name": "Jobs", "min": 0, "major_unit": 1 if _low(table) else None})
        drawn.set_legend({"position": "bottom"})
        drawn.set_size({"width": 860, "height": 420})
        self.page.insert_chart(
            HEADER_ROW, len(headers) + 1, drawn, {"description": chart.title, "object_position": 3}
        )


def _low(table: Table) -> bool:
    """Tell whether all counts are so low that the axis would invent halves of jobs."""
    return all(not isinstance(cell, int) or cell < 8 for row in table.rows for cell in row)


def _as_shown(value: Cell, kind: Kind) -> str:
    """Return a cell about as the spreadsheet shows it, for the width of its column."""
    if value is None:
        return ""
    if isinstance(value, str):
        return value
    if isinstance(value, date):
        return value.isoformat()
    if kind == "money":
        return f"{value:,.2f}    "
    return f"{value:.0%}" if kind == "share" else f"{value:,.2f}"

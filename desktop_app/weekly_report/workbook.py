"""The week's workbook: sheets of plain values written as a spreadsheet file (ISO/IEC 29500)."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from datetime import date
from io import BytesIO
from typing import TYPE_CHECKING, Any

from desktop_app.weekly_report.sheet_form import (
    WIDEST,
    Cell,
    Column,
    Kind,
    Sheet,
    Table,
    Total,
    column_width,
    fitting_text,
    lines_needed,
)
from desktop_app.weekly_report.workbook_charts import Placed, drawn_chart

if TYPE_CHECKING:
    from xlsxwriter import Workbook
    from xlsxwriter.format import Format
    from xlsxwriter.worksheet import Worksheet

FIRST_ROW = 3  # title, the repeated line, a blank row
CHART_ROWS = 21  # rows of the usual height that a chart covers
SENTENCE_WIDTH = 84
LINE_HEIGHT = 14  # points
TALLEST = 400  # points; the format allows a row 409
_PAPERS = {"Letter": 1, "A4": 9}
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
            "share": {"num_format": "0.0%"},
            "money": {"num_format": f'"{sign}"#,##0.00'},
        }
        self.of = {kind: book.add_format({"valign": "top", **f}) for kind, f in forms.items()}
        self.wrapped = book.add_format({"valign": "top", "text_wrap": True})
        self.beside_numbers = book.add_format({"valign": "top", "align": "right"})
        self.title = book.add_format({"bold": True, "font_size": 16})
        self.heading = book.add_format({"bold": True, "font_size": 12})
        self.quiet = book.add_format({"font_color": "#555555"})
        head = {"bold": True, "valign": "top", "bottom": 1, "text_wrap": True}
        self.over_words = book.add_format({**head, "align": "left", "indent": 1})
        self.over_numbers = book.add_format({**head, "align": "right"})

    def over(self, column: Column) -> Format:
        """Return the look of a column's header: on the side on which its cells stand."""
        words = column.kind in ("words", "long words", "day")
        return self.over_words if words else self.over_numbers


class _SheetWriter:
    """Writes one sheet from its top down: sentences, totals, charts, tables."""

    def __init__(self, book: Workbook, page: Worksheet, looks: _Looks, sheet: Sheet) -> None:
        self.book = book
        self.page = page
        self.looks = looks
        self.sheet = sheet
        self.row = FIRST_ROW
        self.widths: dict[int, int] = {}
        self.placed: dict[str, Placed] = {}

    def write(self, paper: str) -> None:
        sheet = self.sheet
        self.page.write_string(0, 0, fitting_text(sheet.name), self.looks.title)
        self.page.write_string(1, 0, fitting_text(sheet.about), self.looks.quiet)
        self._print_set_up(paper)
        self._widen()
        for words in sheet.sentences:
            self._sentence(words)
        if sheet.totals:
            self._totals(sheet.totals)
        charts_at = self.row
        self.row += len(sheet.charts) * CHART_ROWS
        for table in sheet.tables:
            self._table(table)
        for number, chart in enumerate(sheet.charts):
            drawn = drawn_chart(self.book, chart, self.placed[chart.table])
            options = {"description": chart.title, "object_position": 3}
            self.page.insert_chart(charts_at + number * CHART_ROWS, 0, drawn, options)

    def _print_set_up(self, paper: str) -> None:
        self.page.set_paper(_PAPERS[paper])
        self.page.set_margins(left=0.5, right=0.5, top=0.6, bottom=0.7)
        self.page.set_footer("&L&A&R&P / &N")
        self.page.fit_to_pages(1, 0)
        if self.sheet.tables:
            self.page.set_landscape()
        if self._is_one_table():
            self.page.repeat_rows(0, FIRST_ROW)
            self.page.freeze_panes(FIRST_ROW + 1, 1)
        else:
            self.page.repeat_rows(0, 1)

    def _is_one_table(self) -> bool:
        """Tell whether the sheet is a single table, whose header can stand still."""
        sheet = self.sheet
        alone = len(sheet.tables) == 1 and not sheet.sentences and not sheet.charts
        return alone and not sheet.totals and not sheet.tables[0].title

    def _widen(self) -> None:
        """Give each column the width that the widest of the sheet's tables asks of it."""
        if self.sheet.sentences and not self.sheet.tables:
            self.widths[0] = SENTENCE_WIDTH
        blocks = [(table.columns, _shown(table)) for table in self.sheet.tables]
        if self.sheet.totals:
            totals = self.sheet.totals
            figures = [_as_shown(total.value, total.kind) for total in totals]
            words, notes = [total.words for total in totals], [total.note for total in totals]
            blocks.append((_TOTAL_COLUMNS, [words, figures, notes]))
        for columns, shown in blocks:
            for number, (column, some) in enumerate(zip(columns, shown, strict=True)):
                wide = column_width(column, some)
                self.widths[number] = max(self.widths.get(number, 0), wide)
        for number, width in self.widths.items():
            self.page.set_column(number, number, width)

    def _sentence(self, words: str) -> None:
        self.page.write_string(self.row, 0, fitting_text(words), self.looks.wrapped)
        if not self.sheet.tables:
            self._set_height(self.row, lines_needed(words, self.widths[0] - 6))
        self.row += 1

    def _table(self, table: Table) -> None:
        if table.title:
            self.row += 1
            self.page.write_string(self.row, 0, fitting_text(table.title), self.looks.heading)
            self.row += 1
        header = self.row
        self._header_height(table.columns)
        for number, cells in enumerate(table.rows, header + 1):
            for place, column in enumerate(table.columns):
                if column.formula is not None:
                    self._formula(number, place, table, cells[place])
                else:
                    self._cell(number, place, cells[place], column.kind)
            lines = (
                lines_needed(_as_shown(cell, column.kind), self.widths[place])
                for place, (cell, column) in enumerate(zip(cells, table.columns, strict=True))
            )
            self._set_height(number, max(lines))
        last = header + max(len(table.rows), 1)
        self._mark_table(header, last, table.name, table.columns)
        self.placed[table.name] = Placed(self.sheet.name, header, last, table)
        self.row = last + 1
        # Not in the table: a formula that counts its rows would count the words.
        for words in table.notes if table.rows else (table.nothing, *table.notes):
            self.page.write_string(self.row, 0, fitting_text(words), self.looks.quiet)
            self.row += 1
        self.row += 1

    def _formula(self, row: int, place: int, table: Table, value: Cell) -> None:
        """Write a cell that is worked out from its row, with plain cell addresses.

        Not every spreadsheet program reads the form for "this row of the table".
        """
        from xlsxwriter.utility import xl_rowcol_to_cell

        column = table.columns[place]
        assert column.formula is not None

        def address(found: re.Match[str]) -> str:
            return str(xl_rowcol_to_cell(row, table.place(found[1])))

        formula = re.sub(r"\[@([^\]]+)\]", address, column.formula)
        look = self.looks.of[column.kind]
        self.page.write_formula(row, place, formula, look, "" if value is None else value)

    def _totals(self, totals: Sequence[Total]) -> None:
        self.row += bool(self.sheet.sentences)
        header = self.row
        self._header_height(_TOTAL_COLUMNS)
        for row, total in enumerate(totals, header + 1):
            self._cell(row, 0, total.words, "words")
            look = self.looks.of[total.kind]
            value = "" if total.value is None else total.value
            self.page.write_formula(row, 1, total.formula, look, value)
            self._cell(row, 2, total.note, "long words")
            wide = self.widths.get(2, WIDEST)
            self._set_height(row, lines_needed(total.note, wide))
        last = header + len(totals)
        name = f"{self.sheet.name.title().replace(' ', '')}Totals"
        self._mark_table(header, last, name, _TOTAL_COLUMNS)
        self.row = last + 2

    def _header_height(self, columns: Sequence[Column]) -> None:
        lines = (lines_needed(c.header, self.widths[i] - 3) for i, c in enumerate(columns))
        self._set_height(self.row, max(lines))

    def _set_height(self, row: int, lines: int) -> None:
        """Give a row its height: programs differ in whether they find it by themselves."""
        if lines > 1:
            self.page.set_row(row, min(lines * LINE_HEIGHT, TALLEST))

    def _mark_table(self, header: int, last: int, name: str, columns: Sequence[Column]) -> None:
        """Declare the written cells a table; the format wants one row even where there is none."""
        headers = [{"header": c.header, "header_format": self.looks.over(c)} for c in columns]
        options = {"name": name, "columns": headers, "style": "Table Style Light 1"}
        self.page.add_table(header, 0, last, len(columns) - 1, options)

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


def _shown(table: Table) -> list[list[str]]:
    return [
        [_as_shown(row[number], column.kind) for row in table.rows]
        for number, column in enumerate(table.columns)
    ]


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
    return f"{value:.1%}" if kind == "share" else f"{value:,.2f}"

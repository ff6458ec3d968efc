"""The week's workbook: sheets of plain values written as a spreadsheet file (ISO/IEC 29500)."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from datetime import date
from io import BytesIO
from typing import TYPE_CHECKING

from desktop_app.language import tr
from desktop_app.weekly_report.opens_on import THE_WEEK, seen_first, to_do_table
from desktop_app.weekly_report.paper_fit import (
    Asked,
    as_shown,
    asked_widths,
    both_asked,
    fitted_widths,
    lines_in_rows,
    lines_needed,
    pixels,
    printed_height,
    room_on_paper,
    row_height,
    rows_on_paper,
)
from desktop_app.weekly_report.sheet_form import (
    Cell,
    Column,
    Kind,
    Sheet,
    Table,
    Total,
    fitting_text,
)
from desktop_app.weekly_report.workbook_charts import HEIGHT, Placed, drawn_chart
from desktop_app.weekly_report.workbook_filled import LongTable, filled
from desktop_app.weekly_report.workbook_looks import LETTERS, NAMED, cell_looks

if TYPE_CHECKING:
    from xlsxwriter import Workbook
    from xlsxwriter.format import Format
    from xlsxwriter.worksheet import Worksheet

FIRST_ROW = 3  # title, the repeated line, a blank row
CHART_ROWS = HEIGHT * 3 // 4 // row_height(1) + 2  # rows of one line that a chart covers
SENTENCES_ACROSS = 760  # pixels; sentences are not broken earlier than this
LONG_TABLE = 20  # rows; beyond, a table goes over several pages
MOST_PLAIN = 500  # rows; those of a longer table are filled in when the workbook is written
_SLACK = 3  # rows left empty where a page ends, for programs that break it a little later
_PAPERS = {"Letter": 1, "A4": 9}
_EMPTY_COLUMN = 9  # digits; what a column without cells is wide
_BUTTON = 1  # line beneath a header's words, for the button that sorts and filters
_TOTAL_COLUMNS = (
    Column(tr("What"), "words"),
    Column(tr("Figure"), "number"),
    Column(tr("How"), "long words"),
)


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
        "default_format_properties": LETTERS,
    }
    book = Workbook(kept, options)
    looks = _Looks(book, currency)
    long: dict[int, list[LongTable]] = {}
    for number, sheet in enumerate(sheets, 1):
        page = book.add_worksheet(sheet.name)
        writer = _SheetWriter(book, page, looks, sheet, paper)
        writer.write()
        long[number] = writer.long
        yield b""
    book.close()
    yield filled(kept, long) if any(long.values()) else kept.getvalue()


def standing_text(text: str) -> str:
    """Return a text as XlsxWriter is to be given it.

    One from "<r>" to "</r>" it takes for XML of its own and lets stand as it is; "&" in it would
    spoil the file. A blank at its end prevents that.
    """
    text = fitting_text(text)
    return f"{text} " if text.startswith("<r>") and text.endswith("</r>") else text


def by_column(table: Table) -> list[tuple[Cell, ...]]:
    """Return the cells of each column of a table."""
    return list(zip(*table.rows, strict=True)) or [()] * len(table.columns)


class _Looks:
    """The formats of one workbook; `sign` stands before its amounts."""

    def __init__(self, book: Workbook, currency: str) -> None:
        self.sign = currency.replace('"', "")
        self.of = {kind: book.add_format(look) for kind, look in cell_looks(self.sign).items()}
        self.named = {name: book.add_format(look) for name, look in NAMED.items()}

    def of_text(self, kind: Kind) -> Format:
        """Return the look of a text in a column of this kind."""
        return self.of[kind] if kind in ("words", "long words") else self.named["beside numbers"]

    def over(self, column: Column) -> Format:
        """Return the look of a column's header: on the side on which its cells stand."""
        words = column.kind in ("words", "long words", "day")
        return self.named["over words" if words else "over numbers"]


class _SheetWriter:
    """Writes one sheet from its top down: what it opens on, sentences, totals, charts, tables."""

    def __init__(
        self, book: Workbook, page: Worksheet, looks: _Looks, sheet: Sheet, paper: str
    ) -> None:
        self.book, self.page, self.looks = book, page, looks
        self.sheet, self.paper = sheet, paper
        self.row = FIRST_ROW
        self.seen_first = seen_first(sheet.totals)
        self.to_do = (to_do_table(sheet.to_do),) if self.seen_first else ()
        self.widths = self._widths()
        self.placed: dict[str, Placed] = {}
        self.long: list[LongTable] = []

    def write(self) -> None:
        sheet = self.sheet
        self.page.set_default_row(row_height(1))
        for number, width in enumerate(self.widths):
            self.page.set_column(number, number, width)
        self.page.set_row(0, 24)
        self.page.write_string(0, 0, standing_text(sheet.name), self.looks.named["title"])
        self.page.write_string(1, 0, standing_text(sheet.about), self.looks.named["about"])
        if self.seen_first:
            self._heading(THE_WEEK)
            self._totals(self.seen_first, f"{sheet.totals_name}First")
        for table in self.to_do:
            self._table(table)
        for words in sheet.sentences:
            self._across(words, self.looks.named["sentence"])
        if sheet.totals:
            self.row += bool(sheet.sentences)
            self._totals(sheet.totals, sheet.totals_name)
        charts_at, rows = self._charts_at()
        self.row = charts_at[-1] + rows if charts_at else self.row
        for table in sheet.tables:
            self._table(table)
        for at, chart in zip(charts_at, sheet.charts, strict=True):
            drawn = drawn_chart(self.book, chart, self.placed[chart.table])
            high = (rows - 1) * row_height(1) * 4 / 3 / HEIGHT
            options = {"description": chart.title, "object_position": 3, "y_scale": high}
            self.page.insert_chart(at, 0, drawn, options)
        self._print_set_up()

    def _charts_at(self) -> tuple[list[int], int]:
        """Return the first row of each chart and how many each covers: two to a page, none cut."""
        charts = self.sheet.charts
        rows = rows_on_paper(self.paper, sum(map(pixels, self.widths))) - self.row
        each = min(CHART_ROWS, max(rows // 2, CHART_ROWS // 2))
        page = 2 * each + _SLACK
        pages = [self.row + number * page for number in range(-(-len(charts) // 2))]
        if pages[1:]:
            self.page.set_h_pagebreaks([first - _SLACK for first in pages[1:]])
        return [pages[n // 2] + n % 2 * each for n in range(len(charts))], each

    def _print_set_up(self) -> None:
        sheet = self.sheet
        self.page.set_paper(_PAPERS[self.paper])
        self.page.set_margins(left=0.5, right=0.5, top=0.6, bottom=0.7)
        about = standing_text(sheet.about).replace("&", "&&")[:200]
        self.page.set_footer(f"&L&A&C&8 {about}&R&P / &N")
        self.page.fit_to_pages(sheet.pages_across, 0)
        if sheet.pages_across > 1:
            self.page.repeat_columns(0)
        if sheet.tables:
            self.page.set_landscape()
        if self._is_one_table():
            self.page.repeat_rows(0, FIRST_ROW)
            self.page.freeze_panes(FIRST_ROW + 1, 1)
        elif sheet.tables and len(sheet.tables[-1].rows) > LONG_TABLE:
            header = self.placed[sheet.tables[-1].name].header
            self.page.repeat_rows(header, header)
        else:
            self.page.repeat_rows(0, 1)

    def _is_one_table(self) -> bool:
        """Tell whether the sheet is a single table, whose header can stand still."""
        sheet = self.sheet
        alone = len(sheet.tables) == 1 and not sheet.sentences and not sheet.charts
        return alone and not sheet.totals and not sheet.tables[0].title

    def _widths(self) -> list[int]:
        """Return the width of each column, for all tables of the sheet one above the other."""
        asked: dict[int, Asked] = {}

        def ask(place: int, column: Column, cells: Sequence[Cell]) -> None:
            one = asked_widths(column, cells, self.looks.sign)
            asked[place] = both_asked(asked.get(place, one), one)

        for table in (*self.to_do, *self.sheet.tables):
            for place, (column, cells) in enumerate(
                zip(table.columns, by_column(table), strict=True)
            ):
                ask(place, column, cells)
        if totals := self.sheet.totals:
            ask(0, _TOTAL_COLUMNS[0], [total.words for total in totals])
            shown = [as_shown(total.value, total.kind, self.looks.sign) for total in totals]
            ask(1, Column(_TOTAL_COLUMNS[1].header, "words"), shown)
            ask(2, _TOTAL_COLUMNS[2], [total.note for total in totals])
        room = room_on_paper(self.paper, self.sheet.pages_across)
        return fitted_widths((asked[place] for place in sorted(asked)), room)

    def _across(self, words: str, look: Format) -> None:
        """Write a sentence over as many columns as it needs to be read in few lines."""
        widths, last, wide = self.widths, 0, 0
        while wide < SENTENCES_ACROSS or last < 2:  # fewer cannot be merged
            wide += pixels(widths[last] if last < len(widths) else _EMPTY_COLUMN)
            last += 1
        lines = lines_needed(words, wide // 7)
        self._set_height(self.row, lines)
        self.page.merge_range(self.row, 0, self.row, last - 1, standing_text(words), look)
        self.row += 1

    def _table(self, table: Table) -> None:
        if table.title:
            self.row += 1
            self._heading(table.title)
        header = self.row
        self._header_height(table.columns)
        lines = lines_in_rows(by_column(table), self.widths)
        last = header + max(len(table.rows), 1)
        if self._is_filled_in(table):
            self._long_rows(table, lines)
            self._mark_table(header, header + 1, table.name, table.columns)
        else:
            self._rows(table, lines)
            self._mark_table(header, last, table.name, table.columns)
        self.placed[table.name] = Placed(self.sheet.name, header, last, table)
        self.row = last + 1
        # Not in the table: a formula that counts its rows would count the words.
        for words in table.notes if table.rows else (table.nothing, *table.notes):
            self._across(words, self.looks.named["note"])
        self.row += 1

    def _heading(self, words: str) -> None:
        self.page.set_row(self.row, 20)
        self.page.write_string(self.row, 0, standing_text(words), self.looks.named["heading"])
        self.row += 1

    def _is_filled_in(self, table: Table) -> bool:
        """Tell whether a table is long; not where XlsxWriter needs its cells, for a chart's say."""
        drawn = any(chart.table == table.name for chart in self.sheet.charts)
        reckoned = any(column.formula for column in table.columns)
        return len(table.rows) > MOST_PLAIN and not drawn and not reckoned

    def _rows(self, table: Table, lines: Sequence[int]) -> None:
        for row, (cells, high) in enumerate(zip(table.rows, lines, strict=True), self.row + 1):
            for place, column in enumerate(table.columns):
                if column.formula is not None:
                    self._formula(row, place, table, cells[place])
                else:
                    self._cell(row, place, cells[place], column.kind)
            self._set_height(row, high)

    def _long_rows(self, table: Table, lines: Sequence[int]) -> None:
        """Write the first and the last row without what they say: the models of all."""
        first = self.row + 1
        last = self.row + len(table.rows)
        for place, column in enumerate(table.columns):
            self.page.write_blank(first, place, None, self.looks.of[column.kind])
            self.page.write_blank(last, place, None, self.looks.of_text(column.kind))
        heights = [printed_height(high) for high in lines]
        self.long.append(LongTable(table.name, first + 1, table.rows, heights))

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

    def _totals(self, totals: Sequence[Total], name: str) -> None:
        header = self.row
        self._header_height(_TOTAL_COLUMNS)
        sides = [total.words for total in totals], [total.note for total in totals]
        lines = lines_in_rows(sides, (self.widths[0], self.widths[2]))
        for row, total in enumerate(totals, header + 1):
            self._cell(row, 0, total.words, "words")
            look = self.looks.of[total.kind]
            value = "" if total.value is None else total.value
            self.page.write_formula(row, 1, total.formula, look, value)
            self._cell(row, 2, total.note, "long words")
            self._set_height(row, lines[row - header - 1])
        last = header + len(totals)
        self._mark_table(header, last, name, _TOTAL_COLUMNS)
        self.row = last + 2

    def _header_height(self, columns: Sequence[Column]) -> None:
        lines = (lines_needed(c.header, self.widths[i]) for i, c in enumerate(columns))
        self._set_height(self.row, max(lines) + _BUTTON)

    def _set_height(self, row: int, lines: int) -> None:
        """Give a row its height: programs differ in whether they find it by themselves."""
        if lines > 1:
            self.page.set_row(row, row_height(lines))

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
            self.page.write_string(row, column, standing_text(value), self.looks.of_text(kind))
        elif isinstance(value, date):
            self.page.write_datetime(row, column, value, look)
        else:
            self.page.write_number(row, column, value, look)

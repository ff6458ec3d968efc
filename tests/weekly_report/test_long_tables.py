"""Long tables, whose rows are filled in after the others: the same cells as any other table's."""

from __future__ import annotations

import re
import zipfile
from datetime import date
from io import BytesIO
from typing import Any

import openpyxl
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from desktop_app.weekly_report import workbook
from desktop_app.weekly_report.sheet_form import LONGEST_TEXT, Cell, Chart, Column, Sheet, Table
from desktop_app.weekly_report.workbook import workbook_bytes

COLUMNS = (
    Column("Job", "words"),
    Column("Left on", "day"),
    Column("Concern", "long words"),
    Column("Miles", "count"),
    Column("Price", "money"),
)
ODD = (
    *("=1+1", "+1", "-1", "@SUM(1)", "\t=1", "#REF!", "http://x", "_x0041_", "a & <b> \"c\" 'd'"),
    *(" blanks ", "two\nlines", "a\r\nb\x07c", "half \ud800", "🔧 plug", "]]>", "</sst>", "\u00a0"),
    *("long words " * 40, "ab" * LONGEST_TEXT, "x" * 300, "<row r='1'>", "&amp;", "true", "1"),
)
DAYS = (date(1900, 1, 1), date(1900, 2, 28), date(1900, 3, 1), date(2026, 11, 10))
FIGURES = (0, 7, -3, 1.0, 0.1 + 0.2, -184.55, 1e21, 123_456_789, 1 / 3, True)


def _rows() -> tuple[tuple[Cell, ...], ...]:
    """Rows with each odd text, day and figure, empty cells, and a text in place of a figure."""
    odd = [
        (f"J-{n}", DAYS[n % 4], text, FIGURES[n % 10], FIGURES[n % 7]) for n, text in enumerate(ODD)
    ]
    return (*odd, (None,) * 5, ("J-99", "not said", "", "days only", ""), ("J-100", *4 * (None,)))


def _sheet(rows: tuple[tuple[Cell, ...], ...]) -> Sheet:
    first = Table("Jobs", COLUMNS, rows, title="Jobs", notes=("A note beneath.",))
    second = Table("Again", COLUMNS[::-1], tuple(row[::-1] for row in rows), title="Again")
    few = Table("Few", COLUMNS[:2], (("J-1", DAYS[3]),), title="Few")
    return Sheet("Raw", "about", sentences=("A sentence.",), tables=(first, second, few))


def _written(monkeypatch: pytest.MonkeyPatch, *sheets: Sheet, most_plain: int) -> bytes:
    monkeypatch.setattr(workbook, "MOST_PLAIN", most_plain)
    *_, content = workbook_bytes(sheets, "A4", "€")
    return content


def _cells(page: Any) -> dict[str, tuple[Any, ...]]:
    """Return what every cell of a sheet is, how it looks, and how high it is."""
    return {
        cell.coordinate: (
            *(
                cell.value,
                cell.data_type,
                cell.number_format,
                cell.font.b,
                cell.border.bottom.style,
            ),
            *(cell.alignment.horizontal, cell.alignment.vertical, cell.alignment.wrap_text),
            *(cell.alignment.indent, page.row_dimensions[cell.row].height),
        )
        for row in page.iter_rows()
        for cell in row
    }


def _same(one: bytes, another: bytes) -> None:
    mine, plain = (openpyxl.load_workbook(BytesIO(content)) for content in (one, another))
    assert mine.sheetnames == plain.sheetnames
    for page, beside in zip(mine, plain, strict=True):
        assert _cells(page) == _cells(beside)
        assert page.dimensions == beside.dimensions
        reach = [(t.name, t.ref, t.autoFilter.ref) for t in page.tables.values()]
        assert reach == [(t.name, t.ref, t.autoFilter.ref) for t in beside.tables.values()]
        wide, plainly = page.column_dimensions, beside.column_dimensions
        assert {k: v.width for k, v in wide.items()} == {k: v.width for k, v in plainly.items()}
        assert page.print_title_rows == beside.print_title_rows


def test_a_long_table_has_the_cells_that_it_would_have_anyway(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    short = Sheet("Few", "about", tables=(Table("One", COLUMNS, _rows()[:1]),))
    sheets = (short, _sheet(_rows()), Sheet("More", "about"))
    short_way = _written(monkeypatch, *sheets, most_plain=10_000)
    _same(_written(monkeypatch, *sheets, most_plain=1), short_way)


def test_rows_of_several_pieces_stand_in_their_order(monkeypatch: pytest.MonkeyPatch) -> None:
    rows = tuple((f"J-{n}", DAYS[3], None, n % 9, n / 4) for n in range(4_100))
    content = _written(
        monkeypatch, Sheet("Raw", "", tables=(Table("Raw", COLUMNS, rows),)), most_plain=500
    )
    page = openpyxl.load_workbook(BytesIO(content), read_only=True)["Raw"]
    found = list(page.iter_rows(min_row=5, values_only=True))
    assert [(row[0], row[3], row[4]) for row in found] == [(r[0], r[3], r[4]) for r in rows]


def test_the_table_of_texts_counts_what_it_holds(monkeypatch: pytest.MonkeyPatch) -> None:
    content = _written(monkeypatch, _sheet(_rows()), most_plain=1)
    with zipfile.ZipFile(BytesIO(content)) as file:
        texts = file.read("xl/sharedStrings.xml").decode()
        uses = file.read("xl/worksheets/sheet1.xml").count(b't="s"')
    [(counted, unique)] = re.findall(r'count="(\d+)" uniqueCount="(\d+)"', texts)
    assert (int(counted), int(unique)) == (uses, texts.count("<si>"))


@pytest.mark.parametrize("most_plain", [1, 10_000])
def test_a_table_whose_cells_are_worked_out_keeps_its_formulas(
    monkeypatch: pytest.MonkeyPatch, most_plain: int
) -> None:
    made = (*COLUMNS[3:], Column("Both", "number", "=[@Miles]+[@Price]"))
    table = Table("Sums", made, ((1, 2.0, 3.0), (4, 5.0, 9.0), (6, 7.0, 13.0)))
    content = _written(monkeypatch, Sheet("Sums", "", tables=(table,)), most_plain=most_plain)
    for results, expected in ((False, ["=A5+B5", "=A6+B6", "=A7+B7"]), (True, [3, 9, 13])):
        page = openpyxl.load_workbook(BytesIO(content), data_only=results)["Sums"]
        assert [page.cell(row, 3).value for row in (5, 6, 7)] == expected


def test_a_chart_keeps_the_figures_that_it_draws(monkeypatch: pytest.MonkeyPatch) -> None:
    table = Table("Weeks", (Column("Week", "count"), Column("Jobs", "count")), ((1, 71), (2, 72)))
    chart = Chart("Jobs", "lines", "Weeks", "Week", ("Jobs",), "week", "jobs")
    sheet = Sheet("Weeks", "", charts=(chart,), tables=(table,))
    with zipfile.ZipFile(BytesIO(_written(monkeypatch, sheet, most_plain=1))) as file:
        drawn = file.read("xl/charts/chart1.xml").decode()
    assert [n for n in re.findall(r"<c:v>(\d+)</c:v>", drawn) if int(n) > 70] == ["71", "72"]


@pytest.mark.parametrize("figure", [float("nan"), float("inf")])
@pytest.mark.parametrize("most_plain", [1, 10_000])
def test_a_figure_that_is_none_is_not_written(
    monkeypatch: pytest.MonkeyPatch, figure: float, most_plain: int
) -> None:
    sheet = Sheet("Raw", "", tables=(Table("Raw", (Column("N", "words"),), ((1,), (figure,))),))
    with pytest.raises((ValueError, TypeError)):
        _written(monkeypatch, sheet, most_plain=most_plain)


@pytest.mark.parametrize("most_plain", [1, 10_000])
def test_words_that_look_like_a_rich_text_do_not_spoil_the_file(
    monkeypatch: pytest.MonkeyPatch, most_plain: int
) -> None:
    table = Table("Raw", COLUMNS[:1], (("<r>a & b</r>",), ("<r><t>x</t></r>",)))
    content = _written(monkeypatch, Sheet("Raw", "", tables=(table,)), most_plain=most_plain)
    page = openpyxl.load_workbook(BytesIO(content))["Raw"]
    assert [page.cell(row, 1).value.strip() for row in (5, 6)] == [
        "<r>a & b</r>",
        "<r><t>x</t></r>",
    ]


CELLS = st.one_of(
    *(st.none(), st.text(max_size=12), st.integers(-(10**9), 10**9)),
    *(st.floats(-1e9, 1e9), st.dates(date(1900, 1, 1), date(2100, 1, 1))),
)


@settings(max_examples=20)
@given(rows=st.lists(st.tuples(*[CELLS] * 2), min_size=2, max_size=40))
def test_any_cells_are_the_same_both_ways(rows: list[tuple[Cell, ...]]) -> None:
    columns = (Column("What", "words"), Column("Figure", "money"))
    sheet = Sheet("Raw", "", tables=(Table("Raw", columns, tuple(rows)),))
    with pytest.MonkeyPatch.context() as patch:
        _same(_written(patch, sheet, most_plain=1), _written(patch, sheet, most_plain=10_000))

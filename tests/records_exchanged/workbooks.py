"""Workbooks for the tests: written by a library, or by hand where a library would not do it."""

from __future__ import annotations

import csv
import io
import zipfile
from collections.abc import Mapping
from typing import Any

from desktop_app.records_exchanged.workbook_read.as_csv import turn

MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main"
LINK = "http://schemas.openxmlformats.org/officeDocument/2006/relationships"
_LINKS = "http://schemas.openxmlformats.org/package/2006/relationships"
HEAD = '<?xml version="1.0" encoding="UTF-8"?>'


def by_hand(
    rows: str, texts: str = "", styles: str = "", others: Mapping[str, bytes | str] | None = None
) -> bytes:
    """A package whose one sheet has this XML inside its sheetData."""
    parts: dict[str, bytes | str] = {
        "_rels/.rels": f'<Relationships xmlns="{_LINKS}"><Relationship Id="r1" '
        f'Type="{LINK}/officeDocument" Target="xl/workbook.xml"/></Relationships>',
        "xl/workbook.xml": f'<workbook xmlns="{MAIN}" xmlns:r="{LINK}"><sheets>'
        '<sheet name="Jobs" sheetId="1" r:id="r1"/></sheets></workbook>',
        "xl/_rels/workbook.xml.rels": f'<Relationships xmlns="{_LINKS}">'
        f'<Relationship Id="r1" Type="{LINK}/worksheet" Target="worksheets/sheet1.xml"/>'
        f'<Relationship Id="r2" Type="{LINK}/sharedStrings" Target="/xl/texts.xml"/>'
        f'<Relationship Id="r3" Type="{LINK}/styles" Target="styles.xml"/></Relationships>',
        "xl/worksheets/sheet1.xml": f'{HEAD}<worksheet xmlns="{MAIN}"><dimension ref="A1"/>'
        f"<sheetData>{rows}</sheetData></worksheet>",
        "xl/texts.xml": f'<sst xmlns="{MAIN}">{texts}</sst>',
        "xl/styles.xml": f'<styleSheet xmlns="{MAIN}">{styles}</styleSheet>',
        **(others or {}),
    }
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as package:
        for name, content in parts.items():
            package.writestr(name, content)
    return out.getvalue()


def by_library(rows: list[list[Any]], **options: Any) -> bytes:
    """A workbook as a widely used library writes it."""
    return with_sheets(("Jobs", rows), **options)


def with_sheets(*sheets: tuple[str, list[list[Any]]], **options: Any) -> bytes:
    """A workbook with these sheets, each of its name and rows."""
    import xlsxwriter

    out = io.BytesIO()
    book = xlsxwriter.Workbook(out, {"in_memory": True, "default_date_format": "d/m/yy", **options})
    for name, rows in sheets:
        sheet = book.add_worksheet(name)
        for number, row in enumerate(rows):
            sheet.write_row(number, 0, row)
    book.close()
    return out.getvalue()


def cells_of(workbook: bytes, sheet: str = "") -> list[list[str]]:
    """The cells of a sheet as they are turned into CSV."""
    out = io.BytesIO()
    turn(io.BytesIO(workbook), out, sheet, lambda _: None)
    return list(csv.reader(io.StringIO(out.getvalue().decode(), newline="")))

"""A workbook as lines of text: every cell, format, width, table and chart, for a readable diff."""

from __future__ import annotations

import re
import zipfile
from collections.abc import Iterator
from pathlib import Path
from typing import Any


def dump(path: Path) -> str:
    """Return what a workbook holds, one fact a line; times of making are not in it."""
    import openpyxl

    formulas = openpyxl.load_workbook(path)
    results = openpyxl.load_workbook(path, data_only=True)
    lines: list[str] = []
    for page in formulas:
        lines += _page(page, results[page.title])
    with zipfile.ZipFile(path) as file:
        charts = sorted(n for n in file.namelist() if n.startswith("xl/charts/chart"))
        for name in charts:
            lines.append(f"== chart {name}")
            lines += re.findall(r"<c:f>(.*?)</c:f>", file.read(name).decode())
    return "\n".join(lines) + "\n"


def _page(page: Any, results: Any) -> Iterator[str]:
    yield f"== {page.title}"
    set_up = page.page_setup
    fits = f"wide {set_up.fitToWidth or 1}, high {set_up.fitToHeight}"
    yield f"paper {set_up.paperSize} {set_up.orientation}, {fits}"
    yield f"frozen {page.freeze_panes}, repeated {page.print_title_rows}"
    yield f"foot {page.oddFooter.left.text!r} {page.oddFooter.right.text!r}"
    for table in page.tables.values():
        yield f"table {table.name} {table.ref}"
    for letter, column in sorted(page.column_dimensions.items()):
        yield f"width {letter} {column.width:.1f}"
    for number, row in sorted(page.row_dimensions.items()):
        if row.customHeight:
            yield f"height {number} {row.height:.0f}"
    for cells in page.iter_rows():
        for cell in cells:
            if cell.value is not None:
                yield _cell(cell, results[cell.coordinate].value)


def _cell(cell: Any, result: Any) -> str:
    look = [cell.number_format]
    look += ["bold"] if cell.font.bold else []
    look += ["wraps"] if cell.alignment.wrap_text else []
    shown = f"{cell.value!r}" if cell.value == result else f"{cell.value!r} -> {result!r}"
    return f"{cell.coordinate} {shown} [{', '.join(look)}]"

"""Puts the rows of long tables into a written workbook, where two model rows stand for them."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from io import BytesIO
from zipfile import ZIP_DEFLATED, ZipFile

from desktop_app.weekly_report.long_rows import Model, SharedTexts, rows_xml
from desktop_app.weekly_report.sheet_form import Cell, fitting_text

_TEXTS = "xl/sharedStrings.xml"
_LEVEL = 3  # of deflate; six takes twice as long for a file a tenth smaller
_MODEL = re.compile(rb'<c r="([A-Z]+)\d+" s="(\d+)"/>')
_COUNTS = re.compile(rb'count="(\d+)" uniqueCount="(\d+)"')
_REACH = re.compile(rb'displayName="([^"]+)" ref="([A-Z]+\d+:[A-Z]+)(\d+)"')


@dataclass(frozen=True, slots=True)
class LongTable:
    """Rows that are to be filled in, and how high each is in points.

    In the workbook its first row (`first`, counted from 1) has an empty cell for each column with
    the look of figures, its last row one with the look of texts. The table of that name is declared
    to reach over its first row alone: declared whole, XlsxWriter keeps a note of each cell.
    """

    name: str
    first: int
    rows: Sequence[Sequence[Cell]]
    heights: Sequence[float]


def filled(book: BytesIO, long: Mapping[int, Sequence[LongTable]]) -> bytes:
    """Return the workbook with its long tables, by the number of their sheet, counted from 1."""
    into = BytesIO()
    reach = {table.name.encode(): len(table.rows) for some in long.values() for table in some}
    tables = {f"xl/worksheets/sheet{number}.xml": some for number, some in long.items() if some}
    with ZipFile(book) as old, ZipFile(into, "w", ZIP_DEFLATED, compresslevel=_LEVEL) as new:
        counts = _COUNTS.search(old.read(_TEXTS))
        assert counts is not None
        texts = SharedTexts(int(counts[2]), fitting_text, uses=int(counts[1]))
        # The texts come last: only then is it known which there are.
        for name in sorted(old.namelist(), key=_TEXTS.__eq__):
            content = old.read(name)
            if name.startswith("xl/tables/"):
                content = _reaching(content, reach)
            with new.open(name, "w") as file:
                if name == _TEXTS:
                    content = _with_texts(content, texts)
                for piece in _pieces(content, tables.get(name, ()), texts):
                    file.write(piece)
    return into.getvalue()


def _pieces(content: bytes, tables: Sequence[LongTable], texts: SharedTexts) -> Iterator[bytes]:
    done = 0
    for table in tables:
        begin, (above, below), end = _model_rows(content, table)
        yield content[done:begin]
        yield from rows_xml(table.first, table.rows, table.heights, _models(above, below), texts)
        done = end
    yield content[done:]


def _model_rows(content: bytes, table: LongTable) -> tuple[int, tuple[bytes, bytes], int]:
    """Return where a table's two model rows begin, what stands in each, and where they end."""
    last = table.first + len(table.rows) - 1
    begin = content.index(b'<row r="%d"' % table.first)
    middle = content.index(b'<row r="%d"' % last, begin)
    end = content.index(b"</row>", middle) + len(b"</row>")
    return begin, (content[begin:middle], content[middle:end]), end


def _models(above: bytes, below: bytes) -> list[Model]:
    looks = zip(_MODEL.findall(above), _MODEL.findall(below), strict=True)
    return [Model(one[0].decode(), int(one[1]), int(other[1])) for one, other in looks]


def _with_texts(content: bytes, texts: SharedTexts) -> bytes:
    """Return the table of texts with those of the long tables behind the others."""
    unique = texts.first + len(texts.numbers)
    content = _COUNTS.sub(b'count="%d" uniqueCount="%d"' % (texts.uses, unique), content, count=1)
    return content.replace(b"</sst>", texts.xml() + b"</sst>")


def _reaching(content: bytes, rows: Mapping[bytes, int]) -> bytes:
    """Return the declaration of a table with as many rows as it has, where it is a long one."""
    found = _REACH.search(content)
    if found is None or found[1] not in rows:
        return content
    last = int(found[3]) + rows[found[1]] - 1
    return content.replace(b'ref="%s%s"' % found.groups()[1:], b'ref="%s%d"' % (found[2], last))

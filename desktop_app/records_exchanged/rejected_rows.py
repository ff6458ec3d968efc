"""The rows that were not taken, as they stood in the file, with a column that says why."""

from __future__ import annotations

import codecs
import csv
import io
from collections.abc import Iterable, Iterator, Mapping

from desktop_app.records_exchanged.csv_rows import Broken
from desktop_app.records_exchanged.formula_text import guarded
from desktop_app.records_exchanged.letters_of import decoding
from desktop_app.records_exchanged.read_table import Table
from desktop_app.records_exchanged.table_source import OpenTable

WHY = "why"


def rejected_rows(table: Table, reasons: Mapping[int, str]) -> Iterator[bytes]:
    """Give the bytes of a file of those rows, ready to be mended and read by the same map.

    `reasons` says why for the number of each row. What stands above the headers comes along; the
    file has the delimiter and the encoding of the one that it was taken from, and the same cells;
    one in two encodings comes back as UTF-8. Where it has a column `why`, its cells are replaced.
    What a spreadsheet program would take for a formula has an apostrophe in front, which is no part
    of it for who reads the file again.
    """
    found = table.found
    out = io.StringIO()
    # Without a mark spreadsheet programs take UTF-8 for something else.
    encoding = "utf-8-sig" if table.source.from_workbook else decoding(found.encoding)[0]
    encoder = codecs.getincrementalencoder(encoding)("replace")
    shape = found.shape
    writer = csv.writer(out, delimiter=shape.delimiter, quotechar=shape.quote)

    def write(cells: Iterable[str]) -> None:
        writer.writerow(map(_harmless, cells))

    width = len(found.headers)
    at = width - 1 if found.headers[-1] == WHY else width
    with OpenTable(table.source, found.encoding, shape, width=width) as rows:
        for number, cells in rows:
            broken = isinstance(cells, Broken)
            written = cells.cells if isinstance(cells, Broken) else cells
            if number < found.header_row:
                write(written)
            elif number == found.header_row:
                write([*found.header_cells[:at], WHY])
            elif number in reasons:
                filled = (written + [""] * at)[: max(at, len(written) if broken else at)]
                write([*filled, reasons[number]])
            if out.tell() > 1 << 16:
                yield encoder.encode(_taken(out))
    yield encoder.encode(_taken(out), final=True)


def _harmless(cell: str) -> str:
    """Return a cell as it may be opened; a NUL byte is what the reason was about.

    One that is guarded already stays as it is, however often its row comes back.
    """
    bare = cell.replace("\0", "")
    return bare if bare.startswith("'") else guarded(bare)


def _taken(out: io.StringIO) -> str:
    """Return what was written, and make room."""
    text = out.getvalue()
    out.seek(0)
    out.truncate()
    return text

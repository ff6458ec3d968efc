"""The process that turns a workbook on its standard input into CSV on its standard output.

It tells on its standard error, a JSON document a line, how far it is (`share`), at the end which
sheets there are (`sheets`), or why it gave up (`what`, `do`). It opens no file itself.
"""

from __future__ import annotations

import csv
import io
import json
import sys
from typing import Any, BinaryIO

from desktop_app.language import tr
from desktop_app.records_exchanged.workbook_read.book import read_book
from desktop_app.records_exchanged.workbook_read.number_forms import read_forms
from desktop_app.records_exchanged.workbook_read.parts import Parts, WorkbookCannot
from desktop_app.records_exchanged.workbook_read.sheet import Sheet
from desktop_app.records_exchanged.workbook_read.texts import read_texts

REFUSED = 3
MOST_BYTES_OUT = 4_000_000_000
MOST_MEMORY = 1_500_000_000
MOST_SECONDS = 3_600


def limit_myself() -> None:
    """Let the system end this process where it takes too much, if the system can."""
    try:
        import resource
    except ImportError:  # Windows has no such limits; what is counted while reading holds there
        return
    resource.setrlimit(resource.RLIMIT_AS, (MOST_MEMORY, MOST_MEMORY))
    resource.setrlimit(resource.RLIMIT_CPU, (MOST_SECONDS, MOST_SECONDS))


class _Writing:
    """Writes rows with their gaps, so that a row keeps its number; all as wide as the first."""

    def __init__(self, out: BinaryIO) -> None:
        self._text = io.TextIOWrapper(out, encoding="utf-8", errors="replace", newline="")
        self._writer = csv.writer(self._text)
        self._next = 1
        self._width = 0
        self._written = 0

    def row(self, number: int, cells: list[str]) -> None:
        while cells and not cells[-1]:
            cells.pop()
        if not cells:
            return
        self._text.write("\r\n" * (number - self._next))
        self._next = number + 1
        self._width = self._width or (len(cells) if len(cells) > 1 else 0)
        cells += [""] * (self._width - len(cells))
        self._written += self._writer.writerow(cells)
        if self._written > MOST_BYTES_OUT:
            raise WorkbookCannot(tr("The workbook holds more text than is read."))

    def finish(self) -> None:
        self._text.flush()


def turn(workbook: BinaryIO, out: BinaryIO, sheet: str, tell: Any) -> None:
    """Write the sheet's rows; `tell` takes what goes to the standard error."""
    parts = Parts(workbook)
    book = read_book(parts, sheet)
    tell({"share": 0.0})
    texts = read_texts(parts, book.texts)
    writing = _Writing(out)
    reading = Sheet(texts, read_forms(parts, book.styles), book.day_zero, writing.row)
    reading.reader.read(parts.pieces(book.sheet, progress=lambda share: tell({"share": share})))
    writing.finish()
    tell({"sheets": book.sheets})


def main() -> int:
    """Turn the workbook; the exit status says whether it was."""
    limit_myself()

    def tell(facts: dict[str, Any]) -> None:
        sys.stderr.write(json.dumps(facts) + "\n")
        sys.stderr.flush()

    try:
        turn(sys.stdin.buffer, sys.stdout.buffer, sys.argv[1] if len(sys.argv) > 1 else "", tell)
    except WorkbookCannot as trouble:
        tell({"what": trouble.what, "do": trouble.do})
        return REFUSED
    except MemoryError:
        tell({"what": tr("The workbook needs more memory than it is given."), "do": ""})
        return REFUSED
    return 0


if __name__ == "__main__":
    sys.exit(main())

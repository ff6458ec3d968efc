"""Where the text of a table comes from: opened anew for each time that it is read through."""

from __future__ import annotations

from collections.abc import Callable, Generator, Iterator
from dataclasses import dataclass
from typing import BinaryIO

from desktop_app.language import tr
from desktop_app.records_exchanged.csv_rows import Broken, CsvRows
from desktop_app.records_exchanged.table_shape import TableShape
from desktop_app.records_exchanged.text_lines import TextLines
from desktop_app.shop_record.trouble import ShopTrouble

# Told now and then which share of the work is done; what it raises ends the reading.
Progress = Callable[[float], None]
_ROWS_BETWEEN = 5_000
_PIECE = 1 << 20


@dataclass(frozen=True, slots=True)
class TableSource:
    """`opened` gives the bytes from the start; `from_workbook` that they were made from one.

    `sheets` are those that the workbook has, one of which this is. What was made from it is UTF-8,
    parted by commas, its days ISO 8601, its numbers with a point.
    """

    name: str
    size: int
    opened: Callable[[], BinaryIO]
    from_workbook: bool = False
    sheets: tuple[str, ...] = ()

    def pieces(self) -> Iterator[bytes]:
        """Give all bytes, a megabyte at a time."""
        with self.opened() as stream:
            while piece := stream.read(_PIECE):
                yield piece


class OpenTable:
    """The rows of a source that is read through: each with its number, then `close`."""

    def __init__(
        self,
        source: TableSource,
        encoding: str,
        shape: TableShape,
        progress: Progress | None = None,
        width: int = 0,
    ) -> None:
        self._source = source
        self._encoding = encoding
        self._progress = progress
        self._stream = source.opened()
        self._lines = TextLines(self._stream, encoding)
        self._rows = CsvRows(self._lines, shape, width)
        self._numbered = self._number()

    def __iter__(self) -> Iterator[tuple[int, list[str] | Broken]]:
        return self._numbered

    def expect(self, width: int) -> None:
        """Lay down how many cells a row has, now that the headers were read."""
        self._rows.width = width

    def close(self) -> None:
        """Close the file."""
        self._numbered.close()
        self._lines.close()

    def __enter__(self) -> OpenTable:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()

    def _number(self) -> Generator[tuple[int, list[str] | Broken], None, None]:
        number = 0
        try:
            for number, cells in enumerate(self._rows, 1):
                yield number, cells
                if self._progress is not None and number % _ROWS_BETWEEN == 0:
                    self._progress(min(1.0, self._stream.tell() / max(1, self._source.size)))
        except UnicodeError as error:
            raise ShopTrouble(
                tr(
                    "{file} is not written in {encoding} (after row {row}).",
                    file=self._source.name,
                    encoding=self._encoding,
                    row=number,
                ),
                do=tr(
                    "Save it as UTF-8, or say its encoding (from the shell: in a map, --columns)."
                ),
            ) from error

"""The table of texts that a workbook's cells refer to by number."""

from __future__ import annotations

import re
from array import array

from desktop_app.language import tr
from desktop_app.records_exchanged.workbook_read.parts import Parts, WorkbookCannot
from desktop_app.records_exchanged.workbook_read.xml_read import XmlReader

MOST_TEXT_BYTES = 700_000_000
# A sign that XML can't hold is written _x0007_ (ECMA-376 part 1, 22.9.2.19, ST_Xstring).
_ESCAPED = re.compile(r"_x([0-9A-Fa-f]{4})_")


def unescaped(text: str) -> str:
    """Return a text with its escaped signs as they are."""
    return _ESCAPED.sub(_sign, text) if "_x" in text else text


def _sign(match: re.Match[str]) -> str:
    """Return the sign; NUL and halves of signs are none, and stay as they are written."""
    number = int(match[1], 16)
    return match[0] if number == 0 or 0xD800 <= number <= 0xDFFF else chr(number)


class Texts:
    """All texts one after another in UTF-8 with where each ends: a fifth of a list of strings."""

    def __init__(self) -> None:
        self._bytes = bytearray()
        self._ends = array("Q", [0])

    def __len__(self) -> int:
        return len(self._ends) - 1

    def __getitem__(self, index: int) -> str:
        if not 0 <= index < len(self):
            raise WorkbookCannot(tr("The workbook refers to a text that it doesn't have."))
        return self._bytes[self._ends[index] : self._ends[index + 1]].decode("utf-8")

    def append(self, text: str) -> None:
        """Add one text; a WorkbookCannot where there are too many."""
        self._bytes += text.encode("utf-8", "replace")
        self._ends.append(len(self._bytes))
        if len(self._bytes) + 8 * len(self._ends) > MOST_TEXT_BYTES:
            raise WorkbookCannot(tr("The workbook has more text than is read."))


class _Collecting:
    """Gathers the runs of each entry, without the reading aids of East Asian texts."""

    def __init__(self, texts: Texts) -> None:
        self.texts = texts
        self.reader = XmlReader(self)
        self._runs: list[str] = []
        self._aside = False

    def start(self, name: str, values: dict[str, str]) -> None:
        if name == "si":
            self._runs.clear()
        elif name == "rPh":
            self._aside = True
        elif name == "t" and not self._aside:
            self.reader.listen(self._runs.append)

    def end(self, name: str) -> None:
        if name == "t":
            self.reader.listen(None)
        elif name == "rPh":
            self._aside = False
        elif name == "si":
            self.texts.append(unescaped("".join(self._runs)))


def read_texts(parts: Parts, part: str) -> Texts:
    """Return the table of texts; an empty one where the workbook has none."""
    collecting = _Collecting(Texts())
    collecting.reader.read(parts.pieces(part))
    return collecting.texts

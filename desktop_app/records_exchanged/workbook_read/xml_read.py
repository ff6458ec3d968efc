"""XML told element by element, without document types and without any text beyond what is given."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import Protocol
from xml.parsers import expat

from desktop_app.language import tr
from desktop_app.records_exchanged.workbook_read.parts import SAVE_AS_CSV, WorkbookCannot

# The name spaces of ECMA-376, transitional and strict, and the references to other parts.
_SPACES = (
    "http://schemas.openxmlformats.org/spreadsheetml/2006/main",
    "http://purl.oclc.org/ooxml/spreadsheetml/main",
    "http://schemas.openxmlformats.org/package/2006/relationships",
)
_KNOWN = (
    *("sheet", "workbookPr", "Relationship", "numFmt", "cellXfs", "xf"),
    *("row", "c", "v", "t", "f", "si", "rPh"),
)
_LOCAL = {f"{space} {name}": name for space in _SPACES for name in _KNOWN}


class Told(Protocol):
    """Who is told of the elements; their names are those without the namespace."""

    def start(self, name: str, values: dict[str, str]) -> None:
        """An element begins."""

    def end(self, name: str) -> None:
        """An element ends."""


class XmlReader:
    """Reads pieces of a document and tells of its elements, of those that are known here."""

    def __init__(self, told: Told) -> None:
        self._parser = parser = expat.ParserCreate(namespace_separator=" ")
        parser.buffer_text = True
        self._told = told
        parser.StartElementHandler = self._start
        parser.EndElementHandler = self._end
        parser.StartDoctypeDeclHandler = self._refuse
        parser.EntityDeclHandler = self._refuse

    def listen(self, told: Callable[[str], None] | None) -> None:
        """Have each piece of text told from here on, or pass it over."""
        self._parser.CharacterDataHandler = told

    def read(self, pieces: Iterable[bytes]) -> None:
        """Read a whole document; a WorkbookCannot where it is none."""
        empty = True
        try:
            for piece in pieces:
                empty = False
                self._parser.Parse(piece, False)
            if not empty:
                self._parser.Parse(b"", True)
        except (expat.ExpatError, LookupError) as error:  # or of an encoding that nobody knows
            raise WorkbookCannot(tr("The workbook is damaged inside."), do=SAVE_AS_CSV) from error

    def _start(self, name: str, values: dict[str, str]) -> None:
        local = _LOCAL.get(name)
        if local is not None:
            self._told.start(local, values)

    def _end(self, name: str) -> None:
        local = _LOCAL.get(name)
        if local is not None:
            self._told.end(local)

    def _refuse(self, *_: object) -> None:
        raise WorkbookCannot(tr("The workbook declares a document type; no spreadsheet does."))

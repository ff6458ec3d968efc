"""What a workbook says of itself: its sheets, where they lie, from when it counts its days."""

from __future__ import annotations

import posixpath
from dataclasses import dataclass
from datetime import date

from desktop_app.language import tr
from desktop_app.records_exchanged.workbook_read.parts import (
    MOST_IN_SMALL_PART,
    SAVE_AS_CSV,
    Parts,
    WorkbookCannot,
)
from desktop_app.records_exchanged.workbook_read.xml_read import XmlReader

_RELATION = "http://schemas.openxmlformats.org/officeDocument/2006/relationships id"
_STRICT_RELATION = "http://purl.oclc.org/ooxml/officeDocument/relationships id"


@dataclass(frozen=True, slots=True)
class Book:
    """`sheet` is the part of the sheet that is read, `sheets` the names of all that are shown.

    Day 0 of a serial number is `day_zero` (ECMA-376 part 1, 18.17.4.1).
    """

    sheet: str
    sheets: tuple[str, ...]
    texts: str
    styles: str
    day_zero: date


class _Collected:
    """Collects what elements carry in their attributes."""

    def __init__(self) -> None:
        self.found: list[tuple[str, dict[str, str]]] = []

    def start(self, name: str, values: dict[str, str]) -> None:
        if len(self.found) < 10_000:
            self.found.append((name, values))

    def end(self, name: str) -> None:
        pass


def read_book(parts: Parts, wanted: str = "") -> Book:
    """Return the workbook's outline, with the sheet of that name, else the first that is shown."""
    book = _target(parts, "_rels/.rels", "/officeDocument") or "xl/workbook.xml"
    if not parts.has(book):
        raise WorkbookCannot(tr("This is no XLSX workbook."), do=SAVE_AS_CSV)
    folder, name = posixpath.split(book)
    links = f"{folder}/_rels/{name}.rels"
    elements = _elements(parts, book)
    shown = [
        values
        for name, values in elements
        if name == "sheet" and values.get("state", "visible") == "visible"
    ]
    names = tuple(values.get("name", "") for values in shown)
    chosen = next((values for values in shown if values.get("name") == wanted), None)
    if wanted and chosen is None:
        there = ", ".join(names)[:300]
        raise WorkbookCannot(
            tr("The workbook has no sheet “{sheet}”.", sheet=wanted[:60]),
            do=tr("It has: {there}.", there=there),
        )
    if not shown:
        raise WorkbookCannot(tr("The workbook has no sheet."))
    chosen = chosen or shown[0]
    link = chosen.get(_RELATION, chosen.get(_STRICT_RELATION, ""))
    sheet = next((to for to, _, at in _links(parts, links) if at == link), "")
    if not parts.has(sheet):
        raise WorkbookCannot(tr("The workbook's sheet is missing inside."), do=SAVE_AS_CSV)
    from_1904 = any(
        name == "workbookPr" and values.get("date1904", "0") in ("1", "true")
        for name, values in elements
    )
    return Book(
        sheet=sheet,
        sheets=names,
        texts=_target(parts, links, "/sharedStrings"),
        styles=_target(parts, links, "/styles"),
        day_zero=date(1904, 1, 1) if from_1904 else date(1899, 12, 30),
    )


def _elements(parts: Parts, part: str) -> list[tuple[str, dict[str, str]]]:
    told = _Collected()
    XmlReader(told).read(parts.pieces(part, MOST_IN_SMALL_PART))
    return told.found


def _links(parts: Parts, part: str) -> list[tuple[str, str, str]]:
    """Return part, kind and id of each relationship of a part (ECMA-376 part 2, 9.3)."""
    folder = posixpath.dirname(posixpath.dirname(part))
    return [
        (
            posixpath.normpath(posixpath.join("/", folder, values.get("Target", ""))).lstrip("/"),
            values.get("Type", ""),
            values.get("Id", ""),
        )
        for name, values in _elements(parts, part)
        if name == "Relationship"
    ]


def _target(parts: Parts, links: str, kind: str) -> str:
    return next((to for to, of, _ in _links(parts, links) if of.endswith(kind)), "")

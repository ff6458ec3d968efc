"""Rows on the clipboard: cells in a spreadsheet, a table in a letter, a picture elsewhere."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from html import escape

from PySide6.QtCore import QMimeData
from PySide6.QtGui import QGuiApplication, QImage

_JOINER = "\u2060"  # keeps a sign beside its amount on a line; a spreadsheet would read no number
Rows = Iterable[Sequence[str]]


def copy_rows(rows: Rows, picture: QImage | None = None) -> None:
    """Put rows on the clipboard as text, as a table, and as the picture of them."""
    lines = [[cell.replace(_JOINER, "") for cell in row] for row in rows]
    mime = QMimeData()
    mime.setText(as_text(lines))
    cells = ("".join(f"<td>{escape(cell)}</td>" for cell in line) for line in lines)
    mime.setHtml(f"<table>{''.join(f'<tr>{line}</tr>' for line in cells)}</table>")
    if picture is not None:
        mime.setImageData(picture)
    QGuiApplication.clipboard().setMimeData(mime)


def as_text(rows: Rows) -> str:
    """Return rows as lines, with tabs between their cells."""
    return "".join("\t".join(row) + "\n" for row in rows)

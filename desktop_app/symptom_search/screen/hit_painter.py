"""Paints one found job as plain text, with the matched words in bold."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import ceil

from PySide6 import QtWidgets
from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRectF, QSize
from PySide6.QtGui import QColor, QFont, QFontMetrics, QPainter, QPalette
from PySide6.QtWidgets import QAbstractScrollArea, QStyledItemDelegate

from desktop_app.language import tr
from desktop_app.symptom_search.find import Hit
from desktop_app.symptom_search.screen.hit_rows import HitRows, outcome, title
from desktop_app.symptom_search.screen.laid_lines import LaidLines, Span, lines_height

Index = QModelIndex | QPersistentModelIndex
PAD = 9
NARROW = 200  # pixels; the list is wider as soon as it is laid out
WHY = 3  # the last of a job's texts
# So many letters are given lines, in whatever size; the rest is in the tooltip and on its page.
TITLE, CONCERN, OUTCOME, REASONS = 60, 120, 240, 120


class HitPainter(QStyledItemDelegate):
    """Lays a job out as: title, concern, cause and correction, why it was found."""

    def sizeHint(self, option: QtWidgets.QStyleOptionViewItem, index: Index) -> QSize:
        row = index.data(HitRows.HIT)
        line = option.fontMetrics.lineSpacing()
        view = option.widget
        width = view.viewport().width() if isinstance(view, QAbstractScrollArea) else NARROW
        if not isinstance(row, Hit):
            return QSize(width, line + 2 * PAD)
        font, inside = option.font, max(NARROW, width) - 2 * PAD - 4
        texts = _texts(row, font, inside)
        high = sum(lines_height(text, font, inside, most, bold) for text, most, bold in texts)
        return QSize(width, ceil(high) + 2 * PAD)

    def paint(
        self, painter: QPainter, option: QtWidgets.QStyleOptionViewItem, index: Index
    ) -> None:
        row = index.data(HitRows.HIT)
        painter.save()
        chosen = bool(option.state & QtWidgets.QStyle.StateFlag.State_Selected)
        palette: QPalette = option.palette
        if chosen:
            painter.fillRect(option.rect, palette.highlight())
        ink = palette.highlightedText().color() if chosen else palette.text().color()
        quiet = ink if chosen else palette.placeholderText().color()
        box = QRectF(option.rect).adjusted(PAD + 4, PAD, -PAD, -PAD)
        if isinstance(row, Hit):
            self._paint_hit(painter, option, box, row, ink, quiet)
            painter.setPen(palette.mid().color())
            painter.drawLine(option.rect.bottomLeft(), option.rect.bottomRight())
        else:
            LaidLines(str(row), _bold(option.font), box.width()).draw(painter, box, quiet)
        painter.restore()

    def _paint_hit(
        self,
        painter: QPainter,
        option: QtWidgets.QStyleOptionViewItem,
        box: QRectF,
        hit: Hit,
        ink: QColor,
        quiet: QColor,
    ) -> None:
        for number, (text, most, bold) in enumerate(_texts(hit, option.font, box.width())):
            lines = LaidLines(text, option.font, box.width(), most, bold)
            lines.draw(painter, box, quiet if number == WHY else ink)


def _texts(hit: Hit, font: QFont, width: float) -> Iterator[tuple[str, int, Sequence[Span]]]:
    """Yield the texts of a job, how many lines each may have, and what of it is bold."""
    letter = QFontMetrics(font).averageCharWidth()
    yield title(hit), ceil(TITLE * letter / width), [(0, len(hit.number))]
    yield hit.concern, ceil(CONCERN * letter / width), hit.marks.get("concern", ())
    yield outcome(hit), ceil(OUTCOME * letter / width), _outcome_marks(hit)
    if hit.why:
        why = tr("why:") + "  " + "  ·  ".join(hit.why)
        yield why, ceil(REASONS * letter / width), ()


def _outcome_marks(hit: Hit) -> list[Span]:
    """Move the marks of cause and correction to where they stand in their common line."""
    line = outcome(hit)
    moved = []
    for name, text in (("cause", hit.cause), ("correction", hit.correction)):
        start = line.rfind(text) if name == "correction" else line.find(text)
        if text and start >= 0:
            moved += [(start + a, start + b) for a, b in hit.marks.get(name, ())]
    return moved


def _bold(font: QFont) -> QFont:
    bold = QFont(font)
    bold.setBold(True)
    return bold

"""Paints one found job: four lines of plain text, with the matched words in bold."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QPainter, QPalette, QTextCharFormat, QTextLayout
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem

from desktop_app.language import tr
from desktop_app.symptom_search.find import Hit
from desktop_app.symptom_search.screen.hit_rows import HitRows, outcome, title

Index = QModelIndex | QPersistentModelIndex
Span = tuple[int, int]
PAD = 9
_BREAKS = str.maketrans("\n\r\t\u2028\u2029", "     ")


class HitPainter(QStyledItemDelegate):
    """Lays a job out as: title, concern, cause and correction, why it was found."""

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        row = index.data(HitRows.HIT)
        line = option.fontMetrics.lineSpacing()
        if not isinstance(row, Hit):
            return QSize(200, line + 2 * PAD)
        return QSize(200, line * (4 if row.why else 3) + 2 * PAD + 4)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        row = index.data(HitRows.HIT)
        painter.save()
        chosen = bool(option.state & QStyle.StateFlag.State_Selected)
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
            paint_line(painter, box, str(row), _bold(option.font), quiet)
        painter.restore()

    def _paint_hit(
        self,
        painter: QPainter,
        option: QStyleOptionViewItem,
        box: QRectF,
        hit: Hit,
        ink: QColor,
        quiet: QColor,
    ) -> None:
        step = option.fontMetrics.lineSpacing() + 1
        marks = hit.marks
        paint_line(painter, box, title(hit), option.font, ink, [(0, len(hit.number))])
        box.translate(0, step)
        paint_line(painter, box, hit.concern, option.font, ink, marks.get("concern", ()))
        box.translate(0, step)
        paint_line(painter, box, outcome(hit), option.font, ink, _outcome_marks(hit))
        if hit.why:
            box.translate(0, step)
            why = tr("why:") + "  " + "  ·  ".join(hit.why)
            paint_line(painter, box, why, option.font, quiet)


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


def paint_line(
    painter: QPainter,
    box: QRectF,
    text: str,
    font: QFont,
    ink: QColor,
    bold: Iterable[Span] = (),
) -> None:
    """Draw one line of plain text, stretches of it in bold; dots stand where it is cut off."""
    layout = QTextLayout(text.translate(_BREAKS), font)
    heavy = QTextCharFormat()
    heavy.setFontWeight(QFont.Weight.Bold)
    ranges = []
    for start, end in bold:
        stretch = QTextLayout.FormatRange()
        stretch.start, stretch.length, stretch.format = start, end - start, heavy
        ranges.append(stretch)
    layout.setFormats(ranges)
    layout.beginLayout()
    line = layout.createLine()
    line.setLineWidth(1e6)
    layout.endLayout()
    painter.setPen(ink)
    painter.save()
    dots = painter.fontMetrics().horizontalAdvance("…") + 2
    too_long = line.naturalTextWidth() > box.width()
    height = line.height() + 2
    painter.setClipRect(QRectF(box.x(), box.y(), box.width() - (dots if too_long else 0), height))
    layout.draw(painter, QPointF(box.x(), box.y()))
    painter.restore()
    if too_long:
        rest = QRectF(box.right() - dots, box.y(), dots, height)
        painter.setFont(font)
        painter.drawText(rest, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, "…")

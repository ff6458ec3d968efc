"""Plain text laid out in at most so many lines, stretches of it in bold, and drawn."""

from __future__ import annotations

from collections.abc import Iterable
from typing import cast

from PySide6 import QtGui
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter

Span = tuple[int, int]
_BREAKS = str.maketrans("\n\r\t\u2028\u2029", "     ")
_WIDE = 2  # times the usual width, or less, are the letters of a text, bold ones too
_ENDLESS = 1e6  # pixels; the last line takes all that is left, to be cut off


class LaidLines:
    """The lines of a text at a width; dots stand where the last one is cut off."""

    def __init__(
        self, text: str, font: QFont, width: float, most: int = 1, bold: Iterable[Span] = ()
    ) -> None:
        self._font, self._width = font, width
        self._layout = QtGui.QTextLayout(text.translate(_BREAKS), font)
        option = QtGui.QTextOption()
        option.setWrapMode(QtGui.QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
        self._layout.setTextOption(option)
        self._layout.setFormats([_heavy(span) for span in bold])
        self._layout.beginLayout()
        self.height, self._last, self._cut = 0.0, 0.0, False
        for number in range(1, most + 1):
            line = self._layout.createLine()
            if not line.isValid():
                break
            line.setLineWidth(_ENDLESS if number == most else max(width, 1))
            line.setPosition(QPointF(0, self.height))
            self._last = line.height()
            self.height += line.height() + 1
            self._cut = line.naturalTextWidth() > width
        self._layout.endLayout()

    def draw(self, painter: QPainter, box: QRectF, ink: QColor) -> None:
        """Draw the lines from the top of a box on, and move the box below them."""
        painter.setPen(ink)
        wide = self._whole_letters(painter) if self._cut else self._width
        last = QRectF(box.x(), box.y() + self.height - self._last - 1, wide, self._last + 2)
        seen = QtGui.QPainterPath()
        seen.addRect(QRectF(box.x(), box.y(), self._width, last.y() - box.y()))
        seen.addRect(last)
        painter.save()
        painter.setClipPath(seen)
        self._layout.draw(painter, box.topLeft())
        painter.restore()
        if self._cut:
            rest = QRectF(last.right(), last.y(), self._width, last.height())
            painter.setFont(self._font)
            painter.drawText(rest, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, "…")
        box.translate(0, self.height)

    def _whole_letters(self, painter: QPainter) -> float:
        """Return how wide the letters of the last line are that leave room for the dots."""
        room = self._width - painter.fontMetrics().horizontalAdvance("…") - 2
        line = self._layout.lineAt(self._layout.lineCount() - 1)
        first_off = line.xToCursor(room, QtGui.QTextLine.CursorPosition.CursorOnCharacter)
        return cast("tuple[float, int]", line.cursorToX(first_off))[0]


def lines_height(
    text: str, font: QFont, width: float, most: int = 1, bold: Iterable[Span] = ()
) -> float:
    """Return how high a text will be; one that surely fits a line is not laid out for that."""
    metrics = QFontMetricsF(font)
    if most == 1 or len(text) * metrics.averageCharWidth() * _WIDE <= width:
        return metrics.height() + 1
    return LaidLines(text, font, width, most, bold).height


def _heavy(span: Span) -> QtGui.QTextLayout.FormatRange:
    stretch = QtGui.QTextLayout.FormatRange()
    stretch.start, stretch.length = span[0], span[1] - span[0]
    stretch.format = QtGui.QTextCharFormat()
    stretch.format.setFontWeight(QFont.Weight.Bold)
    return stretch

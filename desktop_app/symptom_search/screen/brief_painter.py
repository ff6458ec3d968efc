"""Paints one found job in two lines: which job and its concern, and what was done."""

from __future__ import annotations

from PySide6 import QtWidgets
from PySide6.QtCore import QRectF, QSize
from PySide6.QtGui import QColor, QFontMetrics, QPainter

from desktop_app.language import tr
from desktop_app.symptom_search.found import Hit
from desktop_app.symptom_search.screen.hit_painter import PAD, HitPainter, Index
from desktop_app.symptom_search.screen.laid_lines import LaidLines


class BriefPainter(HitPainter):
    """For a list that stands beside something else."""

    def sizeHint(self, option: QtWidgets.QStyleOptionViewItem, index: Index) -> QSize:
        return QSize(200, row_height(option.fontMetrics))

    def _paint_hit(
        self,
        painter: QPainter,
        option: QtWidgets.QStyleOptionViewItem,
        box: QRectF,
        hit: Hit,
        ink: QColor,
        quiet: QColor,
    ) -> None:
        box.translate(0, -PAD / 2)
        start = len(hit.number) + 2
        marks = [(start + a, start + b) for a, b in hit.marks.get("concern", ())]
        told = f"{hit.number}  {hit.concern}"
        bold = [(0, len(hit.number)), *marks]
        LaidLines(told, option.font, box.width(), bold=bold).draw(painter, box, ink)
        done = hit.correction or (tr("nothing written") if hit.left else tr("not handed over yet"))
        LaidLines(f"{hit.day}  →  {done}", option.font, box.width()).draw(painter, box, quiet)


def row_height(metrics: QFontMetrics) -> int:
    """Return the height of a row in pixels."""
    return metrics.lineSpacing() * 2 + PAD + 3

"""The drawing of one dimension: what was measured on both parts, to scale."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize
from PySide6.QtGui import QPainter, QPaintEvent, QPalette
from PySide6.QtWidgets import QSizePolicy, QWidget

from desktop_app.language import tr
from desktop_app.parts_compared.screen.dial_picture import draw_count, draw_dial
from desktop_app.parts_compared.screen.drawn_values import DrawnValues
from desktop_app.parts_compared.screen.scale_picture import draw_scale
from desktop_app.shop_window.texts import tooltip

PICTURES = {"orientation": draw_dial, "count": draw_count}


class DimensionDrawing(QWidget):
    """A small picture without text to press; it says itself in words to those who listen."""

    def __init__(self, label: str) -> None:
        super().__init__()
        self._values: DrawnValues | None = None
        self.setAccessibleName(tr("drawing of {label}", label=label))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        return QSize(240, self._height())

    def minimumSizeHint(self) -> QSize:
        return QSize(150, self._height())

    def show_values(self, values: DrawnValues | None) -> None:
        """Draw these values; None draws nothing."""
        if values == self._values:
            return
        self._values = values
        self.setAccessibleDescription("" if values is None else values.words())
        self.setToolTip("" if values is None else tooltip(f"{values.words()} {values.legend()}"))
        self.updateGeometry()
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        values = self._values
        if values is None or not self._is_something():
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        font = self.font()
        font.setPointSizeF(max(8.0, font.pointSizeF() * 0.8))
        painter.setFont(font)
        area = QRectF(self.rect()).adjusted(2, 2, -2, -2)
        palette = QPalette(self.palette())
        palette.setColor(QPalette.ColorRole.Text, palette.color(QPalette.ColorRole.WindowText))
        PICTURES.get(values.role, draw_scale)(painter, area, values, palette)
        painter.end()

    def _is_something(self) -> bool:
        values = self._values
        return values is not None and (values.removed or values.replacement) is not None

    def _height(self) -> int:
        return self.fontMetrics().height() + 52 if self._is_something() else 1

"""A photo lying on the stage; it draws itself from the copy that fits the enlargement."""

from __future__ import annotations

from PySide6.QtCore import QRectF
from PySide6.QtGui import QImage, QPainter
from PySide6.QtWidgets import QGraphicsItem, QStyleOptionGraphicsItem, QWidget


class PhotoItem(QGraphicsItem):
    """Its coordinates are the upright photo's pixels, whichever copy is drawn."""

    def __init__(self) -> None:
        super().__init__()
        self.setFlag(QGraphicsItem.GraphicsItemFlag.ItemUsesExtendedStyleOption)
        self._rect = QRectF()
        self._copies: list[QImage] = []

    def lay(self, width: int, height: int, copies: list[QImage]) -> None:
        """Show copies of one photo of `width` × `height` pixels, largest copy first."""
        self.prepareGeometryChange()
        self._rect = QRectF(0, 0, width, height)
        self._copies = copies
        self.update()

    def boundingRect(self) -> QRectF:
        return self._rect

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        scale = option.levelOfDetailFromTransform(painter.worldTransform())
        copy = self._copy_for(self._rect.width() * scale)
        if copy is None:
            return
        seen = option.exposedRect.intersected(self._rect)
        across = copy.width() / self._rect.width()
        down = copy.height() / self._rect.height()
        source = QRectF(
            seen.x() * across, seen.y() * down, seen.width() * across, seen.height() * down
        )
        # Far in, single pixels are shown as they are: a smoothed edge would be invented.
        smooth = scale < 4 or across < 1
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform, smooth)
        painter.drawImage(seen, copy, source)

    def _copy_for(self, width: float) -> QImage | None:
        """Return the smallest copy that is still as wide as it is drawn."""
        enough = [copy for copy in self._copies if copy.width() >= width]
        return enough[-1] if enough else (self._copies[0] if self._copies else None)

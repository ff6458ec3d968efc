"""The magnifier: the pixels around a spot, nine times enlarged, beside the spot."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QGraphicsScene, QWidget

from desktop_app.part_photos.marks.mark import Pixel
from desktop_app.part_photos.screen.bench_mark_item import INK, draw_cross

ENLARGED = 9  # screen pixels for one pixel of the photo
SIZE = 153  # screen pixels: 17 pixels of the photo
_AWAY = 26  # screen pixels between the spot and the magnifier


class Magnifier(QWidget):
    """Lies over a stage and follows a spot of its photo; the mouse goes through it."""

    def __init__(self, stage: QWidget, scene: QGraphicsScene) -> None:
        super().__init__(stage)
        self._stage = stage
        self._scene = scene
        self._spot: Pixel = (0.0, 0.0)
        self.resize(SIZE, SIZE)
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.hide()

    def spot(self) -> Pixel:
        """Return the point in its middle, in pixels of the photo."""
        return self._spot

    def look_at(self, spot: Pixel, seen_at: QPointF) -> None:
        """Show a point of the photo, which lies at `seen_at` on the stage."""
        self._spot = spot
        room = self._stage.rect()
        right = seen_at.x() + _AWAY + SIZE <= room.width()
        below = seen_at.y() + _AWAY + SIZE <= room.height()
        x = seen_at.x() + _AWAY if right else seen_at.x() - _AWAY - SIZE
        y = seen_at.y() + _AWAY if below else seen_at.y() - _AWAY - SIZE
        self.move(
            int(min(max(x, 0), max(0, room.width() - SIZE))),
            int(min(max(y, 0), max(0, room.height() - SIZE))),
        )
        self.show()
        self.raise_()
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), self.palette().alternateBase())
        seen = SIZE / ENLARGED
        source = QRectF(self._spot[0] + 0.5 - seen / 2, self._spot[1] + 0.5 - seen / 2, seen, seen)
        painter.save()
        self._scene.render(painter, QRectF(self.rect()), source)
        painter.restore()
        draw_cross(painter, QPointF(SIZE / 2, SIZE / 2), SIZE / 2, INK, gap=ENLARGED)
        painter.setPen(QPen(INK, 2))
        painter.drawRect(self.rect().adjusted(1, 1, -1, -1))
        painter.end()

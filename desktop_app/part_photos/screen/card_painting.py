"""Cards and their little pictures painted: on the screen, and on a printer in lines and areas."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import (
    QColor,
    QFont,
    QPainter,
    QPainterPath,
    QPaintEvent,
    QPalette,
    QPen,
    QPolygonF,
    QTransform,
)
from PySide6.QtWidgets import QSizePolicy, QWidget

from desktop_app.language import tr
from desktop_app.part_photos.bench_card.card_layout import CardLayout
from desktop_app.part_photos.bench_card.card_layouts import PAGES_MM, card_words
from desktop_app.part_photos.bench_card.card_page import card_page
from desktop_app.part_photos.bench_card.drawing import TINT, Area, Ink, Shape, Stroke, Words
from desktop_app.part_photos.bench_card.how_to import SIZE_MM, HowTo
from desktop_app.shop_window.look import load_fonts

# On paper, whatever the window looks like.
PRINTED: Mapping[Ink, QColor] = {
    "black": QColor(0, 0, 0),
    "white": QColor(255, 255, 255),
    "tint": QColor(*TINT),
}
_LETTER = 100  # the size in which letters are outlined before they are made as small as needed


def paint(painter: QPainter, shapes: Iterable[Shape], inks: Mapping[Ink, QColor] = PRINTED) -> None:
    """Paint shapes with a painter whose unit is the millimetre."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    for shape in shapes:
        if isinstance(shape, Stroke):
            points = [QPointF(x, y) for x, y in shape.points]
            pen = QPen(inks["black"], shape.width, Qt.PenStyle.SolidLine, Qt.PenCapStyle.FlatCap)
            painter.setPen(pen)
            painter.drawPolyline(QPolygonF(points))
        else:
            ink = shape.ink if isinstance(shape, Area) else "black"
            painter.fillPath(_path(shape), inks[ink])


def _path(shape: Area | Words) -> QPainterPath:
    path = QPainterPath()
    if isinstance(shape, Words):
        font = QFont(load_fonts())
        font.setPixelSize(_LETTER)
        font.setBold(shape.bold)
        path.addText(0, 0, font, shape.words)
        scale = shape.size / _LETTER
        return QTransform.fromTranslate(*shape.at).scale(scale, scale).map(path)
    path.setFillRule(Qt.FillRule.WindingFill)
    for piece in shape.pieces:
        path.addPolygon(QPolygonF([QPointF(x, y) for x, y in piece]))
        path.closeSubpath()
    return path


class HowToPicture(QWidget):
    """One of the pictures that say how a card is used, in the window's own colours."""

    def __init__(self, step: HowTo) -> None:
        super().__init__()
        self._step = step
        self.setAccessibleName(tr("Picture: {words}", words=step.words))
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        self.setMinimumWidth(120)

    def sizeHint(self) -> QSize:
        return QSize(round(SIZE_MM[0] * 11), round(SIZE_MM[1] * 11))

    def paintEvent(self, _event: QPaintEvent) -> None:
        palette = self.palette()
        inks: dict[Ink, QColor] = {
            "black": palette.color(QPalette.ColorRole.Text),
            "white": palette.color(QPalette.ColorRole.Base),
            "tint": palette.color(QPalette.ColorRole.Button),
        }
        painter = QPainter(self)
        scale = min(self.width() / SIZE_MM[0], self.height() / SIZE_MM[1])
        painter.scale(scale, scale)
        paint(painter, self._step.shapes, inks)
        painter.end()


class CardPreview(QWidget):
    """A card as it will be printed, small."""

    def __init__(self, layout: CardLayout) -> None:
        super().__init__()
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self.show_card(layout)

    def show_card(self, layout: CardLayout) -> None:
        """Show another card."""
        self._page_mm = PAGES_MM[layout.paper]
        self._shapes = card_page(layout)
        self.setAccessibleName(tr("Preview: {card}", card=card_words(layout)))
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(216, 297)

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        wide, high = self._page_mm
        scale = min(self.width() / wide, self.height() / high)
        painter.scale(scale, scale)
        painter.fillRect(QRectF(0, 0, wide, high), PRINTED["white"])
        paint(painter, self._shapes)
        painter.end()

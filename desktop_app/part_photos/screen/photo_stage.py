"""The stage: one photo, whole or enlarged, moved by wheel, mouse or keys."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

from PySide6.QtCore import QPointF, QRectF, Qt, Signal, Slot
from PySide6.QtGui import (
    QImage,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QResizeEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QFrame, QGraphicsScene, QGraphicsView
from shiboken6 import isValid

from desktop_app.language import tr
from desktop_app.part_photos.kept_photo import KeptPhoto
from desktop_app.part_photos.loupe import (
    MOST_ZOOM,
    Fitting,
    Loupe,
    allowed_factor,
    fitting,
    kept_inside,
    moved,
    push_between,
    zoomed,
)
from desktop_app.part_photos.screen.photo_item import PhotoItem
from desktop_app.part_photos.screen.picture_image import first_view, full_picture
from desktop_app.part_photos.screen.thumbnail_shelf import shelf_of
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.errands import Errand

STEP = 1.25  # one turn of the wheel or one key
PUSH = 60.0  # screen pixels for one arrow key
_ARROWS = {
    Qt.Key.Key_Left: (PUSH, 0.0),
    Qt.Key.Key_Right: (-PUSH, 0.0),
    Qt.Key.Key_Up: (0.0, PUSH),
    Qt.Key.Key_Down: (0.0, -PUSH),
}


class PhotoStage(QGraphicsView):
    """Shows one photo; says what a person did with it, so that another stage can follow."""

    keys_said = (
        ("+, -, 0", tr("larger, smaller, the whole photo")),
        (tr("Arrows"), tr("push an enlarged photo, or move the chosen point of a mark")),
    )

    zoomed_by = Signal(float, float, float)  # factor; where, in pixels off the middle
    moved_by = Signal(float, float)  # screen pixels right and down
    made_whole = Signal()
    photo_wanted = Signal()  # the empty stage was clicked, or Enter pressed on it
    shown = Signal(object)  # KeptPhoto: its full picture is on the stage

    def __init__(
        self, desk: Desk, name: str = tr("Photo"), empty: str = tr("No photo chosen")
    ) -> None:
        super().__init__()
        self._desk, self._name, self._empty = desk, name, empty
        self._photo: KeptPhoto | None = None
        self._loupe = Loupe()
        self._errand: Errand | None = None
        self._held: QPointF | None = None
        self._opened_on: tuple[QRectF, float] | None = None
        self._opened_at = Loupe()
        self._words = empty
        self._copies: list[QImage] = []
        self._item = PhotoItem()
        self._scene = QGraphicsScene(self)
        self._scene.addItem(self._item)
        self.setScene(self._scene)
        self.setAcceptDrops(False)  # a photo dropped here is for what the stage is a part of
        self.viewport().setAcceptDrops(False)
        self.setAccessibleName(f"{name}: {empty}")
        self.setMinimumSize(260, 220)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setStyleSheet(
            "PhotoStage { border: 2px solid palette(mid); background: palette(alternate-base); }"
            "PhotoStage:focus { border: 2px solid palette(highlight); }"
        )
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setTransformationAnchor(QGraphicsView.ViewportAnchor.NoAnchor)
        self.setResizeAnchor(QGraphicsView.ViewportAnchor.NoAnchor)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        shelf_of(desk).fetched.connect(self._thumbnail_came)

    def photo(self) -> KeptPhoto | None:
        """Return the photo that is on the stage."""
        return self._photo

    def loupe(self) -> Loupe:
        """Return how far the photo is enlarged, and its point in the middle."""
        return self._loupe

    def copies(self) -> list[QImage]:
        """Return what is drawn of the photo now, largest first; nothing before it is decoded."""
        return self._copies

    def show_photo(self, photo: KeptPhoto | None) -> None:
        """Put a photo on the stage: its thumbnail at once, the whole picture when decoded."""
        if photo is not None and self._photo is not None and photo.sha256 == self._photo.sha256:
            self._photo = photo
            return
        if self._errand is not None:
            self._errand.stop()
            self._errand = None
        self._photo = photo
        self._loupe = self._opened_at = Loupe()
        self._opened_on = None
        self._lay([])
        if photo is None:
            self._say(self._empty)
            return
        self.setAccessibleName(f"{self._name}: {photo.caption()}")
        self._words = tr("One moment …")
        small = shelf_of(self._desk).at_hand(photo)
        if small is None:
            shelf_of(self._desk).fetch([photo])
        else:
            self._lay([small])
        self._fetch(photo)

    @Slot()
    def enlarge(self) -> None:
        """Enlarge around the middle."""
        self._zoom(STEP, 0, 0)

    @Slot()
    def reduce(self) -> None:
        """Make smaller around the middle."""
        self._zoom(1 / STEP, 0, 0)

    @Slot()
    def make_whole(self) -> None:
        """Show the whole photo."""
        self.follow_whole()
        self.made_whole.emit()

    @Slot(float, float, float)
    def follow_zoom(self, factor: float, across: float, down: float) -> None:
        """Do as another stage did; nothing is said about it, so that the two never echo."""
        fit = self._fit()
        if fit is not None:
            self._set(zoomed(self._loupe, factor, across, down, fit))

    @Slot(float, float)
    def follow_move(self, right: float, down: float) -> None:
        """Do as another stage did."""
        fit = self._fit()
        if fit is not None:
            self._set(moved(self._loupe, right, down, fit))

    @Slot()
    def follow_whole(self) -> None:
        """Show the whole photo, because another stage does."""
        self._opened_on = None
        self._set(Loupe())

    def open_on(self, box: QRectF, fills: float) -> None:
        """Enlarge to a part of the photo, which `fills` so much of the stage.

        Nothing happens where somebody enlarged or moved it already; another size of the stage keeps
        the part in view until then.
        """
        if self._loupe == Loupe():
            self._opened_on, self._opened_at = (box, fills), Loupe()
            self._look_at_opening()

    def _look_at_opening(self) -> None:
        photo, fit = self._photo, self._fit()
        if self._opened_on is None or self._loupe != self._opened_at or not photo or not fit:
            return
        box, fills = self._opened_on
        scale = fit.width / photo.width
        across = fit.stage_width / (max(box.width(), 1.0) * scale)
        down = fit.stage_height / (max(box.height(), 1.0) * scale)
        zoom = min(max(fills * min(across, down), 1.0), MOST_ZOOM)
        middle = box.center()
        self._opened_at = Loupe(zoom, middle.x() / photo.width, middle.y() / photo.height)
        self._set(self._opened_at)

    def wheelEvent(self, event: QWheelEvent) -> None:
        turns = event.angleDelta().y() / 120
        if self._photo is None or turns == 0 or (turns < 0 and self._loupe.zoom <= 1):
            event.ignore()  # the page scrolls
            return
        middle = self.viewport().rect().center()
        spot = event.position()
        self._zoom(STEP**turns, spot.x() - middle.x(), spot.y() - middle.y())
        event.accept()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = Qt.Key(event.key())
        if key in (Qt.Key.Key_Plus, Qt.Key.Key_Equal):
            self.enlarge()
        elif key == Qt.Key.Key_Minus:
            self.reduce()
        elif key == Qt.Key.Key_0:
            self.make_whole()
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self._photo is None:
            self.photo_wanted.emit()
        elif key in _ARROWS and self._loupe.zoom > 1:
            self._push(*_ARROWS[key])
        else:
            event.ignore()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() == Qt.MouseButton.LeftButton and self._photo is not None:
            self._held = event.position()
            self.viewport().setCursor(Qt.CursorShape.ClosedHandCursor)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._held is not None:
            way = event.position() - self._held
            self._held = event.position()
            self._push(way.x(), way.y())

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        was_held, self._held = self._held, None
        self.viewport().unsetCursor()
        left = event.button() == Qt.MouseButton.LeftButton
        inside = self.viewport().rect().contains(event.position().toPoint())
        if left and inside and was_held is None and self._photo is None:
            self.photo_wanted.emit()

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        self.make_whole()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        before, now = event.oldSize(), event.size()
        if self._loupe.zoom > 1 and before.height() > 0 and before.width() == now.width():
            self._keep_scale(before.height())
        else:
            self._look_at_opening()
        self._place()

    def _keep_scale(self, height_before: int) -> None:
        """Show a photo that is enlarged as large as before: a notice beneath came or went."""
        photo, fit = self._photo, self._fit()
        if photo is None or fit is None:
            return
        old = fitting(photo.width, photo.height, round(fit.stage_width), height_before)
        loupe = replace(self._loupe, zoom=max(1.0, self._loupe.zoom * old.width / fit.width))
        if self._loupe == self._opened_at:
            self._opened_at = loupe
        self._loupe = loupe

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        if self._words:
            painter = QPainter(self.viewport())
            painter.setPen(self.palette().text().color())
            flags = Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap
            painter.drawText(self.viewport().rect().adjusted(12, 12, -12, -12), flags, self._words)
            painter.end()

    def _fetch(self, photo: KeptPhoto) -> None:
        """Decode the photo as large as the stage, then all of it."""
        record = self._desk.record
        longest = max(self.viewport().width(), self.viewport().height())
        self._decode(photo, lambda: first_view(record, photo, longest), self._first_came)

    def _decode(
        self,
        photo: KeptPhoto,
        work: Callable[[], Any],
        then: Callable[[tuple[KeptPhoto, Any]], None],
    ) -> None:
        def decode() -> tuple[KeptPhoto, Any]:
            try:
                return photo, work()
            except ShopTrouble as trouble:
                return photo, trouble

        self._errand = self._desk.errands.run(tr("Opening {name}", name=photo.name), decode, then)

    def _first_came(self, result: tuple[KeptPhoto, Any]) -> None:
        photo, outcome = result
        if not self._is_here(photo):
            return
        if isinstance(outcome, ShopTrouble):
            self._arrived(result)
            return
        if outcome is not None:
            self._lay([outcome])
        record = self._desk.record
        self._decode(photo, lambda: full_picture(record, photo), self._arrived)

    def _arrived(self, result: tuple[KeptPhoto, Any]) -> None:
        photo, outcome = result
        if not self._is_here(photo):
            return
        self._errand = None
        if isinstance(outcome, ShopTrouble):
            self._say(f"◌  {outcome.sentence()}")
            return
        self._lay(outcome)
        self.shown.emit(photo)

    def _is_here(self, photo: KeptPhoto) -> bool:
        """Tell whether the stage still waits for this photo."""
        return isValid(self) and self._photo is not None and photo.sha256 == self._photo.sha256

    @Slot(str, QImage)
    def _thumbnail_came(self, sha256: str, image: QImage) -> None:
        waiting = self._photo is not None and self._photo.sha256 == sha256
        if waiting and not self._copies and not image.isNull():
            self._lay([image])

    def _lay(self, copies: list[Any]) -> None:
        size = (self._photo.width, self._photo.height) if self._photo is not None else (0, 0)
        self._copies = copies
        self._item.lay(*size, copies)
        if copies:
            self._words = ""
        self._place()
        self.viewport().update()

    def _say(self, words: str) -> None:
        self._words = words
        self.setAccessibleName(f"{self._name}: {words}")
        self.viewport().update()

    def _fit(self) -> Fitting | None:
        stage = self.viewport()
        if self._photo is None or stage.width() < 1 or stage.height() < 1:
            return None
        return fitting(self._photo.width, self._photo.height, stage.width(), stage.height())

    def _zoom(self, factor: float, across: float, down: float) -> None:
        fit = self._fit()
        factor = allowed_factor(self._loupe, factor)
        if fit is None or factor == 1:
            return
        self._set(zoomed(self._loupe, factor, across, down, fit))
        self.zoomed_by.emit(factor, across, down)
        self._push(0, 0)

    def _push(self, right: float, down: float) -> None:
        fit = self._fit()
        if fit is None:
            return
        before = self._loupe
        self._set(kept_inside(moved(before, right, down, fit), fit))
        way = push_between(before, self._loupe, fit)
        if way != (0, 0):
            self.moved_by.emit(*way)

    def _set(self, loupe: Loupe) -> None:
        self._loupe = loupe
        self._place()

    def _place(self) -> None:
        """Bring Qt's view to where the loupe stands."""
        fit = self._fit()
        if fit is None or self._photo is None:
            return
        width, height = self._photo.width, self._photo.height
        scale = fit.width / width * self._loupe.zoom
        room = 2 * max(width, height, fit.stage_width / scale, fit.stage_height / scale)
        self._scene.setSceneRect(QRectF(-room, -room, width + 2 * room, height + 2 * room))
        self.resetTransform()
        self.scale(scale, scale)
        self.centerOn(self._loupe.x * width, self._loupe.y * height)

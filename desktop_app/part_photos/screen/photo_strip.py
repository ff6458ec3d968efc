"""A strip of thumbnails, walked through with the arrow keys."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QSize, Qt, Signal, Slot
from PySide6.QtGui import QColor, QIcon, QImage, QPainter, QPixmap, QWheelEvent
from PySide6.QtWidgets import QListView, QListWidget, QListWidgetItem

from desktop_app.language import tr
from desktop_app.part_photos.kept_photo import KeptPhoto
from desktop_app.part_photos.screen.thumbnail_shelf import shelf_of
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.texts import tooltip

TILE = 128  # pixels of a thumbnail as shown
SIDEWAYS = Qt.KeyboardModifier.AltModifier | Qt.KeyboardModifier.ShiftModifier
_ID, _SHA = Qt.ItemDataRole.UserRole, Qt.ItemDataRole.UserRole + 1


class PhotoStrip(QListWidget):
    """Photos side by side; one is chosen. Enter or a double-click opens it."""

    keys_said = ((tr("Delete"), tr("takes the chosen photo off the job")),)

    chosen = Signal(object)  # photo id, or None
    opened = Signal(object)  # photo id
    unwanted = Signal(object)  # photo id: Delete was pressed on it

    def __init__(self, desk: Desk, name: str) -> None:
        super().__init__()
        self.setAccessibleName(name)
        self._shelf = shelf_of(desk)
        self._shelf.fetched.connect(self._fetched)
        self._photos: tuple[KeptPhoto, ...] = ()
        self.setViewMode(QListView.ViewMode.IconMode)
        self.setFlow(QListView.Flow.LeftToRight)
        self.setWrapping(False)
        self.setMovement(QListView.Movement.Static)
        self.setResizeMode(QListView.ResizeMode.Adjust)
        self.setUniformItemSizes(True)
        self.setIconSize(QSize(TILE, TILE))
        self.setGridSize(QSize(TILE + 24, TILE + self.fontMetrics().height() + 18))
        self.setTextElideMode(Qt.TextElideMode.ElideMiddle)
        self.setFixedHeight(TILE + self.fontMetrics().height() + 36)
        self.setHorizontalScrollMode(QListView.ScrollMode.ScrollPerPixel)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAcceptDrops(False)  # what is dropped here falls through to the tray
        self.viewport().setAcceptDrops(False)
        self.currentItemChanged.connect(self._turned)
        self.itemActivated.connect(self._activated)

    def show_photos(self, photos: Sequence[KeptPhoto]) -> None:
        """Show these photos, keeping the chosen one chosen where it is still there."""
        before, shown = self.chosen_id(), [photo.id for photo in self._photos]
        self._photos = tuple(photos)
        ids = [photo.id for photo in photos]
        if ids == shown:
            for row, photo in enumerate(photos):
                self._caption(self.item(row), photo)
            return
        self.blockSignals(True)
        self.clear()
        for photo in photos:
            self.addItem(self._tile(photo))
        self.setCurrentRow(ids.index(before) if before in ids else (0 if ids else -1))
        self.blockSignals(False)
        self._shelf.fetch(photos)
        self.chosen.emit(self.chosen_id())

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Leave the wheel to the page, which is what a hand on it means to move."""
        sideways = event.angleDelta().x() != 0 or event.modifiers() & SIDEWAYS
        super().wheelEvent(event) if sideways else event.ignore()

    def photos(self) -> tuple[KeptPhoto, ...]:
        """Return the photos that are shown."""
        return self._photos

    def chosen_id(self) -> int | None:
        """Return the id of the chosen photo."""
        item = self.currentItem()
        return None if item is None else int(item.data(_ID))

    def choose(self, photo_id: int) -> None:
        """Choose a photo and bring it into sight."""
        for row in range(self.count()):
            if self.item(row).data(_ID) == photo_id:
                self.setCurrentRow(row)
                self.scrollToItem(self.item(row))

    def keyPressEvent(self, event: object) -> None:
        if event.key() == Qt.Key.Key_Delete and self.currentItem() is not None:  # type: ignore[attr-defined]
            self.unwanted.emit(self.chosen_id())
            return
        super().keyPressEvent(event)  # type: ignore[arg-type]

    def _tile(self, photo: KeptPhoto) -> QListWidgetItem:
        image = self._shelf.at_hand(photo)
        item = QListWidgetItem(self._icon(image), photo.name)
        self._caption(item, photo)
        item.setData(_ID, photo.id)
        item.setData(_SHA, photo.sha256)
        return item

    def _caption(self, item: QListWidgetItem, photo: KeptPhoto) -> None:
        item.setToolTip(tooltip(photo.caption()))
        item.setData(Qt.ItemDataRole.AccessibleTextRole, photo.caption())

    def _icon(self, image: QImage | None) -> QIcon:
        """Return a square tile, so that upright and lying photos stand in line."""
        side = round(TILE * self.devicePixelRatioF())
        tile = QPixmap(side, side)
        tile.fill(QColor(0, 0, 0, 0))
        if image is not None and not image.isNull():
            small = image.scaled(
                side,
                side,
                Qt.AspectRatioMode.KeepAspectRatio,
                Qt.TransformationMode.SmoothTransformation,
            )
            painter = QPainter(tile)
            painter.drawImage((side - small.width()) // 2, (side - small.height()) // 2, small)
            painter.end()
        tile.setDevicePixelRatio(self.devicePixelRatioF())
        icon = QIcon(tile)
        icon.addPixmap(tile, QIcon.Mode.Selected)
        return icon

    @Slot(str, QImage)
    def _fetched(self, sha256: str, image: QImage) -> None:
        for row in range(self.count()):
            item = self.item(row)
            if item.data(_SHA) != sha256:
                continue
            if image.isNull():
                item.setText(tr("◌ original missing or damaged"))
            else:
                item.setIcon(self._icon(image))

    @Slot(QListWidgetItem, QListWidgetItem)
    def _turned(self, _now: QListWidgetItem, _before: QListWidgetItem) -> None:
        self.chosen.emit(self.chosen_id())

    @Slot(QListWidgetItem)
    def _activated(self, item: QListWidgetItem) -> None:
        self.opened.emit(int(item.data(_ID)))

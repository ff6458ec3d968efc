"""The phones' tray: photos that have no place yet, to be put to a part or thrown away."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QSize, Qt, Slot
from PySide6.QtGui import QIcon, QImage, QPixmap
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHBoxLayout,
    QListView,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from desktop_app.language import tr
from desktop_app.part_photos.screen.phone_bay import PhoneBay
from desktop_app.part_photos.screen.phone_intake import Looked
from desktop_app.part_photos.screen.picture_image import small_image
from desktop_app.shop_window.texts import plain_label, tooltip

_TILE = 112
_NAME = Qt.ItemDataRole.UserRole


class PhoneWaiting(QWidget):
    """Hidden while nothing waits; what is marked, or all where nothing is, is put or thrown."""

    def __init__(self, bay: PhoneBay) -> None:
        super().__init__()
        self._bay = bay
        self._shown: tuple[str, ...] = ()
        self._says = plain_label("", "heading", wrap=True)
        self._list = QListWidget()
        self._list.setAccessibleName(tr("Photos that wait for a place"))
        self._list.setViewMode(QListView.ViewMode.IconMode)
        self._list.setMovement(QListView.Movement.Static)
        self._list.setResizeMode(QListView.ResizeMode.Adjust)
        self._list.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self._list.setIconSize(QSize(_TILE, _TILE))
        self._list.setGridSize(QSize(_TILE + 40, _TILE + 2 * self.fontMetrics().height()))
        self._list.setFixedHeight(_TILE + 4 * self.fontMetrics().height())
        self._meant = plain_label("", "quiet", wrap=True)
        self._put = QPushButton(tr("Put here"))
        self._away = QPushButton(tr("Throw away"))
        self._away.setToolTip(tooltip(tr("They go into the folder “trash” of the shop.")))
        row = QHBoxLayout()
        row.addWidget(self._put)
        row.addStretch(1)
        row.addWidget(self._away)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        for widget in (self._says, self._list, self._meant):
            column.addWidget(widget)
        column.addLayout(row)
        self._list.itemSelectionChanged.connect(self._say)
        self._put.clicked.connect(self._put_now)
        self._away.clicked.connect(self._throw_now)
        bay.changed.connect(self.show_waiting)
        self.show_waiting()

    @Slot()
    def show_waiting(self) -> None:
        """Show what waits now."""
        waiting = self._bay.waiting()
        names = tuple(one.wanted.name for one in waiting)
        if names != self._shown:
            marked = set(self._marked())
            self._shown = names
            self._list.blockSignals(True)
            self._list.clear()
            for one in waiting:
                item = _tile(one)
                self._list.addItem(item)
                item.setSelected(one.wanted.name in marked)
            self._list.blockSignals(False)
        self.setVisible(bool(names))
        self._say()

    @Slot()
    def _say(self) -> None:
        count, marked = len(self._shown), len(self._marked())
        put, away = _put_away_words(count, marked)
        self._says.setText(
            tr("One photo waits for a place")
            if count == 1
            else tr("{photos} photos wait for a place", photos=count)
        )
        place = self._bay.place()
        self._put.setText(put)
        self._put.setEnabled(place is not None)
        to = (
            place.offer.words()
            if place
            else tr("Choose a part first: press “From a phone…” there.")
        )
        self._put.setToolTip(tooltip(to))
        self._put.setAccessibleName(f"{self._put.text()}: {to}")
        self._away.setText(away)
        self._meant.setText(_meant(self._chosen()))

    def _marked(self) -> list[str]:
        return [item.data(_NAME) for item in self._list.selectedItems()]

    def _chosen(self) -> Sequence[Looked]:
        names = self._marked() or list(self._shown)
        return [one for one in self._bay.waiting() if one.wanted.name in names]

    @Slot()
    def _put_now(self) -> None:
        self._bay.put_here(self._marked() or list(self._shown))

    @Slot()
    def _throw_now(self) -> None:
        self._bay.throw_away(self._marked() or list(self._shown))


def _tile(one: Looked) -> QListWidgetItem:
    image = QImage() if one.taken is None else small_image(one.taken.thumbnail)
    item = QListWidgetItem(QIcon(QPixmap.fromImage(image)), one.photo.called)
    said = " · ".join(part for part in (one.photo.called, one.photo.meant) if part)
    item.setToolTip(tooltip(said))
    item.setData(Qt.ItemDataRole.AccessibleTextRole, said)
    item.setData(_NAME, one.wanted.name)
    return item


def _put_away_words(count: int, marked: int) -> tuple[str, str]:
    """Return what both buttons say: with the one that waits, with those marked, or with all."""
    if count == 1:
        return tr("Put it to the part above"), tr("Throw it away")
    if marked:
        return (
            tr("Put the {marked} marked to the part above", marked=marked),
            tr("Throw the {marked} marked away", marked=marked),
        )
    return (
        tr("Put all {photos} to the part above", photos=count),
        tr("Throw all {photos} away", photos=count),
    )


def _meant(chosen: Sequence[Looked]) -> str:
    """Say what they were taken for, as far as the phone knew."""
    meant = list(dict.fromkeys(one.photo.meant for one in chosen if one.photo.meant))
    return (
        tr("Taken for: {meant}", meant="; ".join(meant))
        if meant
        else tr("No part was chosen when they were taken.")
    )

"""The first rows in a table onto whose columns a field's name can be dragged."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import (
    QEvent,
    QMimeData,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QSize,
    Qt,
    Signal,
)
from PySide6.QtGui import QDropEvent, QKeyEvent
from PySide6.QtWidgets import QAbstractItemView, QListWidget, QListWidgetItem, QTableView

from desktop_app.language import tr
from desktop_app.records_exchanged.column_choice import field_words
from desktop_app.records_exchanged.everyday_headers import FIELDS
from desktop_app.records_exchanged.screen.first_rows import LEFT_OUT

FORM = "application/x-benchwitness-field"
NOTHING = "nothing"  # what is carried where a column is to be left out
FIELD = Qt.ItemDataRole.UserRole
_HIGH = 30  # pixels of a name in the list
_CARRIED = (QEvent.Type.DragEnter, QEvent.Type.DragMove, QEvent.Type.Drop)


class FieldList(QListWidget):
    """The fields by name: dragged onto a column, or given to the chosen one by Enter."""

    given = Signal(object)  # a field, or None

    def __init__(self) -> None:
        super().__init__()
        self.setAccessibleName(
            tr("What a column can be read as; Enter gives it to the chosen column")
        )
        self.setDragEnabled(True)
        self.setDragDropMode(QAbstractItemView.DragDropMode.DragOnly)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        for field in (*FIELDS, None):
            item = QListWidgetItem(field_words(field) if field else LEFT_OUT)
            item.setData(FIELD, field)
            item.setSizeHint(QSize(0, _HIGH))
            self.addItem(item)
        self.setCurrentRow(0)
        self.itemDoubleClicked.connect(self._give)

    def show_taken(self, taken: dict[str, str]) -> None:
        """Say at each field which column gives it."""
        for row in range(self.count()):
            item = self.item(row)
            field = item.data(FIELD)
            if field is not None:
                sign = "●" if field in taken else "○"
                item.setText(f"{sign}  {field_words(field)}")
                said = (
                    tr("from {header}", header=taken[field])
                    if field in taken
                    else tr("no column yet")
                )
                item.setData(Qt.ItemDataRole.AccessibleTextRole, f"{field_words(field)}, {said}")

    def mimeTypes(self) -> list[str]:
        return [FORM]

    def mimeData(self, items: Any) -> QMimeData:
        mime = QMimeData()
        for item in items:
            mime.setData(FORM, (item.data(FIELD) or NOTHING).encode())
        return mime

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._give(self.currentItem())
        else:
            super().keyPressEvent(event)

    def _give(self, item: QListWidgetItem) -> None:
        self.given.emit(item.data(FIELD))


class ColumnsTable(QTableView):
    """`dropped(column, field)` says what was dragged where; `went_to(column)` which is chosen."""

    dropped = Signal(int, object)
    went_to = Signal(int)

    def __init__(self) -> None:
        super().__init__()
        self.setAccessibleName(tr("The first rows as they are read"))
        self.setTabKeyNavigation(False)
        self.setWordWrap(False)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.verticalHeader().setDefaultSectionSize(30)
        self.horizontalHeader().setDefaultSectionSize(160)
        self.horizontalHeader().setDefaultAlignment(Qt.AlignmentFlag.AlignLeft)
        self.horizontalHeader().setSectionsClickable(True)
        self.horizontalHeader().sectionClicked.connect(self.went_to)
        for place in (self.viewport(), self.horizontalHeader().viewport()):
            place.setAcceptDrops(True)
            place.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Take a field's name that is dragged over the cells or over the names above them."""
        if event.type() not in _CARRIED or not isinstance(event, QDropEvent):
            return super().eventFilter(watched, event)
        column = self.columnAt(round(event.position().x()))
        if not event.mimeData().hasFormat(FORM) or column < 0:
            event.ignore()  # a file that is dropped here is the page's
            return True
        event.setDropAction(Qt.DropAction.CopyAction)
        event.accept()
        if event.type() == QEvent.Type.Drop:
            field = bytes(event.mimeData().data(FORM).data()).decode()
            self.dropped.emit(column, None if field == NOTHING else field)
        return True

    def currentChanged(
        self,
        current: QModelIndex | QPersistentModelIndex,
        previous: QModelIndex | QPersistentModelIndex,
    ) -> None:
        super().currentChanged(current, previous)
        if current.isValid():
            self.went_to.emit(current.column())

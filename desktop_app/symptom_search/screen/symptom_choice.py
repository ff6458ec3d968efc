"""One of the symptoms, chosen from a list that grows shorter with each letter typed."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QEvent, QModelIndex, QObject, QStringListModel, Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QLineEdit, QListView, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.symptom_search.screen.list_height import show_lines
from desktop_app.symptom_search.vocabulary import Group

LINES = 5


class SymptomChoice(QWidget):
    """Takes a part of a name, or of what people say for it; a part that only one has is enough.

    `turned` says that another symptom may be named, `entered` that Enter was pressed on it.
    """

    turned = Signal()
    entered = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._groups: list[Group] = []
        self._offered: list[Group] = []
        self.line, self._list = QLineEdit(), QListView()
        self._rows = QStringListModel(self)
        self.line.setAccessibleName(tr("The symptom that it means here"))
        self.line.setPlaceholderText(tr("Type a part of its name"))
        self.line.textChanged.connect(self._narrow)
        self.line.returnPressed.connect(self.entered)
        self.line.installEventFilter(self)
        self._list.setAccessibleName(tr("Symptoms to choose from"))
        self._list.setModel(self._rows)
        self._list.setEditTriggers(QListView.EditTrigger.NoEditTriggers)
        self._list.clicked.connect(self._take)
        self._list.activated.connect(self._take)  # by the Enter key
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.line)
        column.addWidget(self._list)
        show_lines(self._list, LINES)

    def offer(self, groups: Sequence[Group]) -> None:
        """Offer symptoms by name; nothing is chosen."""
        self._groups = sorted(groups, key=lambda one: one.shown.casefold())
        self.choose("")

    def choose(self, symptom: str) -> None:
        """Choose a symptom by its id; an unknown one empties the field."""
        named = next((one.shown for one in self._groups if one.id == symptom), "")
        self.line.setText(named)
        self._narrow()

    def chosen(self) -> str:
        """Return the id of the symptom that is named; empty where no single one is."""
        typed = self.line.text().strip().casefold()
        named = [one for one in self._offered if one.shown.casefold() == typed]
        fits = named or (self._offered if typed else [])
        return fits[0].id if len(fits) == 1 else ""

    def take_focus(self) -> None:
        """Put the cursor where a name is typed."""
        self.line.setFocus()
        self.line.selectAll()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Let Down go from the field into the list."""
        if watched is self.line and isinstance(event, QKeyEvent):
            down = event.type() == QEvent.Type.KeyPress and event.key() == Qt.Key.Key_Down
            if down and self._offered:
                self._list.setFocus()
                self._list.setCurrentIndex(self._rows.index(0, 0))
                return True
        return super().eventFilter(watched, event)

    @Slot()
    def _narrow(self) -> None:
        """Offer those whose name has what is typed; where none has, those of whom it is said."""
        typed = self.line.text().strip().casefold()
        named = [one for one in self._groups if typed in one.shown.casefold()]
        self._offered = named or [
            one for one in self._groups if any(typed in said.casefold() for said in one.phrases)
        ]
        self._rows.setStringList([one.shown for one in self._offered])
        self.turned.emit()

    @Slot(QModelIndex)
    def _take(self, index: QModelIndex) -> None:
        self.choose(self._offered[index.row()].id)
        self.take_focus()

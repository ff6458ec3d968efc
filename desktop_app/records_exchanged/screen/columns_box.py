"""Which column is what: the first rows as they would be read, and a list to choose from."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.records_exchanged.column_choice import field_words
from desktop_app.records_exchanged.everyday_headers import FIELDS
from desktop_app.records_exchanged.preview import preview
from desktop_app.records_exchanged.screen.columns_table import ColumnsTable, FieldList
from desktop_app.records_exchanged.screen.file_in_hand import FileInHand
from desktop_app.records_exchanged.screen.first_rows import LEFT_OUT, FirstRows, rows_shown
from desktop_app.records_exchanged.survey import Survey
from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import ChoiceField, Labelled
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import plain_label

_HINT = tr(
    "Above each column stands what it is read as, and how sure that is. Change it by "
    "the two lists, by Enter on a name at the left, or by dragging that name onto the "
    "column."
)
_UNASKED = tr("⚠ Some cells can’t be read before what is asked below is answered.")
_HEIGHT = 330  # pixels: the names and some seven rows


class ColumnsBox(Section):
    """Hidden until a file was looked through."""

    def __init__(self, desk: Desk, file: FileInHand) -> None:
        super().__init__(tr("Which column is what"))
        self._desk, self._file = desk, file
        self._shown: Survey | None = None
        self._model = FirstRows(self._sureness)
        self._table = ColumnsTable()
        self._table.setModel(self._model)
        self._fields = FieldList()
        self._column = ChoiceField(tr("Column of the file"), [], self._went_to)
        self._read_as = ChoiceField(tr("It is read as"), _read_as(), self._give)
        self._how = plain_label("", "quiet", wrap=True)
        self._cell = plain_label("", wrap=True)
        self._unread = plain_label("", wrap=True)
        self._lay_out()
        self._table.went_to.connect(self._went_to)
        self._table.dropped.connect(file.give)
        self._fields.given.connect(self._give)
        self._table.selectionModel().currentChanged.connect(self._show_cell)
        file.changed.connect(self._show)
        self.hide()

    def _lay_out(self) -> None:
        row = QHBoxLayout()
        row.addWidget(Labelled(tr("Column of the file"), self._column))
        row.addWidget(Labelled(tr("It is read as"), self._read_as))
        row.addStretch(1)
        self._fields.setFixedWidth(190)
        both = QWidget()
        beside = QHBoxLayout(both)
        beside.setContentsMargins(0, 0, 0, 0)
        beside.addWidget(self._fields)
        beside.addWidget(self._table, 1)
        both.setFixedHeight(_HEIGHT)
        below = QVBoxLayout()
        below.addWidget(self._cell)
        below.addWidget(self._unread)
        self.column.addWidget(plain_label(_HINT, "quiet", wrap=True))
        self.column.addLayout(row)
        self.column.addWidget(self._how)
        self.column.addWidget(both)
        self.column.addLayout(below)

    def _sureness(self, column: int) -> str:
        found = self._file.found
        return self._file.choices.sureness(found, column) if found is not None else ""

    @Slot()
    def _show(self) -> None:
        found = self._file.found
        self.setVisible(found is not None)
        if found is None or found is self._shown:
            return
        self._shown = found
        shown = preview(rows_shown(found), self._desk.today(), day_in_words)
        self._model.show_preview(shown)
        columns = list(enumerate(found.headers))
        kept = [self._column.itemText(at) for at in range(self._column.count())]
        if kept != list(found.headers):
            self._column.set_choices(columns)
        if not self._table.currentIndex().isValid() and self._model.rowCount():
            self._table.setCurrentIndex(self._model.index(0, 0))
        named = {f: " + ".join(found.headers[i] for i in at) for f, at in found.columns.items()}
        self._fields.show_taken(named)
        trouble = _UNASKED if self._file.unanswered() else self._model.trouble()
        self._unread.setText(trouble)
        self._unread.setVisible(bool(trouble))
        self._show_column()
        self._show_cell()

    def _chosen(self) -> int:
        return max(0, self._column.currentIndex())

    @Slot(int)
    def _went_to(self, column: int) -> None:
        """Choose a column in the list and in the table alike."""
        self._column.show_value(column)
        here = self._table.currentIndex()
        if here.column() != column and self._model.rowCount():
            self._table.setCurrentIndex(self._model.index(max(0, here.row()), column))
        self._show_column()

    def _show_column(self) -> None:
        found, column = self._file.found, self._chosen()
        if found is None or column >= len(found.headers):
            return
        field = next((f for f, at in found.columns.items() if column in at), None)
        self._read_as.show_value(field)
        sure = self._sureness(column)
        said = f"“{found.headers[column]}”: {self._model.field_of(column)}"
        self._how.setText(f"{said} ({sure})." if sure else f"{said}.")

    @Slot(object)
    def _give(self, field: Any) -> None:
        self._file.give(self._chosen(), field)

    @Slot()
    def _show_cell(self) -> None:
        at = self._table.currentIndex()
        self._cell.setText(self._model.said(at.row(), at.column()) if at.isValid() else "")


def _read_as() -> list[tuple[Any, str]]:
    return [(None, LEFT_OUT), *((field, field_words(field)) for field in FIELDS)]

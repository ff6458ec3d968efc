"""The rows of a file that are turned away, each with its reason."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtWidgets import QVBoxLayout, QWidget

from desktop_app.figures_shown import figure
from desktop_app.language import tr
from desktop_app.records_exchanged.column_choice import field_words
from desktop_app.records_exchanged.job_row import RowRejected
from desktop_app.shop_window.texts import plain_label
from desktop_app.shop_window.worded_rows import ROW_HEIGHT, WordedRows, WordedTable, lay_out_rows

_MOST = 500  # rows that are listed; the file of them holds all
_SEEN = 5  # rows high


class TurnedAway(QWidget):
    """Hidden while there are none."""

    def __init__(self) -> None:
        super().__init__()
        headers = (tr("Row"), tr("Column"), tr("Stands there"), tr("Why it is turned away"))
        self._model: WordedRows[RowRejected] = WordedRows(headers, _words)
        self._table = WordedTable(tr("Rows turned away"))
        lay_out_rows(self._table, self._model, (90, 140, 180))
        self._table.setWordWrap(True)
        self._table.horizontalHeader().setStretchLastSection(True)
        self._more = plain_label("", "quiet", wrap=True)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._table)
        column.addWidget(self._more)
        self.hide()

    def show_rows(self, rejected: Sequence[RowRejected]) -> None:
        """List the first of them, in the order of the file."""
        rows = sorted(rejected, key=lambda one: one.row)[:_MOST]
        self._model.show_things(rows)
        head = self._table.horizontalHeader().sizeHint().height()
        self._table.setFixedHeight(min(_SEEN, len(rows)) * ROW_HEIGHT + head + 6)
        if rows:
            self._table.mark_row(0)
        self._more.setText(
            tr("The first {most} of {all:,} are listed.", most=_MOST, all=len(rejected))
        )
        self._more.setVisible(len(rejected) > _MOST)
        self.setVisible(bool(rows))


def _words(row: RowRejected) -> tuple[str, ...]:
    column = field_words(row.column) if row.column else tr("the whole row")
    return f"⚠ {figure(row.row, ',')}", column, " ".join(row.value.split()), row.why

"""The entries of a job as a list, and what the chosen one changed in lines below it."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QModelIndex, Qt, Signal, Slot
from PySide6.QtWidgets import QHeaderView, QScrollArea, QSplitter, QVBoxLayout, QWidget

from desktop_app.figures_shown import figure
from desktop_app.job_history.told_entry import EntryTold
from desktop_app.language import tr
from desktop_app.shop_window.texts import plain_label
from desktop_app.shop_window.worded_rows import WordedRows, WordedTable, lay_out_rows

HEADERS = (tr("No."), tr("When"), tr("Who"), tr("What was done"), tr("Now"))
WIDTHS = (70, 210, 150, 300, 130)
_NUMBER, _WHEN, _WORDS, _NOW = 0, 1, 3, 4  # the words take what room is left


def entry_words(entry: EntryTold) -> tuple[str, ...]:
    """Return what stands in the list of an entry."""
    words = entry.words if not entry.clock else f"⚠  {entry.words}"
    return (figure(entry.seq, ","), entry.when, entry.who, words, entry.state_words)


class HistoryList(QSplitter):
    """The newest entry stands on top; `chosen` says that another one is marked."""

    chosen = Signal()

    def __init__(self) -> None:
        super().__init__(Qt.Orientation.Vertical)
        self.setChildrenCollapsible(False)
        self._entries: tuple[EntryTold, ...] = ()
        self._rows: WordedRows[EntryTold] = WordedRows(HEADERS, entry_words)
        self._table = WordedTable(tr("What was done to this job, newest first"))
        self._said = plain_label("", wrap=True)
        self._lay_out()

    def show_entries(self, entries: Sequence[EntryTold]) -> None:
        """Show the entries; the marked one stays marked, else the newest is."""
        marked = self.marked()
        self._entries = tuple(entries)
        self._rows.show_things(self._entries)
        again = (i for i, e in enumerate(entries) if marked is not None and e.seq == marked.seq)
        if entries:
            self._table.mark_row(next(again, 0))
        self._show_marked()

    def marked(self) -> EntryTold | None:
        """Return the entry that is marked, if there is one."""
        row = self._table.marked_row()
        return self._entries[row] if 0 <= row < len(self._entries) else None

    def take_focus(self) -> None:
        """Put the cursor into the list."""
        self._table.setFocus()

    def _lay_out(self) -> None:
        lay_out_rows(self._table, self._rows, WIDTHS)
        header = self._table.horizontalHeader()
        for narrow in (_NUMBER, _WHEN, _NOW):
            header.setSectionResizeMode(narrow, QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(_WORDS, QHeaderView.ResizeMode.Stretch)
        self._table.selectionModel().currentRowChanged.connect(self._row_changed)
        self._said.setAlignment(Qt.AlignmentFlag.AlignTop)
        self._said.setTextInteractionFlags(
            Qt.TextInteractionFlag.TextSelectableByMouse
            | Qt.TextInteractionFlag.TextSelectableByKeyboard
        )
        self._said.setAccessibleName(tr("What the marked entry changed"))
        inside = QWidget()
        column = QVBoxLayout(inside)
        column.addWidget(self._said)
        column.addStretch(1)
        below = QScrollArea()
        below.setWidgetResizable(True)
        below.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        below.setWidget(inside)
        self.addWidget(self._table)
        self.addWidget(below)
        self.setSizes([400, 220])  # shares of the height

    @Slot(QModelIndex, QModelIndex)
    def _row_changed(self, _now: QModelIndex, _before: QModelIndex) -> None:
        self._show_marked()

    def _show_marked(self) -> None:
        entry = self.marked()
        if entry is None:
            self._said.setText("")
        else:
            who = (
                tr("{who}, at {place}", who=entry.who, place=entry.place)
                if entry.place
                else entry.who
            )
            self._said.setText("\n".join((f"{entry.when}, {who}:", *entry.lines)))
        self.chosen.emit()

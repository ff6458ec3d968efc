"""A table as a shop uses it: sorted by a press on a header, its columns chosen, its rows copied.

How somebody left it is remembered by the table's name, with the words that its rows had to have.
Rows are spoken of as the model has them, however they are sorted.
"""

from __future__ import annotations

from collections.abc import Collection
from typing import Any

from PySide6.QtCore import QAbstractItemModel, QPoint, Qt, Slot
from PySide6.QtGui import QContextMenuEvent, QKeyEvent, QKeySequence
from PySide6.QtWidgets import QAbstractItemView, QTableView, QWidget

from desktop_app.language import tr
from desktop_app.shop_window.columns_menu import columns_menu
from desktop_app.shop_window.copied_rows import as_text, copy_rows
from desktop_app.shop_window.only_line import OnlyLine
from desktop_app.shop_window.signs import unsigned
from desktop_app.shop_window.sorted_rows import Index, SortedRows
from desktop_app.shop_window.table_memory import Left, keep_left, read_left


class ShopTable(QTableView):
    """A table; `name` says what it lists, to a screen reader and to its memory."""

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.keys_said = (("Ctrl+C", tr("copies the chosen rows of a table, with its headers")),)
        self._sorted = SortedRows(self)
        self._kept: Left | None = None
        self._only: OnlyLine | None = None
        self._to_mark = -1  # the row that was marked last, also where it is left out since
        self._no_room: frozenset[int] = frozenset()
        self.setAccessibleName(name)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setTabKeyNavigation(False)
        self.verticalHeader().hide()
        header = self.horizontalHeader()
        header.setSectionsMovable(True)
        header.setSectionsClickable(True)
        header.sectionClicked.connect(self._sort_by)
        header.sectionMoved.connect(self._keep)
        header.setContextMenuPolicy(Qt.ContextMenuPolicy.CustomContextMenu)
        header.customContextMenuRequested.connect(self._choose_columns)

    def show_rows_of(self, model: QAbstractItemModel) -> None:
        """Show the rows of a model, as somebody left them here the last time."""
        self._sorted.setSourceModel(model)
        self.setModel(self._sorted)
        self._restore()

    def row_of(self, index: Index) -> int:
        """Return the row of the model that an index of the table stands for; -1 for none."""
        return self._sorted.mapToSource(index).row() if index.isValid() else -1

    def marked_row(self) -> int:
        """Return the row of the model that is marked; -1 where none is."""
        return self.row_of(self.currentIndex())

    def mark_row(self, row: int) -> None:
        """Mark a row of the model, as soon as it is among those shown."""
        self._to_mark = row
        there = self._sorted.mapFromSource(self._sorted.sourceModel().index(row, 0))
        if there.isValid():
            self.selectRow(there.row())
            self.setCurrentIndex(there)

    def only_line(self) -> OnlyLine:
        """Return a line that leaves only rows with the words that stand in it.

        The words of the last time stand in it. Without it nothing is left out: it says that it is.
        """
        self._only = OnlyLine(self.accessibleName())
        self._only.wanted.connect(self._show_only)
        self._sorted.modelReset.connect(self._tell_only)
        self._only.show_words(self._now_kept().only)
        return self._only

    def leave_out(self, columns: Collection[int]) -> None:
        """Leave columns out that there is no room for; which ones somebody chose stays kept.

        Each other one that somebody hides makes room for one of them.
        """
        self._no_room = frozenset(columns)
        self._hide()

    def copied(self) -> str:
        """Return the chosen rows, or all, as lines with tabs between, headers on top."""
        return as_text(self.lines())

    def lines(self, *, whole: bool = False) -> list[list[str]]:
        """Return the cells of the headers and of the chosen rows; of all, where none is chosen.

        Rows are those that are seen, columns those that are ticked, in their order: one that finds
        no room in this window has it where they are put.
        """
        model, header = self._sorted, self.horizontalHeader()
        count = model.columnCount()
        names, hidden = self._names(), self._hidden()
        inside = (header.logicalIndex(place) for place in range(count))
        columns = [column for column in inside if names[column] not in hidden]
        chosen = sorted({index.row() for index in self.selectionModel().selectedIndexes()})
        lines = [[_one_line(self._header(column)) for column in columns]]
        for row in range(model.rowCount()) if whole else chosen or range(model.rowCount()):
            cells = (model.index(row, column).data() or "" for column in columns)
            lines.append([_one_line(unsigned(str(cell))) for cell in cells])
        return lines

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.matches(QKeySequence.StandardKey.Copy):
            copy_rows(self.lines())
        else:
            super().keyPressEvent(event)

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        self._choose_columns(event.pos())

    def _header(self, column: int) -> Any:
        return self._sorted.headerData(column, Qt.Orientation.Horizontal)

    def _names(self) -> list[str]:
        return [_one_line(self._header(c)) for c in range(self._sorted.columnCount())]

    @Slot(str)
    def _show_only(self, words: str) -> None:
        marked = self.marked_row()
        self._sorted.show_only(words)
        self._mark_again(marked if marked >= 0 else self._to_mark)
        if words != self._now_kept().only:
            self._keep()

    def _now_kept(self) -> Left:
        return self._kept if self._kept is not None else Left()

    @Slot()
    def _tell_only(self) -> None:
        if self._only is not None:
            self._only.tell(self._sorted.rowCount(), self._sorted.sourceModel().rowCount())

    @Slot(int)
    def _sort_by(self, column: int) -> None:
        """Sort by a column, then the other way round, then as it was."""
        marked = self.marked_row()
        if self._sorted.column != column:
            self._sort(column, falling=False)
        elif not self._sorted.falling:
            self._sort(column, falling=True)
        else:
            self._sort(-1, falling=False)
        self._mark_again(marked)
        self._keep()

    def _sort(self, column: int, *, falling: bool) -> None:
        self._sorted.arrange(column, falling)
        order = Qt.SortOrder.DescendingOrder if falling else Qt.SortOrder.AscendingOrder
        self.horizontalHeader().setSortIndicatorShown(column >= 0)
        self.horizontalHeader().setSortIndicator(column, order)

    def _mark_again(self, row: int) -> None:
        if row >= 0:
            self.mark_row(row)

    @Slot(QPoint)
    def _choose_columns(self, at: QPoint) -> None:
        names = self._names()
        out = [names[column] for column in self._left_out()]
        menu = columns_menu(self, names, self._hidden(), out)
        menu.shown.connect(self._show_column)
        menu.as_it_was.connect(self._forget)
        menu.popup(self.viewport().mapToGlobal(at))

    def _show_column(self, name: str, yes: bool) -> None:
        kept = self._now()
        hidden = kept.hidden - {name} if yes else kept.hidden | {name}
        self._kept = kept._replace(hidden=hidden)
        keep_left(self.accessibleName(), self._kept)
        self._hide()

    @Slot()
    def _forget(self) -> None:
        self._kept = None
        keep_left(self.accessibleName(), None)
        self._restore()

    @Slot()
    def _keep(self) -> None:
        self._kept = self._now()
        keep_left(self.accessibleName(), self._kept)

    def _now(self) -> Left:
        """Return how the table is left; columns by their headers, for others may come."""
        names, header = self._names(), self.horizontalHeader()
        by = self._sorted.column
        return Left(
            order=tuple(names[header.logicalIndex(v)] for v in range(len(names))),
            hidden=self._hidden(),
            by=names[by] if 0 <= by < len(names) else "",
            falling=self._sorted.falling,
            only=self._only.words() if self._only is not None else self._now_kept().only,
        )

    def _restore(self) -> None:
        self._kept = kept = read_left(self.accessibleName())
        names, header = self._names(), self.horizontalHeader()
        order = [n for n in kept.order if n in names] if kept is not None else []
        wanted = [*map(names.index, order), *(i for i, n in enumerate(names) if n not in order)]
        header.blockSignals(True)
        for place, column in enumerate(wanted if kept is not None else range(len(names))):
            header.moveSection(header.visualIndex(column), place)
        header.blockSignals(False)
        by = names.index(kept.by) if kept is not None and kept.by in names else -1
        self._sort(by, falling=kept is not None and kept.falling)
        if self._only is not None:
            self._only.show_words(self._now_kept().only)
        self._hide()

    def _hidden(self) -> frozenset[str]:
        return self._now_kept().hidden

    def _left_out(self) -> list[int]:
        """Return the columns that are wanted and find no room now."""
        names, hidden = self._names(), self._hidden()
        wanted = [column for column in sorted(self._no_room) if names[column] not in hidden]
        room = sum(name in hidden for c, name in enumerate(names) if c not in self._no_room)
        return wanted[room:]

    def _hide(self) -> None:
        hidden, out = self._hidden(), self._left_out()
        for column, name in enumerate(self._names()):
            self.setColumnHidden(column, name in hidden or column in out)


def _one_line(cell: Any) -> str:
    return " ".join(str("" if cell is None else cell).split())

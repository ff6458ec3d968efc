"""The list of jobs: those found, or those behind a number with a way back to them."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QEvent, QModelIndex, QObject, Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QHBoxLayout, QListView, QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.marked_list import MarkedList
from desktop_app.shop_window.texts import plain_label, tooltip
from desktop_app.symptom_search.found import Hit
from desktop_app.symptom_search.screen.hit_painter import HitPainter
from desktop_app.symptom_search.screen.hit_rows import HitRows, Row


class FoundList(QWidget):
    """Shows rows under a line of words. Up from the first row leaves it, Escape goes back."""

    job_chosen = Signal(int)
    like_wanted = Signal(int)  # a new job, like the chosen one
    left = Signal()  # upwards
    went_back = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._found: tuple[str, tuple[Row, ...]] = ("", ())
        self.is_behind = False  # it shows what stands behind a number
        self._rows = HitRows()
        self._told = plain_label("", "quiet", wrap=True)
        self._back = QPushButton(tr("← Back to the jobs found"))
        self._back.setAccessibleName(tr("Back to the jobs found"))
        self._back.setToolTip(tooltip(tr("Back to the jobs found (Esc)")))
        self._back.clicked.connect(self.go_back)
        self._back.hide()
        self._list = MarkedList()
        self._list.setAccessibleName(tr("Jobs found"))
        self._list.setModel(self._rows)
        self._list.setItemDelegate(HitPainter(self._list))
        self._list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._list.setResizeMode(QListView.ResizeMode.Adjust)  # another width, other lines
        self._list.setVerticalScrollMode(QListView.ScrollMode.ScrollPerPixel)
        self._list.activated.connect(self._open)
        self._like = QPushButton(tr("Start a job like this one"))
        self._like.setToolTip(tooltip(tr("A car is here with the same trouble as the chosen job")))
        self._like.clicked.connect(self._start_like)
        self._look_at = QPushButton(tr("Open the job"))
        self._look_at.clicked.connect(self._open_chosen)
        self._with_chosen = QWidget()
        row = FlowRow(self._with_chosen)
        row.addWidget(self._look_at)
        row.addWidget(self._like)
        self._with_chosen.hide()
        self._list.selectionModel().currentChanged.connect(self._chosen)
        for widget in (self._list, self._back, self._look_at, self._like):
            widget.installEventFilter(self)
        head = QHBoxLayout()
        head.addWidget(self._told, 1)
        head.addWidget(self._back)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        column.addLayout(head)
        column.addWidget(self._list, 1)
        column.addWidget(self._with_chosen)

    def show_found(self, told: str, rows: Sequence[Row], *, anew: bool = True) -> None:
        """Show the jobs found; where nothing else was asked, what stands behind a number stays."""
        self._found = told, tuple(rows)
        if anew or not self.is_behind:
            self._show(*self._found)

    def show_behind(self, heading: str, hits: Sequence[Hit]) -> None:
        """Show what stands behind a number, and go into it."""
        self._show(heading, hits, behind=True)
        self.go_down()

    @Slot()
    def go_back(self) -> None:
        """Show the jobs found again."""
        if self.is_behind:
            self._show(*self._found)
            self.went_back.emit()

    def go_down(self) -> bool:
        """Go into the list; False where it holds no job."""
        first = self._rows.first_hit()
        if first.isValid():
            self._list.setFocus()
            self._list.setCurrentIndex(first)
        return first.isValid()

    def open_only(self) -> bool:
        """Open the job where there is only one."""
        only = self._rows.count_hits() == 1
        if only:
            self._open(self._rows.first_hit())
        return only

    def _show(self, told: str, rows: Sequence[Row], *, behind: bool = False) -> None:
        self.is_behind = behind
        self._told.setText(told)
        self._back.setVisible(behind)
        self._rows.show_rows(rows)
        self._with_chosen.hide()  # until one of the new rows is chosen

    @Slot(QModelIndex)
    def _chosen(self, index: QModelIndex) -> None:
        self._with_chosen.setVisible(_hit_at(index) is not None)

    @Slot()
    def _start_like(self) -> None:
        hit = _hit_at(self._list.currentIndex())
        if hit is not None:
            self.like_wanted.emit(hit.job_id)

    @Slot()
    def _open_chosen(self) -> None:
        self._open(self._list.currentIndex())

    @Slot(QModelIndex)
    def _open(self, index: QModelIndex) -> None:
        hit = _hit_at(index)
        if hit is not None:
            self.job_chosen.emit(hit.job_id)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.KeyPress and isinstance(event, QKeyEvent):
            if event.key() == Qt.Key.Key_Escape and self.is_behind:
                self.go_back()
                return True
            at_top = self._list.currentIndex() == self._rows.first_hit()
            if watched is self._list and event.key() == Qt.Key.Key_Up and at_top:
                self._list.clearSelection()
                self.left.emit()
                return True
        return super().eventFilter(watched, event)


def _hit_at(index: QModelIndex) -> Hit | None:
    hit = index.data(HitRows.HIT) if index.isValid() else None
    return hit if isinstance(hit, Hit) else None

"""Under Watch: all jobs whose window is open, as a plane and as a table."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QModelIndex, QObject, Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHBoxLayout,
    QHeaderView,
    QPushButton,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from desktop_app.repair_jobs.distance import DistanceUnit, from_miles
from desktop_app.returns_watched.screen.watch_plane import WatchPlane
from desktop_app.returns_watched.screen.watch_rows import WIDTHS, WatchRows
from desktop_app.returns_watched.stored_returns import read_watch
from desktop_app.returns_watched.watch_words import in_one_breath
from desktop_app.returns_watched.watching import WatchedJob
from desktop_app.shop_record.deed import Done
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.texts import plain_label

MATTERS = frozenset(
    ("job", "visit", "vehicle", "vehicle_event", "return_link", "setting", "job_symptom", "pair")
)


class UnderWatchPage(QWidget):
    """The page; `job_chosen` carries the id of the job to open."""

    job_chosen = Signal(int)

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._jobs: tuple[WatchedJob, ...] = ()
        self._stale = True
        self._reading = False
        self._told = plain_label("", wrap=True)
        self._plane = WatchPlane()
        self._rows = WatchRows()
        self._table = QTableView()
        self._said = plain_label("", wrap=True)
        self._open_button = QPushButton("Open the job")
        self._build_table()
        self._lay_out()
        self._plane.walked.connect(self._look_at)
        self._plane.chosen.connect(self._open)
        self._open_button.clicked.connect(self._open_marked)
        desk.changed.connect(self._hear)

    def came_here(self) -> None:
        """Read the watch again where something has changed."""
        if self._stale:
            self._read()

    def _build_table(self) -> None:
        table = self._table
        table.setAccessibleName("Jobs under watch, what ends first at the top")
        table.setModel(self._rows)
        table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        table.setTabKeyNavigation(False)
        table.setWordWrap(False)
        table.verticalHeader().hide()
        table.verticalHeader().setDefaultSectionSize(40)
        for column, width in enumerate(WIDTHS):
            table.setColumnWidth(column, width)
        table.horizontalHeader().setSectionResizeMode(1, QHeaderView.ResizeMode.Stretch)
        table.selectionModel().currentRowChanged.connect(self._row_changed)
        table.doubleClicked.connect(self._row_opened)
        table.installEventFilter(self)

    def _lay_out(self) -> None:
        legend = plain_label(
            "●  quiet   ◇  to be judged   □  came back   ―  not read since",
            "quiet",
            wrap=True,
        )
        left = QVBoxLayout()
        left.addWidget(self._plane, 1)
        left.addWidget(legend)
        both = QHBoxLayout()
        both.setSpacing(12)
        both.addLayout(left, 3)
        both.addWidget(self._table, 5)
        foot = QHBoxLayout()
        foot.addWidget(self._said, 1)
        foot.addWidget(self._open_button, 0, Qt.AlignmentFlag.AlignTop)
        self._said.setMinimumHeight(self._said.fontMetrics().lineSpacing() * 3)
        self._open_button.setEnabled(False)
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 12, 16, 16)
        column.setSpacing(8)
        column.addWidget(plain_label("Under Watch", "title"))
        column.addWidget(self._told)
        column.addLayout(both, 1)
        column.addLayout(foot)

    @Slot(object)
    def _hear(self, done: Done) -> None:
        if done.touched & MATTERS:
            self._stale = True
            if self.isVisible():
                self._read()

    def _read(self) -> None:
        if self._reading:
            return
        self._reading, self._stale = True, False
        record, today = self._desk.record, self._desk.today()

        def work() -> tuple[WatchedJob, ...]:
            with record.reading() as connection:
                return read_watch(connection, today)

        errand = self._desk.errands.run("Looking at the watch", work, self._show)
        errand.failed.connect(self._gave_up)

    def _show(self, jobs: tuple[WatchedJob, ...]) -> None:
        marked = self._marked()
        self._reading = False
        self._jobs = jobs
        unit, rules = self._unit(), self._desk.rules
        self._rows.show_jobs(jobs, unit)
        words = "miles" if unit == "mi" else "km"
        self._plane.show_scales(rules.window_days, from_miles(rules.window_miles, unit), words)
        self._plane.show_jobs(jobs)
        self._told.setText(_summary(jobs))
        again = next((i for i, j in enumerate(jobs) if marked and j.job_id == marked.job_id), 0)
        self._look_at(again if jobs else -1)
        if self._stale:
            self._read()

    @Slot(object)
    def _gave_up(self, _trouble: object) -> None:
        self._reading, self._stale = False, True

    def _unit(self) -> DistanceUnit:
        return "km" if self._desk.rules.distance_unit == "km" else "mi"

    def _marked(self) -> WatchedJob | None:
        row = self._table.currentIndex().row()
        return self._jobs[row] if 0 <= row < len(self._jobs) else None

    @Slot(int)
    def _look_at(self, place: int) -> None:
        self._plane.look_at(place)
        if place >= 0 and self._table.currentIndex().row() != place:
            self._table.selectRow(place)
            self._table.setCurrentIndex(self._rows.index(place, 0))
        job = self._marked() if place >= 0 else None
        self._open_button.setEnabled(job is not None)
        self._open_button.setText("Open the job" if job is None else f"Open {job.job}")
        lines = () if job is None else in_one_breath(job, self._unit(), self._desk.today())
        self._said.setText("\n".join(lines))

    @Slot(QModelIndex, QModelIndex)
    def _row_changed(self, now: QModelIndex, _before: QModelIndex) -> None:
        if now.isValid():
            self._look_at(now.row())

    @Slot(int)
    def _open(self, place: int) -> None:
        self.job_chosen.emit(self._jobs[place].job_id)

    @Slot()
    def _open_marked(self) -> None:
        job = self._marked()
        if job is not None:
            self.job_chosen.emit(job.job_id)

    @Slot(QModelIndex)
    def _row_opened(self, index: QModelIndex) -> None:
        self._open(index.row())

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Let Enter open the job of the table's row."""
        if (
            isinstance(event, QKeyEvent)
            and event.type() == QEvent.Type.KeyPress
            and event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter)
        ):
            self._open_marked()
            return True
        return super().eventFilter(watched, event)


def _summary(jobs: tuple[WatchedJob, ...]) -> str:
    if not jobs:
        return "No window is open. A job comes here when its car is handed over."
    number = "1 window is open" if len(jobs) == 1 else f"{len(jobs)} windows are open"
    return (
        f"{number}; what ends first stands first. An open window is not a success: nobody knows "
        "yet. Each job's own window is the whole square; the scales show the shop's."
    )

"""All jobs whose window is open, as a plane and as a table, and the marked one in sentences."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import QModelIndex, Qt, Signal, Slot
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QHBoxLayout,
    QHeaderView,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from desktop_app.language import tr
from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.returns_watched.screen.watch_plane import WatchPlane
from desktop_app.returns_watched.screen.watch_rows import (
    HEADERS,
    LEFT,
    STATE,
    VEHICLE,
    WIDTHS,
    watch_words,
)
from desktop_app.returns_watched.stored_watch_place import WatchPlace
from desktop_app.returns_watched.watch_words import STATE_SIGNS, in_one_breath, window_in_words
from desktop_app.returns_watched.watching import WatchedJob
from desktop_app.shop_window.off_because import off_because
from desktop_app.shop_window.room_watch import RoomWatch
from desktop_app.shop_window.texts import plain_label
from desktop_app.shop_window.worded_rows import WordedRows, WordedTable, lay_out_rows

NO_JOB = tr("No job's window is open now.")
ROOMY = 1150  # pixels; in a narrower window the table has no room for all its columns
LETTERS_BESIDE = 96  # letters that the view has to be wide, for the table to stand beside the plane
ROWS = 4  # rows of the table that are seen, at least, where it stands below the plane


class OpenWindowsView(QWidget):
    """The plane and the table walk together; `job_chosen` carries the id of the job to open."""

    job_chosen = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._place = WatchPlace()
        self._unit: DistanceUnit = "mi"
        self._today = date.min
        self._at = -1  # the job that is told of; its row may be among those left out
        self._plane = WatchPlane()
        self._rows: WordedRows[WatchedJob] = WordedRows(
            HEADERS, lambda job: watch_words(job, self._unit)
        )
        self._table = WordedTable(tr("Jobs under watch, what ends first at the top"))
        self._said = plain_label("", wrap=True)
        self._open_button = QPushButton(tr("Open the job"))
        self._build_table()
        self._lay_out()
        self._plane.walked.connect(self._look_at)
        self._plane.chosen.connect(self._open)
        self._open_button.clicked.connect(self._open_marked)

    def show_place(self, place: WatchPlace, today: date, unit: DistanceUnit) -> None:
        """Show the jobs as they are on a day; the marked one stays marked."""
        marked = self._marked()
        self._place, self._today, self._unit = place, today, unit
        jobs = place.jobs
        self._rows.show_things(jobs)
        self._plane.show_jobs(jobs, place.paths, unit)
        again = next((i for i, j in enumerate(jobs) if marked and j.job_id == marked.job_id), 0)
        self._look_at(again if jobs else -1)

    def _build_table(self) -> None:
        table = self._table
        lay_out_rows(table, self._rows, WIDTHS)
        table.horizontalHeader().setSectionResizeMode(VEHICLE, QHeaderView.ResizeMode.Stretch)
        table.selectionModel().currentRowChanged.connect(self._row_changed)
        table.doubleClicked.connect(self._row_opened)
        table.entered_on.connect(self._open_marked)

    def _lay_out(self) -> None:
        signs = "   ".join(f"{sign} {tr(state)}" for state, sign in STATE_SIGNS.items())
        legend = plain_label(
            tr(
                "{signs}. The thick line is where the marked job's window ends; its way "
                "there lies between the broken ones 19 times of 20.",
                signs=signs,
            ),
            "quiet",
            wrap=True,
        )
        both = self._beside = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        both.setSpacing(12)
        both.addWidget(self._plane, 4)
        listed = QVBoxLayout()
        listed.setSpacing(6)
        listed.addWidget(self._table.only_line())
        listed.addWidget(self._table, 1)
        both.addLayout(listed, 5)
        foot = QHBoxLayout()
        foot.addWidget(self._said, 1)
        foot.addWidget(self._open_button, 0, Qt.AlignmentFlag.AlignTop)
        off_because(self._open_button, NO_JOB)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        column.addLayout(both, 1)
        column.addWidget(legend)
        column.addLayout(foot)
        RoomWatch(self, LETTERS_BESIDE, self._find_room)

    def resizeEvent(self, event: QResizeEvent) -> None:
        self._table.leave_out((LEFT, STATE) if self.width() < ROOMY else ())
        super().resizeEvent(event)

    def _find_room(self, below: bool) -> None:
        """Put the table below the plane where the letters leave no room beside it."""
        way = QBoxLayout.Direction
        self._beside.setDirection(way.TopToBottom if below else way.LeftToRight)
        head = self._table.horizontalHeader().sizeHint().height()
        rows = ROWS * self._table.verticalHeader().defaultSectionSize()
        self._table.setMinimumHeight(head + rows + 4 if below else 0)

    def _marked(self) -> WatchedJob | None:
        return self._place.jobs[self._at] if 0 <= self._at < len(self._place.jobs) else None

    @Slot(int)
    def _look_at(self, at: int) -> None:
        self._at = at
        self._plane.look_at(at)
        if at >= 0 and self._table.marked_row() != at:
            self._table.mark_row(at)
        job = self._marked()
        off_because(self._open_button, "" if job is not None else NO_JOB)
        self._open_button.setText(
            tr("Open the job") if job is None else tr("Open {job}", job=job.job)
        )
        lines: tuple[str, ...] = ()
        if job is not None:
            head, gone, left = in_one_breath(job, self._unit, self._today)
            window = f"{window_in_words(job.window, self._unit)}."
            lines = (head, gone, f"{window} {self._place.promises[at]}".rstrip(), left)
        self._said.setText("\n".join(lines))

    @Slot(QModelIndex, QModelIndex)
    def _row_changed(self, now: QModelIndex, _before: QModelIndex) -> None:
        if now.isValid():
            self._look_at(self._table.row_of(now))

    @Slot(int)
    def _open(self, at: int) -> None:
        self.job_chosen.emit(self._place.jobs[at].job_id)

    @Slot()
    def _open_marked(self) -> None:
        job = self._marked()
        if job is not None:
            self.job_chosen.emit(job.job_id)

    @Slot(QModelIndex)
    def _row_opened(self, index: QModelIndex) -> None:
        self._open(self._table.row_of(index))

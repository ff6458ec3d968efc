"""Similar jobs: the past jobs most like what is being written, quietly beside the words."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QModelIndex, Qt, QTimer, Signal, Slot
from PySide6.QtWidgets import QSizePolicy, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.marked_list import MarkedList
from desktop_app.shop_window.texts import plain_label
from desktop_app.symptom_search.found import Found, Hit
from desktop_app.symptom_search.screen.brief_painter import BriefPainter, row_height
from desktop_app.symptom_search.screen.hit_rows import HitRows
from desktop_app.symptom_search.screen.old_jobs import OldJobs

PAUSE_MS = 300  # typing that rests this long is looked up
MOST = 3

_Heard = tuple[str, int | None]


class SimilarJobs(QWidget):
    """Hidden unless there are similar jobs; it keeps its place, so that nothing moves.

    They are looked up beside the window. `job_chosen` carries the job that was clicked.
    """

    job_chosen = Signal(int)

    def __init__(self, desk: Desk, old_jobs: OldJobs) -> None:
        super().__init__()
        self._desk, self._old_jobs = desk, old_jobs
        self._heard: _Heard = ("", None)
        self._busy = False
        self._rows = HitRows()
        self._list = MarkedList()
        self._list.setAccessibleName(tr("Similar jobs"))
        self._list.setModel(self._rows)
        self._list.setItemDelegate(BriefPainter(self._list))
        self._list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._list.setFixedHeight(MOST * row_height(self._list.fontMetrics()) + 4)
        self._list.clicked.connect(self._open)
        self._list.activated.connect(self._open)  # by the Enter key
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(2)
        column.addWidget(plain_label(tr("Similar jobs here"), "quiet"))
        column.addWidget(self._list)
        stays = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)
        stays.setRetainSizeWhenHidden(True)
        self.setSizePolicy(stays)
        self.hide()
        self._pause = QTimer(self)
        self._pause.setSingleShot(True)
        self._pause.setInterval(PAUSE_MS)
        self._pause.timeout.connect(self._look)
        desk.closing.connect(self._pause.stop)

    @Slot(str)
    @Slot(str, int)
    def hear(self, words: str, own_job: int | None = None) -> None:
        """Take the concern as it is now; `own_job` is the job it belongs to, never shown."""
        if (words, own_job) == self._heard:
            return
        if own_job != self._heard[1] or not words.strip():
            self._show(())
        self._heard = words, own_job
        self._pause.start()

    @Slot()
    def _look(self) -> None:
        if self._busy:
            return  # its answer looks again where the words have moved on
        heard = self._heard
        if not self._old_jobs.says_enough(heard[0]):
            self._show(())
            return
        self._busy = True
        errand = self._desk.errands.run(
            tr("Looking for similar jobs"),
            lambda: self._old_jobs.find(heard[0], MOST + 1),
            lambda found: self._came(heard, found),
        )
        errand.failed.connect(self._failed)

    def _came(self, heard: _Heard, found: Found) -> None:
        self._busy = False
        if heard == self._heard:
            self._show([hit for hit in found.hits if hit.job_id != heard[1]][:MOST])
        else:
            self._pause.start()

    @Slot(object)
    def _failed(self, _trouble: object) -> None:
        self._busy = False

    def _show(self, hits: Sequence[Hit]) -> None:
        self._rows.show_rows(hits)
        self.setVisible(bool(hits))

    @Slot(QModelIndex)
    def _open(self, index: QModelIndex) -> None:
        hit = index.data(HitRows.HIT)
        if isinstance(hit, Hit):
            self.job_chosen.emit(hit.job_id)

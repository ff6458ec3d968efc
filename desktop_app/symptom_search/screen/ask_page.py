"""Ask the Old Jobs: one field for everything, the jobs it finds, and what fixed it before."""

from __future__ import annotations

from time import perf_counter

from PySide6.QtCore import QEvent, QObject, Qt, QTimer, Signal, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.place_names import RECORDS
from desktop_app.symptom_search.filters import Filters
from desktop_app.symptom_search.found import Found, Hit
from desktop_app.symptom_search.question import Piece
from desktop_app.symptom_search.screen.filters_row import ONLY, FiltersRow
from desktop_app.symptom_search.screen.fixes_panel import FixesPanel
from desktop_app.symptom_search.screen.found_list import FoundList
from desktop_app.symptom_search.screen.hit_rows import Row
from desktop_app.symptom_search.screen.index_errand import IndexErrand
from desktop_app.symptom_search.screen.jobs_behind import Behind
from desktop_app.symptom_search.screen.meanings import Meanings
from desktop_app.symptom_search.screen.old_jobs import OldJobs
from desktop_app.symptom_search.screen.opened_last import OpenedLast
from desktop_app.symptom_search.screen.read_as_row import ReadAsRow

PAUSE_MS = 60  # typing that rests this long is searched
STAYS_HERE = 0.030  # seconds; a search that took longer runs beside the window the next time
MOST = 30  # jobs shown
HINT = tr("What does the car do? Or a plate, a VIN or its end, a job's number, a code")

Asked = tuple[str, Filters]
_NO_JOB_YET = tr(
    "No job is written yet. “A car is here”, above, takes the first car in (Ctrl+N); jobs from "
    "before come in under “{records}”.",
    records=RECORDS,
)


class AskPage(QWidget):
    """The page of the search.

    `job_chosen` carries the job to open, `like_wanted` the one that a new job shall be like.
    """

    job_chosen = Signal(int)
    like_wanted = Signal(int)

    def __init__(
        self, desk: Desk, old_jobs: OldJobs, index: IndexErrand, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._desk, self._old_jobs, self._index = desk, old_jobs, index
        self._took = 0.0
        self._busy = False
        self._stale = True
        self._came_before = False
        self._shown: Asked | None = None  # what the answer that is shown was asked
        self._of_all = True
        self._opening: Behind | None = None
        self.field = QLineEdit()
        self._filters = FiltersRow(desk)
        self._read_as = ReadAsRow()
        self._opened = OpenedLast(desk, old_jobs)
        self._list = FoundList()
        self._fixes = FixesPanel(desk, old_jobs.led)
        self._meanings = Meanings(desk, old_jobs, self.field)
        self._pause = QTimer(self)
        self._build()
        desk.changed.connect(self._hear)
        index.looked.connect(self._index_looked)

    def ask(self, text: str) -> None:
        """Put a text into the field, as if it had been typed."""
        self.field.setText(text)

    def came_here(self) -> None:
        """Make the field ready to type in, and search again where something has changed."""
        self.field.setFocus()
        self.field.selectAll()
        if self._stale:
            self._search()
        elif self._shown is None:
            self._opened.look()
        if self._came_before:
            self._index.look()
        self._came_before = True  # the first time the window is just opening: it looks by itself

    def _build(self) -> None:
        self.field.setAccessibleName(tr("Ask the old jobs"))
        self.field.setPlaceholderText(HINT)
        self.field.setObjectName("asked")
        self.field.setMaxLength(300)
        self.field.returnPressed.connect(self._entered)
        self.field.installEventFilter(self)
        self._opened.job_chosen.connect(self.job_chosen)
        self._list.job_chosen.connect(self.job_chosen)
        self._list.like_wanted.connect(self.like_wanted)
        self._list.left.connect(self.field.setFocus)
        self._list.went_back.connect(self.field.setFocus)
        self._read_as.taken_out.connect(self._take_out)
        self._read_as.meaning_wanted.connect(self._meanings.open)
        self._fixes.behind_wanted.connect(self._open_behind)
        self._fixes.hide()
        self._pause.setSingleShot(True)
        self._pause.setInterval(PAUSE_MS)
        self._pause.timeout.connect(self._search)
        self.field.textChanged.connect(self._pause.start)
        self._filters.changed.connect(self._pause.start)
        self._lay_out()

    def _lay_out(self) -> None:
        below = QHBoxLayout()
        below.setSpacing(12)
        below.addWidget(self._list, 5)
        below.addWidget(self._fixes, 3)
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 12, 16, 16)
        column.setSpacing(8)
        beside = QHBoxLayout()
        beside.addWidget(self._filters, 1)
        beside.addWidget(self._meanings.button, 0, Qt.AlignmentFlag.AlignTop)
        column.addWidget(self.field)
        column.addLayout(beside)
        for widget in (self._read_as, self._meanings, self._opened):
            column.addWidget(widget)
        column.addLayout(below, 1)

    @Slot(object)
    def _hear(self, _done: Done) -> None:
        self._stale = True
        if self.isVisible():
            self._pause.start()

    @Slot(bool)
    def _index_looked(self, made: bool) -> None:
        """Ask again what was answered before the index was there; offer the vehicles seen."""
        self._desk.errands.run(
            tr("Reading the kinds of vehicles"), self._old_jobs.classes, self._filters.offer
        )
        if made or not self._of_all:
            self._hear(Done(tr("The index was made"), frozenset(), None))

    @Slot()
    def _search(self) -> None:
        """Search what the field says: at once while that is quick, else beside the window."""
        if self._busy:
            return  # its answer asks again where the question has moved on
        asked = self._asked()
        self._stale = False
        if not asked[0].strip():
            self._show_open_page()
        elif self._took <= STAYS_HERE:
            self._take_answer(asked)
        else:
            self._busy = True
            errand = self._desk.errands.run(
                tr("Looking through the old jobs"),
                lambda: self._timed(asked),
                lambda found: self._came(asked, found),
            )
            errand.failed.connect(self._failed)

    def _asked(self) -> Asked:
        return self.field.text(), self._filters.kept()

    def _take_answer(self, asked: Asked) -> None:
        try:
            self._show(asked, self._timed(asked))
        except ShopTrouble as trouble:
            self._desk.told.emit(trouble)

    def _timed(self, asked: Asked) -> Found:
        began = perf_counter()
        found = self._old_jobs.find(asked[0], MOST, asked[1])
        self._took = perf_counter() - began
        return found

    def _came(self, asked: Asked, found: Found) -> None:
        self._busy = False
        self._show(asked, found)

    @Slot(object)
    def _failed(self, _trouble: object) -> None:
        self._busy = False

    def _show(self, asked: Asked, found: Found) -> None:
        """Show an answer, and ask again where the question has moved on meanwhile."""
        if asked != self._asked():
            self._pause.start()
        anew = asked != self._shown
        self._shown, self._of_all = asked, found.of_all
        self._opened.hide()
        self._read_as.show_pieces((*found.read_as, *self._filters.pieces()))
        told = _told(found, bool(asked[1]))
        self._list.show_found(told, _rows(found), anew=anew)
        self._fixes.show_fixes(found.fixes, found.counted_over())
        self._fixes.setVisible(bool(found.fixes))
        if anew and not found.of_all:
            self._index.look()

    def _show_open_page(self) -> None:
        try:
            here, latest = self._old_jobs.open_page()
        except ShopTrouble as trouble:
            self._desk.told.emit(trouble)
            return
        rows: list[Row] = []
        for heading, hits in ((tr("In the shop now"), here), (tr("Latest jobs"), latest)):
            rows += [heading, *hits] if hits else []
        self._shown = None
        self._opened.look()
        self._read_as.show_pieces(self._filters.pieces())
        told = "" if rows else _NO_JOB_YET
        if rows and self._filters.kept():
            told = tr(
                "All jobs, whatever is chosen above: it counts as soon as something is asked."
            )
        self._list.show_found(told, rows)
        self._fixes.hide()

    @Slot(object)
    def _open_behind(self, behind: Behind) -> None:
        """Read the jobs behind a number beside the window; the number pressed last is shown."""
        asked, self._opening = self._shown, behind

        def came(hits: tuple[Hit, ...]) -> None:
            if self._opening is behind and self._shown == asked:
                self._list.show_behind(behind.heading(), hits)

        self._desk.errands.run(
            tr("Opening the jobs behind a number"),
            lambda: self._old_jobs.behind(behind.shown()),
            came,
        )

    @Slot(object)
    def _take_out(self, piece: Piece) -> None:
        if piece.kind == ONLY:
            self._filters.take_out(piece)
        else:
            self.field.setText(self._old_jobs.without(self.field.text(), piece))
        self.field.setFocus()

    @Slot()
    def _entered(self) -> None:
        """Open the job where only one is meant; go into the list where there are several."""
        self._pause.stop()
        asked = self._asked()
        if asked[0].strip() and asked != self._shown:
            self._take_answer(asked)
        if not self._list.open_only():
            self._list.go_down()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Let Down go from the field into the list, Backspace at its start take out a piece.

        Escape goes back from the jobs behind a number, else it empties the field.
        """
        if watched is self.field and event.type() == QEvent.Type.KeyPress:
            assert isinstance(event, QKeyEvent)
            if self._pressed(event.key()):
                return True
        return super().eventFilter(watched, event)

    def _pressed(self, key: int) -> bool:
        if key == Qt.Key.Key_Down:
            return self._list.go_down()
        if key == Qt.Key.Key_Escape:
            if self._list.is_behind:
                self._list.go_back()
                return True
            had_words = bool(self.field.text())
            self.field.clear()
            return had_words  # an empty field leaves it to what lies over the page
        at_start = self.field.cursorPosition() == 0 and not self.field.hasSelectedText()
        last = self._read_as.last_piece()
        if key == Qt.Key.Key_Backspace and at_start and last is not None:
            self._take_out(last)
            self.field.setCursorPosition(0)
            return True
        return False


def _rows(found: Found) -> list[Row]:
    """Return the jobs found, and under a heading those that have but a word in common."""
    apart: list[Row] = [tr("Only a word or two in common"), *found.weak] if found.weak else []
    return [*found.hits, *apart]


def _told(found: Found, filtered: bool) -> str:
    """Return the line over the jobs found."""
    jobs = len(found.hits)
    if not jobs and found.weak:
        return tr("No old job is about that. Those below have a word or two in common with it.")
    if not jobs and filtered:
        return tr("No old job that is chosen above says this. More kinds or times may have it.")
    if not jobs:
        return tr("No old job says this. Fewer or other words may find it.")
    told = (
        tr("One job found.")
        if jobs == 1
        else tr("The {jobs} jobs that fit best, the best first.", jobs=jobs)
    )
    if found.fixes or found.counted:
        return told
    return tr(
        "{told} None of them that was handed over has the same symptom, code or all "
        "the words: no fix is counted.",
        told=told,
    )

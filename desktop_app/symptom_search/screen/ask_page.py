"""Ask the Old Jobs: one field for everything, the jobs it finds, and what fixed it before."""

from __future__ import annotations

from collections.abc import Callable
from time import perf_counter

from PySide6.QtCore import QEvent, QModelIndex, QObject, Qt, QTimer, Signal, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QListView, QVBoxLayout, QWidget

from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.texts import plain_label
from desktop_app.symptom_search.find import Found, Hit
from desktop_app.symptom_search.question import Piece
from desktop_app.symptom_search.screen.fixes_panel import FixesPanel
from desktop_app.symptom_search.screen.hit_painter import HitPainter
from desktop_app.symptom_search.screen.hit_rows import HitRows, Row
from desktop_app.symptom_search.screen.read_as_row import ReadAsRow

PAUSE_MS = 60  # typing that rests this long is searched
STAYS_HERE = 0.030  # seconds; a search that took longer runs beside the window the next time
MOST = 30  # jobs shown
HINT = "What does the car do? Or a plate, a VIN or its end, a job's number, a code"

Find = Callable[[str, int], Found]
OpenPage = Callable[[], tuple[tuple[Hit, ...], tuple[Hit, ...]]]
Without = Callable[[str, Piece], str]


class AskPage(QWidget):
    """The page of the search. `job_chosen` carries the id of the job to open.

    `find` answers a text, `open_page` says what an empty field shows, `without` takes a piece
    out of a text.
    """

    job_chosen = Signal(int)

    def __init__(
        self,
        desk: Desk,
        find: Find,
        open_page: OpenPage,
        without: Without,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._desk, self._find, self._open_page, self._without = desk, find, open_page, without
        self._took = 0.0
        self._busy = False
        self._stale = True
        self._shown = ""
        self.field = QLineEdit()
        self._read_as = ReadAsRow()
        self._told = plain_label("", "quiet", wrap=True)
        self._rows = HitRows()
        self._list = QListView()
        self._fixes = FixesPanel()
        self._pause = QTimer(self)
        self._build()
        desk.changed.connect(self._hear)

    def ask(self, text: str) -> None:
        """Put a text into the field, as if it had been typed."""
        self.field.setText(text)

    def came_here(self) -> None:
        """Make the field ready to type in, and search again where something has changed."""
        self.field.setFocus()
        self.field.selectAll()
        if self._stale:
            self._search()

    def _build(self) -> None:
        self.field.setAccessibleName("Ask the old jobs")
        self.field.setPlaceholderText(HINT)
        self.field.setStyleSheet("QLineEdit { min-height: 42px; }")
        self.field.setMaxLength(300)
        font = self.field.font()
        font.setPointSizeF(font.pointSizeF() * 1.3)
        self.field.setFont(font)
        self.field.textChanged.connect(self._typed)
        self.field.returnPressed.connect(self._entered)
        self.field.installEventFilter(self)
        self._list.setAccessibleName("Jobs found")
        self._list.setModel(self._rows)
        self._list.setItemDelegate(HitPainter(self._list))
        self._list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._list.setVerticalScrollMode(QListView.ScrollMode.ScrollPerPixel)
        self._list.activated.connect(self._open)
        self._list.installEventFilter(self)
        self._read_as.taken_out.connect(self._take_out)
        self._fixes.hide()
        self._pause.setSingleShot(True)
        self._pause.setInterval(PAUSE_MS)
        self._pause.timeout.connect(self._search)
        self._lay_out()

    def _lay_out(self) -> None:
        below = QHBoxLayout()
        below.setSpacing(12)
        below.addWidget(self._list, 5)
        below.addWidget(self._fixes, 3)
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 12, 16, 16)
        column.setSpacing(8)
        column.addWidget(self.field)
        column.addWidget(self._read_as)
        column.addWidget(self._told)
        column.addLayout(below, 1)

    @Slot()
    def _typed(self) -> None:
        self._pause.start()

    @Slot(object)
    def _hear(self, _done: Done) -> None:
        self._stale = True
        if self.isVisible():
            self._pause.start()

    @Slot()
    def _search(self) -> None:
        """Search what the field says: at once while that is quick, else beside the window."""
        if self._busy and self._desk.errands.busy():
            return
        self._busy = False
        text = self.field.text()
        self._stale = False
        if not text.strip():
            self._show_open_page()
        elif self._took <= STAYS_HERE:
            self._take_answer(text)
        else:
            self._busy = True
            self._desk.errands.run(
                "Looking through the old jobs", lambda: self._timed(text), self._came
            )

    def _take_answer(self, text: str) -> None:
        try:
            self._show(self._timed(text))
        except ShopTrouble as trouble:
            self._desk.told.emit(trouble)

    def _timed(self, text: str) -> Found:
        began = perf_counter()
        found = self._find(text, MOST)
        self._took = perf_counter() - began
        return found

    def _came(self, found: Found) -> None:
        self._busy = False
        self._show(found)

    def _show(self, found: Found) -> None:
        """Show an answer, and ask again where the text has moved on meanwhile."""
        if found.text != self.field.text():
            self._pause.start()
        self._shown = found.text
        self._read_as.show_pieces(found.read_as)
        self._rows.show_rows(found.hits)
        self._fixes.show_fixes(found.fixes, found.counted_over())
        self._fixes.setVisible(bool(found.fixes))
        count = len(found.hits)
        self._told.setText(
            "No old job says this. Fewer or other words may find it."
            if not count
            else "One job found."
            if count == 1
            else f"The {count} jobs that fit best, the best first."
        )

    def _show_open_page(self) -> None:
        try:
            here, latest = self._open_page()
        except ShopTrouble as trouble:
            self._desk.told.emit(trouble)
            return
        rows: list[Row] = []
        for heading, hits in (("In the shop now", here), ("Latest jobs", latest)):
            rows += [heading, *hits] if hits else []
        self._shown = ""
        self._read_as.show_pieces(())
        self._rows.show_rows(rows)
        self._fixes.hide()
        self._told.setText("" if rows else "No job is written yet.")

    @Slot(object)
    def _take_out(self, piece: Piece) -> None:
        self.field.setText(self._without(self.field.text(), piece))
        self.field.setFocus()

    @Slot()
    def _entered(self) -> None:
        """Open the job where only one is meant; go into the list where there are several."""
        self._pause.stop()
        text = self.field.text()
        if text.strip() and text != self._shown:
            self._take_answer(text)
        if self._rows.count_hits() == 1:
            self._open(self._rows.first_hit())
        else:
            self._go_down()

    def _go_down(self) -> bool:
        first = self._rows.first_hit()
        if first.isValid():
            self._list.setFocus()
            self._list.setCurrentIndex(first)
        return first.isValid()

    @Slot(QModelIndex)
    def _open(self, index: QModelIndex) -> None:
        hit = index.data(HitRows.HIT) if index.isValid() else None
        if isinstance(hit, Hit):
            self.job_chosen.emit(hit.job_id)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Let Down go from the field into the list, Up from its first row back; Escape clears."""
        if event.type() == QEvent.Type.KeyPress and isinstance(event, QKeyEvent):
            if watched is self.field and event.key() == Qt.Key.Key_Down:
                return self._go_down()
            if watched is self.field and event.key() == Qt.Key.Key_Escape:
                self.field.clear()
                return True
            at_top = self._list.currentIndex() == self._rows.first_hit()
            if watched is self._list and event.key() == Qt.Key.Key_Up and at_top:
                self._list.clearSelection()
                self.field.setFocus()
                return True
        return super().eventFilter(watched, event)

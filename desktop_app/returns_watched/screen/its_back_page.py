"""It's Back: the returns to judge, each with then and now side by side."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QElapsedTimer, QModelIndex, Qt, QTimer, Signal, Slot
from PySide6.QtWidgets import (
    QApplication,
    QHBoxLayout,
    QListView,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from desktop_app.language import tr
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.repair_jobs.stored_reading import are_all_there
from desktop_app.returns_watched.judging import Judging
from desktop_app.returns_watched.returns_list import ReturnKey, ReturnRow
from desktop_app.returns_watched.screen.chain_row import ChainRow
from desktop_app.returns_watched.screen.judging_sheet import JudgingSheet
from desktop_app.returns_watched.screen.return_rows import ReturnRows
from desktop_app.returns_watched.screen.returns_view import ReturnsView
from desktop_app.returns_watched.screen.then_and_now import ThenAndNow
from desktop_app.returns_watched.share_words import share_words
from desktop_app.returns_watched.stored_judging import read_judging
from desktop_app.returns_watched.stored_returns import read_returns_of_job, read_waiting
from desktop_app.returns_watched.stored_then_now import KindsNow, read_chain, read_then_and_now
from desktop_app.returns_watched.stored_told import read_told_rows
from desktop_app.returns_watched.stored_told_judging import read_then_and_told, read_told_judging
from desktop_app.returns_watched.waiting import (
    oldest_waiting_first,
    visits_waiting,
    waiting_in_words,
)
from desktop_app.shop_record.deed import Done
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import save_everything
from desktop_app.shop_window.lost_words import let_go
from desktop_app.shop_window.notice import not_accepted, not_sent
from desktop_app.shop_window.off_because import off_because
from desktop_app.shop_window.page import ReadingPage, Section
from desktop_app.shop_window.place_names import BACK
from desktop_app.shop_window.refused_drafts import KeepsRefused, RefusedDrafts
from desktop_app.shop_window.texts import plain_label

NOTHING = tr("No car has come back within a year. A later visit that may be a return is put here.")
NONE_WAITS = tr("No return waits for a judgement.")
PANE_LEAST = 200  # pixels that a return is read in; a lower window scrolls the whole page
LIST_FIRST_MS = 15  # in which the list is painted, before the first of its returns is read
MATTERS = frozenset(
    (
        *("job", "visit", "vehicle", "vehicle_event", "return_link", "setting", "person"),
        *("job_symptom", "job_condition", "trouble_code", "pair", "pair_photo", "reading"),
        *("part_condition", "explanation", "maker_limit", "answered", "customer_asked"),
        *("condition_met", "proof_step", "self_test", "self_tests"),
    )
)


class ItsBackPage(KeepsRefused, QWidget):
    """The page; `job_chosen` carries the id of a job to open, `waiting` how many wait."""

    job_chosen = Signal(int)
    waiting = Signal(int)

    def __init__(
        self,
        desk: Desk,
        names: Mapping[str, str],
        kinds: KindsNow = dict,
        parent: QWidget | None = None,
    ) -> None:
        """Take the names of the symptom groups, and what gives the part kinds as they are now."""
        super().__init__(parent)
        self._desk, self._names, self._kinds = desk, names, kinds
        self._stale, self._reading = True, False
        self._shown: ReturnRow | None = None
        self._wanted: ReturnKey | None = None
        self._told = plain_label("", wrap=True)
        self._rows = ReturnRows()
        self._list = ReturnsView()
        self._next = QPushButton(tr("Next one to judge"))
        self._right = ReadingPage()
        self._head = plain_label("", wrap=True)
        self._both = ThenAndNow(desk)
        self._chain = ChainRow()
        self._sheet: JudgingSheet | None = None
        self._refused = RefusedDrafts(desk)
        self._moved, self._hurry = QElapsedTimer(), 0  # since one moved in the list; how often
        self._rest = QTimer(self)
        self._rest.setSingleShot(True)
        self._rest.timeout.connect(self._show_marked)
        self._lay_out()
        self._both.job_chosen.connect(self.job_chosen)
        self._chain.job_chosen.connect(self.job_chosen)
        self._next.clicked.connect(self._show_next)
        desk.changed.connect(self._hear)

    def came_here(self) -> None:
        """Read the list again where something has changed, and what is shown with it."""
        if self._stale:
            self._show_again()
            self._read()

    def show_pair(self, earlier: int, later: int) -> None:
        """Show one return by the ids of its jobs, however old it is.

        Where there is no later job (0), what was told of the earlier one is shown.
        """
        found = self._pair_now(earlier, later) if later else self._told_now(earlier)
        key = (earlier, later, 0) if found is None else found.key
        if not self._may_leave(key):
            return
        self._wanted = key
        if found is not None:
            self._show(found)
        self._mark()

    def _lay_out(self) -> None:
        self._list.setAccessibleName(tr("Returns, what waits for a judgement first"))
        self._list.setModel(self._rows)
        self._list.setAlternatingRowColors(True)
        self._list.setSpacing(1)
        self._list.setWordWrap(True)  # what a car is called may be long
        self._list.setResizeMode(QListView.ResizeMode.Adjust)
        self._list.setMinimumWidth(220)
        self._list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._list.selectionModel().currentChanged.connect(self._row_changed)
        left = QVBoxLayout()
        left.addWidget(self._list, 1)
        left.addWidget(self._next)
        met = Section(tr("Then and now"))
        met.column.addWidget(self._head)
        met.column.addWidget(self._chain)
        met.column.addWidget(self._both)
        self._right.column.addWidget(met)
        self._right.setMinimumHeight(PANE_LEAST)
        self._right.hide()
        both = QHBoxLayout()
        both.addLayout(left, 3)
        both.addWidget(self._right, 8)
        self._nothing = plain_label("", "quiet", wrap=True)
        both.addWidget(self._nothing, 8)
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 12, 16, 16)
        column.addWidget(plain_label(BACK, "title"))
        column.addWidget(self._told)
        column.addLayout(both, 1)

    @Slot(object)
    def _hear(self, done: Done) -> None:
        if not done.touched & MATTERS:
            return
        self._stale = True
        if self.isVisible():
            self._show_again()
            self._read()

    def _read(self) -> None:
        if self._reading:
            return
        self._reading, self._stale = True, False
        record, names = self._desk.record, self._names
        today = self._desk.today()

        def work() -> tuple[ReturnRow, ...]:
            with record.reading() as connection:
                return read_waiting(connection, today, names)

        errand = self._desk.errands.run(tr("Looking for returns"), work, self._take)
        errand.failed.connect(self._gave_up)

    def _take(self, found: tuple[ReturnRow, ...]) -> None:
        self._reading = False
        today, rows = self._desk.today(), oldest_waiting_first(found)
        self._rows.show_rows(rows, self._unit(), today)
        self.waiting.emit(visits_waiting(rows))
        words = waiting_in_words(rows, today) if rows else NOTHING
        self._told.setText(words)
        off_because(self._next, "" if any(row.waits for row in rows) else NONE_WAITS)
        self._mark()
        coming = self._rest.isActive() or not rows  # one comes by itself, or none can
        self._nothing.setText("" if coming else tr("Choose a return on the left."))
        if self._stale:
            self._read()

    @Slot(object)
    def _gave_up(self, _trouble: object) -> None:
        self._reading, self._stale = False, True

    def _mark(self) -> None:
        """Mark in the list the return that is shown, or show the first one."""
        self._moved.invalidate()  # nobody is in a hurry here
        place = -1 if self._wanted is None else self._rows.place_of(self._wanted)
        if place >= 0:
            self._list.setCurrentIndex(self._rows.reached(place))
        elif self._wanted is None or self._shown is None:  # or it went before it was read
            self._list.setCurrentIndex(self._rows.index(0))

    @Slot()
    def _show_next(self) -> None:
        place = self._rows.next_waiting(self._wanted)
        if place >= 0:
            self._list.setCurrentIndex(self._rows.reached(place))
            self._list.setFocus()

    @Slot(QModelIndex, QModelIndex)
    def _row_changed(self, now: QModelIndex, _before: QModelIndex) -> None:
        row = self._rows.row(now.row()) if now.isValid() else None
        if row is None:
            return
        if self._may_leave(row.key):
            self._wanted = row.key
            soon = QApplication.doubleClickInterval() // 2  # whoever goes on sooner reads neither
            hurried = self._moved.isValid() and not self._moved.hasExpired(soon)
            self._hurry = self._hurry + 1 if hurried else 0
            self._moved.start()
            if self._hurry > 1:  # a key is held: the list moves, the return follows when it rests
                self._rest.start(soon)
            elif self._shown is None:
                self._rest.start(LIST_FIRST_MS)
            else:
                self._show(row)
        else:
            QTimer.singleShot(0, self, self._mark)

    @Slot()
    def _show_marked(self) -> None:
        row = self._rows.row(self._list.currentIndex().row())
        if row is not None and row.key == self._wanted:
            self._show(row)

    def _may_leave(self, to: ReturnKey) -> bool:
        """Save what is only typed; False, with a notice, where a field would be lost."""
        if self._sheet is None or self._sheet.key == to or self._shown is None:
            return True
        save_everything(self._sheet)
        pair = {"earlier": self._shown.earlier, "later": self._shown.later}
        why = tr(
            " of {earlier} and {later} is not accepted; it would be lost with another return.",
            **pair,
        )
        refused = not_accepted(self._sheet, why, tr("Mend or empty it first."))
        why = tr(
            " of {earlier} and {later} is not sent yet; it would be lost with another return.",
            **pair,
        )
        refused = refused or not_sent(self._sheet, why)
        if refused is not None:
            self._desk.told.emit(refused)
        elif self._sheet.unjudged():
            self._desk.told.emit(
                tr(
                    "{later} after {earlier} was not judged “{unjudged}”: nobody said who "
                    "judges it.",
                    later=self._shown.later,
                    earlier=self._shown.earlier,
                    unjudged=tr(self._sheet.unjudged()),
                )
            )
        return refused is None

    @Slot()
    def _show_again(self) -> None:
        """Show the return that is on the page as it is now; a deed may have changed it."""
        if self._wanted is not None and self._shown is not None:
            earlier, later, asked = self._wanted
            found = self._pair_now(earlier, later) if later else self._told_now(earlier, asked)
            jobs = (earlier, later) if later else (earlier,)
            if found is None and self._desk.ask(are_all_there, jobs) is False:
                self._let_it_go()
                return
            self._show(self._shown if found is None else found)  # two vehicles are shown as such

    def _let_it_go(self) -> None:
        """Take a return off the page of which a job was undone; what was typed stays there."""
        if self._sheet is not None and self._shown is not None:
            pair = {"earlier": self._shown.earlier, "later": self._shown.later}
            name = tr("{later} after {earlier}", **pair)
            let_go(self._desk, self._right.column, self._sheet, name)
        self._refused.end()
        self._sheet = self._shown = self._wanted = None
        self._right.hide()
        self._nothing.show()

    def _pair_now(self, earlier: int, later: int) -> ReturnRow | None:
        rows = self._desk.ask(read_returns_of_job, later, self._names) or ()
        return next((row for row in rows if row.earlier_id == earlier), None)

    def _told_now(self, job: int, asked: int = 0) -> ReturnRow | None:
        """Return what was told of a job in an answer, or else what waits, or was told last."""
        rows = self._desk.ask(read_told_rows, (job,), self._desk.today(), self._names) or ()
        if asked:
            return next((row for row in rows if row.asked_id == asked), None)
        return next((row for row in rows if row.is_open), rows[-1] if rows else None)

    def _show(self, row: ReturnRow) -> None:
        with self._desk.record.one_look():
            self._show_now(row)

    def _show_now(self, row: ReturnRow) -> None:
        self._right.setUpdatesEnabled(False)
        judging = self._show_told(row) if row.is_told else self._show_seen(row)
        if judging is not None:
            self._nothing.hide()
            self._head.setText(_head(row, self._unit(), self._kinds()))
            another = self._sheet is None or self._sheet.key != row.key
            if another:
                self._refused.end()
                self._change_sheet(JudgingSheet(self._desk, judging))
                self._right.verticalScrollBar().setValue(0)
            assert self._sheet is not None
            self._sheet.show_return(judging, in_window=row.in_window)
            if another:
                self._refused.begin("refused-back-{}-{}-{}".format(*row.key), self._sheet)
            self._shown = row
            self._right.show()
            self._right.settle()
        self._right.setUpdatesEnabled(True)

    def _show_seen(self, row: ReturnRow) -> Judging | None:
        pair = (row.earlier_id, row.later_id)
        sides = self._desk.ask(read_then_and_now, *pair, self._kinds())
        judging = self._desk.ask(read_judging, *pair)
        if sides is not None and judging is not None:
            self._chain.show_chain(self._desk.ask(read_chain, *pair) or ())
            self._both.show_jobs(*sides)
        return None if sides is None else judging

    def _show_told(self, row: ReturnRow) -> Judging | None:
        told = (row.earlier_id, row.asked_id)
        sides = self._desk.ask(read_then_and_told, *told, self._kinds(), self._desk.today())
        judging = self._desk.ask(read_told_judging, *told)
        if sides is not None and judging is not None:
            self._chain.show_chain(())
            self._both.show_told(*sides)
        return None if sides is None else judging

    def _change_sheet(self, sheet: JudgingSheet) -> None:
        old, self._sheet = self._sheet, sheet
        sheet.stale.connect(self._show_again)
        sheet.grown.connect(self._settle)
        if old is not None:
            self._right.column.removeWidget(old)
            old.hide()
            old.deleteLater()
        self._right.column.addWidget(sheet)
        sheet.show()

    @Slot()
    def _settle(self) -> None:
        self._right.settle()

    def _unit(self) -> DistanceUnit:
        return "km" if self._desk.rules.distance_unit == "km" else "mi"


def _head(row: ReturnRow, unit: DistanceUnit, kinds: Mapping[str, PartKind]) -> str:
    one = row.candidate
    where = tr("inside the window") if row.in_window else tr("beyond the window")
    used = ""
    if one.window_used is not None:
        used = tr(", {share} of it used", share=share_words(one.window_used))
    lines = [
        tr(
            "{vehicle}: {apart} after hand-over, {where}{used}; decided by {what_decides}.",
            vehicle=row.vehicle,
            apart=row.apart(unit),
            where=where,
            used=used,
            what_decides=one.decided_words,
        ),
        tr("Why it is here: {why}.", why=one.why(kinds) or tr("a person judged it")),
    ]
    return "\n".join(lines)

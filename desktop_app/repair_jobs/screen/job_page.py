"""The page of one job, read from top to bottom in the order in which the work happens."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from functools import partial

from PySide6.QtCore import Signal, Slot
from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.screen.job_head import JobHead
from desktop_app.repair_jobs.screen.shop_use import shop_use_kept
from desktop_app.repair_jobs.stored_reading import jobs_of_visit, read_job
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.server.server_trouble import ServerLost
from desktop_app.shop_record.trouble import ShopDamaged, ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import LineField
from desktop_app.shop_window.jumped_page import jump_buttons
from desktop_app.shop_window.keys import press_by
from desktop_app.shop_window.off_because import off_because
from desktop_app.shop_window.page import ReadingPage
from desktop_app.shop_window.refused_drafts import KeepsRefused, RefusedDrafts
from desktop_app.shop_window.texts import tooltip

LONGEST = 120  # letters of a car's name in the head
_IN_PART = tr("This could be shown only in part, and so nothing in it can be changed.")
HeadLine = Callable[[JobView], str]
# The earlier jobs (id, number) that a job may be a return of and that nobody has judged.
MaybeBack = Callable[[int], Sequence[tuple[int, str]]]


class JobPage(KeepsRefused, QWidget):
    """The head with the job's number and car, a row to jump by, and the sections."""

    job_wanted = Signal(int)
    another_concern = Signal(int)
    sheet_wanted = Signal(int)
    history_wanted = Signal(int)
    back_wanted = Signal(int, int)  # the earlier job and this one

    def __init__(
        self,
        desk: Desk,
        sections: list[tuple[str, QWidget]],
        standing: HeadLine,
        maybe_back: MaybeBack,
    ) -> None:
        super().__init__()
        self._desk = desk
        self._standing = standing
        self._maybe_back = maybe_back
        self._sections = sections
        self.job_id: int | None = None
        self._shown: int | None = None  # the job that was last read
        self._number = ""
        self._just_shown = False
        self._refused = RefusedDrafts(desk)
        self._page = ReadingPage()
        self._head = JobHead(jump_buttons(self._page, sections))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(4)
        column.addWidget(self._head)
        column.addWidget(self._page, 1)
        shop_use_kept(desk)  # hears of a visit before this page reads how the cars are used
        desk.changed.connect(self._reread)

    def lay(self) -> Iterator[QWidget]:
        """Lay the sections onto the page that are not there yet, one with each step."""
        for _, section in self._sections:
            if self._page.column.indexOf(section) < 0:
                self._page.column.addWidget(section)
                section.show()  # not with the next layout: a jump would find it hidden
                yield self

    def open_job(self, job_id: int) -> None:
        """Show a job from its top."""
        for _ in self.lay():
            pass
        another, self.job_id = job_id != self.job_id, job_id
        if another:
            self.say_above("")
            self._refused.end()
        self._page.lie_anew()
        self._show()
        if another and self._refused.begin(f"refused-{job_id}", self):
            self._show()  # it is to be mended before the car leaves
        self._just_shown = True
        self._page.verticalScrollBar().setValue(0)

    @Slot(str)
    def say_above(self, words: str) -> None:
        """Keep a line in view above the page; empty takes it away."""
        with self._page.held_still():
            self._head.say_above(words)

    def keep_draft(self) -> None:
        """Keep what is only typed into the forms of the sections."""
        for _, section in self._sections:
            keep = getattr(section, "keep_draft", None)
            if keep is not None:
                keep()

    @Slot(str, object)
    def go_to_answer(self, about: str, pair: int | None) -> None:
        """Go to the field in which an answer is given that is still missing."""
        for _, section in self._sections:
            where = getattr(section, "answer_field", None)
            field = None if where is None else where(about, pair)
            if isinstance(field, QWidget):
                self._page.settle()
                self._page.ensureWidgetVisible(field, 50, 150)
                field.setFocus()

    def line_entered(self, line: LineField) -> None:
        """Go on from a line after Enter; not from what is refused, nor where rows are made."""
        waits = line.unsaved() and self._desk.record.away is None
        if not line.makes_rows and not waits:
            line.focusNextChild()

    def number(self) -> str:
        """Return the number of the job that is shown."""
        return self._number

    def came_here(self) -> None:
        """Read the job again when its place is shown, unless it was read for that just now."""
        if not self._just_shown:
            self._show()
        self._just_shown = False

    @Slot(object)
    def _reread(self, done: Done) -> None:
        if self.isVisible() and self.job_id is not None:
            with self._page.held_still():
                self._show()

    def _show(self) -> None:
        if self.job_id is not None:
            with self._desk.record.one_look():
                self._show_job(self.job_id)

    def _show_job(self, job_id: int) -> None:
        job = self._read(job_id)
        if job is None and self._desk.record.away is not None and self._shown == job_id:
            return  # it stays as it was read, to go on in
        off_because(self._page, "" if job is not None else tr("This job can't be shown."))
        if job is None:
            return
        self._shown = job_id
        self._number = job.number
        car = job.vehicle.name
        if len(car) > LONGEST:
            car = f"{car[:LONGEST]}…"  # all of it stands in Heard
        named = f"{job.number}   {car}"
        self._head.name(named)
        self._say(lambda: self._head.name(named, self._standing(job)))
        self._say(lambda: self._show_others(job))
        for _, section in self._sections:
            # What could be shown only in part must not be worked on.
            whole = self._say(partial(section.show_job, job))  # type: ignore[attr-defined]
            off_because(section, "" if whole else _IN_PART)

    def _read(self, job_id: int) -> JobView | None:
        """Read the job; where that can't be, say why in the head and in the notice strip."""
        try:
            with self._desk.record.reading() as connection:
                return read_job(connection, job_id)
        except ShopDamaged as damage:
            self._head.name(tr("This job can't be shown: the record is damaged there"))
            self._desk.told.emit(damage)
        except ServerLost as lost:
            if self._shown != job_id:
                self._head.name(tr("This job can't be read while the server is away"))
            self._desk.told.emit(lost)
        except ShopTrouble as trouble:
            self._head.name(tr("{number}   was undone or taken out", number=self._number))
            self._head.show_leads(())
            self.say_above("")
            self._desk.told.emit(trouble)
        return None

    def _say(self, show: Callable[[], None]) -> bool:
        """Show a part of the page; where the record is damaged there, say it and keep the rest."""
        try:
            show()
        except ShopTrouble as trouble:
            self._desk.told.emit(trouble)
            return False
        return True

    def _show_others(self, job: JobView) -> None:
        self._head.show_leads(())  # none of another job stays, whatever can't be read now
        leads: list[QPushButton] = []
        others = self._desk.ask(jobs_of_visit, job.visit_id) or ()
        for job_id, number, concern in others:
            if job_id != job.id:
                button = QPushButton(number)
                button.setProperty("job", job_id)
                button.setToolTip(
                    tooltip(
                        tr("Another concern of the same visit: {concern}", concern=concern[:80])
                    )
                )
                button.clicked.connect(self._other_pressed)
                leads.append(button)
        for earlier, number in self._maybe_back(job.id):
            back = QPushButton(tr("↩  Is it {number} again?", number=number))
            back.setObjectName("next")
            back.setProperty("job", earlier)
            back.setToolTip(tooltip(tr("This may be a return: then and now side by side")))
            back.clicked.connect(self._back_pressed)
            leads.append(back)
        sheet = QPushButton(tr("Comparison sheet…"))
        sheet.setToolTip(tooltip(tr("The sheet for the counter: look, print, save (Ctrl+P)")))
        press_by(sheet, QKeySequence.StandardKey.Print)
        sheet.clicked.connect(self._sheet_pressed)
        leads.append(sheet)
        history = QPushButton(tr("History…"))
        history.setToolTip(tooltip(tr("What was done to this job, by whom and when (Ctrl+H)")))
        press_by(history, "Ctrl+H")
        history.clicked.connect(self._history_pressed)
        leads.append(history)
        if job.left_at is None:
            more = QPushButton(tr("Another concern…"))
            more.clicked.connect(self._more_pressed)
            leads.append(more)
        self._head.show_leads(leads)

    @Slot()
    def _other_pressed(self) -> None:
        self.job_wanted.emit(int(self.sender().property("job")))

    @Slot()
    def _back_pressed(self) -> None:
        if self.job_id is not None:
            self.back_wanted.emit(int(self.sender().property("job")), self.job_id)

    @Slot()
    def _sheet_pressed(self) -> None:
        if self.job_id is not None:
            self.sheet_wanted.emit(self.job_id)

    @Slot()
    def _history_pressed(self) -> None:
        if self.job_id is not None:
            self.history_wanted.emit(self.job_id)

    @Slot()
    def _more_pressed(self) -> None:
        if self.job_id is not None:
            self.another_concern.emit(self.job_id)

"""Back On: what was done, and what can go wrong when the part goes back on."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import Qt, Slot
from PySide6.QtGui import QTextCursor
from PySide6.QtWidgets import QGridLayout, QPushButton, QWidget

from desktop_app.figures_shown import figure, shown
from desktop_app.language import tr
from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.hand_over import REFIT
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.screen.check_list import CheckList
from desktop_app.repair_jobs.screen.done_by_field import IF_ANOTHER, DoneByField
from desktop_app.repair_jobs.screen.which_holds import WhichHolds
from desktop_app.repair_jobs.typed_entry import read_hours, read_money
from desktop_app.repair_jobs.who_did_what import check_search
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import Labelled, LineField, WordsField
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import plain_label, tooltip

LONGEST = 90  # letters of what is offered, so that the page keeps its width
# The refit checks (words, hurts) of a job, by the kinds of its pairs.
RefitChecks = Callable[[int], Sequence[tuple[str, bool]]]
# What a job's fitted parts say was done, to be taken with one press; "" where there are none.
PartsReplaced = Callable[[int], str]


def _nothing_replaced(_job_id: int) -> str:
    return ""


class BackOnSection(Section):
    """The correction, the refit list by part kind, hours and price."""

    def __init__(
        self,
        desk: Desk,
        refit_checks: RefitChecks,
        replaced: PartsReplaced = _nothing_replaced,
    ) -> None:
        super().__init__(tr("Back On"))
        self._desk = desk
        self._refit_checks, self._replaced = refit_checks, replaced
        self._job: JobView | None = None
        self._correction = WordsField(tr("What was done"), self._save_correction, 2)
        self._words = ""  # what is offered
        self._offered = QPushButton()
        self._offered.clicked.connect(self._take_offered)
        self._correction.textChanged.connect(self._show_offered)
        self._list = CheckList(desk, "refit")
        self._none = plain_label(
            tr("The list of a part kind stands here once a pair is laid out above."),
            "quiet",
            wrap=True,
        )
        self._hours = LineField(tr("Hours"), self._save_hours)
        self._unbilled = LineField(tr("Hours nobody pays"), self._save_unbilled)
        self._price = LineField(tr("Price"), self._save_price)
        self._who = DoneByField(desk, "refitted")
        self._boxes = {
            field: Labelled(field.accessibleName(), field)
            for field in (self._hours, self._unbilled, self._price)
        }
        self._holds = {field: WhichHolds(desk, box) for field, box in self._boxes.items()}
        done = Labelled(tr("What was done"), self._correction)
        self._done_holds = WhichHolds(desk, done)
        self.column.addWidget(done)
        self.column.addWidget(self._offered, 0, Qt.AlignmentFlag.AlignLeft)
        self.column.addWidget(plain_label(tr("Before it is closed up")))
        self.column.addWidget(self._none)
        self.column.addWidget(self._list)
        grid = QGridLayout()
        for place, box in enumerate(self._boxes.values()):
            grid.addWidget(box, 0, place)
        grid.addWidget(
            Labelled(self._who.accessibleName(), self._who, IF_ANOTHER), 0, len(self._boxes)
        )
        self.column.addLayout(grid)

    def answer_field(self, about: str, _pair: int | None) -> QWidget | None:
        """Return where it is said what was done, or the first point that has no answer."""
        if about == REFIT:
            return self._list.open_answer()
        return self._correction if about == "correction" else None

    def show_job(self, job: JobView) -> None:
        """Show the correction, the list and the figures of a job."""
        if self._job is not None and self._job.id != job.id:
            for one in (self._done_holds, *self._holds.values()):
                one.leave()
        self._job = job
        self._done_holds.show_kept(job.correction, job.correction)
        words = self._words = self._replaced(job.id)
        short = words if len(words) <= LONGEST else f"{words[: LONGEST - 1]}…"
        self._offered.setText(f"↑  {short}")
        self._offered.setAccessibleName(tr("Write as what was done: {words}", words=words))
        self._offered.setToolTip(tooltip(self._offered.accessibleName()))
        room = self._offered.sizePolicy()
        room.setRetainSizeWhenHidden(bool(words))  # what is below stays where it is when it goes
        self._offered.setSizePolicy(room)
        self._show_offered()
        self._who.show_job(job)
        checks = self._refit_checks(job.id)
        self._none.setVisible(not checks)
        self._list.show_checks(job, checks)
        self._holds[self._hours].show_kept(job.hours, _plain(job.hours))
        self._holds[self._unbilled].show_kept(job.unbilled_hours, _plain(job.unbilled_hours))
        cents = job.price_cents
        price = "" if cents is None else figure(cents / 100, ",.2f")
        self._holds[self._price].show_kept(cents, price)
        self._boxes[self._price].hint(tr("in {currency}", currency=self._desk.rules.currency))

    @Slot()
    def _show_offered(self) -> None:
        """Offer the words while nothing is written; what is written is never written over."""
        written = self._correction.toPlainText().strip()
        self._offered.setVisible(bool(self._words) and not written)

    @Slot()
    def _take_offered(self) -> None:
        self._correction.setPlainText(self._words)
        self._correction.moveCursor(QTextCursor.MoveOperation.End)
        self._correction.save_now()
        # The button goes. What guards against injury comes next, a Tab away: until then keys that
        # are typed on are words. Where all of it is answered, the figures are next.
        if self._list.show_open():
            self._correction.setFocus()
        else:
            self._hours.setFocus()

    def _save_correction(self, words: str) -> object:
        if self._job is None:
            return None
        return self._done_holds.save(words, actions.write_correction, self._job.id, words)

    def _save_hours(self, text: str) -> object:
        return self._save_number(self._hours, text, unbilled=False)

    def _save_unbilled(self, text: str) -> object:
        return self._save_number(self._unbilled, text, unbilled=True)

    def _save_number(self, field: LineField, text: str, *, unbilled: bool) -> object:
        if self._job is None:
            return None
        try:
            hours = read_hours(text)
            if not unbilled:
                check_search(self._job.search_hours, hours)
        except ShopTrouble as trouble:
            self._boxes[field].refuse(trouble.sentence())
            return None
        self._boxes[field].refuse("")
        job = self._job.id
        return self._holds[field].save(hours, actions.write_hours, job, hours, unbilled)

    def _save_price(self, text: str) -> object:
        if self._job is None:
            return None
        try:
            cents = read_money(text)
        except ShopTrouble as trouble:
            self._boxes[self._price].refuse(trouble.sentence())
            return None
        self._boxes[self._price].refuse("")
        return self._holds[self._price].save(cents, actions.write_price, self._job.id, cents)


def _plain(number: float | None) -> str:
    return "" if number is None else shown(f"{number:,.2f}".rstrip("0").rstrip("."))

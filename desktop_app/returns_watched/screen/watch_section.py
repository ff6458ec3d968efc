"""Under watch, for one job: its window, where it stands, and the returns that it is or had."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QPushButton, QVBoxLayout, QWidget

from desktop_app.figures_shown import figure
from desktop_app.language import tr
from desktop_app.parts_compared.part_kinds.kind_names import NO_KINDS
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.repair_jobs.counted import is_counted
from desktop_app.repair_jobs.distance import DistanceUnit, to_miles
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.proof_said import unit_of
from desktop_app.repair_jobs.typed_entry import read_odometer
from desktop_app.returns_watched import window_actions
from desktop_app.returns_watched.promise_typed import shown_distance
from desktop_app.returns_watched.proved_by_time import said_by_time
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.screen.asked_box import AskedBox
from desktop_app.returns_watched.screen.owed_box import OwedBox
from desktop_app.returns_watched.screen.promise_fields import RULES
from desktop_app.returns_watched.signs import STANDING_SIGNS
from desktop_app.returns_watched.standing import Standing
from desktop_app.returns_watched.stored_standing import JobStanding, read_standing
from desktop_app.returns_watched.watch_words import days_in_words, window_in_words
from desktop_app.returns_watched.window import Window, kept_window
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.field_rows import FieldRows
from desktop_app.shop_window.fields import Labelled, LineField
from desktop_app.shop_window.flow_row import empty
from desktop_app.shop_window.kept_choice import KeptChoiceField
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.signs import signed
from desktop_app.shop_window.texts import plain_label

NOT_LEFT = tr("What was done is written or ticked under Back On; the car has not left yet.")
_UNTIL_THEN = tr(
    "The window starts when the car is handed over, and stays as it was "
    "given. An empty field is no such limit. Of several parts with a "
    "promise of their own the longest counts, unless it is changed here."
)


class WatchSection(Section):
    """The shop's promise for this job, and what came of it."""

    judge_wanted = Signal(int, int)  # earlier job, later job

    def __init__(
        self,
        desk: Desk,
        names: Mapping[str, str],
        kinds: Mapping[str, PartKind] = NO_KINDS,
    ) -> None:
        super().__init__(tr("Under watch"))
        self._desk = desk
        self._names, self._kinds = names, kinds
        self._job: JobView | None = None
        self._stands = plain_label("", wrap=True)
        self._days = LineField(tr("Window in days"), self._save_days)
        self._far = LineField(tr("Window by distance"), self._save_distance)
        self._rule = KeptChoiceField(desk, tr("The window ends"), list(RULES), self._save_rule)
        self._months = LineField(tr("Window in months"), self._save_months)
        self._days_box = Labelled(tr("Window in days"), self._days, tr("or months"))
        self._months_box = Labelled(tr("Window in months"), self._months, tr("by the calendar"))
        self._far_box = Labelled(tr("Window by distance"), self._far)
        self._fixed = plain_label("", "quiet", wrap=True)
        #: What the shop will promise, while the car is here; where the car is handed over, it
        #: may be laid out beside the button for that.
        self.promised = QWidget()
        promised = QVBoxLayout(self.promised)
        promised.setContentsMargins(0, 0, 0, 0)
        ends = Labelled(tr("The window ends"), self._rule)
        boxes = (self._days_box, self._months_box, self._far_box, ends)
        for widget in (
            plain_label(tr("What is promised from the hand-over on"), wrap=True),
            FieldRows(boxes, len(boxes)),
            plain_label(_UNTIL_THEN, "quiet", wrap=True),
        ):
            promised.addWidget(widget)
        self._returns = QVBoxLayout()
        self.column.addWidget(self._stands)
        self.column.addWidget(self.promised)
        self.column.addWidget(self._fixed)
        self.column.addLayout(self._returns)
        self._asked, self._owed = AskedBox(desk), OwedBox(desk, kinds)
        self.column.addWidget(self._asked)
        self.column.addWidget(self._owed)

    def show_job(self, job: JobView) -> None:
        """Show the window and the returns of a job."""
        if self._job is not None and self._job.id != job.id:
            for field in (self._days, self._months, self._far):
                field.save_now()
        self._job = job
        found = self._desk.ask(read_standing, job.id, self._desk.today(), self._names)
        back = None if found is None else found.came_back_as
        self._asked.show_job(job, "" if back is None else back.later)
        self._owed.show_job(job.id)
        if found is None:
            return
        stands = signed(STANDING_SIGNS, found.standing.value)
        repaired = is_counted(job.cause_found, job.cause, job.correction, job.work)
        by_time = said_by_time(found.standing) if repaired else ""
        means = NOT_LEFT if found.standing is Standing.BACK_ON else by_time
        self._stands.setText(f"{stands}\n{means}" if means else stands)
        days = 0 if job.window_months else job.window_days
        self._days.show_value(str(days) if days else "")
        self._months.show_value(str(job.window_months) if job.window_months else "")
        unit = self._unit()
        far = figure(shown_distance(job.window_miles, unit), ",") if job.window_miles else ""
        self._far.show_value(far)
        self._far_box.hint("km" if unit == "km" else tr("miles"))
        self._rule.show_value(job.window_rule, job.id)
        self.promised.setVisible(job.left_at is None)
        self._fixed.setText(" ".join((self._promise(job), found.promise)).strip())
        self._fixed.setVisible(bool(self._fixed.text()))
        self._show_returns(found)

    def _unit(self) -> DistanceUnit:
        """The car's own unit: what is promised for it is typed and said in what it counts."""
        return "mi" if self._job is None else unit_of(self._job)

    def _promise(self, job: JobView) -> str:
        if job.left_at is None:
            return ""
        window = kept_window(job.window_days, job.window_miles, job.window_rule)
        days = (self._desk.today() - date.fromisoformat(str(job.left_on))).days
        return tr(
            "{window}. It left {days} ago.",
            window=window_in_words(window, self._unit()),
            days=days_in_words(days),
        )

    def _show_returns(self, found: JobStanding) -> None:
        empty(self._returns)
        for row in found.of:
            self._add_return(row, _what_it_is(row))
        for row in found.came_of_it:
            self._add_return(row, _what_became(row))

    def _add_return(self, row: ReturnRow, head: str) -> None:
        decided = tr("waiting for a judgement") if row.waits else row.state_words
        beyond = self._which_window(row)
        unit = self._unit()
        words = (
            tr(
                "↩  {what_it_is}: {days}, {distance}{beyond}",
                what_it_is=head,
                days=days_in_words(row.candidate.days),
                distance=row.distance_words(unit),
                beyond=beyond,
            ),
            row.candidate.why(self._kinds),
            f"{decided[0].upper()}{decided[1:]}",
        )
        said = " ".join(f"{part}." for part in words if part)
        self._returns.addWidget(plain_label(said, wrap=True))
        pair = {"earlier": row.earlier, "later": row.later}
        button = QPushButton(
            tr("Then and now: {earlier} and what was {later}", **pair)
            if row.is_told
            else tr("Then and now: {earlier} and {later}", **pair)
        )
        button.setProperty("jobs", [row.earlier_id, row.later_id])
        button.clicked.connect(self._judge)
        self._returns.addWidget(button)

    def _which_window(self, row: ReturnRow) -> str:
        if not row.in_window:
            return tr(", beyond the window")
        early = Window(self._desk.rules.early_days, self._desk.rules.early_miles)
        soon = early.in_window(row.candidate.days, row.candidate.distance_miles)
        return tr(", inside the early window") if soon else ""

    def _save_days(self, text: str) -> object:
        return self._save(**({"days": text, "months": None} if text.strip() else {"days": None}))

    def _save_months(self, text: str) -> object:
        return self._save(**({"months": text, "days": None} if text.strip() else {"months": None}))

    def _save_distance(self, text: str) -> object:
        if not text.strip():
            return self._save(miles=0)
        try:
            number = read_odometer(text, self._unit())
        except ShopTrouble:
            self._far_box.refuse(tr("Accepted: a whole number, such as 3,000."))
            return None
        self._far_box.refuse("")
        return self._save(miles=round(to_miles(number, self._unit())))

    def _save_rule(self, rule: str) -> object:
        return self._save(rule=rule)

    def _save(self, **changed: object) -> object:
        if self._job is None:
            return None
        job = self._job
        wanted = {
            "days": None if job.window_months else job.window_days,
            "months": job.window_months,
            "miles": job.window_miles,
            "rule": job.window_rule,
            **changed,
        }
        return self._desk.do(window_actions.change_window, job.id, **wanted)

    @Slot()
    def _judge(self) -> None:
        earlier, later = self.sender().property("jobs")
        self.judge_wanted.emit(int(earlier), int(later))


def _what_it_is(row: ReturnRow) -> str:
    if row.judgement is None:
        return tr("This may be {earlier} come back", earlier=row.earlier)
    return (
        tr("{earlier} came back", earlier=row.earlier)
        if row.is_comeback
        else tr("{earlier} was here before", earlier=row.earlier)
    )


def _what_became(row: ReturnRow) -> str:
    if not row.is_told:
        return _what_came(row)
    return tr("The same trouble, {how_told}", how_told=row.later) + (
        f": “{row.concern_now}”" if row.concern_now else ""
    )


def _what_came(row: ReturnRow) -> str:
    """Say what a later visit is; nothing came back before a person said so."""
    later = row.later
    if row.judgement is None:
        return tr("May have come back as {later}", later=later)
    comeback = row.is_comeback
    return (
        tr("Came back as {later}", later=later)
        if comeback
        else tr("Seen again as {later}", later=later)
    )

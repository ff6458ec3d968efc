"""Ask the customer: whom to ring up, what to ask, and one press for what was said."""

from __future__ import annotations

from PySide6.QtCore import QModelIndex, Signal, Slot
from PySide6.QtWidgets import (
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from desktop_app.language import tr
from desktop_app.returns_watched.ask_list import WHY_ALL, ToAsk
from desktop_app.returns_watched.customer_actions import note_answer
from desktop_app.returns_watched.customer_answers import Answer, HeardBy
from desktop_app.returns_watched.screen.ask_rows import HEADERS, WIDTHS, ask_words
from desktop_app.returns_watched.screen.told_fields import ToldFields
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import plain_label
from desktop_app.shop_window.worded_rows import WordedRows, WordedTable, lay_out_rows


class AskView(QWidget):
    """The list, and the marked one with its telephone number, its question and five answers."""

    job_chosen = Signal(int)

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._asks: tuple[ToAsk, ...] = ()
        self._at = -1
        self._rows, self._table = WordedRows(HEADERS, ask_words), WordedTable(tr("Whom to ask"))
        self._none = plain_label("", wrap=True)
        self._whom = plain_label("", "heading", wrap=True)
        self._what = plain_label("", wrap=True)
        self._why = plain_label("", "quiet", wrap=True)
        self._told = ToldFields(desk)
        self._open = QPushButton(tr("Open the job"))
        self._box = Section("")
        self._build_table()
        self._build_box()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        column.addWidget(plain_label(WHY_ALL, "quiet", wrap=True))
        column.addWidget(self._none)
        column.addWidget(self._table, 1)
        column.addWidget(self._box)
        column.addStretch(0)

    def show_asks(self, asks: tuple[ToAsk, ...], after_days: int) -> None:
        """Show whom to ask; who was looked at stays marked, or else the next one is."""
        job_id = self._asks[self._at].job.job_id if self._at >= 0 else None
        self._asks = asks
        self._rows.show_things(asks)
        again = next((i for i, one in enumerate(asks) if one.job.job_id == job_id), None)
        self._look_at(min(max(self._at, 0), len(asks) - 1) if again is None else again)
        self._table.setVisible(bool(asks))
        self._none.setVisible(not asks)
        self._none.setText(
            tr(
                "Nobody is to be asked today. A job comes here where its fault came now "
                "and then and was not proved under its conditions, {after_days} days after "
                "it left, and where its window ends within a week and nothing was heard.",
                after_days=after_days,
            )
        )

    def _build_table(self) -> None:
        table = self._table
        lay_out_rows(table, self._rows, WIDTHS)
        table.horizontalHeader().setStretchLastSection(True)
        table.selectionModel().currentRowChanged.connect(self._row_changed)
        table.doubleClicked.connect(self._open_marked)
        table.entered_on.connect(self._open_marked)

    def _build_box(self) -> None:
        for label in (self._whom, self._what, self._why):
            self._box.column.addWidget(label)
        self._box.column.addWidget(self._told)
        row = FlowRow()
        for answer in Answer:
            button = QPushButton(tr(answer.value).capitalize())
            button.setProperty("answer", answer.value)
            button.clicked.connect(self._note)
            row.addWidget(button)
        self._open.clicked.connect(self._open_marked)
        row.addWidget(self._open)
        self._box.column.addLayout(row)

    @Slot(int)
    def _look_at(self, at: int) -> None:
        self._at = at if 0 <= at < len(self._asks) else -1
        self._box.setVisible(self._at >= 0)
        if self._at < 0:
            return
        if self._table.marked_row() != at:
            self._table.mark_row(at)
        ask = self._asks[at]
        self._told.show_job(ask.job.job_id)
        whom = ask.beside.customer or tr("no name written down")
        self._whom.setText(f"{ask.job.job}: {whom}, {ask.phone}")
        self._what.setText(ask.question)
        self._why.setText(
            " ".join(part for part in (f"{ask.job.vehicle}.", ask.tried, ask.why) if part)
        )
        self._open.setText(tr("Open {job}", job=ask.job.job))
        for button in self._box.findChildren(QPushButton):
            answer = button.property("answer")
            if answer is not None:
                button.setAccessibleName(
                    tr("The customer of {job} says: {answer}", job=ask.job.job, answer=tr(answer))
                )

    @Slot(QModelIndex, QModelIndex)
    def _row_changed(self, now: QModelIndex, _before: QModelIndex) -> None:
        if now.isValid():
            self._look_at(self._table.row_of(now))

    @Slot()
    def _note(self) -> None:
        if self._at < 0:
            return
        answer, job = str(self.sender().property("answer")), self._asks[self._at].job
        try:
            odometer, words = self._told.said()
        except ShopTrouble:
            return  # said beneath the field
        same = answer == Answer.SAME_TROUBLE.value
        source = HeardBy.PAPER.value if same and self._told.on_paper else None
        done = self._desk.do(
            note_answer, job.job_id, answer, odometer_told=odometer, words=words, source=source
        )
        if done is not None:
            self._told.forget(job.job_id)
            self._desk.told.emit(
                tr(
                    "{job}: “{answer}” is noted. It stands on the job's page, under Under watch.",
                    job=job.job,
                    answer=tr(answer),
                )
            )

    @Slot()
    def _open_marked(self) -> None:
        if self._at >= 0:
            self.job_chosen.emit(self._asks[self._at].job.job_id)

"""The trouble codes of one stage: those written down, and a field for the next."""

from __future__ import annotations

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.proof import CODES_READ
from desktop_app.repair_jobs.proof_checks import check_sentence
from desktop_app.repair_jobs.screen.row_field import RowField
from desktop_app.repair_jobs.trouble_code import (
    CodeTrouble,
    code_book,
    code_meant,
    codes_in,
    says_none,
)
from desktop_app.shop_window.choice_list import ChoiceList
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.short_button import ShortButton
from desktop_app.shop_window.texts import plain_label, tooltip


class CodeRows(QWidget):
    """Codes as chips with what they mean; several can be typed at once, or that there is none."""

    no_more = Signal()  # Enter in the empty field

    def __init__(self, desk: Desk, stage: str) -> None:
        super().__init__()
        self._desk = desk
        self._stage = stage
        self._job: JobView | None = None
        drafts = Drafts(desk.record.folder)
        self._field = RowField(tr("Trouble codes, {stage}", stage=tr(stage)), self._add, drafts)
        after = stage == "after repair"
        self._field.setPlaceholderText(tr("P0300, P0301 … or: none") if after else "P0300, P0301 …")
        self._field.no_more.connect(self.no_more)
        self._field.textEdited.connect(self._edited)
        self._kind = ChoiceList()
        for kind in actions.CODE_KINDS:
            self._kind.addItem(tr(kind), kind)
        self._kind.setAccessibleName(tr("What kind of code, {stage}", stage=tr(stage)))
        button = QPushButton(tr("Write down"))
        button.setAccessibleName(tr("Write down the codes, {stage}", stage=tr(stage)))
        button.clicked.connect(self._write)
        self._hint = plain_label("", wrap=True)
        self._hint.hide()
        line = QHBoxLayout()
        line.addWidget(self._field, 1)
        line.addWidget(self._kind)
        line.addWidget(button)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        self._chips = QWidget()
        self._chip_row = FlowRow(self._chips)
        column.addWidget(self._chips)
        column.addLayout(line)
        column.addWidget(self._hint)

    def show_job(self, job: JobView) -> None:
        """Show the codes of this stage."""
        if self._job is None or self._job.id != job.id:
            self._field.begin(f"codes-{self._stage}-{job.id}")
            self._say("")
        elif not self._field.text():
            self._say("")  # nothing is refused, and a tick that was told of may be taken back
        self._job = job
        self._chip_row.clear()
        here = [code for code in job.codes if code.stage == self._stage]
        locked = self._stage == "after repair" and job.left_at is not None
        meanings = code_book().meanings
        for code in here:
            means, kind = meanings.get(code.code), tr(code.kind)
            said = f"{code.code} {kind}: {tr(means)}" if means else f"{code.code} {kind}"
            chip = ShortButton(said, "✕")
            chip.setProperty("row", code.id)
            chip.setAccessibleName(tr("Take out {code}, {kind}", code=code.code, kind=kind))
            if not locked:  # else why not, which stands over all of the box
                chip.setToolTip(tooltip(tr("Press to take it out")))
            chip.clicked.connect(self._strike)
            self._chip_row.addWidget(chip)
        self._chips.setVisible(bool(here))

    @Slot(str)
    def _edited(self, text: str) -> None:
        if not text.strip():
            self._say("")  # nothing is refused any more

    @Slot()
    def _write(self) -> None:
        self._field.save_now()

    def _add(self, text: str) -> object:
        if self._job is None:
            return None
        if says_none(text):
            return self._none_read(self._job.id)
        found = codes_in(text)
        if not found:
            trouble = CodeTrouble(
                tr("“{text}” is not a trouble code.", text=text.strip()),
                do=_what_to_type(text),
            )
            self._say(trouble.sentence() if text.strip() else "")
            return None
        job, kind = self._job.id, str(self._kind.currentData())
        for code in found:
            self._desk.do(actions.write_code, job, code, kind, self._stage)
        unread = [
            piece
            for piece in text.replace(",", " ").replace(";", " ").split()
            if not codes_in(piece)
        ]
        # What is no code stays in the field with its complaint; the others are written down.
        self._field.setText(" ".join(unread))
        others = tr("“{text}” is not a trouble code; the others are.", text=" ".join(unread))
        self._say(f"{others} {_what_to_type(unread[0])}" if unread else "")
        return found

    def _none_read(self, job_id: int) -> object:
        """Give the answer that stands for no code: there is a check for it among the proof's."""
        if self._stage == "found":
            self._say(tr("That no code was stored is a finding: write it down as one, below."))
            return None
        ticked = self._desk.do(actions.tick_check, job_id, "proof", CODES_READ, "done")
        if ticked is not None:
            self._say(tr("Ticked as done above: {check}", check=check_sentence(CODES_READ)))
        return ticked

    def _say(self, words: str) -> None:
        self._hint.setText(f"✎ {words}" if words else "")
        self._hint.setVisible(bool(words))

    @Slot()
    def _strike(self) -> None:
        self._desk.do(actions.strike_code, int(self.sender().property("row")))


def _what_to_type(text: str) -> str:
    meant = code_meant(text)
    if meant:
        return tr("With its letter: type {code} if that is meant.", code=meant)
    return tr("A code is a letter P, C, B or U and four digits, such as P0300.")

"""What suppliers owe for the parts of one job: a core's credit, a claim for one that died early."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QGridLayout, QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.parts_compared.part_kinds.kind_names import NO_KINDS
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.repair_jobs.screen.which_holds import WhichHolds
from desktop_app.repair_jobs.typed_entry import read_money
from desktop_app.returns_watched import money_owed_actions
from desktop_app.returns_watched.owed import Owed, State, What
from desktop_app.returns_watched.screen.typed_field import NO_NAME, TypedField, amount_text
from desktop_app.returns_watched.stored_money_owed import owed_for_job, parts_of_job
from desktop_app.returns_watched.watch_words import days_in_words
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import Labelled
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.kept_choice import KeptChoiceField
from desktop_app.shop_window.lost_words import let_go
from desktop_app.shop_window.refused_drafts import ROW
from desktop_app.shop_window.texts import plain_label

STATES = {
    State.OPEN: tr("not asked for yet"),
    State.ASKED: tr("asked for"),
    State.PAID: tr("paid"),
    State.REFUSED: tr("refused"),
}


class OwedBox(QWidget):
    """Two buttons for each part of a job, and a row for each sum; hidden where there is no part."""

    def __init__(self, desk: Desk, kinds: Mapping[str, PartKind] = NO_KINDS) -> None:
        super().__init__()
        self._desk, self._kinds = desk, kinds
        self._job_id: int | None = None
        self._saving = False
        self._rows: dict[int, OwedRow] = {}
        self._buttons = FlowRow()
        self._parts: tuple[tuple[int, str, str], ...] = ()
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.addWidget(plain_label(tr("Owed by suppliers")))
        self._column.addLayout(self._buttons)
        self.hide()

    def show_job(self, job_id: int) -> None:
        """Show what is owed for the parts of a job."""
        if self._saving:
            return  # shown again by what is being saved; the rest is shown below, once it is
        before, self._job_id = self._job_id, job_id
        if before not in (None, job_id):
            self._saving = True
            for row in tuple(self._rows.values()):
                row.save_typed()
            self._saving = False
        parts = self._desk.ask(parts_of_job, job_id, self._kinds)
        if parts is None and before == job_id:
            return  # what can't be read just now is not gone
        parts = parts or ()
        self.setVisible(bool(parts))
        if parts != self._parts:
            self._parts = parts
            self._offer()
        owed = self._desk.ask(owed_for_job, job_id, self._kinds)
        if owed is None and before == job_id:
            return
        owed = owed or ()
        for gone in set(self._rows) - {one.id for one in owed}:
            row = self._rows.pop(gone)
            let_go(self._desk, self._column, row, row.name)
        for one in owed:
            if one.id not in self._rows:
                self._rows[one.id] = OwedRow(self._desk, one)
                self._column.addWidget(self._rows[one.id])
            self._rows[one.id].show_owed(one)

    def _offer(self) -> None:
        self._buttons.clear()
        for pair, part, _supplier in self._parts:
            for what in What:
                button = QPushButton(f"{tr(what.value).capitalize()}: {part}")
                button.setAccessibleName(_owes(what, part))
                button.setProperty("owed", [pair, what.value])
                button.clicked.connect(self._write)
                self._buttons.addWidget(button)

    @Slot()
    def _write(self) -> None:
        pair, what = self.sender().property("owed")
        self._desk.do(money_owed_actions.write_owed, int(pair), str(what))


def _owes(what: What, part: str) -> str:
    if what is What.CORE:
        return tr("The supplier owes a core: {part}", part=part)
    return tr("The supplier owes a claim: {part}", part=part)


class OwedRow(QWidget):
    """One sum: how much, how far it is, what comes next."""

    def __init__(self, desk: Desk, owed: Owed) -> None:
        super().__init__()
        self._desk, self._owed = desk, owed
        self.setProperty(ROW, f"owed {owed.id}")
        name = f"{tr(owed.what.value)}, {owed.part}"
        self.name = tr(
            "What is owed on {job_number} ({name})", job_number=owed.job_number, name=name
        )
        self._said = plain_label("", wrap=True)
        self._amount = TypedField(tr("Amount"), read_money, self._save_amount, "", amount_text)
        self._amount.line.setAccessibleName(tr("Amount, {name}", name=name))
        self._amount_holds = WhichHolds(desk, self._amount)
        states = [(state.value, words) for state, words in STATES.items()]
        self._state = KeptChoiceField(
            desk, tr("How far it is, {name}", name=name), states, self._save_state
        )
        self._next = TypedField(tr("Next step"), str.strip, self._save_next)
        self._next.line.setAccessibleName(tr("Next step, {name}", name=name))
        self._next_holds = WhichHolds(desk, self._next)
        out = QPushButton(tr("Take out"))
        out.setAccessibleName(tr("Take out: {name}", name=name))
        out.clicked.connect(self._take_out)
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.addWidget(self._said, 0, 0, 1, 4)
        grid.addWidget(self._amount, 1, 0)
        grid.addWidget(Labelled(tr("How far it is"), self._state), 1, 1)
        grid.addWidget(self._next, 1, 2)
        grid.addWidget(Labelled(NO_NAME, out), 1, 3)
        grid.setColumnStretch(2, 2)

    def show_owed(self, owed: Owed) -> None:
        """Show what is kept of this sum."""
        self._owed = owed
        whom = owed.supplier or tr("the supplier")
        end = (
            tr(", ended on {ended_on}", ended_on=owed.ended_on.isoformat()) if owed.ended_on else ""
        )
        self._said.setText(
            tr(
                "{what} for {part}, from {whom}: since {since}, {days}{end}.",
                what=tr(owed.what.value).capitalize(),
                part=owed.part,
                whom=whom,
                since=owed.since.isoformat(),
                days=days_in_words(owed.days_open(self._desk.today())),
                end=end,
            )
        )
        self._amount.hint(tr("in {currency}", currency=self._desk.rules.currency))
        cents = owed.amount_cents
        self._amount_holds.stands(cents, "" if cents is None else amount_text(cents))
        self._amount.show_kept(cents)
        self._state.show_value(owed.state.value)
        self._next_holds.stands(owed.next_step, owed.next_step)
        self._next.show_kept(owed.next_step)

    def save_typed(self) -> None:
        """Save what is still only typed."""
        self._amount.line.save_now()
        self._next.line.save_now()

    def _save_amount(self, cents: Any) -> object:
        deed = money_owed_actions.write_owed_amount
        return self._amount_holds.save(cents, deed, self._owed.id, cents)

    def _save_state(self, state: str) -> object:
        return self._desk.do(money_owed_actions.set_owed_state, self._owed.id, state)

    def _save_next(self, words: Any) -> object:
        deed = money_owed_actions.write_next_step
        return self._next_holds.save(words, deed, self._owed.id, words)

    @Slot()
    def _take_out(self) -> None:
        self._desk.do(money_owed_actions.take_owed_out, self._owed.id)

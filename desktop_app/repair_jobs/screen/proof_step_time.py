"""When a ticked step of the proof was done: the moment of its tick, until someone types another."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime

from PySide6.QtWidgets import QHBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.repair_jobs import proof_actions
from desktop_app.repair_jobs.proof_steps import STEPS
from desktop_app.repair_jobs.typed_entry import read_moment
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import ChoiceField, Labelled, LineField
from desktop_app.shop_window.off_because import off_because

_NONE_YET = tr("No step is ticked yet.")
_HINT = tr("like 2026-11-16 14:05, or 14:05")


class ProofStepTime(QWidget):
    """One of the ticked steps, and its moment to be put right."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._job_id: int | None = None
        self._steps: Mapping[str, str] = {}
        self._step = ChoiceField(tr("Step to put right"), [], self._choose)
        self._step.setSizeAdjustPolicy(ChoiceField.SizeAdjustPolicy.AdjustToContents)
        self._at = LineField(tr("When it was done"), self._save)
        self._at_box = Labelled(tr("When it was done"), self._at, _HINT)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(Labelled(tr("Ticked too late? The step"), self._step))
        row.addWidget(self._at_box, 1)

    def show_steps(self, job_id: int, steps: Mapping[str, str]) -> None:
        """Show the steps of a job that are ticked; a new one comes to the front.

        A moment that was refused keeps its own step there, as long as that is ticked.
        """
        if job_id != self._job_id:
            self._at.save_now()
            self._drop()
            self._job_id, self._steps = job_id, {}
        before = self._step.currentData()
        new = [one.id for one in STEPS if one.id in steps and one.id not in self._steps]
        chosen = new[-1] if new and not self._at.unsaved() else before
        self._steps = dict(steps)
        if before is not None and before not in steps:
            self._drop()
        self._step.set_choices([(one.id, one.words) for one in STEPS if one.id in steps])
        self._step.show_value(chosen if chosen in steps else next(iter(steps), None))
        self._show_moment()
        off_because(self, "" if steps else _NONE_YET)  # there from the first: nothing moves down

    def _drop(self) -> None:
        """Empty the field for another step; a moment that was refused is told."""
        if self._at.unsaved():
            name, typed = self._at.accessibleName(), self._at.text()
            self._desk.told.emit(
                tr("{name}: “{typed}” was typed and is not kept.", name=name, typed=typed)
            )
        self._at.forget()

    def _show_moment(self) -> None:
        at = self._steps.get(str(self._step.currentData()), "")
        self._at.show_value(f"{at[:10]} {at[11:16]}" if at else "")

    def _choose(self, _step: str) -> object:
        self._drop()
        self._show_moment()
        return True

    def _save(self, text: str) -> object:
        step = str(self._step.currentData())
        if self._job_id is None or step not in self._steps:
            return None
        try:
            read_moment(text, datetime.fromisoformat(self._steps[step]))
        except ShopTrouble as trouble:
            self._at_box.refuse(trouble.sentence())
            return None
        self._at_box.refuse("")
        return self._desk.do(proof_actions.time_step, self._job_id, step, text)

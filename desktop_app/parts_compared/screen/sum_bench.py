"""Bench sums of a job: those that are kept, and one to work out."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QTimer, Slot
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.parts_compared import sum_actions
from desktop_app.parts_compared.bench_sums.bench_sum import BenchSum, SumKept
from desktop_app.parts_compared.bench_sums.read_already import PairRead, read_already
from desktop_app.parts_compared.bench_sums.sum_offered import SumOffered
from desktop_app.parts_compared.bench_sums.sums_offered import SUMS, sums_for
from desktop_app.parts_compared.in_shop_unit import said_in_mm
from desktop_app.parts_compared.screen.sum_form import SumForm
from desktop_app.parts_compared.stored_pairs import drawer
from desktop_app.parts_compared.stored_sums import sums_of_job
from desktop_app.shop_window.choice_list import ChoiceList
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.fields import Labelled, Tick
from desktop_app.shop_window.flow_row import empty
from desktop_app.shop_window.kept_choice import put_back
from desktop_app.shop_window.texts import plain_label
from desktop_app.shop_window.typing_pause import TypingPause

NONE = tr("Which sum?")


class SumBench(QWidget):
    """A choice of the sums that go with the parts of the job, its form, and what is kept."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._drafts = Drafts(desk.record.folder)
        self._job_id: int | None = None
        self._pairs: Sequence[PairRead] = ()
        self._form: SumForm | None = None
        self._rows: tuple[SumKept, ...] = ()
        # Typing that rests is kept, whatever happens to the program.
        self._pause = TypingPause(self, self.keep_draft)
        self._choice = ChoiceList()
        self._choice.activated.connect(self._choose)
        self._kept = QVBoxLayout()
        self._place = QVBoxLayout()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 8, 0, 0)
        column.addWidget(plain_label(tr("Bench sums"), "heading"))
        column.addLayout(self._kept)
        column.addWidget(Labelled(tr("Work one out"), self._choice))
        column.addLayout(self._place)

    def show_sums(self, job_id: int, pairs: Sequence[PairRead]) -> None:
        """Show the sums of a job; the form in use is left alone."""
        if self._job_id != job_id:
            self.keep_draft()
            self._job_id = job_id
            self._close()
        self._pairs = pairs
        self._offer()
        rows = self._desk.ask(sums_of_job, job_id) or ()
        if rows != self._rows:
            self._rows = rows
            # The button that led here may still be being pressed.
            QTimer.singleShot(0, self, self._build_rows)

    @Slot()
    def keep_draft(self) -> None:
        """Keep what is typed into a form, so that it is there when the job is opened again."""
        if self._form is not None and self._form.changed():
            self._drafts.keep(self._draft(self._form.offered.id), self._form.texts())

    def _read_already(self, chosen: str) -> dict[str, str]:
        """Return what the pairs hold already, with its unit where the shop reads inches."""
        found = read_already(chosen, self._pairs)
        if self._desk.rules.length_unit != "inch":
            return found
        lengths = {field.name for field in SUMS[chosen].fields if field.unit == "mm"}
        return {name: said_in_mm(t) if name in lengths else t for name, t in found.items()}

    def _draft(self, sum_id: str) -> str:
        return f"sum {sum_id} of job {self._job_id}"

    def _offer(self) -> None:
        """Offer the sums of the job's kinds first, then all others."""
        offered: dict[str, SumOffered] = {}
        for kind, _ in self._pairs:
            offered |= {one.id: one for one in sums_for(kind.sort)}
        ids = list(offered) + [one for one in SUMS if one not in offered]
        if ids == [self._choice.itemData(i) for i in range(1, self._choice.count())]:
            return
        chosen = self._choice.currentData()
        self._choice.clear()
        self._choice.addItem(NONE, "")
        for sum_id in ids:
            self._choice.addItem(SUMS[sum_id].name, sum_id)
        self._choice.setCurrentIndex(max(0, self._choice.findData(chosen)))

    @Slot()
    def _choose(self) -> None:
        chosen = str(self._choice.currentData() or "")
        self.keep_draft()
        self._close()
        if chosen:
            self._choice.setCurrentIndex(self._choice.findData(chosen))
            filled = self._drafts.read(self._draft(chosen)) or self._read_already(chosen)
            self._form = SumForm(
                SUMS[chosen],
                filled,
                self._desk.ask(drawer) or {},
                self._desk.rules.length_unit,
            )
            self._form.kept.connect(self._keep)
            self._form.typed.connect(self._pause.typed)
            self._place.addWidget(self._form)
            self._form.show()

    def _close(self) -> None:
        if self._form is not None:
            self._form.hide()
            self._form.setParent(None)
            self._form.deleteLater()
            self._form = None
        self._choice.setCurrentIndex(0)

    @Slot(object)
    def _keep(self, result: BenchSum) -> None:
        if self._form is None or self._job_id is None:
            return
        sum_id = self._form.offered.id
        if self._desk.do(sum_actions.keep_sum, self._job_id, sum_id, result) is not None:
            self._drafts.keep(self._draft(sum_id), {})
            QTimer.singleShot(0, self, self._close)

    @Slot()
    def _build_rows(self) -> None:
        empty(self._kept)
        for one in self._rows:
            line = QWidget()
            row = QHBoxLayout(line)
            row.setContentsMargins(0, 0, 0, 0)
            words = f"{one.name}: {one.sentence} {one.limit}"
            row.addWidget(plain_label(words, wrap=True), 1)
            printed = Tick(tr("on the sheet"))
            printed.setChecked(one.on_sheet)
            printed.setProperty("row", one.id)
            printed.clicked.connect(self._print)
            away = QPushButton("✕")
            away.setAccessibleName(tr("Take the sum out: {name}", name=one.name))
            away.setProperty("row", one.id)
            away.clicked.connect(self._take_out)
            row.addWidget(printed)
            row.addWidget(away)
            self._kept.addWidget(line)

    @Slot(bool)
    def _print(self, on_sheet: bool) -> None:
        button = self.sender()
        assert isinstance(button, Tick)
        if self._desk.do(sum_actions.print_sum, int(button.property("row")), on_sheet) is None:
            put_back(button, not on_sheet)

    @Slot()
    def _take_out(self) -> None:
        self._desk.do(sum_actions.take_sum_out, int(self.sender().property("row")))

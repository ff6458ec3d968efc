"""The form of one bench sum: its fields, and what comes of them as they are typed."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QComboBox, QGridLayout, QLineEdit, QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.parts_compared.bench_sums.bench_sum import BenchSum
from desktop_app.parts_compared.bench_sums.sum_field import MEASURED, SumField, shown_default
from desktop_app.parts_compared.bench_sums.sum_offered import SumOffered
from desktop_app.parts_compared.bench_sums.sums_offered import work_out
from desktop_app.parts_compared.in_shop_unit import said_in_inches, said_in_mm, shop_unit
from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.choice_list import ChoiceList
from desktop_app.shop_window.fields import Labelled
from desktop_app.shop_window.off_because import off_because
from desktop_app.shop_window.texts import CautionBox, plain_label

ACROSS = 3
LONGEST = 4000  # letters: more than the longest list that is accepted


class SumForm(QWidget):
    """One field for each thing the sum asks for; `kept` carries the result to keep."""

    kept = Signal(object)  # BenchSum
    typed = Signal()

    def __init__(
        self,
        offered: SumOffered,
        filled: Mapping[str, str],
        drawer: Mapping[str, Instrument],
        length_unit: str = "mm",
    ) -> None:
        super().__init__()
        self._inches = length_unit == "inch"
        self.offered = offered
        self._drawer = drawer
        self._fields: dict[str, QLineEdit | QComboBox] = {}
        self._result: BenchSum | None = None
        self._sentence = plain_label("", wrap=True)
        self._limit = plain_label("", "quiet", wrap=True)
        self._keep = QPushButton(tr("Keep it with the job"))
        self._keep.setObjectName("next")
        self._keep.clicked.connect(self._pressed)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(plain_label(offered.about, "quiet", wrap=True))
        if offered.caution:
            column.addWidget(CautionBox((offered.caution,)))
        grid = QGridLayout()
        for place, field in enumerate(offered.fields):
            shown, _ = shop_unit(field.unit, length_unit)
            unit = f", {shown}" if shown else ""
            text = filled.get(field.name)
            if text is None:
                usual = shown_default(field)
                text = said_in_mm(usual) if self._reads_inches(field) else usual
            box = self._field(field.name, field.choices, text)
            label = f"{field.label[:1].upper()}{field.label[1:]}{unit}"
            grid.addWidget(Labelled(label, box, field.help), place // ACROSS, place % ACROSS)
        column.addLayout(grid)
        for widget in (self._sentence, self._limit, self._keep):
            column.addWidget(widget)
        self._began = self.texts()
        self._work_out()

    def changed(self) -> bool:
        """Tell whether something was typed since the form was opened."""
        return self.texts() != self._began

    def texts(self) -> dict[str, str]:
        """Return what is typed, by field."""
        return {
            name: str(box.currentData()) if isinstance(box, QComboBox) else box.text()
            for name, box in self._fields.items()
        }

    def _texts_with_units(self) -> dict[str, str]:
        """Return what is typed; where the shop reads inches, a bare length says so."""
        texts = self.texts()
        for field in self.offered.fields:
            if self._reads_inches(field):
                texts[field.name] = said_in_inches(texts[field.name])
        return texts

    def _reads_inches(self, field: SumField) -> bool:
        return self._inches and field.unit == "mm" and field.kind in MEASURED

    def _field(self, name: str, choices: tuple[str, ...], text: str) -> QLineEdit | QComboBox:
        box: QLineEdit | QComboBox
        if choices:
            box = ChoiceList()
            for one in choices:
                box.addItem(tr(one), one)
            box.setCurrentIndex(max(0, box.findData(text)))
            box.currentTextChanged.connect(self._work_out)
        else:
            box = QLineEdit(text)
            box.setMaxLength(LONGEST)
            box.textChanged.connect(self._work_out)
            box.returnPressed.connect(self._pressed)
        self._fields[name] = box
        return box

    @Slot()
    def _work_out(self) -> None:
        self._result = None
        try:
            self._result = work_out(self.offered.id, self._texts_with_units(), self._drawer)
        except ShopTrouble as trouble:
            self._sentence.setText(f"✎ {trouble.sentence()}")
            self._limit.setText("")
        else:
            self._sentence.setText(self._result.sentence)
            self._limit.setText(self._result.limit_sentence)
        missing = tr("Something is still missing, as said above.")
        off_because(self._keep, "" if self._result is not None else missing)
        self.typed.emit()

    @Slot()
    def _pressed(self) -> None:
        if self._result is not None:
            self.kept.emit(self._result)

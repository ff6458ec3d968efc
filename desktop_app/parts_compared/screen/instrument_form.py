"""The form for one instrument; what it refuses stays in its fields."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QLineEdit, QPushButton

from desktop_app.language import tr
from desktop_app.parts_compared import actions
from desktop_app.parts_compared.in_shop_unit import shop_unit
from desktop_app.parts_compared.instruments.instrument import tool_words
from desktop_app.parts_compared.instruments.instrument_called import tool_called
from desktop_app.parts_compared.instruments.instrument_check import read_check_day
from desktop_app.parts_compared.screen.instrument_table import ToolShown
from desktop_app.parts_compared.shown_value import number
from desktop_app.parts_compared.typed_value import typed_value
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.choice_list import ChoiceList
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.fields import Labelled
from desktop_app.shop_window.line_draft import LineDraft
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import plain_label

UNITS = ("mm", "deg", "ohm", "kohm", "V", "A", "kPa", "ml", "C", "g/s")


class InstrumentForm(Section):
    """Name, unit, resolution, permitted error, last check, and one button to keep them."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(tr("Add an instrument, or change one"))
        self._desk = desk
        self._name, self._step, self._error, self._day = (QLineEdit() for _ in range(4))
        self._unit = ChoiceList()
        for unit in UNITS:
            self._unit.addItem(unit, unit)
        self._unit.currentTextChanged.connect(self._say_unit)
        self._name.setPlaceholderText(tr("calliper 2"))
        self._boxes = {
            "name": Labelled(tr("Instrument"), self._name),
            "unit": Labelled(tr("Unit"), self._unit),
            "step": Labelled(tr("Reads in steps of"), self._step),
            "error": Labelled(tr("Permitted error, plus or minus"), self._error),
            "day": Labelled(tr("Last checked on"), self._day),
        }
        lines = {"name": self._name, "step": self._step, "error": self._error, "day": self._day}
        drafts = Drafts(desk.record.folder)
        self._draft = LineDraft(self, drafts, lines, {"unit": self._unit})
        grid = QGridLayout()
        for place, box in enumerate(self._boxes.values()):
            grid.addWidget(box, place // 3, place % 3)
        for field in (self._name, self._step, self._error, self._day):
            field.returnPressed.connect(self._keep)
        keep = QPushButton(tr("Keep it in the drawer"))
        keep.setObjectName("next")
        keep.clicked.connect(self._keep)
        row = QHBoxLayout()
        row.addWidget(keep)
        row.addStretch(1)
        self.column.addWidget(
            plain_label(
                tr(
                    "Step and permitted error stand on the instrument or in its papers. "
                    "The same name again changes what is known of it."
                ),
                "quiet",
                wrap=True,
            )
        )
        self.column.addLayout(grid)
        self.column.addLayout(row)
        self.show_unit()
        self._draft.begin("instrument")

    def keep_draft(self) -> None:
        """Keep what is typed and not in the drawer yet."""
        self._draft.keep()

    def fill(self, tool: ToolShown) -> None:
        """Fill the form with an instrument and go to its first figure."""
        self._name.setText(tool_words(tool.name))
        self._unit.setCurrentText(tool.unit)
        unit, factor = shop_unit(tool.unit, self._desk.rules.length_unit)
        ending = " in" if unit == "in" else ""
        self._step.setText(number(round(tool.resolution * factor, 6)) + ending)
        self._error.setText(number(round(tool.max_error * factor, 6)) + ending)
        self._day.setText(tool.checked_on or "")
        self._step.setFocus()
        self._step.selectAll()

    def show_unit(self) -> None:
        """Say in which unit the figures are taken."""
        self._say_unit(self._unit.currentText())

    @Slot(str)
    def _say_unit(self, unit: str) -> None:
        shown, _ = shop_unit(unit, self._desk.rules.length_unit)
        self._boxes["step"].hint(tr("in {unit}", unit=shown))
        self._boxes["error"].hint(tr("in {unit}", unit=shown))
        self._boxes["day"].hint(tr("year-month-day, or nothing"))

    @Slot()
    def _keep(self) -> None:
        unit = self._unit.currentText()
        self._say_unit(unit)
        step = self._figure("step", self._step.text(), unit)
        error = self._figure("error", self._error.text(), unit)
        day, fine = self._check_day()
        named = bool(self._name.text().strip())
        self._boxes["name"].hint("" if named else tr("✎ Give it a name, such as “calliper 2”."))
        if step is None or error is None or not fine or not named:
            return
        name = tool_called(self._name.text())
        done = self._desk.do(actions.keep_instrument, name, unit, step, error, day)
        if done is not None:
            for field in (self._name, self._step, self._error, self._day):
                field.clear()
            self.keep_draft()
            self._name.setFocus()

    def _figure(self, box: str, text: str, unit: str) -> float | None:
        """Read a figure in the shop's unit; say what is accepted where it can't be read."""
        shown, _ = shop_unit(unit, self._desk.rules.length_unit)
        bare = not any(letter.isalpha() or letter in "\"″'" for letter in text)
        try:
            value = typed_value(f"{text} in" if bare and shown == "in" else text, unit)
        except ShopTrouble as trouble:
            self._boxes[box].hint(f"✎ {trouble.sentence()}")
            return None
        if value < 0:
            self._boxes[box].hint(tr("✎ Accepted: a number, zero or more."))
            return None
        return value

    def _check_day(self) -> tuple[str | None, bool]:
        try:
            return read_check_day(self._day.text(), self._desk.today()), True
        except ShopTrouble as trouble:
            self._boxes["day"].hint(f"✎ {trouble.sentence()}")
            return None, False

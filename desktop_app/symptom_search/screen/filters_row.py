"""Only some of the old jobs: by the kind of vehicle, the system and the time."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QLineEdit, QWidget

from desktop_app.language import tr
from desktop_app.repair_jobs.systems import SYSTEMS
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import ChoiceField
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.look import TOUCH
from desktop_app.shop_window.texts import plain_label
from desktop_app.symptom_search.filters import Filters
from desktop_app.symptom_search.question import Piece
from desktop_app.symptom_search.time_asked import first_day, last_day, years_before

ONLY = "only"  # the kind of a piece that is a filter
FROM_TO = "from-to"
_DAYS = 150  # pixels of a field that takes a day
_TIMES = [
    ("", tr("Any time")),
    ("1", tr("Last 12 months")),
    ("3", tr("Last 3 years")),
    (FROM_TO, tr("From … to …")),
]


class FiltersRow(QWidget):
    """Three choices that keep jobs out; they stay as they are until somebody changes them."""

    changed = Signal()

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._vehicle = ChoiceField(
            tr("Only this kind of vehicle"), [("", tr("Any vehicle"))], self._say
        )
        systems = [("", tr("Any system")), *((one.id, one.name) for one in SYSTEMS)]
        self._system = ChoiceField(tr("Only this system"), systems, self._say)
        self._time = ChoiceField(tr("Only this time"), _TIMES, self._say)
        self._since = _day_line(tr("from: 2024-05"), tr("From this day, month or year"))
        self._until = _day_line(tr("to: 2024-05"), tr("To this day, month or year"))
        self._wrong = plain_label("", "quiet")
        line = FlowRow(self)
        only = plain_label(tr("Only"), "quiet")
        for label in (only, self._wrong):
            label.setMinimumHeight(TOUCH)
        for widget in (only, self._vehicle, self._system, self._time, *self._days(), self._wrong):
            line.addWidget(widget)
        for day in self._days():
            day.textEdited.connect(self._say)
            day.hide()
        self._wrong.hide()

    def offer(self, classes: Sequence[str]) -> None:
        """Offer the kinds of vehicles that the shop has seen; the chosen one stays chosen."""
        chosen = self._vehicle.currentData()
        names = list(dict.fromkeys([*classes, chosen] if chosen else classes))
        self._vehicle.set_choices([("", tr("Any vehicle")), *((name, name) for name in names)])
        self._vehicle.show_value(chosen)

    def kept(self) -> Filters:
        """Return what is chosen; a day that cannot be read keeps nothing out, and that is said."""
        since, until = self._ends()
        return Filters(self._vehicle.currentData(), self._system.currentData(), since, until)

    def pieces(self) -> tuple[Piece, ...]:
        """Return what is chosen as pieces, to be shown and taken out."""
        return tuple(
            Piece(ONLY, name, shown)
            for name, choice, shown in (
                ("vehicle", self._vehicle, self._vehicle.currentText()),
                ("system", self._system, self._system.currentText()),
                ("time", self._time, self._time_words()),
            )
            if choice.currentData() and shown
        )

    def take_out(self, piece: Piece) -> None:
        """Take a choice back."""
        choices = {"vehicle": self._vehicle, "system": self._system, "time": self._time}
        choices[piece.id].show_value("")
        self._say()

    @Slot()
    def _say(self, _value: object = None) -> None:
        typed = self._time.currentData() == FROM_TO
        for day in self._days():
            day.setVisible(typed)
        self._ends()
        self.updateGeometry()
        self.changed.emit()

    def _ends(self) -> tuple[date | None, date | None]:
        """Return the first and the last day that are asked about."""
        span = self._time.currentData()
        if span not in ("", FROM_TO):
            return years_before(self._desk.today(), int(span)), None
        ends: tuple[date | None, date | None] = (None, None)
        wrong = ""
        if span == FROM_TO:
            try:
                ends = first_day(self._since.text()), last_day(self._until.text())
            except ShopTrouble as trouble:
                wrong = tr("{sentence} Until then all times count.", sentence=trouble.sentence())
        if ends[0] and ends[1] and ends[0] > ends[1]:
            wrong = tr("That ends before it begins: no job can fit.")
        self._wrong.setText(wrong)
        self._wrong.setVisible(bool(wrong))
        return ends

    def _time_words(self) -> str:
        if self._time.currentData() != FROM_TO:
            return self._time.currentText()
        since, until = self._ends()
        said = [
            tr("from {day}", day=since) if since else "",
            tr("to {day}", day=until) if until else "",
        ]
        return " ".join(filter(None, said))

    def _days(self) -> tuple[QLineEdit, QLineEdit]:
        return self._since, self._until


def _day_line(shown: str, name: str) -> QLineEdit:
    line = QLineEdit()
    line.setAccessibleName(name)
    line.setPlaceholderText(shown)
    line.setFixedWidth(_DAYS)
    line.setMaxLength(10)
    return line

"""One mark in words: its name, what it says, how high it lies, what its doubt is made of."""

from __future__ import annotations

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.part_photos.bench_readings import BenchReadings
from desktop_app.part_photos.mark_actions import rename_mark
from desktop_app.part_photos.mark_words import (
    largest_part,
    method_words,
    share_sentence,
    tool_of,
    value_words,
)
from desktop_app.part_photos.marks.mark import FROM_PICTURE, SIZED, Measured
from desktop_app.part_photos.screen.bench_mark_height import MarkHeight
from desktop_app.part_photos.screen.bench_mark_reading import MarkReading
from desktop_app.part_photos.screen.bench_work import UNBROKEN
from desktop_app.part_photos.stored_marks import KeptMark
from desktop_app.shop_record.deed import Done
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import Labelled, LineField
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.texts import plain_label

_HINTS = {
    "surface": tr("Name it alike on both photos, and the list shows old and new side by side."),
    "bare-metal": (
        tr(
            "The surfaces of this photo are counted against the colour in here. Without it "
            "they are counted against a neutral grey."
        )
    ),
}


class MarkDetails(QWidget):
    """The fields of one mark; what is half typed stays with its mark."""

    unwanted = Signal(int)
    snap_wanted = Signal(int)
    refused = Signal()  # nothing came of a deed: the mark may be another one by now, or gone

    def __init__(
        self, desk: Desk, kept: KeptMark, side: str, readings: BenchReadings | None
    ) -> None:
        super().__init__()
        self._desk = desk
        self.mark_id = kept.id
        note, kind = kept.mark.type == "note", kept.mark.type
        self._value = plain_label("", "heading", wrap=True)
        self._name = LineField(
            tr("What the note says") if note else tr("Name of the mark"), self._rename
        )
        self._height = MarkHeight(desk, kept, side, readings) if kind in SIZED else None
        self._reading = None
        if readings is not None and (kind in SIZED or kind == "count"):
            self._reading = MarkReading(desk, kept, side, readings)
        self._budget = plain_label("", wrap=True)
        self._method = plain_label("", "quiet", wrap=True)
        self._warnings = plain_label("", wrap=True)
        again = kind in FROM_PICTURE
        self._snap = QPushButton(tr("Count again") if again else tr("Snap to the edge"))
        self._snap.setAccessibleName(
            tr("Count again") if again else tr("Snap this mark to the edge")
        )
        self._snap.clicked.connect(self._ask_snap)
        self._snap.setVisible(kind in SIZED or again)
        self._out = QPushButton(tr("Take out"))
        self._out.setAccessibleName(tr("Take this mark out"))
        self._out.clicked.connect(self._ask_out)
        self._lay_out(tr("What it says") if note else tr("Name"))

    def _lay_out(self, name: str) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._value)
        column.addWidget(Labelled(name, self._name))
        if self._height is not None:
            self._height.refused.connect(self.refused)
            column.addWidget(self._height)
        for widget in (self._budget, self._method, self._warnings):
            column.addWidget(widget)
        if self._reading is not None:
            column.addWidget(self._reading)
        buttons = FlowRow()
        buttons.addWidget(self._snap)
        buttons.addWidget(self._out)
        column.addLayout(buttons)
        column.addStretch(1)

    def show_mark(
        self, kept: KeptMark, said: Measured | None, why_not: str, *, as_last: bool = False
    ) -> None:
        """Show the mark as it is kept, and what it says as it lies now (or why it doesn't).

        `as_last` tells that it was drawn with the height of the mark before it.
        """
        self._name.show_value(kept.mark.name)
        self._value.setText(self._value_words(kept, said))
        self._budget.setText(largest_part(said.budget) if said is not None else "")
        warnings = (*(said.warnings if said is not None else ()), *([why_not] if why_not else ()))
        self._method.setText(_HINTS.get(kept.mark.type, ""))
        if said is not None and said.method:
            unnamed = "" if kept.mark.name.strip() else f"\n{self._method.text()}"
            self._method.setText(method_words(said.method) + unnamed)
        elif kept.mark.type == "count" and said is not None and said.value is not None:
            self._method.setText(" ".join(warnings))  # what was taken for a band
            warnings = ()
        self._warnings.setText("\n".join(f"⚠  {one}" for one in warnings))
        for label in (self._budget, self._method, self._warnings):
            label.setVisible(bool(label.text()))
        if self._height is not None:
            self._height.show_mark(kept, as_last=as_last)
        if self._reading is not None:
            self._reading.show_mark(kept)

    def _value_words(self, kept: KeptMark, said: Measured | None) -> str:
        kind, unit = kept.mark.type, self._desk.rules.length_unit
        words = value_words(said.value, said.unit, said.expanded_uncertainty, unit) if said else ""
        if kind == "surface" and words and said is not None:
            return share_sentence(said.value, said.expanded_uncertainty, kept.method or "")
        if kind == "count" and kept.value is not None and not words:
            words = value_words(kept.value, kept.unit, kept.expanded_u, unit)
        label, said_whole = tool_of(kind).label, words.replace(" ", UNBROKEN)
        return f"{label}: {said_whole}" if words else label

    def go_to_name(self) -> None:
        """Put the cursor into the name."""
        self._name.setFocus()
        self._name.selectAll()

    def _rename(self, text: str) -> Done | None:
        done = self._desk.do(rename_mark, self.mark_id, text)
        if done is None or done.seq is None:
            self.refused.emit()
        return done

    @Slot()
    def _ask_snap(self) -> None:
        self.snap_wanted.emit(self.mark_id)

    @Slot()
    def _ask_out(self) -> None:
        self.unwanted.emit(self.mark_id)

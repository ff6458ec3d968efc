"""One mark in words: its name, what it says, how high it lies, what its doubt is made of."""

from __future__ import annotations

import math
from functools import partial

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QHBoxLayout, QMenu, QPushButton, QVBoxLayout, QWidget

from desktop_app.part_photos.bench_readings import BenchReadings
from desktop_app.part_photos.mark_actions import Follow, rename_mark, set_height
from desktop_app.part_photos.mark_words import (
    height_mm,
    largest_part,
    share_sentence,
    shown_height,
    tool_of,
    unit_of,
    value_words,
)
from desktop_app.part_photos.marks.mark import FROM_PICTURE, SIZED, Measured
from desktop_app.part_photos.stored_marks import KeptMark
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import Labelled, LineField
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.texts import plain_label, tooltip

LEAST_HEIGHT_U_MM = 0.05  # a part on paper lies no better than that; common practice, no source
USUAL_HEIGHT_U_MM = 0.5  # a height read off a steel rule; common practice, no source
_HEIGHT_HINT = (
    "0 is on the card. What stands higher looks larger: 1 mm of height unsaid is 0.3 % of a "
    "length, seen from 300 mm."
)
_HINTS = {
    "surface": "Name it alike on both photos, and the list shows old and new side by side.",
    "bare-metal": (
        "The surfaces of this photo are counted against the colour in here. Without it they are "
        "counted against a neutral grey."
    ),
}


class MarkDetails(QWidget):
    """The fields of one mark; what is half typed stays with its mark."""

    unwanted = Signal(int)
    snap_wanted = Signal(int)

    def __init__(
        self, desk: Desk, kept: KeptMark, side: str, readings: BenchReadings | None
    ) -> None:
        super().__init__()
        self._desk, self._side, self._readings = desk, side, readings
        self._follow: Follow | None = readings.follow if readings is not None else None
        self._kept = kept
        self.mark_id = kept.id
        note, kind = kept.mark.type == "note", kept.mark.type
        self._value = plain_label("", "heading", wrap=True)
        self._name = LineField("What the note says" if note else "Name of the mark", self._rename)
        self._height = LineField("Height above the card", self._set_height)
        self._height_u = LineField("Height plus or minus", self._set_height)
        self._lend = QPushButton("Height from a reading …")
        self._lend.setToolTip(tooltip("Take what was read of this part as the mark's height."))
        self._lend.setMenu(QMenu(self._lend))
        self._lend.menu().aboutToShow.connect(self._fill_heights)
        self._hint = plain_label(_HEIGHT_HINT, "quiet", wrap=True)
        self._budget = plain_label("", wrap=True)
        self._method = plain_label("", "quiet", wrap=True)
        self._warnings = plain_label("", wrap=True)
        self._taken = plain_label("", wrap=True)
        self._use = QPushButton("Use as the reading of …")
        self._use.setMenu(QMenu(self._use))
        self._use.menu().aboutToShow.connect(self._fill_menu)
        again = kind in FROM_PICTURE
        self._snap = QPushButton("Count again" if again else "Snap to the edge")
        self._snap.setAccessibleName("Count again" if again else "Snap this mark to the edge")
        self._snap.clicked.connect(self._ask_snap)
        self._out = QPushButton("Take out")
        self._out.setAccessibleName("Take this mark out")
        self._out.clicked.connect(self._ask_out)
        self._lay_out(note)

    def _lay_out(self, note: bool) -> None:
        unit = "in" if self._desk.rules.length_unit == "inch" else "mm"
        self._heights = QWidget()
        heights = QVBoxLayout(self._heights)
        heights.setContentsMargins(0, 0, 0, 0)
        fields = QHBoxLayout()
        fields.addWidget(Labelled(f"Height above the card, {unit}", self._height))
        fields.addWidget(Labelled("±", self._height_u))
        heights.addLayout(fields)
        heights.addWidget(self._lend, 0, Qt.AlignmentFlag.AlignLeft)
        self._lend.setVisible(self._readings is not None)
        heights.addWidget(self._hint)
        kind = self._kept.mark.type
        self._heights.setVisible(kind in SIZED)
        buttons = FlowRow()
        for button in (self._use, self._snap, self._out):
            buttons.addWidget(button)
        can_be_read = kind in SIZED or kind == "count"
        self._use.setVisible(can_be_read and self._readings is not None)
        self._snap.setVisible(kind in SIZED or kind in FROM_PICTURE)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._value)
        column.addWidget(Labelled("What it says" if note else "Name", self._name))
        for widget in (self._heights, self._budget, self._method, self._warnings, self._taken):
            column.addWidget(widget)
        column.addLayout(buttons)
        column.addStretch(1)

    def show_mark(self, kept: KeptMark, said: Measured | None, why_not: str) -> None:
        """Show the mark as it is kept, and what it says as it lies now (or why it doesn't)."""
        self._kept = kept
        unit = self._desk.rules.length_unit
        self._name.show_value(kept.mark.name)
        known = kept.height_known
        self._height.show_value(shown_height(kept.mark.height_mm if known else None, unit))
        self._height_u.show_value(shown_height(kept.mark.height_u_mm if known else None, unit))
        label = tool_of(kept.mark.type).label
        words = value_words(said.value, said.unit, said.expanded_uncertainty, unit) if said else ""
        if kept.mark.type == "count" and kept.value is not None and not words:
            words = value_words(kept.value, kept.unit, kept.expanded_u, unit)
        self._value.setText(f"{label}: {words}" if words else label)
        if kept.mark.type == "surface" and words and said is not None:
            self._value.setText(share_sentence(said.value, said.expanded_uncertainty))
        self._budget.setText(largest_part(said.budget) if said is not None else "")
        warnings = (*(said.warnings if said is not None else ()), *([why_not] if why_not else ()))
        self._method.setText(_HINTS.get(kept.mark.type, ""))
        if said is not None and said.method:
            unnamed = "" if kept.mark.name.strip() else f"\n{self._method.text()}"
            self._method.setText(f"How: {said.method}{unnamed}")
        elif kept.mark.type == "count" and said is not None and said.value is not None:
            self._method.setText(" ".join(warnings))  # what was taken for a band
            warnings = ()
        self._warnings.setText("\n".join(f"⚠  {one}" for one in warnings))
        taken = self._readings.taken(kept.id) if self._readings is not None else None
        self._taken.setText(f"◎  {taken}" if taken else "")
        for label_ in (self._budget, self._method, self._warnings, self._taken):
            label_.setVisible(bool(label_.text()))
        self._use.setEnabled(kept.value is not None)
        why = "" if kept.value is not None else "The mark says no size yet."
        self._use.setToolTip(tooltip(why or "Its value and its doubt go into the comparison."))

    def go_to_name(self) -> None:
        """Put the cursor into the name."""
        self._name.setFocus()
        self._name.selectAll()

    def _rename(self, text: str) -> Done | None:
        return self._desk.do(rename_mark, self.mark_id, text)

    def _set_height(self, _text: str) -> Done | None:
        unit = self._desk.rules.length_unit
        try:
            height = height_mm(self._height.text(), unit)
            doubt = height_mm(self._height_u.text(), unit)
        except ShopTrouble as trouble:
            self._hint.setText(f"✎ {trouble.sentence()}")
            return None
        self._hint.setText(_HEIGHT_HINT)
        if height and doubt is None:
            doubt = USUAL_HEIGHT_U_MM  # shown at once, so that nobody takes it for exact
        if height is None:
            doubt = None  # not said; a height of nought is typed as 0
        if height is not None and doubt is None:
            doubt = 0.0
        return self._desk.do(set_height, self.mark_id, height, doubt, self._follow)

    @Slot()
    def _fill_menu(self) -> None:
        menu = self._use.menu()
        menu.clear()
        wanted = unit_of(self._kept.mark.type)
        there = self._readings.dimensions(self._side) if self._readings is not None else ()
        for name, label, _unit, kind in there:
            if unit_of(kind) == wanted:
                menu.addAction(label, partial(self._take, name))
        if menu.isEmpty():
            menu.addAction("No dimension of this part is measured so").setEnabled(False)

    @Slot()
    def _fill_heights(self) -> None:
        menu, unit = self._lend.menu(), self._desk.rules.length_unit
        menu.clear()
        for one in self._readings.heights(self._side) if self._readings is not None else ():
            half = math.ceil(100 * max(one.half_width_mm, LEAST_HEIGHT_U_MM)) / 100
            height = round(one.value_mm, 3)
            words = f"{one.label}: {shown_height(height, unit)} ± {shown_height(half, unit)}"
            menu.addAction(words, partial(self._lend_height, height, half))
        if menu.isEmpty():
            menu.addAction("Nothing was read of this part in mm yet").setEnabled(False)

    def _lend_height(self, height: float, half_width: float) -> None:
        self._desk.do(set_height, self.mark_id, height, half_width, self._follow)

    def _take(self, dimension: str) -> None:
        if self._readings is not None:
            self._readings.take(self.mark_id, self._side, dimension)

    @Slot()
    def _ask_snap(self) -> None:
        self.snap_wanted.emit(self.mark_id)

    @Slot()
    def _ask_out(self) -> None:
        self.unwanted.emit(self.mark_id)

"""How high above the card a mark lies: typed, from a reading, as the last mark, or not said."""

from __future__ import annotations

import math
from functools import partial

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QHBoxLayout, QMenu, QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.part_photos.bench_readings import BenchReadings
from desktop_app.part_photos.mark_actions import Follow, set_height
from desktop_app.part_photos.mark_words import height_mm, shown_height, value_words
from desktop_app.part_photos.screen.unit_begun import keep_unit
from desktop_app.part_photos.stored_marks import KeptMark
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import LineField
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.texts import plain_label, tooltip

LEAST_HEIGHT_U_MM = 0.05  # a part on paper lies no better than that; common practice, no source
USUAL_HEIGHT_U_MM = 0.5  # a height read off a steel rule; common practice, no source
_UNSAID = tr(
    "No height is said. Type 0 for what lies on the card itself; what stands higher looks larger."
)
_WAITS = tr("✎ Say the height too: its ± is kept with it.")


class MarkHeight(QWidget):
    """The height of one mark and half the range it lies in, in the shop's unit."""

    refused = Signal()  # nothing came of a deed

    def __init__(
        self,
        desk: Desk,
        kept: KeptMark,
        side: str,
        readings: BenchReadings | None,
    ) -> None:
        super().__init__()
        self._desk, self._kept, self._side, self._readings = desk, kept, side, readings
        self._follow: Follow | None = readings.follow if readings is not None else None
        self._as_last = False
        self._shown_in = desk.rules.length_unit
        self._trouble = ""
        self._height = LineField(tr("Height above the card"), self._save_height)
        self._doubt = LineField(tr("Height plus or minus"), self._save_doubt)
        self._doubt.setToolTip(tooltip(tr("Half the range that the height certainly lies in.")))
        self._unit = plain_label("")
        self._lend = QPushButton(tr("From a reading …"))
        self._lend.setAccessibleName(tr("Take the height from a reading"))
        self._lend.setToolTip(tooltip(tr("Take what was read of this part as the mark's height.")))
        self._lend.setMenu(QMenu(self._lend))
        self._lend.menu().aboutToShow.connect(self._fill_readings)
        self._lend.setVisible(readings is not None)
        self._clear = QPushButton(tr("Clear"))
        self._clear.setAccessibleName(tr("Clear the height: it is not known"))
        self._clear.clicked.connect(self._let_go)
        self._words = plain_label("", wrap=True)
        self._lay_out()

    def _lay_out(self) -> None:
        label = plain_label(tr("Height above the card"))
        label.setBuddy(self._height)
        fields = QHBoxLayout()
        fields.addWidget(self._height, 3)
        fields.addWidget(plain_label("±"))
        fields.addWidget(self._doubt, 2)
        fields.addWidget(self._unit)
        buttons = FlowRow()
        buttons.addWidget(self._lend)
        buttons.addWidget(self._clear)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(3)
        column.addWidget(label)
        column.addLayout(fields)
        column.addWidget(self._words)
        column.addLayout(buttons)

    def show_mark(self, kept: KeptMark, *, as_last: bool) -> None:
        """Show the height as it is kept; `as_last` tells that the last mark's was taken over."""
        self._kept, self._as_last = kept, as_last
        unit = self._desk.rules.length_unit
        if unit != self._shown_in:
            for field in (self._height, self._doubt):
                keep_unit(field, self._shown_in)
            self._shown_in = unit
        short = "in" if unit == "inch" else "mm"
        self._unit.setText(short)
        for field in (self._height, self._doubt):
            field.setAccessibleDescription(
                tr("in inches") if unit == "inch" else tr("in millimetres")
            )
        self._height.show_value(shown_height(self._kept_height(), unit))
        self._doubt.show_value(shown_height(self._kept_doubt(), unit))
        self._clear.setEnabled(kept.height_known)
        why = (
            tr("The size then holds for what lies on the card.") if kept.height_known else _CLEARED
        )
        self._clear.setToolTip(tooltip(why))
        self._say()

    def _say(self) -> None:
        words = self._trouble
        if not words and not self._kept.height_known:
            words = _UNSAID
        elif not words and self._as_last:
            mark, unit = self._kept.mark, self._desk.rules.length_unit
            height = value_words(mark.height_mm, "mm", mark.height_u_mm, unit)
            words = tr(
                "⚠  Height {height}, as the last mark. Clear it if this one lies elsewhere.",
                height=height,
            )
        self._words.setText(words)
        self._words.setVisible(bool(words))

    def _kept_height(self) -> float | None:
        return self._kept.mark.height_mm if self._kept.height_known else None

    def _kept_doubt(self) -> float | None:
        return self._kept.mark.height_u_mm if self._kept.height_known else None

    def _typed(self, field: LineField, kept: float | None) -> float | None:
        """Return what a field says in mm; one that nobody touched says what is kept, unrounded."""
        return height_mm(field.text(), self._desk.rules.length_unit) if field.unsaved() else kept

    def _save_height(self, _text: str) -> Done | None:
        try:
            height = self._typed(self._height, self._kept_height())
            doubt = self._typed(self._doubt, self._kept_doubt())
        except ShopTrouble as trouble:
            self._refuse(f"✎ {trouble.sentence()}")
            return None
        return self._set(height, doubt)

    def _save_doubt(self, text: str) -> Done | str | None:
        try:
            height = self._typed(self._height, self._kept_height())
            doubt = self._typed(self._doubt, self._kept_doubt())
        except ShopTrouble as trouble:
            self._refuse(f"✎ {trouble.sentence()}")
            return None
        if height is None:
            if not text.strip():
                return ""
            self._refuse(_WAITS)
            return None
        if doubt is None:
            self._doubt.forget()  # the usual one is shown instead
        return self._set(height, doubt)

    def _refuse(self, words: str) -> None:
        self._trouble = words
        self._say()

    def _set(self, height: float | None, doubt: float | None) -> Done | None:
        """Keep a height; one of which nobody said how well it is known gets the usual doubt."""
        self._trouble = ""
        if height is None:
            doubt = None  # not said; a height of nought is typed as 0
        elif doubt is None:
            doubt = USUAL_HEIGHT_U_MM if height else 0.0
        done = self._desk.do(set_height, self._kept.id, height, doubt, self._follow)
        if done is None or done.seq is None:
            self.refused.emit()
        self._say()
        return done

    @Slot()
    def _let_go(self) -> None:
        for field in (self._height, self._doubt):
            field.forget()
        self._set(None, None)

    @Slot()
    def _fill_readings(self) -> None:
        menu, unit = self._lend.menu(), self._desk.rules.length_unit
        menu.clear()
        for one in self._readings.heights(self._side) if self._readings is not None else ():
            half = math.ceil(100 * max(one.half_width_mm, LEAST_HEIGHT_U_MM)) / 100
            height = round(one.value_mm, 3)
            words = f"{one.label}: {value_words(height, 'mm', half, unit)}"
            menu.addAction(words, partial(self._lend_height, height, half))
        if menu.isEmpty():
            menu.addAction(
                tr("No height, thickness or length of this part is read yet")
            ).setEnabled(False)

    def _lend_height(self, height: float, half_width: float) -> None:
        for field in (self._height, self._doubt):
            field.forget()
        self._set(height, half_width)


_CLEARED = tr("No height is said.")

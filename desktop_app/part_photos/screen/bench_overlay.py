"""One photo laid on the other: wiped, blended, in turn, or with what differs drawn."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import get_args

from PySide6.QtCore import Qt, QTimer, Signal, Slot
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QSlider, QStyle, QVBoxLayout, QWidget

from desktop_app.figures_shown import shown
from desktop_app.language import tr
from desktop_app.part_photos.mark_words import height_mm
from desktop_app.part_photos.marks.mark import Pixel
from desktop_app.part_photos.overlay.not_compared import dotted_places
from desktop_app.part_photos.overlay.said_in_unit import said_in_unit
from desktop_app.part_photos.screen.bench_laying import Compared, Laying
from desktop_app.part_photos.screen.bench_overlay_legend import OverlayLegend, OverlayMode
from desktop_app.part_photos.screen.bench_overlay_stage import MOST_SAID, OverlayStage
from desktop_app.part_photos.screen.bench_photo import BenchPhoto
from desktop_app.part_photos.screen.low_words import LowWords
from desktop_app.part_photos.screen.photo_stage import PhotoStage
from desktop_app.part_photos.screen.unit_begun import keep_unit
from desktop_app.part_photos.typed_length import MM_PER_INCH
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import LineField, Tick
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.kept_choice import put_back
from desktop_app.shop_window.texts import plain_label, tooltip

TURN_MS = 333  # one and a half times to and fro a second: slower than three flashes (WCAG 2.3.1)
_SIDE_BY_SIDE = tr("Side by side")
_MODES: dict[str, OverlayMode] = {
    tr("Wipe"): "wipe",
    tr("Blend"): "blend",
    tr("Alternate"): "alternate",
    tr("Differences"): "differences",
}
_SLIDES = {
    "wipe": tr("Where the line of the wipe lies"),
    "blend": tr("How much of the new photo is seen"),
}
assert set(_MODES.values()) == set(get_args(OverlayMode))


class OverlayPanel(QWidget):
    """`modes` is its row of buttons, which stands elsewhere; it is shown when one is pressed."""

    shown = Signal(bool)  # this panel, not the two photos side by side
    points_wanted = Signal()  # two common points in each photo

    def __init__(
        self,
        desk: Desk,
        photos: Mapping[str, BenchPhoto],
        stages: Mapping[str, PhotoStage],
        usual_height: Callable[[], float | None],
    ) -> None:
        super().__init__()
        self._usual_height = usual_height
        self._desk, self._photos, self._stages = desk, photos, stages
        self._mode: OverlayMode | None = None
        self._unit = desk.rules.length_unit
        self._shown_mm: float | None = None  # what the height's field shows, unrounded
        self._height_refused = ""
        self._laying = Laying(desk, photos, self)
        self.stage = OverlayStage(desk)
        self.stage.share_moved.connect(self._slide_to)
        self.stage.turned.connect(self._turn)
        self._legend = OverlayLegend()
        self._turning = QTimer(self)
        self._turning.setInterval(TURN_MS)
        self._turning.timeout.connect(self._turn)
        self._make_controls()
        self._make_height()
        self._lay_out()
        self._laying.changed.connect(self._show_laid)
        desk.changed.connect(self._hear)
        for stage in stages.values():
            stage.shown.connect(self._show_laid)

    def read(self) -> None:
        """Read how the photos lie on each other, as it is kept."""
        self._laying.read()

    def common_points(self, old: tuple[Pixel, ...], new: tuple[Pixel, ...]) -> None:
        """Lay the photos on each other by points that were clicked in both."""
        self._show_mode("wipe")
        self._laying.lay(self._height_now(), tuple(zip(old, new, strict=True)))

    def _make_controls(self) -> None:
        self.modes = QWidget()
        self.modes.setObjectName("tight")  # where words are large
        row = FlowRow(self.modes)
        self._buttons: dict[str, QPushButton] = {}
        for words in (_SIDE_BY_SIDE, *_MODES):
            button = QPushButton(words)
            button.setCheckable(True)
            button.setChecked(words == _SIDE_BY_SIDE)
            button.setProperty("mode", _MODES.get(words, ""))
            button.clicked.connect(self._pressed)
            if words != _SIDE_BY_SIDE and len(self._photos) < 2:
                button.setEnabled(False)
                button.setToolTip(tooltip(tr("This needs a photo of both parts.")))
            self._buttons[words] = button
            row.addWidget(button)
        self._slider = QSlider(Qt.Orientation.Horizontal)
        self._slider.setRange(0, 1000)
        self._slider.setValue(500)
        self._slider.valueChanged.connect(self._slid)
        self._stop = QPushButton(tr("Stop"))
        self._stop.clicked.connect(self._stop_or_go)
        self._other = QPushButton(tr("The other photo"))
        self._other.setToolTip(tooltip(tr("Space does the same.")))
        self._other.clicked.connect(self._turn)
        self._points = QPushButton(tr("Click two common points"))
        self._points.setToolTip(
            tooltip(tr("Two points that both photos show, far from each other."))
        )
        self._points.clicked.connect(self.points_wanted)
        self._again = QPushButton(tr("Lay them on each other again"))
        self._again.setToolTip(
            tooltip(tr("By card and outline, without points that were clicked."))
        )
        self._again.clicked.connect(self._lay_again)
        self._apart = QPushButton(tr("Take them apart"))
        self._apart.clicked.connect(self._take_apart)
        self._sheet = Tick(tr("Show on the sheet"))
        self._sheet.clicked.connect(self._to_sheet)
        self._words = plain_label("", wrap=True)
        self._found = plain_label("", wrap=True)

    def _make_height(self) -> None:
        self._height = LineField(tr("Height of the outline above the card"), self._set_height)
        wide = self._height.fontMetrics().horizontalAdvance("0000.00000 mm")
        self._height.setFixedWidth(wide + 24)
        self._height_unit = plain_label("")
        self._height_box = QWidget()
        beside = QHBoxLayout(self._height_box)
        beside.setContentsMargins(0, 0, 6, 0)
        beside.addWidget(plain_label(tr("Outline above the card")))
        beside.addWidget(self._height)
        beside.addWidget(self._height_unit)
        self._say_unit()

    def _lay_out(self) -> None:
        turns = QHBoxLayout()
        for widget in (self._slider, self._stop, self._other):
            turns.addWidget(widget)
        row = FlowRow()
        for control in (self._height_box, self._points, self._again, self._apart, self._sheet):
            row.addWidget(control)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._legend)
        column.addWidget(self.stage, 1)
        column.addLayout(turns)
        self._said = LowWords(self._words, self._found)
        column.addWidget(self._said)
        column.addLayout(row)

    # --- how it is shown ---

    @Slot()
    def _pressed(self) -> None:
        mode = self.sender().property("mode") or None
        self._show_mode(mode)
        if mode is not None and self._laying.kept is None and self._laying.compared is None:
            self._laying.lay(self._height_now(), ())

    def _show_mode(self, mode: OverlayMode | None) -> None:
        self._mode = mode
        if mode is not None and "removed" in self._photos:
            self.stage.show_photo(self._photos["removed"].photo)
        for words, button in self._buttons.items():
            button.setChecked(_MODES.get(words) == mode)
        self.shown.emit(mode is not None)
        if mode == "alternate" and self._may_move():
            self._turning.start()
        else:
            self._turning.stop()
        if mode is not None:
            self.stage.show_as(mode, self._slider.value() / 1000, new_on_top=True)
        if mode is not None and self._laying.kept is None and not self._height.unsaved():
            self._show_height(self._usual_height())
        self._show_laid()

    @Slot()
    def _show_laid(self) -> None:
        """Show what is kept: the new photo over the old one, and where they differ."""
        kept, found = self._laying.kept, self._laying.compared
        copies = self._stages["replacement"].copies()
        new = self._photos.get("replacement")
        if kept is None or new is None:
            self.stage.take_off()
        elif copies:
            self.stage.lay_over(copies, (new.photo.width, new.photo.height), kept.transform)
            self._show_height(kept.height_mm)
        self.stage.show_clicked([old for old, _ in kept.clicks] if kept is not None else [])
        self._show_outlines(found)
        self._say_words()
        self._found.setText(self._said_found())
        if self._mode is not None:
            self._laying.look()
        if found is not None and kept is not None:
            self.stage.look_at_part()
        self._show_now()

    def _show_outlines(self, found: Compared | None) -> None:
        outlines = found.alignment.outlines if found is not None else None
        if found is None or outlines is None:
            self.stage.show_differences((), None)
            return
        drawn = (outlines.old_px.tolist(), outlines.new_px.tolist())
        old, new = dotted_places(outlines)
        dotted = (old.tolist(), new.tolist())
        self.stage.show_differences(found.differences, drawn, self._unit, dotted)

    def _say_words(self) -> None:
        """Say why a height is not taken as long as it stands there, else how the photos lie."""
        refused = self._height_refused if self._height.unsaved() else ""
        self._words.setText(refused or said_in_unit(self._laying.words, self._unit))

    def _show_height(self, height: float | None) -> None:
        if not self._height.unsaved():
            self._shown_mm = height
        self._height.show_value(_short(height, self._unit))

    def _said_found(self) -> str:
        compared = self._laying.compared
        if compared is None:
            return ""
        if compared.alignment.outlines is None:
            return _NO_OUTLINES
        found = compared.differences
        words = [one.words(self._unit) for one in found[:MOST_SAID]]
        more = len(found) - len(words)
        words += [tr("And {more} smaller ones.", more=more)] if more else []
        left_out = [one.words(self._unit) for one in compared.not_compared]
        return "\n".join([*(words or [_NO_DIFFERENCE]), *left_out])

    def _show_now(self) -> None:
        mode, laid = self._mode, self.stage.is_laid()
        self._slider.setVisible(mode in _SLIDES)
        self._slider.setAccessibleName(_SLIDES.get(mode or "", ""))
        self._stop.setVisible(mode == "alternate")
        self._stop.setText(tr("Stop") if self._turning.isActive() else tr("Go on"))
        self._other.setVisible(mode == "alternate")
        self._found.setVisible(mode == "differences" and laid and bool(self._found.text()))
        self._said.fit()
        self._height_box.setVisible(self._on_cards())
        kept = self._laying.kept
        self._sheet.setEnabled(kept is not None)
        self._sheet.setChecked(kept is not None and kept.on_sheet)
        why = "" if kept is not None else tr("The photos don't lie on each other yet.")
        self._sheet.setToolTip(tooltip(why or tr("The comparison sheet then shows what differs.")))
        self._apart.setEnabled(kept is not None or self._laying.broken)
        self._apart.setToolTip(tooltip(_APART if self._apart.isEnabled() else why))
        self._say_legend()

    def _say_legend(self) -> None:
        laid = self.stage.is_laid()
        self._legend.setVisible(laid)
        if self._mode is not None and laid:
            seen = self.stage.new_is_seen()
            found = self._laying.compared
            outlines = found.alignment.outlines if found is not None else None
            dotted = outlines is not None and any(one.any() for one in dotted_places(outlines))
            self._legend.show_mode(
                self._mode,
                self._slider.value() / 1000,
                new_is_seen=seen,
                outlined=outlines is not None,
                dotted=dotted,
            )

    def _on_cards(self) -> bool:
        """Tell whether cards give both photos their scale, so that a height is of use."""
        planes = [photo.plane for photo in self._photos.values()]
        return len(planes) == 2 and all(one is not None and one.source == "card" for one in planes)

    def _may_move(self) -> bool:
        """Tell whether the system lets pictures move by themselves."""
        return self.style().styleHint(QStyle.StyleHint.SH_Widget_Animation_Duration) > 0

    @Slot(int)
    def _slid(self, value: int) -> None:
        if self._mode is not None:
            self.stage.show_as(self._mode, value / 1000)
            self._say_legend()

    @Slot(float)
    def _slide_to(self, share: float) -> None:
        self._slider.blockSignals(True)
        self._slider.setValue(round(1000 * share))
        self._slider.blockSignals(False)
        self._say_legend()

    @Slot()
    def _turn(self) -> None:
        if self._mode == "alternate":
            now = not self.stage.new_is_seen()
            self.stage.show_as("alternate", self._slider.value() / 1000, new_on_top=now)
            self._say_legend()

    @Slot()
    def _stop_or_go(self) -> None:
        (self._turning.stop if self._turning.isActive() else self._turning.start)()
        self._stop.setText(tr("Stop") if self._turning.isActive() else tr("Go on"))

    # --- laying them on each other ---

    @Slot()
    def _lay_again(self) -> None:
        self._laying.lay(self._height_now(), ())

    def _height_now(self) -> float | None:
        """Return the height that is said in mm, None where nothing is."""
        if not self._on_cards():
            return None
        if not self._height.unsaved():
            return self._shown_mm
        try:
            return _outline_mm(self._height.text(), self._unit)
        except ShopTrouble:
            return self._laying.kept.height_mm if self._laying.kept is not None else None

    def _set_height(self, text: str) -> str | None:
        try:
            height = _outline_mm(text, self._unit)
        except ShopTrouble as trouble:
            self._height_refused = f"✎ {trouble.sentence()}"
            self._say_words()
            self._said.fit()
            return None
        self._shown_mm, self._height_refused = height, ""
        kept = self._laying.kept
        self._laying.lay(height, kept.clicks if kept is not None else ())
        return text

    def _say_unit(self) -> None:
        name = tr("inches") if self._unit == "inch" else "mm"
        self._height_unit.setText("in" if self._unit == "inch" else "mm")
        self._height.setToolTip(
            tooltip(tr("How high the part's outline lies over the card, {name}.", name=name))
        )

    @Slot(object)
    def _hear(self, done: Done) -> None:
        if "setting" not in done.touched or self._desk.rules.length_unit == self._unit:
            return
        keep_unit(self._height, self._unit)
        self._unit = self._desk.rules.length_unit
        self._say_unit()
        self._show_height(self._shown_mm)
        self._show_laid()

    @Slot()
    def _to_sheet(self) -> None:
        shown = self._sheet.isChecked()
        if not self._laying.show_on_sheet(shown):
            put_back(self._sheet, not shown)

    @Slot()
    def _take_apart(self) -> None:
        self._laying.take_apart()


def _outline_mm(text: str, unit: str) -> float | None:
    """Return a typed height in mm, None where nothing is typed; refuses nought."""
    height = height_mm(text, unit)
    if height == 0:
        raise ShopTrouble(
            tr(
                "The outline that both photos show is the part's upper edge, and no part is 0 high."
            ),
            do=tr("Type its height above the card, 0.1 mm for a thin sheet, or leave it empty."),
        )
    return height


def _short(height: float | None, unit: str) -> str:
    """Return a height as its field shows it: three places of a mm, five of an inch."""
    per_unit, places = (MM_PER_INCH, 5) if unit == "inch" else (1.0, 3)
    if height is None:
        return ""
    return shown(f"{height / per_unit:.{places}f}".rstrip("0").rstrip("."))


_APART = tr("The photos lie on each other no more, nor on the sheet. Undo brings it back.")
_NO_DIFFERENCE = tr("No difference that was compared is larger than its uncertainty.")
_NO_OUTLINES = tr("No outlines were found to compare: look at the wipe or the blend.")

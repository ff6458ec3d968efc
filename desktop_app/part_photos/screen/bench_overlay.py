"""One photo laid on the other: wiped, blended, in turn, or with what differs drawn."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import get_args

from PySide6.QtCore import Qt, QTimer, Signal, Slot
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QSlider, QStyle, QVBoxLayout, QWidget
from shiboken6 import isValid

from desktop_app.part_photos.mark_words import height_mm, shown_height
from desktop_app.part_photos.marks.mark import Pixel
from desktop_app.part_photos.overlay.align import align
from desktop_app.part_photos.overlay.alignment import Alignment
from desktop_app.part_photos.overlay.difference import Difference, differences
from desktop_app.part_photos.overlay_actions import keep_overlay, show_on_sheet
from desktop_app.part_photos.screen.bench_overlay_stage import MOST_SAID, OverlayMode, OverlayStage
from desktop_app.part_photos.screen.bench_photo import BenchPhoto
from desktop_app.part_photos.screen.photo_stage import PhotoStage
from desktop_app.part_photos.stored_marks import KeptOverlay, overlay_of
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import LineField, Tick
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.texts import plain_label, tooltip

TURN_MS = 333  # one and a half times to and fro a second: slower than three flashes (WCAG 2.3.1)
_SIDE_BY_SIDE = "Side by side"
_MODES: dict[str, OverlayMode] = {
    "Wipe": "wipe",
    "Blend": "blend",
    "Alternate": "alternate",
    "Differences": "differences",
}
_SLIDES = {"wipe": "Where the line of the wipe lies", "blend": "How much of the new photo is seen"}
assert set(_MODES.values()) == set(get_args(OverlayMode))


# Asked with this height and these clicks; what came of it; where the parts differ.
_Clicks = tuple[tuple[Pixel, Pixel], ...]
_Result = tuple[float | None, _Clicks, Alignment | ShopTrouble, tuple[Difference, ...]]


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
        self._kept: KeptOverlay | None = None
        self._alignment: Alignment | None = None
        self._mode: OverlayMode | None = None
        self._busy = False
        self._clicks: _Clicks = ()
        self.stage = OverlayStage(desk)
        self.stage.share_moved.connect(self._slide_to)
        self.stage.turned.connect(self._turn)
        self._turning = QTimer(self)
        self._turning.setInterval(TURN_MS)
        self._turning.timeout.connect(self._turn)
        self._make_controls()
        self._lay_out()
        for photo in photos.values():
            photo.news.connect(self._maybe_align)
        for stage in stages.values():
            stage.shown.connect(self._lay_over)

    def read(self) -> None:
        """Read how the photos lie on each other, as it is kept."""
        if len(self._photos) == 2:
            old, new = (self._photos[side].photo for side in ("removed", "replacement"))
            self._kept = self._desk.ask(overlay_of, old.id, new.id)
            self._clicks = self._kept.clicks if self._kept is not None else ()
        self._lay_over()

    def common_points(self, old: tuple[Pixel, ...], new: tuple[Pixel, ...]) -> None:
        """Lay the photos on each other by points that were clicked in both."""
        self._clicks = tuple(zip(old, new, strict=True))
        self._alignment = None
        self._show_mode("wipe")
        self._align()

    def _make_controls(self) -> None:
        self.modes = QWidget()
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
                button.setToolTip(tooltip("This needs a photo of both parts."))
            self._buttons[words] = button
            row.addWidget(button)
        unit = "in" if self._desk.rules.length_unit == "inch" else "mm"
        self._height = LineField("Height of the outline above the card", self._set_height)
        self._height.setFixedWidth(90)
        self._height_box = QWidget()
        beside = QHBoxLayout(self._height_box)
        beside.setContentsMargins(6, 0, 0, 0)
        beside.addWidget(plain_label(f"Height of the outline above the card, {unit}"))
        beside.addWidget(self._height)
        row.addWidget(self._height_box)
        self._slider = QSlider(Qt.Orientation.Horizontal)
        self._slider.setRange(0, 1000)
        self._slider.setValue(500)
        self._slider.valueChanged.connect(self._slid)
        self._stop = QPushButton("Stop")
        self._stop.clicked.connect(self._stop_or_go)
        self._other = QPushButton("The other photo")
        self._other.setToolTip(tooltip("Space does the same."))
        self._other.clicked.connect(self._turn)
        self._points = QPushButton("Click two common points")
        self._points.setToolTip(tooltip("Two points that both photos show, far from each other."))
        self._points.clicked.connect(self.points_wanted)
        self._again = QPushButton("Lay them on each other again")
        self._again.clicked.connect(self._align_again)
        self._sheet = Tick("Show on the sheet")
        self._sheet.clicked.connect(self._to_sheet)
        self._words = plain_label("", wrap=True)
        self._flat = plain_label(_FLAT, wrap=True)
        self._found = plain_label("", wrap=True)

    def _lay_out(self) -> None:
        turns = QHBoxLayout()
        for widget in (self._slider, self._stop, self._other):
            turns.addWidget(widget)
        row = FlowRow()
        for button in (self._points, self._again, self._sheet):
            row.addWidget(button)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.stage, 1)
        column.addLayout(turns)
        column.addWidget(self._words)
        column.addWidget(self._flat)
        column.addWidget(self._found)
        column.addLayout(row)

    # --- how it is shown ---

    @Slot()
    def _pressed(self) -> None:
        mode = self.sender().property("mode")
        self._show_mode(mode or None)
        self._maybe_align()

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
        if mode is not None and self._kept is None and not self._height.unsaved():
            suggested = shown_height(self._usual_height(), self._desk.rules.length_unit)
            self._height.show_value(suggested)
        if mode == "differences":
            self.stage.look_at_part()
        self._show_now()

    def _show_now(self) -> None:
        mode = self._mode
        laid = self.stage.is_laid()
        self._slider.setVisible(mode in _SLIDES)
        self._slider.setAccessibleName(_SLIDES.get(mode or "", ""))
        self._stop.setVisible(mode == "alternate")
        self._stop.setText("Stop" if self._turning.isActive() else "Go on")
        self._other.setVisible(mode == "alternate")
        self._found.setVisible(mode == "differences" and laid)
        self._height_box.setVisible(mode is not None and self._on_cards())
        self._flat.setVisible(laid and self._on_cards() and not self._height_now())
        self._sheet.setEnabled(self._kept is not None)
        self._sheet.setChecked(self._kept is not None and self._kept.on_sheet)
        why = "" if self._kept is not None else "The photos don't lie on each other yet."
        self._sheet.setToolTip(tooltip(why or "The comparison sheet then shows what differs."))
        if mode is not None:
            self.stage.show_as(mode, self._slider.value() / 1000, new_on_top=True)

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

    @Slot(float)
    def _slide_to(self, share: float) -> None:
        self._slider.blockSignals(True)
        self._slider.setValue(round(1000 * share))
        self._slider.blockSignals(False)

    @Slot()
    def _turn(self) -> None:
        if self._mode == "alternate":
            now = not self.stage.new_is_seen()
            self.stage.show_as("alternate", self._slider.value() / 1000, new_on_top=now)
            self._other.setAccessibleDescription("the new part" if now else "the old part")

    @Slot()
    def _stop_or_go(self) -> None:
        (self._turning.stop if self._turning.isActive() else self._turning.start)()
        self._stop.setText("Stop" if self._turning.isActive() else "Go on")

    # --- laying them on each other ---

    @Slot()
    def _maybe_align(self) -> None:
        """Align once it is wanted and both photos are decoded."""
        wanted = self._mode is not None and not self._busy and self._alignment is None
        if wanted and (self._kept is None or self._mode == "differences"):
            self._align()

    @Slot()
    def _align_again(self) -> None:
        self._clicks = ()
        self._alignment = None
        self._align()

    def _align(self) -> None:
        if self._busy or len(self._photos) < 2:
            return
        old, new = self._photos["removed"], self._photos["replacement"]
        if old.pixels is None or new.pixels is None or old.looking or new.looking:
            self._words.setText("One moment: the photos are being opened.")
            return
        height, clicks = self._height_now(), self._clicks
        there = (old.pixels, new.pixels, old.plane, new.plane, height or 0.0, clicks or None)
        cards = (old.card, new.card)

        def work() -> _Result:
            try:
                found = align(*there, *cards)
            except ShopTrouble as trouble:
                return height, clicks, trouble, ()
            return height, clicks, found, differences(found)

        self._busy = True
        self._words.setText("Laying the new photo on the old one …")
        self._desk.errands.run("Laying one photo on the other", work, self._aligned)

    def _aligned(self, result: _Result) -> None:
        if not isValid(self):
            return
        self._busy = False
        height, clicks, laid, found = result
        if (height, clicks) != (self._height_now(), self._clicks):
            self._align()  # asked otherwise meanwhile
            return
        if isinstance(laid, ShopTrouble):
            self._words.setText(f"◌  {laid.sentence()}")
            return
        self._alignment = laid
        if not laid.aligned:
            self.stage.take_off()
            self._words.setText(f"◌  These can't be aligned. {laid.why}")
            self._show_now()
            return
        outlines = laid.outlines
        drawn = None if outlines is None else (outlines.old_px.tolist(), outlines.new_px.tolist())
        self.stage.show_differences(found, drawn)
        if self._mode == "differences":
            self.stage.look_at_part()
        none = "No difference is larger than its uncertainty." if drawn else _NO_OUTLINES
        words = [one.words() for one in found[:MOST_SAID]]
        more = len(found) - len(words)
        words += [f"And {more} smaller ones."] if more else []
        self._found.setText("\n".join(words) or none)
        ids = [self._photos[side].photo.id for side in ("removed", "replacement")]
        self._desk.do(keep_overlay, *ids, laid, height, clicks)
        self.read()

    @Slot()
    def _lay_over(self) -> None:
        kept, copies = self._kept, self._stages["replacement"].copies()
        new = self._photos.get("replacement")
        if kept is None or new is None:
            self.stage.take_off()
        elif copies:
            size = (new.photo.width, new.photo.height)
            self.stage.lay_over(copies, size, kept.transform)
            near = f" They lie within {kept.residual_mm:.2f} mm." if kept.residual_mm else ""
            self._words.setText(f"{kept.why}{near}")
            self._height.show_value(shown_height(kept.height_mm, self._desk.rules.length_unit))
        self._show_now()

    def _height_now(self) -> float | None:
        """Return the height that is said in mm, None where nothing is."""
        try:
            return height_mm(self._height.text(), self._desk.rules.length_unit)
        except ShopTrouble:
            return self._kept.height_mm if self._kept is not None else None

    def _set_height(self, text: str) -> str | None:
        try:
            height_mm(text, self._desk.rules.length_unit)
        except ShopTrouble as trouble:
            self._words.setText(f"✎ {trouble.sentence()}")
            return None
        self._alignment = None
        self._align()
        return text

    @Slot()
    def _to_sheet(self) -> None:
        if self._kept is not None:
            old, new = self._kept.old_photo_id, self._kept.new_photo_id
            self._desk.do(show_on_sheet, old, new, self._sheet.isChecked())


_FLAT = (
    "⚠  The outlines are compared at the height of the card itself. On a thick part that shows "
    "differences that aren't there: say above how high its outline lies over the card."
)
_NO_OUTLINES = "No outlines were found to compare: look at the wipe or the blend."

"""Beneath a photo: what gives it millimetres, the card or two points of a known length."""

from __future__ import annotations

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from desktop_app.part_photos.camera.two_points import TwoPointScale
from desktop_app.part_photos.mark_actions import Follow, keep_two_points
from desktop_app.part_photos.mark_words import height_mm
from desktop_app.part_photos.marks.mark import Pixel
from desktop_app.part_photos.screen.bench_photo import BenchPhoto
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import Labelled, LineField
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.texts import plain_label, tooltip

_WARNING = (
    "Two points hold only in their own plane, and only with the camera straight above: a card is "
    "better. Take a length that was measured, as long as the part."
)


class ScaleLine(QWidget):
    """Says how it stands with the scale; its buttons look for the card or ask for two points."""

    points_wanted = Signal(bool)

    def __init__(self, desk: Desk, sign: str, said: str, follow: Follow | None) -> None:
        super().__init__()
        self._desk, self._sign, self._follow = desk, sign, follow
        self._photo: BenchPhoto | None = None
        self._points: tuple[Pixel, Pixel] | None = None
        self._words = plain_label("", wrap=True)
        self._points_button = QPushButton("Two points")
        self._points_button.setCheckable(True)
        self._points_button.setAccessibleName(f"Two points of known length, {said}")
        self._points_button.setToolTip(tooltip(_WARNING))
        self._points_button.clicked.connect(self._ask_points)
        self._again = QPushButton("Find the card")
        self._again.setAccessibleName(f"Look for the card, {said}")
        self._again.clicked.connect(self._look)
        row = FlowRow()
        row.addWidget(self._points_button)
        row.addWidget(self._again)
        self._length = LineField(f"Known length, {said}", self._save)
        self._length_u = LineField(f"Known length plus or minus, {said}", self._save)
        self._length_u.setPlaceholderText("0.05 mm")
        self._hint = plain_label("", "quiet", wrap=True)
        self._typing = QWidget()
        self._typing.hide()
        fields = QHBoxLayout()
        fields.addWidget(Labelled("The length between them", self._length))
        fields.addWidget(Labelled("±", self._length_u))
        typed = QVBoxLayout(self._typing)
        typed.setContentsMargins(0, 0, 0, 0)
        typed.addLayout(fields)
        typed.addWidget(self._hint)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._words)
        column.addLayout(row)
        column.addWidget(self._typing)

    def show_photo(self, photo: BenchPhoto | None) -> None:
        """Show how it stands with this photo."""
        self._photo = photo
        self.setVisible(photo is not None)
        if photo is not None:
            photo.news.connect(self._show)
            self._show()

    def wait_for_points(self) -> None:
        """Show that two points are asked for."""
        self._points_button.setChecked(True)

    def points_given(self, points: tuple[Pixel, Pixel]) -> None:
        """Take the two points that were clicked, and ask how far apart they are."""
        self._points = points
        self._points_button.setChecked(False)
        self._typing.show()
        self._length.forget()
        self._hint.setText(_WARNING)
        self._length.setFocus()

    def put_down(self) -> None:
        """Ask for no points any more."""
        self._points_button.setChecked(False)

    @Slot()
    def _show(self) -> None:
        if self._photo is None:
            return
        if self._points is None and not self._photo.known_points()[0]:
            self._typing.hide()  # a card gives the scale now, or nothing does
        self._words.setText(f"{self._sign}  {self._photo.words()}")
        self._words.setToolTip(tooltip(self._photo.more_words()))
        self._again.setEnabled(not self._photo.looking)
        why = "It is being looked for." if self._photo.looking else "Look again for a bench card."
        self._again.setToolTip(tooltip(why))

    @Slot()
    def _ask_points(self) -> None:
        self.points_wanted.emit(self._points_button.isChecked())

    @Slot()
    def _look(self) -> None:
        if self._photo is not None:
            self._photo.look_for_card()

    def _save(self, _text: str) -> Done | str | None:
        """Keep the scale once both points and their length are there."""
        points = self._points or (self._photo.known_points()[0] if self._photo else ())
        if self._photo is None or len(points) != 2:
            return None
        unit = self._desk.rules.length_unit
        try:
            length = height_mm(self._length.text(), unit)
            doubt = height_mm(self._length_u.text(), unit)
            if length is None:
                return ""  # the ± was typed first; it waits for its length
            doubt = 0.05 if doubt is None else doubt
            TwoPointScale((points[0], points[1]), length, doubt)
        except ShopTrouble as trouble:
            self._hint.setText(f"✎ {trouble.sentence()}")
            return None
        self._points = None
        self._hint.setText("")
        there = (self._photo.photo.id, (points[0], points[1]), length, doubt, self._follow)
        return self._desk.do(keep_two_points, *there)

"""Beneath a photo: what gives it millimetres, the card or two points of a known length."""

from __future__ import annotations

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from desktop_app.figures_shown import figure
from desktop_app.language import tr
from desktop_app.part_photos.camera.two_points import TwoPointScale
from desktop_app.part_photos.mark_actions import Follow, forget_scale, keep_two_points
from desktop_app.part_photos.mark_words import height_mm, shown_height
from desktop_app.part_photos.marks.mark import Pixel
from desktop_app.part_photos.print_actions import say_print
from desktop_app.part_photos.screen.bench_photo import BenchPhoto
from desktop_app.part_photos.screen.unit_begun import keep_unit
from desktop_app.part_photos.stored_cards import AnyCard
from desktop_app.part_photos.typed_length import MM_PER_INCH
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import Labelled, LineField
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.kept_choice import KeptChoiceField
from desktop_app.shop_window.texts import plain_label, tooltip

_WARNING = tr(
    "Two points hold only in their own plane, and only with the camera straight above: "
    "a card is better. Take a length that was measured, as long as the part."
)
_OUT = tr("The marks say no size then. Readings that were taken from them stay as they were read.")
_USUAL_U_MM = 0.05  # a length measured with a calliper; common practice, no source


class ScaleLine(QWidget):
    """Says how it stands with the scale; its buttons look for the card or ask for two points."""

    points_wanted = Signal(bool)

    def __init__(self, desk: Desk, sign: str, said: str, follow: Follow | None) -> None:
        super().__init__()
        self._desk, self._sign, self._follow = desk, sign, follow
        self._photo: BenchPhoto | None = None
        self._points: tuple[Pixel, Pixel] | None = None
        self._shown_in = desk.rules.length_unit
        self._words = plain_label("", wrap=True)
        self._points_button = QPushButton(tr("Two points"))
        self._points_button.setCheckable(True)
        self._points_button.setAccessibleName(tr("Two points of known length, {said}", said=said))
        self._points_button.setToolTip(tooltip(_WARNING))
        self._points_button.clicked.connect(self._ask_points)
        self._again = QPushButton(tr("Find the card"))
        self._again.setAccessibleName(tr("Look for the card, {said}", said=said))
        self._again.clicked.connect(self._look)
        self._out = QPushButton(tr("Take the scale out"))
        self._out.setAccessibleName(tr("Take the scale out, {said}", said=said))
        self._out.clicked.connect(self._take_out)
        row = FlowRow()
        for button in (self._points_button, self._again, self._out):
            row.addWidget(button)
        self._print = KeptChoiceField(
            desk, tr("Printed card, {said}", said=said), [], self._say_print
        )
        # Its longest line must not set the panel's width; the list that opens shows it whole.
        self._print.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self._print.setMinimumContentsLength(8)
        self._offered: list[tuple[int | None, str]] = []
        self._which = Labelled(tr("Which printed card is it?"), self._print)
        self._which.hide()
        self._length = LineField(tr("Known length, {said}", said=said), self._save)
        self._length_u = LineField(tr("Known length plus or minus, {said}", said=said), self._save)
        self._unit = plain_label("")
        self._hint = plain_label("", "quiet", wrap=True)
        self._typing = QWidget()
        self._typing.hide()
        between = plain_label(tr("The length between them"))
        between.setBuddy(self._length)
        fields = QHBoxLayout()
        fields.addWidget(self._length, 3)
        fields.addWidget(plain_label("±"))
        fields.addWidget(self._length_u, 2)
        fields.addWidget(self._unit)
        typed = QVBoxLayout(self._typing)
        typed.setContentsMargins(0, 0, 0, 0)
        typed.addWidget(between)
        typed.addLayout(fields)
        typed.addWidget(self._hint)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._words)
        column.addWidget(self._which)
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
        self._length_u.forget()
        self._hint.setText(_WARNING)
        self._length.setFocus()

    def put_down(self) -> None:
        """Ask for no points any more."""
        self._points_button.setChecked(False)

    @Slot()
    def _show(self) -> None:
        if self._photo is None:
            return
        self._say_unit()
        if self._points is None:
            self._show_length()
        self._show_prints()
        self._words.setText(f"{self._sign}  {self._photo.words()}")
        self._words.setToolTip(tooltip(self._photo.more_words()))
        self._again.setEnabled(not self._photo.looking)
        why = (
            tr("It is being looked for.")
            if self._photo.looking
            else tr("Look again for a bench card.")
        )
        self._again.setToolTip(tooltip(why))
        there = self._photo.has_scale()
        self._out.setEnabled(there)
        why = _OUT if there else tr("The photo has no scale.")
        self._out.setToolTip(tooltip(why))

    def _say_unit(self) -> None:
        """Name the shop's unit, in which a bare number is read."""
        unit = self._desk.rules.length_unit
        if unit != self._shown_in:
            for field in (self._length, self._length_u):
                keep_unit(field, self._shown_in)
            self._shown_in = unit
        self._unit.setText("in" if unit == "inch" else "mm")
        for field in (self._length, self._length_u):
            field.setAccessibleDescription(
                tr("in inches") if unit == "inch" else tr("in millimetres")
            )
        self._length_u.setPlaceholderText(
            figure(_USUAL_U_MM / MM_PER_INCH, ".3f") if unit == "inch" else figure(_USUAL_U_MM, "g")
        )

    def _show_length(self) -> None:
        """Show the length of two points that give the scale; nothing asks for it where none do."""
        kept = self._photo.kept if self._photo is not None else None
        length, doubt = (kept.length_mm, kept.length_u_mm) if kept is not None else (None, None)
        unit = self._desk.rules.length_unit
        self._length.show_value(shown_height(length, unit))
        self._length_u.show_value(shown_height(doubt, unit))
        self._typing.setVisible(length is not None)

    def _show_prints(self) -> None:
        """Offer the printed cards of which one lies in the photo, where that is a question."""
        kept = self._photo.kept if self._photo is not None else None
        prints = self._photo.prints if self._photo is not None else ()
        asked = kept is not None and [one.id for one in prints] not in ([], [kept.card_id])
        self._which.setVisible(asked)
        if kept is None or not asked:
            if self._print.waits():  # nothing to choose is left
                self._print.show_value(None)
            return
        unit = self._desk.rules.length_unit
        among = [(one.id, _print_words(one, unit)) for one in prints]
        offered: list[tuple[int | None, str]] = [(None, tr("Not known")), *among]
        if offered != self._offered:
            self._offered = offered
            self._print.set_choices(offered)
        self._print.show_value(kept.card_id, self._photo and self._photo.photo.id)
        self._print.setToolTip(tooltip(self._print.currentText()))
        self._print.view().setMinimumWidth(self._print.view().sizeHintForColumn(0) + 24)

    def _say_print(self, card_id: int | None) -> Done | None:
        if self._photo is None:
            return None
        return self._desk.do(say_print, self._photo.photo.id, card_id, self._follow)

    @Slot()
    def _ask_points(self) -> None:
        self.points_wanted.emit(self._points_button.isChecked())

    @Slot()
    def _look(self) -> None:
        if self._photo is not None:
            self._photo.look_for_card()

    @Slot()
    def _take_out(self) -> None:
        if self._photo is not None:
            self._points = None
            self._length.forget()
            self._length_u.forget()
            self._desk.do(forget_scale, self._photo.photo.id)

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
            doubt = _USUAL_U_MM if doubt is None else doubt
            TwoPointScale((points[0], points[1]), length, doubt)
        except ShopTrouble as trouble:
            self._hint.setText(f"✎ {trouble.sentence()}")
            return None
        self._points = None
        self._hint.setText("")
        there = (self._photo.photo.id, (points[0], points[1]), length, doubt, self._follow)
        return self._desk.do(keep_two_points, *there)


def _print_words(card: AnyCard, unit: str) -> str:
    words = card.words(unit)
    return words[:1].upper() + words[1:] + ("" if card.in_use else tr(", put away"))

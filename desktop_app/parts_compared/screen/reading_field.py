"""The field for the readings of one side of one dimension; a keyboard calliper types into it."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QSignalBlocker, QSize, Qt, Signal, Slot
from PySide6.QtGui import QFocusEvent, QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QComboBox, QWidget

from desktop_app.language import tr
from desktop_app.parts_compared.readings_typed import split_readings
from desktop_app.shop_window.choice_list import ChoiceList
from desktop_app.shop_window.fields import LineField, Save
from desktop_app.shop_window.in_sight import bring_up
from desktop_app.shop_window.texts import plain_label, tooltip

_THREE = "00.00; 00.00; 00.00"  # readings that are seen at once, at least
_FRAME = 24  # pixels that a field takes beside its words
# With these the cursor comes back to a field that it never left for another.
_BACK = (Qt.FocusReason.ActiveWindowFocusReason, Qt.FocusReason.PopupFocusReason)


class ReadingField(LineField):
    """Readings typed as "4.10; 4.12"; Enter saves and says so, so that the next field can follow.

    A refused text stays where it is; `refused` tells of it.
    """

    entered = Signal()
    came_in = Signal()

    def __init__(self, name: str, save: Save) -> None:
        super().__init__(name, self._save_reading)
        self._save_outside = save
        self.refused = False
        self._met = ""
        self.returnPressed.connect(self._move_on)
        self.textEdited.connect(self._come_up)

    def show_value(self, text: str) -> None:
        """Show the kept readings; the field in use is left alone where they only look different."""
        if self.hasFocus() and _alike(self.text(), text):
            return
        super().show_value(text)
        if not self.hasFocus():
            self.setCursorPosition(0)

    def take_another(self) -> None:
        """Go to the end of what is written, ready for one more reading."""
        self.setFocus(Qt.FocusReason.OtherFocusReason)
        self.deselect()
        text = self.text().rstrip("; ")
        if text:
            self.setText(f"{text}; ")
        self.setCursorPosition(len(self.text()))

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        if event.reason() not in _BACK:
            self._met = self.text()
        self.came_in.emit()

    def corrected(self) -> bool:
        """Whether readings stood here when the cursor came, and are others now."""
        return bool(self._met.strip()) and not _alike(self._met, self.text())

    def has_more(self) -> bool:
        """Whether the readings that stood here when the cursor came were only added to."""
        met = _bare(self._met)
        return _bare(self.text())[: len(met)] == met

    def _save_reading(self, text: str) -> object:
        kept = self._save_outside(text)
        self.refused = kept is None
        return kept

    @Slot()
    def _come_up(self) -> None:
        """Be seen while it is typed into: photos that came meanwhile have pushed it down."""
        bring_up(self)

    @Slot()
    def _move_on(self) -> None:
        if not self.refused:
            self.entered.emit()


class ReadingBox(QWidget):
    """A ReadingField, and a sign where readings were taken from marks on photos.

    The sign stands beside the field, or beneath it where it would leave no room for three readings.
    """

    def __init__(self, field: ReadingField) -> None:
        super().__init__()
        self._from_photo = plain_label(tr("◎ photo"), "quiet")
        self._from_photo.hide()
        self._row = QBoxLayout(QBoxLayout.Direction.LeftToRight, self)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.addWidget(field, 1)
        self._row.addWidget(self._from_photo)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        room = self.width() - self._from_photo.sizeHint().width() - self._row.spacing()
        beside, way = room >= least_for_readings(self), QBoxLayout.Direction
        self._row.setDirection(way.LeftToRight if beside else way.TopToBottom)

    def minimumSizeHint(self) -> QSize:
        return QSize(least_for_readings(self), super().minimumSizeHint().height())

    def show_marks(self, marks: Sequence[int | None]) -> None:
        """Say how many of the readings came from marks; `marks` has one for each reading."""
        taken = sum(one is not None for one in marks)
        self._from_photo.setVisible(taken > 0)
        self._fit()
        words = tr(
            "{taken} of {readings} readings taken from marks on the photo",
            taken=taken,
            readings=len(marks),
        )
        self._from_photo.setToolTip(
            tooltip(tr("{words}, each with the mark's own uncertainty.", words=words))
        )
        self._from_photo.setAccessibleName(words)


class WordField(ChoiceList):
    """A word out of the kind's choices, or another one typed; it holds a ReadingField."""

    def __init__(self, name: str, choices: tuple[str, ...], save: Save) -> None:
        super().__init__()
        self.setEditable(True)
        self.setInsertPolicy(QComboBox.InsertPolicy.NoInsert)
        self.setAccessibleName(tr("{name}, choices", name=name))
        self.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.setMinimumContentsLength(6)
        self.addItems(["", *choices])
        self.line = ReadingField(name, save)
        with QSignalBlocker(self):
            self.setLineEdit(self.line)
            self.line.setStyleSheet("border: none; padding: 0; min-height: 0;")
            self.setCurrentIndex(0)
        self.activated.connect(self.line.save_now)


def least_for_readings(field: QWidget) -> int:
    """Return how wide a field has to be for three readings, in the letters that it has."""
    return field.fontMetrics().horizontalAdvance(_THREE) + _FRAME


def bring_cursor(field: ReadingField) -> None:
    """Put the cursor into a field, what it holds marked, and scroll to it."""
    field.setFocus(Qt.FocusReason.TabFocusReason)
    bring_up(field)


def bring_for_another(field: ReadingField) -> None:
    """Put the cursor where one more reading belongs in a field, and scroll to it."""
    field.take_another()
    bring_up(field)


def _alike(shown: str, kept: str) -> bool:
    """Whether both say the same readings, the unit that the shop leaves out aside."""
    return _bare(shown) == _bare(kept)


def _bare(text: str) -> list[str]:
    return [piece.removesuffix(" in") for piece in split_readings(text)]

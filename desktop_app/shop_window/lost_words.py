"""What waits in a part of a page that goes: told, and kept on the page and this computer."""

from __future__ import annotations

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import QFrame, QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import WordsField, unsaved_fields
from desktop_app.shop_window.kept_choice import waiting_choices
from desktop_app.shop_window.texts import plain_label

Words = list[tuple[str, str]]  # the name of a field or choice, and what stands in it

LEFT = tr("{} was left before all of it was sent.")
GONE = tr("{} is no longer there: it was taken out, here or at another desk, or undone.")


class LostWords(QFrame):
    """Stands where the part was, until a person puts it away."""

    def __init__(self, desk: Desk, words: Words, said: str) -> None:
        super().__init__()
        self.setObjectName("question")
        self.words = words
        self._desk = desk
        label = plain_label(said, wrap=True)
        label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        away = QPushButton(tr("Put these words away"))
        away.clicked.connect(self._put_away)
        column = QVBoxLayout(self)
        column.addWidget(label)
        column.addWidget(away, 0, Qt.AlignmentFlag.AlignLeft)

    @Slot()
    def _put_away(self) -> None:
        self.words = []
        self.hide()
        self.deleteLater()
        self._desk.waits.emit()


def waiting_words(part: QWidget) -> Words:
    """Return what is typed or chosen in a part of a page, or lost there, and is not saved."""
    lost = [one for line in part.findChildren(LostWords) for one in line.words]
    typed = [
        (one.accessibleName(), one.toPlainText() if isinstance(one, WordsField) else one.text())
        for one in unsaved_fields(part)
    ]
    chosen = [(one.accessibleName(), one.typed()) for one in waiting_choices(part)]
    return [*typed, *chosen, *lost]


def let_go(
    desk: Desk,
    column: QVBoxLayout,
    part: QWidget,
    name: str,
    said: str = GONE,
    words: Words | None = None,
) -> None:
    """Take a part off the page; what waits in it (or these words of it) stays in its place.

    `said` says of its name why it goes.
    """
    found = waiting_words(part) if words is None else words
    lost = [(field, text.strip()) for field, text in found if text.strip()]
    place = column.indexOf(part)
    column.removeWidget(part)
    part.hide()
    part.setParent(None)
    part.deleteLater()
    if lost:
        named = "; ".join(f"{field} “{text}”" for field, text in lost)
        entered = tr("Entered there and not kept: {named}.", named=named)
        what = f"{said.format(name)} {entered}"
        lost = [(f"{name}: {field}", text) for field, text in lost]
        column.insertWidget(place, LostWords(desk, lost, what))
        stays = tr("It stays on the page until it is put away.")
        desk.told.emit(f"{what} {stays}")
        desk.waits.emit()

"""A choice among the people of the shop; where nobody is on the list, the way to add names."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

from PySide6 import QtWidgets
from PySide6.QtCore import QSize, Slot

from desktop_app.language import tr
from desktop_app.shop_window.choice_list import SPARE
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.kept_choice import KeptChoiceField

ADD_NAMES = tr("Add names…")  # short: it stands in the strip above the page


class PersonField(KeptChoiceField):
    """Saves the chosen value itself; the way to the list of people is no answer."""

    def __init__(self, desk: Desk, name: str, save: Callable[[Any], object]) -> None:
        super().__init__(desk, name, [], save)

    def minimumSizeHint(self) -> QSize:
        """Say the width in which who is chosen is read; the names come when it is shown already."""
        option = QtWidgets.QStyleOptionComboBox()
        self.initStyleOption(option)
        said = QSize(self.fontMetrics().horizontalAdvance(self.currentText()), 0)
        kind = QtWidgets.QStyle.ContentsType.CT_ComboBox
        wide = self.style().sizeFromContents(kind, option, said, self).width() + SPARE
        return super().minimumSizeHint().expandedTo(QSize(wide, 0))

    def show_people(self, nobody: tuple[Any, str], people: Sequence[tuple[Any, str]]) -> None:
        """Offer these (value, name), and `nobody` before them."""
        self.set_choices([nobody, *people, *(() if people else ((ADD_NAMES, ADD_NAMES),))])
        self.updateGeometry()

    @Slot()
    def choose(self) -> None:
        """Save the person, or lead to the list of people."""
        if self.chosen() != ADD_NAMES:
            super().choose()
            return
        self.put(self._kept)
        self._desk.names_wanted.emit()

"""The language of this computer's windows, chosen on the pages where a shop is set up."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QPushButton

from desktop_app.language import marked, tr
from desktop_app.shop_window.choice_list import ChoiceList
from desktop_app.shop_window.fields import Labelled
from desktop_app.shop_window.own_language import (
    OWN_NAME,
    choose_language,
    language_chosen,
    said_in_each,
)
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.started_anew import start_anew
from desktop_app.shop_window.texts import plain_label

_SAYS = tr(
    "For the windows of this computer; other computers of the shop choose for themselves. What was "
    "typed stays as it was typed."
)
_LANGUAGE = marked("Language")


class LanguageBox(Section):
    """Keeps the choice on this computer, and says that it holds from the next start on."""

    def __init__(self) -> None:
        # Whoever cannot read the language spoken now finds the word for it all the same.
        super().__init__(" · ".join(dict.fromkeys(said_in_each(_LANGUAGE).values())))
        self._choice = ChoiceList()
        self._choice.setAccessibleName(tr("Language of the windows"))
        self._choice.addItem(tr("as the system is set"), "")
        for code, name in said_in_each(OWN_NAME).items():
            self._choice.addItem(name, code)
        self._choice.setCurrentIndex(max(0, self._choice.findData(language_chosen())))
        self._choice.setMaximumWidth(420)
        self._choice.currentIndexChanged.connect(self._choose)
        self._later = plain_label("", wrap=True)
        self._anew = QPushButton(tr("Start anew now"))
        self._anew.setMaximumWidth(420)
        self._anew.clicked.connect(self._start_anew)
        self.column.addWidget(Labelled(tr("Language of the windows"), self._choice, _SAYS))
        for widget in (self._later, self._anew):
            self.column.addWidget(widget)
            widget.hide()

    @Slot()
    def _choose(self) -> None:
        choose_language(str(self._choice.currentData()))
        self._later.setText(tr("Kept. It is spoken when the program is started the next time."))
        self._later.show()
        self._anew.show()

    @Slot()
    def _start_anew(self) -> None:
        start_anew(self.window())

"""The language of this computer's windows, chosen on the pages where a shop is set up."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QComboBox

from desktop_app.language import tr
from desktop_app.shop_window.fields import Labelled
from desktop_app.shop_window.own_language import LANGUAGES, choose_language, language_chosen
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import plain_label

_SAYS = tr(
    "For the windows of this computer; other computers of the shop choose for themselves. What was "
    "typed stays as it was typed."
)
# Whoever cannot read the language spoken now finds the word for it all the same.
_HEADING = "Language · Idioma"


class LanguageBox(Section):
    """Keeps the choice on this computer, and says that it holds from the next start on."""

    def __init__(self) -> None:
        super().__init__(_HEADING)
        self._choice = QComboBox()
        self._choice.setAccessibleName(tr("Language of the windows"))
        self._choice.addItem(tr("as the system is set"), "")
        for code, name in LANGUAGES.items():
            self._choice.addItem(name, code)
        self._choice.setCurrentIndex(max(0, self._choice.findData(language_chosen())))
        self._choice.setMaximumWidth(420)
        self._choice.currentIndexChanged.connect(self._choose)
        self._later = plain_label("", "quiet", wrap=True)
        self._later.hide()
        self.column.addWidget(Labelled(tr("Language of the windows"), self._choice, _SAYS))
        self.column.addWidget(self._later)

    @Slot()
    def _choose(self) -> None:
        choose_language(str(self._choice.currentData()))
        self._later.setText(tr("Kept. It is spoken when the program is started the next time."))
        self._later.show()

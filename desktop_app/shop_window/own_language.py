"""The language of this computer's windows: as the system is set, or as chosen here.

It is spoken before anything else is loaded, so what is chosen holds from the next start on.
A language is spoken here that has its words beside the others in resources/spoken.
"""

from __future__ import annotations

import os
from functools import cache

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QTranslator

from desktop_app import figures_shown, language
from desktop_app.language import marked
from desktop_app.shop_record.own_program.resource_folder import resource_path
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.window_memory import window_memory

AS_WRITTEN = "en"
#: In another language its own name stands in the place of this one.
OWN_NAME = marked("English")
_KEY = "language"


def languages() -> tuple[str, ...]:
    """Return the codes of the languages that can be spoken, English first."""
    others = sorted(file.stem for file in resource_path("spoken").glob("*.qm"))
    return (AS_WRITTEN, *others)


def said_in_each(text: str) -> dict[str, str]:
    """Return what each language says for a text, by its code; those that can't be read are out."""
    said = {AS_WRITTEN: text}
    for code in languages()[1:]:
        words = _words_of(code)
        if words is not None:
            said[code] = words.translate("", text) or text
    return said


def language_chosen() -> str:
    """Return what was chosen on this computer; "" is: as the system is set."""
    chosen = str(window_memory().value(_KEY, ""))
    return chosen if chosen in languages() else ""


def choose_language(code: str) -> None:
    """Remember the language for the next start; "" is: as the system is set."""
    memory = window_memory()
    memory.setValue(_KEY, code)
    memory.sync()


def language_of_system() -> str:
    """Return the first language of the system that is spoken here."""
    for wanted in QLocale.system().uiLanguages():
        code = wanted.replace("_", "-").partition("-")[0].lower()
        if code in languages():
            return code
    return AS_WRITTEN


def language_said() -> str:
    """Return the language said by the environment; "" where it says none that is spoken here."""
    said = os.environ.get(language.VARIABLE, "")
    return said if said in languages() else ""


def wanted_language() -> str:
    """Return the language said by the environment, chosen on this computer, or the system's."""
    return language_said() or language_chosen() or language_of_system()


def speak_language(code: str) -> ShopTrouble | None:
    """Speak a language from now on; where its words cannot be read, English stays: say so."""
    if code in ("", AS_WRITTEN):
        return None
    words = _words_of(code)
    if words is None:
        return ShopTrouble(
            f"The words of the language “{code}” cannot be read, so English is spoken.",
            do="Install the program anew, or choose English under House Rules.",
        )
    language.speak(cache(lambda text: words.translate("", text) or ""), code)
    return None


def wanted_decimal_sign() -> figures_shown.DecimalSign:
    """Return the decimal sign said by the environment, or the system's: a comma, else a point."""
    said = os.environ.get(figures_shown.VARIABLE, "")
    return "," if (said if said in (".", ",") else QLocale.system().decimalPoint()) == "," else "."


def speak_in_dialogs(app: QCoreApplication) -> None:
    """Let Qt's own dialogs speak the language too, where its words came along with Qt."""
    code = language.code_spoken()
    words = QTranslator(app)
    folder = QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)
    if code and words.load(f"qtbase_{code}", folder):
        app.installTranslator(words)


def _words_of(code: str) -> QTranslator | None:
    """Return what a language says, or None where that cannot be read."""
    words = QTranslator()
    read = words.load(str(resource_path("spoken", f"{code}.qm")))
    return words if read and not words.isEmpty() else None

"""The language of this computer's windows: as the system is set, or as chosen here.

It is spoken before anything else is loaded, so what is chosen holds from the next start on.
"""

from __future__ import annotations

import os
from functools import cache

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QTranslator

from desktop_app import language
from desktop_app.shop_record.own_program.resource_folder import resource_path
from desktop_app.shop_window.window_memory import window_memory

AS_WRITTEN = "en"
#: The languages that are spoken, each by its own name.
LANGUAGES = {AS_WRITTEN: "English", "es": "Español"}
_KEY = "language"


def language_chosen() -> str:
    """Return what was chosen on this computer; "" is: as the system is set."""
    chosen = str(window_memory().value(_KEY, ""))
    return chosen if chosen in LANGUAGES else ""


def choose_language(code: str) -> None:
    """Remember the language for the next start; "" is: as the system is set."""
    memory = window_memory()
    memory.setValue(_KEY, code)
    memory.sync()


def language_of_system() -> str:
    """Return the first language of the system that is spoken here."""
    for wanted in QLocale.system().uiLanguages():
        code = wanted.replace("_", "-").partition("-")[0].lower()
        if code in LANGUAGES:
            return code
    return AS_WRITTEN


def wanted_language() -> str:
    """Return the language said by the environment, chosen on this computer, or the system's."""
    said = os.environ.get(language.VARIABLE, "")
    return said if said in LANGUAGES else language_chosen() or language_of_system()


def speak_language(code: str) -> bool:
    """Speak a language from now on; False where its words cannot be read, and English stays."""
    if code == AS_WRITTEN:
        return True
    words = QTranslator()
    if not words.load(str(resource_path("spoken", f"{code}.qm"))):
        return False
    language.speak(cache(lambda text: words.translate("", text) or ""), code)
    return True


def speak_in_dialogs(app: QCoreApplication) -> None:
    """Let Qt's own dialogs speak the language too, where its words came along with Qt."""
    code = language.code_spoken()
    words = QTranslator(app)
    folder = QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)
    if code and words.load(f"qtbase_{code}", folder):
        app.installTranslator(words)

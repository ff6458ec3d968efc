"""Which language is spoken: said by the environment, chosen on this computer, or the system's."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QCloseEvent
from PySide6.QtWidgets import QComboBox, QLabel, QPushButton, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.language import VARIABLE, marked, tr
from desktop_app.shop_window import own_language, started_anew
from desktop_app.shop_window.language_box import LanguageBox
from desktop_app.shop_window.own_language import choose_language, languages, wanted_language
from tests.spoken.spoken_files import ROOT, SPOKEN


@pytest.fixture
def own_home(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    monkeypatch.setenv("XDG_CONFIG_HOME", str(tmp_path / "config"))


def test_without_another_language_a_text_is_as_it_is_written() -> None:
    assert tr("Came with {fault} at {miles:,} mi", fault="a {brace}", miles=12345) == (
        "Came with a {brace} at 12,345 mi"
    )
    assert tr("100 % of {what}") == "100 % of {what}"  # nothing to put in: taken as it stands
    assert marked("nothing heard") == "nothing heard"


def test_what_is_said_goes_before_what_is_chosen_and_that_before_the_system(
    monkeypatch: pytest.MonkeyPatch, own_home: Path
) -> None:
    monkeypatch.delenv(VARIABLE, raising=False)
    monkeypatch.setattr(own_language, "language_of_system", lambda: "en")
    assert wanted_language() == "en"
    choose_language("es")
    assert wanted_language() == "es"
    monkeypatch.setenv(VARIABLE, "en")
    assert wanted_language() == "en"
    monkeypatch.setenv(VARIABLE, "tlh")  # not spoken here: as if nothing were said
    assert wanted_language() == "es"
    choose_language("")
    assert wanted_language() == "en"


def test_the_choice_is_kept_for_the_next_start_and_says_so(qtbot: QtBot, own_home: None) -> None:
    box = LanguageBox()
    qtbot.addWidget(box)
    box.show()
    (choice,) = box.findChildren(QComboBox)
    assert [choice.itemText(at) for at in range(choice.count())] == [
        "as the system is set",
        "English",
        "Español",
    ]
    qtbot.keyClicks(choice, "Esp")
    assert own_language.language_chosen() == "es"
    assert any("next time" in line.text() and line.isVisible() for line in box.findChildren(QLabel))


def test_the_program_is_started_anew_from_there_unless_its_window_stays(
    qtbot: QtBot, own_home: None, monkeypatch: pytest.MonkeyPatch
) -> None:
    window = Staying()
    box = LanguageBox()
    QVBoxLayout(window).addWidget(box)
    qtbot.addWidget(window)
    window.show()
    (choice,) = box.findChildren(QComboBox)
    qtbot.keyClicks(choice, "Esp")
    (anew,) = (one for one in box.findChildren(QPushButton) if one.isVisible())
    qtbot.mouseClick(anew, Qt.MouseButton.LeftButton)
    assert window.isVisible()
    assert not started_anew.is_wanted()
    window.stays = False
    qtbot.mouseClick(anew, Qt.MouseButton.LeftButton)
    assert not window.isVisible()
    assert started_anew.is_wanted()
    window.stays = True
    window.show()
    qtbot.mouseClick(anew, Qt.MouseButton.LeftButton)
    assert not started_anew.is_wanted()


class Staying(QWidget):
    """A window that has something to lose."""

    stays = True

    def closeEvent(self, event: QCloseEvent) -> None:
        event.setAccepted(not self.stays)


def test_a_language_whose_words_lie_beside_the_others_is_offered_by_its_own_name(
    qtbot: QtBot, own_home: None, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "spoken").mkdir()
    for code in ("es", "tlh"):
        shutil.copy(SPOKEN / "es.qm", tmp_path / "spoken" / f"{code}.qm")
    monkeypatch.setattr(own_language, "resource_path", lambda *parts: tmp_path.joinpath(*parts))
    assert languages() == ("en", "es", "tlh")
    choose_language("tlh")
    assert wanted_language() == "tlh"
    box = LanguageBox()
    qtbot.addWidget(box)
    (choice,) = box.findChildren(QComboBox)
    assert choice.itemText(3) == "Español"
    assert choice.currentData() == "tlh"
    assert "Language · Idioma" in {line.text() for line in box.findChildren(QLabel)}


def done(*words: str, **said: str) -> subprocess.CompletedProcess[str]:
    """What a process of its own says."""
    return subprocess.run(
        (sys.executable, *words),
        cwd=ROOT,
        env={**os.environ, **said},
        capture_output=True,
        text=True,
        check=True,
        timeout=60,
    )


def run(*words: str, **said: str) -> str:
    return done(*words, **said).stdout


SPEAK = """
from desktop_app.shop_window.own_language import language_of_system, speak_language
speak_language(language_of_system())
from desktop_app.shop_window.place_names import RULES
print(RULES)
"""


@pytest.mark.parametrize(
    ("system", "rules"),
    [("es_MX.UTF-8", "Normas de la casa"), ("de_DE.UTF-8", "House Rules"), ("C", "House Rules")],
)
def test_the_system_says_which(system: str, rules: str) -> None:
    assert run("-c", SPEAK, LANG=system, LC_ALL=system, LANGUAGE="").strip() == rules


SPANISH_SYSTEM = {"LC_ALL": "es_ES.UTF-8", "LANGUAGE": "es"}


@pytest.mark.parametrize("said", ["", "tlh", "es"])
def test_commands_speak_english_whatever_is_asked_for(said: str, tmp_path: Path) -> None:
    shop, environ = str(tmp_path / "shop"), {VARIABLE: said, **SPANISH_SYSTEM}
    assert run("-m", "desktop_app", "new-shop", shop, **environ).startswith("Made a new shop")
    missing = run("-m", "desktop_app", "check", "--shop", shop, **environ)
    assert missing == run("-m", "desktop_app", "check", "--shop", shop, **{VARIABLE: "en"})


@pytest.mark.parametrize(("said", "spanish"), [("", False), ("tlh", False), ("es", True)])
def test_a_paper_is_in_the_language_asked_for_and_never_in_the_system_s(
    said: str, spanish: bool, tmp_path: Path
) -> None:
    card = ("card", "--paper", "a4", "--layout", str(tmp_path / "card.json"), "--out")
    for name, environ in (("card.pdf", {VARIABLE: said, **SPANISH_SYSTEM}), ("en.pdf", {})):
        run("-m", "desktop_app", *card, str(tmp_path / name), **{VARIABLE: "", **environ})
    written = (tmp_path / "card.pdf").read_bytes()
    assert (b"/Lang (es)" in written) is spanish
    assert (written == (tmp_path / "en.pdf").read_bytes()) is not spanish


#: Starts the program with the words of its languages in another place.
BROKEN = """
import sys
from pathlib import Path
from desktop_app.__main__ import main
from desktop_app.shop_window import own_language, started_anew
own_language.resource_path = lambda *parts: Path(sys.argv[1], *parts)
"""
CARD = """
sys.exit(main(["card", "--paper", "a4", "--out", sys.argv[2], "--layout", sys.argv[3]]))
"""
#: Prints what the window tells as soon as it is there.
WINDOW = """
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication
from desktop_app.commands import demo
demo.has_screen = lambda: True
app = QApplication([])
def look():
    for window in app.topLevelWidgets():
        if hasattr(window, "strip"):
            print(window.windowTitle(), window.strip.words())
    app.quit()
QTimer.singleShot(0, look)
sys.exit(main([]))
"""


@pytest.fixture
def broken(tmp_path: Path) -> str:
    """A place with words of Spanish that nobody can read."""
    (tmp_path / "spoken").mkdir()
    (tmp_path / "spoken" / "es.qm").write_bytes((SPOKEN / "es.qm").read_bytes()[:40])
    return str(tmp_path)


def test_words_that_cannot_be_read_are_told_and_the_paper_is_english(
    broken: str, tmp_path: Path
) -> None:
    files = (str(tmp_path / "card.pdf"), str(tmp_path / "card.json"))
    said = done("-c", BROKEN + CARD, broken, *files, **{VARIABLE: "es"})
    assert said.stderr.splitlines() == [
        "The words of the language “es” cannot be read, so English is spoken. "
        "Install the program anew, or choose English under House Rules."
    ]
    assert b"/Lang (en)" in (tmp_path / "card.pdf").read_bytes()


def test_words_that_cannot_be_read_are_told_in_the_window(broken: str, tmp_path: Path) -> None:
    home = {name: str(tmp_path) for name in ("XDG_CONFIG_HOME", "XDG_DATA_HOME")}
    said = done("-c", BROKEN + WINDOW, broken, **home, **{VARIABLE: "es", "BENCHWITNESS_SHOP": ""})
    assert "“es” cannot be read, so English is spoken." in said.stdout
    assert said.stderr == ""

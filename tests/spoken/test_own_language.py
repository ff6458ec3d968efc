"""Which language is spoken: said by the environment, chosen on this computer, or the system's."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest
from PySide6.QtWidgets import QComboBox, QLabel
from pytestqt.qtbot import QtBot

from desktop_app.language import VARIABLE, marked, tr
from desktop_app.shop_window import own_language
from desktop_app.shop_window.language_box import LanguageBox
from desktop_app.shop_window.own_language import choose_language, wanted_language

ROOT = Path(__file__).resolve().parents[2]


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


def run(*words: str, **said: str) -> str:
    """What a process of its own says."""
    return subprocess.run(
        (sys.executable, *words),
        cwd=ROOT,
        env={**os.environ, **said},
        capture_output=True,
        text=True,
        check=True,
        timeout=60,
    ).stdout


SPEAK = """
from desktop_app.shop_window.own_language import language_of_system, speak_language
speak_language(language_of_system())
from desktop_app.places import RULES
print(RULES)
"""


@pytest.mark.parametrize(
    ("system", "rules"),
    [("es_MX.UTF-8", "Normas de la casa"), ("de_DE.UTF-8", "House Rules"), ("C", "House Rules")],
)
def test_the_system_says_which(system: str, rules: str) -> None:
    assert run("-c", SPEAK, LANG=system, LC_ALL=system, LANGUAGE="").strip() == rules


def test_commands_speak_english_unless_they_are_told_otherwise(tmp_path: Path) -> None:
    shop = str(tmp_path / "shop")
    said = run("-m", "desktop_app", "new-shop", shop, LC_ALL="es_ES.UTF-8", LANGUAGE="es")
    assert said.startswith("Made a new shop")

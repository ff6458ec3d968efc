"""What was done in English is named in the language of the window: undo, redo, the strip."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QToolButton
from pytestqt.qtbot import QtBot

import desktop_app
from desktop_app.job_history.told_entry import EntryRead, tell
from desktop_app.job_history.value_words import ShopSpeech
from desktop_app.language import speak
from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.past.deed_words import NAMING, deed_words
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.main_window import MainWindow

PROGRAM = Path(desktop_app.__file__).parent
IN_SPANISH = {
    "Take a car in": "Recibir un vehículo",
    "Add {name}": "Añadir a {name}",
    "Say that it is {state}": "Decir que está {state}",
    "paid": "pagado",
    "Undo: {words}": "Deshacer: {words}",
    "Redo: {words}": "Rehacer: {words}",
    "Undone: {words}.": "Deshecho: {words}.",
}


@pytest.fixture
def spanish(shop: ShopRecord) -> Iterator[None]:
    """A car was taken in and a person added while English was spoken."""
    actions.write_up(shop, WriteUp("misses", plate="TH 1", odometer=1000))
    actions.add_person(shop, "Ana {paid}")
    speak(lambda text: IN_SPANISH.get(text, ""), "es")
    yield
    speak(lambda text: text)


def test_undo_and_redo_name_deeds_in_the_language_of_the_window(
    spanish: None, shop: ShopRecord, qtbot: QtBot
) -> None:
    desk, window = Desk(shop), MainWindow()
    qtbot.addWidget(window)
    window.attend(desk)
    window.show()

    def button(words: str) -> QToolButton:
        buttons = window.findChildren(QToolButton)
        return next(one for one in buttons if one.accessibleName() == words)

    qtbot.mouseClick(button("Deshacer: Añadir a Ana {paid}"), Qt.MouseButton.LeftButton)
    said = [label.text() for label in window.strip.findChildren(QLabel)]
    assert any("Deshecho: Añadir a Ana {paid}." in words for words in said)
    assert button("Rehacer: Añadir a Ana {paid}").isEnabled()
    assert button("Deshacer: Recibir un vehículo").isEnabled()
    desk.errands.finish()


def test_the_history_of_a_job_names_them_so_too(spanish: None) -> None:
    entry = EntryRead(1, "2026-11-16T12:00:00+00:00", "", "", "Take a car in", None, ())
    assert tell([entry], ShopSpeech())[0].words == "Recibir un vehículo"


def test_a_term_of_ours_is_said_and_what_is_no_deed_of_ours_stays(spanish: None) -> None:
    assert deed_words("Say that it is paid") == "Decir que está pagado"
    assert deed_words("Añadir a paid") == "Añadir a paid"
    assert deed_words("Take a car out") == "Take a car out"


def named_in(text: ast.AST) -> Iterator[str]:
    """Yield the texts with something named in them that are said in a piece of the program."""
    for call in ast.walk(text):
        if isinstance(call, ast.Call) and ast.unparse(call.func) == "tr" and call.keywords:
            assert isinstance(call.args[0], ast.Constant)
            yield str(call.args[0].value)


def words_of_deeds(function: ast.FunctionDef) -> Iterator[str]:
    """Yield those that a function names its deed by, at once or by a name of its own."""
    given = {
        ast.unparse(one.args[0]): one.args[0]
        for one in ast.walk(function)
        if isinstance(one, ast.Call) and ast.unparse(one.func) == "record.do"
    }
    for one in ast.walk(function):
        if isinstance(one, ast.Assign) and any(ast.unparse(of) in given for of in one.targets):
            yield from named_in(one.value)
    for said in given.values():
        yield from named_in(said)


def test_each_deed_that_names_something_is_known_again() -> None:
    written = {
        words
        for file in PROGRAM.rglob("*.py")
        for function in ast.parse(file.read_text(encoding="utf-8")).body
        if isinstance(function, ast.FunctionDef)
        for words in words_of_deeds(function)
    }
    assert len(written) > 20
    assert written - set(NAMING) == set()

"""Hostile words pasted into every field there is: nothing breaks and no word is lost."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLabel, QLineEdit, QPlainTextEdit
from pytestqt.qtbot import QtBot

from desktop_app.commands.shop_place import kinds_of
from desktop_app.parts_compared.sheet import write_sheet
from desktop_app.shop_record.checks.check import check_shop
from desktop_app.shop_window.place_names import ON_RAIL
from tests.shop_stories.counter import Counter, sitting
from tests.shop_stories.one_job import MONDAY, one_job, open_job

HOSTILE = {
    "picture": '<img src="file:///etc/hostname" width="9000">',
    "tables": "<b>" + "<table><tr><td>" * 40 + "deep",
    "long": "x" * 10_000,
    "turned round": "\u202egnitset \u2067\u200b",
    "nothing": "a\u0000b",
}
CONTROL = Qt.KeyboardModifier.ControlModifier

Field = QLineEdit | QPlainTextEdit


def fields(at: Counter) -> list[Field]:
    """Return the fields of the page that can be typed into now."""
    lines: list[Field] = list(at.page.findChildren(QLineEdit))
    words: list[Field] = list(at.page.findChildren(QPlainTextEdit))
    return [f for f in lines + words if f.isVisible() and f.isEnabled() and not f.isReadOnly()]


def typed(field: Field) -> str:
    return field.text() if isinstance(field, QLineEdit) else field.toPlainText()


def paste(at: Counter, field: Field, words: str) -> None:
    """Paste over what the field says, press Enter where that saves, and leave it."""
    field.setFocus()
    at.bot.keyClick(field, Qt.Key.Key_A, CONTROL)
    at.bot.keyClick(field, Qt.Key.Key_V, CONTROL)
    taken = typed(field)
    if isinstance(field, QLineEdit):
        assert taken in (words, words[: field.maxLength()])
        at.bot.keyClick(field, Qt.Key.Key_Return)
    at.leave()
    # It still stands in its field, or it was added to the list beside it.
    assert typed(field) == taken or at.reads(words[:40]), f"{field.accessibleName()} lost it"


def paste_everywhere(at: Counter, words: str) -> list[str]:
    """Paste into each field of the page, also into those that come up on the way."""
    done: list[str] = []
    while fresh := [f for f in fields(at) if f.accessibleName() not in done]:
        done.append(fresh[0].accessibleName())
        paste(at, fresh[0], words)
    return done


@pytest.mark.parametrize("words", HOSTILE.values(), ids=HOSTILE)
def test_hostile_words_in_every_field(qtbot: QtBot, tmp_path: Path, words: str) -> None:
    shop = tmp_path / "shop"
    QApplication.clipboard().setText(words)
    with one_job(qtbot, shop) as at:
        desk = at.program.desk
        assert desk is not None
        open_job(at)
        assert len(paste_everywhere(at, words)) > 30
        at.picture(tmp_path, "job")
        pasted = 0
        for place in ON_RAIL:
            at.go(place)
            pasted += len(paste_everywhere(at, words))
        assert pasted > 20
        size = at.window.size()
        assert size.width() <= 1366, "long words made the window wider than the screen"
        assert size.height() <= 900, "long words made the window taller than the screen"
        labels = at.window.findChildren(QLabel)
        assert all(label.textFormat() == Qt.TextFormat.PlainText for label in labels)
        write_sheet(desk.record, 1, kinds_of(), tmp_path / "sheet.pdf")
        assert (tmp_path / "sheet.pdf").read_bytes().startswith(b"%PDF")
    # The shop is whole, and opens again with all of it.
    with sitting(qtbot, shop, MONDAY) as at:
        desk = at.program.desk
        assert desk is not None
        assert check_shop(desk.record, []).ok

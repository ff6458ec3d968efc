"""Whatever is typed in any line of the window is there again, after a kill and after closing."""

from __future__ import annotations

import shutil
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path

import pytest
from PySide6.QtWidgets import QAbstractButton, QLabel, QLineEdit, QListView, QPlainTextEdit
from pytestqt.qtbot import QtBot

from desktop_app.part_photos.bench_card.card_layouts import bench_card
from desktop_app.part_photos.card_actions import note_printed_card
from desktop_app.parts_compared.actions import keep_instrument, lay_side_by_side
from desktop_app.shop_record.past.history import last_number
from desktop_app.shop_window.fields import LineField, WordsField
from desktop_app.shop_window.place_names import ASK, BACK, CARD, DRAWER, KINDS, RULES
from tests.shop_stories.counter import Counter, sitting
from tests.watched_shop import a_week_of_returns

MONDAY = datetime(2026, 11, 16, 8, 0, tzinfo=UTC)
LOOKS = ("Find a part kind", "Ask the old jobs", "Show only rows", "Only")  # they find something
Line = QLineEdit | QPlainTextEdit
Stood = list[tuple[str, str]]


def lines_of(at: Counter) -> list[Line]:
    """Return the empty and filled lines of the place that is shown, in the order of the page."""
    found: list[Line] = [*at.page.findChildren(QLineEdit), *at.page.findChildren(QPlainTextEdit)]
    shown = (one for one in found if one.isVisible() and one.isEnabled() and not one.isReadOnly())
    return [one for one in shown if not one.accessibleName().startswith(LOOKS)]


def text_of(line: Line) -> str:
    return line.text() if isinstance(line, QLineEdit) else line.toPlainText()


def stands(at: Counter) -> Stood:
    return [(one.accessibleName(), text_of(one)) for one in lines_of(at)]


def is_kept(line: Line, folder: Path) -> bool:
    """Tell whether the record or the file of drafts has what was typed into a line."""
    if isinstance(line, LineField | WordsField) and not line.unsaved():
        return True
    drafts = folder / "drafts.json"
    return drafts.exists() and f'"{text_of(line)}"' in drafts.read_text("utf-8")


def to_a_job(at: Counter) -> None:
    at.go(ASK)
    at.type_into(QLineEdit, "Ask the old jobs", "J-104", enter=True)
    at.bot.waitUntil(lambda: at.reads("J-104   "))
    at.quiet()
    if not any(name == "Note" for name, _ in stands(at)):
        at.press("Odometer replaced, or car sold")
    at.press("More dimensions")


def to_a_return(at: Counter) -> None:
    at.go(BACK)
    listed = at.find(QListView, "Returns, what waits")
    listed.setCurrentIndex(listed.model().index(0, 0))
    at.bot.waitUntil(lambda: len(lines_of(at)) == 16)


def to_a_kind(at: Counter) -> None:
    at.go(KINDS)
    at.type_into(QLineEdit, "Find a part kind", "distributor rotor")
    buttons = at.page.findChildren(QAbstractButton)
    if any(one.isVisible() and one.text() == "Change it for our shop" for one in buttons):
        at.press("Change it for our shop")
    at.bot.waitUntil(lambda: len(lines_of(at)) > 10)


def to_a_study(at: Counter) -> None:
    at.go(DRAWER)
    at.press("Try the chosen one out: gauge study")


def to_the_rules(at: Counter) -> None:
    at.go(RULES)
    at.choose("Part kind", "brake disc")


PLACES: dict[str, Callable[[Counter], object]] = {
    "a car is here": lambda at: at.press("A car is here"),
    "a job": to_a_job,
    "a return": to_a_return,
    "a part kind": to_a_kind,
    "the tool drawer": to_a_study,
    "a bench card": lambda at: at.go(CARD),
    "the rules": to_the_rules,
    "own phrases": lambda at: at.press("Our own phrases"),
}


def lost(at: Counter, stood: Stood) -> Stood:
    """Return what stood in a line and is read nowhere on the page now."""
    now = stands(at)
    said = [one.text() for one in at.page.findChildren(QLabel)]
    said += [one.text() for one in at.page.findChildren(QAbstractButton)]
    return [one for one in stood if one not in now and not any(one[1] in text for text in said)]


@pytest.mark.parametrize("place", PLACES)
def test_nothing_typed_is_lost(qtbot: QtBot, tmp_path: Path, place: str) -> None:
    folder, left, go = tmp_path / "shop", tmp_path / "left", PLACES[place]
    with sitting(qtbot, folder, MONDAY) as at:
        desk = at.program.desk
        assert desk is not None
        job = a_week_of_returns(desk.record)["J-104"]
        desk.do(lay_side_by_side, job, "distributor-rotor")  # one like it is there already
        desk.do(keep_instrument, "calliper", "mm", 0.01, 0.03)
        desk.do(note_printed_card, bench_card("a4"))
        go(at)
        lines = lines_of(at)
        for number, line in enumerate(lines, 10):
            line.setFocus()
            line.selectAll()
            qtbot.keyClicks(line, f"zz{number}")
        qtbot.waitUntil(lambda: all(is_kept(line, folder) for line in lines), timeout=8000)
        stood = stands(at)
        assert len(stood) >= len(lines) > 0
        shutil.copytree(folder, left, ignore=shutil.ignore_patterns("*.lock"))
        assert at.window.close() or at.window.close()  # what is refused is told first
    with sitting(qtbot, left, MONDAY) as at:
        go(at)
        assert stands(at) == stood
    with sitting(qtbot, folder, MONDAY) as at:
        go(at)
        assert lost(at, stood) == []


@pytest.mark.parametrize(
    ("place", "name"),
    [
        ("a car is here", "What the customer says"),
        ("a car is here", "Plate, or the shop's own tag"),
        ("a job", "Cause: X because Y"),
        ("a job", "What kind of car"),
    ],
)
def test_what_is_typed_without_a_rest_is_kept_meanwhile(
    qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, place: str, name: str
) -> None:
    monkeypatch.setattr("desktop_app.shop_window.typing_pause.MOST_MS", 40)
    folder, left = tmp_path / "shop", tmp_path / "left"
    with sitting(qtbot, folder, MONDAY) as at:
        desk = at.program.desk
        assert desk is not None
        a_week_of_returns(desk.record)
        PLACES[place](at)
        line = next(one for one in lines_of(at) if one.accessibleName().startswith(name))
        line.setFocus()
        line.selectAll()
        before = desk.ask(last_number)
        for letter in "zz1234567890":  # each key comes long before typing rests
            qtbot.keyClicks(line, letter)
            qtbot.wait(20)
        qtbot.waitUntil(lambda: is_kept(line, folder), timeout=300)
        assert desk.ask(last_number) == before  # it is a draft: no deed was done half typed
        typed = text_of(line)
        shutil.copytree(folder, left, ignore=shutil.ignore_patterns("*.lock"))
    with sitting(qtbot, left, MONDAY) as at:
        PLACES[place](at)
        line = next(one for one in lines_of(at) if one.accessibleName().startswith(name))
        assert text_of(line) == typed

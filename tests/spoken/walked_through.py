"""Each place of the window in another language; run by test_walked_through.py, never in English."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QComboBox,
    QLabel,
    QLineEdit,
    QListView,
    QPlainTextEdit,
    QTableView,
    QWidget,
)
from pytestqt.qtbot import QtBot

from desktop_app.language import tr
from desktop_app.places import Places
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_window.own_language import OWN_NAME, said_in_each
from desktop_app.shop_window.place_names import ASK, FIRST_RULES, JOB, ON_RAIL
from tests.shop_stories.counter import Counter
from tests.shop_stories.full_shop import fill
from tests.shop_stories.one_job import SMALL, one_job
from tests.shop_stories.test_narrow_window import AT_150, AT_200
from tests.shop_stories.test_reached_and_seen import SIZES, cut_off, outgrown
from tests.spoken.speaking import SIGN, SPOKEN

PLACES = (*ON_RAIL, FIRST_RULES, JOB)
TYPED = ("Tuuli", "misses when damp", "TH 1", "Benchwitness", "J-101")
# Each language is called as it calls itself.
TYPED += (*said_in_each(OWN_NAME).values(), " · ".join(said_in_each("Language").values()))
# Numbers with a unit, signs, keys and paths say the same in every language.
ALIKE = re.compile(
    r"(?:mm|km|mi|kV|deg|kPa|kohm|ohm|ml|VIN|PDF|CSV|XLSX|A4|A5|Letter|QR|ISO|JPEG|Ctrl|Alt|Shift|Tab|Esc|Enter|Del)\b|"
    r"/\S*|https?:\S*|\w+\.(?:zip|csv|xlsx|pdf|toml|json)\b"
)


@pytest.fixture
def at(qtbot: QtBot, tmp_path: Path) -> Iterator[Counter]:
    with one_job(qtbot, tmp_path / "shop") as counter:
        counter.window.resize(*SMALL)
        yield counter


def go(at: Counter, place: str) -> QWidget:
    assert at.program.desk is not None
    if place == JOB:
        shown = at.program.desk.parent()
        assert isinstance(shown, Places)
        shown.open_job(1)
    else:
        at.window.go_to(place)
    at.quiet()
    at.bot.wait(100)
    return at.page


def rows(view: QAbstractItemView) -> Iterator[str]:
    """What the first rows of a list or table say, and its headings."""
    model = view.model()
    columns = 1 if isinstance(view, QListView) else model.columnCount(QModelIndex())
    for row in range(min(model.rowCount(), 30)):
        for column in range(columns):
            yield str(model.index(row, column).data() or "")
    for column in range(columns if isinstance(view, QTableView) else 0):
        yield str(model.headerData(column, Qt.Orientation.Horizontal) or "")


def texts(window: QWidget) -> Iterator[tuple[str, str]]:
    """Everything that a page says, to the eye and to a screen reader."""
    for widget in window.findChildren(QWidget):
        if not widget.isVisible():
            continue
        sort = type(widget).__name__
        yield sort, widget.accessibleName()
        yield f"{sort}, tooltip", widget.toolTip()
        if isinstance(widget, QLabel | QAbstractButton):
            yield sort, widget.text()
        if isinstance(widget, QLineEdit | QPlainTextEdit):
            yield f"{sort}, empty", widget.placeholderText()
        if isinstance(widget, QComboBox):
            yield from ((sort, widget.itemText(at)) for at in range(widget.count()))
        elif isinstance(widget, QAbstractItemView):
            yield from ((sort, text) for text in rows(widget))


def was_forgotten(text: str) -> bool:
    for typed in TYPED:
        text = text.replace(typed, "")
    return SIGN not in text and re.search(r"[^\W\d_]{2,}", ALIKE.sub("", text)) is not None


@pytest.mark.skipif(SPOKEN != "marked", reason="only where each spoken text has a sign")
@pytest.mark.parametrize("place", PLACES)
def test_every_text_is_spoken(at: Counter, place: str) -> None:
    go(at, place)
    found = {f"{sort}: {text}" for sort, text in texts(at.window) if was_forgotten(text)}
    assert "\n".join(sorted(found)) == ""


@pytest.mark.skipif(SPOKEN == "marked", reason="the sign takes room that no language takes")
@pytest.mark.parametrize("size", SIZES)
def test_no_words_are_cut_off(at: Counter, size: int, tmp_path: Path) -> None:
    desk = at.program.desk
    assert desk is not None
    desk.do(change_rule, "text_size", size)
    found = {}
    for place in PLACES:
        go(at, place)
        if said := sorted({*cut_off(at.window), *outgrown(at.window)}):
            at.picture(tmp_path, f"{place}-{size}-{SPOKEN}")
            found[place] = said
    assert found == {}


@pytest.mark.skipif(SPOKEN == "marked", reason="the sign takes room that no language takes")
@pytest.mark.parametrize("screen", [AT_150, AT_200])
def test_no_words_are_cut_off_where_pixels_count_more(
    at: Counter, screen: tuple[int, int], tmp_path: Path
) -> None:
    fill(at)
    at.window.resize(*screen)
    found = {}
    for place in PLACES:
        go(at, place)
        if said := sorted({*cut_off(at.window), *outgrown(at.window, screen)}):
            at.picture(tmp_path, f"{place}-{screen[0]}-{SPOKEN}")
            found[place] = said
    assert found == {}


@pytest.mark.skipif(SPOKEN == "marked", reason="the sign is no language")
def test_the_frame_speaks_it(at: Counter) -> None:
    assert ASK != "Ask the Old Jobs"
    assert at.button(tr("A car is here")).isEnabled()

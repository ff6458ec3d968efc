"""Whatever button is off says why, on every place and every page that a job leads to."""

from __future__ import annotations

import re
from collections.abc import Iterator
from datetime import UTC, date, datetime
from html import unescape
from pathlib import Path

import pytest
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QComboBox,
    QFileDialog,
    QLineEdit,
    QListView,
    QWidget,
)
from pytestqt.qtbot import QtBot

from desktop_app.parts_compared.actions import keep_instrument
from desktop_app.repair_jobs.stored import TroubleCode
from desktop_app.returns_watched.customer_actions import note_answer
from desktop_app.shop_window.place_names import ASK, BACK, DRAWER, FIRST_RULES, ON_RAIL, RECORDS
from tests.screens.bench_desk import new_job
from tests.shop_stories.counter import Counter, sitting
from tests.shop_stories.test_photo_bench import plain_photo
from tests.watched_shop import a_week_of_returns

MONDAY = datetime(2026, 11, 16, 8, 0, tzinfo=UTC)
THEIR_NAME_SAYS_WHY = {"Nothing to undo", "Nothing to redo"}
Said = dict[str, dict[bool, set[str]]]  # what is said over each button, on or off


def words_over(button: QWidget) -> str:
    """What is shown over a button: its own words, or those of a box that is off as a whole."""
    around: QWidget | None = button
    while around is not None:
        if around.toolTip() and (around is button or not around.isEnabled()):
            return unescape(re.sub("<[^>]+>", "", around.toolTip()))
        around = around.parentWidget()
    return ""


class Walk:
    """Somebody who goes through the shop and holds the mouse over each button."""

    def __init__(self, at: Counter) -> None:
        self.at = at
        self._said: Said = {}
        self._where: dict[str, str] = {}

    def look(self, where: str) -> None:
        """Hold the mouse over each button that is seen here."""
        inside = (QLineEdit, QComboBox, QAbstractItemView)
        for button in self.at.window.findChildren(QAbstractButton):
            if button.isVisible() and not isinstance(button.parent(), inside):
                name = button.accessibleName() or button.text()
                over = self._said.setdefault(name, {True: set(), False: set()})
                over[button.isEnabled()].add(words_over(button))
                self._where.setdefault(name, where)

    def open_job(self, number: str) -> None:
        """Find a job by its number and open it."""
        self.at.go(ASK)
        self.at.type_into(QLineEdit, "Ask the old jobs", number, enter=True)
        self.at.bot.waitUntil(lambda: self.at.reads(f"{number}   "))
        self.at.quiet()

    def were_off(self) -> set[str]:
        """Return the names of the buttons that were off somewhere."""
        return {name for name, over in self._said.items() if over[False]}

    def without_a_reason(self) -> Iterator[str]:
        """Tell of each that was off and said no more than when it is on, or nothing."""
        for name, over in self._said.items():
            for words in over[False] if name not in THEIR_NAME_SAYS_WHY else ():
                if not words.endswith((".", "…")) or words in over[True] | {name}:
                    yield f"{self._where[name]}: “{name}” says “{words}”"


@pytest.fixture
def walk(qtbot: QtBot, tmp_path: Path) -> Iterator[Walk]:
    with sitting(qtbot, tmp_path / "shop", MONDAY) as at:
        yield Walk(at)


def every_place(walk: Walk) -> None:
    for place in (*ON_RAIL, FIRST_RULES):
        walk.at.window.go_to(place)
        walk.at.quiet()
        walk.look(place)
    walk.at.go(ASK)
    walk.at.press("Our own phrases")
    walk.look(ASK)


def a_week_and_a_photo(at: Counter) -> None:
    """Fill the shop: returns to judge, one told of, a job in the bay with a photo of one part."""
    assert at.program.desk is not None
    record = at.program.desk.record
    ids = a_week_of_returns(record)
    note_answer(record, ids["J-140"], "same trouble", on=date(2026, 11, 3), words="dies again")
    with record.deed("Read a code after the repair") as deed:
        deed.add(
            TroubleCode, job_id=ids["J-104"], code="P0300", kind="stored", stage="after repair"
        )
    plain_photo(at, new_job(record), "distributor-rotor")
    keep_instrument(record, "calliper", "mm", 0.01, 0.03)


def test_where_nothing_is_written_yet(walk: Walk) -> None:
    every_place(walk)
    walk.at.press("A car is here")
    walk.look("a car is here")
    assert "\n".join(walk.without_a_reason()) == ""
    assert {"Next one to judge", "Open the job", "Bring it back into a new folder…"} <= (
        walk.were_off()
    )


def test_at_a_job_and_the_pages_that_it_leads_to(walk: Walk) -> None:
    at = walk.at
    a_week_and_a_photo(at)
    every_place(walk)
    walk.open_job("J-163")
    walk.look("a job in the bay")
    photos = at.find(QListView, "photos of the removed part")
    photos.setCurrentIndex(photos.model().index(0, 0))
    walk.look("with a photo chosen")
    at.press("From a phone: photos of the removed part, distributor rotor")
    walk.look("from a phone")
    at.press("Photo bench: measure in these photos, distributor rotor")
    at.quiet()
    walk.look("the bench")
    walk.open_job("J-104")
    walk.look("a job that left")
    at.press("History…")
    walk.look("the history while it is read")
    at.wait_for("What was done to job J-104")
    walk.look("the history")
    at.press("The sheet for the customer…")
    walk.look("the sheet while it is made")
    at.quiet()
    walk.look("the sheet")
    assert "\n".join(walk.without_a_reason()) == ""
    assert {"Proved: road", "Sealed copy of this job", "Save the sheet as PDF"} <= walk.were_off()


def test_at_returns_an_instrument_and_a_file(
    walk: Walk, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    at = walk.at
    a_week_and_a_photo(at)
    at.go(BACK)
    listed = at.find(QListView, "Returns, what waits")
    for row in range(listed.model().rowCount()):
        listed.setCurrentIndex(listed.model().index(row, 0))
        at.quiet()
        walk.look(f"return {row}")
    at.press("These are two vehicles")
    at.quiet()
    walk.look("two vehicles")
    at.go(DRAWER)
    at.press("Try the chosen one out: gauge study")
    walk.look("a gauge study")
    at.go(RECORDS)
    table = tmp_path / "jobs.csv"
    table.write_text("colour,size\nred,4\n", encoding="utf-8")
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_: (str(table), ""))
    at.press("Choose a file…")
    at.quiet()
    walk.look("a file without job numbers")
    assert "\n".join(walk.without_a_reason()) == ""
    assert {"See what would happen", "Take the judgement back", "Use from now on"} <= (
        walk.were_off()
    )

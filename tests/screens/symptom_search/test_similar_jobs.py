"""Similar jobs stand quietly beside a concern while it is written."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QListView, QPlainTextEdit, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from desktop_app.symptom_search.screen.old_jobs import OldJobs
from desktop_app.symptom_search.screen.similar_jobs import SimilarJobs
from tests.screens.searching import Sought, write_old_jobs

SIMILAR = "Similar jobs"


class Written(Sought):
    """A field of words with the similar jobs beside it."""

    def __init__(self, bot: QtBot, shop: ShopRecord) -> None:
        old = write_old_jobs(shop)
        desk, page = Desk(shop), QWidget()
        super().__init__(bot, desk, page)
        self.words = QPlainTextEdit()
        self.similar = SimilarJobs(desk, OldJobs(shop, lambda: old.words, lambda: old.kinds))
        self.own_job: int | None = None
        self.words.textChanged.connect(
            lambda: self.similar.hear(self.words.toPlainText(), self.own_job)
        )
        column = QVBoxLayout(page)
        column.addWidget(self.words)
        column.addWidget(self.similar)
        bot.addWidget(page)
        page.resize(500, 500)
        page.show()
        page.activateWindow()
        self.words.setFocus()

    def numbers(self) -> list[str]:
        """Return the numbers of the similar jobs that are seen."""
        return [row[:5] for row in self.rows(SIMILAR)]


@pytest.fixture
def at(shop: ShopRecord, qtbot: QtBot) -> Iterator[Written]:
    """An empty concern, in a shop with six old jobs."""
    written = Written(qtbot, shop)
    yield written
    written.desk.errands.finish()


def test_three_similar_jobs_come_and_the_cursor_stays_in_the_words(at: Written) -> None:
    at.bot.keyClicks(at.words, "brakes squeal in the rain")
    at.bot.waitUntil(lambda: len(at.numbers()) == 3)
    assert set(at.numbers()) <= {"J-004", "J-005", "J-006"}
    assert QApplication.focusWidget() is at.words
    at.words.clear()
    assert at.numbers() == []


def test_the_job_itself_is_never_shown(at: Written) -> None:
    at.own_job = 5
    at.bot.keyClicks(at.words, "brakes squeal")
    at.bot.waitUntil(lambda: at.numbers() == ["J-006", "J-004"])


def test_one_word_says_too_little(at: Written) -> None:
    at.bot.keyClicks(at.words, "brakes squeal")
    at.bot.waitUntil(lambda: len(at.numbers()) == 3)
    at.words.selectAll()
    at.bot.keyClicks(at.words, "it squeals")
    at.bot.waitUntil(lambda: at.numbers() == [])


def test_a_click_opens_the_job_and_so_does_enter(at: Written) -> None:
    at.bot.keyClicks(at.words, "brakes squeal")
    at.bot.waitUntil(lambda: len(at.numbers()) == 3)
    found = at.named(QListView, SIMILAR)
    place = found.visualRect(found.model().index(1, 0)).center()
    with at.bot.waitSignal(at.similar.job_chosen) as chosen:
        at.bot.mouseClick(found.viewport(), Qt.MouseButton.LeftButton, pos=place)
    assert f"J-{chosen.args[0]:03}" == at.numbers()[1]
    with at.bot.waitSignal(at.similar.job_chosen) as chosen:
        at.bot.keyClick(found, Qt.Key.Key_Return)
    assert f"J-{chosen.args[0]:03}" == at.numbers()[1]


def test_who_comes_by_a_key_stands_at_the_first_job_and_sees_it(at: Written) -> None:
    at.bot.keyClicks(at.words, "brakes squeal")
    at.bot.waitUntil(lambda: len(at.numbers()) == 3)
    found = at.named(QListView, SIMILAR)
    at.words.setTabChangesFocus(True)
    at.bot.keyClick(at.words, Qt.Key.Key_Tab)
    assert QApplication.focusWidget() is found
    assert [one.row() for one in found.selectedIndexes()] == [0]  # what is chosen is painted so
    at.bot.keyClick(found, Qt.Key.Key_Down)
    assert [one.row() for one in found.selectedIndexes()] == [1]


def test_nothing_moves_when_they_come_and_go(at: Written) -> None:
    before = at.words.geometry()
    at.bot.keyClicks(at.words, "brakes squeal")
    at.bot.waitUntil(lambda: len(at.numbers()) == 3)
    assert at.words.geometry() == before

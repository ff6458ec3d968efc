"""Monday Book opens on the week's figures and on the jobs that somebody has to act on."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import (
    QApplication,
    QLabel,
    QLineEdit,
    QListWidget,
    QPushButton,
    QTableView,
    QWidget,
)
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs.stored_reading import job_by_number
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.look import dress
from desktop_app.shop_window.page import Section
from desktop_app.weekly_report.screen import monday_book_page
from desktop_app.weekly_report.screen.monday_book_page import MondayBookPage
from tests.watched_shop import a_week_of_returns, job, vehicle

WAIT = 20_000  # ms; the library for many rows is read from disk the first time


class Book:
    """The page on a shop, and what is seen of it."""

    def __init__(self, shop: ShopRecord, bot: QtBot) -> None:
        self.shop, self.bot, self.desk = shop, bot, Desk(shop)
        self.page = MondayBookPage(self.desk, {})
        bot.addWidget(self.page)
        self.page.resize(1100, 760)
        self.page.show()
        self.page.came_here()
        self.settle()

    def settle(self) -> None:
        self.bot.waitUntil(lambda: not self.desk.errands.busy(), timeout=WAIT)
        QApplication.processEvents()

    def section(self, heading: str) -> Section:
        [found] = [
            one
            for one in self.page.findChildren(Section)
            if one.accessibleName() == heading and one.isVisible()
        ]
        return found

    def top(self, heading: str) -> int:
        """How far below the page's top a card begins."""
        return self.section(heading).mapTo(self.page, QPoint()).y()

    def says(self, words: str) -> bool:
        return any(words in x.text() for x in self.page.findChildren(QLabel) if x.isVisible())

    def press(self, inside: QWidget, name: str) -> None:
        [button] = [
            b for b in inside.findChildren(QPushButton) if name in (b.accessibleName(), b.text())
        ]
        self.bot.mouseClick(button, Qt.MouseButton.LeftButton)

    def id_of(self, number: str) -> int | None:
        with self.shop.reading() as connection:
            return job_by_number(connection, number)


@pytest.fixture
def book(shop: ShopRecord, qtbot: QtBot) -> Iterator[Book]:
    a_week_of_returns(shop)
    shown = Book(shop, qtbot)
    yield shown
    shown.desk.errands.finish()


def buttons(inside: QWidget) -> list[str]:
    return [b.text() for b in inside.findChildren(QPushButton) if b.isVisible()]


def test_figures_come_first_then_what_is_to_be_done_then_the_sentences(book: Book) -> None:
    order = ("The week", "To act on", "Read first", "Figures")
    assert [book.top(one) for one in order] == sorted(book.top(one) for one in order)
    assert book.top("To act on") < book.page.height() // 2
    shown = buttons(book.section("The week"))
    assert shown[0] == "Handed over: 3"
    assert shown[1:] == ["Left unproven: 1", "Wait for judgement: 2", "Under watch: 6"]
    assert book.says("Comebacks: 0")  # nobody judged any; there is no job to open


def test_a_figure_opens_its_jobs_beneath_it(book: Book) -> None:
    week = book.section("The week")
    book.press(week, "Handed over: 3")
    book.bot.waitUntil(lambda: book.says("3 jobs stand behind “Jobs handed over”."))
    with book.bot.waitSignal(book.page.job_chosen) as chosen:
        book.press(week, "Open the job J-161")
    assert chosen.args == [book.id_of("J-161")]


def test_what_waits_for_a_judgement_is_opened_from_where_it_is_said(book: Book) -> None:
    act = book.section("To act on")
    assert any(x.text() == "To be judged, of any week (3)" for x in act.findChildren(QLabel))
    assert {"J-131", "J-160", "J-162"} <= set(buttons(act))
    with book.bot.waitSignal(book.page.job_chosen) as chosen:
        book.press(act, "Open the job J-131")
    assert chosen.args == [book.id_of("J-131")]


def test_many_customers_to_ask_lead_on_to_the_sheet_with_all_of_them(
    shop: ShopRecord, qtbot: QtBot
) -> None:
    car = [vehicle(shop) for _ in range(12)]
    for number, one in enumerate(car):
        job(shop, one, f"J-{number}", "2026-08-18", "2026-08-18")  # 90 days: 16 November
    book = Book(shop, qtbot)
    act = book.section("To act on")
    assert any("(12)" in x.text() for x in act.findChildren(QLabel))
    assert len({text for text in buttons(act) if text.startswith("J-")}) == 8
    more = next(b for b in act.findChildren(QPushButton) if b.text() == "All: Windows")
    book.bot.mouseClick(more, Qt.MouseButton.LeftButton)
    book.settle()
    table = next(t for t in book.page.findChildren(QTableView) if t.isVisible())
    assert table.accessibleName() == "What became of the year's jobs"
    book.desk.errands.finish()


def test_a_week_with_nothing_to_do_says_so(shop: ShopRecord, qtbot: QtBot) -> None:
    book = Book(shop, qtbot)
    assert book.says("Nothing waits for anybody.")
    book.desk.errands.finish()


def test_a_week_to_come_has_neither_figures_nor_anything_to_do(book: Book) -> None:
    field = book.page.findChild(QLineEdit)
    assert field is not None
    field.selectAll()
    book.bot.keyClicks(field, "2027-W02")
    book.bot.keyClick(field, Qt.Key.Key_Return)
    book.settle()
    assert book.says("This week is still to come")
    assert book.says("6 jobs were under watch on 16 November 2026")
    headings = {x.accessibleName() for x in book.page.findChildren(Section) if x.isVisible()}
    assert headings == {"Read first"}


def test_a_week_that_cannot_be_read_says_so_and_is_read_when_it_is_turned_to_again(
    book: Book, monkeypatch: pytest.MonkeyPatch
) -> None:
    def damaged(*_: object) -> None:
        raise ShopTrouble("A row of the record is damaged.")

    with monkeypatch.context() as broken:
        broken.setattr(monday_book_page, "look_at_week", damaged)
        book.press(book.page, "◀  Week before")
        book.bot.waitUntil(lambda: book.says("2026-W45 was not read. Turn to it once more."))
    book.press(book.page, "◀  Week before")
    book.bot.waitUntil(lambda: book.says("week 2026-W44: Monday 26 October 2026"), timeout=WAIT)


def test_a_sheet_that_cannot_be_worked_out_says_so_and_is_there_when_chosen_once_more(
    book: Book, monkeypatch: pytest.MonkeyPatch
) -> None:
    names = book.page.findChild(QListWidget)
    assert names is not None

    def damaged(*_: object) -> None:
        raise ShopTrouble("A figure is damaged.")

    with monkeypatch.context() as broken:
        broken.setattr(monday_book_page, "week_sheet", damaged)
        names.setCurrentRow(4)
        book.bot.waitUntil(lambda: book.says("“Rate” was not worked out. Choose it once more."))
    names.setCurrentRow(3)
    names.setCurrentRow(4)
    tables = book.page.findChildren
    book.bot.waitUntil(lambda: any(t.isVisible() for t in tables(QTableView)), timeout=WAIT)
    assert not book.says("not worked out")


def test_names_of_sheets_stay_readable_when_the_text_grows(book: Book, app: QApplication) -> None:
    names = book.page.findChild(QListWidget)
    assert names is not None
    dress(app)
    before = names.width()
    dress(app, text_size=24)
    book.bot.waitUntil(lambda: names.width() > before)
    assert names.sizeHintForColumn(0) <= names.viewport().width()

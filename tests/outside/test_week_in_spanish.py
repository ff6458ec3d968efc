"""The week's workbook in Spanish: the same book as the English one, said in other words."""

from __future__ import annotations

from pathlib import Path

import pytest

from desktop_app.returns_watched.customer_actions import note_answer
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record import ShopRecord, create_shop
from tests.conftest import NOON
from tests.outside.recalculated import as_number, recalculated
from tests.watched_shop import a_week_of_returns, judge_return
from tests.weekly_report.book_spoken import Book, check_book, write_book
from tests.weekly_report.year_written import a_year

WEEK = "2026-W46"
pytestmark = pytest.mark.embedded


def fill(shop: ShopRecord) -> None:
    """A year of jobs, and a week in which all is met that a book tells of."""
    a_year(shop)
    ids = a_week_of_returns(shop)
    pair = ids["J-131"], ids["J-160"]
    judge_return(shop, *pair, "same part", why="the tip was loose", cause_class="part-died-early")
    note_answer(shop, ids["J-140"], "same trouble", on=NOON.date().replace(day=13))
    change_rule(shop, "hour_cost_cents", 6_150)


@pytest.fixture(scope="module")
def books(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, Path]:
    folder = tmp_path_factory.mktemp("books")
    shop = create_shop(folder / "shop", lambda: NOON)
    fill(shop)
    shop.close()
    languages = ("en", "es")
    for language in languages:
        (folder / language).mkdir()
    english, spanish = (
        write_book(one, folder / "shop", NOON, WEEK, folder / one / "week.xlsx")
        for one in languages
    )
    return english, spanish


def test_it_is_the_same_book(books: tuple[Path, Path]) -> None:
    check_book(*books)


def test_what_people_typed_stands_as_they_typed_it(books: tuple[Path, Path]) -> None:
    for path in books:
        cells = {cell.value for page in Book(path).results for row in page for cell in row}
        assert {'=HYPERLINK("x") brake pedal is soft', "cap and rotor replaced", "J-161"} <= cells


@pytest.mark.needs_tool("soffice")
def test_an_office_program_works_out_the_same_figures(books: tuple[Path, Path]) -> None:
    book = Book(books[1])
    shown = recalculated(books[1].parent)
    checked = set()
    for number, cell, _ in book.formulas_said():
        name = book.sheets[number]
        kept = book.results[name][cell]
        found = shown[name][kept.row - 1][kept.column - 1]
        assert as_number(found) == as_number(kept.value), (name, cell)
        checked.add(number)
    assert len(checked) > 7

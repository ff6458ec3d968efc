"""The Monday Book of the built demo in Spanish: suppliers, parts and claims are in it too."""

from __future__ import annotations

from pathlib import Path

import pytest

from desktop_app.weekly_report.week import week_of
from tests.demo_shop.built_demo import NOW, Built
from tests.weekly_report.book_spoken import check_book, write_book

pytestmark = pytest.mark.embedded


def test_it_is_the_same_book_in_other_words(built: Built, tmp_path: Path) -> None:
    week = str(week_of(NOW.date()).moved(-1))
    folder = built.record.folder
    books = [
        write_book(language, folder, NOW, week, tmp_path / f"{language}.xlsx")
        for language in ("en", "es")
    ]
    check_book(*books)

"""What a formula, a button or a row speaks of is there: a table, a column, a job."""

from __future__ import annotations

import pytest

from desktop_app.weekly_report.row_jobs import jobs_of_row, stands_for_jobs
from desktop_app.weekly_report.sheet_form import Sheet, Table
from desktop_app.weekly_report.sheets.sheet_words import columns

PAIRS = Table(
    "Pairs",
    columns(("Earlier job", "words"), ("Later job", "words"), ("Days", "count")),
    (("J-1", "K-1", 3), ("J-2", "told 2026-11-11", 4), ("J-3", "J-3", 5), ("J-4", None, 6)),
    behind=((), ("J-2",), (), ()),
)
SUMS = Table(
    "Sums",
    columns(
        ("Cause", "words"),
    ),
    (("worn",), ("new",)),
    behind=(("A", "B"), ()),
)


def test_a_formula_cannot_speak_of_a_column_or_a_table_that_is_not_there() -> None:
    assert PAIRS.reach("Days") == "Pairs[Days]"
    with pytest.raises(KeyError, match="Miles"):
        PAIRS.reach("Miles")
    sheet = Sheet("Sheet", "about", tables=(PAIRS, SUMS))
    assert sheet.table("Sums") is SUMS
    with pytest.raises(KeyError, match="Pair"):
        sheet.table("Pair")


def test_a_row_opens_its_own_job_first_then_those_beside_it_each_once() -> None:
    assert [jobs_of_row(PAIRS, row) for row in (0, 2, 3)] == [("K-1", "J-1"), ("J-3",), ("J-4",)]
    assert not stands_for_jobs(PAIRS, 0)


def test_a_row_that_counts_jobs_opens_to_those_and_one_of_none_to_nothing() -> None:
    assert jobs_of_row(SUMS, 0) == ("A", "B")
    assert stands_for_jobs(SUMS, 0)
    assert jobs_of_row(SUMS, 1) == ()


def test_what_stands_in_the_place_of_a_job_and_is_none_is_never_opened() -> None:
    assert jobs_of_row(PAIRS, 1) == ("J-2",)

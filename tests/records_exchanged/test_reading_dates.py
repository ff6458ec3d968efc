"""Days in any common form; whose order is open is told by the file, or asked about once."""

from __future__ import annotations

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.records_exchanged.column_map import ColumnMap
from desktop_app.records_exchanged.date_order import OrderSeen, read_day
from desktop_app.records_exchanged.date_words import DATE_ORDERS, DateOrder
from desktop_app.records_exchanged.preview import preview
from desktop_app.shop_record.trouble import ShopTrouble
from tests.records_exchanged.tables import column, jobs_of, refused_of, table_of

DAY = date(2025, 3, 4)


@pytest.mark.parametrize(
    "text",
    [
        "2025-03-04",
        "2025/3/4",
        "2025.03.04",
        "20250304",
        "2025-03-04T10:15:00+01:00",
        "2025-03-04 10:15:22.123",
        "2025-03-04T09:15:00Z",
        "4 Mar 2025",
        "4-Mar-25",
        "04MAR2025",
        "4th of March 2025",
        "March 4, 2025",
        "Mar 4th, 2025 3:10 PM",
        "Tue, 4 Mar 2025",
        "4. März 2025",
        "4 mars 2025",
        "4 de marzo de 2025",
        "2025-Mar-04",
        "45720",
        "45720.427",
        " 2025-03-04 ",
    ],
)
def test_a_day_that_can_be_read_in_one_way(text: str) -> None:
    assert read_day(text, None) == DAY


@pytest.mark.parametrize(
    ("text", "order"),
    [
        ("04/03/2025", "day first"),
        ("4.3.2025", "day first"),
        ("4-3-25", "day first"),
        ("04 03 2025", "day first"),
        ("04032025", "day first"),
        ("Tue 04/03/2025 10:15", "day first"),
        ("03/04/2025", "month first"),
        ("3/4/25 2:10 pm", "month first"),
        ("25-03-04", "year first"),
        ("25/03/04", "year first"),
    ],
)
def test_a_day_in_the_order_of_the_file(text: str, order: DateOrder) -> None:
    assert read_day(text, order) == DAY


@pytest.mark.parametrize("text", ["", "  ", "-", "n/a", "0000-00-00", "00.00.0000"])
def test_an_empty_cell_is_no_day(text: str) -> None:
    assert read_day(text, "day first") is None


@pytest.mark.parametrize(
    "text",
    [
        "yesterday",
        "2025-02-30",
        "31/04/2025",
        "1025-03-04",
        "0025-03-04",
        "2025-13-04",
        "٢٠٢٥-٠٣-٠٤",
        "2025-03-04x",
        "12345",
        "99999",
        "12/2025",
        "32/13/2025",
        "4 Foo 2025",
        "2025-03-04 and 5",
    ],
)
def test_what_is_no_day_says_why(text: str) -> None:
    with pytest.raises(ValueError, match=r"day|month|year|several"):
        read_day(text, "day first")


def test_a_day_beyond_the_twelfth_tells_the_order_for_all() -> None:
    days = [job.opened_on for job in jobs_of(column("opened_on", "03/04/2025", "25/12/2024"))]
    assert days == [date(2025, 4, 3), date(2024, 12, 25)]


def test_another_column_tells_as_well() -> None:
    text = "job_number,opened_on,closed_on\nJ-1,03/04/2025,03/25/2025\n"
    assert jobs_of(text)[0].opened_on == date(2025, 3, 4)


def test_what_no_row_tells_is_refused_in_one_line_that_names_the_option() -> None:
    with pytest.raises(ShopTrouble) as refused:
        table_of(column("opened_on", "04/04/2025", "03/04/2025"))
    said = str(refused.value)
    assert "row 3" in said
    assert "“03/04/2025” may be 2025-04-03 or 2025-03-04" in said
    assert 'date_order = "day first" or date_order = "month first"' in said
    assert "\n" not in said


def test_the_answer_counts_for_the_whole_file() -> None:
    text = column("opened_on", "03/04/2025", "13/04/2025")
    laid_down = ColumnMap(date_order="month first")
    (refused,) = refused_of(text, laid_down)
    assert (refused.row, refused.column, refused.value) == (3, "opened_on", "13/04/2025")
    assert "month first" in refused.why


def test_rows_that_contradict_each_other_are_asked_about() -> None:
    with pytest.raises(ShopTrouble, match="contradict"):
        table_of(column("opened_on", "25/03/2025", "03/25/2025", "03/04/2025"))


def test_days_that_are_the_same_either_way_need_no_answer() -> None:
    assert jobs_of(column("opened_on", "04/04/2025"))[0].opened_on == date(2025, 4, 4)


def test_a_file_without_an_open_question_needs_no_order() -> None:
    days = [job.opened_on for job in jobs_of(column("opened_on", "25/03/2025", "03/26/2025"))]
    assert days == [date(2025, 3, 25), date(2025, 3, 26)]


def test_a_day_that_is_in_no_order_one_is_left_to_its_own_row() -> None:
    (refused,) = refused_of(column("opened_on", "03/04/2025", "32/13/2025", "25/12/2024"))
    assert (refused.row, refused.why) == (3, "The calendar has no such day.")


def test_a_year_that_may_lead_is_not_asked_about_where_another_day_ends_in_one() -> None:
    days = [job.opened_on for job in jobs_of(column("opened_on", "04/04/25", "04/04/2025"))]
    assert days == [date(2025, 4, 4), date(2025, 4, 4)]


def test_short_years_are_found_by_their_few_figures() -> None:
    days = [date(2023, 1, 1) + timedelta(days=31 * n) for n in range(24)]
    text = column("opened_on", *(f"{day:%y-%m-%d}" for day in days))
    assert [job.opened_on for job in jobs_of(text)] == days
    text = column("opened_on", *(f"{day:%d/%m/%y}" for day in days))
    assert [job.opened_on for job in jobs_of(text)] == days


def test_one_short_year_is_asked_about() -> None:
    with pytest.raises(ShopTrouble, match="year first"):
        table_of(column("opened_on", "13-01-25"))


@pytest.mark.parametrize(
    ("text", "year"),
    [("13/02/50", 1950), ("13/02/68", 1968), ("13/02/99", 1999), ("13/02/26", 2026)],
)
def test_two_figures_are_a_year_from_1950_to_2049(text: str, year: int) -> None:
    assert read_day(text, "day first") == date(year, 2, 13)


def test_a_day_after_today_is_shown_as_still_to_come() -> None:
    found = table_of(column("opened_on", "2026-11-16", "2026-11-17", "13/02/49")).found
    shown = [row.why[:26] for row in preview(found, date(2026, 11, 16)).rows]
    assert shown == ["", *["This day is still to come:"] * 2]


FORMS = {
    "day first": ("{0:%d/%m/%Y}", "{0.day}.{0.month}.{0.year}", "{0:%d-%m-%Y} 08:30"),
    "month first": ("{0:%m/%d/%Y}", "{0.month}-{0.day}-{0.year}", "{0:%m/%d/%Y} 8:30 am"),
    "year first": ("{0:%Y/%m/%d}", "{0:%Y-%m-%d}", "{0:%Y.%m.%d}"),
}


@given(
    days=st.lists(st.dates(date(1950, 1, 1), date(2100, 12, 31)), min_size=1, max_size=30),
    order=st.sampled_from(DATE_ORDERS),
    form=st.integers(0, 2),
)
def test_a_file_is_never_read_in_another_order_than_it_was_written(
    days: list[date], order: DateOrder, form: int
) -> None:
    cells = [FORMS[order][form].format(day) for day in days]
    seen = OrderSeen()
    for row, cell in enumerate(cells):
        seen.look(cell, row)
    found, question = seen.decided()
    if question is not None:
        assert order in question.choices
        found = order
    assert [read_day(cell, found) for cell in cells] == days

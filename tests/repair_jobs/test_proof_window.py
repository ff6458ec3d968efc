"""The window in the customer's words: from which reading and until when it runs."""

from __future__ import annotations

from dataclasses import replace

import pytest

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.proof_window import window_in_words
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.record import ShopRecord

GIVEN = "90 days or 3,000 miles after the hand-over, whichever comes first."


@pytest.fixture
def left(shop: ShopRecord) -> JobView:
    """A car that left on 13 November 2026 with 83,100 miles; 90 days or 3,000 miles."""
    actions.write_up(shop, WriteUp("misses", plate="TH 1", odometer=83_050))
    with shop.reading() as connection:
        here = read_job(connection, 1)
    window = replace(here, window_days=90, window_miles=3000, window_rule="first")
    return replace(window, left_at="2026-11-13T16:00:00+00:00", odometer_out=83_100)


def test_it_is_given_at_the_hand_over(left: JobView) -> None:
    here = replace(left, left_at=None)
    assert window_in_words(here) == f"{GIVEN} So far: it is given at the hand-over."


def test_it_ends_at_a_reading_or_a_day(left: JobView) -> None:
    assert window_in_words(left) == (
        "Until 86,100 mi (left at 83,100 mi) or 11 February 2027 (90 days), whichever comes first."
    )
    assert window_in_words(replace(left, window_rule="both")) == (
        "Until 86,100 mi (left at 83,100 mi) and 11 February 2027 (90 days) are both past."
    )


def test_a_car_in_kilometres_is_told_in_kilometres(left: JobView) -> None:
    metric = replace(left, vehicle=replace(left.vehicle, odometer_unit="km"))
    assert window_in_words(metric).startswith("Until 87,928 km (left at 83,100 km) or")


def test_an_odometer_that_nobody_read_is_said(left: JobView) -> None:
    unread = replace(left, odometer_out=None)
    assert window_in_words(unread) == (
        "90 days (until 11 February 2027) or 3,000 miles, whichever comes first; odometer not read."
    )
    assert window_in_words(replace(unread, window_days=0)) == (
        "3,000 miles after the hand-over; odometer not read then."
    )


def test_a_limit_that_is_not_there_is_not_said(left: JobView) -> None:
    assert window_in_words(replace(left, window_miles=0)) == "Until 11 February 2027 (90 days)."
    assert window_in_words(replace(left, window_days=0)) == ("Until 86,100 mi (left at 83,100 mi).")
    assert "No limit" in window_in_words(replace(left, window_days=0, window_miles=0))
    months = window_in_words(replace(left, window_months=3))
    assert "11 February 2027 (3 calendar months)" in months


def test_a_window_of_one_limit_alone_says_so_before_it_is_given(left: JobView) -> None:
    here = replace(left, left_at=None)
    so_far = " after the hand-over. So far: it is given at the hand-over."
    assert window_in_words(replace(here, window_miles=0)) == f"90 days{so_far}"
    assert window_in_words(replace(here, window_days=0)) == f"3,000 miles{so_far}"
    one = replace(here, window_miles=0, window_days=1)
    assert window_in_words(one) == f"1 day{so_far}"
    month = replace(here, window_miles=0, window_days=31, window_months=1)
    assert window_in_words(month) == f"1 calendar month{so_far}"
    both = replace(here, window_rule="both")
    assert window_in_words(both).startswith("90 days and 3,000 miles after the hand-over, until")

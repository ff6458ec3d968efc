"""The shop's promise: what is used of it, when it ends, and by what."""

from __future__ import annotations

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.returns_watched.window import (
    LONG_WINDOW,
    MAIN_WINDOW,
    TIME_ONLY,
    ExpectedClose,
    Window,
    expected_close,
)
from desktop_app.shop_record.trouble import ShopTrouble

BOTH = Window(90, 3000, "both")
DAYS_ALONE, MILES_ALONE = Window(90, 0), Window(0, 3000)
OUT = date(2024, 2, 29)

days = st.integers(0, 4000)
miles = st.one_of(st.none(), st.integers(0, 100_000))
windows = st.builds(
    Window, st.integers(1, 3650), st.integers(1, 200_000), st.sampled_from(["first", "both"])
)
any_windows = st.one_of(
    windows,
    st.builds(Window, st.integers(1, 3650), st.just(0), st.sampled_from(["first", "both"])),
    st.builds(Window, st.just(0), st.integers(1, 200_000), st.sampled_from(["first", "both"])),
)


@pytest.mark.parametrize(
    ("apart", "driven", "used", "by"),
    [
        (41, 880, 41 / 90, "time"),
        (41, 2000, 2000 / 3000, "distance"),
        (45, 1500, 0.5, "time"),
        (41, None, 41 / 90, TIME_ONLY),
        (90, 0, 1.0, "time"),
        (90, 3000, 1.0, "time"),
        (0, 0, 0.0, "time"),
    ],
)
def test_the_larger_share_counts(apart: int, driven: int | None, used: float, by: str) -> None:
    assert MAIN_WINDOW.share_used(apart, driven) == used
    assert MAIN_WINDOW.decided_by(apart, driven) == by


def test_the_last_day_and_the_last_mile_are_inside() -> None:
    assert MAIN_WINDOW.in_window(90, 3000)
    assert not MAIN_WINDOW.in_window(91, 3000)
    assert not MAIN_WINDOW.in_window(90, 3000.1)


def test_where_both_must_end_the_smaller_share_counts() -> None:
    assert BOTH.share_used(100, 1500) == 0.5
    assert BOTH.decided_by(100, 1500) == "distance"
    assert BOTH.in_window(100, 1500)
    assert not BOTH.in_window(91, 3001)
    assert BOTH.decided_by(100, None) == TIME_ONLY


def test_what_is_left_is_counted_in_days_and_miles() -> None:
    assert MAIN_WINDOW.days_left(OUT, OUT) == 90
    assert MAIN_WINDOW.days_left(OUT, date(2024, 5, 29)) == 0
    assert MAIN_WINDOW.last_day(OUT) == date(2024, 5, 29)
    assert LONG_WINDOW.last_day(OUT) == date(2025, 2, 28)
    assert MAIN_WINDOW.miles_left(880) == 2120
    assert MAIN_WINDOW.miles_left(None) is None


@pytest.mark.parametrize(
    ("days_", "miles_"), [(0, 0), (-1, 3000), (90, -1), (90, float("nan")), (0, float("nan"))]
)
def test_a_window_of_nothing_is_refused(days_: int, miles_: float) -> None:
    with pytest.raises(ShopTrouble, match="at least 1 day"):
        Window(days_, miles_)


@pytest.mark.parametrize(
    ("window", "rate", "known", "expected"),
    [
        (MAIN_WINDOW, None, None, ExpectedClose(date(2024, 5, 29), "time")),
        (MAIN_WINDOW, 0.0, None, ExpectedClose(date(2024, 5, 29), "time")),
        (MAIN_WINDOW, 10.0, None, ExpectedClose(date(2024, 5, 29), "time")),
        (MAIN_WINDOW, 100.0, None, ExpectedClose(date(2024, 3, 30), "distance")),
        (MAIN_WINDOW, 1e-9, None, ExpectedClose(date(2024, 5, 29), "time")),
        (
            MAIN_WINDOW,
            100.0,
            (date(2024, 3, 10), 2900),
            ExpectedClose(date(2024, 3, 11), "distance"),
        ),
        (
            MAIN_WINDOW,
            None,
            (date(2024, 3, 10), 3100),
            ExpectedClose(date(2024, 3, 10), "distance"),
        ),
        (BOTH, 100.0, None, ExpectedClose(date(2024, 5, 29), "time")),
        (BOTH, 20.0, None, ExpectedClose(date(2024, 7, 28), "distance")),
        (BOTH, None, None, ExpectedClose(date(2024, 5, 29), "time")),
        (BOTH, 1e-9, None, None),
        (DAYS_ALONE, 500.0, None, ExpectedClose(date(2024, 5, 29), "time")),
        (MILES_ALONE, 100.0, None, ExpectedClose(date(2024, 3, 30), "distance")),
        (MILES_ALONE, None, None, None),
        (
            MILES_ALONE,
            None,
            (date(2024, 3, 10), 3100),
            ExpectedClose(date(2024, 3, 10), "distance"),
        ),
    ],
)
def test_when_a_window_will_probably_end(
    window: Window,
    rate: float | None,
    known: tuple[date, float] | None,
    expected: ExpectedClose | None,
) -> None:
    assert expected_close(OUT, window, rate, known) == expected


@given(any_windows, days, miles)
def test_more_days_and_miles_never_use_less(window: Window, apart: int, driven: int | None) -> None:
    used = window.share_used(apart, driven)
    if used is None:
        assert (window.days, driven) == (0, None)
        assert window.decided_by(apart, driven) == "not decided: odometer unknown"
        assert window.in_window(apart, driven)
        return
    longer = window.share_used(apart + 1, driven)
    assert longer is not None
    assert longer >= used
    if driven is not None:
        further = window.share_used(apart, driven + 1)
        assert further is not None
        assert further >= used
    assert window.in_window(apart, driven) == (used <= 1)


@given(windows, days, miles)
def test_a_limit_taken_away_never_loses_a_visit(
    window: Window, apart: int, driven: int | None
) -> None:
    first = Window(window.days, window.miles)
    if first.in_window(apart, driven):
        assert Window(0, first.miles).in_window(apart, driven)
        assert Window(first.days, 0).in_window(apart, driven)


def test_a_limit_that_is_not_there_says_nothing() -> None:
    assert DAYS_ALONE.decided_by(41, 2000) == DAYS_ALONE.decided_by(41, None) == "time"
    assert MILES_ALONE.decided_by(41, 2000) == "distance"
    assert DAYS_ALONE.miles_left(2000) is None
    assert MILES_ALONE.days_left(OUT, OUT) is None
    assert MILES_ALONE.last_day(OUT) is None
    assert MILES_ALONE.share_used(4000, None) is None


@given(windows, days, miles, st.integers(0, 500), st.integers(0, 5000))
def test_a_wider_window_never_loses_a_visit(
    window: Window, apart: int, driven: int | None, more_days: int, more_miles: int
) -> None:
    wider = Window(window.days + more_days, window.miles + more_miles, window.rule)
    assert wider.in_window(apart, driven) or not window.in_window(apart, driven)


@given(days, miles)
def test_whichever_ends_first_is_never_longer_than_both(apart: int, driven: int | None) -> None:
    assert BOTH.in_window(apart, driven) or not MAIN_WINDOW.in_window(apart, driven)


@given(st.dates(date(1990, 1, 1), date(2090, 1, 1)), st.integers(1, 3650))
def test_a_window_is_open_on_its_last_day_and_not_after(out: date, length: int) -> None:
    window = Window(length, 3000)
    last = window.last_day(out)
    assert window.in_window((last - out).days, None)
    assert not window.in_window((last + timedelta(days=1) - out).days, None)
    assert window.days_left(out, last) == 0

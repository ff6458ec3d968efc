"""When a window will probably end: bounds by distance, cut off by time, or the other way round."""

from __future__ import annotations

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.repair_jobs.rate_of_use import RateOfUse, Stretch, driven_by, rate_of_use
from desktop_app.returns_watched.plane_path import plane_path
from desktop_app.returns_watched.watch_end import ProbableEnd, probable_end
from desktop_app.returns_watched.watch_words import ends_in_words, in_one_breath, left_in_words
from desktop_app.returns_watched.watching import WatchedJob
from desktop_app.returns_watched.window import Window

OUT = date(2026, 10, 1)
USE = rate_of_use([Stretch(200, 10_000)])  # close to 50 miles a day


def watched(window: Window, today: date, known: tuple[date, float] | None) -> WatchedJob:
    ends = probable_end(OUT, window, USE, known)
    gone = None if known is None else known[1]
    return WatchedJob(
        job_id=1,
        job="J-1",
        vehicle="van",
        concern="stalls.",
        left_on=OUT,
        window=window,
        days_gone=(today - OUT).days,
        miles_gone=gone,
        read_on=None if known is None else known[0],
        days_left=window.days_left(OUT, today),
        miles_left=window.miles_left(gone),
        ends=ends,
        use=USE,
        known=known,
    )


def test_distance_gives_bounds_and_time_cuts_them_off() -> None:
    by_distance = driven_by(OUT, 3000, USE)
    ends = probable_end(OUT, Window(90, 3000), USE, (OUT, 0.0))
    assert ends is not None
    assert (ends.on, ends.earliest) == (by_distance.on, by_distance.earliest)
    assert ends.by == "distance"
    assert ends.latest == min(by_distance.latest, date(2026, 12, 30))


def test_both_ends_with_the_later_and_never_before_its_time() -> None:
    ends = probable_end(OUT, Window(30, 3000, "both"), USE, (OUT, 0.0))
    assert ends is not None
    assert ends.earliest >= date(2026, 10, 31)
    assert ends.by == "distance"


@pytest.mark.parametrize(
    ("window", "known", "on"),
    [
        (Window(90, 0), (OUT, 0.0), date(2026, 12, 30)),
        (Window(90, 3000), None, date(2026, 12, 30)),
        (Window(90, 3000, "both"), None, date(2026, 12, 30)),
        (Window(0, 3000), None, None),
        (Window(90, 3000), (date(2026, 10, 20), 3000.0), date(2026, 10, 20)),
    ],
)
def test_what_is_certain_or_cannot_be_said(
    window: Window, known: tuple[date, float] | None, on: date | None
) -> None:
    ends = probable_end(OUT, window, USE, known)
    if on is None:
        assert ends is None
    else:
        assert ends is not None
        assert ends.certain
        assert ends.on == on


@given(
    days=st.integers(0, 900),
    miles=st.integers(0, 40_000),
    both=st.booleans(),
    gone=st.integers(0, 40_000),
    rate=st.floats(0.5, 300),
    sold=st.integers(0, 1000),
)
def test_bounds_hold_the_day_and_a_sale_ends_it(
    days: int, miles: int, both: bool, gone: int, rate: float, sold: int
) -> None:
    if days + miles == 0:
        return
    use: RateOfUse = rate_of_use([Stretch(100, 100 * rate)])
    window = Window(days, miles, "both" if both else "first")
    ends = probable_end(OUT, window, use, (OUT + timedelta(days=9), gone))
    assert ends is not None
    assert ends.earliest <= ends.on <= ends.latest
    last = window.last_day(OUT)
    if last is not None and window.rule == "first":
        assert ends.latest <= last
    sale = OUT + timedelta(days=sold)
    cut = ends.not_after(sale)
    assert cut.latest <= sale or cut == ends
    assert cut.earliest <= cut.on <= cut.latest


@pytest.mark.parametrize(
    ("first", "last", "says"),
    [
        (date(2027, 1, 3), date(2027, 1, 20), "3 to 20 Jan 2027"),
        (date(2027, 1, 3), date(2027, 3, 5), "3 Jan to 5 Mar 2027"),
        (date(2026, 12, 28), date(2027, 1, 5), "28 Dec 2026 to 5 Jan 2027"),
        (date(2027, 1, 3), date(2027, 1, 3), "3 Jan 2027"),
        (date(2027, 1, 3), date(2060, 1, 3), "not before 3 Jan 2027"),
    ],
)
def test_a_span_of_days_in_few_words(first: date, last: date, says: str) -> None:
    assert ends_in_words(ProbableEnd(first, first, last, "distance")) == says


@pytest.mark.parametrize(
    ("window", "today", "known", "says"),
    [
        (Window(90, 3000), date(2026, 10, 5), (OUT, 0.0), "It probably ends between"),
        (Window(90, 3000), date(2026, 12, 20), (OUT, 0.0), "It may have ended since"),
        (Window(0, 3000), date(2027, 12, 20), (OUT, 0.0), "By its usual use it ended between"),
        (Window(90, 3000), date(2026, 10, 5), None, "Time alone counts"),
        (Window(0, 3000), date(2026, 10, 5), None, "the odometer cannot say how far"),
        (Window(90, 0), date(2026, 10, 5), (OUT, 0.0), "It ends 30 December 2026, by time."),
    ],
)
def test_the_sentence_says_what_is_known(
    window: Window, today: date, known: tuple[date, float] | None, says: str
) -> None:
    one = watched(window, today, known)
    said = " ".join(in_one_breath(one, "mi", today))
    assert says in said
    assert ".." not in said


def test_what_is_left_says_what_is_no_limit_and_what_is_not_known() -> None:
    no_time = watched(Window(0, 3000), OUT, (OUT, 0.0))
    no_odometer = watched(Window(90, 3000), OUT, None)
    no_distance = watched(Window(90, 0), OUT, None)
    assert left_in_words(no_time, "mi") == "no time limit, 3,000 mi"
    assert left_in_words(no_odometer, "mi") == "90 days, mi not known"
    assert left_in_words(no_distance, "mi") == "90 days"


def test_the_way_in_the_plane_runs_from_the_reading_to_where_the_distance_ends() -> None:
    today = OUT + timedelta(days=45)
    read_on = OUT + timedelta(days=9)
    one = watched(Window(90, 3000), today, (read_on, 600.0))
    path = plane_path(one, today)
    assert path.read == (0.1, 0.2)
    assert path.spot[0] == 0.5
    # 36 days on from 600 miles, of 3,000.
    assert path.spot[1] == pytest.approx((600 + 36 * USE.miles_a_day) / 3000)
    assert path.ahead is not None
    on, early, late = path.ahead
    assert early[0] < on[0] < late[0]
    assert {on[1], early[1], late[1]} == {1.0}


@pytest.mark.parametrize(
    ("window", "known", "spot"),
    [
        (Window(90, 0), (OUT, 0.0), (0.5, None)),
        (Window(90, 3000), None, (0.5, None)),
        (Window(0, 3000), None, (None, None)),
    ],
)
def test_what_has_no_place_in_the_plane_says_so(
    window: Window, known: tuple[date, float] | None, spot: tuple[float | None, float | None]
) -> None:
    today = OUT + timedelta(days=45)
    one = watched(window, today, known)
    path = plane_path(one, today)
    assert path.spot == spot
    assert path.read is None


def test_a_window_without_days_has_its_place_by_distance_alone() -> None:
    today = OUT + timedelta(days=45)
    path = plane_path(watched(Window(0, 3000), today, (OUT, 0.0)), today)
    assert path.spot == (None, pytest.approx(45 * USE.miles_a_day / 3000))
    assert (path.read, path.ahead) == (None, None)


def test_a_distance_that_is_used_up_lies_not_ahead() -> None:
    today, read_on = OUT + timedelta(days=45), OUT + timedelta(days=9)
    path = plane_path(watched(Window(90, 3000), today, (read_on, 3000.0)), today)
    assert path.read == (0.1, 1.0)
    assert path.ahead is None


def test_the_share_used_is_that_of_what_is_known() -> None:
    today = OUT + timedelta(days=45)
    assert watched(Window(90, 3000), today, (OUT, 2400.0)).share_used == 0.8
    assert watched(Window(90, 3000), today, None).share_used == 0.5
    assert watched(Window(0, 3000), today, None).share_used == 0.0

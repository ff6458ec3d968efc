"""Where a job stands, from the first words to the end of its window."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from desktop_app.returns_watched.honest_numbers.counted_jobs import NO_LAST_DAY
from desktop_app.returns_watched.many_visits.last_known import LastKnown
from desktop_app.returns_watched.many_visits.visit_columns import NO_DAY
from desktop_app.returns_watched.many_visits.windows_over import Promised, counted_days, open_days
from desktop_app.returns_watched.standing import (
    JobCourse,
    Sighting,
    Standing,
    open_until,
    stands,
    window_is_open,
)
from desktop_app.returns_watched.window import MAIN_WINDOW, Window

OUT = date(2026, 3, 2)
LEFT = JobCourse(MAIN_WINDOW, True, True, OUT)


def after(days: int) -> date:
    return OUT + timedelta(days=days)


def seen(days: int, miles: float | None = None) -> JobCourse:
    return replace(LEFT, sightings=(Sighting(after(days), miles),))


@pytest.mark.parametrize(
    ("course", "day", "standing"),
    [
        (JobCourse(MAIN_WINDOW), 0, "heard"),
        (JobCourse(MAIN_WINDOW, on_bench=True), 0, "on the bench"),
        (JobCourse(MAIN_WINDOW, on_bench=True, back_on=True), 0, "back on"),
        (LEFT, -1, "back on"),
        (LEFT, 0, "under watch"),
        (LEFT, 90, "under watch"),
        (LEFT, 91, "nothing heard"),
        (seen(60, 2000), 120, "nothing heard"),
        (seen(110, 3180), 120, "seen fine"),
        (seen(110), 120, "seen fine"),
        (seen(110), 100, "nothing heard"),
        (seen(40, 3001), 41, "seen fine"),
        (seen(40, 3000), 41, "under watch"),
        (replace(LEFT, came_back=True), 120, "came back"),
        (replace(seen(110), came_back=True), 120, "came back"),
        (replace(LEFT, waits=True), 120, "under watch"),
        (replace(LEFT, lost_on=after(50)), 51, "lost sight"),
        (replace(LEFT, lost_on=after(50)), 49, "under watch"),
        (replace(LEFT, lost_on=after(100)), 120, "nothing heard"),
    ],
)
def test_where_a_job_stands(course: JobCourse, day: int, standing: str) -> None:
    assert stands(course, after(day)) is Standing(standing)


def test_the_window_is_open_on_its_last_day_and_last_mile() -> None:
    assert window_is_open(LEFT, after(90))
    assert not window_is_open(LEFT, after(91))
    assert not window_is_open(LEFT, after(-1))
    assert window_is_open(seen(40, 3000), after(41))
    assert not window_is_open(seen(40, 3001), after(41))
    assert not window_is_open(JobCourse(MAIN_WINDOW), OUT)


def test_where_both_must_end_only_miles_that_were_read_end_the_window() -> None:
    both = replace(LEFT, window=Window(90, 3000, "both"))
    assert stands(both, after(900)) is Standing.UNDER_WATCH
    little = replace(both, sightings=(Sighting(after(200), 500), Sighting(after(300))))
    assert stands(little, after(301)) is Standing.UNDER_WATCH
    far = replace(both, sightings=(Sighting(after(200), 3001),))
    assert window_is_open(far, after(199))
    assert stands(far, after(200)) is Standing.SEEN_FINE
    early = replace(both, sightings=(Sighting(after(40), 3001),))
    assert stands(early, after(90)) is Standing.UNDER_WATCH
    assert stands(early, after(91)) is Standing.NOTHING_HEARD


def test_a_window_without_a_limit_in_time_ends_when_its_miles_are_read() -> None:
    miles = replace(LEFT, window=Window(0, 3000))
    assert stands(miles, after(900)) is Standing.UNDER_WATCH
    read = replace(miles, sightings=(Sighting(after(500), 3200),))
    assert stands(read, after(500)) is Standing.SEEN_FINE


def test_time_alone_ends_a_window_whose_miles_nobody_can_follow() -> None:
    lost = replace(LEFT, window=Window(90, 3000, "both"), followed=False)
    assert stands(lost, after(91)) is Standing.NOTHING_HEARD
    assert stands(replace(lost, window=Window(0, 3000)), after(900)) is Standing.UNDER_WATCH


def test_a_return_after_the_window_is_no_sighting_that_all_is_well() -> None:
    back = replace(seen(95), came_later=True)
    assert stands(back, after(120)) is Standing.CAME_LATER
    assert stands(replace(back, not_ours=True), after(120)) is Standing.NOT_OURS
    assert stands(replace(back, came_back=True), after(120)) is Standing.CAME_BACK


@given(
    st.sampled_from([0, 30, 90]),
    st.sampled_from([0, 1000, 3000]),
    st.booleans(),
    st.none() | st.tuples(st.integers(1, 200), st.integers(0, 5000)),
    st.booleans(),
    st.none() | st.integers(1, 200),
)
def test_many_windows_end_as_one_does(
    days: int,
    miles: int,
    both: bool,
    read: tuple[int, int] | None,
    lost: bool,
    gone: int | None,
) -> None:
    assume(days + miles > 0)
    out = np.array([OUT.toordinal()], dtype=np.int32)
    day = np.array([NO_DAY if read is None else OUT.toordinal() + read[0]], dtype=np.int32)
    far = np.array([np.nan if read is None else read[1]])
    known = LastKnown(day, far, day, np.array([lost]))
    gone_on = np.array([NO_DAY if gone is None else OUT.toordinal() + gone], dtype=np.int32)
    promised = Promised(np.array([days]), np.array([float(miles)]), np.array([both]))
    [found] = open_days(promised, out, known, gone_on).tolist()
    seen_by = (
        None if read is None or (gone or 999) <= read[0] else Sighting(after(read[0]), read[1])
    )
    window = Window(days, miles, "both" if both else "first")
    last = open_until(window, OUT, seen_by, followed=not lost)
    assert found == (NO_LAST_DAY if last is None else (last - OUT).days)
    [counted] = counted_days(promised, np.array([found])).tolist()
    assert counted == found if window.may_stay_open else counted == days

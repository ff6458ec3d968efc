"""Where a job stands, from the first words to the end of its window."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest

from desktop_app.returns_watched.standing import (
    JobCourse,
    Sighting,
    Standing,
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


def test_where_both_must_end_a_car_that_stands_still_stays_under_watch() -> None:
    slow = replace(LEFT, window=Window(90, 3000, "both"), rate=10.0)
    assert stands(slow, after(300)) is Standing.UNDER_WATCH
    assert stands(slow, after(301)) is Standing.NOTHING_HEARD
    assert stands(replace(slow, rate=None), after(91)) is Standing.NOTHING_HEARD
    read = replace(slow, sightings=(Sighting(after(100), 1000),))
    assert stands(read, after(150)) is Standing.UNDER_WATCH

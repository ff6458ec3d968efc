"""The plane's words: a mark's name beside it, the scales in as many words as there is room for."""

from __future__ import annotations

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QPointF

from desktop_app.returns_watched.screen.plane_frame import (
    LANE,
    PlaneFrame,
    least_height,
    scale_words,
)
from desktop_app.returns_watched.screen.plane_letters import PlaneLetters
from desktop_app.returns_watched.watching import WatchedJob
from desktop_app.returns_watched.window import Window

JOB = WatchedJob(
    job_id=1,
    job="J-104",
    vehicle="",
    concern="",
    left_on=date(2026, 9, 2),
    window=Window(90, 3000),
    days_gone=75,
    miles_gone=None,
    read_on=None,
    known=(date(2026, 9, 2), 0.0),
    days_left=15,
    miles_left=None,
    ends=None,
)


@given(
    st.floats(300, 900),
    st.floats(230, 700),
    st.floats(0, 1.2),
    st.floats(0, 1.2),
    st.floats(30, 90),
)
def test_a_name_stands_inside_the_plane(
    width: float, height: float, days: float, far: float, wide: float
) -> None:
    frame = PlaneFrame(width, height)
    square, at = frame.square, frame.point((days, far))
    box = frame.beside(at, wide, 20)
    assert square.top() < box.top()
    assert box.bottom() <= square.bottom() + LANE
    assert box.left() >= 0
    assert box.right() <= width
    assert not box.contains(QPointF(at))


@given(st.floats(0.2, 0.8), st.floats(0.3, 0.9), st.floats(15, 40))
def test_a_name_leaves_the_marks_beside_it_in_sight(days: float, far: float, line: float) -> None:
    frame = PlaneFrame(900, 600, PlaneLetters(line, 3 * line))
    at = frame.point((days, far))
    usual = frame.beside(at, 4 * line, line)
    others = [usual.center(), usual.center() + QPointF(line, 0)]
    box = frame.beside(at, 4 * line, line, others)
    assert not any(box.contains(one) for one in others)


@given(st.floats(15, 45))
def test_the_scales_have_their_room_however_large_the_letters(line: float) -> None:
    letters = PlaneLetters(line, 3.5 * line)
    frame = PlaneFrame(900, least_height(letters), letters)
    square = frame.square
    assert square.left() - frame.lane >= letters.aside
    assert square.top() >= line
    assert frame.lane >= line
    assert frame.height - square.bottom() - frame.lane >= 2 * line
    steps = [frame.straight(0, step).y() for step in (1, 2 / 3, 1 / 3)]
    assert square.bottom() - line >= steps[-1] + line / 2 - 1  # "0%" stands above its line
    assert steps[1] - steps[0] >= line


@pytest.mark.parametrize(
    ("unit", "up", "along"),
    [
        ("mi", "miles driven, of its window (J-104: 3,000 miles)", "days gone"),
        ("km", "km driven, of its window (J-104: 4,828 km)", "days gone"),
    ],
)
def test_a_scale_is_said_in_fewer_words_where_there_is_less_room(
    unit: str, up: str, along: str
) -> None:
    upright, level = scale_words(JOB, "km" if unit == "km" else "mi")
    assert (upright[0], level[-1]) == (up, along)
    assert level[:2] == ("days gone, of its window (J-104: 90 days)", "days gone (J-104: 90 days)")
    assert [len(one) for one in upright] == sorted(map(len, upright), reverse=True)

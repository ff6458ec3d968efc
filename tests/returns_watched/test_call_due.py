"""The day from which on a customer is to be asked, held to the list of whom to ask."""

from __future__ import annotations

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.returns_watched.ask_list import JobBeside, whom_to_ask
from desktop_app.returns_watched.call_due import call_due
from desktop_app.returns_watched.customer_answers import Answer, CustomerSaid
from desktop_app.returns_watched.proved_by_time import proved_by_time, said_by_time
from desktop_app.returns_watched.standing import Standing
from desktop_app.returns_watched.watch_end import ProbableEnd
from desktop_app.returns_watched.watching import WatchedJob
from desktop_app.returns_watched.window import Window

OUT = date(2026, 9, 1)
END = date(2026, 11, 30)


def on_watch(gone: int = 0, ends: date | None = END, **more: object) -> WatchedJob:
    fields: dict[str, object] = {
        "job_id": 1,
        "job": "J-1",
        "vehicle": "estate",
        "concern": "misses",
        "left_on": OUT,
        "window": Window(90, 3000),
        "days_gone": gone,
        "miles_gone": None,
        "read_on": None,
        "days_left": 90 - gone,
        "miles_left": None,
        "ends": None if ends is None else ProbableEnd(ends, ends, ends, "time"),
        **more,
    }
    return WatchedJob(**fields)  # type: ignore[arg-type]


def said(answer: Answer, days: int = 10) -> CustomerSaid:
    return CustomerSaid(1, 1, OUT + timedelta(days=days), answer)


NOW_AND_THEN = JobBeside(now_and_then=True, proof_level=2)


@pytest.mark.parametrize(
    ("job", "own", "due"),
    [
        (on_watch(), JobBeside(), date(2026, 11, 23)),
        (on_watch(), NOW_AND_THEN, date(2026, 9, 15)),
        (on_watch(), JobBeside(now_and_then=True, proof_level=4), date(2026, 11, 23)),
        (on_watch(seen_on=date(2026, 10, 1)), JobBeside(), None),
        (on_watch(ends=None), JobBeside(), None),
        (on_watch(ends=OUT + timedelta(days=3)), JobBeside(), OUT),
        (on_watch(came_back=True), NOW_AND_THEN, None),
        (on_watch(waits=True), NOW_AND_THEN, None),
        (on_watch(waits=True, told_since=date(2026, 10, 2)), JobBeside(), date(2026, 10, 2)),
        (on_watch(), JobBeside(answers=(said(Answer.FINE),)), None),
        (on_watch(), JobBeside(answers=(said(Answer.NOT_REACHED),)), date(2026, 11, 23)),
    ],
)
def test_when_a_call_is_due(job: WatchedJob, own: JobBeside, due: date | None) -> None:
    assert call_due(job, own, 14) == due


@given(
    gone=st.integers(0, 120),
    ends=st.none() | st.integers(0, 150).map(lambda days: OUT + timedelta(days=days)),
    seen=st.none() | st.just(OUT),
    marks=st.tuples(st.booleans(), st.booleans(), st.booleans()),
    level=st.sampled_from((None, 0, 2, 4)),
    answer=st.none() | st.sampled_from((Answer.FINE, Answer.NOT_REACHED)),
    after=st.integers(1, 60),
)
def test_a_call_is_due_where_the_list_names_the_job(
    gone: int,
    ends: date | None,
    seen: date | None,
    marks: tuple[bool, bool, bool],
    level: int | None,
    answer: Answer | None,
    after: int,
) -> None:
    came_back, waits, now_and_then = marks
    today = OUT + timedelta(days=gone)
    job = on_watch(gone, ends, seen_on=seen, came_back=came_back, waits=waits)
    # The day before it left: whoever was tried today is listed again tomorrow, and still due.
    answers = () if answer is None else (said(answer, -1),)
    own = JobBeside(now_and_then=now_and_then, proof_level=level, answers=answers)
    listed = bool(whom_to_ask([job], {1: own}, today, after))
    due = call_due(job, own, after)
    assert listed == (due is not None and due <= today)


def test_time_proves_what_was_seen_fine_and_nothing_else() -> None:
    proved = [standing for standing in Standing if proved_by_time(standing) is not None]
    assert proved == [Standing.SEEN_FINE]
    assert said_by_time("seen fine").startswith("Proof 5, time: the car was seen fine after its ")
    assert said_by_time("nothing heard") == ""

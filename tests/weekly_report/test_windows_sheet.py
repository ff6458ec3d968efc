"""Sheet “Windows”: of a window that may be over nobody says that it is open."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from typing import Any, Literal

from desktop_app.returns_watched.watch_end import ProbableEnd
from desktop_app.returns_watched.watching import WatchedJob
from desktop_app.returns_watched.window import Window
from desktop_app.weekly_report.pages import week_sheet
from tests.weekly_report.test_beside_rates import rows_of
from tests.weekly_report.year_made import LAST, figures


def on_watch(
    number: str, ends_in: int | None, by: Literal["time", "distance"] = "time", **more: Any
) -> WatchedJob:
    """A job whose window probably ends so many days after the week's Sunday."""
    fields: dict[str, Any] = {
        "window": Window(90, 3000),
        "miles_gone": None,
        "read_on": None,
        "days_left": 10,
        "miles_left": None,
        **more,
    }
    end = None if ends_in is None else LAST + timedelta(days=ends_in)
    ends = None if end is None else ProbableEnd(end, end, end, by)
    left = LAST - timedelta(days=80)
    return WatchedJob(1, number, "car", "stalls", left, days_gone=80, ends=ends, **fields)


def watched(*jobs: WatchedJob, due: dict[str, date] | None = None) -> dict[str, dict[str, Any]]:
    found = replace(figures([]), on_watch=jobs, calls_due=due or {})
    rows = rows_of(week_sheet(found, "Windows").table("UnderWatch"))
    return {row["Job"]: row for row in rows}


def test_a_window_whose_probable_end_lies_behind_may_have_ended() -> None:
    rows = watched(
        on_watch("today", 0),
        on_watch("time", -1),
        on_watch("miles", -1, "distance"),
        on_watch("never", None),
    )
    assert {job: row["State"] for job, row in rows.items()} == {
        **{"today": "open", "time": "may have ended by time"},
        **{"miles": "may have ended by distance", "never": "open"},
    }
    assert rows["time"]["This week"] == rows["miles"]["This week"] == "may have ended"
    assert rows["never"]["Expected end"] == "not known"


def test_a_judged_or_waiting_return_says_more_than_the_windows_end() -> None:
    rows = watched(on_watch("back", -1, came_back=True), on_watch("waits", -1, waits=True))
    assert [row["State"] for row in rows.values()] == ["came back", "to be judged"]


def test_this_week_says_what_ends_soon_and_whom_to_ask() -> None:
    due = {"soon": LAST, "later": LAST, "over": LAST, "quiet": LAST + timedelta(days=1)}
    rows = watched(
        *(on_watch("soon", 7), on_watch("later", 8), on_watch("over", -3)),
        *(on_watch("quiet", 40), on_watch("ends", 0)),
        due=due,
    )
    assert {job: row["This week"] for job, row in rows.items()} == {
        **{"soon": "ends: ask", "later": "ask", "over": "may have ended: ask"},
        **{"quiet": "", "ends": "ends"},
    }


def test_how_far_it_may_still_go_is_said_or_why_nobody_knows() -> None:
    rows = watched(
        on_watch("read", 9, miles_gone=1000.0, miles_left=2000.0, read_on=LAST),
        on_watch("not since", 9, read_on=LAST),
        on_watch("never", 9),
        on_watch("by days", 9, window=Window(90, 0)),
    )
    said = {job: (row["Miles left (last read)"], row["Read on"]) for job, row in rows.items()}
    assert said == {
        **{"read": (2000, LAST), "not since": ("not read", None)},
        **{"never": ("not known", None), "by days": ("no such limit", None)},
    }

"""The sentences at the front of the week's report: what it covers, the counts, how to read it."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from desktop_app.repair_jobs.distance import from_miles
from desktop_app.repair_jobs.odometer_questions import day_in_words

if TYPE_CHECKING:
    from desktop_app.weekly_report.figures import WeekFigures

DAYS_TO_JUDGE = 14  # after so many days a visit has waited too long; common practice, no source
FEW_JOBS = 20  # below this no share is worth printing; common practice, no source


def read_first(figures: WeekFigures) -> tuple[str, ...]:
    """Return the sentences in the order in which they are read."""
    return (*_covers(figures), *_counts(figures), *_warnings(figures))


def _covers(figures: WeekFigures) -> Iterator[str]:
    week, shop = figures.week, figures.shop
    yield (
        f"{shop.name}, week {week}: Monday {day_in_words(week.monday)} to "
        f"Sunday {day_in_words(week.sunday)}."
    )
    yield f"Made on {day_in_words(figures.made_at.date())} at {figures.made_at:%H:%M}."
    if figures.as_of < week.monday:
        yield "This week is still to come, so nothing stands in it yet."
    elif figures.as_of < week.sunday:
        yield f"The week is not over; it was looked at on {day_in_words(figures.as_of)}."
    unit = "miles" if shop.distance_unit == "mi" else "kilometres"
    far = f"{from_miles(shop.window_miles, shop.distance_unit):,.0f}"
    if shop.window_rule == "first":
        promise = f"{shop.window_days} days or {far} {unit}, whichever ends first"
    else:
        promise = f"{shop.window_days} days and {far} {unit}, until both have ended"
    yield f"The shop's window after a hand-over: {promise}. A job can carry its own."


def _counts(figures: WeekFigures) -> Iterator[str]:
    counted = sum(job.counted for job in figures.left)
    yield (
        f"{_jobs(len(figures.left))} left in the week, {counted} with a cause and a correction; "
        "only those are counted."
    )
    comebacks, waiting = figures.counted_as("comeback"), figures.counted_as("waiting")
    verb = "was" if comebacks == 1 else "were"
    yield (
        f"{_visits(comebacks)} of the week {verb} judged a comeback. {_visits(waiting)} "
        f"{'waits' if waiting == 1 else 'wait'} for a person to judge."
    )
    yield (
        "A comeback is a later visit inside the window that a person judged: same symptom, same "
        "system, same part, or from our hands. Foretold, other hands, unrelated and cannot tell "
        "are listed beside them and not counted."
    )
    watched = len(figures.on_watch)
    yield (
        f"{_jobs(watched)} {'was' if watched == 1 else 'were'} under watch on "
        f"{day_in_words(figures.as_of)}. An open window never counts as a success: its time is "
        "not over."
    )


def _warnings(figures: WeekFigures) -> Iterator[str]:
    counted = sum(job.counted for job in figures.left)
    if counted < FEW_JOBS:
        yield (
            f"Small numbers: with {_jobs(counted)} counted, one comeback more or less changes the "
            "picture. Read the counts, not a share."
        )
    days_only = sum(row.candidate.distance_miles is None for row in figures.came_back)
    if days_only:
        verb = "goes" if days_only == 1 else "go"
        yield f"{_returns(days_only)} {verb} by days only: the odometer could not say how far."
    late = figures.waiting_long
    if late:
        yield (
            f"{_visits(late)} of the last {len(figures.weeks)} weeks {_have(late)} waited for a "
            f"judgement for more than {DAYS_TO_JUDGE} days: neither return nor success."
        )
    unproven = sum(job.proof_level == 0 for job in figures.left)
    if unproven:
        yield f"{_jobs(unproven)} left unproven."
    unwritten = sum(row.is_comeback and row.cost_cents is None for row in figures.came_back)
    if unwritten:
        yield (
            f"{_returns(unwritten)} {_have(unwritten)} no cost written, so the sum of the costs is "
            "too low."
        )
    if any(w.left or w.comebacks or w.waiting for w in figures.weeks):
        yield (
            "On the last sheet a comeback stands in the week in which the car came, not in the "
            "week in which the repair left; the two columns of a week are different cars."
        )


def _jobs(number: int) -> str:
    return "1 job" if number == 1 else f"{number} jobs"


def _visits(number: int) -> str:
    return "1 visit" if number == 1 else f"{number} visits"


def _returns(number: int) -> str:
    return "1 return" if number == 1 else f"{number} returns"


def _have(number: int) -> str:
    return "has" if number == 1 else "have"

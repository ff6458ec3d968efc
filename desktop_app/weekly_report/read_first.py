"""The sentences at the front of the week's report: what it covers, the counts, how to read it."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import timedelta

from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.returns_watched.honest_numbers.group_rates import FEW_JOBS
from desktop_app.returns_watched.promise_typed import promise_in_words
from desktop_app.returns_watched.waiting import LONG_WAIT_DAYS
from desktop_app.weekly_report.cost_once import costs_unwritten
from desktop_app.weekly_report.figures import WeekFigures, count_later_jobs
from desktop_app.weekly_report.sheets.definition_words import edition
from desktop_app.weekly_report.year_first import jobs, year_first


def read_first(figures: WeekFigures) -> tuple[str, ...]:
    """Return the sentences in the order in which they are read."""
    return (
        *_covers(figures),
        *_counts(figures),
        *year_first(figures),
        *_warnings(figures),
    )


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
    promise = promise_in_words(shop.promise, shop.distance_unit)
    yield f"The shop's window after a hand-over: {promise}. A job can carry its own."
    yield from figures.rules_changed
    yield f"What the words mean stands on the last sheet: edition {edition()} of the definitions."


def _counts(figures: WeekFigures) -> Iterator[str]:
    counted = sum(job.counted for job in figures.left)
    yield (
        f"{jobs(len(figures.left))} left in the week, {counted} with a cause and a correction; "
        "only those are counted."
    )
    comebacks, waiting = figures.counted_as("comeback"), figures.counted_as("waiting")
    verb = "was" if comebacks == 1 else "were"
    year = figures.year
    every = count_later_jobs([one.row for one in year.returns], year.left_out).count("waiting")
    yield (
        f"{_visits(comebacks)} of the week {verb} judged a comeback. {_visits(every)} "
        f"{'waits' if every == 1 else 'wait'} for a person to judge, {waiting} of the week among "
        "them."
    )
    yield from _told(figures)
    yield from _judged_since(figures)
    yield (
        "A comeback is a later visit inside the window that a person judged: same symptom, same "
        "system, same part, or from our hands. Foretold, other hands, unrelated and cannot tell "
        "are listed beside them and not counted."
    )
    yield from _caught_here(figures)
    watched = len(figures.on_watch)
    yield (
        f"{jobs(watched)} {'was' if watched == 1 else 'were'} under watch on "
        f"{day_in_words(figures.as_of)}, counted or not. An open window never "
        "counts as a success: its time is not over."
    )


def _told(figures: WeekFigures) -> Iterator[str]:
    """Say of how many jobs the same trouble is told, and no visit speaks for the car yet.

    They are jobs, not customers: one car may have several.
    """
    told = sum(job.told_after is not None and not job.came_back for job in figures.year.jobs)
    if told:
        tell = "1 customer tells" if told == 1 else f"Of {told} jobs the customer tells"
        yield (
            f"{tell} of the same trouble, and no visit since was judged: neither good nor bad. "
            "Have the car in."
        )


def _caught_here(figures: WeekFigures) -> Iterator[str]:
    monday = figures.week.monday
    caught = sum(job.caught_here for job in figures.year.jobs if job.left_on >= monday)
    if caught:
        faults = "1 fault was" if caught == 1 else f"{caught} faults were"
        yield (
            f"{faults} caught here in jobs of the week, before the car left: no comeback, and a "
            "good sign."
        )


def _judged_since(figures: WeekFigures) -> Iterator[str]:
    """Say what in a book of the past was only known later: a visit stands as it is judged now.

    What Monday's meeting and its week decide of the week before belongs to it.
    """
    until = figures.as_of + timedelta(days=7)
    later = sum(
        one.row.judged_at is not None and one.row.judged_at[:10] > until.isoformat()
        for one in figures.year.returns
    )
    if later:
        were = "was" if later == 1 else "were"
        yield (
            f"{_returns(later)} in this book {were} judged, or judged anew, after "
            f"{day_in_words(until)} and {'stands' if later == 1 else 'stand'} as judged now."
        )


def _warnings(figures: WeekFigures) -> Iterator[str]:
    counted = sum(job.counted for job in figures.left)
    if counted < FEW_JOBS:
        yield (
            f"Small numbers: with {jobs(counted)} counted, one comeback more or less changes the "
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
            f"judgement for more than {LONG_WAIT_DAYS} days: neither return nor success."
        )
    unproven = sum(job.proof_level == 0 for job in figures.left)
    if unproven:
        yield f"{jobs(unproven)} left unproven."
    unwritten = costs_unwritten(
        one
        for one in figures.year.returns
        if one.row.is_comeback and one.row.came_on >= figures.week.monday
        if one.row.earlier not in figures.year.left_out
    )
    if unwritten:
        yield (
            f"{_visits(unwritten)} of the week judged a comeback {_have(unwritten)} no cost "
            "written, so the sum of the costs is too low."
        )


def _visits(number: int) -> str:
    return "1 visit" if number == 1 else f"{number} visits"


def _returns(number: int) -> str:
    return "1 return" if number == 1 else f"{number} returns"


def _have(number: int) -> str:
    return "has" if number == 1 else "have"

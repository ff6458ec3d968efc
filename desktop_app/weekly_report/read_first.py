"""The sentences at the front of the week's report: what it covers, the counts, how to read it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from datetime import date, timedelta
from typing import NamedTuple

from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.returns_watched.honest_numbers.group_rates import FEW_JOBS
from desktop_app.returns_watched.promise_typed import promise_in_words
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.waiting import LONG_WAIT_DAYS
from desktop_app.weekly_report.cost_once import costs_unwritten
from desktop_app.weekly_report.figures import CountsAs, WeekFigures, count_later_jobs
from desktop_app.weekly_report.sheets.definition_words import edition
from desktop_app.weekly_report.sheets.sheet_words import joined
from desktop_app.weekly_report.year_first import jobs, year_first


def read_first(figures: WeekFigures) -> tuple[str, ...]:
    """Return the sentences in the order in which they are read."""
    return (
        *_danger(figures),
        *_covers(figures),
        *_counts(figures),
        *year_first(figures),
        *_warnings(figures),
    )


def _danger(figures: WeekFigures) -> Iterator[str]:
    """Say first which returns were dangerous: the week's, those judged in it, all that wait."""
    week = {row.visit: True for row in _asked_about(figures)}
    for row in figures.came_back:
        if row.visit in week:
            week[row.visit] &= row.dangerous is None
    monday = figures.week.monday
    rows = (one.row for one in figures.year.returns)
    hurt = [row for row in rows if row.dangerous and (row.waits or _last_touched(row) >= monday)]
    number, unsaid = len({row.visit for row in hurt}), sum(week.values())
    if hurt:
        named = joined(
            f"{row.later} after {row.earlier}{', to be judged' if row.waits else ''}"
            for row in hurt
        )
        yield f"{_returns(number)} {'was' if number == 1 else 'were'} dangerous: {named}."
    if unsaid:
        yield (
            f"Of {_of_the_week(unsaid, len(week))} nobody said whether somebody could have been "
            "hurt: read what the customer says."
        )
    elif week and not hurt:
        yield f"Of {_of_the_week(len(week), len(week))} none was dangerous, as was said of each."


def _asked_about(figures: WeekFigures) -> Iterator[ReturnRow]:
    """Yield the week's returns that count as a comeback or wait, a visit once each."""
    for row, counts_as in zip(figures.came_back, figures.counts_as, strict=True):
        if counts_as != "not counted":
            yield row


def _last_touched(row: ReturnRow) -> date:
    """Return the day on which it came, was told or was judged, whichever is the latest."""
    judged = row.judged_at
    return row.came_on if judged is None else max(row.came_on, date.fromisoformat(judged[:10]))


def _of_the_week(some: int, every: int) -> str:
    if every == 1:
        return "the week's one return"
    return (
        f"the week's {every} returns" if some == every else f"{some} of the week's {every} returns"
    )


def _covers(figures: WeekFigures) -> Iterator[str]:
    week, shop = figures.week, figures.shop
    yield (
        f"{shop.name}, week {week}: Monday {day_in_words(week.monday)} to "
        f"Sunday {day_in_words(week.sunday)}."
    )
    anchor = f" · {figures.anchor}" if figures.anchor else ""
    yield f"Made on {day_in_words(figures.made_at.date())} at {figures.made_at:%H:%M}{anchor}."
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
    year = figures.year
    week = _Counted.of(figures.came_back, figures.counts_as)
    rows = [one.row for one in year.returns]
    every = _Counted.of(rows, count_later_jobs(rows, year.left_out))
    verb = "was" if week.back == 1 else "were"
    yield (
        f"{_visits(week.back)} of the week {verb} judged a comeback{_more_told(week.told_back)}. "
        f"{_visits(every.waits)} {'waits' if every.waits == 1 else 'wait'} for a person to judge, "
        f"{week.waits} of the week among them."
    )
    if every.told_waits:
        tells = (
            "1 return that was only told waits"
            if every.told_waits == 1
            else (f"{every.told_waits} returns that were only told wait")
        )
        yield (
            f"{tells} for a judgement too: neither good nor bad. Judge what was told, or have the "
            "car in."
        )
    yield from _judged_since(figures)
    yield (
        "A comeback is a later visit inside the window that a person judged: same symptom, same "
        "system, same part, or from our hands, unless its main cause is not ours. Foretold, "
        "other hands, unrelated and cannot tell are listed beside them and not counted."
    )
    yield from _caught_here(figures)
    watched = len(figures.on_watch)
    yield (
        f"{jobs(watched)} {'was' if watched == 1 else 'were'} under watch on "
        f"{day_in_words(figures.as_of)}, counted or not. An open window never "
        "counts as a success: its time is not over."
    )


class _Counted(NamedTuple):
    """How many visits, and tellings beside them, count as comebacks, and how many wait."""

    back: int
    told_back: int
    waits: int
    told_waits: int

    @classmethod
    def of(cls, rows: Sequence[ReturnRow], counts_as: Sequence[CountsAs]) -> _Counted:
        """Count rows of the list of returns."""
        found = Counter((what, row.is_told) for row, what in zip(rows, counts_as, strict=True))
        return cls(
            found["comeback", False],
            found["comeback", True],
            found["waiting", False],
            found["waiting", True],
        )


def _more_told(told: int) -> str:
    if not told:
        return ""
    returns = "1 return that was" if told == 1 else f"{told} returns that were"
    return f", and {returns} only told"


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
            f"{_returns(late)} of the last {len(figures.weeks)} weeks {_have(late)} waited for a "
            f"judgement for more than {LONG_WAIT_DAYS} days: neither return nor success."
        )
    unproven = sum(job.proof_level == 0 for job in figures.left)
    if unproven:
        yield f"{jobs(unproven)} left unproven."
    yield from _costs_missing(figures)
    hands_on = len(figures.year.hands_on & figures.year.left_out)
    if hands_on:
        yield (
            f"{jobs(hands_on)} of the year that were inspection or maintenance came back with new "
            "trouble from our hands: in no rate, and counted on the sheet Rate, “Kept out”."
        )


def _costs_missing(figures: WeekFigures) -> Iterator[str]:
    back = [
        one
        for one in figures.year.returns
        if one.row.is_comeback and one.row.came_on >= figures.week.monday
        if one.row.earlier not in figures.year.left_out
    ]
    unwritten, told = costs_unwritten(back), sum(one.row.is_told for one in back)
    if told:
        yield f"What the week's {_comebacks(told)} only told cost stands in no sum."
    if unwritten:
        yield (
            f"{_visits(unwritten)} of the week judged a comeback {_have(unwritten)} no cost "
            "written, so the sum of the costs is too low."
        )


def _visits(number: int) -> str:
    return "1 visit" if number == 1 else f"{number} visits"


def _returns(number: int) -> str:
    return "1 return" if number == 1 else f"{number} returns"


def _comebacks(number: int) -> str:
    return "1 comeback that was" if number == 1 else f"{number} comebacks that were"


def _have(number: int) -> str:
    return "has" if number == 1 else "have"

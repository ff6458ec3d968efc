"""The sentences at the front of the week's report: what it covers, the counts, how to read it."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import timedelta

from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.returns_watched.ask_list import ENDS_SOON
from desktop_app.returns_watched.honest_numbers.group_rates import FEW_JOBS, WIDEST_INTERVAL
from desktop_app.returns_watched.honest_numbers.proportion import wilson
from desktop_app.returns_watched.owed import still_owed_cents
from desktop_app.returns_watched.promise_typed import promise_in_words
from desktop_app.returns_watched.waiting import LONG_WAIT_DAYS
from desktop_app.weekly_report.figures import WeekFigures, count_later_jobs
from desktop_app.weekly_report.weekly_chart_of import weeks_charted


def read_first(figures: WeekFigures) -> tuple[str, ...]:
    """Return the sentences in the order in which they are read."""
    return (
        *_covers(figures),
        *_counts(figures),
        *_ask_on_monday(figures),
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


def _counts(figures: WeekFigures) -> Iterator[str]:
    counted = sum(job.counted for job in figures.left)
    yield (
        f"{_jobs(len(figures.left))} left in the week, {counted} with a cause and a correction; "
        "only those are counted."
    )
    comebacks, waiting = figures.counted_as("comeback"), figures.counted_as("waiting")
    verb = "was" if comebacks == 1 else "were"
    every = count_later_jobs([one.row for one in figures.year.returns]).count("waiting")
    yield (
        f"{_visits(comebacks)} of the week {verb} judged a comeback. {_visits(every)} "
        f"{'waits' if every == 1 else 'wait'} for a person to judge, {waiting} of the week among "
        "them."
    )
    yield from _judged_since(figures)
    yield (
        "A comeback is a later visit inside the window that a person judged: same symptom, same "
        "system, same part, or from our hands. Foretold, other hands, unrelated and cannot tell "
        "are listed beside them and not counted."
    )
    watched = len(figures.on_watch)
    yield (
        f"{_jobs(watched)} {'was' if watched == 1 else 'were'} under watch on "
        f"{day_in_words(figures.as_of)}, counted or not. An open window never "
        "counts as a success: its time is not over."
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


def _ask_on_monday(figures: WeekFigures) -> Iterator[str]:
    """What the year behind has to say, one sentence a question that an owner asks."""
    year = figures.year
    settled = [job for job in year.counted if job.settled]
    back = sum(job.came_back for job in settled)
    early = sum(job.came_back for job in year.counted) - back
    unsettled = len(year.counted) - len(settled)
    if settled:
        low, high = wilson(back, len(settled))
        few = len(settled) < FEW_JOBS or high - low > WIDEST_INTERVAL
        said = "too few to tell; what is known: between" if few else f"{back / len(settled):.1%},"
        yield (
            f"The year: {back:,} of {len(settled):,} settled jobs came back. Rate {said} "
            f"{low:.1%} to {high:.1%}. {unsettled:,} more are open or wait and are not in it."
        )
        if early:
            yield (
                f"{_jobs(early)} of the year came back already though their windows are still "
                "open; they enter the rate when these are over, with their quiet neighbours."
            )
    else:
        yield f"The year: no job is settled yet; {_jobs(unsettled)} open or waiting."
    if any(week.comebacks for week in figures.weeks):
        yield from weeks_charted(figures).flags()
    unproven = [job for job in settled if job.proof_level == 0]
    if unproven:
        came = sum(job.came_back for job in unproven)
        yield f"{_jobs(len(unproven))} of the year left unproven; {came} of them came back."
    open_changes = [one for one in year.promised() if one.change.is_open(figures.as_of)]
    if open_changes:
        late = sum(one.change.is_late(figures.as_of) for one in open_changes)
        are = "change is" if len(open_changes) == 1 else "changes are"
        yield f"{len(open_changes)} promised {are} open, {late} of them late."
    if year.owed:
        cents, unknown = still_owed_cents(year.owed)
        more = f", and {unknown} without an amount" if unknown else ""
        yield f"Suppliers owe {figures.shop.currency}{cents / 100:,.2f}{more}."
    soon = [
        job
        for job in figures.on_watch
        if job.expected_close is not None
        and 0 <= (job.expected_close - figures.as_of).days <= ENDS_SOON
    ]
    if soon:
        yield (
            f"{_jobs(len(soon))}: the window probably ends within {ENDS_SOON} days. Ask how the "
            "car is; whom you ask must not depend on the answer you hope for."
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
            f"judgement for more than {LONG_WAIT_DAYS} days: neither return nor success."
        )
    unproven = sum(job.proof_level == 0 for job in figures.left)
    if unproven:
        yield f"{_jobs(unproven)} left unproven."
    unwritten = sum(
        one.row.is_comeback and one.cost is None and one.row.came_on >= figures.week.monday
        for one in figures.year.returns
        if one.row.earlier not in figures.year.left_out
    )
    if unwritten:
        yield (
            f"{_returns(unwritten)} {_have(unwritten)} no cost written, so the sum of the costs is "
            "too low."
        )


def _jobs(number: int) -> str:
    return "1 job" if number == 1 else f"{number} jobs"


def _visits(number: int) -> str:
    return "1 visit" if number == 1 else f"{number} visits"


def _returns(number: int) -> str:
    return "1 return" if number == 1 else f"{number} returns"


def _have(number: int) -> str:
    return "has" if number == 1 else "have"

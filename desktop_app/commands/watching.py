"""`returns` and `watch`: who came back, and which windows are open."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from datetime import date
from typing import TYPE_CHECKING

from desktop_app.commands.outcome import Asked, Outcome
from desktop_app.commands.shop_place import chosen_place, open_place
from desktop_app.returns_watched.met_by import is_aside
from desktop_app.shop_record.trouble import ShopTrouble

if TYPE_CHECKING:
    from desktop_app.returns_watched.stored_return_rows import ReturnsFound
    from desktop_app.returns_watched.watching import WatchedJob
    from desktop_app.shop_record.record import ShopRecord


FIRST_YEAR, LAST_YEAR = 1900, 2200


@contextmanager
def shop_of(asked: Asked) -> Iterator[ShopRecord]:
    """Open the shop that a command speaks of, and close it afterwards."""
    record = open_place(chosen_place(asked.shop))
    try:
        yield record
    finally:
        record.close()


def returns(asked: Asked) -> Outcome:
    """List the returns, judged or not, by the day on which the later job was opened."""
    from desktop_app.returns_watched.stored_returns import find_returns

    since, until = span_said(asked)
    with shop_of(asked) as record, record.reading() as connection:
        found = find_returns(connection, since, until, symptom_names())
    return Outcome((one.as_json() for one in found.candidates), _return_lines(found))


def _return_lines(found: ReturnsFound) -> Iterator[str]:
    said = False
    for row in found.rows():
        said = True
        yield (
            f"{row.later} after {row.earlier}: {row.apart('mi')}; "
            f"{row.candidate.why() or 'judged by hand'}; "
            f"{row.state_words}"
            f"{'' if row.in_window else ' (beyond the window)'}"
            f"{' (not counted: its cause is not ours)' if is_aside(row) else ''}"
        )
    if not said:
        yield "Nobody came back in that time."


def watch(asked: Asked) -> Outcome:
    """List the jobs whose window is open."""
    from desktop_app.returns_watched.stored_returns import read_watch

    today = day_said("--today", asked.today)
    with shop_of(asked) as record, record.reading() as connection:
        day = today or record.clock().date()
        jobs = read_watch(connection, day)
        lines = tuple(_watched_line(job, day) for job in jobs)
    return Outcome([job.as_json() for job in jobs], lines or ("No window is open.",))


def _watched_line(job: WatchedJob, today: date) -> str:
    from desktop_app.returns_watched.watch_words import days_in_words

    left = [] if job.days_left is None else [days_in_words(job.days_left)]
    if job.miles_left is not None:
        left.append(f"{job.miles_left:,.0f} miles")
    by = " as last read" if job.miles_left is not None else ""
    said = f" {', '.join(left)} left{by};" if left else ""
    if job.window.miles and job.not_read_since:
        said += " miles not read since;"
    if job.expected_close is None:
        return f"{job.job}  {job.vehicle}:{said} ends by distance alone, nobody can say when"
    end = f"{job.expected_close.isoformat()} by {job.expected_close_by}"
    ends = "expected to end" if job.expected_close >= today else "may have ended"
    return f"{job.job}  {job.vehicle}:{said} {ends} {end}"


def symptom_names() -> dict[str, str]:
    """Return the plain name of each symptom group by its id, in the language spoken."""
    from desktop_app.symptom_search.vocabulary_file import shop_vocabulary

    return {group.id: group.shown for group in shop_vocabulary().groups}


def span_said(asked: Asked) -> tuple[date | None, date | None]:
    """Return the days of --since and --until in their order; None is an open end."""
    since, until = day_said("--since", asked.since), day_said("--until", asked.until)
    if since is not None and until is not None and since > until:
        raise ShopTrouble(
            f"--since {since.isoformat()} is later than --until {until.isoformat()}.",
            do="Swap the two days.",
        )
    return since, until


def day_said(option: str, text: str | None) -> date | None:
    """Return the day of an option; a ShopTrouble says what is accepted."""
    if text is None:
        return None
    try:
        day = date.fromisoformat(text)
        # ISO weeks and days without dashes are read too, and mean what few would guess.
        if day.isoformat() != text:
            raise ValueError(text)
    except ValueError as error:
        raise ShopTrouble(
            f"{option}: '{text}' is not a day.", do="Accepted: a date like 2026-11-16."
        ) from error
    if not FIRST_YEAR <= day.year <= LAST_YEAR:
        raise ShopTrouble(
            f"{option}: {text} lies too far off.",
            do=f"Accepted: a date of the years {FIRST_YEAR} to {LAST_YEAR}.",
        )
    return day

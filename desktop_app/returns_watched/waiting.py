"""What waits for a judgement: the oldest first, and what has waited too long."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from datetime import date

from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.returns_watched.returns_list import ReturnRow

LONG_WAIT_DAYS = 14  # common practice, no source


def days_waiting(row: ReturnRow, today: date) -> int:
    """Return for how many days a return has waited: since its visit began, or it was told."""
    return max(0, (today - row.came_on).days) if row.waits else 0


def waits_too_long(row: ReturnRow, today: date) -> bool:
    """True where it has waited for more than 14 days."""
    return days_waiting(row, today) > LONG_WAIT_DAYS


def oldest_waiting_first(rows: Iterable[ReturnRow]) -> tuple[ReturnRow, ...]:
    """Return what waits, the oldest visit first; then what lies beyond the window, then the judged.

    Behind what waits the newest visit comes first.
    """

    def place(row: ReturnRow) -> tuple[int, int, str, str]:
        group = 0 if row.waits else 1 if row.is_open else 2
        day = row.came_on.toordinal()
        return (group, day if row.waits else -day, row.later, row.earlier)

    return tuple(sorted(rows, key=place))


def visits_waiting(rows: Iterable[ReturnRow]) -> int:
    """Count the visits and the tellings that wait; one counts once, of however many jobs it is."""
    return len({row.visit for row in rows if row.waits})


def waiting_in_words(rows: Sequence[ReturnRow], today: date) -> str:
    """Say how many returns wait, since when, and how many of them too long; what was told apart."""
    waiting = {row.visit: row for row in rows if row.waits}.values()
    if not waiting:
        return "Nothing waits for a judgement."
    told = sum(row.is_told for row in waiting)
    number = " and ".join(_counted(len(waiting) - told, told))
    wait = "waits" if len(waiting) == 1 else "wait"
    oldest = min(row.came_on for row in waiting)
    long = sum(waits_too_long(row, today) for row in waiting)
    since = f"the oldest since {oldest.isoformat()}" if len(waiting) > 1 else f"since {oldest}"
    late = f"; {long} for more than {LONG_WAIT_DAYS} days" if long else ""
    return (
        f"{number} {wait} for a judgement, {since}{late}. Until then it is neither a comeback nor "
        "fine. The rules only propose; a person decides."
    )


def _counted(seen: int, told: int) -> Iterator[str]:
    if seen:
        yield "1 visit" if seen == 1 else f"{seen} visits"
    if told:
        yield "1 return that was only told" if told == 1 else f"{told} returns that were only told"


def seen_in_words(told: date, seen: date | None) -> str:
    """Say whether a car was seen since its customer told of the same trouble."""
    if seen is None or seen < told:
        return "not seen yet"
    return f"seen on {day_in_words(seen)}, not judged against this job"

"""What waits for a judgement: the oldest first, and what has waited too long."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from datetime import date

from desktop_app.language import tr
from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.returns_watched.returns_list import ReturnKey, ReturnRow, VisitKey

LONG_WAIT_DAYS = 14  # common practice, no source
UNTIL_THEN = tr(
    "Until then it is neither a comeback nor fine. The rules only propose; a person decides."
)


def days_waiting(row: ReturnRow, today: date) -> int:
    """Return for how many days a return has waited: since its visit began, or it was told."""
    return max(0, (today - row.came_on).days) if row.waits else 0


def waits_too_long(row: ReturnRow, today: date) -> bool:
    """True where it has waited for more than 14 days."""
    return days_waiting(row, today) > LONG_WAIT_DAYS


def oldest_waiting_first(rows: Iterable[ReturnRow]) -> tuple[ReturnRow, ...]:
    """Return what waits, the oldest visit first; then what lies beyond the window, then the judged.

    Behind what waits the newest visit comes first. All of one visit stands together, by what of
    it is most urgent.
    """
    listed = tuple(rows)
    groups: dict[VisitKey, int] = {}
    for row in listed:
        groups[row.visit] = min(_group(row), groups.get(row.visit, _JUDGED))

    def place(row: ReturnRow) -> tuple[int, int, str, int, int, str, str]:
        group, back = groups[row.visit], 1 if groups[row.visit] == _WAITS else -1
        vehicle, day, clock = row.visit
        in_order = (back * day.toordinal(), vehicle, back * (clock or 0))
        return (group, *in_order, _group(row), row.later, row.earlier)

    return tuple(sorted(listed, key=place))


_WAITS, _BEYOND, _JUDGED = range(3)


def _group(row: ReturnRow) -> int:
    return _WAITS if row.waits else _BEYOND if row.is_open else _JUDGED


def still_waiting_beside(rows: Iterable[ReturnRow]) -> Mapping[ReturnKey, tuple[str, ...]]:
    """Return, for each return, the other earlier jobs that its visit is still to be judged against.

    A visit waits, and is counted, until each of them is judged.
    """
    waiting: dict[VisitKey, list[ReturnRow]] = {}
    listed = tuple(rows)
    for row in listed:
        if row.waits:
            waiting.setdefault(row.visit, []).append(row)
    return {
        row.key: tuple(
            dict.fromkeys(
                other.earlier
                for other in waiting.get(row.visit, ())
                if other.earlier_id != row.earlier_id
            )
        )
        for row in listed
    }


def visits_waiting(rows: Iterable[ReturnRow]) -> int:
    """Count the visits and the tellings that wait; one counts once, of however many jobs it is."""
    return len({row.visit for row in rows if row.waits})


def waiting_in_words(rows: Sequence[ReturnRow], today: date) -> str:
    """Say how many returns wait, since when, and how many of them too long; what was told apart."""
    waiting = {row.visit: row for row in rows if row.waits}.values()
    if not waiting:
        return tr("Nothing waits for a judgement.")
    told = sum(row.is_told for row in waiting)
    what = _counted(len(waiting) - told, told)
    day = min(row.came_on for row in waiting).isoformat()
    long = sum(waits_too_long(row, today) for row in waiting)
    late = (
        tr("; {number} for more than {days} days", number=long, days=LONG_WAIT_DAYS) if long else ""
    )
    said = (
        tr("{what} waits for a judgement, since {day}{late}.", what=what, day=day, late=late)
        if len(waiting) == 1
        else tr(
            "{what} wait for a judgement, the oldest since {day}{late}.",
            what=what,
            day=day,
            late=late,
        )
    )
    return f"{said} {UNTIL_THEN}"


def _counted(seen: int, told: int) -> str:
    """Return how many visits and how many tellings; at least one of the two there must be."""
    visits = tr("1 visit") if seen == 1 else tr("{number} visits", number=seen)
    returns = (
        tr("1 return that was only told")
        if told == 1
        else tr("{number} returns that were only told", number=told)
    )
    if seen and told:
        return tr("{visits} and {returns}", visits=visits, returns=returns)
    return visits if seen else returns


def seen_in_words(told: date, seen: date | None) -> str:
    """Say whether a car was seen since its customer told of the same trouble."""
    if seen is None or seen < told:
        return tr("not seen yet")
    return tr("seen on {day}, not judged against this job", day=day_in_words(seen))

"""Which generations of backups stay, and when the next is due; all moments by the shop's clock.

Of the last two days every one stays; then the newest of each of the last 12 days that have any, of
10 weeks (ISO 8601) and of 9 months. The newest of all is always among them.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from datetime import datetime, timedelta
from typing import Any

ALL_OF = timedelta(days=2)
# How many of which stretch of time stay, and what tells one stretch from another.
STRETCHES: tuple[tuple[int, Callable[[datetime], Any]], ...] = (
    (12, lambda moment: moment.date()),
    (10, lambda moment: moment.isocalendar()[:2]),
    (9, lambda moment: (moment.year, moment.month)),
)


def which_stay(made: Iterable[datetime], now: datetime) -> frozenset[datetime]:
    """Return those moments whose generations stay; one that is still to come always does.

    A clock that was set back must not cost the backups that were made before, and one that ran
    ahead must not cost those of the true days: what is to come takes nobody's place.
    """
    every = sorted(made, reverse=True)
    stay = {moment for moment in every if moment > now - ALL_OF}
    newest_first = [moment for moment in every if moment <= now] or every
    for most, stretch in STRETCHES:
        newest_of: dict[Any, datetime] = {}
        for moment in newest_first:
            newest_of.setdefault(stretch(moment), moment)
        stay.update(list(newest_of.values())[:most])
    return frozenset(stay)


def is_due(made: Iterable[datetime], now: datetime) -> bool:
    """Tell whether a day's generation is missing: none of today is there."""
    return all(moment.date() != now.date() for moment in made)


def days_without(newest: datetime | None, since: datetime | None, now: datetime) -> int:
    """Return for how many whole days there was no good backup.

    They count from the newest one, or from `since`, when the shop's first entry was written; an
    empty shop has nothing to lose.
    """
    begins = newest or since
    return 0 if begins is None else max(0, (now - begins).days)

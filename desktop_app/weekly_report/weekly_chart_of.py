"""Comebacks week by week against the jobs under watch: what lies beyond luck, and a slow rise."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import timedelta

from desktop_app.returns_watched.honest_numbers.few_a_week import (
    CountLimits,
    Doubled,
    count_limits,
    doubled,
)
from desktop_app.weekly_report.figures import WeekCount
from desktop_app.weekly_report.year_behind import JobDone


@dataclass(frozen=True, slots=True)
class WeeksCharted:
    """The weeks' counts, the jobs under watch in each, the limits of luck, and the slow rise."""

    weeks: tuple[WeekCount, ...]
    watched: tuple[int, ...]
    limits: tuple[CountLimits, ...]
    rise: Doubled

    def flags(self) -> tuple[str, ...]:
        """Say in words what the chart shows."""
        said = []
        for week, watched, limits in zip(self.weeks, self.watched, self.limits, strict=True):
            if limits.low <= week.comebacks <= limits.high:
                continue
            word = "more" if week.comebacks > limits.high else "fewer"
            noun = "comeback" if week.comebacks == 1 else "comebacks"
            said.append(
                f"Week {week.week}: {week.comebacks} {noun} of {watched} jobs under watch is "
                f"{word} than luck makes of these weeks' average. Ask what was different."
            )
        if self.rise.began is not None:
            said.append(
                f"A slow rise since about week {self.weeks[self.rise.began].week}: no week need "
                "stand out, but together they look like twice as many comebacks as before."
            )
        return tuple(said) or ("No week stands out, and no slow rise is seen.",)

    def rate(self, place: int) -> float | None:
        """Return a week's comebacks per job under watch."""
        watched = self.watched[place]
        return self.weeks[place].comebacks / watched if watched else None

    def bounds(self, place: int) -> tuple[float | None, float | None]:
        """Return a week's limits, per job under watch."""
        watched, limits = self.watched[place], self.limits[place]
        return (limits.low / watched, limits.high / watched) if watched else (None, None)


def weeks_charted(weeks: Sequence[WeekCount], jobs: Sequence[JobDone]) -> WeeksCharted:
    """Return the weeks with the counted jobs that were under watch in each.

    Comebacks stand in the week in which the car came. What a week is expected to have are these
    weeks' comebacks shared out by the jobs under watch.
    """
    watched = tuple(_watched(week, jobs) for week in weeks)
    counts = [week.comebacks for week in weeks]
    whole = sum(watched)
    expected = [sum(counts) * each / whole if whole else 0.0 for each in watched]
    limits = tuple(count_limits(mean) for mean in expected)
    return WeeksCharted(tuple(weeks), watched, limits, doubled(counts, expected))


def _watched(week: WeekCount, jobs: Sequence[JobDone]) -> int:
    monday, sunday = week.week.monday, week.week.sunday
    found = 0
    for job in jobs:
        if job.left_on > sunday:
            continue
        ends = job.left_on + timedelta(days=job.window_days) if job.window_days else sunday
        found += ends >= monday
    return found

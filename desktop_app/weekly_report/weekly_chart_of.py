"""Comebacks week by week against the jobs under watch: what lies beyond luck, and a slow rise."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import timedelta

from desktop_app.language import marked, tr
from desktop_app.returns_watched.honest_numbers.counted_jobs import NO_LAST_DAY
from desktop_app.returns_watched.honest_numbers.few_a_week import (
    CountLimits,
    Doubled,
    count_limits,
    doubled,
)
from desktop_app.weekly_report.figures import WeekCount, WeekFigures, count_later_jobs
from desktop_app.weekly_report.once import once
from desktop_app.weekly_report.sheets.sheet_words import plural
from desktop_app.weekly_report.week import Week, week_of
from desktop_app.weekly_report.year_behind import YearBehind
from desktop_app.weekly_report.year_columns import year_columns


@dataclass(frozen=True, slots=True)
class Noticed:
    """Something that the weeks show, from which week to which, and the jobs that came back."""

    words: str
    first: Week
    last: Week
    comebacks: int
    jobs: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class WeeksCharted:
    """The weeks' counts, the jobs under watch in each, the limits of luck, and the slow rise.

    `rise` reaches back over the weeks `before` the shown ones, so that it has something to compare
    with. `back` are the later jobs of the comebacks, by the week in which the car came. A week that
    is not over is none of the `weeks`: it stands beside them as `so_far`, and its jobs too.
    """

    weeks: tuple[WeekCount, ...]
    watched: tuple[int, ...]
    limits: tuple[CountLimits, ...]
    before: tuple[WeekCount, ...]
    rise: Doubled
    back: Mapping[Week, tuple[str, ...]]
    so_far: WeekCount | None = None
    watched_so_far: int = 0

    def noticed(self) -> tuple[Noticed, ...]:
        """Return what lies beyond luck, the weeks in their order and then the slow rise."""
        found = [
            self._week_beyond(week, watched, limits)
            for week, watched, limits in zip(self.weeks, self.watched, self.limits, strict=True)
            if not limits.low <= week.comebacks <= limits.high
        ]
        signals = [place for place in self.rise.signals if place >= len(self.before)]
        return (*found, *([self._slow_rise(signals[-1])] if signals else []))

    def flags(self) -> tuple[str, ...]:
        """Say in words what the chart shows."""
        said = tuple(one.words for one in self.noticed())
        return said or (tr("No week stands out, and no slow rise is seen."),)

    def rate(self, place: int) -> float | None:
        """Return a week's comebacks per job under watch."""
        watched = self.watched[place]
        return self.weeks[place].comebacks / watched if watched else None

    def bounds(self, place: int) -> tuple[float | None, float | None]:
        """Return a week's limits, per job under watch."""
        watched, limits = self.watched[place], self.limits[place]
        return (limits.low / watched, limits.high / watched) if watched else (None, None)

    def evidence(self, place: int) -> float:
        """Return the evidence of a slow rise that a shown week leaves."""
        return self.rise.evidence[len(self.before) + place]

    def _week_beyond(self, week: WeekCount, watched: int, limits: CountLimits) -> Noticed:
        beyond = marked(
            "Week {week}: {comebacks} of {watched} jobs under watch is more than luck makes of "
            "these weeks' average ({low} to {high}). Ask what was different."
        )
        if week.comebacks < limits.low:
            beyond = marked(
                "Week {week}: {comebacks} of {watched} jobs under watch is fewer than luck makes "
                "of these weeks' average ({low} to {high}). Ask what was different."
            )
        words = tr(
            beyond,
            week=week.week,
            comebacks=plural(week.comebacks, tr("comeback"), tr("comebacks")),
            watched=watched,
            low=limits.low,
            high=limits.high,
        )
        back = self.back.get(week.week, ())
        return Noticed(words, week.week, week.week, week.comebacks, back)

    def _slow_rise(self, place: int) -> Noticed:
        every = (*self.before, *self.weeks)
        run = every[self.rise.since[place] : place + 1]
        first, last = run[0].week, run[-1].week
        if place == len(every) - 1:
            words = tr(
                "A slow rise since about week {first}: no week need stand out, but "
                "together they look like twice as many comebacks as before. Ask what "
                "has changed since then.",
                first=first,
            )
        else:
            words = tr(
                "In weeks {first} to {last} comebacks looked twice as many as before; "
                "the weeks since then do not carry it on.",
                first=first,
                last=last,
            )
        jobs = tuple(number for week in run for number in self.back.get(week.week, ()))
        return Noticed(words, first, last, sum(week.comebacks for week in run), jobs)


@once
def weeks_charted(figures: WeekFigures) -> WeeksCharted:
    """Return the shown weeks with the counted jobs that were under watch in each.

    Comebacks stand in the week in which the car came. What a week is expected to have are the
    shown weeks' comebacks shared out by the jobs under watch. A week that is not over has fewer for
    that reason alone, and is left out of all this.
    """
    weeks, year = figures.weeks, figures.year
    so_far = weeks[-1] if weeks and figures.as_of < weeks[-1].week.sunday else None
    weeks = weeks if so_far is None else weeks[:-1]
    before = _weeks_before(weeks[0].week, year, figures.shop.window_days) if weeks else ()
    every = (*before, *weeks)
    watched = _watched([each.week for each in every], year)
    shown = watched[len(before) :]
    whole, comebacks = sum(shown), sum(week.comebacks for week in weeks)
    expected = [comebacks * each / whole if whole else 0.0 for each in shown]
    return WeeksCharted(
        weeks,
        tuple(shown),
        tuple(count_limits(mean) for mean in expected),
        before,
        doubled([week.comebacks for week in every], watched),
        _jobs_back(year),
        so_far,
        0 if so_far is None else _watched([so_far.week], year)[0],
    )


def _weeks_before(shown: Week, year: YearBehind, window_days: int) -> tuple[WeekCount, ...]:
    """Return the weeks before the shown ones in which the jobs under watch are known.

    Not all jobs that left before the year are; after the length of a window they are.
    """
    counts = count_later_jobs([one.row for one in year.returns], year.left_out)
    found: dict[Week, int] = {}
    for one, counts_as in zip(year.returns, counts, strict=True):
        if counts_as == "comeback":
            week = week_of(one.row.came_on)
            found[week] = found.get(week, 0) + 1
    known_from = year.first + timedelta(days=window_days)
    weeks: list[WeekCount] = []
    week = shown.moved(-1)
    while window_days and week.monday >= known_from:
        weeks.append(WeekCount(week, 0, found.get(week, 0), 0))
        week = week.moved(-1)
    return tuple(reversed(weeks))


def _watched(weeks: Sequence[Week], year: YearBehind) -> list[int]:
    """Return how many jobs' windows were open on any day of each week."""
    import numpy as np

    never = np.iinfo(np.int64).max
    jobs = year_columns(year)
    older = [job for job in year.older if job.counted]
    gone = np.array([job.left_on.toordinal() for job in older], dtype=np.int64)
    reach = np.array([job.counts_from for job in older], dtype=np.int64)
    left = np.concatenate([gone, year.last.toordinal() - jobs.days_gone])
    days = np.concatenate([reach, jobs.window_days])
    left_in_order = np.sort(left)
    ends = np.sort(np.where(days < NO_LAST_DAY, left + days, never))
    begun = np.searchsorted(left_in_order, [w.sunday.toordinal() for w in weeks], "right")
    over = np.searchsorted(ends, [w.monday.toordinal() for w in weeks], "left")
    watched: list[int] = (begun - over).tolist()
    return watched


def _jobs_back(year: YearBehind) -> dict[Week, tuple[str, ...]]:
    found: dict[Week, list[str]] = {}
    for one in year.returns:
        if one.row.is_comeback and one.row.earlier not in year.left_out:
            found.setdefault(week_of(one.row.came_on), []).append(one.row.opens)
    return {week: tuple(dict.fromkeys(jobs)) for week, jobs in found.items()}

"""The rate by month of hand-over, for the early, the main and the long window."""

from __future__ import annotations

from collections.abc import Collection, Iterator
from dataclasses import dataclass, replace
from functools import partial
from typing import TYPE_CHECKING

from desktop_app.returns_watched.honest_numbers.counted_jobs import NEVER, CountedJobs
from desktop_app.returns_watched.honest_numbers.group_rates import (
    FEW_JOBS,
    NOT_OVER,
    TOO_FEW,
    WIDEST_INTERVAL,
)
from desktop_app.returns_watched.honest_numbers.proportion import wilson
from desktop_app.returns_watched.honest_numbers.survival import kaplan_meier
from desktop_app.returns_watched.judgement import counts_against
from desktop_app.returns_watched.window import EndsBy, Window
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.sheet_form import Cell, Column, Table
from desktop_app.weekly_report.sheets.group_table import RATE_FORMULA
from desktop_app.weekly_report.sheets.sheet_words import columns, distance
from desktop_app.weekly_report.year_columns import days_well, year_columns

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Days = NDArray[np.int64]
    Marks = NDArray[np.bool_]

_WHOLE_YEAR = "the whole year"


def _windows(figures: WeekFigures) -> Iterator[tuple[str, Window | None]]:
    """Return the windows by name; None is each job's own, which it was handed over with."""
    yield "early", Window(*figures.year.early)
    yield "main", None
    yield "long", Window(*figures.year.long)


def months_table(figures: WeekFigures) -> Table:
    """Return the rates of the year and of each of its months, a row for each window."""
    import numpy as np

    counted = figures.year.counted
    months = [job.left_on.isoformat()[:7] for job in counted]
    names = list(dict.fromkeys(months))
    numbers = np.array([job.number for job in counted], dtype=object)
    every = np.arange(len(counted))
    which = np.array([names.index(month) for month in months], dtype=np.int64)
    spans = [(_WHOLE_YEAR, every)] if counted else []
    spans += [(name, np.flatnonzero(which == place)) for place, name in enumerate(names)]
    fates = {name: _fates(figures, window) for name, window in _windows(figures)}
    rows: list[tuple[Cell, ...]] = []
    behind: list[tuple[str, ...]] = []
    shown: list[tuple[Days, _Fates]] = []
    for month, at in spans:
        jobs = tuple(numbers[at].tolist())
        for name, fate in fates.items():
            cells = fate.cells(at)
            if name == "main" or cells[1]:  # a longer window that nobody has passed says nothing
                rows.append((month, name, *cells))
                behind.append(jobs)
                shown.append((at, fate))

    def counted_by(header: str, row: int) -> tuple[str, ...]:
        at, fate = shown[row]
        return tuple(numbers[at][fate.parts()[header][at]].tolist())

    return Table(
        "RateByMonth",
        columns(
            ("Left in", "words"),
            ("Window", "words"),
            ("Jobs", "count"),
            ("Settled", "count"),
            ("Waiting", "count"),
            ("Comebacks", "count"),
            Column("Rate", "share", RATE_FORMULA),
            ("Low", "share"),
            ("High", "share"),
            ("By the curve", "share"),
            ("Silence dropped", "share"),
            ("Note", "words"),
        ),
        tuple(rows),
        title="By month in which the job left",
        notes=(*_window_words(figures, {str(row[1]) for row in rows}), *_NOTES) if rows else (),
        nothing="No job of this year was counted.",
        behind=tuple(behind),
        behind_of={one: partial(counted_by, one) for one in ("Settled", "Waiting", "Comebacks")},
    )


_NOTES = (
    "A job is settled when its window is over and its visits are judged; a quick comeback enters "
    "only then, together with its quiet neighbours. Low to High: where the true rate lies 19 times "
    "of 20. Months differ by luck too.",
    "By the curve: the share that came back by the window's end, with the open windows as far as "
    "they are watched (Kaplan-Meier). Silence dropped: the same, but a job of which nothing was "
    "heard counts only up to the last day on which its car was known to be well. The truth lies "
    "between the two.",
)


def _window_words(figures: WeekFigures, shown: Collection[str]) -> Iterator[str]:
    """Say what the shown windows are; one that nobody has passed is named as left out."""
    shop = figures.shop
    rule: EndsBy = "both" if shop.window_rule == "both" else "first"
    own = Window(shop.window_days, shop.window_miles, rule)
    early, long = (
        _in_words(figures, Window(*one)) for one in (figures.year.early, figures.year.long)
    )
    main = f"main is the one that each job was handed over with, now {_in_words(figures, own)}"
    named = {"early": f"early {early}", "main": main, "long": f"long {long}"}
    yield f"Windows: {'; '.join(words for name, words in named.items() if name in shown)}."
    for name in (name for name in named if name not in shown):
        yield (
            f"The {name} window ({early if name == 'early' else long}) has no row: no job of the "
            "year that this book reads is settled in it."
        )


def _in_words(figures: WeekFigures, window: Window) -> str:
    far = f"{distance(figures, window.miles):,.0f} {figures.shop.distance_unit}"
    return f"{window.days} days {'or' if window.rule == 'first' else 'and'} {far}"


@dataclass(frozen=True, slots=True)
class _Fates:
    """What became of the year's counted jobs in one window, as columns of one length (n,).

    `ages` are the days to which each was watched, `came` whether it came back then; in `silent` a
    job of which nothing was heard counts to the last day on which its car was known to be well.
    """

    settled: Marks
    waiting: Marks
    back: Marks
    ages: Days
    came: Marks
    silent: Days

    def parts(self) -> dict[str, Marks]:
        """Return the jobs that single columns count, by their headers."""
        back = self.back & self.settled
        return {"Settled": self.settled, "Waiting": self.waiting, "Comebacks": back}

    def cells(self, at: Days) -> tuple[Cell, ...]:
        """Return the cells of a row over some of the jobs, by their places."""
        settled = int(self.settled[at].sum())
        back = int((self.back & self.settled)[at].sum())
        low, high = wilson(back, settled) if settled else (None, None)
        few = low is None or high is None or high - low > WIDEST_INTERVAL or settled < FEW_JOBS
        return (
            len(at),
            settled,
            int(self.waiting[at].sum()),
            back,
            None if few else back / settled,
            low,
            high,
            None if few else _by_curve(self.ages[at], self.came[at]),
            None if few else _by_curve(self.silent[at], self.came[at]),
            NOT_OVER if not settled else TOO_FEW if few else "",
        )


def _fates(figures: WeekFigures, window: Window | None) -> _Fates:
    import numpy as np

    year = figures.year
    own = year_columns(year)
    jobs = own if window is None else _in_window(figures, own, window)
    ages, came = jobs.watched()
    quiet = np.fromiter((job.state == "nothing heard" for job in year.counted), bool, len(ages))
    silent = np.where(quiet & ~jobs.came_back, np.minimum(ages, days_well(year)), ages)
    return _Fates(jobs.settled, jobs.waiting, jobs.came_back, ages, came, silent)


def _in_window(figures: WeekFigures, jobs: CountedJobs, window: Window) -> CountedJobs:
    """Return the jobs with what came back or waits inside another window than their own."""
    import numpy as np

    places = {job.number: place for place, job in enumerate(figures.year.counted)}
    days = np.full(len(places), window.days)
    back, waits = np.full(len(places), NEVER), np.full(len(places), NEVER)
    # The latest first, so that the soonest stays.
    for one in sorted(figures.year.returns, key=lambda one: -one.row.candidate.days):
        row, met = one.row, one.row.candidate
        place = places.get(row.earlier)
        if place is None or not window.in_window(met.days, met.distance_miles):
            continue
        if counts_against(row.judgement, row.cause_class):
            back[place] = met.days
        elif met.waits:
            waits[place] = met.days
    return replace(jobs, window_days=days, back_after=back, waits_after=waits)


def _by_curve(ages: Days, marks: Marks) -> float | None:
    if not ages.any():
        return None
    left = kaplan_meier(ages, marks).left
    return float(1 - left[-1]) if left.size else 0.0

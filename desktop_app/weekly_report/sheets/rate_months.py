"""The rate by month of hand-over, for the early, the main and the long window."""

from __future__ import annotations

from collections.abc import Collection, Iterator
from dataclasses import dataclass, fields
from functools import partial
from itertools import compress
from typing import TYPE_CHECKING

from desktop_app.language import tr
from desktop_app.returns_watched.honest_numbers.counted_jobs import CountedJobs
from desktop_app.returns_watched.honest_numbers.group_rates import (
    NOT_OVER,
    TOO_FEW,
    anything_from,
    can_be_told,
)
from desktop_app.returns_watched.honest_numbers.proportion import wilson
from desktop_app.returns_watched.honest_numbers.survival import kaplan_meier
from desktop_app.returns_watched.kind_windows import Promise
from desktop_app.returns_watched.promise_typed import promise_in_words
from desktop_app.returns_watched.window import Window
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.headers import COMEBACKS, HIGH, LOW, NOTHING_HEARD, SETTLED, WAITING
from desktop_app.weekly_report.looked_back import LookedBack
from desktop_app.weekly_report.other_windows import jobs_in_window
from desktop_app.weekly_report.sheet_form import Cell, Column, Table
from desktop_app.weekly_report.sheets.group_table import RATE_FORMULA
from desktop_app.weekly_report.sheets.sheet_words import columns
from desktop_app.weekly_report.year_columns import days_well, year_columns

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Days = NDArray[np.int64]
    Marks = NDArray[np.bool_]

EARLY, OWN, LONG = tr("early"), tr("the job's own"), tr("long")
_WHOLE_YEAR = tr("the whole year")


def _windows(figures: WeekFigures) -> Iterator[tuple[str, Window | None]]:
    """Return the windows by name; None is each job's own, which it was handed over with."""
    yield EARLY, Window(*figures.year.early)
    yield OWN, None
    yield LONG, Window(*figures.year.long)


_COUNTING = (SETTLED, WAITING, NOTHING_HEARD, COMEBACKS)


@dataclass(frozen=True, slots=True)
class _Row:
    """One row: over which jobs, by their numbers, and what became of them in which window."""

    left_in: str
    window: str
    numbers: tuple[str, ...]
    fates: _Fates

    def cells(self) -> tuple[Cell, ...]:
        return (self.left_in, self.window, *self.fates.cells())

    def behind(self, header: str) -> tuple[str, ...]:
        return tuple(compress(self.numbers, self.fates.parts()[header].tolist()))


def months_table(figures: WeekFigures) -> Table:
    """Return the rates of the year and of each of its months, a row for each window."""
    shown = list(_rows(figures))

    def counted_by(header: str, row: int) -> tuple[str, ...]:
        return shown[row].behind(header)

    return Table(
        "RateByMonth",
        columns(
            (tr("Left in"), "words"),
            (tr("Window"), "words"),
            (tr("Jobs"), "count"),
            (SETTLED, "count"),
            (WAITING, "count"),
            (NOTHING_HEARD, "count"),
            (COMEBACKS, "count"),
            Column(tr("Rate"), "share", RATE_FORMULA),
            (LOW, "share"),
            (HIGH, "share"),
            (tr("By the curve"), "share"),
            (tr("Curve while known well"), "share"),
            (tr("Note"), "words"),
        ),
        tuple(row.cells() for row in shown),
        title=tr("By month in which the job left"),
        notes=(*_window_words(figures, {row.window for row in shown}), *_NOTES) if shown else (),
        nothing=tr("No job of this year was counted."),
        behind=tuple(row.numbers for row in shown),
        behind_of={one: partial(counted_by, one) for one in _COUNTING},
    )


def _rows(figures: WeekFigures) -> Iterator[_Row]:
    """Yield the rows; a longer window that nobody has passed says nothing."""
    import numpy as np

    year = figures.year
    months = [job.left_on.isoformat()[:7] for job in year.counted]
    numbers = np.array([job.number for job in year.counted], dtype=object)
    names = list(dict.fromkeys(months))
    which = np.array([names.index(month) for month in months], dtype=np.int64)
    spans = [(_WHOLE_YEAR, np.arange(len(months)))] if months else []
    spans += [(name, np.flatnonzero(which == place)) for place, name in enumerate(names)]
    fates = {name: _fates(figures, window) for name, window in _windows(figures)}
    back = year.looked_back
    for span, at in spans:
        own = tuple(numbers[at].tolist())
        for name, fate in fates.items():
            if name == LONG and span == _WHOLE_YEAR and back is not None:
                continue
            row = _Row(span, name, own, fate.only(at))
            if name == OWN or row.fates.settled.any():
                yield row
        if span == _WHOLE_YEAR and back is not None:
            yield _Row(
                _between(back),
                LONG,
                back.numbers,
                _made(back.jobs, back.unheard(), back.silent()),
            )


def _between(back: LookedBack) -> str:
    return tr("{first} to {last}", first=back.first.isoformat(), last=back.last.isoformat())


_NOTES = (
    tr(
        "A job is settled when its window is over and its visits are judged; a quick "
        "comeback enters only then, together with its quiet neighbours. Low to High: where "
        "the true rate lies 19 times of 20. Months differ by luck too."
    ),
    tr(
        "By the curve: the share that came back by the window's end, with the open windows "
        "as far as they are watched (Kaplan-Meier). Curve while known well: the same, but "
        "a job of which nothing was heard counts only up to the last day on which its car "
        "was known to be well. The truth probably lies between the two. Nothing heard: "
        "settled jobs that did not come back, and whose car nobody saw or asked about "
        "after its window."
    ),
)


def _window_words(figures: WeekFigures, shown: Collection[str]) -> Iterator[str]:
    """Say what the shown windows are; one that nobody has passed is named as left out."""
    unit = figures.shop.distance_unit
    early, long = (
        promise_in_words(Promise(days, miles=miles), unit)
        for days, miles in (figures.year.early, figures.year.long)
    )
    now = promise_in_words(figures.shop.promise, unit)
    named = {
        EARLY: tr("early {promise}", promise=early),
        OWN: tr(
            "{own} is the one that it was handed over with, now {promise}", own=OWN, promise=now
        ),
        LONG: tr("long {promise}", promise=long),
    }
    yield tr(
        "Windows: {windows}.",
        windows="; ".join(words for name, words in named.items() if name in shown),
    )
    if EARLY not in shown:
        yield tr(
            "The early window ({promise}) has no row: no job that this book reads is settled "
            "in it.",
            promise=early,
        )
    if LONG not in shown:
        yield tr(
            "The long window ({promise}) has no row: no job that this book reads is settled in it.",
            promise=long,
        )
    back = figures.year.looked_back
    if back is not None:
        yield tr(
            "In the first row of long stand the jobs that left {days}: the window "
            "is over for all of them.",
            days=_between(back),
        )


@dataclass(frozen=True, slots=True)
class _Fates:
    """What became of the year's counted jobs in one window, as columns of one length (n,).

    `ages` are the days to which each was watched, `came` whether it came back then; in `silent` a
    job of which nothing was heard counts to the last day on which its car was known to be well.
    """

    settled: Marks
    waiting: Marks
    quiet: Marks
    back: Marks
    ages: Days
    came: Marks
    silent: Days

    def parts(self) -> dict[str, Marks]:
        """Return the jobs that single columns count, by their headers."""
        back = self.back & self.settled
        heard = self.quiet & self.settled
        return {
            **{SETTLED: self.settled, WAITING: self.waiting},
            **{NOTHING_HEARD: heard, COMEBACKS: back},
        }

    def only(self, at: Days) -> _Fates:
        """Return those of some of the jobs, by their places."""
        columns = (getattr(self, one.name)[at] for one in fields(self))
        return _Fates(*columns)

    def cells(self) -> tuple[Cell, ...]:
        """Return the cells of a row over these jobs."""
        settled = int(self.settled.sum())
        back = int((self.back & self.settled).sum())
        low, high = wilson(back, settled) if settled else (None, None)
        few = not can_be_told(settled, low, high)
        return (
            len(self.settled),
            settled,
            int(self.waiting.sum()),
            int((self.quiet & self.settled).sum()),
            back,
            *((None,) * 3 if few else (back / settled, low, high)),
            None if few else _by_curve(self.ages, self.came),
            None if few else _by_curve(self.silent, self.came),
            "" if not few else few_words(low, high),
        )


def _fates(figures: WeekFigures, window: Window | None) -> _Fates:
    import numpy as np

    year = figures.year
    jobs = year_columns(year) if window is None else jobs_in_window(year, window)
    ages, _ = jobs.watched()
    quiet = np.fromiter((job.state == "nothing heard" for job in year.counted), bool, len(ages))
    quiet = quiet & ~jobs.came_back
    return _made(jobs, quiet, np.where(quiet, np.minimum(ages, days_well(year)), ages))


def _made(jobs: CountedJobs, quiet: Marks, silent: Days) -> _Fates:
    ages, came = jobs.watched()
    return _Fates(jobs.settled, jobs.waiting, quiet, jobs.came_back, ages, came, silent)


def few_words(low: float | None, high: float | None) -> str:
    """Say what is known of a rate that cannot be told."""
    if low is None or high is None:
        return NOT_OVER
    return f"{TOO_FEW}: {anything_from(low, high)}"


def _by_curve(ages: Days, marks: Marks) -> float | None:
    if not ages.any():
        return None
    left = kaplan_meier(ages, marks).left
    return float(1 - left[-1]) if left.size else 0.0

"""The curve of returns over the share of the window that is used: one axis for days and miles."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import nan
from typing import TYPE_CHECKING

from desktop_app.language import tr
from desktop_app.returns_watched.honest_numbers.survival import kaplan_meier
from desktop_app.shop_record.counted_words import jobs_counted
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.headers import BACK, HIGH, LOW
from desktop_app.weekly_report.sheet_form import Cell, Table
from desktop_app.weekly_report.sheets.rate_curves import share_at
from desktop_app.weekly_report.sheets.sheet_words import columns
from desktop_app.weekly_report.year_behind import JobDone, YearBehind
from desktop_app.weekly_report.year_columns import days_well, year_columns, year_numbers

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Column = NDArray[np.float64]
    Days = NDArray[np.int64]
    Marks = NDArray[np.bool_]

_TENTHS = tuple(place / 10 for place in range(11))


@dataclass(frozen=True, slots=True)
class _Watched:
    """Jobs (n,) with the share to which each was watched and whether it came back then.

    In `silent` a job of which nothing was heard counts to the last news alone. `by_days` marks
    those where miles are promised and no odometer says how many were driven.
    """

    numbers: tuple[str, ...]
    shares: Column
    silent: Column
    back: Marks
    by_days: int
    left_out: int


def by_share_table(figures: WeekFigures) -> Table:
    """Return the share of jobs that came back by each tenth of their own window."""
    watched = _watched(figures)
    rows = list(_rows(watched)) if watched.numbers else []
    return Table(
        "CurveByShare",
        columns(
            (tr("Window used up"), "share"),
            (tr("Still watched"), "count"),
            (BACK, "share"),
            (LOW, "share"),
            (HIGH, "share"),
            (tr("Curve while known well"), "share"),
        ),
        tuple(rows),
        title=tr("How many have come back by a share of their window"),
        notes=tuple(_notes(watched)) if rows else (),
        nothing=tr("No job of this year was counted."),
        behind=tuple(_behind(watched, len(rows))),
    )


def _watched(figures: WeekFigures) -> _Watched:
    import numpy as np

    year = figures.year
    days, back = year_columns(year).watched()
    quiet = np.fromiter((job.state == "nothing heard" for job in year.counted), bool, len(days))
    windows = _Windows.of(year)
    shares = windows.share(days)
    met = {
        (row.earlier, row.candidate.days): row.candidate.window_used
        for row in (one.row for one in year.returns)
        if row.is_comeback
    }
    for place in np.flatnonzero(back).tolist():
        at_return = met.get((year.counted[place].number, int(days[place])))
        if at_return is not None:
            shares[place] = at_return
    heard = windows.share(np.where(quiet, np.minimum(days, days_well(year)), days))
    silent = np.where(quiet & ~back, np.minimum(np.nan_to_num(heard), shares), shares)
    known = ~np.isnan(shares)
    by_days = known & ~back & (windows.miles > 0) & np.isnan(windows.driven)
    return _Watched(
        tuple(year_numbers(year)[known].tolist()),
        np.minimum(shares[known], 1.0),
        np.minimum(silent[known], 1.0),
        back[known],
        int(by_days.sum()),
        int((~known).sum()),
    )


@dataclass(frozen=True, slots=True)
class _Windows:
    """The windows of the counted jobs (n,) and how far their cars are known to have gone.

    `over` are the days after which each counts as over; `driven` the miles at the last reading, NaN
    where there is none, and `read` the days until then.
    """

    days: Column
    miles: Column
    over: Column
    driven: Column
    read: Column

    @classmethod
    def of(cls, year: YearBehind) -> _Windows:
        """Return those of a year."""
        import numpy as np

        jobs = year.counted
        rows = [
            (job.window_days, job.window_miles, job.counts_from, *_last_read(job)) for job in jobs
        ]
        return cls(*np.array(rows, dtype=float).reshape(len(jobs), 5).T)

    def share(self, days: Days) -> Column:
        """Return the share (n,) of each window that is used so many days (n,) after it left.

        An odometer counts as far as it was read by then; where it was not, days alone do. A window
        that is over is used up, whatever ended it; NaN is one that time cannot end.
        """
        import numpy as np

        by_time = np.divide(
            days, self.days, where=self.over == self.days, out=np.full(len(days), np.nan)
        )
        counts = (self.read <= days) & (self.miles > 0)
        by_miles = np.divide(self.driven, self.miles, where=counts, out=np.full(len(days), np.nan))
        used = np.where(np.isnan(by_time), by_time, np.fmax(by_time, by_miles))
        return np.where(days >= self.over, 1.0, used)


def _last_read(job: JobDone) -> tuple[float, float]:
    """Return the miles at a job's last reading and the days until then, NaN where there is none."""
    if job.known_on is None or job.miles_known is None:
        return (nan, nan)
    return (job.miles_known, (job.known_on - job.left_on).days)


def _rows(watched: _Watched) -> Iterator[tuple[Cell, ...]]:
    """Yield a row for each tenth to which a job was watched."""
    import numpy as np

    curve = kaplan_meier(watched.shares.tolist(), watched.back.tolist())
    silent = kaplan_meier(watched.silent.tolist(), watched.back.tolist())
    for tenth in _TENTHS:
        # What is watched to a tenth is: no share is nearer to another one than a rounding error.
        at_risk = int((watched.shares >= tenth - 1e-9).sum())
        if not at_risk:
            return
        step = int(np.searchsorted(silent.ages, tenth + 1e-9, "right")) - 1
        dropped = float(1 - silent.left[step]) if step >= 0 else 0.0
        yield (tenth, at_risk, *share_at(curve, tenth + 1e-9, at_risk), dropped)


def _behind(watched: _Watched, rows: int) -> Iterator[tuple[str, ...]]:
    """Yield for each row the jobs that came back by then, the soonest first."""
    came = sorted(
        (share, number)
        for share, number, back in zip(
            watched.shares.tolist(), watched.numbers, watched.back.tolist(), strict=True
        )
        if back
    )
    for tenth in _TENTHS[:rows]:
        yield tuple(number for share, number in came if share <= tenth + 1e-9)


def _notes(watched: _Watched) -> Iterator[str]:
    yield tr(
        "Window used up: the larger of the shares of days and of distance, each job by "
        "its own window; 100% is its end. Open windows count as far as they are used "
        "(Kaplan-Meier). Curve while known well: a job of which nothing was heard "
        "counts only up to the last day on which its car was known to be well. The "
        "truth lies between the two."
    )
    if watched.by_days:
        yield tr(
            "{jobs} by days alone: the odometer was not read since, or cannot say "
            "how far the car has gone.",
            jobs=jobs_counted(watched.by_days),
        )
    if watched.left_out:
        yield tr(
            "Left out: {jobs} whose window time cannot end and is still open.",
            jobs=jobs_counted(watched.left_out),
        )

"""The curves of returns: by days, by distance, and how many returns a job has had by an age."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import TYPE_CHECKING

from desktop_app.language import tr
from desktop_app.returns_watched.honest_numbers.cumulative import MeanCumulative, mean_cumulative
from desktop_app.returns_watched.honest_numbers.expected import poisson_interval
from desktop_app.returns_watched.honest_numbers.proportion import clopper_pearson
from desktop_app.returns_watched.honest_numbers.survival import Curve, kaplan_meier
from desktop_app.shop_record.counted_words import jobs_counted
from desktop_app.weekly_report.chart_scale import round_ticks
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.headers import BACK, DAYS, HIGH, LOW, RETURNS_PER_100
from desktop_app.weekly_report.sheet_form import Cell, Table
from desktop_app.weekly_report.sheets.miles_watched import (
    FEWEST_READ,
    MilesWatched,
    miles_watched,
)
from desktop_app.weekly_report.sheets.sheet_words import columns, distance, plural, unit_words
from desktop_app.weekly_report.year_columns import year_columns

if TYPE_CHECKING:
    from typing import Any

    from numpy.typing import NDArray

CURVE_POINTS = 18  # about so many rows are read at a glance
_NOBODY = tr("No job of this year was counted.")


def by_days_table(figures: WeekFigures) -> Table:
    """Return the share of jobs that came back by a number of days."""
    jobs = figures.year.counted
    rows: list[tuple[Cell, ...]] = []
    behind: list[tuple[str, ...]] = []
    if jobs:
        ages, back = _watched_days(figures)
        points = _to_last_return(
            _days(_last_day(figures)), ages, [age for age, b in zip(ages, back, strict=True) if b]
        )
        rows = list(_share_rows(points, ages, back))
        came = [(float(age), job.number) for age, b, job in zip(ages, back, jobs, strict=True) if b]
        behind = _behind([row[0] for row in rows], came)
    return Table(
        "CurveOfReturns",
        columns(
            (DAYS, "count"),
            (tr("Still watched"), "count"),
            (BACK, "share"),
            (LOW, "share"),
            (HIGH, "share"),
        ),
        tuple(rows),
        title=tr("How many have come back after so many days"),
        notes=(
            tr(
                "Every counted job of the year stands in it, those with an open window as "
                "far as they have been watched (Kaplan-Meier). The share adds up: 10% at "
                "day 60 means that 10 of 100 have come back by then. Low to High: where it "
                "lies 19 times of 20."
            ),
            *_not_drawn(figures, len(rows)),
        )
        if rows
        else (),
        nothing=_NOBODY,
        behind=tuple(behind),
    )


def by_miles_table(figures: WeekFigures) -> Table:
    """Return the share of jobs that came back by a distance; what is not known is said."""
    watched = miles_watched(figures)
    unit = unit_words(figures)
    rows: list[tuple[Cell, ...]] = []
    behind: list[tuple[str, ...]] = []
    points: list[float] = []
    if watched.jobs:
        far = [distance(figures, miles) for miles in watched.miles]
        points = _distances(distance(figures, watched.limit) if watched.limit else max(far))
        rows = list(_share_rows(points, far, watched.came_back, FEWEST_READ))
        came = [
            (age, job.number)
            for age, back, job in zip(far, watched.came_back, watched.jobs, strict=True)
            if back
        ]
        behind = _behind([row[0] for row in rows], came)
    return Table(
        "CurveByMiles",
        columns(
            (unit.capitalize(), "count"),
            (tr("Still watched"), "count"),
            (BACK, "share"),
            (LOW, "share"),
            (HIGH, "share"),
        ),
        tuple(rows),
        title=tr("How many have come back after so many {unit}", unit=unit),
        notes=(
            *_miles_notes(watched, unit, figures),
            *(_miles_not_drawn(points[1], unit) if len(rows) == 1 < len(points) else ()),
        ),
        nothing=tr("Too few cars were read again to say how many {unit} they drive.", unit=unit),
        behind=tuple(behind),
    )


def _miles_notes(watched: MilesWatched, unit: str, figures: WeekFigures) -> Iterator[str]:
    if watched.jobs:
        yield tr(
            "A job counts as far as its car has gone: to the {unit} of its return, or "
            "to its last odometer reading that can be trusted, at most to its window's "
            "end. The curve ends where fewer than {fewest_read} jobs were watched.",
            unit=unit,
            fewest_read=FEWEST_READ,
        )
    if watched.estimated:
        a_month = distance(figures, watched.miles_a_day * 30)
        jobs = len(watched.jobs)
        if watched.estimated == 1:
            yield tr(
                "1 job of {jobs:,} was never read again and was taken to be driven "
                "as the others are, {a_month:,.0f} {unit} a month in the middle. Where "
                "that is many, trust the curve by days first.",
                jobs=jobs,
                a_month=a_month,
                unit=unit,
            )
        else:
            yield tr(
                "{estimated:,} jobs of {jobs:,} were never read again and were taken to be driven "
                "as the others are, {a_month:,.0f} {unit} a month in the middle. Where "
                "that is many, trust the curve by days first.",
                estimated=watched.estimated,
                jobs=jobs,
                a_month=a_month,
                unit=unit,
            )
    if watched.left_out and watched.jobs:
        back = sum(job.came_back for job in watched.left_out)
        yield tr(
            "Left out: {jobs}, {comebacks} among them; the odometer cannot say how far "
            "the car had gone.",
            jobs=jobs_counted(len(watched.left_out)),
            comebacks=plural(back, tr("comeback"), tr("comebacks")),
        )


def _miles_not_drawn(first: float, unit: str) -> Iterator[str]:
    yield tr(
        "Not drawn yet: fewer than {fewest_read} jobs were watched over {distance:,.0f} {unit}. "
        "It is, once so many are.",
        fewest_read=FEWEST_READ,
        distance=first,
        unit=unit,
    )


def per_job_table(figures: WeekFigures) -> Table:
    """Return how many returns 100 jobs have had by a number of days, each return counted."""
    jobs = figures.year.counted
    rows: list[tuple[Cell, ...]] = []
    behind: list[tuple[str, ...]] = []
    if jobs:
        ends = _ends(figures)
        places = {job.number: place for place, job in enumerate(jobs)}
        met = [one for one in _returns_of(figures, places) if one[1] <= ends[one[0]]]
        found = mean_cumulative(ends, [job for job, _, _ in met], [days for _, days, _ in met])
        points = _to_last_return(_days(_last_day(figures)), ends, [days for _, days, _ in met])
        rows = list(_per_job_rows(points, ends, found))
        came = [(float(days), later) for _, days, later in met]
        behind = _behind([row[0] for row in rows], came)
    return Table(
        "ReturnsPerJob",
        columns(
            (DAYS, "count"),
            (tr("Still watched"), "count"),
            (RETURNS_PER_100, "number"),
            (LOW, "number"),
            (HIGH, "number"),
        ),
        tuple(rows),
        title=tr("How many returns 100 jobs have had after so many days"),
        notes=(
            tr(
                "Every return counts here, the second and third of one job too (mean "
                "cumulative function), so it can lie above the share that came back. A "
                "return of a return counts for the job before it, and for the first of its "
                "chain from the day on which that left. Low to High: where it lies 19 "
                "times of 20."
            ),
            *_not_drawn(figures, len(rows)),
        )
        if rows
        else (),
        nothing=_NOBODY,
        behind=tuple(behind),
    )


def _returns_of(figures: WeekFigures, places: Mapping[str, int]) -> Iterator[tuple[int, int, str]]:
    """Yield each return visit with the place of the job that it counts for, and the days since.

    It counts for the job that it came back for, and for the first job of that one's chain.
    """
    jobs = figures.year.counted
    seen: set[tuple[str, object]] = set()
    for one in sorted(figures.year.returns, key=lambda one: (one.row.came_on, one.row.later)):
        row = one.row
        if not row.is_comeback:
            continue
        for number in dict.fromkeys((row.earlier, row.candidate.root)):
            place = places.get(number)
            if place is not None and (number, row.visit) not in seen:
                seen.add((number, row.visit))
                yield place, (row.came_on - jobs[place].left_on).days, row.opens


def _last_day(figures: WeekFigures) -> int:
    """Return how far the curves reach: the shop's promise; a longer one would squeeze them."""
    jobs = figures.year.counted
    return figures.shop.window_days or max((job.window_days for job in jobs), default=0) or 365


def _watched_days(figures: WeekFigures) -> tuple[list[int], list[bool]]:
    days, back = year_columns(figures.year).watched()
    last = _last_day(figures)
    return [min(day, last) for day in days.tolist()], (back & (days <= last)).tolist()


def _ends(figures: WeekFigures) -> list[int]:
    """Return to which day each job is watched, returns or not."""
    last = _last_day(figures)
    days, _ = _watched_days(figures)
    return [
        min(job.days_gone, job.counts_from, last) if job.came_back else day
        for job, day in zip(figures.year.counted, days, strict=True)
    ]


def _not_drawn(figures: WeekFigures, points: int) -> Iterator[str]:
    """Say why a curve of one point is not drawn, and from when it is."""
    if points == 1:
        yield tr(
            "Not drawn yet: no counted job was still watched {days:.0f} days after it left. It is, "
            "once one is.",
            days=_days(_last_day(figures))[1],
        )


def _days(last: int) -> list[float]:
    apart = max(1, round(last / CURVE_POINTS))
    return [float(day) for day in sorted({*range(0, last, apart), last})]


def _to_last_return(
    points: Sequence[float], watched: Sequence[int], back: Sequence[int]
) -> list[float]:
    """Add the day of the last return, where the points that are drawn end before it."""
    drawn = max((point for point in points if point <= max(watched, default=0)), default=0.0)
    last = max(back, default=0)
    return sorted({*points, float(last)}) if last > drawn else [*points]


def _distances(last: float) -> list[float]:
    """Return round distances up to the last, a few between two ticks of the chart's scale."""
    step = round_ticks([last])[1] / 2
    count = int(last / step)
    return sorted({*(step * i for i in range(count + 1)), round(last)})


def _share_rows(
    points: Iterable[float], ages: Sequence[float], back: Sequence[bool], least: int = 1
) -> Iterator[tuple[Cell, ...]]:
    """Yield a row for each point to which at least so many jobs were watched."""
    import numpy as np

    curve = kaplan_meier(ages, back)
    watched = np.sort(np.asarray(ages))
    for point in points:
        at_risk = int(watched.size - np.searchsorted(watched, point, "left"))
        if at_risk < least:
            return
        yield (int(point), at_risk, *share_at(curve, point, at_risk))


def share_at(curve: Curve, point: float, at_risk: int) -> tuple[float, float, float]:
    """Return the share that came back by a point, with its bounds.

    Before the first return the curve has none: there the upper one is that of none among the jobs
    that were watched to it, which is exact (Clopper and Pearson).
    """
    import numpy as np

    step = int(np.searchsorted(curve.ages, point, "right")) - 1
    if step < 0:
        return (0.0, *clopper_pearson(0, at_risk))
    return tuple(  # type: ignore[return-value]
        float(1 - column[step]) for column in (curve.left, curve.high, curve.low)
    )


def _per_job_rows(
    points: Iterable[float], ends: Sequence[int], found: MeanCumulative
) -> Iterator[tuple[Cell, ...]]:
    import numpy as np

    watched: NDArray[Any] = np.sort(np.asarray(ends))
    for point in points:
        at_risk = int(watched.size - np.searchsorted(watched, point, "left"))
        if not at_risk:
            return
        step = int(np.searchsorted(found.ages, point, "right")) - 1
        some = (found.mean, found.low, found.high)
        values = [round(100 * float(one[step]), 2) for one in some] if step >= 0 else [0.0, 0.0]
        if step < 0:  # of none among so many no more is known than the exact bound of a count
            values.append(round(100 * poisson_interval(0)[1] / at_risk, 2))
        yield (int(point), at_risk, *values)


def _behind(points: Sequence[Cell], came: Sequence[tuple[float, str]]) -> list[tuple[str, ...]]:
    """Return for each point the jobs that came by then, the soonest first."""
    in_order = sorted(came)
    return [
        tuple(dict.fromkeys(job for age, job in in_order if age <= point))
        for point in points
        if isinstance(point, int)
    ]

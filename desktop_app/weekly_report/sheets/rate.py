"""Sheet 5: the rate by month of hand-over, the weeks with their limits, the curve of returns."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from desktop_app.returns_watched.honest_numbers.cumulative import mean_cumulative
from desktop_app.returns_watched.honest_numbers.group_rates import WIDEST_INTERVAL
from desktop_app.returns_watched.honest_numbers.proportion import wilson
from desktop_app.returns_watched.honest_numbers.survival import kaplan_meier
from desktop_app.returns_watched.judgement import counts_against
from desktop_app.returns_watched.window import EndsBy, Window
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.sheet_form import Cell, Chart, Column, Sheet, Table
from desktop_app.weekly_report.sheets.sheet_words import (
    FEW_JOBS,
    about,
    columns,
    distance,
    year_words,
)
from desktop_app.weekly_report.week import Week, week_of
from desktop_app.weekly_report.weekly_chart_of import weeks_charted
from desktop_app.weekly_report.year_behind import JobDone

CURVE_POINTS = 18  # about so many rows are read at a glance


def rate_sheet(figures: WeekFigures) -> Sheet:
    """Return the three tables with a chart of the weeks and one of the curve."""
    months, weeks, curve = _months(figures), _weeks(figures), _curve(figures)
    charts = (
        Chart(
            "Comebacks per job under watch, week by week",
            "lines",
            "Weeks",
            "Week",
            ("Rate", "Low limit", "High limit"),
            "Week in which the car came",
            "Comebacks per job under watch",
            limits=("Low limit", "High limit"),
            share=True,
        ),
        Chart(
            "Share of jobs that came back, by days since they left",
            "steps",
            "CurveOfReturns",
            "Days",
            ("Came back", "Low", "High"),
            "Days since the hand-over",
            "Share that came back",
            limits=("Low", "High"),
            share=True,
        ),
    )
    shown = (charts[0], *((charts[1],) if curve.rows else ()))
    line = about(figures, len(months.rows), year_words(figures))
    return Sheet("Rate", line, charts=shown, tables=(months, weeks, curve))


@dataclass(frozen=True, slots=True)
class _Met:
    """A later visit that counts against a job, or that nobody has judged yet."""

    days: int
    miles: float | None
    waits: bool


def _met(figures: WeekFigures) -> dict[str, list[_Met]]:
    """Return by earlier job what may count, in this window or another."""
    found: dict[str, list[_Met]] = {}
    for one in figures.year.returns:
        row = one.row
        against = counts_against(row.judgement, row.cause_class)
        if against or row.candidate.waits:
            met = _Met(row.candidate.days, row.candidate.distance_miles, not against)
            found.setdefault(row.earlier, []).append(met)
    return found


def _windows(figures: WeekFigures) -> Iterator[tuple[str, Window]]:
    shop, year = figures.shop, figures.year
    yield "early", Window(*year.early)
    rule: EndsBy = "both" if shop.window_rule == "both" else "first"
    yield "main", Window(shop.window_days, shop.window_miles, rule)
    yield "long", Window(*year.long)


def _months(figures: WeekFigures) -> Table:
    met = _met(figures)
    months: dict[str, list[JobDone]] = {}
    for job in figures.year.counted:
        months.setdefault(f"{job.left_on:%Y-%m}", []).append(job)
    rows: list[tuple[Cell, ...]] = []
    behind = []
    for month, jobs in sorted(months.items()):
        for name, window in _windows(figures):
            cells = _rate_cells(jobs, met, window)
            if name == "main" or cells[1]:  # a longer window that nobody has passed says nothing
                rows.append((month, name, *cells))
                behind.append(tuple(job.number for job in jobs))
    return Table(
        "RateByMonth",
        columns(
            ("Left in", "words"),
            ("Window", "words"),
            ("Jobs", "count"),
            ("Settled", "count"),
            ("Waiting", "count"),
            ("Comebacks", "count"),
            Column(
                "Rate",
                "share",
                '=IF(OR([@Settled]=0,[@Note]="too few to tell"),"",[@Comebacks]/[@Settled])',
            ),
            ("Low", "share"),
            ("High", "share"),
            ("By the curve", "share"),
            ("Silence dropped", "share"),
            ("Note", "words"),
        ),
        tuple(rows),
        title="By month in which the job left",
        notes=(*_window_words(figures), *_NOTES) if rows else (),
        nothing="No job of this year was counted.",
        behind=tuple(behind),
    )


_NOTES = (
    "A job is settled when its window is over and its visits are judged; a quick comeback enters "
    "only then, together with its quiet neighbours. Low to High: 95 % (Wilson).",
    "By the curve: Kaplan-Meier, with the open windows as far as they are watched. Silence "
    "dropped: the same, but a job of which nothing was heard counts only up to the last day on "
    "which its car was known to be well. The truth lies between the two.",
)


def _window_words(figures: WeekFigures) -> Iterator[str]:
    said = []
    for name, window in _windows(figures):
        far = f"{distance(figures, window.miles):,.0f} {figures.shop.distance_unit}"
        said.append(f"{name} {window.days} days or {far}")
    yield f"Windows: {', '.join(said)}."


def _rate_cells(
    jobs: Sequence[JobDone], met: dict[str, list[_Met]], window: Window
) -> tuple[Cell, ...]:
    ages, marks, silent, silent_marks = [], [], [], []
    settled = waiting = back = 0
    for job in jobs:
        inside = [m for m in met.get(job.number, ()) if window.in_window(m.days, m.miles)]
        first = min((m.days for m in inside if not m.waits), default=None)
        waits = min((m.days for m in inside if m.waits), default=None)
        over = job.days_gone > window.days
        waiting += first is None and waits is not None
        if over and (first is not None or waits is None):
            settled += 1
            back += first is not None
        until = min(job.days_gone, window.days, *((waits,) if waits is not None else ()))
        age = until if first is None or first > until else first
        ages.append(age)
        marks.append(first is not None and first <= until)
        quiet = job.state == "nothing heard" and first is None
        well = 0 if job.well_until is None else (job.well_until - job.left_on).days
        silent.append(min(age, max(well, 0)) if quiet else age)
        silent_marks.append(marks[-1])
    low, high = wilson(back, settled) if settled else (None, None)
    few = low is None or high is None or high - low > WIDEST_INTERVAL or settled < FEW_JOBS
    note = "not over yet" if not settled else "too few to tell" if few else ""
    return (
        len(jobs),
        settled,
        waiting,
        back,
        None if few else back / settled,
        low,
        high,
        None if few else _by_curve(ages, marks),
        None if few else _by_curve(silent, silent_marks),
        note,
    )


def _by_curve(ages: Sequence[int], marks: Sequence[bool]) -> float | None:
    if not any(ages):
        return None
    left = kaplan_meier(ages, marks).left
    return float(1 - left[-1]) if left.size else 0.0


def _weeks(figures: WeekFigures) -> Table:
    charted = weeks_charted(figures.weeks, figures.year.counted)
    back = _jobs_back(figures)
    rows = tuple(
        (
            str(week.week),
            week.left,
            charted.watched[i],
            week.comebacks,
            week.waiting,
            charted.rate(i),
            *charted.bounds(i),
            round(charted.rise.evidence[i], 2),
        )
        for i, week in enumerate(charted.weeks)
    )
    return Table(
        "Weeks",
        columns(
            ("Week", "words"),
            ("Handed over", "count"),
            ("Under watch", "count"),
            ("Comebacks", "count"),
            ("Waiting", "count"),
            Column("Rate", "share", '=IF([@Under watch]=0,"",[@Comebacks]/[@Under watch])'),
            ("Low limit", "share"),
            ("High limit", "share"),
            ("Slow rise", "number"),
        ),
        rows,
        title="By week in which the car came back",
        notes=(
            *charted.flags(),
            "Limits: what luck makes of as many jobs under watch, exceeded by luck once in 740 "
            f"weeks. Slow rise: evidence that comebacks doubled; above {charted.rise.decision:.1f} "
            "it counts, and luck alone gets there once in five years.",
        ),
        behind=tuple(tuple(back.get(week.week, ())) for week in charted.weeks),
    )


def _jobs_back(figures: WeekFigures) -> dict[Week, list[str]]:
    """Return the jobs that came back, by the week in which they came."""
    found: dict[Week, list[str]] = {}
    for one in figures.year.returns:
        if one.row.is_comeback:
            found.setdefault(week_of(one.row.came_on), []).append(one.row.later)
    return found


def _curve(figures: WeekFigures) -> Table:
    jobs = figures.year.counted
    header = columns(
        ("Days", "count"),
        ("Still watched", "count"),
        ("Came back", "share"),
        ("Low", "share"),
        ("High", "share"),
        ("Returns per job", "number"),
    )
    name, title = "CurveOfReturns", "How many have come back after so many days"
    if not jobs:
        return Table(name, header, (), title=title, nothing="No job of this year was counted.")
    return Table(
        name,
        header,
        tuple(_curve_rows(figures, jobs)),
        title=title,
        notes=(
            "Kaplan-Meier with Greenwood's error and log-log bounds of 95 %; an open window counts "
            "as far as it has been watched. Returns per job count every return of a car (mean "
            "cumulative function), so they can exceed the share.",
        ),
    )


def _curve_rows(figures: WeekFigures, jobs: Sequence[JobDone]) -> Iterator[tuple[Cell, ...]]:
    import numpy as np

    # As far as the shop's own promise reaches; a longer one of a kind would only squeeze it.
    last = figures.shop.window_days or max(job.window_days for job in jobs)
    ends = [min(job.days_gone, job.window_days or last, last) for job in jobs]
    stops = [
        min(end, job.waits_after) if job.waits_after is not None and job.back_after is None else end
        for end, job in zip(ends, jobs, strict=True)
    ]
    marks = [
        job.back_after is not None and job.back_after <= stop
        for job, stop in zip(jobs, stops, strict=True)
    ]
    ages = [
        job.back_after if mark and job.back_after is not None else stop
        for job, mark, stop in zip(jobs, marks, stops, strict=True)
    ]
    curve = kaplan_meier(ages, marks)
    places = {job.number: place for place, job in enumerate(jobs)}
    again = [
        (places[one.row.earlier], one.row.candidate.days)
        for one in figures.year.returns
        if one.row.is_comeback
        and one.row.earlier in places
        and one.row.candidate.days <= ends[places[one.row.earlier]]
    ]
    per_job = mean_cumulative(ends, [job for job, _ in again], [days for _, days in again])
    watched = np.sort(np.asarray(ages))
    apart = max(1, round(last / CURVE_POINTS))
    for day in sorted({*range(0, last, apart), last}):
        step = int(np.searchsorted(curve.ages, day, "right")) - 1
        more = int(np.searchsorted(per_job.ages, day, "right")) - 1
        at_risk = int(watched.size - np.searchsorted(watched, day, "left"))
        if not at_risk:
            break
        yield (
            day,
            at_risk,
            0.0 if step < 0 else float(1 - curve.left[step]),
            0.0 if step < 0 else float(1 - curve.high[step]),
            0.0 if step < 0 else float(1 - curve.low[step]),
            0.0 if more < 0 else round(float(per_job.mean[more]), 4),
        )

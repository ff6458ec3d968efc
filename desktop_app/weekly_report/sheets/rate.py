"""Sheet 5: the rate by month of hand-over, the weeks with their limits, the curves of returns."""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.headers import (
    BACK,
    DAYS,
    HIGH,
    HIGH_LIMIT,
    LOW,
    LOW_LIMIT,
    OF_THOSE_UNDER_WATCH,
    RETURNS_PER_100,
    WEEK,
)
from desktop_app.weekly_report.sheet_form import Chart, Sheet, Table
from desktop_app.weekly_report.sheet_names import RATE
from desktop_app.weekly_report.sheets.kept_out import kept_out_table
from desktop_app.weekly_report.sheets.rate_by_share import by_share_table
from desktop_app.weekly_report.sheets.rate_curves import (
    by_days_table,
    by_miles_table,
    per_job_table,
)
from desktop_app.weekly_report.sheets.rate_months import months_table
from desktop_app.weekly_report.sheets.rate_weeks import noticed_table, so_far_table, weeks_table
from desktop_app.weekly_report.sheets.sheet_words import about, unit_words, year_words

_BOUNDS = (LOW, HIGH)


def rate_sheet(figures: WeekFigures) -> Sheet:
    """Return the rates, what the weeks show, and the curves by days, by distance and per job."""
    months, noticed, weeks = months_table(figures), noticed_table(figures), weeks_table(figures)
    curves = by_days_table(figures), by_miles_table(figures), per_job_table(figures)
    drawn = {table.name for table in curves if len(table.rows) > 1}
    missing = _missing(weeks)
    weekly = () if missing == _NO_WEEK else (_weeks_chart(),)
    charts = (*weekly, *(one for one in _curve_charts(figures) if one.table in drawn))
    line = about(figures, len(months.rows), year_words(figures))
    so_far = so_far_table(figures)
    open_week = () if so_far is None else (so_far,)
    shares, kept_out = by_share_table(figures), kept_out_table(figures)
    tables = (months, kept_out, noticed, weeks, *open_week, *curves, shares)
    one_point = _ONE_POINT if any(len(table.rows) == 1 for table in curves) else ""
    sentences = tuple(words for words in (missing, one_point) if words)
    return Sheet(RATE, line, sentences=sentences, charts=charts, tables=tables)


_NO_WEEK = tr(
    "The weeks are not drawn yet: in none of them a counted job was under watch. They are, once "
    "the week is over in which the first such job is handed over."
)
_NO_COMEBACK = tr(
    "The line of the weeks lies on nought: no visit that came in them is judged a comeback of a "
    "counted job. It rises with the first week in which one came that is."
)
_ONE_POINT = tr(
    "A curve of returns that has one point alone is not drawn yet; beneath its table stands from "
    "when it is."
)


def _missing(weeks: Table) -> str:
    """Say why the chart of the weeks shows nothing, and when it will; "" where it shows some."""
    drawn = [rate for rate in weeks.column(OF_THOSE_UNDER_WATCH) if rate is not None]
    if not drawn:
        return _NO_WEEK
    return "" if any(drawn) else _NO_COMEBACK


def _weeks_chart() -> Chart:
    limits = (LOW_LIMIT, HIGH_LIMIT)
    return Chart(
        tr("Comebacks per job under watch, week by week"),
        "lines",
        "Weeks",
        WEEK,
        (OF_THOSE_UNDER_WATCH, *limits),
        tr("Week in which the car came"),
        tr("Comebacks per job under watch"),
        limits=limits,
        share=True,
    )


def _curve_charts(figures: WeekFigures) -> tuple[Chart, ...]:
    unit = unit_words(figures)
    return (
        Chart(
            tr("Share of jobs that came back, by days since they left"),
            "steps",
            "CurveOfReturns",
            DAYS,
            (BACK, *_BOUNDS),
            tr("Days since the hand-over"),
            tr("Share that came back"),
            limits=_BOUNDS,
            share=True,
        ),
        Chart(
            tr("Share of jobs that came back, by {unit} since they left", unit=unit),
            "steps",
            "CurveByMiles",
            unit.capitalize(),
            (BACK, *_BOUNDS),
            tr("{unit} since the hand-over", unit=unit.capitalize()),
            tr("Share that came back"),
            limits=_BOUNDS,
            share=True,
        ),
        Chart(
            tr("Returns per 100 jobs, by days since they left"),
            "steps",
            "ReturnsPerJob",
            DAYS,
            (RETURNS_PER_100, *_BOUNDS),
            tr("Days since the hand-over"),
            RETURNS_PER_100,
            limits=_BOUNDS,
        ),
    )

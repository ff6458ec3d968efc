"""What stands on each sheet of the week's workbook, from the week's figures."""

from __future__ import annotations

from desktop_app.parts_compared.part_kinds.kind_names import kind_words
from desktop_app.repair_jobs.distance import from_miles
from desktop_app.repair_jobs.proof import ProofLevel
from desktop_app.weekly_report.figures import JobLeft, WeekFigures
from desktop_app.weekly_report.sheet_form import Cell, Chart, Column, Kind, Sheet, Table
from desktop_app.weekly_report.totals import week_totals


def week_sheets(figures: WeekFigures) -> tuple[Sheet, ...]:
    """Return the six sheets of the workbook in their order."""
    left, came_back = _left(figures), _came_back(figures)
    on_watch, weeks = _on_watch(figures), _weeks(figures)
    totals = week_totals(figures, left, came_back, on_watch, weeks)
    chart = Chart(
        f"{len(figures.weeks)} weeks to {figures.week}", ("Handed over", "Comebacks", "Waiting")
    )
    return (
        Sheet("Read first", _about(figures, None), sentences=figures.sentences()),
        Sheet("Left this week", _about(figures, len(left.rows)), table=left),
        Sheet("Came back", _about(figures, len(came_back.rows)), table=came_back),
        Sheet("Under watch", _about(figures, len(on_watch.rows)), table=on_watch),
        Sheet("Totals", _about(figures, len(totals)), totals=totals),
        Sheet("26 weeks", _about(figures, len(weeks.rows)), table=weeks, chart=chart),
    )


def _about(figures: WeekFigures, rows: int | None) -> str:
    """Return the line that every sheet repeats: whose, which week, when it was made, how many."""
    week = figures.week
    words = [
        figures.shop.name,
        f"{week}, {week.monday.isoformat()} to {week.sunday.isoformat()}",
        f"made {figures.made_at:%Y-%m-%d %H:%M}",
    ]
    if rows is not None:
        words.append("1 row" if rows == 1 else f"{rows} rows")
    return " · ".join(words)


def _left(figures: WeekFigures) -> Table:
    unit = _unit(figures)
    columns = _columns(
        ("Job", "words"),
        ("Left on", "day"),
        ("Vehicle", "long words"),
        ("Concern", "long words"),
        ("Cause", "long words"),
        ("Correction", "long words"),
        ("System", "words"),
        ("Part kinds", "long words"),
        ("Proof", "words"),
        ("Hours", "hours"),
        ("Unbilled hours", "hours"),
        ("Price", "money"),
        ("Window ends", "day"),
        (f"Window {unit}", "count"),
        ("Declined", "long words"),
        ("Counted", "words"),
    )
    return Table("LeftThisWeek", columns, tuple(_left_row(figures, job) for job in figures.left))


def _left_row(figures: WeekFigures, job: JobLeft) -> tuple[Cell, ...]:
    level = job.proof_level
    return (
        job.number,
        job.left_on,
        job.vehicle,
        job.concern,
        "not caught" if job.cause_found is False else job.cause,
        job.correction,
        job.system,
        ", ".join(map(kind_words, job.part_kinds)),
        "not said" if level is None else f"{level} {ProofLevel(level).word}",
        job.hours,
        job.unbilled_hours,
        _amount(job.price_cents),
        job.window_ends,
        round(from_miles(job.window_miles, figures.shop.distance_unit)),
        job.declined,
        "yes" if job.counted else "no",
    )


def _came_back(figures: WeekFigures) -> Table:
    unit = _unit(figures)
    columns = _columns(
        ("Earlier job", "words"),
        ("Later job", "words"),
        ("Left on", "day"),
        ("Came on", "day"),
        ("Vehicle", "long words"),
        ("Days", "count"),
        (unit.capitalize(), "count"),
        ("Window used", "share"),
        ("Decided by", "words"),
        ("Reasons", "long words"),
        ("Then", "long words"),
        ("Now", "long words"),
        ("First job", "words"),
        ("Judgement", "words"),
        ("Counts as", "words"),
        ("Cause", "words"),
        ("Cost", "money"),
        ("Why", "long words"),
        ("Change promised", "long words"),
    )
    rows = []
    for row, counts_as in zip(figures.came_back, figures.counts_as, strict=True):
        miles = row.candidate.distance_miles
        unknown = "days only"
        cells: tuple[Cell, ...] = (
            row.earlier,
            row.later,
            row.left_on,
            row.came_on,
            row.vehicle,
            row.candidate.days,
            unknown if miles is None else from_miles(miles, figures.shop.distance_unit),
            row.candidate.window_used,
            row.candidate.decided_by,
            row.candidate.why(),
            row.concern_then,
            row.concern_now,
            row.candidate.root,
            "waiting" if row.judgement is None else row.judgement.value,
            counts_as,
            row.cause_words,
            _amount(row.cost_cents),
            row.why,
            row.change_promised,
        )
        rows.append(cells)
    return Table("CameBack", columns, tuple(rows))


def _on_watch(figures: WeekFigures) -> Table:
    unit = _unit(figures)
    columns = _columns(
        ("Job", "words"),
        ("Vehicle", "long words"),
        ("Concern", "long words"),
        ("Left on", "day"),
        ("Days so far", "count"),
        ("Days left", "count"),
        (f"{unit.capitalize()} left", "count"),
        ("Window used", "share"),
        ("Expected close", "day"),
        ("Closes by", "words"),
        ("Came back", "words"),
    )
    rows: list[tuple[Cell, ...]] = []
    for job in figures.on_watch:
        left = job.miles_left
        rows.append(
            (
                job.job,
                job.vehicle,
                job.concern,
                job.left_on,
                job.days_gone,
                job.days_left,
                "not known" if left is None else from_miles(left, figures.shop.distance_unit),
                job.share_used,
                job.expected_close,
                job.expected_close_by,
                "yes" if job.came_back else "to be judged" if job.waits else "no",
            )
        )
    return Table("UnderWatch", columns, tuple(rows))


def _weeks(figures: WeekFigures) -> Table:
    columns = _columns(
        ("Week", "words"), ("Handed over", "count"), ("Comebacks", "count"), ("Waiting", "count")
    )
    rows = tuple((str(w.week), w.left, w.comebacks, w.waiting) for w in figures.weeks)
    return Table("WeeksBehind", columns, rows)


def _columns(*pairs: tuple[str, Kind]) -> tuple[Column, ...]:
    return tuple(Column(header, kind) for header, kind in pairs)


def _amount(cents: int | None) -> float | None:
    return None if cents is None else cents / 100


def _unit(figures: WeekFigures) -> str:
    return "miles" if figures.shop.distance_unit == "mi" else "kilometres"

"""Sheet 3: the visits of the week that may be returns, each with what was decided."""

from __future__ import annotations

from desktop_app.returns_watched.judgement import return_cause
from desktop_app.weekly_report.figures import CountsAs, WeekFigures
from desktop_app.weekly_report.sheet_form import Cell, Sheet, Table
from desktop_app.weekly_report.sheets.sheet_words import (
    about,
    amount,
    columns,
    distance,
    joined,
    unit_words,
)
from desktop_app.weekly_report.year_behind import ReturnDone


def came_back_sheet(figures: WeekFigures) -> Sheet:
    """Return one row for each pair of an earlier job and a later one of the week."""
    found = {(one.row.earlier, one.row.later): one for one in figures.year.returns}
    rows = tuple(
        _row(figures, found.get((row.earlier, row.later), ReturnDone(row)), counts_as)
        for row, counts_as in zip(figures.came_back, figures.counts_as, strict=True)
    )
    table = Table(
        "CameBack",
        columns(
            ("Earlier job", "words"),
            ("Later job", "words"),
            ("Left on", "day"),
            ("Came on", "day"),
            ("Vehicle", "long words"),
            ("Days", "count"),
            (unit_words(figures).capitalize(), "count"),
            ("Window used", "share"),
            ("Decided by", "words"),
            ("Reasons", "long words"),
            ("Then", "long words"),
            ("Now", "long words"),
            ("First job", "words"),
            ("Judgement", "words"),
            ("Also", "words"),
            ("Counts as", "words"),
            ("Cause", "words"),
            ("Helped by", "words"),
            ("Judged by", "words"),
            ("Cost", "money"),
            ("Why", "long words"),
            ("Change promised", "long words"),
        ),
        rows,
        nothing="No car came back in this week.",
    )
    return Sheet("Came back", about(figures, len(rows)), tables=(table,))


def _row(figures: WeekFigures, one: ReturnDone, counts_as: CountsAs) -> tuple[Cell, ...]:
    row, miles = one.row, one.row.candidate.distance_miles
    used = row.candidate.window_used
    return (
        row.earlier,
        row.later,
        row.left_on,
        row.came_on,
        row.vehicle,
        row.candidate.days,
        "days only" if miles is None else distance(figures, miles),
        "not known" if used is None else used,
        row.candidate.decided_by,
        row.candidate.why(),
        row.concern_then,
        row.concern_now,
        row.candidate.root,
        "waiting" if row.judgement is None else row.judgement.value,
        joined(kind.value for kind in one.also),
        counts_as,
        row.cause_words,
        joined(cause.words for each in one.helping if (cause := return_cause(each)) is not None),
        f"{row.judged_by}; second look {one.second_look}" if one.second_look else row.judged_by,
        None if one.cost is None else amount(one.cost.total_cents),
        row.why,
        row.change_promised,
    )

"""Sheet 14: what the shop promised to do differently, and whether it was done."""

from __future__ import annotations

from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.sheet_form import Sheet, Table
from desktop_app.weekly_report.sheets.sheet_words import about, columns, year_words


def changes_sheet(figures: WeekFigures) -> Sheet:
    """Return one row for each promise, those that are open first, then by day."""
    said = [one for one in figures.year.returns if one.change.is_said]
    said.sort(key=lambda one: (not one.change.is_open(figures.as_of), one.row.came_on))
    same = figures.year.counted
    rows = tuple(
        (
            one.row.later,
            one.row.earlier,
            one.change.words,
            one.change.by,
            one.change.due,
            one.change.done_on,
            one.change.check_on,
            one.change.state(figures.as_of),
            one.row.cause_words or "not said",
            _of_the_cause(figures, one.row.cause_class, before=True, done=one.change.done_on),
            _of_the_cause(figures, one.row.cause_class, before=False, done=one.change.done_on),
        )
        for one in said
    )
    table = Table(
        "Changes",
        columns(
            ("Return", "words"),
            ("Of job", "words"),
            ("What", "long words"),
            ("Who", "words"),
            ("Due", "day"),
            ("Done on", "day"),
            ("Look again on", "day"),
            ("State", "long words"),
            ("Cause", "words"),
            ("Same cause before", "count"),
            ("and since", "count"),
        ),
        rows,
        notes=(
            "After a bad month things get better by themselves. A few comebacks less after a "
            "change are no proof that it helped.",
        )
        if same and rows
        else (),
        nothing="No change was promised.",
    )
    return Sheet("Changes", about(figures, len(rows), year_words(figures)), tables=(table,))


def _of_the_cause(
    figures: WeekFigures, cause: str | None, *, before: bool, done: object
) -> int | None:
    """Count the year's comebacks of a cause before the change was done, or since."""
    if done is None or cause is None:
        return None
    return sum(
        one.row.is_comeback and one.row.cause_class == cause and (one.row.came_on < done) == before  # type: ignore[operator]
        for one in figures.year.returns
    )

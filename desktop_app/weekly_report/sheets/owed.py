"""Sheet 12: what suppliers owe."""

from __future__ import annotations

from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.sheet_form import Sheet, Table
from desktop_app.weekly_report.sheets.sheet_words import about, amount, columns

_WHAT = {"core": "credit for a core", "claim": "claim for a part that failed"}


def owed_sheet(figures: WeekFigures) -> Sheet:
    """Return one row for each sum that is still open, the oldest first."""
    owed = figures.year.owed
    table = Table(
        "MoneyOwed",
        columns(
            ("Job", "words"),
            ("Supplier", "words"),
            ("Part", "long words"),
            ("What", "words"),
            ("Since", "day"),
            ("Days", "count"),
            ("Amount", "money"),
            ("State", "words"),
            ("Next step", "long words"),
        ),
        tuple(
            (
                one.job_number,
                one.supplier or "not said",
                one.part,
                _WHAT[one.what.value],
                one.since,
                one.days_open(figures.as_of),
                "not known" if one.amount_cents is None else amount(one.amount_cents),
                one.state.value,
                one.next_step,
            )
            for one in owed
        ),
        nothing="No supplier owes anything that was written down.",
    )
    return Sheet("Money owed", about(figures, len(table.rows)), tables=(table,))

"""Sheet 12: what suppliers owe."""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.headers import DAYS, JOB, STATE
from desktop_app.weekly_report.sheet_form import Sheet, Table
from desktop_app.weekly_report.sheet_names import MONEY_OWED
from desktop_app.weekly_report.sheets.sheet_words import about, amount, columns

_WHAT = {"core": tr("credit for a core"), "claim": tr("claim for a part that failed")}


def owed_sheet(figures: WeekFigures) -> Sheet:
    """Return one row for each sum that is still open, the oldest first."""
    owed = figures.year.owed
    table = Table(
        "MoneyOwed",
        columns(
            (JOB, "words"),
            (tr("Supplier"), "words"),
            (tr("Part"), "long words"),
            (tr("What"), "words"),
            (tr("Since"), "day"),
            (DAYS, "count"),
            (tr("Amount"), "money"),
            (STATE, "words"),
            (tr("Next step"), "long words"),
        ),
        tuple(
            (
                one.job_number,
                one.supplier or tr("not said"),
                one.part,
                _WHAT[one.what.value],
                one.since,
                one.days_open(figures.as_of),
                tr("not known") if one.amount_cents is None else amount(one.amount_cents),
                tr(one.state.value),
                one.next_step,
            )
            for one in owed
        ),
        nothing=tr("No supplier owes anything that was written down."),
    )
    return Sheet(MONEY_OWED, about(figures, len(table.rows)), tables=(table,))

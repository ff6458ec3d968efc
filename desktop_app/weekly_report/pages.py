"""The sheets of the week's workbook, from the week's figures."""

from __future__ import annotations

from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.read_first import read_first
from desktop_app.weekly_report.sheet_form import Sheet
from desktop_app.weekly_report.sheets.came_back import came_back_sheet
from desktop_app.weekly_report.sheets.chains import chains_sheet
from desktop_app.weekly_report.sheets.changes import changes_sheet
from desktop_app.weekly_report.sheets.costs import costs_sheet
from desktop_app.weekly_report.sheets.definitions import definitions_sheet
from desktop_app.weekly_report.sheets.kinds import kinds_sheet
from desktop_app.weekly_report.sheets.left import left_sheet
from desktop_app.weekly_report.sheets.owed import owed_sheet
from desktop_app.weekly_report.sheets.people import people_sheet
from desktop_app.weekly_report.sheets.proof import proof_sheet
from desktop_app.weekly_report.sheets.rate import rate_sheet
from desktop_app.weekly_report.sheets.raw import raw_sheet
from desktop_app.weekly_report.sheets.sheet_words import about
from desktop_app.weekly_report.sheets.symptoms import symptoms_sheet
from desktop_app.weekly_report.sheets.where_from import where_from_sheet
from desktop_app.weekly_report.sheets.windows import windows_sheet
from desktop_app.weekly_report.totals import week_totals

_MADE = (
    left_sheet,
    came_back_sheet,
    windows_sheet,
    rate_sheet,
    kinds_sheet,
    where_from_sheet,
    symptoms_sheet,
    proof_sheet,
    people_sheet,
    costs_sheet,
    owed_sheet,
    chains_sheet,
    changes_sheet,
    raw_sheet,
)


def week_sheets(figures: WeekFigures) -> tuple[Sheet, ...]:
    """Return the fifteen sheets of the workbook in their order, and the definitions."""
    made = tuple(make(figures) for make in _MADE)
    tables = {table.name: table for sheet in made for table in sheet.tables}
    first = Sheet(
        "Read first",
        about(figures, None),
        sentences=read_first(figures),
        totals=week_totals(tables),
    )
    return (first, *made, definitions_sheet(figures))

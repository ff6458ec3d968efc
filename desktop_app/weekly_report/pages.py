"""The sheets of the week's workbook, from the week's figures."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence

from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.read_first import read_first
from desktop_app.weekly_report.sheet_form import Sheet, Table
from desktop_app.weekly_report.sheet_names import (
    CAME_BACK,
    CHAINS,
    CHANGES,
    COSTS,
    DEFINITIONS,
    KINDS_OF_PART,
    LEFT_THIS_WEEK,
    MONEY_OWED,
    PEOPLE,
    PROOF,
    RATE,
    RAW,
    READ_FIRST,
    SYMPTOMS,
    WHERE_FROM,
    WINDOWS,
)
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
from desktop_app.weekly_report.sheets.raw import raw_counts, raw_sheet
from desktop_app.weekly_report.sheets.sheet_words import about
from desktop_app.weekly_report.sheets.symptoms import symptoms_sheet
from desktop_app.weekly_report.sheets.where_from import where_from_sheet
from desktop_app.weekly_report.sheets.windows import windows_sheet
from desktop_app.weekly_report.to_act_on import is_to_come, to_act_on
from desktop_app.weekly_report.totals import week_totals

# The sheets by name, in their order; Read first stands before them and speaks of all.
_MADE: dict[str, Callable[[WeekFigures], Sheet]] = {
    LEFT_THIS_WEEK: left_sheet,
    CAME_BACK: came_back_sheet,
    WINDOWS: windows_sheet,
    RATE: rate_sheet,
    KINDS_OF_PART: kinds_sheet,
    WHERE_FROM: where_from_sheet,
    SYMPTOMS: symptoms_sheet,
    PROOF: proof_sheet,
    PEOPLE: people_sheet,
    COSTS: costs_sheet,
    MONEY_OWED: owed_sheet,
    CHAINS: chains_sheet,
    CHANGES: changes_sheet,
    RAW: raw_sheet,
    DEFINITIONS: definitions_sheet,
}
SHEET_NAMES = (READ_FIRST, *_MADE)
# What Read first adds up, beside the raw jobs.
_ADDED_UP = (LEFT_THIS_WEEK, CAME_BACK, WINDOWS, COSTS)


def week_sheet(figures: WeekFigures, name: str) -> Sheet:
    """Return one sheet of the workbook by its name."""
    if name != READ_FIRST:
        return _MADE[name](figures)
    sheets = (_MADE[each](figures) for each in _ADDED_UP)
    return _read_first(figures, [*_tables(sheets), raw_counts(figures)])


def week_sheets(figures: WeekFigures) -> tuple[Sheet, ...]:
    """Return the fifteen sheets of the workbook in their order, and the definitions."""
    made = tuple(make(figures) for make in _MADE.values())
    return (_read_first(figures, _tables(made)), *made)


def _tables(sheets: Iterable[Sheet]) -> list[Table]:
    return [table for sheet in sheets for table in sheet.tables]


def _read_first(figures: WeekFigures, tables: Sequence[Table]) -> Sheet:
    to_come = is_to_come(figures)
    return Sheet(
        READ_FIRST,
        about(figures, None),
        sentences=read_first(figures),
        totals=() if to_come else week_totals({table.name: table for table in tables}),
        totals_name="ReadFirstTotals",
        to_do=() if to_come else to_act_on(figures),
    )

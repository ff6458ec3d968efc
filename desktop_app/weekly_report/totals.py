"""The totals of a week: each a formula over the workbook's tables, with its result as of now."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from desktop_app.returns_watched.judgement import Judgement
from desktop_app.weekly_report.sheet_form import Cell, Kind, Table, Total

ENDS_SOON_DAYS = 7


def week_totals(sheets: Mapping[str, Table]) -> tuple[Total, ...]:
    """Return the totals in the order in which they are read, over the tables by their names."""
    left, came_back, watch = sheets["LeftThisWeek"], sheets["CameBack"], sheets["UnderWatch"]
    return (*_of_the_week(left, came_back, watch), *_of_the_year(sheets["Raw"], sheets["Costs"]))


def _of_the_week(left: Table, came_back: Table, watch: Table) -> tuple[Total, ...]:
    return (
        _count(left, "Job", "Jobs handed over", "Every job that left in the week."),
        _match(left, "Counted", "yes", "of these with a cause and a correction"),
        _match(left, "Proof", "0 unproven", "of these left unproven"),
        _sum(left, "Hours", "Hours worked", "hours", "As written on the jobs."),
        _sum(left, "Unbilled hours", "Hours not billed", "hours", "As written on the jobs."),
        _sum(left, "Price", "Price of the jobs", "money", "As written on the jobs."),
        _match(
            came_back,
            "Counts as",
            "comeback",
            "Comebacks",
            "Visits judged a comeback inside the window; each counts once.",
        ),
        _match(came_back, "Counts as", "waiting", "Visits that wait for judgement", "Neither."),
        *(_match(came_back, "Judgement", each.value, f"judged {each.value}") for each in Judgement),
        _sum(came_back, "Cost", "Cost of the week's returns", "money", "Where somebody wrote it."),
        _count(watch, "Job", "Jobs under watch", "An open window is not a success."),
        _at_most(
            watch,
            "Days left",
            ENDS_SOON_DAYS,
            f"of these ending by time within {ENDS_SOON_DAYS} days",
        ),
    )


def _of_the_year(raw: Table, costs: Table) -> tuple[Total, ...]:
    settled = sum(cell for cell in _cells(raw, "Settled") if isinstance(cell, int))
    both = f"{raw.reach('Settled')},{raw.reach('Came back')}"
    back = sum(
        int(a == 1 and b == 1)
        for a, b in zip(_cells(raw, "Settled"), _cells(raw, "Came back"), strict=True)
    )
    rate = f'=IF(SUM({raw.reach("Settled")})=0,"",SUMPRODUCT({both})/SUM({raw.reach("Settled")}))'
    return (
        _sum(raw, "Counted", "Jobs of the year that are counted", "count", "52 weeks."),
        _sum(raw, "Settled", "of these settled", "count", "Window over, visits judged."),
        Total("of the settled that came back", f"=SUMPRODUCT({both})", back, "count"),
        Total(
            "Rate of the year",
            rate,
            back / settled if settled else None,
            "share",
            "Of settled jobs. Its bounds stand among the sentences above.",
        ),
        _sum(raw, "Waiting", "Jobs with a visit that waits", "count", "Neither good nor bad."),
        _sum(costs, "Total", "Cost of the year's comebacks", "money", "Where it was written."),
    )


def _count(table: Table, header: str, words: str, note: str) -> Total:
    value = _matching(table, header, lambda cell: cell not in (None, ""))
    return Total(words, f"=COUNTA({table.reach(header)})", value, "count", note)


def _match(table: Table, header: str, wanted: str, words: str, note: str = "") -> Total:
    value = _matching(table, header, lambda cell: cell == wanted)
    return Total(words, f'=COUNTIF({table.reach(header)},"{wanted}")', value, "count", note)


def _at_most(table: Table, header: str, most: int, words: str, note: str = "") -> Total:
    value = _matching(table, header, lambda cell: isinstance(cell, int) and cell <= most)
    return Total(words, f'=COUNTIF({table.reach(header)},"<={most}")', value, "count", note)


def _sum(table: Table, header: str, words: str, kind: Kind, note: str) -> Total:
    numbers = [cell for cell in _cells(table, header) if isinstance(cell, (int, float))]
    return Total(words, f"=SUM({table.reach(header)})", sum(numbers), kind, note)


def _matching(table: Table, header: str, wanted: Callable[[Cell], bool]) -> int:
    return sum(1 for cell in _cells(table, header) if wanted(cell))


def _cells(table: Table, header: str) -> list[Cell]:
    return list(table.column(header))

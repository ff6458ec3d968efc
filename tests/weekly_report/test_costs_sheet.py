"""The sheet Costs: hours, work and cash stand apart, by week and by cause as for each return."""

from __future__ import annotations

from decimal import Decimal

from desktop_app.returns_watched.return_cost import ReturnCost
from desktop_app.weekly_report.sheet_form import Table
from desktop_app.weekly_report.sheets.costs import costs_sheet
from tests.weekly_report.year_made import came, done, figures

APART = ("Unbilled hours", "Work", "Cash out", "Not split", "Got back", "Total")


def sums(table: Table) -> dict[str, float]:
    """Return each column's sum."""
    return {header: sum(float(cell or 0) for cell in table.column(header)) for header in APART}  # type: ignore[arg-type]


def test_the_parts_of_a_cost_add_up_in_every_table() -> None:
    first, second = done("J-1", 100, back_after=20), done("J-2", 90, back_after=30)
    cost = ReturnCost(Decimal(2), 12_000, 5_000, 700, 3_000)
    same_visit = done("J-3", 100, back_after=20, vehicle="car J-1")
    returns = [
        came(first, "J-9", 20, cause="fitted-badly", cost=cost),
        came(same_visit, "J-9", 20, cause="fitted-badly"),
        came(second, "J-10", 30, cause="part-died-early", cost=cost),
    ]
    sheet = costs_sheet(figures([first, same_visit, second], returns))
    each, causes, weeks = (sheet.table(n) for n in ("Costs", "CostByCause", "CostByWeek"))
    assert sums(each) == sums(causes) == sums(weeks)
    assert sums(each)["Total"] == 2 * 147.0
    # One visit that met two earlier jobs is one comeback, and opens to one job.
    badly = causes.rows[0]
    assert (badly[0], badly[1]) == ("fitted badly", 1)
    assert causes.behind[0] == ("J-9",)
    assert sum(int(str(row[1])) for row in weeks.rows) == 2

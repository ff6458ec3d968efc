"""The sheet Costs: hours, work and cash stand apart, by week and by cause as for each return."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from decimal import Decimal

from desktop_app.returns_watched.candidate import Candidate
from desktop_app.returns_watched.judgement import Judgement
from desktop_app.returns_watched.return_cost import ReturnCost
from desktop_app.weekly_report.before_the_year import CostBefore
from desktop_app.weekly_report.sheet_form import Table
from desktop_app.weekly_report.sheets.costs import costs_sheet
from tests.weekly_report.year_made import came, done, figures

APART = ("Unbilled hours", "Work", "Cash out", "In one sum", "Got back", "Total")


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
    assert badly[:3] == ("fitted badly", 1, 0)  # it is written with one of the two
    assert causes.behind[0] == ("J-9",)
    assert sum(int(str(cell)) for cell in weeks.column("Comebacks")) == 2
    assert weeks.column("52 weeks to then")[-1] == 2 * 147.0


def test_what_nobody_wrote_is_no_nought_and_no_chart() -> None:
    back = done("J-1", 100, back_after=20)
    sheet = costs_sheet(figures([back], [came(back, "J-9", 20)]))
    assert [total.value for total in sheet.totals] == [None] * 5
    assert sheet.charts == ()
    assert sheet.table("Costs").nothing == "No cost of a comeback was written."
    for name in ("CostByCause", "CostByWeek"):  # where a sum of nothing is a nought
        assert sheet.table(name).column("Without a cost")[0] == 1


def test_each_week_says_what_the_52_weeks_to_then_cost() -> None:
    jobs = [done("J-1", 340), done("J-2", 60)]
    spent = [ReturnCost(Decimal(0), 0, 0, cents, 0) for cents in (1_000, 200)]
    met = [came(jobs[0], "K-1", 20, cost=spent[0]), came(jobs[1], "K-2", 40, cost=spent[1])]
    made = figures(jobs, met)
    days = [made.year.first - timedelta(days=ago) for ago in (1, 200, 364)]
    older = tuple(CostBefore(f"A-{n}", "A", on, 10_000) for n, on in enumerate(days))
    sheet = costs_sheet(replace(made, year=replace(made.year, costs_before=older)))
    weeks = sheet.table("CostByWeek")
    # The last week stands there though no car came back in it: its sum is the one asked for.
    assert [row[0] for row in weeks.rows][-1] == "2026-W46"
    sums = []
    for last in weeks.column("To"):
        assert isinstance(last, date)
        every = [(one.came_on, one.cents) for one in older]
        every += [(one.row.came_on, one.cost.total_cents) for one in met if one.cost]
        span = timedelta(days=52 * 7)
        sums.append(sum(cents for on, cents in every if last - span < on <= last) / 100)
    assert list(weeks.column("52 weeks to then")) == sums
    assert len(set(sums)) == 3
    before = sheet.table("CostsBefore")
    assert before.column("Total") == (100.0, 100.0, 100.0)
    assert not any(table.name == "CostsBefore" for table in costs_sheet(made).tables)


def test_a_visit_with_a_cost_at_one_of_its_jobs_has_its_cost() -> None:
    first, same = done("J-1", 100, back_after=60), done("J-2", 95, back_after=55, vehicle="car J-1")
    cost = ReturnCost(Decimal(0), 0, 0, 5_000, 0)
    met = [came(first, "K-1", 60, cost=cost), came(same, "K-1", 55)]
    sheet = costs_sheet(figures([first, same], met))
    assert not any("no cost written" in note for note in sheet.table("Costs").notes)
    none = costs_sheet(figures([first, same], [replace(one, cost=None) for one in met]))
    assert any("1 comeback has no cost" in note for note in none.table("Costs").notes)


def test_the_same_cost_written_at_two_jobs_of_a_visit_counts_once() -> None:
    first, same = done("J-1", 100, back_after=60), done("J-2", 95, back_after=55, vehicle="car J-1")
    cost, more = ReturnCost(Decimal(0), 0, 0, 5_000, 0), ReturnCost(Decimal(0), 0, 0, 700, 0)
    twice = [came(first, "K-1", 60, cost=cost), came(same, "K-1", 55, cost=cost)]
    assert sums(costs_sheet(figures([first, same], twice)).table("Costs"))["Total"] == 50.0
    added = [came(first, "K-1", 60, cost=cost), came(same, "K-1", 55, cost=more)]
    assert sums(costs_sheet(figures([first, same], added)).table("Costs"))["Total"] == 57.0
    # Two hours are the same two hours, whatever an hour cost when each of the two was judged.
    hours = [ReturnCost(Decimal(2), work, 0, 0, 0) for work in (12_000, 16_000)]
    priced = [came(first, "K-1", 60, cost=hours[0]), came(same, "K-1", 55, cost=hours[1])]
    assert sums(costs_sheet(figures([first, same], priced)).table("Costs"))["Total"] == 120.0
    # Of two that are alike the one stays that a rate counts.
    nothing = first._replace(counted=False)
    assert sums(costs_sheet(figures([nothing, same], twice)).table("Costs"))["Total"] == 50.0


def test_costs_of_returns_that_no_rate_counts_are_named_beside_the_sum() -> None:
    jobs = [done(f"J-{n}", 100) for n in range(3)]
    cost = ReturnCost(Decimal(0), 0, 0, 10_000, 0)
    foretold = came(jobs[0], "K-0", 20, judgement=Judgement.FORETOLD, cost=cost)
    others = came(jobs[1], "K-1", 20, cause="other-use", cost=cost)
    late = came(jobs[2], "K-2", 95, cost=cost)
    late = replace(late, row=replace(late.row, candidate=beyond(late.row.candidate)))
    table = costs_sheet(figures(jobs, [foretold, others, late])).table("Costs")
    assert table.rows == ()
    [note] = [one for one in table.notes if one.startswith("Not among these")]
    assert "3 return visits that no rate counts" in note
    assert "$300.00 were written there" in note


def beyond(met: Candidate) -> Candidate:
    """The same pair after the window."""
    return replace(met, in_window=False, window_used=1.1)


def test_hours_at_the_programs_own_price_say_so_and_where_it_is_set() -> None:
    job = done("J-1", 100, back_after=60)
    made = figures([job], [came(job, "K-1", 60, cost=ReturnCost(Decimal(2), 12_000, 0, 0, 0))])

    def notes(*, preset: bool) -> str:
        year = replace(made.year, hour_cost_cents=6000, hour_is_preset=preset)
        return " ".join(costs_sheet(replace(made, year=year)).table("Costs").notes)

    assert "$60.00 an hour is the price that the program comes with" in notes(preset=True).replace(
        "\u2060", ""
    )
    assert "House Rules, “hour cost”" in notes(preset=True)
    assert "comes with" not in notes(preset=False)

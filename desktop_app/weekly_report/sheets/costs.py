"""Sheet 11: what the returns cost: each one, by cause, and by week."""

from __future__ import annotations

from collections.abc import Iterator

from desktop_app.returns_watched.return_cost import ReturnCost, cost_of_all
from desktop_app.weekly_report.cost_once import costs_unwritten
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.sheet_form import Cell, Chart, Column, Kind, Sheet, Table, Total
from desktop_app.weekly_report.sheets.sheet_words import about, amount, columns, plural, year_words
from desktop_app.weekly_report.week import week_of
from desktop_app.weekly_report.year_behind import (
    DAYS_IN_YEAR,
    WEEKS_IN_YEAR,
    ReturnDone,
    YearBehind,
)

# Hours, work and cash stand apart: adding them without saying so would count the hours twice.
_PARTS: tuple[tuple[str, Kind], ...] = (
    ("Unbilled hours", "hours"),
    ("Work", "money"),
    ("Cash out", "money"),
    ("In one sum", "money"),
    ("Got back", "money"),
    ("Total", "money"),
)
_ALL_OF_THEM = "The first three added up, less what was got back; nothing is to be added to it."
_TOTAL = "=[@Work]+[@Cash out]+[@In one sum]-[@Got back]"


def costs_sheet(figures: WeekFigures) -> Sheet:
    """Return the cost of each comeback of the year, summed by cause and by week."""
    found, beside = _counted(figures.year)
    each, causes, weeks = _each(figures, found, beside), _by_cause(found), _by_week(figures, found)
    totals = tuple(_sum(each, header) for header in ("Work", "Cash out", "In one sum", "Got back"))
    values = [total.value or 0.0 for total in totals]
    whole = round(sum(values[:3]) - values[3], 2)
    reach = each.reach("Total")
    totals = (
        *totals,
        Total("Cost of the year's comebacks", f"=SUM({reach})", whole, "money", _ALL_OF_THEM),
    )
    chart = Chart(
        "Cost of the year's comebacks by cause",
        "bars",
        "CostByCause",
        "Cause",
        ("Total",),
        "Cause",
        f"Cost in {figures.shop.currency}",
        currency=figures.shop.currency,
    )
    before = _before(figures.year) if weeks.rows else None
    return Sheet(
        "Costs",
        about(figures, len(each.rows), year_words(figures)),
        totals=totals,
        charts=(chart,) if causes.rows else (),
        tables=(causes, each, weeks, *(() if before is None else (before,))),
    )


_SUMMED = {
    "Work": "Unbilled hours at what an hour costs the shop.",
    "Cash out": "Parts, work given out, towing, loan car, goodwill.",
    "In one sum": "Written as one sum: nobody has split it.",
    "Got back": "What suppliers paid.",
}


def _counted(year: YearBehind) -> tuple[list[ReturnDone], list[ReturnDone]]:
    """Return the comebacks that a rate counts, and the other returns."""
    found: list[ReturnDone] = []
    beside: list[ReturnDone] = []
    for one in year.returns:
        counts = one.row.is_comeback and one.row.earlier not in year.left_out
        (found if counts else beside).append(one)
    return found, beside


def _sum(table: Table, header: str) -> Total:
    numbers = [cell for cell in table.column(header) if isinstance(cell, (int, float))]
    return Total(
        header, f"=SUM({table.reach(header)})", round(sum(numbers), 2), "money", _SUMMED[header]
    )


def _each(figures: WeekFigures, found: list[ReturnDone], beside: list[ReturnDone]) -> Table:
    written = [one for one in found if one.cost is not None]
    unwritten = costs_unwritten(found)
    notes = list(_not_among(figures, beside))
    told = sum(one.row.is_told for one in found)
    if told:
        notes.append(
            f"{plural(told, 'comeback')} {'was' if told == 1 else 'were'} only told: what that "
            "cost the shop is written nowhere here and stands in no sum."
        )
    if unwritten:
        notes.append(
            f"{plural(unwritten, 'comeback')} {'has' if unwritten == 1 else 'have'} no cost "
            "written, so the sums are too low."
        )
    if written:
        notes.append(
            "Work: the unbilled hours at what an hour costs the shop, not what it would have sold "
            "for. Cash out: parts, work given out, towing, loan car, goodwill. Total: work and "
            "cash out and what stands in one sum, less what was got back. Lost customers are not "
            "guessed at."
        )
    return Table(
        "Costs",
        columns(
            ("Return", "words"),
            ("Of job", "words"),
            ("Came on", "day"),
            ("Cause", "words"),
            *_PARTS[:-1],
            Column("Total", "money", _TOTAL),
        ),
        tuple(_cost_row(one, one.cost) for one in written if one.cost is not None),
        title="Each comeback",
        notes=tuple(notes),
        nothing="No cost of a comeback was written.",
    )


def _not_among(figures: WeekFigures, beside: list[ReturnDone]) -> Iterator[str]:
    """Say what was written for returns that are no comebacks here."""
    nothing = "after a job in which nothing was put right"
    others = "that no rate counts: not judged, judged no comeback, not ours, or after the window"
    for words, comeback in ((nothing, True), (others, False)):
        some = [one for one in beside if one.cost and one.row.is_comeback == comeback]
        cost = cost_of_all(one.cost for one in some).total_cents / 100
        if some:
            yield (
                f"Not among these: {plural(_visits(some), 'return visit')} {words}; "
                f"{figures.shop.currency}{cost:,.2f} were written there."
            )


def _cost_row(one: ReturnDone, cost: ReturnCost) -> tuple[Cell, ...]:
    return (
        one.row.later,
        one.row.earlier,
        one.row.came_on,
        one.row.cause_words or "not said",
        *_parts(cost),
    )


def _by_cause(found: list[ReturnDone]) -> Table:
    causes: dict[str, list[ReturnDone]] = {}
    for one in found:
        causes.setdefault(one.row.cause_words or "not said", []).append(one)
    sums = {cause: cost_of_all(one.cost for one in some) for cause, some in causes.items()}
    order = sorted(causes, key=lambda cause: (-sums[cause].total_cents, cause))
    summed = (
        Column(header, kind, f"=SUMIFS(Costs[{header}],Costs[Cause],[@Cause])")
        for header, kind in _PARTS
    )
    return Table(
        "CostByCause",
        columns(("Cause", "words"), ("Comebacks", "count"), *summed),
        tuple((cause, _visits(causes[cause]), *_parts(sums[cause])) for cause in order),
        title="By cause",
        nothing="No car came back in this year.",
        behind=tuple(_jobs(causes[cause]) for cause in order),
    )


_UNTIL = '"<="&[@To]'


def _in_days(table: str, header: str, days: int) -> str:
    """Return what one column of a table sums up over the days that end with a row's own week."""
    return (
        f'SUMIFS({table}[{header}],{table}[Came on],">"&([@To]-{days}),{table}[Came on],{_UNTIL})'
    )


def _by_week(figures: WeekFigures, found: list[ReturnDone]) -> Table:
    weeks = [figures.week.moved(-back) for back in reversed(range(WEEKS_IN_YEAR))]
    by_week: dict[str, list[ReturnDone]] = {str(week): [] for week in weeks}
    for one in found:
        by_week.setdefault(str(week_of(one.row.came_on)), []).append(one)
    spent = [(one.came_on, one.cents) for one in figures.year.costs_before]
    spent += [(one.row.came_on, one.cost.total_cents) for one in found if one.cost is not None]
    shown = [week for week in weeks if by_week[str(week)] or (spent and week == figures.week)]
    rows: list[tuple[Cell, ...]] = []
    for week in shown:
        some, last = by_week[str(week)], week.sunday
        cost = cost_of_all(one.cost for one in some)
        running = sum(cents for on, cents in spent if 0 <= (last - on).days < DAYS_IN_YEAR)
        rows.append((str(week), last, _visits(some), *_parts(cost), running / 100))
    summed = (Column(header, kind, f"={_in_days('Costs', header, 7)}") for header, kind in _PARTS)
    added = ("Costs", "CostsBefore") if figures.year.costs_before else ("Costs",)
    sums = "+".join(_in_days(name, "Total", DAYS_IN_YEAR) for name in added)
    running_sum = Column("52 weeks to then", "money", f"={sums}")
    return Table(
        "CostByWeek",
        columns(("Week", "words"), ("To", "day"), ("Comebacks", "count"), *summed, running_sum),
        tuple(rows),
        title="By week in which the car came back",
        nothing="No car came back in this year.",
        notes=(
            "Weeks without a comeback are not listed, but for the last. 52 weeks to then: what the "
            "comebacks cost in the 52 weeks that end with that one.",
        )
        if rows
        else (),
        behind=tuple(_jobs(by_week[str(week)]) for week in shown),
    )


def _before(year: YearBehind) -> Table | None:
    """Return what the year before cost, on which the sums of 52 weeks stand; None without any."""
    if not year.costs_before:
        return None
    return Table(
        "CostsBefore",
        columns(("Return", "words"), ("Of job", "words"), ("Came on", "day"), ("Total", "money")),
        tuple((one.later, one.earlier, one.came_on, one.cents / 100) for one in year.costs_before),
        title="The year before, for the sums of 52 weeks alone",
        notes=("None of these is in any other figure of this book.",),
    )


def _parts(cost: ReturnCost) -> tuple[Cell, ...]:
    return (
        float(cost.hours),
        amount(cost.work_cents),
        amount(cost.cash_out_cents),
        amount(cost.not_split_cents),
        amount(cost.recovered_cents),
        amount(cost.total_cents),
    )


def _visits(some: list[ReturnDone]) -> int:
    """Return how many visits these are: one can meet two earlier jobs, and counts once."""
    return len({one.row.visit for one in some})


def _jobs(some: list[ReturnDone]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(one.row.opens for one in some))

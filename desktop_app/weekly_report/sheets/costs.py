"""Sheet 11: what the returns cost: each one, by cause, and by week."""

from __future__ import annotations

from collections.abc import Iterator

from desktop_app.language import tr
from desktop_app.returns_watched.return_cost import ReturnCost, cost_of_all, preset_in_words
from desktop_app.weekly_report.cost_once import costs_unwritten
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.headers import (
    CAME_ON,
    CASH_OUT,
    CAUSE,
    COMEBACKS,
    GOT_BACK,
    IN_ONE_SUM,
    NO_COST,
    OF_JOB,
    RETURN,
    TO,
    TOTAL,
    UNBILLED_HOURS,
    WEEK,
    WORK,
)
from desktop_app.weekly_report.sheet_form import Cell, Chart, Column, Kind, Sheet, Table, Total
from desktop_app.weekly_report.sheet_names import COSTS
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
    (UNBILLED_HOURS, "hours"),
    (WORK, "money"),
    (CASH_OUT, "money"),
    (IN_ONE_SUM, "money"),
    (GOT_BACK, "money"),
    (TOTAL, "money"),
)
_ALL_OF_THEM = tr("The first three added up, less what was got back; nothing is to be added to it.")
_TOTAL = f"=[@{WORK}]+[@{CASH_OUT}]+[@{IN_ONE_SUM}]-[@{GOT_BACK}]"


def costs_sheet(figures: WeekFigures) -> Sheet:
    """Return the cost of each comeback of the year, summed by cause and by week."""
    found, beside = _counted(figures.year)
    each, causes, weeks = _each(figures, found, beside), _by_cause(found), _by_week(figures, found)
    totals = (
        *(_sum(each, header, header, _SUMMED[header]) for header in _SUMMED),
        _sum(each, TOTAL, tr("Cost of the year's comebacks"), _ALL_OF_THEM),
    )
    chart = Chart(
        tr("Cost of the year's comebacks by cause"),
        "bars",
        "CostByCause",
        CAUSE,
        (TOTAL,),
        CAUSE,
        tr("Cost in {currency}", currency=figures.shop.currency),
        currency=figures.shop.currency,
    )
    before = _before(figures.year) if weeks.rows else None
    return Sheet(
        COSTS,
        about(figures, len(each.rows), year_words(figures)),
        totals=totals,
        totals_name="CostsTotals",
        charts=(chart,) if each.rows else (),
        tables=(causes, each, weeks, *(() if before is None else (before,))),
    )


_SUMMED = {
    WORK: tr("Unbilled hours at what an hour costs the shop."),
    CASH_OUT: tr("Parts, work given out, towing, loan car, goodwill."),
    IN_ONE_SUM: tr("Written as one sum: nobody has split it."),
    GOT_BACK: tr("What suppliers paid."),
}


def _counted(year: YearBehind) -> tuple[list[ReturnDone], list[ReturnDone]]:
    """Return the comebacks that a rate counts, and the other returns."""
    found: list[ReturnDone] = []
    beside: list[ReturnDone] = []
    for one in year.returns:
        counts = one.row.is_comeback and one.row.earlier not in year.left_out
        (found if counts else beside).append(one)
    return found, beside


def _sum(each: Table, header: str, words: str, note: str) -> Total:
    formula, value = each.sum_of(header)
    return Total(words, formula, None if value is None else round(value, 2), "money", note)


def _each(figures: WeekFigures, found: list[ReturnDone], beside: list[ReturnDone]) -> Table:
    written = [one for one in found if one.cost is not None]
    unwritten = costs_unwritten(found)
    notes = list(_not_among(figures, beside))
    told = sum(one.row.is_told for one in found)
    if told:
        notes.append(
            tr(
                "1 comeback was only told: what that cost the shop is written nowhere "
                "here and stands in no sum."
            )
            if told == 1
            else tr(
                "{comebacks:,} comebacks were only told: what that cost the shop is written "
                "nowhere here and stands in no sum.",
                comebacks=told,
            )
        )
    if unwritten:
        notes.append(
            tr("1 comeback has no cost written, so the sums are too low.")
            if unwritten == 1
            else tr(
                "{comebacks:,} comebacks have no cost written, so the sums are too low.",
                comebacks=unwritten,
            )
        )
    if written:
        notes.append(
            tr(
                "Work: the unbilled hours at what an hour costs the shop, not what it "
                "would have sold for. Cash out: parts, work given out, towing, loan car, "
                "goodwill. Total: work and cash out and what stands in one sum, less what "
                "was got back. Lost customers are not guessed at."
            )
        )
    if figures.year.hour_is_preset and any(one.cost and one.cost.hours for one in written):
        notes.append(preset_in_words(figures.year.hour_cost_cents, figures.shop.currency))
    return Table(
        "Costs",
        columns(
            (RETURN, "words"),
            (OF_JOB, "words"),
            (CAME_ON, "day"),
            (CAUSE, "words"),
            *_PARTS[:-1],
            Column(TOTAL, "money", _TOTAL),
        ),
        tuple(_cost_row(one, one.cost) for one in written if one.cost is not None),
        title=tr("Each comeback"),
        notes=tuple(notes),
        nothing=tr("No cost of a comeback was written."),
    )


def _not_among(figures: WeekFigures, beside: list[ReturnDone]) -> Iterator[str]:
    """Say what was written for returns that are no comebacks here."""
    nothing = tr("after a job in which nothing was put right")
    others = tr(
        "that no rate counts: not judged, judged no comeback, not ours, or after the window"
    )
    for words, comeback in ((nothing, True), (others, False)):
        some = [one for one in beside if one.cost and one.row.is_comeback == comeback]
        cost = cost_of_all(one.cost for one in some).total_cents / 100
        if some:
            yield tr(
                "Not among these: {visits} {which}; {currency}{cost:,.2f} were written there.",
                visits=plural(_visits(some), tr("return visit"), tr("return visits")),
                which=words,
                currency=figures.shop.currency,
                cost=cost,
            )


def _cost_row(one: ReturnDone, cost: ReturnCost) -> tuple[Cell, ...]:
    return (
        one.row.later,
        one.row.earlier,
        one.row.came_on,
        one.row.cause_words or tr("not said"),
        *_parts(cost),
    )


def _by_cause(found: list[ReturnDone]) -> Table:
    causes: dict[str, list[ReturnDone]] = {}
    for one in found:
        causes.setdefault(one.row.cause_words or tr("not said"), []).append(one)
    sums = {cause: cost_of_all(one.cost for one in some) for cause, some in causes.items()}
    order = sorted(causes, key=lambda cause: (-sums[cause].total_cents, cause))
    summed = (
        Column(header, kind, f"=SUMIFS(Costs[{header}],Costs[{CAUSE}],[@{CAUSE}])")
        for header, kind in _PARTS
    )
    return Table(
        "CostByCause",
        columns((CAUSE, "words"), (COMEBACKS, "count"), (NO_COST, "count"), *summed),
        tuple((cause, *_visits_of(causes[cause]), *_parts(sums[cause])) for cause in order),
        title=tr("By cause"),
        nothing=tr("No car came back in this year."),
        behind=tuple(_jobs(causes[cause]) for cause in order),
    )


_UNTIL = f'"<="&[@{TO}]'


def _in_days(table: str, header: str, days: int) -> str:
    """Return what one column of a table sums up over the days that end with a row's own week."""
    on = f"{table}[{CAME_ON}]"
    return f'SUMIFS({table}[{header}],{on},">"&([@{TO}]-{days}),{on},{_UNTIL})'


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
        rows.append((str(week), last, *_visits_of(some), *_parts(cost), running / 100))
    summed = (Column(header, kind, f"={_in_days('Costs', header, 7)}") for header, kind in _PARTS)
    added = ("Costs", "CostsBefore") if figures.year.costs_before else ("Costs",)
    sums = "+".join(_in_days(name, TOTAL, DAYS_IN_YEAR) for name in added)
    running_sum = Column(tr("52 weeks to then"), "money", f"={sums}")
    return Table(
        "CostByWeek",
        columns(
            (WEEK, "words"),
            (TO, "day"),
            (COMEBACKS, "count"),
            (NO_COST, "count"),
            *summed,
            running_sum,
        ),
        tuple(rows),
        title=tr("By week in which the car came back"),
        nothing=tr("No car came back in this year."),
        notes=(
            tr(
                "Weeks without a comeback are not listed, but for the last. 52 weeks to "
                "then: what the comebacks cost in the 52 weeks that end with that one."
            ),
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
        columns(
            (RETURN, "words"),
            (OF_JOB, "words"),
            (CAME_ON, "day"),
            (TOTAL, "money"),
        ),
        tuple((one.later, one.earlier, one.came_on, one.cents / 100) for one in year.costs_before),
        title=tr("The year before, for the sums of 52 weeks alone"),
        notes=(tr("None of these is in any other figure of this book."),),
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


def _visits_of(some: list[ReturnDone]) -> tuple[int, int]:
    """Return how many visits these are, and of how many no cost is written anywhere."""
    visits = _visits(some)
    return visits, visits - _visits([one for one in some if one.cost is not None])


def _jobs(some: list[ReturnDone]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(one.row.opens for one in some))

"""The totals of a week: each a formula over the workbook's tables, with its result as of now."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import partial

from desktop_app.returns_watched.ask_list import ENDS_SOON
from desktop_app.returns_watched.honest_numbers.group_rates import (
    FEW_JOBS,
    WIDEST_INTERVAL,
    can_be_told,
)
from desktop_app.returns_watched.honest_numbers.proportion import normal_factor, wilson
from desktop_app.returns_watched.judgement import Judgement
from desktop_app.weekly_report.sheet_form import Cell, Kind, Table, Total

# The column that names a row's job, as tables call it.
_JOB_COLUMNS = ("Job", "Later job", "Return")
_Z2 = normal_factor(0.95) ** 2
_WAIT = "Of the week. Until a person has judged them they are neither comeback nor success."
_JOBS_WAIT = "A visit to be judged, or the same trouble told: neither good nor bad."
_COST_OF_WEEK = "Where somebody wrote it, of those that are no comebacks too."
_PAIRS = "Of each earlier job with the visit: one visit can meet several, and counts once above."


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
            "Visits, and returns only told, judged a comeback inside the window; each counts once.",
        ),
        _match(came_back, "Counts as", "waiting", "Returns that wait for judgement", _WAIT),
        *(
            _match(
                came_back,
                "Judgement",
                each.value,
                f"pairs judged {each.value}",
                _PAIRS if n == 0 else "",
            )
            for n, each in enumerate(Judgement)
        ),
        _sum(came_back, "Cost", "Cost of the week's returns", "money", _COST_OF_WEEK),
        _count(watch, "Job", "Jobs under watch", "An open window is not a success."),
        _soon(watch, "Days left", f"of these ending by time within {ENDS_SOON} days"),
    )


def _of_the_year(raw: Table, costs: Table) -> tuple[Total, ...]:
    settled = sum(cell for cell in _cells(raw, "Settled") if isinstance(cell, int))
    both = f"{raw.reach('Settled')},{raw.reach('Came back')}"
    columns = raw.column("Job"), raw.column("Settled"), raw.column("Came back")
    back_jobs = [str(job) for job, a, b in zip(*columns, strict=True) if a == 1 and b == 1]
    back = len(back_jobs)
    of, came = f"SUM({raw.reach('Settled')})", f"SUMPRODUCT({both})"
    low, high = wilson(back, settled) if settled else (None, None)
    return (
        _sum(raw, "Counted", "Jobs of the year that are counted", "count", "52 weeks."),
        _sum(raw, "Settled", "of these settled", "count", "Window over, visits judged."),
        Total(
            "of the settled that came back",
            f"=SUMPRODUCT({both})",
            back,
            "count",
            jobs=lambda: tuple(back_jobs),
        ),
        Total(
            "Rate of the year",
            f'=IF({of}<{FEW_JOBS},"",IF({_width(came, of)}>{WIDEST_INTERVAL},"",{came}/{of}))',
            back / settled if can_be_told(settled, low, high) else None,
            "share",
            f"Of settled jobs; empty where fewer than {FEW_JOBS} are, or where the two below lie "
            f"more than {WIDEST_INTERVAL * 100:.0f} points apart: too few to tell.",
        ),
        Total(
            "lies between",
            _bound(came, of, "-"),
            low,
            "share",
            "The true rate lies between the two 19 times of 20.",
        ),
        Total("and", _bound(came, of, "+"), high, "share"),
        _sum(raw, "Waiting", "Jobs that wait", "count", _JOBS_WAIT),
        _sum(costs, "Total", "Cost of the year's comebacks", "money", "Where it was written."),
    )


def _bound(back: str, of: str, sign: str) -> str:
    """Return the formula of one end of Wilson's interval of 95 %."""
    end = f"({back}/{of}+{_Z2 / 2}/{of}{sign}{_spread(back, of)})/(1+{_Z2}/{of})"
    return f'=IF({of}=0,"",ROUND({end},12))'


def _width(back: str, of: str) -> str:
    """Return the formula of how far apart the ends of that interval are."""
    return f"ROUND(2*{_spread(back, of)}/(1+{_Z2}/{of}),12)"


def _spread(back: str, of: str) -> str:
    return f"SQRT({_Z2}*({back}*({of}-{back})/{of}+{_Z2 / 4}))/{of}"


def _count(table: Table, header: str, words: str, note: str) -> Total:
    formula = f"=COUNTA({table.reach(header)})"
    return _counted(table, header, lambda cell: cell not in (None, ""), (words, formula, note))


def _match(table: Table, header: str, wanted: str, words: str, note: str = "") -> Total:
    formula = f'=COUNTIF({table.reach(header)},"{wanted}")'
    return _counted(table, header, lambda cell: cell == wanted, (words, formula, note))


def _soon(table: Table, header: str, words: str) -> Total:
    """Count the days that lie ahead and soon; what is over already ends no more."""

    def soon(cell: Cell) -> bool:
        return isinstance(cell, int) and 0 <= cell <= ENDS_SOON

    reach = table.reach(header)
    formula = f'=COUNTIFS({reach},">=0",{reach},"<={ENDS_SOON}")'
    return _counted(table, header, soon, (words, formula, ""))


def _counted(
    table: Table, header: str, wanted: Callable[[Cell], bool], said: tuple[str, str, str]
) -> Total:
    words, formula, note = said
    value = sum(1 for cell in _cells(table, header) if wanted(cell))
    return Total(words, formula, value, "count", note, partial(_jobs, table, header, wanted))


def _sum(table: Table, header: str, words: str, kind: Kind, note: str) -> Total:
    numbers = [cell for cell in _cells(table, header) if isinstance(cell, (int, float))]
    formula = f"=SUM({table.reach(header)})"
    jobs = partial(_jobs, table, header, lambda cell: cell not in (None, "", 0))
    return Total(words, formula, sum(numbers), kind, note, jobs)


def _jobs(table: Table, header: str, wanted: Callable[[Cell], bool]) -> tuple[str, ...]:
    """Return the jobs of the rows whose cell is wanted, each once."""
    headers = [column.header for column in table.columns]
    own = table.column(next(one for one in _JOB_COLUMNS if one in headers))
    rows = zip(own, table.column(header), strict=True)
    return tuple(dict.fromkeys(str(job) for job, cell in rows if wanted(cell)))


def _cells(table: Table, header: str) -> list[Cell]:
    return list(table.column(header))

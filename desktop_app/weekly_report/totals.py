"""The totals of a week: each a formula over the workbook's tables, with its result as of now."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from functools import partial

from desktop_app.language import tr
from desktop_app.repair_jobs.proof import ProofLevel
from desktop_app.returns_watched.ask_list import ENDS_SOON
from desktop_app.returns_watched.honest_numbers.group_rates import (
    FEW_JOBS,
    WIDEST_INTERVAL,
    can_be_told,
)
from desktop_app.returns_watched.honest_numbers.proportion import normal_factor, wilson
from desktop_app.returns_watched.judgement import Judgement
from desktop_app.weekly_report.headers import (
    BACK,
    COMEBACKS,
    COST,
    COUNTED,
    COUNTS_AS,
    DAYS_LEFT,
    HOURS,
    JOB,
    JUDGEMENT,
    PRICE,
    PROOF_REACHED,
    SETTLED,
    TOTAL,
    UNBILLED_HOURS,
    WAITING,
)
from desktop_app.weekly_report.row_jobs import jobs_of_row
from desktop_app.weekly_report.sheet_form import Cell, Kind, Table, Total

_Z2 = normal_factor(0.95) ** 2
_UNPROVEN = f"{int(ProofLevel.UNPROVEN)} {ProofLevel.UNPROVEN.word}"
_COUNTED = tr(
    "Repairs with a cause and a correction; “not caught”, inspections and maintenance enter no "
    "rate."
)
_COUNTS_ONCE = tr(
    "Visits, and returns only told, judged a comeback inside the window of a counted job; each "
    "counts once."
)
_WAIT = tr("Of the week. Until a person has judged them they are neither comeback nor success.")
_JOBS_WAIT = tr("A visit to be judged, or the same trouble told: neither good nor bad.")
_COST_OF_WEEK = tr("Where somebody wrote it, of those that are no comebacks too.")
_PAIRS = tr(
    "Of each earlier job with the visit: one visit can meet several, and counts once above."
)


def week_totals(sheets: Mapping[str, Table]) -> tuple[Total, ...]:
    """Return the totals in the order in which they are read, over the tables by their names."""
    left, came_back, watch = sheets["LeftThisWeek"], sheets["CameBack"], sheets["UnderWatch"]
    return (*_of_the_week(left, came_back, watch), *_of_the_year(sheets["Raw"], sheets["Costs"]))


def _of_the_week(left: Table, came_back: Table, watch: Table) -> tuple[Total, ...]:
    return (
        _seen_first(
            tr("Handed over"),
            _count(left, JOB, tr("Jobs handed over"), tr("Every job that left in the week.")),
        ),
        _match(left, COUNTED, tr("yes"), tr("of these counted"), _COUNTED),
        _seen_first(
            tr("Left unproven"),
            _match(left, PROOF_REACHED, _UNPROVEN, tr("of these left unproven")),
        ),
        _written(left, HOURS, tr("Hours worked"), "hours", _on_jobs(left, HOURS)),
        _written(
            left, UNBILLED_HOURS, tr("Hours not billed"), "hours", _on_jobs(left, UNBILLED_HOURS)
        ),
        _written(left, PRICE, tr("Price of the jobs"), "money", _on_jobs(left, PRICE)),
        _seen_first(
            COMEBACKS, _match(came_back, COUNTS_AS, tr("comeback"), COMEBACKS, _COUNTS_ONCE)
        ),
        _seen_first(
            tr("Wait for judgement"),
            _match(
                came_back, COUNTS_AS, tr("waiting"), tr("Returns that wait for judgement"), _WAIT
            ),
        ),
        *(
            _match(
                came_back,
                JUDGEMENT,
                tr(each.value),
                tr("pairs judged {judgement}", judgement=tr(each.value)),
                _PAIRS if n == 0 else "",
            )
            for n, each in enumerate(Judgement)
        ),
        _written(came_back, COST, tr("Cost of the week's returns"), "money", _cost_said(came_back)),
        _seen_first(
            tr("Under watch"),
            _count(watch, JOB, tr("Jobs under watch"), tr("An open window is not a success.")),
        ),
        _soon(
            watch,
            DAYS_LEFT,
            tr("of these ending by time within {ends_soon} days", ends_soon=ENDS_SOON),
        ),
    )


def _of_the_year(raw: Table, costs: Table) -> tuple[Total, ...]:
    settled = sum(cell for cell in _cells(raw, SETTLED) if isinstance(cell, int))
    both = f"{raw.reach(SETTLED)},{raw.reach(BACK)}"
    columns = raw.column(JOB), raw.column(SETTLED), raw.column(BACK)
    back_jobs = [str(job) for job, a, b in zip(*columns, strict=True) if a == 1 and b == 1]
    back = len(back_jobs)
    of, came = f"SUM({raw.reach(SETTLED)})", f"SUMPRODUCT({both})"
    low, high = wilson(back, settled) if settled else (None, None)
    return (
        _sum(raw, COUNTED, tr("Jobs of the year that are counted"), "count", tr("52 weeks.")),
        _sum(raw, SETTLED, tr("of these settled"), "count", tr("Window over, visits judged.")),
        Total(
            tr("of the settled that came back"),
            f"=SUMPRODUCT({both})",
            back,
            "count",
            jobs=lambda: tuple(back_jobs),
        ),
        Total(
            tr("Rate of the year"),
            f'=IF({of}<{FEW_JOBS},"",IF({_width(came, of)}>{WIDEST_INTERVAL},"",{came}/{of}))',
            back / settled if can_be_told(settled, low, high) else None,
            "share",
            tr(
                "Of settled jobs; empty where fewer than {few_jobs} are, or where it may lie "
                "anywhere within more than {widest_interval:.0f} points: too few to tell.",
                few_jobs=FEW_JOBS,
                widest_interval=WIDEST_INTERVAL * 100,
            ),
            short=tr("Rate of the year"),
        ),
        Total(
            tr("lies between"),
            _bound(came, of, "-"),
            low,
            "share",
            tr("The true rate lies between the two 19 times of 20."),
        ),
        Total(tr("and"), _bound(came, of, "+"), high, "share"),
        _sum(raw, WAITING, tr("Jobs that wait"), "count", _JOBS_WAIT),
        _written(
            costs,
            TOTAL,
            tr("Cost of the year's comebacks"),
            "money",
            tr("Where it was written.") if costs.rows else costs.nothing,
        ),
    )


def _seen_first(short: str, total: Total) -> Total:
    return replace(total, short=short)


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
    formula = f"=SUM({table.reach(header)})"
    jobs = partial(_jobs, table, header, lambda cell: cell not in (None, "", 0))
    return Total(words, formula, sum(table.figures(header)), kind, note, jobs)


def _written(table: Table, header: str, words: str, kind: Kind, note: str) -> Total:
    """Add up what somebody wrote; where nobody did, no sum is known, and nought would be one."""
    formula, value = table.sum_of(header)
    return replace(_sum(table, header, words, kind, note), formula=formula, value=value)


def _on_jobs(left: Table, header: str) -> str:
    """Say on how many of the week's jobs a figure is written."""
    written, every = len(left.figures(header)), len(left.rows)
    if not every:
        return left.nothing
    if not written:
        return tr("Not written on any job.")
    if written == every:
        return tr("As written on the jobs.")
    return tr("As written on {some} of {every} jobs.", some=written, every=every)


def _cost_said(came_back: Table) -> str:
    """Say with how many pairs of the week a cost is written."""
    written, every = len(came_back.figures(COST)), len(came_back.rows)
    if not every:
        return came_back.nothing
    if not written:
        return tr("Not written with any return.")
    if written == every:
        return _COST_OF_WEEK
    return tr(
        "As written with {some} of {every} pairs, those that are no comebacks included.",
        some=written,
        every=every,
    )


def _jobs(table: Table, header: str, wanted: Callable[[Cell], bool]) -> tuple[str, ...]:
    """Return the jobs of the rows whose cell is wanted, each once."""
    cells = enumerate(table.column(header))
    return tuple(dict.fromkeys(jobs_of_row(table, row)[0] for row, cell in cells if wanted(cell)))


def _cells(table: Table, header: str) -> list[Cell]:
    return list(table.column(header))

"""Sheet 3: what waits for a judgement, and the week's visits with what was decided of each."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace

from desktop_app.language import tr
from desktop_app.returns_watched.judged_before import told
from desktop_app.returns_watched.judgement import return_cause
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.weekly_report.figures import CountsAs, WeekFigures, count_later_jobs
from desktop_app.weekly_report.headers import (
    CAME_ON,
    CAUSE,
    COST,
    COUNTS_AS,
    DAYS,
    EARLIER_JOB,
    FIRST_JOB,
    JUDGEMENT,
    LATER_JOB,
    WHY,
)
from desktop_app.weekly_report.sheet_form import Cell, Column, Sheet, Table
from desktop_app.weekly_report.sheet_names import CAME_BACK
from desktop_app.weekly_report.sheets.sheet_words import (
    NAMELESS,
    about,
    amount,
    behind_told,
    columns,
    distance,
    joined,
    unit_words,
)
from desktop_app.weekly_report.year_behind import ReturnDone

_READ_THEM = tr(
    "Dangerous: a person said whether somebody could have been hurt. Where nobody "
    "said, read the words of the customer. Look at the car before it leaves."
)
_TOLD = tr(
    "“told” or “on paper” in place of the later job: this shop never saw that return. "
    "Its day is the one on which it was told."
)
_NEITHER = tr("Until a person has judged them they are neither comeback nor success.")
DANGEROUS = {True: tr("yes"), False: tr("no"), None: tr("not said")}


def came_back_sheet(figures: WeekFigures) -> Sheet:
    """Return what waited before the week, then one row for each pair of the week, in two halves."""
    found = {_of_pair(one.row): one for one in figures.year.returns}
    week = [
        (found[_of_pair(row)], counts_as)
        for row, counts_as in zip(figures.came_back, figures.counts_as, strict=True)
    ]
    pairs = Table(
        "CameBack",
        (*_pair_columns(figures), *_DECIDED),
        tuple((*_pair_cells(figures, one), *_decided(one, as_)) for one, as_ in week),
        title=tr("Came back in the week"),
        notes=(*((_READ_THEM,) if week else ()), *_told_note(one for one, _ in week)),
        nothing=tr("No car came back in this week."),
        behind=tuple(behind_told(one.row) for one, _ in week),
    )
    judged = _judged([one for one, _ in week], named=figures.year.names_shown)
    waiting = _waiting(figures)
    line = about(figures, len(waiting.rows) + len(week))
    return Sheet(CAME_BACK, line, tables=(waiting, pairs, judged))


def _of_pair(row: ReturnRow) -> tuple[str, str, int]:
    return (row.earlier, row.later, row.asked_id)


_DECIDED = columns(
    (JUDGEMENT, "words"),
    (COUNTS_AS, "words"),
    (CAUSE, "words"),
    (tr("Dangerous"), "words"),
    (COST, "money"),
)


def _decided(one: ReturnDone, counts_as: CountsAs) -> tuple[Cell, ...]:
    row = one.row
    return (
        row.state_words,
        tr(counts_as),
        row.cause_words,
        DANGEROUS[row.dangerous],
        None if one.cost is None else amount(one.cost.total_cents),
    )


def _told_note(some: Iterable[ReturnDone]) -> tuple[str, ...]:
    return (_TOLD,) if any(one.row.is_told for one in some) else ()


def _pair_columns(figures: WeekFigures, days: str = DAYS) -> tuple[Column, ...]:
    return columns(
        (EARLIER_JOB, "words"),
        (LATER_JOB, "words"),
        (tr("Vehicle"), "long words"),
        (CAME_ON, "day"),
        (days, "count"),
        (unit_words(figures).capitalize(), "count"),
        (tr("Window used"), "share"),
        (tr("Then"), "long words"),
        (tr("Now"), "long words"),
        (tr("Reasons"), "long words"),
    )


def _pair_cells(figures: WeekFigures, one: ReturnDone, days: int | None = None) -> tuple[Cell, ...]:
    row = one.row
    miles, used = row.candidate.distance_miles, row.candidate.window_used
    return (
        row.earlier,
        row.later,
        row.vehicle,
        row.came_on,
        row.candidate.days if days is None else days,
        tr("days only") if miles is None else distance(figures, miles),
        tr("not known") if used is None else used,
        row.concern_then,
        row.concern_now,
        row.candidate.why(figures.shop.kinds),
    )


def _waiting(figures: WeekFigures) -> Table:
    waiting = [*_waiting_before(figures)]
    rows = tuple(
        (
            *_pair_cells(figures, one, (figures.as_of - one.row.came_on).days),
            DANGEROUS[one.row.dangerous],
        )
        for one in waiting
    )
    return Table(
        "StillWaiting",
        (*_pair_columns(figures, tr("Days waiting")), *columns((tr("Dangerous"), "words"))),
        rows,
        title=tr("Still to be judged, from earlier weeks"),
        notes=(*((_NEITHER,) if rows else ()), *_told_note(waiting)),
        nothing=tr("No return of earlier weeks waits for a judgement."),
        behind=tuple(behind_told(one.row) for one in waiting),
    )


def _waiting_before(figures: WeekFigures) -> Iterator[ReturnDone]:
    """Yield the visits before the week that nobody judged, each once."""
    returns = sorted(figures.year.returns, key=lambda one: (one.row.came_on, one.row.later))
    counts = count_later_jobs([one.row for one in returns], figures.year.left_out)
    for one, counts_as in zip(returns, counts, strict=True):
        if counts_as == "waiting" and one.row.came_on < figures.week.monday:
            yield one


def _judged(week: list[ReturnDone], *, named: bool) -> Table:
    return Table(
        "HowJudged",
        columns(
            (EARLIER_JOB, "words"),
            (LATER_JOB, "words"),
            (WHY, "long words"),
            (tr("Left on"), "day"),
            (FIRST_JOB, "words"),
            (tr("Decided by"), "words"),
            (tr("Also"), "words"),
            (tr("Who judged, and when"), "long words"),
            (tr("Second look"), "long words"),
            (tr("Change promised"), "long words"),
            (tr("Helped by"), "words"),
        ),
        tuple(
            (
                one.row.earlier,
                one.row.later,
                one.row.why,
                one.row.left_on,
                one.row.candidate.root,
                tr(one.row.candidate.decided_by),
                joined(tr(kind.value) for kind in one.also),
                _who_and_when(one, named=named),
                _second_look(one, named=named),
                one.row.change_promised,
                joined(c.words for each in one.helping if (c := return_cause(each)) is not None),
            )
            for one in week
        ),
        title=tr("How the same visits were judged"),
        notes=(NAMELESS,) if week and not named else (),
        nothing=tr("No car came back in this week."),
        behind=tuple(behind_told(one.row) for one in week),
    )


def _who_and_when(one: ReturnDone, *, named: bool) -> str:
    """Say who judged it and when; where a judgement was changed, from what, by whom, and when."""
    said = told(one.decisions if named else [replace(each, by="") for each in one.decisions])
    return said or (tr("with its chain") if one.row.candidate.in_chain else tr("nobody yet"))


def _second_look(one: ReturnDone, *, named: bool) -> str:
    """Return who looked a second time and when; without names that somebody did."""
    return one.second_look if named or not one.second_look else tr("confirmed by a second person")

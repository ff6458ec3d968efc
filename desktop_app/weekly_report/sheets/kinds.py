"""Sheet 6: how often each kind of part came back, and by where it came from."""

from __future__ import annotations

from desktop_app.parts_compared.part_kinds.kind_names import kind_words
from desktop_app.returns_watched.honest_numbers.group_rates import NOT_SAID, GroupRate
from desktop_app.returns_watched.judgement import Judgement
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.sheet_form import Cell, Sheet, Table
from desktop_app.weekly_report.sheets.group_table import group_table, groups_of
from desktop_app.weekly_report.sheets.sheet_words import about, columns, year_words
from desktop_app.weekly_report.year_behind import JobDone

_KINDS = [each for each in Judgement if each.is_comeback]


def kinds_sheet(figures: WeekFigures) -> Sheet:
    """Return the rates by kind of part, then by kind and origin."""
    by_kind, by_origin = _by_kind(figures), _by_origin(figures)
    line = about(figures, len(by_kind.rows), year_words(figures))
    return Sheet("Kinds of part", line, tables=(by_kind, by_origin))


def _by_kind(figures: WeekFigures) -> Table:
    jobs = figures.year.counted
    of: dict[str, list[JobDone]] = {}
    for job in jobs:
        for kind in job.part_kinds:
            of.setdefault(kind, []).append(job)
    kinds_back = _kinds_back(figures)

    def cells(group: GroupRate) -> tuple[Cell, ...]:
        own = {job.number for job in of.get(group.name, ())}
        counts = (sum(each in kinds_back.get(job, ()) for job in own) for each in _KINDS)
        return (_said(group.name), *counts)

    return group_table(
        "KindsOfPart",
        columns(
            ("Kind of part", "words"),
            *((_short(each), "count") for each in _KINDS),
        ),
        groups_of(jobs, "part-kind", lambda job: job.part_kinds),
        cells,
        lambda name: of.get(name, ()),
        title="By kind of part",
    )


def _by_origin(figures: WeekFigures) -> Table:
    jobs = figures.year.counted
    of: dict[str, list[JobDone]] = {}

    def names(job: JobDone) -> tuple[str, ...]:
        return tuple(f"{part.kind}|{part.origin or NOT_SAID}" for part in job.parts)

    for job in jobs:
        for name in dict.fromkeys(names(job)):
            of.setdefault(name, []).append(job)

    def cells(group: GroupRate) -> tuple[Cell, ...]:
        kind, _, origin = group.name.partition("|")
        return (_said(kind), origin or NOT_SAID)

    return group_table(
        "KindsByOrigin",
        columns(("Kind of part", "words"), ("Origin", "words")),
        groups_of(jobs, "part-kind", names),
        cells,
        lambda name: of.get(name, ()),
        title="By kind of part and where it comes from",
    )


def _kinds_back(figures: WeekFigures) -> dict[str, set[Judgement]]:
    """Return by earlier job the kinds of comeback it had."""
    found: dict[str, set[Judgement]] = {}
    for one in figures.year.returns:
        if one.row.is_comeback:
            found.setdefault(one.row.earlier, set()).update(one.kinds)
    return found


def _short(kind: Judgement) -> str:
    return f"Came back: {kind.value}"


def _said(kind: str) -> str:
    return kind if kind == NOT_SAID else kind_words(kind)

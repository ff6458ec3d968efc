"""Sheet 6: how often each kind of part came back, and by where it came from."""

from __future__ import annotations

from collections.abc import Iterable

from desktop_app.language import tr
from desktop_app.returns_watched.honest_numbers.group_rates import NOT_SAID, GroupRate
from desktop_app.returns_watched.judgement import Judgement
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.sheet_form import Cell, Sheet, Table
from desktop_app.weekly_report.sheet_names import KINDS_OF_PART
from desktop_app.weekly_report.sheets.group_table import Groups, group_table
from desktop_app.weekly_report.sheets.sheet_words import about, columns, origin_words, year_words
from desktop_app.weekly_report.year_behind import JobDone

_KINDS = [each for each in Judgement if each.is_comeback]
_LEAST = 5  # settled jobs
_BETWEEN = "\0"  # parts a kind from its origin; nobody can type it


def kinds_sheet(figures: WeekFigures) -> Sheet:
    """Return the rates by kind of part, by origin, then by both."""
    by_kind = _by_kind(figures)
    line = about(figures, len(by_kind.rows), year_words(figures))
    return Sheet(KINDS_OF_PART, line, tables=(by_kind, _by_origin(figures), _by_both(figures)))


def _by_kind(figures: WeekFigures) -> Table:
    groups = Groups(figures.year, "part-kind", lambda job: job.part_kinds)
    kinds_back = _kinds_back(figures)

    def cells(group: GroupRate) -> tuple[Cell, ...]:
        own = groups.numbers(group.name)
        back = [kinds_back[job] for job in own if job in kinds_back]
        counts = ((each, sum(each in kinds for kinds in back)) for each in _KINDS)
        judged = "; ".join(f"{count} {tr(each.value)}" for each, count in counts if count)
        return _said(figures, group.name), _open_too(judged, figures, set(own))

    return group_table(
        "KindsOfPart",
        columns((tr("Kind of part"), "words"), (tr("Came back as"), "long words")),
        groups,
        cells,
        title=tr("By kind of part"),
        shared=True,
        said=(
            tr(
                "Came back as: what was judged of the jobs under Comebacks; one job can be "
                "several. “Too early for a rate”: came back already, while the window is "
                "still open."
            ),
        )
        if groups.rates
        else (),
    )


def _by_origin(figures: WeekFigures) -> Table:
    return group_table(
        "Origins",
        columns((tr("Origin"), "words")),
        Groups(figures.year, "part-origin", _origins),
        lambda group: (origin_words(group.name),),
        title=tr("By where the part comes from"),
        shared=True,
        again=True,
    )


def _origins(job: JobDone) -> Iterable[str]:
    return (part.origin for part in job.parts)


def _by_both(figures: WeekFigures) -> Table:
    def names(job: JobDone) -> Iterable[str]:
        return (f"{part.kind}{_BETWEEN}{part.origin or NOT_SAID}" for part in job.parts)

    def cells(group: GroupRate) -> tuple[Cell, ...]:
        kind, _, origin = group.name.partition(_BETWEEN)
        return (_said(figures, kind), origin_words(origin) or NOT_SAID)

    groups = Groups(figures.year, "part-kind", names)
    left_out = groups.keep(lambda group: group.settled >= _LEAST or group.comebacks > 0)
    return group_table(
        "KindsByOrigin",
        columns((tr("Kind of part"), "words"), (tr("Origin"), "words")),
        groups,
        cells,
        title=tr("By kind of part and where it comes from"),
        shared=True,
        again=True,
        said=(
            tr(
                "1 row with fewer than {least} settled jobs and no comeback is left out.",
                least=_LEAST,
            )
            if left_out == 1
            else tr(
                "{rows:,} rows with fewer than {least} settled jobs and no comeback are left out.",
                rows=left_out,
                least=_LEAST,
            ),
        )
        if left_out
        else (),
    )


def _kinds_back(figures: WeekFigures) -> dict[str, set[Judgement]]:
    """Return by settled job that came back the kinds of comeback it had, inside its window."""
    came = {job.number for job in figures.year.counted if job.settled and job.came_back}
    found: dict[str, set[Judgement]] = {}
    for one in figures.year.returns:
        if one.row.is_comeback and one.row.earlier in came:
            found.setdefault(one.row.earlier, set()).update(one.kinds)
    return found


def _open_too(judged: str, figures: WeekFigures, own: set[str]) -> str:
    """Add to what was judged how many of the row's jobs came back that no rate counts yet."""
    early = sum(
        job.came_back and not job.settled and job.number in own for job in figures.year.counted
    )
    said = (judged, tr("{early} too early for a rate", early=early) if early else "")
    return "; ".join(one for one in said if one)


def _said(figures: WeekFigures, kind: str) -> str:
    return kind if kind == NOT_SAID else figures.shop.kind(kind)

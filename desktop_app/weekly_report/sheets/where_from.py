"""Sheet 7: suppliers and lots: what came from them, what died early, what was the wrong part."""

from __future__ import annotations

from collections.abc import Iterable

from desktop_app.language import tr
from desktop_app.returns_watched.honest_numbers.group_names import as_first_written
from desktop_app.returns_watched.honest_numbers.group_rates import GroupRate
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.headers import COMEBACKS
from desktop_app.weekly_report.sheet_form import Cell, Sheet, Table
from desktop_app.weekly_report.sheet_names import WHERE_FROM
from desktop_app.weekly_report.sheets.group_table import Groups, group_table
from desktop_app.weekly_report.sheets.sheet_words import about, columns, year_words
from desktop_app.weekly_report.sheets.supplier_answers import answers_table
from desktop_app.weekly_report.year_behind import JobDone

_EARLY, _WRONG = "part-died-early", "wrong-part"


def where_from_sheet(figures: WeekFigures) -> Sheet:
    """Return the rates by supplier, what each answered, then each lot that was written down."""
    suppliers, answers, lots = _suppliers(figures), answers_table(figures), _lots(figures)
    line = about(figures, len(suppliers.rows), year_words(figures))
    return Sheet(WHERE_FROM, line, tables=(suppliers, answers, lots))


def _suppliers(figures: WeekFigures) -> Table:
    groups = Groups(figures.year, "supplier", _names)

    def cells(group: GroupRate) -> tuple[Cell, ...]:
        own = set(groups.numbers(group.name))
        return (group.name, _caused(figures, own, _EARLY), _caused(figures, own, _WRONG))

    return group_table(
        "Suppliers",
        columns(
            (tr("Supplier"), "words"), (tr("Died early"), "count"), (tr("Wrong part"), "count")
        ),
        groups,
        cells,
        title=tr("By supplier"),
        shared=True,
        said=(
            tr(
                "Who delivers the parts that fail most everywhere has the most comebacks: "
                "read them beside what is expected. Died early and Wrong part: the causes "
                "that were written, of jobs that are not settled too."
            ),
        )
        if groups.rates
        else (),
    )


def _lots(figures: WeekFigures) -> Table:
    lots: dict[tuple[str, str], list[JobDone]] = {}
    suppliers: dict[str, str] = {}
    written: dict[str, str] = {}
    for job in figures.year.counted:
        for part in job.parts:
            [supplier] = as_first_written((part.supplier,), suppliers)
            if part.lot.strip():
                [lot] = as_first_written((part.lot,), written)
                lots.setdefault((supplier, lot), []).append(job)
    rows: list[tuple[tuple[Cell, ...], tuple[str, ...]]] = []
    for (supplier, lot), jobs in lots.items():
        own = {job.number: job for job in jobs}
        back = sum(job.came_back for job in own.values())
        cells = (supplier, lot, len(own), back, _caused(figures, set(own), _EARLY))
        rows.append((cells, tuple(sorted(own))))
    rows.sort(key=lambda row: (-int(str(row[0][4])), -int(str(row[0][3])), str(row[0][:2])))
    return Table(
        "Lots",
        columns(
            (tr("Supplier"), "words"),
            (tr("Lot or date code"), "words"),
            (tr("Jobs"), "count"),
            (COMEBACKS, "count"),
            (tr("Died early"), "count"),
        ),
        tuple(cells for cells, _ in rows),
        title=tr("By lot or date code"),
        notes=(
            tr(
                "Jobs and comebacks of windows that are still open stand here too: this is "
                "a list to look through, no rate. The same lot twice is worth a look; one "
                "or two parts prove nothing."
            ),
        )
        if rows
        else (),
        nothing=tr("No lot or date code was written down."),
        behind=tuple(behind for _, behind in rows),
    )


def _names(job: JobDone) -> Iterable[str]:
    return (part.supplier for part in job.parts)


def _caused(figures: WeekFigures, jobs: set[str], cause: str) -> int:
    return sum(
        one.row.is_comeback and one.row.cause_class == cause and one.row.earlier in jobs
        for one in figures.year.returns
    )

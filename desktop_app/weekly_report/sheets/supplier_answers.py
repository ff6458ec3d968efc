"""Supplier by supplier: what comparing their parts showed, and how they answered claims."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial
from statistics import fmean

from desktop_app.language import tr
from desktop_app.returns_watched.honest_numbers.group_names import as_first_written
from desktop_app.returns_watched.owed import Owed, State
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.sheet_form import Cell, JobsOfRow, Table
from desktop_app.weekly_report.sheets.sheet_words import amount, columns
from desktop_app.weekly_report.supplied import PartSupplied

_Parts = dict[str, list[PartSupplied]]
_COUNTED: dict[str, Callable[[PartSupplied], bool]] = {
    tr("Parts"): lambda _part: True,
    tr("Compared"): lambda part: bool(part.verdict),
    tr("Stop and look"): lambda part: part.verdict == "stop and look",
    tr("Turned"): lambda part: part.way_round == "turned",
    tr("Mirrored"): lambda part: part.way_round == "mirrored",
    tr("Not fitted"): lambda part: not part.fitted,
}


def answers_table(figures: WeekFigures) -> Table:
    """Return one row for each supplier of the year with a part or a claim, most parts at the top.

    Parts of jobs that no rate counts stand here too: the part is looked at, not the repair.
    """
    parts, claims = _by_supplier(figures)
    order = sorted({*parts, *claims}, key=lambda name: (-len(parts.get(name, ())), name))

    def jobs(counts: Callable[[PartSupplied], bool], row: int) -> tuple[str, ...]:
        return _jobs([part for part in parts.get(order[row], ()) if counts(part)])

    behind_of: dict[str, JobsOfRow] = {
        header: partial(jobs, counts) for header, counts in _COUNTED.items()
    }
    return Table(
        "SupplierAnswers",
        columns(
            (tr("Supplier"), "words"),
            *((header, "count") for header in _COUNTED),
            (tr("Claims"), "count"),
            (tr("Answered"), "count"),
            (tr("Refused"), "count"),
            (tr("Days to an answer"), "number"),
            (tr("Paid"), "money"),
        ),
        tuple(
            (name, *_shown(parts.get(name, ())), *_answers(claims.get(name, ()))) for name in order
        ),
        title=tr("What comparing showed, and what became of claims"),
        notes=(
            tr(
                "Turned: an angle of the new part is not the old one's, and nobody has "
                "explained it. Mirrored: it looks like the old one's mirror image. Not "
                "fitted: it did not go into the car. Claims: those written in the year; "
                "days and money are of those with an answer. Credits for cores are not "
                "among them."
            ),
        )
        if order
        else (),
        nothing=tr("No supplier was written down."),
        behind=tuple(
            tuple(dict.fromkeys((*_jobs(parts.get(name, ())), *_of_claims(claims.get(name, ())))))
            for name in order
        ),
        behind_of=behind_of,
    )


def _by_supplier(figures: WeekFigures) -> tuple[_Parts, dict[str, list[Owed]]]:
    supplied = figures.year.supplied
    shown: dict[str, str] = {}
    tidy: dict[str, str] = {}

    def name(supplier: str) -> str:
        if supplier not in tidy:
            [tidy[supplier]] = as_first_written((supplier,), shown)
        return tidy[supplier]

    parts: _Parts = {}
    claims: dict[str, list[Owed]] = {}
    for part in supplied.parts:
        parts.setdefault(name(part.supplier), []).append(part)
    for claim in supplied.claims:
        claims.setdefault(name(claim.supplier), []).append(claim)
    return parts, claims


def _shown(parts: Sequence[PartSupplied]) -> tuple[int, ...]:
    return tuple(sum(map(counts, parts)) for counts in _COUNTED.values())


def _answers(claims: Sequence[Owed]) -> tuple[Cell, ...]:
    answered = [claim for claim in claims if claim.state.is_end]
    days = [(one.ended_on - one.since).days for one in answered if one.ended_on is not None]
    paid = [claim for claim in answered if claim.state is State.PAID]
    return (
        len(claims),
        len(answered),
        len(answered) - len(paid),
        round(fmean(days), 1) if days else None,
        amount(sum(claim.amount_cents or 0 for claim in paid)) if paid else None,
    )


def _jobs(parts: Sequence[PartSupplied]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(part.job for part in parts))


def _of_claims(claims: Sequence[Owed]) -> tuple[str, ...]:
    return tuple(claim.job_number for claim in claims)

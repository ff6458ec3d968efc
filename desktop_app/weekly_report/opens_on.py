"""What Read first opens on, on paper as in the window: the week, and what is to be done."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from desktop_app.language import tr
from desktop_app.weekly_report.sheet_form import Column, Table, ToDo, Total

THE_WEEK, TO_ACT_ON = tr("The week"), tr("To act on")
NOTHING_TO_DO = tr("Nothing waits for anybody.")
MOST_NAMED = 8  # jobs of one sort; the rest is on its sheet


def seen_first(totals: Sequence[Total]) -> tuple[Total, ...]:
    """Return the few figures that are seen first, in the short words that they have for that."""
    return tuple(replace(total, words=total.short) for total in totals if total.short)


def to_do_table(to_do: Sequence[ToDo]) -> Table:
    """Return what somebody has to do, how many jobs of each sort, and which."""
    return Table(
        "ReadFirstToActOn",
        (
            Column(tr("What"), "long words"),
            Column(tr("Jobs"), "count"),
            Column(tr("Which"), "long words"),
        ),
        tuple((one.words, len(one.jobs), _named(one)) for one in to_do),
        title=TO_ACT_ON,
        nothing=NOTHING_TO_DO,
    )


def _named(one: ToDo) -> str:
    named = ", ".join(one.jobs[:MOST_NAMED])
    if len(one.jobs) <= MOST_NAMED:
        return named
    return tr("{jobs} and more: the sheet {sheet}", jobs=named, sheet=one.sheet)

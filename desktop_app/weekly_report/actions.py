"""Writing the week: the workbook is made beside its place and put there when it is whole."""

from __future__ import annotations

import gc
from collections.abc import Generator, Iterator, Mapping
from contextlib import contextmanager
from dataclasses import replace
from pathlib import Path

from desktop_app.language import tr
from desktop_app.part_photos.file_actions import check_place, put_files
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.returns_watched.stored_facts import NO_NAMES, SymptomNames
from desktop_app.shop_record.past.anchor import anchor_now
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.step import Step
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.pages import week_sheets
from desktop_app.weekly_report.stored import read_week_figures
from desktop_app.weekly_report.week import Week
from desktop_app.weekly_report.workbook import workbook_bytes


def file_name(week: Week) -> str:
    """Return the name that is proposed for a week's workbook."""
    return f"week-{week}.xlsx"


Kinds = Mapping[str, PartKind]
_NO_KINDS: Kinds = {}


def look_at_week(
    record: ShopRecord, week: Week, names: SymptomNames = NO_NAMES, kinds: Kinds = _NO_KINDS
) -> WeekFigures:
    """Return the figures of a week as the record has them now.

    `kinds` are the part kinds by which the year's pairs are judged; a pair of another kind counts
    as not compared.
    """
    with record.reading() as connection, no_search_for_circles():
        figures = read_week_figures(connection, week, record.clock(), names, kinds)
        return replace(figures, anchor=anchor_now(connection))


@contextmanager
def no_search_for_circles() -> Iterator[None]:
    """Put off the search for objects that hold each other.

    A book has many thousands of rows, none of which does; to search them all again and again
    meanwhile takes a quarter of its time.
    """
    searched = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if searched:
            gc.enable()


def write_week(
    record: ShopRecord,
    week: Week,
    to: Path,
    names: SymptomNames = NO_NAMES,
    kinds: Kinds = _NO_KINDS,
) -> Generator[Step, None, WeekFigures]:
    """Write a week's workbook step by step and return the figures that stand in it.

    Not asking for the next step stops it, and nothing is left behind. A ShopTrouble says where it
    cannot be written; a file of that name is replaced only by a whole one.
    """
    check_place(to, ".xlsx", "week-2026-W47.xlsx")
    yield Step(0, 18, tr("Reading the week"))
    with no_search_for_circles():
        figures = look_at_week(record, week, names, kinds)
        sheets = week_sheets(figures)
        of = len(sheets) + 2
        yield Step(1, of, tr("Laying out the sheets"))
        content = b""
        for number, content in enumerate(
            workbook_bytes(sheets, figures.shop.paper, figures.shop.currency), 2
        ):
            if not content:
                yield Step(number, of, tr("Laid out “{name}”", name=sheets[number - 2].name))
        yield Step(of, of, tr("Putting it in its place"))
    put_files({to: content})
    return figures

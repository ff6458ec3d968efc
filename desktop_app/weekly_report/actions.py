"""Writing the week: the workbook is made beside its place and put there when it is whole."""

from __future__ import annotations

import os
from collections.abc import Generator, Iterator, Mapping
from contextlib import contextmanager
from pathlib import Path

from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.returns_watched.stored_facts import NO_NAMES, SymptomNames
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble
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
    with record.reading() as connection:
        return read_week_figures(connection, week, record.clock(), names, kinds)


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
    _check_place(to)
    yield Step(0, 18, "Reading the week")
    figures = look_at_week(record, week, names, kinds)
    sheets = week_sheets(figures)
    of = len(sheets) + 2
    yield Step(1, of, "Laying out the sheets")
    content = b""
    for number, content in enumerate(
        workbook_bytes(sheets, figures.shop.paper, figures.shop.currency), 2
    ):
        if not content:
            yield Step(number, of, f"Laid out “{sheets[number - 2].name}”")
    with _told(to):
        yield from _put(content, to, of)
    return figures


def _put(content: bytes, to: Path, of: int) -> Iterator[Step]:
    beside = to.with_name(f".{to.name}.{os.getpid()}.part")
    try:
        with beside.open("wb") as file:
            file.write(content)
            file.flush()
            os.fsync(file.fileno())
        yield Step(of, of, "Putting it in its place")
        beside.replace(to)
    finally:
        beside.unlink(missing_ok=True)


def _check_place(to: Path) -> None:
    if to.is_dir() or not to.name:
        raise ShopTrouble(f"{to} is a folder.", do="Name a file, such as week-2026-W47.xlsx.")
    if to.suffix.lower() != ".xlsx":
        raise ShopTrouble(
            f"“{to.name}” does not end in .xlsx.", do="Spreadsheet programs go by the ending."
        )
    if not to.parent.is_dir():
        raise ShopTrouble(f"There is no folder {to.parent}.", do="Make it, or choose another one.")


@contextmanager
def _told(to: Path) -> Iterator[None]:
    try:
        yield
    except OSError as error:
        raise ShopTrouble(
            f"{to} was not written: {error.strerror or error}.",
            kept="A file that was there is as it was.",
            do="Close it where it is open, or choose another place.",
        ) from error

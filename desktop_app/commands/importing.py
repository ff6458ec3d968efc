"""`import`: a table of jobs brought into the shop."""

from __future__ import annotations

import os
import sys
from filecmp import cmp
from itertools import count
from pathlib import Path
from typing import TYPE_CHECKING

from desktop_app.commands.named_file import at_home
from desktop_app.commands.opened_shop import shop_of
from desktop_app.commands.outcome import Asked, Outcome
from desktop_app.commands.shop_place import kinds_of
from desktop_app.shop_record.trouble import ShopTrouble

if TYPE_CHECKING:
    from desktop_app.records_exchanged.import_told import ImportTold, Told
    from desktop_app.records_exchanged.read_table import Table


def import_file(asked: Asked) -> Outcome:
    """Bring the jobs of a file into the shop, or say what that would do.

    The rows that were refused are written beside the file, to be mended and imported again. What
    was taken for granted about the file is said on standard error.
    """
    from desktop_app.records_exchanged.import_actions import import_rows
    from desktop_app.records_exchanged.map_files import read_map_file
    from desktop_app.records_exchanged.row_words import kind_ids
    from desktop_app.records_exchanged.stored_import import ReadWith
    from desktop_app.records_exchanged.table_files import open_table
    from desktop_app.symptom_search.stored_shop_words import ShopWords

    path = at_home(asked.file)
    column_map = read_map_file(at_home(asked.columns)) if asked.columns else None
    try:
        with shop_of(asked) as record, open_table(path, column_map) as table:
            words = ShopWords(record)()
            reads = ReadWith(
                lambda text: tuple(group.id for group in words.groups_in(text)),
                words.conditions_in,
                kind_ids(kinds_of(record).values()),
                words.own,
            )
            rows = table.found.rows
            told = import_rows(
                record, table, path.name, reads, _progress(rows), dry_run=asked.dry_run
            )
            _say_what_was_taken(table)
            refused, said_of_them = None, ""
            if told.rejected and not asked.dry_run:
                refused, said_of_them = _write_refused(table, told, path)
    except KeyboardInterrupt:
        said = "Stopped. Nothing of the file was brought in; the shop is as it was."
        print(said, file=sys.stderr)
        raise
    said_json = told.as_json()
    if refused is not None:
        said_json["rejected_file"] = str(refused)
    return Outcome(said_json, _lines(told, asked.dry_run, said_of_them))


def _say_what_was_taken(table: Table) -> None:
    """Say what was taken for granted, once it is clear that no refusal has the line to itself."""
    from desktop_app.records_exchanged.taken_for_granted import taken_for_granted

    if sys.stderr is not None:
        print(*taken_for_granted(table.found), sep="\n", file=sys.stderr)


def _progress(rows: int) -> Told:
    """Return what says on a terminal how far the import is."""
    if sys.stderr is None or not sys.stderr.isatty():
        return lambda rows_read: None

    def say(rows_read: int) -> None:
        end = "\n" if rows_read >= rows else ""
        print(f"\r{rows_read:,} of {rows:,} rows", end=end, file=sys.stderr, flush=True)

    return say


def _write_refused(table: Table, told: ImportTold, source: Path) -> tuple[Path | None, str]:
    """Write the refused rows beside the file under a new name; return where, and what to say."""
    from desktop_app.records_exchanged.table_files import write_rejected

    beside = source.with_name(f".{source.stem}.rejected.{os.getpid()}.csv")
    try:
        write_rejected(table, told.whys(), beside)
        to = _named(beside, source)
    except ShopTrouble as trouble:
        return None, trouble.sentence()
    except OSError as error:
        return None, f"The refused rows could not be written: {error.strerror or error}."
    finally:
        beside.unlink(missing_ok=True)
    return to, f"The refused rows are in {to}; mend them there and import that file."


def _named(written: Path, source: Path) -> Path:
    """Give a written file its name beside the source; one that holds the same is kept instead.

    No file is ever written over.
    """
    for number in count(1):
        to = source.with_name(f"{source.stem}.rejected{'' if number == 1 else f'-{number}'}.csv")
        try:
            to.open("xb").close()  # the name is ours now
        except FileExistsError:
            if to.is_file() and cmp(written, to, shallow=False):
                return to
            continue
        written.replace(to)
        return to
    raise AssertionError("numbers have no end")


def _lines(told: ImportTold, is_dry_run: bool, said_of_refused: str) -> tuple[str, ...]:
    from desktop_app.shop_record.counted_words import rows_counted

    would = "would be " if is_dry_run else ""
    lines = [
        f"{rows_counted(told.read)} read: {told.added:,} {would}added, {told.updated:,} "
        f"{would}updated, {told.unchanged:,} unchanged, {told.refused:,} refused."
    ]
    if said_of_refused:
        lines.append(said_of_refused)
    for one in told.rejected:
        where = f"Row {one.row}, {one.column}" if one.column else f"Row {one.row}"
        shown = f" “{one.value}”" if one.value else ""
        lines.append(f"{where}{shown}: {one.why}")
    return tuple(lines)

"""`import`: a table of jobs brought into the shop."""

from __future__ import annotations

from pathlib import Path

from desktop_app.commands.outcome import Asked, Outcome
from desktop_app.commands.shop_place import kinds_of
from desktop_app.commands.watching import shop_of


def import_file(asked: Asked) -> Outcome:
    """Bring the jobs of a file into the shop, or say what that would do."""
    from desktop_app.records_exchanged.import_actions import import_rows
    from desktop_app.records_exchanged.map_actions import read_map_file
    from desktop_app.records_exchanged.reading_actions import open_table
    from desktop_app.records_exchanged.row_words import kind_ids
    from desktop_app.records_exchanged.stored_import import ReadWith
    from desktop_app.symptom_search.vocabulary_file import shop_vocabulary

    path = Path(asked.file).expanduser()
    column_map = read_map_file(Path(asked.columns).expanduser()) if asked.columns else None
    with shop_of(asked) as record, open_table(path, column_map) as table:
        words = shop_vocabulary()
        reads = ReadWith(
            lambda text: tuple(group.id for group in words.groups_in(text)),
            words.conditions_in,
            kind_ids(kinds_of(record).values()),
        )
        told = import_rows(record, table, path.name, reads, dry_run=asked.dry_run)
    said = told.as_json()
    would = "would be " if asked.dry_run else ""
    lines = [
        f"{said['read']:,} rows read: {said['added']:,} {would}added, {said['updated']:,} "
        f"{would}updated, {said['unchanged']:,} unchanged, {len(said['rejected']):,} refused."
    ]
    for one in said["rejected"]:
        where = f"Row {one['row']}, {one['column']}" if one["column"] else f"Row {one['row']}"
        shown = f" “{one['value']}”" if one["value"] else ""
        lines.append(f"{where}{shown}: {one['why']}")
    return Outcome(said, tuple(lines))

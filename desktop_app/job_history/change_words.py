"""One change of a row in plain words: what it was of, before and after."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import TYPE_CHECKING

from desktop_app.job_history.job_rows import Row
from desktop_app.job_history.table_words import ColumnWords, TableWords
from desktop_app.job_history.value_words import NOTHING, ShopSpeech, Values, value_in_words
from desktop_app.job_history.words_of_jobs import JOB_TABLES
from desktop_app.job_history.words_of_parts import PART_TABLES
from desktop_app.job_history.words_of_returns import RETURN_TABLES
from desktop_app.language import tr

if TYPE_CHECKING:
    from desktop_app.shop_record.deed import RowChange

TABLES: Mapping[str, TableWords] = {**JOB_TABLES, **PART_TABLES, **RETURN_TABLES}
_ITSELF = ("job", "visit", "vehicle", "customer")  # there is one of each: no name is needed


def change_in_words(change: RowChange, speech: ShopSpeech) -> Iterator[str]:
    """Give a line for each column of a row that was changed, or one for a row that came or went."""
    table = TABLES[change.table]
    before, after = change.before, change.after
    if before is not None and after is not None:
        row = (change.table, change.row_id)
        whole = {**speech.rows.get(row, {}), **after}
        called = "" if change.table == "job" else f"{row_name(row, speech, whole)}, "
        for name, value in after.items():
            column = table.columns[name]
            old = value_in_words(before.get(name), column, {**whole, **before}, speech)
            new = value_in_words(value, column, whole, speech)
            yield f"{called}{column.name}: {old} → {new}"
    else:
        values = after or before or {}
        did = tr("Added") if before is None else tr("Taken out")
        name = row_name((change.table, change.row_id), speech, values)
        said = "; ".join(_filled(table, values, speech))
        yield f"{did}: {name}" + (f" ({said})" if said else "")


def row_name(row: Row, speech: ShopSpeech, values: Values | None = None) -> str:
    """Return what a row of the job is called: "Reading, replacement, tip length, rotor"."""
    values = speech.rows.get(row, {}) if values is None else values
    return ", ".join((TABLES[row[0]].noun, *_told_apart(row[0], values, speech)))


def _told_apart(name: str, values: Values, speech: ShopSpeech) -> Iterator[str]:
    """Give what tells a row from others of its sort, and then what tells the row it hangs on."""
    table = TABLES[name]
    if name in _ITSELF:
        return
    for each in table.named_by:
        said = value_in_words(values.get(each), table.columns[each], values, speech)
        if said != NOTHING:
            yield said.strip("“”")
    for each, column in table.columns.items():
        on = (column.table, values.get(each, 0))
        if column.how == "above" and on in speech.rows:
            yield from _told_apart(column.table, speech.rows[on], speech)


def _filled(table: TableWords, values: Values, speech: ShopSpeech) -> Iterator[str]:
    """Say what stands in a row, but for what its name says already."""
    for name, column in table.columns.items():
        value = values.get(name)
        if name in table.named_by or _left_out(column) or value is None or value == "":
            continue
        yield f"{column.name}: {value_in_words(value, column, values, speech)}"


def _left_out(column: ColumnWords) -> bool:
    return column.how in ("above", "figures", "inner")

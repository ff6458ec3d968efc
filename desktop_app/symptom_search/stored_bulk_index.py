"""The search index after many jobs at once: added by an import, or taken out with it."""

from __future__ import annotations

from collections.abc import Sequence

from sqlalchemy import Connection

from desktop_app.shop_record.bulk import BulkRows
from desktop_app.shop_record.databases.dialect_search import remove_range, write_texts
from desktop_app.symptom_search.stored_index import AT_A_TIME, JobIndex


def follow_bulk(index: JobIndex, connection: Connection, done: Sequence[BulkRows]) -> None:
    """Write or take out the words of each job in the ranges."""
    for one in done:
        if one.table != "job" or one.followed:
            continue
        if one.gone is not None:
            remove_range(connection, one.first, one.last)
            continue
        if one.said is not None:
            write_texts(connection, {job: index.text(said) for job, said in one.said.items()})
            continue
        for start in range(one.first, one.last + 1, AT_A_TIME):
            ids = range(start, min(start + AT_A_TIME, one.last + 1))
            write_texts(connection, index.texts(connection, ids))

"""The check of what the search answers from: the texts of all jobs, their words, the arrays."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from sqlalchemy import Connection, select

from desktop_app.language import tr
from desktop_app.repair_jobs.stored import Job
from desktop_app.shop_record.checks.problem import MEND, Problem
from desktop_app.shop_record.databases import dialect
from desktop_app.shop_record.databases.dialect_search import (
    index_is_whole,
    jobs_indexed,
    make_words_anew,
    read_texts,
)
from desktop_app.shop_record.record import ShopRecord
from desktop_app.symptom_search.stored_ask_file import IndexFiles
from desktop_app.symptom_search.stored_index import JobIndex

_WHERE = tr("the search index")
READ_AGAIN = 4000  # jobs, spread evenly, whose texts are worked out again


def index_problems(connection: Connection, index: JobIndex) -> Iterator[Problem]:
    """Hold the index against the jobs; nothing is lost by its damage, it is made of them.

    Each job must be in it and its words must agree with its texts, which finds damage; of some
    thousand jobs the texts are worked out again, which finds an index that is out of step.
    """
    try:
        wrong = sorted(_jobs_wrong(connection, index))
        if wrong:
            some = ", ".join(str(job) for job in wrong[:10])
            what = tr(
                "It has not the words of {number:,} jobs as they are now (job row {rows}).",
                number=len(wrong),
                rows=some,
            )
            yield Problem(_WHERE, what, False, MEND)
        elif not index_is_whole(connection):
            yield Problem(_WHERE, tr("Its words are damaged."), False, MEND)
    except (*dialect.ERRORS, UnicodeDecodeError) as error:
        said = str(getattr(error, "orig", error))
        yield Problem(_WHERE, tr("It can't be read to the end ({said}).", said=said), False, MEND)


def arrays_problems(shop: Path) -> Iterator[Problem]:
    """Tell of a file of arrays that is damaged; the program makes it anew by itself too."""
    for path in IndexFiles(shop).torn():
        name = path.relative_to(shop).as_posix()
        yield Problem(_WHERE, tr("{name} is damaged.", name=name), False, MEND)


def renew_index(record: ShopRecord, index: JobIndex) -> int:
    """Make the index anew from the jobs; no row and no entry is written. Returns how many jobs."""
    for path in IndexFiles(record.folder).torn():
        path.unlink(missing_ok=True)
    with record.deed(tr("Make the search index anew")) as deed:
        make_words_anew(deed.connection)
        return index.rebuild(deed.connection)


def _jobs_wrong(connection: Connection, index: JobIndex) -> Iterator[int]:
    indexed = jobs_indexed(connection)
    ids = [row[0] for row in connection.execute(select(Job.id).order_by(Job.id))]
    yield from indexed.symmetric_difference(ids)
    some = [job for job in ids[:: 1 + len(ids) // READ_AGAIN] if job in indexed]
    texts, kept = index.texts(connection, some), read_texts(connection, some)
    yield from (job for job in some if job in texts and texts[job] != kept.get(job))

"""The rows of a large file, read by a process beside the one that writes them."""

from __future__ import annotations

import pickle
import subprocess
from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager, suppress
from dataclasses import replace
from functools import partial
from itertools import islice
from typing import Any

from desktop_app.records_exchanged.job_row import JobRow, RowRejected
from desktop_app.records_exchanged.read_table import Table
from desktop_app.records_exchanged.rows_process import MOST_SAID, Heard
from desktop_app.records_exchanged.stored_hanging import ReadWith
from desktop_app.shop_record.own_program.own_process import own_process

FROM_ROWS = 5_000  # below that the process has hardly begun when all is done
_READING = "desktop_app.records_exchanged.rows_process"
_made: Callable[[Any], JobRow] = partial(tuple.__new__, JobRow)
_Rows = Iterable[JobRow | RowRejected]


@contextmanager
def rows_beside(rows: _Rows, reads: ReadWith) -> Iterator[tuple[_Rows, ReadWith]]:
    """Give the rows, and what their words are read with: the same ones, only sooner.

    A small file, and one whose words no other process can read, is left as it is.
    """
    if not isinstance(rows, Table) or rows.found.rows < FROM_ROWS or reads.own_phrases is None:
        yield rows, reads
        return
    heard: Heard = {}
    try:
        process = own_process(_READING, stdin=subprocess.PIPE, stderr=subprocess.DEVNULL)
    except OSError:
        yield rows, reads
        return
    with process:
        try:
            found = replace(rows.found, first_rows=())
            assert process.stdin is not None
            with suppress(OSError), process.stdin:
                pickle.dump((rows.source, found, dict(reads.own_phrases)), process.stdin)
            yield _rows(process, rows, heard), _heard_first(heard, reads)
        finally:
            process.kill()


def _heard_first(heard: Heard, reads: ReadWith) -> ReadWith:
    """Return what reads a concern only where the process has not told what is heard in it."""

    def symptoms(concern: str) -> tuple[str, ...]:
        told = heard.get(concern)
        return reads.symptoms(concern) if told is None else told[0]

    def conditions(concern: str) -> tuple[str, ...]:
        told = heard.get(concern)
        return reads.conditions(concern) if told is None else told[1]

    return replace(reads, symptoms=symptoms, conditions=conditions)


def _rows(process: subprocess.Popen[bytes], table: Table, heard: Heard) -> Iterator[Any]:
    """Give the rows that the process reads; where it came to nothing, read on from there."""
    taken = 0
    while (some := _next(process, heard)) is not None:
        if not some:
            return
        taken += len(some)
        for row in some:
            yield _made(row) if type(row) is tuple else row
    yield from islice(table, taken, None)


def _next(process: subprocess.Popen[bytes], heard: Heard) -> list[Any] | None:
    """Return the next rows, none at the end; None where the process has come to nothing."""
    assert process.stdout is not None
    try:
        some, more = pickle.load(process.stdout)
    except (EOFError, OSError, pickle.UnpicklingError):
        return None
    if len(heard) > 2 * MOST_SAID:
        heard.clear()
    heard.update(more)
    listed: list[Any] = some
    return listed

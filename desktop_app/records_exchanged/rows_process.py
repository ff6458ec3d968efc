"""The process that reads the rows of a large file, and what is heard in each concern, beside.

On its standard input it is told which table it is and the shop's own phrases; on its standard
output it gives rows and what was heard, some thousands at a time, and at the end an empty list.
Where anything goes wrong it ends: whoever waits for the rows reads on, and says what is wrong.
"""

from __future__ import annotations

import pickle
import signal
import sys
from itertools import islice
from typing import BinaryIO

from desktop_app.records_exchanged.column_map import ColumnMap
from desktop_app.records_exchanged.job_row import AT_A_TIME, JobRow
from desktop_app.records_exchanged.read_table import Table
from desktop_app.symptom_search.vocabulary_file import shop_vocabulary

MOST_SAID = 10_000  # concerns that are not said again
Heard = dict[str, tuple[tuple[str, ...], tuple[str, ...]]]  # groups and conditions of concerns


def give_rows(asked: BinaryIO, out: BinaryIO) -> None:
    """Read the table that is asked for, and write what it holds."""
    source, found, own_phrases = pickle.load(asked)  # from the process that started this one
    words = shop_vocabulary()
    if own_phrases:
        words = words.with_own(own_phrases)
    said: Heard = {}
    rows = iter(Table(source, ColumnMap(), found))
    while some := list(islice(rows, AT_A_TIME)):
        heard: Heard = {}
        for row in some:
            if isinstance(row, JobRow) and row.concern and row.concern not in said:
                groups = tuple(group.id for group in words.groups_in(row.concern))
                said[row.concern] = heard[row.concern] = groups, words.conditions_in(row.concern)
        if len(said) > MOST_SAID:
            said.clear()
        bare = [tuple(row) if isinstance(row, JobRow) else row for row in some]
        pickle.dump((bare, heard), out, pickle.HIGHEST_PROTOCOL)
        out.flush()
    pickle.dump(([], {}), out)
    out.flush()


if __name__ == "__main__":
    signal.signal(signal.SIGINT, signal.SIG_IGN)  # who started it ends it
    give_rows(sys.stdin.buffer, sys.stdout.buffer)

"""A large shop as if every job had been written up by deeds: each row stands in the history."""

from __future__ import annotations

import json
import sqlite3
from collections import defaultdict
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from desktop_app.shop_record.past.history import GENESIS, chained_hash
from desktop_app.shop_record.record_name import FILE_NAME
from tests.conftest import NOON
from tests.large_history import large_history

AT = NOON.isoformat(timespec="seconds")
LATER = {"cause": "", "correction": "", "left_at": None}  # written when the car goes, before: this
ENTRY = "INSERT INTO history (seq, at, who, words, body, hash) VALUES (?, ?, 'Odile', ?, ?, ?)"
Row = dict[str, Any]
Change = tuple[str, int, Row | None, Row | None]


def written_history(folder: Path, jobs: int) -> None:
    """Fill a new folder with a shop of that many jobs, two entries each and one a vehicle."""
    large_history(folder, jobs)
    raw = sqlite3.connect(folder / FILE_NAME)
    raw.execute("PRAGMA synchronous = OFF")
    raw.executemany(ENTRY, _chained(_deeds(raw)))
    raw.commit()
    raw.close()


def _deeds(raw: sqlite3.Connection) -> Iterator[tuple[str, list[Change]]]:
    for car in _rows(raw, "vehicle"):
        yield "Add a vehicle", [_added("vehicle", car)]
    hanging = defaultdict[int, list[Change]](list)
    for table in ("job_symptom", "trouble_code"):
        for row in _rows(raw, table):
            hanging[row["job_id"]].append(_added(table, row))
    for visit, job in zip(_rows(raw, "visit"), _rows(raw, "job"), strict=True):
        first = _added("job", job | LATER)
        yield "Write up a car", [_added("visit", visit), first, *hanging[job["id"]]]
        yield "Hand the car over", [("job", job["id"], LATER, {name: job[name] for name in LATER})]


def _added(table: str, row: Row) -> Change:
    return table, row["id"], None, row


def _rows(raw: sqlite3.Connection, table: str) -> Iterator[Row]:
    found = raw.execute(f"SELECT * FROM {table} ORDER BY id")
    names = [column[0] for column in found.description]
    return (dict(zip(names, row, strict=True)) for row in found.fetchall())


def _chained(deeds: Iterator[tuple[str, list[Change]]]) -> Iterator[tuple[Any, ...]]:
    previous = GENESIS
    for seq, (words, changes) in enumerate(deeds, 1):
        named = ("table", "row_id", "before", "after")
        facts = {"at": AT, "who": "Odile", "place": "desk", "words": words, "reverses": None}
        facts["changes"] = [dict(zip(named, change, strict=True)) for change in changes]
        body = json.dumps(facts, sort_keys=True, separators=(",", ":"), ensure_ascii=False)
        previous = chained_hash(previous, seq, body)
        yield seq, AT, words, body, previous

"""The hash of many rows that come a few at a time."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterable, Sequence
from typing import Any

AT_A_TIME = 1000  # rows in one piece; part of what is hashed, so it never changes
_JSON = json.JSONEncoder(separators=(",", ":"), ensure_ascii=False)


def canonical(rows: Sequence[Sequence[Any]]) -> bytes:
    """Return a piece of rows as it is hashed: a JSON array (RFC 8259) of them on one line."""
    return _JSON.encode(rows).encode() + b"\n"


class RowsHash:
    """The SHA-256 of BulkRows, from rows that come a few at a time."""

    def __init__(self) -> None:
        self._digest = hashlib.sha256()
        self._rows: list[Sequence[Any]] = []

    def take(self, rows: Iterable[Sequence[Any]]) -> None:
        """Take the next rows by id, each with all columns in the table's order."""
        self._rows += rows
        whole = len(self._rows) - len(self._rows) % AT_A_TIME
        for start in range(0, whole, AT_A_TIME):
            self._digest.update(canonical(self._rows[start : start + AT_A_TIME]))
        del self._rows[:whole]

    def hexdigest(self) -> str:
        """Return the hash of all rows, when the last was taken."""
        if self._rows:
            self._digest.update(canonical(self._rows))
            self._rows.clear()
        return self._digest.hexdigest()

"""What an import came to, and what stands against a single row."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any, Literal

from desktop_app.records_exchanged.job_row import JobRow, RowRejected

Outcome = Literal["added", "unchanged", "updated"]
# Called every few thousand rows with how many were read; what it raises takes everything back.
Told = Callable[[int], None]


class RowTrouble(Exception):
    """A row cannot be taken: the column, what stood there, and why."""

    def __init__(self, column: str, value: object, why: str) -> None:
        super().__init__(why)
        self.column, self.value, self.why = column, str(value), why


@dataclass(slots=True)
class ImportTold:
    """What became of each row, one of four; `rejected` says why, row by row of the file.

    `backup` is where the shop lies as it was before, if it had jobs and something was written.
    """

    added: int = 0
    unchanged: int = 0
    updated: int = 0
    rejected: list[RowRejected] = field(default_factory=list)
    backup: Path | None = None

    @property
    def refused(self) -> int:
        """How many rows were not taken."""
        return len({one.row for one in self.rejected})

    @property
    def read(self) -> int:
        """How many rows were read."""
        return self.added + self.unchanged + self.updated + self.refused

    def count(self, outcome: Outcome) -> None:
        """Count a row that was taken."""
        setattr(self, outcome, getattr(self, outcome) + 1)

    def reject(self, row: JobRow, trouble: RowTrouble) -> None:
        """Count a row that was not taken."""
        value, number = trouble.value[:200], row.job_number
        self.rejected.append(RowRejected(row.row, trouble.column, value, trouble.why, number))

    def sort(self) -> None:
        """Bring the rejected rows into the order of the file."""
        self.rejected.sort(key=lambda one: one.row)

    def whys(self) -> dict[int, str]:
        """Return for each row that was not taken, by its number, all reasons in one text."""
        said: dict[int, list[str]] = {}
        for one in self.rejected:
            why = f"{one.column}: {one.why}" if one.column else one.why
            said.setdefault(one.row, []).append(why)
        return {row: " ".join(each) for row, each in said.items()}

    def as_json(self) -> dict[str, Any]:
        """Return it as the command prints it, with an entry for each column of a rejected row."""
        names = ("row", "column", "value", "why")
        return {
            **{"read": self.read, "added": self.added},
            **{"unchanged": self.unchanged, "updated": self.updated},
            "rejected": [{name: getattr(one, name) for name in names} for one in self.rejected],
        }


def outcome_of(job: Outcome, part: Outcome, link: Outcome) -> Outcome:
    """Return what became of a row of a known job: a part added to it, changed, or nothing."""
    if job == "unchanged" and part == "added":
        return "added"
    return "unchanged" if {job, part, link} == {"unchanged"} else "updated"

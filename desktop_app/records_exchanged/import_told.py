"""What an import came to, and what stands against a single row."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import asdict, dataclass, field
from typing import Any, Literal

from desktop_app.records_exchanged.job_row import RowRejected

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
    """How many rows were read, and what became of each: one of the four."""

    read: int = 0
    added: int = 0
    unchanged: int = 0
    updated: int = 0
    rejected: list[RowRejected] = field(default_factory=list)

    def count(self, outcome: Outcome) -> None:
        """Count a row that was taken."""
        setattr(self, outcome, getattr(self, outcome) + 1)

    def reject(self, row: int, trouble: RowTrouble) -> None:
        """Count a row that was not taken."""
        self.rejected.append(RowRejected(row, trouble.column, trouble.value[:200], trouble.why))

    def as_json(self) -> dict[str, Any]:
        """Return it as the command prints it, the rejected rows in the order of the file."""
        rejected = sorted(self.rejected, key=lambda one: one.row)
        return {
            **{"read": self.read, "added": self.added},
            **{"unchanged": self.unchanged, "updated": self.updated},
            "rejected": [asdict(one) for one in rejected],
        }


def outcome_of(first: Outcome, *others: Outcome) -> Outcome:
    """Return what became of a row: a job or a part of it added, else changed, else nothing."""
    if first == "added":
        return "added"
    if first == "unchanged" and others[0] == "added":
        return "added"
    changed = "updated" in (first, *others) or "added" in others
    return "updated" if changed else "unchanged"

"""The check of a shop: its database, its history and its photo files, each problem in words."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import asdict, dataclass
from typing import Any

from desktop_app.shop_record import dialect, history
from desktop_app.shop_record.record import ShopRecord


@dataclass(frozen=True, slots=True)
class Problem:
    """One thing that is not as it should be: where, what, whether it is lost, what to do."""

    where: str
    what: str
    lost: bool
    do: str


@dataclass(frozen=True, slots=True)
class Checked:
    """The outcome of a check."""

    problems: tuple[Problem, ...]
    photos_checked: int
    history_entries_checked: int

    @property
    def ok(self) -> bool:
        """Whether nothing was found."""
        return not self.problems

    def as_json(self) -> dict[str, Any]:
        """Return the outcome as the command prints it."""
        return {
            "ok": self.ok,
            "problems": [asdict(problem) for problem in self.problems],
            "photos_checked": self.photos_checked,
            "history_entries_checked": self.history_entries_checked,
        }


def check_shop(record: ShopRecord, photos: Iterable[tuple[str, str]]) -> Checked:
    """Check a whole shop; `photos` are (SHA-256, where it is named) of all photos in the record."""
    problems: list[Problem] = []
    with record.reading() as connection:
        for words in dialect.integrity_problems(connection):
            problems.append(Problem("the database", words, True, "Go back to your last good copy."))
        entries, broken = history.chain_problems(connection)
    for words in broken:
        do = "Compare with a copy or a printed sheet of that day."
        problems.append(Problem("the history", words, False, do))
    checked = 0
    known: dict[str, bool | None] = {}
    for sha256, where in photos:
        if sha256 not in known:
            checked += 1
            known[sha256] = record.photos.is_whole(sha256)
        if known[sha256] is not True:
            problems.append(_photo_problem(sha256, where, known[sha256]))
    return Checked(tuple(problems), checked, entries)


def _photo_problem(sha256: str, where: str, whole: bool | None) -> Problem:
    what = "is missing" if whole is None else "was changed after it was taken in"
    name = f"photos/{sha256[:2]}/{sha256}"
    return Problem(where, f"The photo file {name} {what}.", True, "Bring it back from a copy.")

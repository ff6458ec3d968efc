"""What a check of a shop finds, each problem in words."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from desktop_app.language import tr

GO_BACK = tr("Go back to your last good copy.")
MEND = tr("“benchwitness check --mend” makes it anew.")


@dataclass(frozen=True, slots=True)
class Problem:
    """One thing that is not as it should be: where, what, whether it is lost, what to do.

    `photo` is the SHA-256 of a photo that is gone or was changed.
    """

    where: str
    what: str
    lost: bool
    do: str
    photo: str = ""

    def as_json(self) -> dict[str, Any]:
        """Return it as the command prints it."""
        return {"where": self.where, "what": self.what, "lost": self.lost, "do": self.do}


@dataclass(frozen=True, slots=True)
class Checked:
    """The outcome of a check; `notes` are worth saying and no damage."""

    problems: tuple[Problem, ...]
    photos_checked: int
    history_entries_checked: int
    notes: tuple[str, ...] = ()

    @property
    def ok(self) -> bool:
        """Whether nothing was found."""
        return not self.problems

    def as_json(self) -> dict[str, Any]:
        """Return the outcome as the command prints it."""
        return {
            "ok": self.ok,
            "problems": [problem.as_json() for problem in self.problems],
            "photos_checked": self.photos_checked,
            "history_entries_checked": self.history_entries_checked,
        } | ({"notes": list(self.notes)} if self.notes else {})

"""Which place of a shop was shown last on this computer, and which jobs were opened here last."""

from __future__ import annotations

import json
from pathlib import Path

from desktop_app.shop_window import place_names as place
from desktop_app.shop_window.window_memory import window_memory

MOST = 8  # jobs
# What can be shown by itself; kept by words of no language, for the next start may speak another.
_KEPT_AS = {
    place.ASK: "ask",
    place.HEARD: "heard",
    place.WATCH: "watch",
    place.BACK: "back",
    place.MONDAY: "monday",
    place.KINDS: "kinds",
    place.DRAWER: "drawer",
    place.CARD: "card",
    place.RECORDS: "records",
    place.RULES: "rules",
    place.JOB: "job",
}


class LeftHere:
    """How one shop was left on this computer; jobs are their ids, and may be gone meanwhile."""

    def __init__(self, folder: Path) -> None:
        self._key = f"left/{folder.resolve().as_posix()}"

    def place(self) -> str:
        """Return the place that was shown last; the first one where that is not known."""
        kept, _ = self._read()
        return next((name for name, one in _KEPT_AS.items() if one == kept), place.ASK)

    def jobs(self) -> tuple[int, ...]:
        """Return the jobs that were opened, the last first."""
        return self._read()[1]

    def came_to(self, name: str, job: int | None = None) -> None:
        """Remember a place that is shown, and its job; one that needs more is none to come back to.

        Written at once: a program that is ended hard leaves its place as well.
        """
        before = kept, jobs = self._read()
        kept = _KEPT_AS.get(name, kept)
        if job is not None:
            jobs = (job, *(one for one in jobs if one != job))[:MOST]
        if (kept, jobs) != before:
            memory = window_memory()
            memory.setValue(self._key, json.dumps({"place": kept, "jobs": jobs}))
            memory.sync()

    def forget(self) -> None:
        """Forget how the shop was left."""
        window_memory().remove(self._key)

    def _read(self) -> tuple[str, tuple[int, ...]]:
        try:
            said = json.loads(str(window_memory().value(self._key, "")))
            return str(said["place"]), tuple(map(int, said["jobs"]))
        except (ValueError, KeyError, TypeError):
            return _KEPT_AS[place.ASK], ()

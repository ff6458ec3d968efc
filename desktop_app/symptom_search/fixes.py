"""What fixed it here before: the corrections of jobs, counted, and how often they came back."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from typing import TypedDict

from desktop_app.repair_jobs.share_interval import wilson

SMALL = 10  # settled jobs below which a share is called small


class FixJson(TypedDict):
    """One fix as the `find` command prints it."""

    fix: str
    jobs: int
    settled: int
    came_back: int
    rate: float | None
    low: float | None
    high: float | None


@dataclass(frozen=True, slots=True)
class MendedJob:
    """A job that was handed over: what was replaced, else the correction's words."""

    job: int
    part_kinds: frozenset[str]
    correction: str
    left_on: date
    window_days: int
    came_back: bool

    def is_settled(self, today: date) -> bool:
        """True from the day after the window's last day; on the last day it is still open.

        A window of 0 days has no limit in time and is never over by its days.
        """
        return 0 < self.window_days < (today - self.left_on).days


@dataclass(frozen=True, slots=True)
class Fix:
    """One way in which it was mended: how often, and what became of it.

    `fix` is a part kind's id or a correction's words. A window still open is no success, so
    `rate` (with its 95 % Wilson interval) is `settled_back` of the `settled` jobs; None without
    any. `came_back` counts all that came back, those with an open window among them.
    """

    fix: str
    name: str
    jobs: tuple[int, ...]
    settled: int
    settled_back: int
    came_back: int
    rate: float | None
    low: float | None
    high: float | None

    def sentence(self) -> str:
        """Return the counts as a shop would say them; small numbers are said to be small."""
        times = "once" if len(self.jobs) == 1 else f"{len(self.jobs)} times"
        early = self.came_back - self.settled_back
        more = f"; {early} of the rest came back already" if early else ""
        if self.rate is None or self.low is None or self.high is None:
            return f"{times}; no window is over yet{more}"
        back = self.settled_back or "none"
        counted = f"{times}; of {self.settled} settled {back} came back"
        if self.settled < SMALL:
            return f"{counted}{more}. Few: the true share may be {self.low:.0%} to {self.high:.0%}."
        return f"{counted}: {self.rate:.0%} ({self.low:.0%} to {self.high:.0%}){more}"

    def as_json(self) -> FixJson:
        """Return the fields of the command contract, and how many of the jobs are settled."""
        return {
            "fix": self.fix,
            "jobs": len(self.jobs),
            "settled": self.settled,
            "came_back": self.came_back,
            "rate": self.rate,
            "low": self.low,
            "high": self.high,
        }


def count_fixes(
    mended: Iterable[MendedJob], names: Mapping[str, str], today: date, most: int = 12
) -> tuple[Fix, ...]:
    """Group mended jobs by what was done, the most frequent first.

    A job in which two kinds of part were replaced counts under both.
    """
    grouped: dict[str, list[MendedJob]] = {}
    shown: dict[str, str] = {}
    for one in mended:
        for kind in sorted(one.part_kinds):
            shown.setdefault(kind, names.get(kind, kind))
            grouped.setdefault(kind, []).append(one)
        words = " ".join(one.correction.casefold().split()).rstrip(" .;,")
        if not one.part_kinds and words:
            key = f" {words}"  # never mistaken for a part kind's id
            shown.setdefault(key, one.correction.strip())
            grouped.setdefault(key, []).append(one)
    ways = sorted(grouped, key=lambda key: (-len(grouped[key]), shown[key].casefold()))
    return tuple(_fix(key, shown[key], grouped[key], today) for key in ways[:most])


def _fix(key: str, name: str, mended: Sequence[MendedJob], today: date) -> Fix:
    settled = [one for one in mended if one.is_settled(today)]
    back = sum(one.came_back for one in settled)
    low, high = wilson(back, len(settled)) if settled else (None, None)
    return Fix(
        fix=name if key.startswith(" ") else key,
        name=name,
        jobs=tuple(one.job for one in mended),
        settled=len(settled),
        settled_back=back,
        came_back=sum(one.came_back for one in mended),
        rate=back / len(settled) if settled else None,
        low=low,
        high=high,
    )

"""What the shop asks of its comebacks: the rates of groups, and the curve of all jobs together."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import date
from types import MappingProxyType
from typing import TypedDict

from desktop_app.returns_watched.honest_numbers.counted_jobs import CountedJobs
from desktop_app.returns_watched.honest_numbers.group_rates import (
    By,
    GroupRate,
    compared_at_once,
    group_rates,
)
from desktop_app.returns_watched.honest_numbers.many_compared import caution
from desktop_app.returns_watched.honest_numbers.proportion import clopper_pearson
from desktop_app.returns_watched.honest_numbers.survival import Curve, kaplan_meier
from desktop_app.returns_watched.kind_windows import Promise, promise_of
from desktop_app.returns_watched.window import EndsBy, Window

NO_NAMES: Mapping[str, str] = MappingProxyType({})
EARLY_DAY = 30  # common practice, no source


class WindowJson(TypedDict):
    """The shop's promise, and the day that was looked from."""

    days: int
    miles: float
    rule: EndsBy
    today: str


class CurveJson(TypedDict):
    """The share of jobs come back, at each day on which one did; columns of one length.

    Where none did there is one flat step: the day that half of the jobs were watched to.
    """

    days: list[int]
    at_risk: list[int]
    events: list[int]
    came_back: list[float]
    low: list[float]
    high: list[float]


class RatesJson(TypedDict):
    """What the `rates` command prints."""

    window: WindowJson
    groups: list[dict[str, object]]
    curve: CurveJson


@dataclass(frozen=True, slots=True)
class Rates:
    """Comeback rates by one thing, as of a day; the curve is of all jobs, over days.

    `came_later` jobs came with a reason after their window. `watched` are a day and how many jobs
    were watched to it or longer, for what a curve without returns can say. `promise` is the
    shop's window as it says it, where that is not in days and miles. `shared` where a job counts
    in several groups.
    """

    by: By
    window: Window
    today: date
    groups: tuple[GroupRate, ...]
    curve: Curve
    came_later: int = 0
    watched: tuple[int, int] = (0, 0)
    promise: Promise | None = None
    shared: bool = False

    def as_json(self) -> RatesJson:
        """Return the fields of the command contract."""
        return {
            "window": {
                "days": self.window.days,
                "miles": self.window.miles,
                "rule": self.window.rule,
                "today": self.today.isoformat(),
            },
            "groups": [group.as_json() for group in self.groups],
            "curve": self._curve_json(),
        }

    def _curve_json(self) -> CurveJson:
        """Return the steps of the curve; where none came back, how far it is flat and known."""
        curve = self.curve
        day, jobs = self.watched
        if not len(curve.ages) and jobs:
            return {
                "days": [day],
                "at_risk": [jobs],
                "events": [0],
                "came_back": [0.0],
                "low": [0.0],
                "high": [clopper_pearson(0, jobs)[1]],
            }
        return {
            "days": [int(day) for day in curve.ages],
            "at_risk": curve.at_risk.tolist(),
            "events": curve.events.tolist(),
            "came_back": (1 - curve.left).tolist(),
            "low": (1 - curve.high).tolist(),
            "high": (1 - curve.low).tolist(),
        }

    def lines(self, names: Mapping[str, str] = NO_NAMES) -> tuple[str, ...]:
        """Return the same facts for a person, with the cautions that belong to them.

        `names` say in words what groups are called by a short name in the record.
        """
        if not self.groups:
            return ("No job was handed over with a cause and a correction in that time.",)
        return (
            *(_group_line(group, names.get(group.name, group.name)) for group in self.groups),
            *self._beneath(),
        )

    def _beneath(self) -> Iterator[str]:
        own = self.window
        said = self.promise or promise_of(own.days, 0, round(own.miles), own.rule)
        yield (
            f"As of {self.today.isoformat()}. The shop's window: {said.in_words()}; a job can "
            "carry its own. A window still open is no success, and a visit that nobody has judged "
            "counts as neither."
        )
        if any(group.lost_sight for group in self.groups):
            yield (
                "Lost sight of: the car is gone, or was sold where a sale ends the window. It is "
                "no success, and the curve watches it until that day."
            )
        if any(group.not_ours for group in self.groups):
            yield (
                "Not ours: it came back, and a person said that the reason is not ours. Such a job "
                "is in no rate, neither as a comeback nor as a success."
            )
        if any(group.cannot_tell for group in self.groups):
            yield (
                "Cannot tell: it came, and a person judged that nobody can tell what it was. That "
                "is neither a comeback nor a success."
            )
        if any(group.settled > group.comebacks for group in self.groups):
            yield (
                "No news is not good news: a job whose window ended quietly counts as well here, "
                "though nobody may have heard of its car since. The week's book says of how many."
            )
        if self.came_later:
            jobs = "1 job" if self.came_later == 1 else f"{self.came_later} jobs"
            yield (
                f"{jobs} came back with a reason after the window had ended: no comeback here, and "
                "not the same as all well."
            )
        if self.by == "verdict":
            yield (
                "Comparing is no experiment: who compares may also work more carefully otherwise, "
                "and some work has nothing to compare."
            )
        if self.shared:
            yield "A job counts under each name that it has, so the groups can share jobs."
        compared = caution(compared_at_once(self.groups))
        if compared is not None:
            yield f"{compared} “More” or “fewer than luck explains” allows for that."
        yield from self._in_time()

    def _in_time(self) -> Iterator[str]:
        curve = self.curve
        day, jobs = self.watched
        if not len(curve.ages) and jobs:
            most = clopper_pearson(0, jobs)[1]
            yield (
                f"None came back by day {day}, to which {jobs} {'was' if jobs == 1 else 'were'} "
                f"watched; so few could hide a share of up to {most:.1%}."
            )
        early = sum(day <= EARLY_DAY for day in curve.ages.tolist())
        for steps, when in ((early, f"by day {EARLY_DAY}"), (len(curve.ages), "in all")):
            if steps:
                share, low, high = (
                    1 - float(column[steps - 1]) for column in (curve.left, curve.high, curve.low)
                )
                yield (
                    f"Came back {when}, open windows watched as far as they go: {share:.1%} "
                    f"({low:.1%} to {high:.1%})."
                )


def rates_of(
    jobs: CountedJobs, by: By, window: Window, today: date, promise: Promise | None = None
) -> Rates:
    """Work out the rates by one thing, and the curve of all the jobs over days."""
    import numpy as np

    days, back = jobs.watched()
    # To the day that half of the jobs were watched to: further on, few speak for all.
    middle = int(np.median(days)) if len(days) else 0
    watched = (middle, int((days >= middle).sum()))
    curve = kaplan_meier(days, back)
    later = int((jobs.came_later & jobs.settled & ~jobs.came_back).sum())
    shared = any(len(names) > 1 for names in set(jobs.groups))
    return Rates(by, window, today, group_rates(jobs, by), curve, later, watched, promise, shared)


def _group_line(group: GroupRate, name: str) -> str:
    jobs = "1 job" if group.jobs == 1 else f"{group.jobs} jobs"
    counts = f"{name}: {jobs}, {group.still_open} open, {group.waiting} waiting"
    counts += f", {group.lost_sight} lost sight of" if group.lost_sight else ""
    counts += f", {group.not_ours} not ours" if group.not_ours else ""
    said = [f"{counts}, {group.cannot_tell} nobody can tell" if group.cannot_tell else counts]
    if group.rate is None or group.low is None or group.high is None:
        return f"{said[0]}; no window is over yet."
    came = f"of {group.settled} settled {group.comebacks or 'none'} came back"
    if group.note is None:
        said.append(f"{came}: {group.rate:.1%} ({group.low:.1%} to {group.high:.1%})")
        if group.drawn_in is not None:
            said.append(f"{group.drawn_in.mean:.1%} is likely once all are weighed")
    else:
        said.append(came)
    if group.luck_told is not None and group.expected is not None:
        fewest, most = group.luck_told
        said.append(
            f"{group.expected:.1f} expected of such work elsewhere, "
            f"where luck alone gives {fewest} to {most} (held against: {group.held_against})"
        )
    return f"{'; '.join(said)}. {group.read_as.capitalize()}."

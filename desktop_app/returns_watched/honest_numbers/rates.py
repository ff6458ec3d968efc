"""What the shop asks of its comebacks: the rates of groups, and the curve of all jobs together."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import date
from types import MappingProxyType
from typing import TypedDict

from desktop_app.language import tr
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
            return (tr("No job was handed over with a cause and a correction in that time."),)
        return (
            *(_group_line(group, self._shown(group.name, names)) for group in self.groups),
            *self._beneath(),
        )

    def _shown(self, name: str, names: Mapping[str, str]) -> str:
        return tr(name) if self.by == "verdict" else names.get(name, name)

    def _beneath(self) -> Iterator[str]:
        own = self.window
        said = self.promise or promise_of(own.days, 0, round(own.miles), own.rule)
        yield tr(
            "As of {today}. The shop's window: {promise}; a job can carry its own. A "
            "window still open is no success, and a visit that nobody has judged "
            "counts as neither.",
            today=self.today.isoformat(),
            promise=said.in_words(),
        )
        if any(group.lost_sight for group in self.groups):
            yield tr(
                "Lost sight of: the car is gone, or was sold where a sale ends the "
                "window. It is no success, and the curve watches it until that day."
            )
        if any(group.not_ours for group in self.groups):
            yield tr(
                "Not ours: it came back, and a person said that the reason is not "
                "ours. Such a job is in no rate, neither as a comeback nor as a "
                "success."
            )
        if any(group.cannot_tell for group in self.groups):
            yield tr(
                "Cannot tell: it came, and a person judged that nobody can tell what "
                "it was. That is neither a comeback nor a success."
            )
        if any(group.settled > group.comebacks for group in self.groups):
            yield tr(
                "No news is not good news: a job whose window ended quietly counts as "
                "well here, though nobody may have heard of its car since. The week's "
                "book says of how many."
            )
        if self.came_later:
            yield tr(
                "{jobs} came back with a reason after the window had ended: no "
                "comeback here, and not the same as all well.",
                jobs=_jobs_in_words(self.came_later),
            )
        if self.by == "verdict":
            yield tr(
                "Comparing is no experiment: who compares may also work more carefully "
                "otherwise, and some work has nothing to compare."
            )
        if self.shared:
            yield tr("A job counts under each name that it has, so the groups can share jobs.")
        compared = caution(compared_at_once(self.groups))
        if compared is not None:
            yield tr(
                "{compared} “More” or “fewer than luck explains” allows for that.",
                compared=compared,
            )
        yield from self._in_time()

    def _in_time(self) -> Iterator[str]:
        curve = self.curve
        day, jobs = self.watched
        if not len(curve.ages) and jobs:
            most = clopper_pearson(0, jobs)[1]
            yield (
                tr(
                    "None came back by day {day}, to which 1 was watched; so few could hide a "
                    "share of up to {most:.1%}.",
                    day=day,
                    most=most,
                )
                if jobs == 1
                else tr(
                    "None came back by day {day}, to which {jobs} were watched; so few could "
                    "hide a share of up to {most:.1%}.",
                    day=day,
                    jobs=jobs,
                    most=most,
                )
            )
        early = sum(day <= EARLY_DAY for day in curve.ages.tolist())
        for steps, when in (
            (early, tr("by day {day}", day=EARLY_DAY)),
            (len(curve.ages), tr("in all")),
        ):
            if steps:
                share, low, high = (
                    1 - float(column[steps - 1]) for column in (curve.left, curve.high, curve.low)
                )
                yield tr(
                    "Came back {when}, open windows watched as far as they go: "
                    "{share:.1%} ({low:.1%} to {high:.1%}).",
                    when=when,
                    share=share,
                    low=low,
                    high=high,
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


def _jobs_in_words(jobs: int) -> str:
    return tr("1 job") if jobs == 1 else tr("{number} jobs", number=jobs)


def _group_line(group: GroupRate, name: str) -> str:
    counts = tr(
        "{name}: {jobs}, {still_open} open, {waiting} waiting",
        name=name,
        jobs=_jobs_in_words(group.jobs),
        still_open=group.still_open,
        waiting=group.waiting,
    )
    counts += (
        tr(", {lost_sight} lost sight of", lost_sight=group.lost_sight) if group.lost_sight else ""
    )
    counts += tr(", {not_ours} not ours", not_ours=group.not_ours) if group.not_ours else ""
    said = [
        tr("{counts}, {cannot_tell} nobody can tell", counts=counts, cannot_tell=group.cannot_tell)
        if group.cannot_tell
        else counts
    ]
    if group.rate is None or group.low is None or group.high is None:
        return tr("{said}; no window is over yet.", said=said[0])
    came = tr(
        "of {settled} settled {comebacks} came back",
        settled=group.settled,
        comebacks=group.comebacks or tr("none"),
    )
    if group.note is None:
        said.append(
            tr(
                "{came}: {rate:.1%} ({low:.1%} to {high:.1%})",
                came=came,
                rate=group.rate,
                low=group.low,
                high=group.high,
            )
        )
        if group.drawn_in is not None:
            said.append(tr("{mean:.1%} is likely once all are weighed", mean=group.drawn_in.mean))
    else:
        said.append(came)
    if group.luck_told is not None and group.expected is not None:
        fewest, most = group.luck_told
        said.append(
            tr(
                "{expected:.1f} expected of such work elsewhere, where luck alone gives "
                "{fewest} to {most} (held against: {held_against})",
                expected=group.expected,
                fewest=fewest,
                most=most,
                held_against=group.held_against,
            )
        )
    return f"{'; '.join(said)}. {group.read_as.capitalize()}."

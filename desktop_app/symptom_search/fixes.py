"""What was done here before: the corrections of jobs, counted, and how often they came back."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import NamedTuple, TypedDict

from desktop_app.language import tr
from desktop_app.repair_jobs.share_interval import wilson
from desktop_app.symptom_search.word_forms import plain_words
from desktop_app.symptom_search.word_index.counting import FixCounted
from desktop_app.symptom_search.word_index.entry import fix_key

SMALL = 10  # settled jobs below which a share is called small


class FixJson(TypedDict):
    """One fix as the `find` command prints it."""

    fix: str
    jobs: int
    settled: int
    came_back: int
    came_back_early: int
    rate: float | None
    low: float | None
    high: float | None


class Fix(NamedTuple):
    """One thing that was done: how often, and what became of it.

    `fix` is a part kind's id or a correction's words. A window still open is no success, so
    `rate` (with its 95 % Wilson interval) is `settled_back` of the `settled` jobs; None without
    any. `came_back` counts all that came back, those with an open window among them. The ids of
    the jobs behind the numbers, the newest first: `jobs`, `settled_jobs` and `back_jobs`.
    """

    fix: str
    name: str
    jobs: Sequence[int]
    settled_jobs: Sequence[int]
    back_jobs: Sequence[int]
    settled_back: int

    @property
    def settled(self) -> int:
        """How many of the jobs are settled."""
        return len(self.settled_jobs)

    @property
    def came_back(self) -> int:
        """How many of the jobs came back."""
        return len(self.back_jobs)

    @property
    def early_back(self) -> int:
        """How many came back though their window is not over: they are in no share yet."""
        return self.came_back - self.settled_back

    @property
    def rate(self) -> float | None:
        """The share of settled jobs that came back."""
        return self.settled_back / self.settled if self.settled else None

    @property
    def low(self) -> float | None:
        """The lower end of the share's interval."""
        return wilson(self.settled_back, self.settled)[0] if self.settled else None

    @property
    def high(self) -> float | None:
        """The upper end of the share's interval."""
        return wilson(self.settled_back, self.settled)[1] if self.settled else None

    def sentence(self) -> str:
        """Return the counts as a shop would say them; small numbers are said to be small."""
        counted, more = self._counted(), self._early()
        if self.rate is None or self.low is None or self.high is None:
            return counted
        if self.settled < SMALL:
            return tr(
                "{counted}{more}. Few: the true share may be {low:.0%} to {high:.0%}.",
                counted=counted,
                more=more,
                low=self.low,
                high=self.high,
            )
        return tr(
            "{counted}: {rate:.0%} ({low:.0%} to {high:.0%}){more}",
            counted=counted,
            rate=self.rate,
            low=self.low,
            high=self.high,
            more=more,
        )

    def _counted(self) -> str:
        """Say how often it was done and came back, of the settled jobs where some did not."""
        jobs, early = len(self.jobs), self.early_back
        if self.came_back == jobs:
            if jobs == 1:
                return tr("once, and it came back")
            return tr("{number} times, and all came back", number=jobs)
        times = tr("once") if jobs == 1 else tr("{number} times", number=jobs)
        if self.settled:
            return tr(
                "{times}; of {settled} settled {back} came back",
                times=times,
                settled=self.settled,
                back=self.settled_back or tr("none"),
            )
        if early:
            return tr(
                "{times}; none is settled yet, {early} came back already", times=times, early=early
            )
        return tr("{times}; none is settled yet", times=times)

    def _early(self) -> str:
        """Say what came back of the jobs that are in no share yet, where nothing else says it."""
        jobs, early = len(self.jobs), self.early_back
        if not early or self.came_back == jobs:
            return ""
        rest = jobs - self.settled
        return tr("; of {rest} not settled {early} came back already", rest=rest, early=early)

    def as_json(self) -> FixJson:
        """Return the fields of the command contract; `came_back` is of the settled jobs."""
        return {
            "fix": self.fix,
            "jobs": len(self.jobs),
            "settled": self.settled,
            "came_back": self.settled_back,
            "came_back_early": self.early_back,
            "rate": self.rate,
            "low": self.low,
            "high": self.high,
        }


def fix_words(correction: str) -> str:
    """Return a correction's words as they are compared; empty where there are none.

    Capitals, accents and signs don't make another fix. The space before the words keeps them from
    being taken for a part kind's id.
    """
    words = plain_words(correction)
    return f" {words}" if words else ""


def name_fix(
    counted: FixCounted, part_kinds: Iterable[str], correction: str, names: Mapping[str, str]
) -> Fix:
    """Return a counted fix with its name, from the newest job that had it.

    `part_kinds` are those fitted in that job; `names` are the kinds' names by their ids.
    """
    kind = next((kind for kind in part_kinds if fix_key(kind) == counted.key), None)
    name = correction.strip() if kind is None else names.get(kind, kind)
    return Fix(
        fix=name if kind is None else kind,
        name=name,
        jobs=counted.jobs,
        settled_jobs=counted.settled,
        back_jobs=counted.back,
        settled_back=counted.settled_back,
    )

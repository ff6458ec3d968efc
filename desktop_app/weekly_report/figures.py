"""The week's figures: what left, what came back and as what it counts, and the weeks behind it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Container, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date, datetime
from typing import Literal

from desktop_app.language import marked
from desktop_app.parts_compared.part_kinds.kind_names import kind_words
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.repair_jobs.counted import is_counted
from desktop_app.returns_watched.kind_windows import Promise, promise_of
from desktop_app.returns_watched.returns_list import ReturnRow, VisitKey
from desktop_app.returns_watched.waiting import LONG_WAIT_DAYS
from desktop_app.returns_watched.watching import WatchedJob
from desktop_app.weekly_report.week import Week, week_of
from desktop_app.weekly_report.year_behind import YearBehind

WEEKS_SHOWN = 26

CountsAs = Literal["comeback", "waiting", "not counted"]
#: Marked for the translators.
COUNTED_AS: tuple[CountsAs, ...] = (
    marked("comeback"),
    marked("waiting"),
    marked("not counted"),
)


@dataclass(frozen=True, slots=True)
class JobLeft:
    """A job that was handed over; money in cents, `window_ends` the last day of its window.

    None where it has no limit in time; 0 `window_miles` is no limit in distance. `window_rule` is
    "first" or "both"; `work` is None for a repair. `proof_in_doubt` is True where what is written
    down does not bear out the level that was chosen.
    """

    number: str
    left_on: date
    vehicle: str
    concern: str
    cause_found: bool | None
    cause: str
    correction: str
    system: str
    proof_level: int | None
    hours: float | None
    unbilled_hours: float | None
    price_cents: int | None
    window_ends: date | None
    window_miles: float
    window_rule: str
    declined: str | None
    proof_words: str = ""
    work: str | None = None
    proof_in_doubt: bool = False

    @property
    def counted(self) -> bool:
        """A repair is counted where something was found and put right."""
        return is_counted(self.cause_found, self.cause, self.correction, self.work)


@dataclass(frozen=True, slots=True)
class WeekCount:
    """One week's counts: jobs handed over, later jobs judged a comeback, and those to be judged."""

    week: Week
    left: int
    comebacks: int
    waiting: int


@dataclass(frozen=True, slots=True)
class WeekRows:
    """What was read for a report: the week's own rows and those of the weeks behind it."""

    left: tuple[JobLeft, ...]
    came_back: tuple[ReturnRow, ...]
    on_watch: tuple[WatchedJob, ...]
    left_behind: tuple[date, ...]
    came_back_behind: tuple[ReturnRow, ...]
    year: YearBehind
    rules_changed: tuple[str, ...] = ()
    calls_due: Mapping[str, date] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class ShopWords:
    """How this shop writes: its name, its unit of distance, its money, its paper, its promise.

    `kinds` are the part kinds that it knows, by id.
    """

    name: str
    distance_unit: Literal["mi", "km"]
    currency: str
    paper: str
    window_days: int
    window_miles: int
    window_rule: str
    window_months: int = 0
    kinds: Mapping[str, PartKind] = field(default_factory=dict, compare=False)

    def kind(self, kind_id: str) -> str:
        """Return the name of a part kind; its id as words where it is not known any more."""
        return kind_words(kind_id, self.kinds)

    @property
    def promise(self) -> Promise:
        """What the shop promises after a hand-over."""
        return promise_of(self.window_days, self.window_months, self.window_miles, self.window_rule)


@dataclass(frozen=True, slots=True)
class WeekFigures:
    """All that the report says; `as_of` is the day up to which the watch was looked at.

    `waiting_long` counts visits of the 26 weeks that nobody judged within two weeks.
    `rules_changed` says which house rules changed in the week. `calls_due` has the day from which
    the customer of a job on watch is to be asked, by its number. `anchor` says where the history
    stood when the record was read.
    """

    week: Week
    made_at: datetime
    as_of: date
    shop: ShopWords
    left: tuple[JobLeft, ...]
    came_back: tuple[ReturnRow, ...]
    counts_as: tuple[CountsAs, ...]
    on_watch: tuple[WatchedJob, ...]
    weeks: tuple[WeekCount, ...]
    year: YearBehind
    waiting_long: int = 0
    rules_changed: tuple[str, ...] = ()
    calls_due: Mapping[str, date] = field(default_factory=dict)
    anchor: str = ""

    def as_json(self) -> dict[str, object]:
        """Return the counts as the `week` command prints them."""
        return {
            "week": str(self.week),
            "from": self.week.monday.isoformat(),
            "to": self.week.sunday.isoformat(),
            "as_of": self.as_of.isoformat(),
            "left": len(self.left),
            "counted": sum(job.counted for job in self.left),
            "comebacks": self.counted_as("comeback"),
            "waiting": self.counted_as("waiting"),
            "under_watch": len(self.on_watch),
            "weeks": [
                {
                    "week": str(each.week),
                    "left": each.left,
                    "comebacks": each.comebacks,
                    "waiting": each.waiting,
                }
                for each in self.weeks
            ],
        }

    def counted_as(self, what: CountsAs) -> int:
        """Return how many later jobs of the week count as that."""
        return self.counts_as.count(what)


def week_figures(
    week: Week, made_at: datetime, as_of: date, shop: ShopWords, rows: WeekRows
) -> WeekFigures:
    """Put the week's figures together from the rows that were read for it."""
    return WeekFigures(
        week=week,
        made_at=made_at,
        as_of=as_of,
        shop=shop,
        left=rows.left,
        came_back=rows.came_back,
        counts_as=count_later_jobs(rows.came_back, rows.year.left_out),
        on_watch=rows.on_watch,
        weeks=weeks_behind(week, rows.left_behind, rows.came_back_behind, rows.year.left_out),
        year=rows.year,
        rules_changed=rows.rules_changed,
        calls_due=rows.calls_due,
        waiting_long=sum(
            counts_as == "waiting" and (as_of - row.came_on).days > LONG_WAIT_DAYS
            for row, counts_as in zip(
                rows.came_back_behind,
                count_later_jobs(rows.came_back_behind, rows.year.left_out),
                strict=True,
            )
        ),
    )


def count_later_jobs(
    returns: Sequence[ReturnRow], left_out: Container[str] = ()
) -> tuple[CountsAs, ...]:
    """Say of each row as what it counts, so that every later visit counts once at most.

    A comeback is a judged row inside the window; a job that has none is waiting as long as a row
    inside the window is not judged. One visit is one return, however many earlier jobs it meets.
    `left_out` are earlier jobs that no rate counts: nothing was put right that could fail.
    """
    comebacks: dict[VisitKey, int] = {}
    waiting: dict[VisitKey, int] = {}
    for i, row in enumerate(returns):
        if row.is_comeback and row.earlier not in left_out:
            comebacks.setdefault(row.visit, i)
        elif row.waits:
            waiting.setdefault(row.visit, i)
    counts: list[CountsAs] = ["not counted"] * len(returns)
    for later, i in waiting.items():
        counts[i] = "not counted" if later in comebacks else "waiting"
    for i in comebacks.values():
        counts[i] = "comeback"
    return tuple(counts)


def weeks_behind(
    week: Week,
    left_on: Sequence[date],
    returns: Sequence[ReturnRow],
    left_out: Container[str] = (),
) -> tuple[WeekCount, ...]:
    """Count the 26 weeks that end with this one, oldest first; a week without rows counts 0."""
    counts = count_later_jobs(returns, left_out)
    came: Counter[tuple[Week, str]] = Counter()
    for row, what in zip(returns, counts, strict=True):
        came[week_of(row.came_on), what] += 1
    left: Counter[Week] = Counter()
    for day, jobs in Counter(left_on).items():
        left[week_of(day)] += jobs
    weeks = (week.moved(-back) for back in reversed(range(WEEKS_SHOWN)))
    return tuple(
        WeekCount(each, left[each], came[each, "comeback"], came[each, "waiting"]) for each in weeks
    )

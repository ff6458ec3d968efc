"""A job on watch: what is left of its window, and when that will probably end."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Literal, NamedTuple, TypedDict

from desktop_app.repair_jobs.odometer import RunningMiles, miles_between
from desktop_app.repair_jobs.rate_of_use import RateOfUse
from desktop_app.returns_watched.job_facts import JobFacts
from desktop_app.returns_watched.standing import JobCourse, Sighting, window_is_open
from desktop_app.returns_watched.watch_end import ProbableEnd, probable_end
from desktop_app.returns_watched.window import Window

Readings = Sequence[tuple[date, RunningMiles | None]]


class WatchJson(TypedDict):
    """A job on watch as the `watch` command prints it."""

    job: str
    vehicle: str
    days_left: int | None
    miles_left: float | None
    expected_close: str | None
    expected_close_by: Literal["time", "distance"] | None


@dataclass(frozen=True, slots=True)
class WatchedJob:
    """A job whose window is open today.

    `miles_gone` is what the last trusted reading since the hand-over says; None where there is none
    or the odometer cannot say. `read_on` is the day of the last trusted reading, the hand-over's
    own among them. `days_left` and `miles_left` are None where the window has no
    such limit, `ends` where nobody can say when it ends. `use` is how much the vehicle is driven,
    `known` the last trusted reading that distance is reckoned from (its day, the miles since the
    hand-over), None where the distance cannot be followed. `came_back` is True where a comeback was
    judged already, `seen_on` the last visit of the car since. `told_since` is the day since which
    its customer tells of the same trouble, while no later visit speaks for the car.
    """

    job_id: int
    job: str
    vehicle: str
    concern: str
    left_on: date
    window: Window
    days_gone: int
    miles_gone: float | None
    read_on: date | None
    days_left: int | None
    miles_left: float | None
    ends: ProbableEnd | None
    use: RateOfUse | None = None
    known: tuple[date, float] | None = None
    came_back: bool = False
    waits: bool = False
    seen_on: date | None = None
    told_since: date | None = None

    @property
    def expected_close(self) -> date | None:
        """The day on which it will probably end; None where nobody can say."""
        return None if self.ends is None else self.ends.on

    @property
    def expected_close_by(self) -> Literal["time", "distance"] | None:
        """What will probably end it."""
        return None if self.ends is None else self.ends.by

    @property
    def not_read_since(self) -> bool:
        """True where the odometer could say how far it went, but nobody has read it since."""
        return self.miles_gone is None and self.read_on is not None

    @property
    def counts_by_distance(self) -> bool:
        """True where miles are promised and can be followed."""
        return bool(self.window.miles) and self.known is not None

    def miles_expected(self, today: date) -> float | None:
        """Return how far it will have gone today, reckoned from `known`; None if unknown."""
        if self.known is None or self.use is None:
            return None
        on, miles = self.known
        return miles + self.use.miles_a_day * (today - on).days

    @property
    def share_used(self) -> float:
        """How much of the window is used, 0 to 1, by what is known."""
        return self.window.share_used(self.days_gone, self.miles_gone) or 0.0

    def as_json(self) -> WatchJson:
        """Return the fields of the command contract."""
        return {
            "job": self.job,
            "vehicle": self.vehicle,
            "days_left": self.days_left,
            "miles_left": self.miles_left,
            "expected_close": None if (end := self.expected_close) is None else end.isoformat(),
            "expected_close_by": self.expected_close_by,
        }


class WatchSaid(NamedTuple):
    """What stands beside a watched job and is not worked out: its id and its words."""

    job_id: int
    number: str
    vehicle: str
    concern: str
    came_back: bool = False
    waits: bool = False
    seen_on: date | None = None
    told_since: date | None = None


class Driven(NamedTuple):
    """How much a vehicle is driven.

    `rate` is what its own readings say alone, in miles a day, None where they are too few, or where
    time ends the window anyhow: it decides nothing, but says when to expect the end. `use` is the
    same drawn towards the shop's other cars, with its bounds.
    """

    rate: float | None
    use: RateOfUse


class SinceThen(NamedTuple):
    """What is known of a car since a job left on `out`.

    `known` is the last trusted reading since (its day, the miles since the hand-over) and `read_on`
    the day of the last reading of any kind; None where there is none. `left_read` is True where the
    odometer it left with is trusted, `lost` where no reading can be held against that. After
    `sold_on` the window is over; from `gone_on` on the car is where nobody sees it.
    """

    out: date
    left_read: bool
    known: tuple[date, float] | None
    read_on: date | None
    lost: bool
    sold_on: date | None = None
    gone_on: date | None = None


def watched(
    said: WatchSaid, window: Window, since: SinceThen, driven: Driven, today: date
) -> WatchedJob | None:
    """Return a job as it is watched today, or None where its window is not open."""
    out, known = since.out, since.known
    if since.sold_on is not None and since.sold_on < today:
        return None
    if since.gone_on is not None and since.gone_on <= today:
        return None
    # The last trusted reading has the most miles: no other can end a window that it leaves open.
    sightings = () if known is None else (Sighting(*known),)
    course = JobCourse(
        window, handed_over_on=out, sightings=sightings, followed=since.left_read and not since.lost
    )
    if not window_is_open(course, today):
        return None
    if known is None and since.left_read:
        known = (out, 0.0)
    # Replaced, or read without sense, after the last trusted reading?
    unread = known is not None and since.read_on is not None and since.read_on > known[0]
    # Of the whole promise nobody knows what is left while the odometer was not read since.
    gone = None if since.known is None or unread else since.known[1]
    followed = None if since.lost else known
    # Where both must end and its own readings don't say how much it is driven, time alone decides.
    guessed = window.rule == "both" and driven.rate is None
    ends = probable_end(out, window, None if guessed else driven.use, followed)
    return WatchedJob(
        job_id=said.job_id,
        job=said.number,
        vehicle=said.vehicle,
        concern=said.concern,
        left_on=out,
        window=window,
        days_gone=(today - out).days,
        miles_gone=gone,
        read_on=None if known is None or unread else known[0],
        days_left=window.days_left(out, today),
        miles_left=window.miles_left(gone),
        ends=_before_the_sale(ends, since.sold_on),
        use=driven.use,
        known=followed,
        came_back=said.came_back,
        waits=said.waits,
        seen_on=said.seen_on,
        told_since=said.told_since,
    )


def what_ends_first(jobs: Iterable[WatchedJob]) -> tuple[WatchedJob, ...]:
    """Return the jobs in the order in which their windows will probably end."""

    def place(job: WatchedJob) -> tuple[date, float, str]:
        left = float("inf") if job.days_left is None else job.days_left
        return (job.expected_close or date.max, left, job.job)

    return tuple(sorted(jobs, key=place))


def _before_the_sale(ends: ProbableEnd | None, sold_on: date | None) -> ProbableEnd | None:
    """Close the window on the day of a sale that ends it, where it would end later."""
    if ends is None:
        return None if sold_on is None else ProbableEnd(sold_on, sold_on, sold_on, "time")
    return ends.not_after(sold_on)


def sightings_since(job: JobFacts, out: date, readings: Readings) -> Iterable[Sighting]:
    """Yield when the car was seen after it left, with the miles since, where they are known."""
    for on, place in readings:
        if on > out:
            miles = miles_between(job.odometer_out, place, (on - out).days)
            if miles is not None:
                yield Sighting(on, miles)

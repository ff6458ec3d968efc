"""What is said of a job on watch: how far it is, what is left, when it probably ends."""

from __future__ import annotations

from datetime import date

from desktop_app.language import marked, tr
from desktop_app.repair_jobs.distance import (
    KM_PER_MILE,
    DistanceUnit,
    distance_in_words,
    from_miles,
)
from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.repair_jobs.rate_of_use import use_in_words
from desktop_app.returns_watched.watch_end import ProbableEnd
from desktop_app.returns_watched.watching import WatchedJob
from desktop_app.returns_watched.window import Window

STATE_SIGNS = {marked("quiet"): "●", marked("to be judged"): "◇", marked("came back"): "□"}
_MONTHS = tr("Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec").split()
_FAR_OFF = 3653  # days; beyond ten years the upper bound says no more than "not before"


def days_in_words(days: int) -> str:
    """Return so many days as people say it."""
    return tr("1 day") if days == 1 else tr("{days:,} days", days=days)


def miles_in_words(miles: float | None, unit: DistanceUnit) -> str:
    """Return a distance in the shop's unit, or that nobody knows it."""
    return tr("not known") if miles is None else distance_in_words(from_miles(miles, unit), unit)


def window_in_words(window: Window, unit: DistanceUnit) -> str:
    """Return a window as a person says it: "90 days or 3,000 mi, whichever ends first"."""
    time = days_in_words(window.days) if window.days else ""
    far = miles_in_words(window.miles, unit) if window.miles else ""
    if not (time and far):
        return time or far
    if window.rule == "first":
        return tr("{time} or {far}, whichever ends first", time=time, far=far)
    return tr("{time} and {far}, until both have ended", time=time, far=far)


def state_of(job: WatchedJob) -> str:
    """Return the state of a watched job besides its window, as STATE_SIGNS have it."""
    if job.came_back:
        return "came back"
    return "to be judged" if job.waits else "quiet"


def short_day(day: date) -> str:
    """Return a day with the first letters of its month, the same in every country: "3 Jan 2027"."""
    return f"{_day_and_month(day)} {day.year}"


def _day_and_month(day: date) -> str:
    return f"{day.day} {_MONTHS[day.month - 1]}"


def ends_in_words(ends: ProbableEnd | None) -> str:
    """Return when a window probably ends, in as few words as a table has room for."""
    if ends is None:
        return tr("nobody can say")
    if ends.certain:
        return short_day(ends.on)
    if _far_off(ends):
        return tr("not before {day}", day=short_day(ends.earliest))
    first, last = ends.earliest, ends.latest
    begins = short_day(first)
    if first.year == last.year:
        begins = str(first.day) if first.month == last.month else _day_and_month(first)
    return tr("{first_day} to {last_day}", first_day=begins, last_day=short_day(last))


def _far_off(ends: ProbableEnd) -> bool:
    return (ends.latest - ends.earliest).days > _FAR_OFF


def left_in_words(job: WatchedJob, unit: DistanceUnit) -> str:
    """Return what is left of days and distance by the last reading: "15 days, 1,520 mi".

    While nobody has read the odometer since, nobody knows what is left of the distance.
    """
    said = [tr("no time limit")]
    if job.days_left is not None:
        said = [days_in_words(max(job.days_left, 0))]
    if job.window.miles:
        far = miles_in_words(job.miles_left, unit)
        if job.miles_left is None:
            unread = job.not_read_since
            far = (
                tr("{unit} not read since", unit=unit)
                if unread
                else tr("{unit} not known", unit=unit)
            )
        said.append(far)
    return ", ".join(said)


def in_one_breath(job: WatchedJob, unit: DistanceUnit, today: date) -> tuple[str, ...]:
    """Return the sentences that stand beneath the plane for the job that is looked at."""
    concern = job.concern.strip().rstrip(".")
    about = ", ".join(part for part in (job.vehicle, concern) if part)
    gone = _gone(job, unit)
    if job.use is not None and job.counts_by_distance:
        words, per_mile = ("km", KM_PER_MILE) if unit == "km" else (tr("miles"), 1.0)
        gone = f"{gone} {use_in_words(job.use, words, per_mile)}"
    return (f"{job.job}: {about}.", gone, f"{_left(job, unit)}{_ends(job, today)}")


def _gone(job: WatchedJob, unit: DistanceUnit) -> str:
    left = tr(
        "Left {day}, {days} ago",
        day=day_in_words(job.left_on),
        days=days_in_words(job.days_gone),
    )
    if job.not_read_since:
        return tr("{left}; the odometer was not read since.", left=left)
    if job.miles_gone is None or job.read_on is None:
        return tr("{left}; the odometer cannot say how far it went.", left=left)
    far = miles_in_words(job.miles_gone, unit)
    return tr(
        "{left}; {far} by {day}, when it was last read.",
        left=left,
        far=far,
        day=day_in_words(job.read_on),
    )


def _left(job: WatchedJob, unit: DistanceUnit) -> str:
    left = (
        []
        if job.days_left is None
        else [tr("{days} left", days=days_in_words(max(job.days_left, 0)))]
    )
    if job.miles_left is not None:
        far = miles_in_words(job.miles_left, unit)
        left.append(
            tr("{far} by that reading", far=far)
            if left
            else tr("{far} left by that reading", far=far)
        )
    return f"{', '.join(left)}. " if left else ""


def _ends(job: WatchedJob, today: date) -> str:
    ends = job.ends
    if ends is None:
        return tr(
            "It ends by distance alone, and the odometer cannot say how far; ask to see the car."
        )
    if ends.certain:
        day, by_time = day_in_words(ends.on), ends.by == "time"
        said = (
            tr("It ends {day}, by time.", day=day)
            if by_time
            else tr("It ends {day}, by distance.", day=day)
        )
        if job.window.miles and not job.counts_by_distance:
            return tr(
                "{said} Time alone counts, for the odometer cannot say how far it went.", said=said
            )
        return said
    first, last = day_in_words(ends.earliest), day_in_words(ends.latest)
    if ends.latest < today:
        return tr(
            "By its usual use it ended between {first} and {last}, but nobody has read "
            "the odometer since.",
            first=first,
            last=last,
        )
    if ends.earliest < today:
        said = tr("It may have ended since {first} already", first=first)
        until = tr("; else it ends by {last}", last=last)
    else:
        said, until = tr("It probably ends between {first} and {last}", first=first, last=last), ""
    sure = _what_is_sure(job, ends)
    if _far_off(ends):
        return tr("{said}{what_is_sure}; nobody can say until when.", said=said, what_is_sure=sure)
    return f"{said}{until}{sure}."


def _what_is_sure(job: WatchedJob, ends: ProbableEnd) -> str:
    """Say which of the two days comes by time; what distance does is only probable."""
    last = job.window.last_day(job.left_on)
    if last == ends.latest:
        return tr(", by its time at the latest")
    if last == ends.earliest and job.window.rule == "both":
        return tr(", not before its time is over")
    return tr(", by distance")

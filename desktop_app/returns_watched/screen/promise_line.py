"""What was promised for an earlier job of a car that stands at the counter again."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import date

from desktop_app.language import marked, tr
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.odometer import OdometerReading
from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.repair_jobs.proof_said import unit_of
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.returns_watched.promise_now import DrivenSince, PromiseNow, promise_now
from desktop_app.returns_watched.signs import STANDING_SIGNS
from desktop_app.returns_watched.standing import Standing
from desktop_app.returns_watched.stored_driven_since import read_driven_since
from desktop_app.returns_watched.stored_standing import read_standing
from desktop_app.returns_watched.watch_words import miles_in_words, window_in_words
from desktop_app.returns_watched.window import kept_window
from desktop_app.shop_record.kept_value import kept_day
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.signs import signed

_SAID = {
    PromiseNow.RUNS: marked("{stands}. The promise still runs: {promised}, from {left} on."),
    PromiseNow.RUNS_BY_DAYS: marked(
        "{stands}. By its days the promise still runs: {promised}, from {left} on."
    ),
    PromiseNow.NOT_KNOWN: marked(
        "{stands}. Nobody knows whether the promise still runs: {promised}, from {left} on."
    ),
    # The record has it under watch until the car is taken in: that is not said of what is over.
    PromiseNow.OVER_BY_DAYS: marked("The promise is over by its days: {promised}, from {left} on."),
    PromiseNow.OVER_BY_DISTANCE: marked(
        "The promise is over by distance, {far} were driven: {promised}, from {left} on."
    ),
}
_FAR_NOT_KNOWN = (PromiseNow.RUNS_BY_DAYS, PromiseNow.NOT_KNOWN)
_UNREAD = marked("The distance is not known yet.")
# It was told or estimated, does not go on from the last, or the car left without any.
_CANNOT_SAY = marked("This reading cannot say how far it went.")


def promise_line(
    desk: Desk, names: Mapping[str, str]
) -> Callable[[int, OdometerReading | None], str]:
    """Return what says, of a job by its id, where it stands and whether its promise still runs.

    It is asked with what the car's odometer says now, None while nobody has said it.
    """

    def said(job_id: int, reading: OdometerReading | None) -> str:
        job = desk.ask(read_job, job_id)
        found = desk.ask(read_standing, job_id, desk.today(), names)
        if job is None or found is None:
            return ""
        stands = signed(STANDING_SIGNS, found.standing.value)
        if job.left_on is None or found.standing is not Standing.UNDER_WATCH:
            return stands
        driven = desk.ask(read_driven_since, job, reading)
        if driven is None:
            return stands
        return _in_words(job, kept_day(job.left_on), desk.today(), driven, reading is None, stands)

    return said


def _in_words(
    job: JobView, left_on: date, today: date, driven: DrivenSince, unread: bool, stands: str
) -> str:
    unit = unit_of(job)
    window = kept_window(job.window_days, job.window_miles, job.window_rule)
    now = promise_now(window, (today - left_on).days, driven)
    said = tr(
        _SAID[now],
        stands=stands,
        far=miles_in_words(driven.miles, unit),
        promised=window_in_words(window, unit),
        left=day_in_words(left_on),
    )
    if now not in _FAR_NOT_KNOWN:
        return said
    return f"{said} {tr(_UNREAD if unread else _CANNOT_SAY)}"

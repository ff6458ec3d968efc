"""The proof of a job put together: what was reached, what speaks against it, what to watch for."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from datetime import date, timedelta

from desktop_app.repair_jobs.concern_conditions import condition_words
from desktop_app.repair_jobs.distance import DistanceUnit, from_miles
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.repair_jobs.proof import ProofLevel, ProofReached
from desktop_app.repair_jobs.proof_codes import codes_said, pending_after
from desktop_app.repair_jobs.proof_kept import ProofKept
from desktop_app.repair_jobs.provocation import provoked_sentence
from desktop_app.repair_jobs.road_test_words import worth_in_words
from desktop_app.repair_jobs.self_tests import SelfTestState, monitor_words
from desktop_app.repair_jobs.self_tests_compared import OF_SYSTEM, not_run, readings_at_odds


def unit_of(job: JobView) -> DistanceUnit:
    """Return the unit that the vehicle counts in."""
    return "km" if job.vehicle.odometer_unit == "km" else "mi"


def conditions_told(job: JobView) -> tuple[str, ...]:
    """Return the conditions under which the customer says it happens."""
    return tuple(name for name, happens in job.conditions.items() if happens)


def proof_reached(job: JobView, kept: ProofKept, level: ProofLevel) -> ProofReached:
    """Return what was recorded about the proof, for the sentences of the hand-over."""
    told = conditions_told(job)
    return ProofReached(
        level,
        [name for name in told if kept.conditions.get(name) is True],
        [name for name in told if kept.conditions.get(name) is False],
        codes_were_read=job.codes_were_read,
        not_said=[name for name in told if name not in kept.conditions],
    )


def proof_doubts(job: JobView, kept: ProofKept, level: ProofLevel) -> tuple[str, ...]:
    """Return what was written down and speaks against the level that was chosen."""
    return tuple(_doubts(job, kept, level))


def _doubts(job: JobView, kept: ProofKept, level: ProofLevel) -> Iterator[str]:
    if level < ProofLevel.BAY:
        return
    left = pending_after(job.codes)
    if left:
        verb = "is" if len(left) == 1 else "are"
        yield f"{', '.join(left)} {verb} written down as read after the repair."
    if kept.provoked is not None and kept.provoked.after:
        yield "Made to happen on purpose, it still came after the repair."
    asked = OF_SYSTEM.get(job.system, ())
    if level < ProofLevel.FULL_TRIP or not asked:
        return
    states = kept.after.states
    if not states:
        yield "How the car's own tests stand after the repair is not written down."
    waits = [monitor_words(one) for one in asked if states.get(one) is SelfTestState.NOT_RUN]
    if waits:
        yield f"The car's own test has not run: {', '.join(waits)}. Not run is not passed."


def codes_to_say(job: JobView, kept: ProofKept) -> tuple[str, ...]:
    """Return what has to be said about the codes, and what an emission test may do."""
    waits = bool(not_run(kept.after))
    cleared = "cleared" in kept.steps and not kept.after.states
    return codes_said(job.codes, job.codes_were_read, waits, cleared)


def readings_doubted(job: JobView, kept: ProofKept) -> tuple[str, ...]:
    """Return what is odd about the readings of the car's own tests."""
    stored: dict[str, int] = {}
    for one in job.codes:
        if one.kind == "stored":
            stored[one.stage] = stored.get(one.stage, 0) + 1
    return readings_at_odds(kept.found, kept.after, stored)


def drive_said(job: JobView, kept: ProofKept) -> tuple[str, ...]:
    """Return what the quiet drive and a count on purpose are worth, as far as they were told."""
    said = []
    worth = worth_in_words(kept.every, job.proof_distance, unit_of(job), kept.miles_a_day)
    if worth:
        said.append(worth)
    if kept.provoked is not None:
        said.append(provoked_sentence(kept.provoked))
    return tuple(said)


def watch_for(job: JobView, kept: ProofKept) -> tuple[str, ...]:
    """Return what the customer should look out for; it never calls a car safe to drive."""
    told = conditions_told(job)
    above_all = f", above all: {', '.join(map(condition_words, told))}" if told else ""
    trouble = "the same trouble again" if job.cause_found is not False else "the trouble again"
    said = [f"Tell us when you notice {trouble}{above_all}."]
    if not_run(kept.after):
        said.append(
            "Some of the car's own tests have not run yet. A warning lamp that comes on "
            "is news to us too."
        )
    said.append(
        "A flashing engine lamp, or brakes or steering that feel different: stop as soon as you "
        "can do it without danger, and call."
    )
    return tuple(said)


def window_in_words(job: JobView, months: int | None = None) -> str:
    """Return the window after the hand-over in plain words, in the vehicle's unit.

    `months` are the calendar months that its days were counted from. A window without any limit
    says so, and one that is not given yet too.
    """
    said = _limits(job, months)
    return said if job.left_on is not None else f"{said} So far: it is given at the hand-over."


def _limits(job: JobView, months: int | None) -> str:
    limits = []
    if job.window_days:
        limits.append(_time_limit(job, months))
    if job.window_miles:
        words = "km" if unit_of(job) == "km" else "miles"
        limits.append(f"{from_miles(job.window_miles, unit_of(job)):,.0f} {words}")
    if not limits:
        return "No limit in time or distance was given."
    if len(limits) == 1:
        return f"{limits[0]} after the hand-over."
    ends = "whichever comes first" if job.window_rule == "first" else "until both have ended"
    joined = " or ".join(limits) if job.window_rule == "first" else " and ".join(limits)
    return f"{joined} after the hand-over, {ends}."


def _time_limit(job: JobView, months: int | None) -> str:
    if months:
        said = "1 month" if months == 1 else f"{months} months"
    else:
        said = "1 day" if job.window_days == 1 else f"{job.window_days:,} days"
    if job.left_on is None:
        return said
    last = date.fromisoformat(job.left_on) + timedelta(days=job.window_days)
    return f"{said} (the last is {day_in_words(last)})"


def level_words(level: ProofLevel, conditions: Mapping[str, bool], told: tuple[str, ...]) -> str:
    """Return a level's words for its button; "same conditions" says how many of them were met."""
    words = f"{int(level)}  {level.word}"
    if level is not ProofLevel.SAME_CONDITIONS or not told:
        return words
    met = sum(conditions.get(name) is True for name in told)
    return words if met == len(told) else f"{words} ({met} of {len(told)} met)"

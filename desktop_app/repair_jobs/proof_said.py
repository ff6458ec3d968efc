"""The proof of a job put together: what was reached, what speaks against it, what to watch for."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from desktop_app.language import tr
from desktop_app.repair_jobs.concern_conditions import condition_words
from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.repair_jobs.hand_over import left_unanswered
from desktop_app.repair_jobs.job_view import JobView, ProofWritten
from desktop_app.repair_jobs.proof import CODES_READ, ProofLevel, ProofReached, conditions_to_meet
from desktop_app.repair_jobs.proof_checks import check_words
from desktop_app.repair_jobs.proof_codes import codes_said, pending_after
from desktop_app.repair_jobs.proof_kept import ProofKept
from desktop_app.repair_jobs.provocation import provoked_sentence
from desktop_app.repair_jobs.road_test_words import DrivenUnder, worth_in_words
from desktop_app.repair_jobs.self_tests_compared import not_run, readings_at_odds
from desktop_app.repair_jobs.self_tests_of_system import own_test_doubts, own_test_ran

# So ours and the part kinds' own checks speak of what the customer told, as they are kept.
_OF_THE_CONDITIONS = "under the conditions"


def unit_of(job: JobView) -> DistanceUnit:
    """Return the unit that the vehicle counts in."""
    return "km" if job.vehicle.odometer_unit == "km" else "mi"


def conditions_told(job: ProofWritten) -> tuple[str, ...]:
    """Return the conditions under which the customer says it happens, those of a drive."""
    return conditions_to_meet(job.conditions)


def proof_reached(job: ProofWritten, kept: ProofKept, level: ProofLevel) -> ProofReached:
    """Return what was recorded about the proof, for the sentences of the hand-over."""
    told = conditions_told(job)
    made = [one for one in job.checks if one.kind == "proof" and one.outcome == "done"]
    return ProofReached(
        level,
        [name for name in told if kept.conditions.get(name) is True],
        [name for name in told if kept.conditions.get(name) is False],
        unticked=[check_words(one) for one in left_unanswered(job)],
        codes_were_read=pending_were_read(job),
        not_said=[name for name in told if name not in kept.conditions],
        done=[tried_beside(one.words, told, kept.conditions) for one in made],
        doubts=proof_doubts(job, kept, level),
        own_test=own_test_ran(job.system, kept.after),
        drive_is_written=job.proof_distance is not None or "driven" in kept.steps,
    )


def tried_beside(check: str, told: Sequence[str], met: Mapping[str, bool]) -> str:
    """Return a ticked check as it is said: one of the conditions with what of them was tried.

    `check` is as it is kept, `told` the conditions told of and `met` what was said of the drive.
    """
    words = check_words(check).rstrip(".")
    open_ones = [name for name in told if met.get(name) is not True]
    if not open_ones or _OF_THE_CONDITIONS not in check:
        return words
    tried = ", ".join(condition_words(name) for name in told if met.get(name) is True)
    left_out = ", ".join(condition_words(name) for name in told if met.get(name) is False)
    unsaid = ", ".join(condition_words(name) for name in told if name not in met)
    said = (
        tr("tried: {conditions}", conditions=tried) if tried else "",
        tr("not tried: {conditions}", conditions=left_out) if left_out else "",
        tr("not said whether tried: {conditions}", conditions=unsaid) if unsaid else "",
    )
    return f"{words} ({'; '.join(one for one in said if one)})"


def none_was_tried(check: str, told: Sequence[str], met: Mapping[str, bool]) -> bool:
    """Tell whether a check of the conditions is gainsaid: of each was said that it was not met."""
    return (
        _OF_THE_CONDITIONS in check and bool(told) and all(met.get(name) is False for name in told)
    )


def pending_were_read(job: ProofWritten) -> bool:
    """Tell whether it is written down that pending codes were looked for after the repair.

    A permanent code alone says nothing of the pending ones.
    """
    ticked = any(one.words == CODES_READ and one.outcome == "done" for one in job.checks)
    return ticked or bool(pending_after(job.codes))


def proof_doubts(job: ProofWritten, kept: ProofKept, level: ProofLevel) -> tuple[str, ...]:
    """Return what was written down and speaks against the level that was chosen, or is missing."""
    return tuple(_doubts(job, kept, level))


def _doubts(job: ProofWritten, kept: ProofKept, level: ProofLevel) -> Iterator[str]:
    if level < ProofLevel.BAY:
        return
    left = pending_after(job.codes)
    if left:
        yield (
            tr("{code} is written down as read after the repair.", code=left[0])
            if len(left) == 1
            else tr("{codes} are written down as read after the repair.", codes=", ".join(left))
        )
    read = kept.after.read
    if read is not None and read.codes:
        yield (
            tr("The bytes read after the repair count 1 stored code.")
            if read.codes == 1
            else tr("The bytes read after the repair count {n} stored codes.", n=read.codes)
        )
    if read is not None and read.lamp_on:
        yield tr("By the bytes read after the repair the engine's warning lamp is on.")
    if kept.provoked is not None and kept.provoked.after:
        yield tr("Made to happen on purpose, it still came after the repair.")
    if level >= ProofLevel.FULL_TRIP:
        yield from own_test_doubts(job.system, kept.after, level is ProofLevel.FULL_TRIP)


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
    told = conditions_told(job)
    under = DrivenUnder(
        tuple(name for name in told if kept.conditions.get(name) is False),
        tuple(name for name in told if name not in kept.conditions),
    )
    worth = worth_in_words(kept.every, job.proof_distance, unit_of(job), kept.miles_a_day, under)
    if worth:
        said.append(worth)
    if kept.provoked is not None:
        said.append(provoked_sentence(kept.provoked))
    return tuple(said)


def watch_for(job: JobView, kept: ProofKept) -> tuple[str, ...]:
    """Return what the customer should look out for; it never calls a car safe to drive."""
    told = conditions_told(job)
    said = [_tell_us(job.cause_found is not False, ", ".join(map(condition_words, told)))]
    if not_run(kept.after):
        said.append(
            tr(
                "Some of the car's own tests have not run yet. A warning lamp that comes "
                "on is news to us too."
            )
        )
    said.append(
        tr(
            "A flashing engine lamp, or brakes or steering that feel different: stop as "
            "soon as you can do it without danger, and call."
        )
    )
    return tuple(said)


def _tell_us(same: bool, above_all: str) -> str:
    """Ask the customer to tell of the trouble, above all under the conditions they told of."""
    if not above_all:
        return (
            tr("Tell us when you notice the same trouble again.")
            if same
            else tr("Tell us when you notice the trouble again.")
        )
    words = (
        tr("Tell us when you notice the same trouble again, above all: {conditions}.")
        if same
        else tr("Tell us when you notice the trouble again, above all: {conditions}.")
    )
    return words.format(conditions=above_all)


def level_words(level: ProofLevel, conditions: Mapping[str, bool], told: tuple[str, ...]) -> str:
    """Return a level's words for its button; "same conditions" says how many of them were met."""
    words = f"{int(level)}  {level.word}"
    if level is not ProofLevel.SAME_CONDITIONS or not told:
        return words
    met = sum(conditions.get(name) is True for name in told)
    if met == len(told):
        return words
    return tr("{level} ({met} of {told} met)", level=words, met=met, told=len(told))

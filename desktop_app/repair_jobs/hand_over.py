"""The hand-over: which of the nine answers are still missing, and the moment the car leaves."""

from __future__ import annotations

from collections.abc import Sequence

from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.proof_checks import never_left_out

LEFT = "The car has left: what was proved at the hand-over stays as it was."


def missing_answers(job: JobView, pairs_without_origin: tuple[str, ...] = ()) -> tuple[str, ...]:
    """Return what must still be answered before a job can be handed over, in the order of work.

    Maintenance has no cause to name, and an inspection nothing that was put right or proved.
    """
    missing = []
    if not job.concern.strip():
        missing.append("what the customer says")
    if job.cause_found is None and job.work is None:
        missing.append("the cause, or “not caught”")
    if job.cause_found is not False and job.work != "inspection" and not job.correction.strip():
        missing.append("what was done about it")
    missing.extend(f"where the new {kind} comes from" for kind in pairs_without_origin)
    if job.proof_level is None and job.work != "inspection":
        missing.append("how far it was proved (“unproven” is an answer)")
    if job.declined is None:
        missing.append("what was declined or left undone (“nothing” is an answer)")
    return tuple(missing)


def listed(missing: Sequence[str]) -> str:
    """Return what is missing as it is said in a sentence; there is at least one."""
    if len(missing) == 1:
        return missing[0]
    return f"{', '.join(missing[:-1])} and {missing[-1]}"


def left_unanswered(job: JobView) -> tuple[str, ...]:
    """Return the checks of the job's system that are never left out and that nobody answered."""
    answered = {one.words for one in job.checks if one.kind == "proof" and one.outcome}
    return tuple(check for check in never_left_out(job.system) if check not in answered)


def refit_unanswered(
    job: JobView, points: Sequence[tuple[str, bool]]
) -> tuple[tuple[str, bool], ...]:
    """Return those of the points (words, hurts) for closing up that nobody answered."""
    answered = {one.words for one in job.checks if one.kind == "refit" and one.outcome}
    return tuple((words, hurts) for words, hurts in points if words not in answered)


def hand_over_question(job: JobView, points: Sequence[tuple[str, bool]] = ()) -> str:
    """Return what is asked before a car leaves where someone can get hurt; "" where nothing is.

    That is a check which is never left out, or one of the points for closing up (words, hurts).
    """
    closing = (words for words, hurts in refit_unanswered(job, points) if hurts)
    left = tuple(dict.fromkeys((*left_unanswered(job), *closing)))
    if not left:
        return ""
    listed = "; ".join(words.rstrip(".") for words in left)
    return (
        f"Someone can get hurt where these are left out, and nobody has answered them: {listed}. "
        "Hand the car over all the same? The sheet will say that they are not ticked."
    )

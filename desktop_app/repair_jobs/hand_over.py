"""The hand-over: which of the nine answers are still missing, and the moment the car leaves."""

from __future__ import annotations

from desktop_app.repair_jobs.job_view import JobView


def missing_answers(job: JobView, pairs_without_origin: tuple[str, ...] = ()) -> tuple[str, ...]:
    """Return what must still be answered before a job can be handed over, in the order of work."""
    missing = []
    if not job.concern.strip():
        missing.append("what the customer says")
    if job.cause_found is None:
        missing.append("the cause, or “not caught”")
    if job.cause_found is not False and not job.correction.strip():
        missing.append("what was done about it")
    missing.extend(f"where the new {kind} comes from" for kind in pairs_without_origin)
    if job.proof_level is None:
        missing.append("how far it was proved (“unproven” is an answer)")
    if job.declined is None:
        missing.append("what was declined or left undone (“nothing” is an answer)")
    return tuple(missing)

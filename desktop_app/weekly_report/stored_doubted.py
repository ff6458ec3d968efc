"""Of which jobs the level of proof that was chosen is not borne out by what is written down."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from sqlalchemy import Connection, Row, select

from desktop_app.repair_jobs.job_view import CheckMade, CodeRead, ProofWritten
from desktop_app.repair_jobs.kept_job import kept_level
from desktop_app.repair_jobs.proof import ProofLevel
from desktop_app.repair_jobs.proof_said import proof_reached
from desktop_app.repair_jobs.stored import JobCheck, JobCondition, TroubleCode
from desktop_app.repair_jobs.stored_proof import read_proofs
from desktop_app.returns_watched.stored_vehicles import each_row
from desktop_app.shop_record.kept_value import row_place


def levels_in_doubt(connection: Connection, jobs: Sequence[Row[Any]]) -> frozenset[int]:
    """Return the ids of those of some jobs (their whole rows) whose level is in doubt.

    It is what the page of a job says of it, asked of all of them at once.
    """
    levels = {job.id: _level(job) for job in jobs if job.proof_level is not None}
    conditions: dict[int, dict[str, bool]] = {job: {} for job in levels}
    for row in each_row(connection, _CONDITIONS, JobCondition.job_id, levels):
        conditions[row.job_id][row.condition] = bool(row.happens)
    codes: dict[int, list[CodeRead]] = {job: [] for job in levels}
    for row in each_row(connection, _CODES, TroubleCode.job_id, levels):
        codes[row.job_id].append(CodeRead(row.id, row.code, row.kind, row.stage))
    checks: dict[int, list[CheckMade]] = {job: [] for job in levels}
    for row in each_row(connection, _CHECKS, JobCheck.job_id, levels):
        checks[row.job_id].append(CheckMade(row.id, row.kind, row.words, row.outcome))
    some = [job for job in jobs if job.id in levels]
    proofs = read_proofs(connection, {job.id: job.number for job in some})
    return frozenset(
        job.id
        for job in some
        if proof_reached(
            ProofWritten(
                system=job.system,
                proof_distance=job.proof_distance,
                conditions=conditions[job.id],
                codes=tuple(codes[job.id]),
                checks=tuple(checks[job.id]),
            ),
            proofs[job.id],
            levels[job.id],
        ).in_doubt
    )


_CONDITIONS = select(JobCondition.job_id, JobCondition.condition, JobCondition.happens)
_CODES = select(
    *(TroubleCode.id, TroubleCode.job_id),
    *(TroubleCode.code, TroubleCode.kind, TroubleCode.stage),
).order_by(TroubleCode.id)
_CHECKS = select(
    JobCheck.id, JobCheck.job_id, JobCheck.kind, JobCheck.words, JobCheck.outcome
).order_by(JobCheck.id)


def _level(job: Row[Any]) -> ProofLevel:
    level = kept_level(job.proof_level, row_place("job", job.id, job.number))
    assert level is not None
    return level

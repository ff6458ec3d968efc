"""What led to a fix, read: the first finding and the codes of each job."""

from __future__ import annotations

from collections.abc import Iterable

from sqlalchemy import Connection, select

from desktop_app.repair_jobs.stored import JobCheck, TroubleCode
from desktop_app.shop_record.databases.listed import among


def read_led(
    connection: Connection, jobs: Iterable[int]
) -> tuple[dict[int, str], dict[int, list[str]]]:
    """Return the words of each job's first finding, and its codes as they were found."""
    chosen = among(jobs)
    looked: dict[int, str] = {}
    findings = select(JobCheck.job_id, JobCheck.words, JobCheck.outcome).where(
        JobCheck.job_id.in_(chosen), JobCheck.kind == "inspection"
    )
    for job, words, outcome in connection.execute(findings.order_by(JobCheck.id)):
        if said := ": ".join(part for part in (words.strip(), outcome.strip()) if part):
            looked.setdefault(job, said)
    codes: dict[int, list[str]] = {}
    found = select(TroubleCode.job_id, TroubleCode.code).where(
        TroubleCode.job_id.in_(chosen), TroubleCode.stage == "found"
    )
    for job, code in connection.execute(found.order_by(TroubleCode.id)):
        codes.setdefault(job, []).append(code)
    return looked, codes

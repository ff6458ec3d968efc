"""Reading the proof of a job back from the record, and the rows that its deeds look for."""

from __future__ import annotations

from typing import get_args

from sqlalchemy import Connection, select

from desktop_app.repair_jobs.proof_kept import CaughtKept, ProofKept
from desktop_app.repair_jobs.provocation import PROVOKED, Provoked, read_provoked
from desktop_app.repair_jobs.rate_of_use import rate_of_use, stretches_of
from desktop_app.repair_jobs.road_test import EVERY_UNITS, FaultEvery
from desktop_app.repair_jobs.self_tests import SelfTestState, read_bytes
from desktop_app.repair_jobs.self_tests_compared import Stage, StageTests
from desktop_app.repair_jobs.stored import (
    CaughtHere,
    ConditionMet,
    Job,
    JobCheck,
    ProofStep,
    SelfTest,
    SelfTests,
    Visit,
)
from desktop_app.repair_jobs.stored_odometer import read_shop_use
from desktop_app.repair_jobs.stored_reading import odometer_readings
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.kept_value import damaged
from desktop_app.shop_record.trouble import ShopTrouble


def read_proof(connection: Connection, job_id: int) -> ProofKept:
    """Return what is kept of a job's proof; nothing of it where the job is not there."""
    job = connection.execute(
        select(Job.fault_every, Job.fault_every_unit, Job.window_months, Visit.vehicle_id)
        .join(Visit, Visit.id == Job.visit_id)
        .where(Job.id == job_id)
    ).first()
    if job is None:
        return ProofKept()
    conditions = connection.execute(
        select(ConditionMet.condition, ConditionMet.met).where(ConditionMet.job_id == job_id)
    )
    steps = connection.execute(
        select(ProofStep.step, ProofStep.done_at).where(ProofStep.job_id == job_id)
    )
    caught = connection.execute(
        select(CaughtHere.id, CaughtHere.caught_at, CaughtHere.words)
        .where(CaughtHere.job_id == job_id)
        .order_by(CaughtHere.id)
    )
    every = _every(job.fault_every, job.fault_every_unit)
    return ProofKept(
        conditions={name: bool(met) for name, met in conditions},
        tests=_tests_of(connection, job_id),
        steps={row.step: row.done_at for row in steps},
        caught=tuple(CaughtKept(*row) for row in caught),
        every=every,
        provoked=_provoked_of(connection, job_id),
        miles_a_day=None if every is None else _miles_a_day(connection, job.vehicle_id),
        window_months=job.window_months,
    )


def _tests_of(connection: Connection, job_id: int) -> dict[Stage, StageTests]:
    typed = connection.execute(
        select(SelfTests.stage, SelfTests.typed).where(SelfTests.job_id == job_id)
    )
    bytes_of = {stage: _checked(text) for stage, text in typed}
    by_hand: dict[str, dict[str, SelfTestState]] = {}
    rows = connection.execute(
        select(SelfTest.stage, SelfTest.monitor, SelfTest.state).where(SelfTest.job_id == job_id)
    )
    for stage, monitor, state in rows:
        by_hand.setdefault(stage, {})[monitor] = SelfTestState(state)
    stages: tuple[Stage, ...] = get_args(Stage)
    return {
        stage: StageTests(bytes_of.get(stage, ""), by_hand.get(stage, {}))
        for stage in stages
        if stage in bytes_of or stage in by_hand
    }


def _checked(typed: str) -> str:
    try:
        read_bytes(typed)
    except ShopTrouble as error:
        raise damaged(typed, "the car's four bytes") from error
    return typed


def _every(number: float | None, unit: str | None) -> FaultEvery | None:
    known = next((one for one in EVERY_UNITS if one == unit), None)
    if number is None or not number > 0 or known is None:
        return None
    return FaultEvery(number, known)


def _miles_a_day(connection: Connection, vehicle_id: int) -> float | None:
    """Return the car's own rate of use; None where its visits say nothing of it."""
    stretches = stretches_of(*odometer_readings(connection, vehicle_id))
    if not stretches:
        return None
    return rate_of_use(stretches, read_shop_use(connection)).miles_a_day


def _provoked_of(connection: Connection, job_id: int) -> Provoked | None:
    kept = connection.execute(
        select(JobCheck.outcome).where(
            JobCheck.job_id == job_id, JobCheck.kind == "proof", JobCheck.words == PROVOKED
        )
    ).scalar()
    if not kept:
        return None
    try:
        return read_provoked(kept)
    except ShopTrouble as error:
        raise damaged(kept, "a count before and after") from error


def condition_met_row(deed: Deed, job_id: int, condition: str) -> int | None:
    """Return the row that says whether a condition was met."""
    return deed.connection.execute(
        select(ConditionMet.id).where(
            ConditionMet.job_id == job_id, ConditionMet.condition == condition
        )
    ).scalar()


def self_tests_row(deed: Deed, job_id: int, stage: Stage) -> tuple[int, str] | None:
    """Return the row of the bytes that were typed at a stage, and these bytes as typed."""
    found = deed.connection.execute(
        select(SelfTests.id, SelfTests.typed).where(
            SelfTests.job_id == job_id, SelfTests.stage == stage
        )
    ).first()
    return None if found is None else (found.id, found.typed)


def self_test_row(deed: Deed, job_id: int, stage: Stage, monitor: str) -> int | None:
    """Return the row of one test that a person entered."""
    return deed.connection.execute(
        select(SelfTest.id).where(
            SelfTest.job_id == job_id, SelfTest.stage == stage, SelfTest.monitor == monitor
        )
    ).scalar()


def step_row(deed: Deed, job_id: int, step: str) -> int | None:
    """Return the row of a step that is ticked."""
    return deed.connection.execute(
        select(ProofStep.id).where(ProofStep.job_id == job_id, ProofStep.step == step)
    ).scalar()

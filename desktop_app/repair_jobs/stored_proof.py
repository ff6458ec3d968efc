"""Reading the proof of a job back from the record, and the rows that its deeds look for."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import datetime
from typing import TYPE_CHECKING, Any, TypeAlias, get_args

from sqlalchemy import Connection, select

from desktop_app.language import tr
from desktop_app.repair_jobs.kept_job import kept_every
from desktop_app.repair_jobs.proof_kept import CaughtKept, ProofKept
from desktop_app.repair_jobs.proof_steps import STEP_IDS
from desktop_app.repair_jobs.provocation import PROVOKED, Provoked, read_provoked
from desktop_app.repair_jobs.rate_of_use import ShopUse, rate_of_use, stretches_of
from desktop_app.repair_jobs.road_test import FaultEvery
from desktop_app.repair_jobs.self_tests import MONITOR_IDS, SelfTestState, read_bytes
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
from desktop_app.repair_jobs.stored_odometer import read_odometers, read_shop_use
from desktop_app.shop_record.databases.listed import among
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.kept_value import (
    damaged,
    kept_moment,
    kept_tick,
    kept_word,
    row_place,
)
from desktop_app.shop_record.trouble import ShopTrouble

if TYPE_CHECKING:
    from sqlalchemy.orm import InstrumentedAttribute

_Cells: TypeAlias = list[Sequence[Any]]
_ByJob: TypeAlias = dict[int, _Cells]


def read_proof(connection: Connection, job_id: int, shop: ShopUse | None = None) -> ProofKept:
    """Return what is kept of a job's proof; nothing of it where the job is not there.

    `shop` is how the shop's vehicles are used, where that is at hand; else it is read where the
    vehicle's own rate of use is needed.
    """
    job = connection.execute(
        select(Visit.vehicle_id, Job.number)
        .join(Visit, Visit.id == Job.visit_id)
        .where(Job.id == job_id)
    ).first()
    if job is None:
        return ProofKept()
    every = every_of(connection, job_id)
    return replace(
        read_proofs(connection, {job_id: job.number})[job_id],
        every=every,
        miles_a_day=None if every is None else _miles_a_day(connection, job.vehicle_id, shop),
    )


def read_proofs(connection: Connection, numbers: Mapping[int, str]) -> dict[int, ProofKept]:
    """Return what is kept of the proofs of some jobs, given their numbers by id, read at once.

    How often a fault came, and the car's rate of use, are not among it.
    """

    def rows(of: InstrumentedAttribute[int], *columns: InstrumentedAttribute[Any]) -> _ByJob:
        found: _ByJob = {job: [] for job in numbers}
        wanted = select(of, *columns).where(of.in_(among(numbers))).order_by(columns[0])
        for row in connection.execute(wanted):
            found[row[0]].append(row[1:])
        return found

    met = rows(ConditionMet.job_id, ConditionMet.id, ConditionMet.condition, ConditionMet.met)
    steps = rows(ProofStep.job_id, ProofStep.id, ProofStep.step, ProofStep.done_at)
    caught = rows(CaughtHere.job_id, CaughtHere.id, CaughtHere.caught_at, CaughtHere.words)
    typed = rows(
        *(SelfTests.job_id, SelfTests.id, SelfTests.stage, SelfTests.typed, SelfTests.read_at)
    )
    by_hand = rows(SelfTest.job_id, SelfTest.id, SelfTest.stage, SelfTest.monitor, SelfTest.state)
    checks = rows(JobCheck.job_id, JobCheck.id, JobCheck.kind, JobCheck.words, JobCheck.outcome)
    ticked = {
        job: {(kind, words): outcome for _, kind, words, outcome in some}
        for job, some in checks.items()
    }
    return {
        job: ProofKept(
            conditions=dict(_met(row, number) for row in met[job]),
            tests=_tests(typed[job], by_hand[job], number),
            steps=dict(_step(row, number) for row in steps[job]),
            caught=tuple(_caught(row, number) for row in caught[job]),
            provoked=_provoked(ticked[job].get(("proof", PROVOKED))),
        )
        for job, number in numbers.items()
    }


def every_of(connection: Connection, job_id: int) -> FaultEvery | None:
    """Return how often the fault came, None where nobody said or the job is gone."""
    job = connection.execute(
        select(Job.number, Job.fault_every, Job.fault_every_unit).where(Job.id == job_id)
    ).first()
    if job is None:
        return None
    return kept_every(job.fault_every, job.fault_every_unit, row_place("job", job_id, job.number))


def _met(cells: Sequence[Any], number: str) -> tuple[str, bool]:
    row, name, met = cells
    return name, kept_tick(met, tr("0 or 1"), row_place("condition_met", row, number))


def _step(cells: Sequence[Any], number: str) -> tuple[str, str]:
    row, step, done_at = cells
    at = row_place("proof_step", row, number)
    return kept_word(step, STEP_IDS, tr("a step of the proof"), at), _moment(done_at, at)


def _caught(cells: Sequence[Any], number: str) -> CaughtKept:
    row, caught_at, words = cells
    return CaughtKept(row, _moment(caught_at, row_place("caught_here", row, number)), words)


def _moment(kept: str, at: str) -> str:
    kept_moment(kept, at)
    return kept


def _tests(typed: _Cells, entered: _Cells, number: str) -> dict[Stage, StageTests]:
    bytes_of = {}
    for row, stage, text, read_at in typed:
        at = row_place("self_tests", row, number)
        kept_word(stage, get_args(Stage), tr("“found” or “after repair”"), at)
        kept_moment(read_at, at)
        bytes_of[stage] = _checked(text, at)
    by_hand: dict[str, dict[str, SelfTestState]] = {}
    for row, stage, monitor, state in sorted(entered, key=lambda cells: cells[2]):
        at = row_place("self_test", row, number)
        kept_word(stage, get_args(Stage), tr("“found” or “after repair”"), at)
        kept_word(monitor, MONITOR_IDS, tr("one of the car's own tests"), at)
        stands = kept_word(
            state, tuple(SelfTestState), tr("“complete”, “not run” or “not fitted”"), at
        )
        by_hand.setdefault(stage, {})[monitor] = stands
    stages: tuple[Stage, ...] = get_args(Stage)
    return {
        stage: StageTests(bytes_of.get(stage, ""), by_hand.get(stage, {}))
        for stage in stages
        if stage in bytes_of or stage in by_hand
    }


def _checked(typed: str, at: str) -> str:
    try:
        read_bytes(typed)
    except ShopTrouble as error:
        raise damaged(typed, tr("the car's four bytes"), at) from error
    return typed


def _miles_a_day(connection: Connection, vehicle_id: int, shop: ShopUse | None) -> float | None:
    """Return the car's own rate of use; None where its visits say nothing of it."""
    known = read_odometers(connection, vehicle_id)
    stretches = stretches_of(known.readings(), known.replaced)
    if not stretches:
        return None
    use = read_shop_use(connection) if shop is None else shop
    return rate_of_use(stretches, use).miles_a_day


def provoked_of(connection: Connection, job_id: int) -> Provoked | None:
    """Return how often it came on purpose, before and after; None where nobody said."""
    wanted = select(JobCheck.outcome).where(
        JobCheck.job_id == job_id, JobCheck.kind == "proof", JobCheck.words == PROVOKED
    )
    return _provoked(connection.execute(wanted).scalar())


def _provoked(kept: str | None) -> Provoked | None:
    if not kept:
        return None
    try:
        return read_provoked(kept)
    except ShopTrouble as error:
        raise damaged(kept, tr("a count before and after")) from error


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


def step_moment(deed: Deed, row: int) -> datetime:
    """Return the moment of a step that is ticked."""
    at = deed.connection.execute(select(ProofStep.done_at).where(ProofStep.id == row)).scalar_one()
    return kept_moment(at)


def step_row(deed: Deed, job_id: int, step: str) -> int | None:
    """Return the row of a step that is ticked."""
    return deed.connection.execute(
        select(ProofStep.id).where(ProofStep.job_id == job_id, ProofStep.step == step)
    ).scalar()

"""What the shop does to prove a repair, one function a deed."""

from __future__ import annotations

from datetime import date

from desktop_app.language import tr
from desktop_app.repair_jobs import stored_lookup, stored_proof
from desktop_app.repair_jobs.concern_conditions import CONDITION_IDS
from desktop_app.repair_jobs.entry_bounds import MOST_DISTANCE, check_bounds, check_word
from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.repair_jobs.one_row import keep_answer
from desktop_app.repair_jobs.proof_steps import STEP_IDS
from desktop_app.repair_jobs.provocation import PROVOKED, Provoked
from desktop_app.repair_jobs.road_test import EVERY_UNITS, EVERY_WORDS, EveryUnit, FaultEvery
from desktop_app.repair_jobs.self_tests import SelfTestState, bytes_typed
from desktop_app.repair_jobs.self_tests_compared import Stage
from desktop_app.repair_jobs.stored import (
    CaughtHere,
    ConditionMet,
    Job,
    JobCheck,
    ProofStep,
    SelfTest,
    SelfTests,
)
from desktop_app.repair_jobs.typed_entry import read_moment
from desktop_app.shop_record.as_shown import change_as_shown, check_as_shown
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_record.written_meanwhile import Shown


def meet_condition(record: ShopRecord, job_id: int, condition: str, met: bool | None) -> Done:
    """Say whether a condition the customer told of was met on the drive; None: not said."""
    check_word(tr("what was met"), condition, CONDITION_IDS)

    def work(deed: Deed) -> None:
        stored_lookup.refuse_once_left(deed, job_id)
        row = stored_lookup.condition_row(deed, ConditionMet, job_id, condition)
        answer = None if met is None else {"met": int(met)}
        keep_answer(deed, ConditionMet, row, {"job_id": job_id, "condition": condition}, answer)

    return record.do(tr("Say which conditions were met"), work)


_TYPE_SELF_TESTS: dict[Stage, str] = {
    "found": tr("Write down the car's own tests, found"),
    "after repair": tr("Write down the car's own tests, after repair"),
}


def type_self_tests(
    record: ShopRecord, job_id: int, stage: Stage, typed: str, shown: Shown[str] | None = None
) -> Done:
    """Keep the four bytes of the car's own tests as typed; an empty text takes them out.

    Refused with what is accepted where they are none.
    """
    typed = typed.strip()
    if typed:
        bytes_typed(typed)
    moment = record.clock().isoformat(timespec="seconds")

    def work(deed: Deed) -> None:
        if stage == "after repair":
            stored_lookup.refuse_once_left(deed, job_id)
        row = stored_proof.self_tests_row(deed, job_id, stage)
        check_as_shown(deed, SelfTests, shown, "" if row is None else row[1], typed)
        if not typed:
            if row is not None:
                deed.remove(SelfTests, row[0])
        elif row is None:
            deed.add(SelfTests, job_id=job_id, stage=stage, typed=typed, read_at=moment)
        elif row[1] != typed:
            deed.change(SelfTests, row[0], typed=typed, read_at=moment)

    return record.do(_TYPE_SELF_TESTS[stage], work)


def enter_self_test(
    record: ShopRecord, job_id: int, stage: Stage, monitor: str, state: SelfTestState | None
) -> Done:
    """Enter how one of the car's own tests stands, as a person read it; None: nobody did."""

    def work(deed: Deed) -> None:
        if stage == "after repair":
            stored_lookup.refuse_once_left(deed, job_id)
        row = stored_proof.self_test_row(deed, job_id, stage, monitor)
        about = {"job_id": job_id, "stage": stage, "monitor": monitor}
        keep_answer(deed, SelfTest, row, about, None if state is None else {"state": state.value})

    return record.do(tr("Enter one of the car's own tests"), work)


def tick_step(record: ShopRecord, job_id: int, step: str, *, done: bool) -> Done:
    """Tick a step of the order that loses nothing, with this moment; or take the tick back."""
    if step not in STEP_IDS:
        raise ShopTrouble(tr("“{step}” is no step of the proof.", step=step))
    moment = record.clock().isoformat(timespec="seconds")

    def work(deed: Deed) -> None:
        stored_lookup.refuse_once_left(deed, job_id)
        row = stored_proof.step_row(deed, job_id, step)
        if done and row is None:
            deed.add(ProofStep, job_id=job_id, step=step, done_at=moment)
        elif not done and row is not None:
            deed.remove(ProofStep, row)

    return record.do(tr("Tick a step of the proof"), work)


def time_step(record: ShopRecord, job_id: int, step: str, typed: str) -> Done:
    """Say when a ticked step was done: "2026-11-16 14:05", or "14:05" for the day it has.

    Refused where that is no moment, before the day the car came, or still to come. The moment that
    stood there stays in the history.
    """
    now = record.clock()

    def work(deed: Deed) -> None:
        row = stored_proof.step_row(deed, job_id, step)
        if row is None:
            raise ShopTrouble(
                tr("That step is not ticked."), do=tr("Tick it first; then say when.")
            )
        moment = read_moment(typed, stored_proof.step_moment(deed, row))
        came_at = stored_lookup.visit_of(deed, job_id).came_at
        if moment.isoformat()[:10] < came_at[:10]:
            came = day_in_words(date.fromisoformat(came_at[:10]))
            raise ShopTrouble(
                tr("The car came on {came}.", came=came), do=tr("Say a moment from that day on.")
            )
        if moment.astimezone() > now.astimezone():
            raise ShopTrouble(
                tr("{typed} is still to come.", typed=typed.strip()), do=tr("Say when it was done.")
            )
        deed.change(ProofStep, row, done_at=moment.isoformat(timespec="seconds"))

    return record.do(tr("Say when a step of the proof was done"), work)


def write_tried(
    record: ShopRecord, job_id: int, words: str, shown: Shown[str] | None = None
) -> Done:
    """Write down in words what was tried and what was not."""

    def work(deed: Deed) -> None:
        stored_lookup.refuse_once_left(deed, job_id)
        change_as_shown(deed, Job, job_id, shown, proof_words=words)

    return record.do(tr("Write down what was tried"), work)


def write_distance(
    record: ShopRecord,
    job_id: int,
    distance: float | None,
    shown: Shown[float | None] | None = None,
) -> Done:
    """Write down how far it was driven, in the vehicle's unit; None: not said."""
    check_bounds(tr("That distance"), distance, MOST_DISTANCE)

    def work(deed: Deed) -> None:
        stored_lookup.refuse_once_left(deed, job_id)
        change_as_shown(deed, Job, job_id, shown, proof_distance=distance)

    return record.do(tr("Write down how far it was driven"), work)


def say_fault_every(
    record: ShopRecord,
    job_id: int,
    number: float | None,
    unit: EveryUnit,
    shown: Shown[FaultEvery | None] | None = None,
) -> Done:
    """Say that the fault came once in so many miles, kilometres, days or drives; None: not said."""
    if number is not None and not 0 < number <= MOST_DISTANCE:
        raise ShopTrouble(
            tr(
                "How often it came is a number above 0, up to {most_distance:,}.",
                most_distance=MOST_DISTANCE,
            ),
            do=tr("Type it like 40."),
        )
    check_word(tr("how often a fault came"), unit, EVERY_UNITS)
    every = None if number is None else FaultEvery(number, unit)

    def work(deed: Deed) -> None:
        now = stored_proof.every_of(deed.connection, job_id)
        check_as_shown(deed, Job, shown, now, every, _every_in_words)
        deed.change(Job, job_id, fault_every=number, fault_every_unit=unit)

    return record.do(tr("Say how often it came"), work)


def _every_in_words(every: FaultEvery | None) -> str:
    if every is None:
        return tr("emptied")
    unit = EVERY_WORDS[every.unit]
    return tr("once in {number:g} {unit}", number=every.number, unit=unit)


def write_provoked(
    record: ShopRecord,
    job_id: int,
    provoked: Provoked | None,
    shown: Shown[Provoked | None] | None = None,
) -> Done:
    """Write down how often it came on purpose before and after the repair; None takes it out."""

    def work(deed: Deed) -> None:
        stored_lookup.refuse_once_left(deed, job_id)
        row = stored_lookup.check_row(deed, job_id, "proof", PROVOKED)
        now = stored_proof.provoked_of(deed.connection, job_id)
        check_as_shown(deed, JobCheck, shown, now, provoked, _provoked_in_words)
        about = {"job_id": job_id, "kind": "proof", "words": PROVOKED}
        counted = None if provoked is None else {"outcome": provoked.typed()}
        keep_answer(deed, JobCheck, row, about, counted)

    return record.do(tr("Write down what was provoked"), work)


def _provoked_in_words(provoked: Provoked | None) -> str:
    return tr("emptied") if provoked is None else provoked.shown()


def catch_here(record: ShopRecord, job_id: int, words: str) -> Done:
    """Note that the proof failed before the car left; how far it is proved is open again.

    Refused without words, and once the car has left: then it comes back, or it does not.
    """
    words = words.strip()
    if not words:
        raise ShopTrouble(tr("What did the proof show?"), do=tr("Write it in a few words."))
    moment = record.clock().isoformat(timespec="seconds")

    def work(deed: Deed) -> None:
        if stored_lookup.left_at(deed, job_id) is not None:
            raise ShopTrouble(
                tr("The car has left: what shows now is no longer caught here."),
                kept=tr("What was proved at the hand-over stays as it is."),
                do=tr("When the car is back, write it up as a new visit."),
            )
        deed.add(CaughtHere, job_id=job_id, caught_at=moment, words=words)
        deed.change(Job, job_id, proof_level=None)

    return record.do(tr("Caught here: the proof failed"), work)


def strike_caught(record: ShopRecord, row: int) -> Done:
    """Take out a note that the proof failed here."""
    return record.do(tr("Take out “caught here”"), lambda deed: deed.remove(CaughtHere, row))

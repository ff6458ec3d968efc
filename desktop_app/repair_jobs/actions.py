"""What the shop does with visits and jobs, one function a deed."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from desktop_app.language import marked, tr
from desktop_app.repair_jobs import stored_lookup as look
from desktop_app.repair_jobs.concern_conditions import CONDITION_IDS
from desktop_app.repair_jobs.entry_bounds import (
    MOST_CENTS,
    MOST_HOURS,
    check_bounds,
    check_moment,
    check_reading,
    check_word,
)
from desktop_app.repair_jobs.hand_over import listed
from desktop_app.repair_jobs.one_row import keep_answer
from desktop_app.repair_jobs.proof import ProofLevel, conditions_to_meet, why_not_offered
from desktop_app.repair_jobs.same_check import wordings
from desktop_app.repair_jobs.stored import (
    Answered,
    Job,
    JobCheck,
    JobCondition,
    JobSymptom,
    Person,
    TroubleCode,
    Visit,
)
from desktop_app.repair_jobs.stored_new_job import add_new_job, technician_is
from desktop_app.repair_jobs.stored_reading import conditions_of
from desktop_app.repair_jobs.trouble_code import read_code
from desktop_app.repair_jobs.vehicle_actions import vehicle_taken_in
from desktop_app.repair_jobs.who_did_what import check_search
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.as_shown import change_as_shown
from desktop_app.shop_record.databases.plain_text import plain_text
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.question import kept_words
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_record.written_meanwhile import Shown, cents_in_words

CODE_KINDS = (marked("stored"), marked("pending"), marked("permanent"))
CODE_STAGES = (marked("found"), marked("after repair"))
Said = Shown[str] | Shown[str | None] | None  # what a page showed of words
# Given the deed, a job and the moment at which it leaves: the columns of its window.
PromiseThen = Callable[[Deed, int, str], Mapping[str, Any]]


def write_up(record: ShopRecord, said: WriteUp) -> Done:
    """Take a vehicle in: the visit, and its first job with the concern; `made` is the job's id."""
    said.check()
    made: list[int] = []
    for condition in said.conditions:
        check_word(tr("when it happens"), condition, CONDITION_IDS)

    def work(deed: Deed) -> None:
        visit = deed.add(
            Visit,
            vehicle_id=vehicle_taken_in(deed, said),
            customer_id=look.customer_id(deed, said.customer, said.phone),
            came_at=said.came_at or record.clock().isoformat(timespec="seconds"),
            odometer_in=said.odometer,
            odometer_unread=said.odometer_unread.strip() or None,
            odometer_source=None if said.odometer_source == "read" else said.odometer_source,
            brought_by=said.brought_by.strip(),
        )
        job = add_new_job(deed, visit, said.concern, said.says_same, said.symptoms, record.who)
        for condition in dict.fromkeys(said.conditions):
            deed.add(JobCondition, job_id=job, condition=condition, happens=1)
        made.append(job)

    done = record.do(tr("Take a car in"), work)
    return Done(done.words, done.touched, done.seq, made[0])


def add_job(
    record: ShopRecord, visit_id: int, concern: str, symptoms: tuple[str, ...] = ()
) -> Done:
    """Add another concern to a visit as a job of its own; `made` is the job's id."""
    made: list[int] = []
    done = record.do(
        tr("Add a concern"),
        lambda deed: made.append(add_new_job(deed, visit_id, concern, False, symptoms, record.who)),
    )
    return Done(done.words, done.touched, done.seq, made[0])


def write_concern(
    record: ShopRecord, job_id: int, words: str, symptoms: tuple[str, ...] = (), shown: Said = None
) -> Done:
    """Write down the concern; the symptom groups read from it replace those read before.

    Raises WrittenMeanwhile, as all deeds do that are told what a page has `shown`.
    """

    def work(deed: Deed) -> None:
        change_as_shown(deed, Job, job_id, shown, concern=words)
        kept = look.symptom_rows(deed, job_id)
        for symptom, (row, chosen) in kept.items():
            if not chosen and symptom not in symptoms:
                deed.remove(JobSymptom, row)
        for symptom in dict.fromkeys(symptoms):
            if symptom not in kept:
                deed.add(JobSymptom, job_id=job_id, symptom=symptom)

    return record.do(tr("Write down the concern"), work)


def choose_symptom(record: ShopRecord, job_id: int, symptom: str, *, chosen: bool) -> Done:
    """Put a job into a symptom group by hand, or take it out."""

    def work(deed: Deed) -> None:
        row = look.symptom_rows(deed, job_id).get(symptom)
        if chosen and row is None:
            deed.add(JobSymptom, job_id=job_id, symptom=symptom, chosen=1)
        elif not chosen and row is not None:
            deed.remove(JobSymptom, row[0])

    return record.do(tr("Choose the symptom"), work)


def say_same_trouble(record: ShopRecord, job_id: int, *, same: bool) -> Done:
    """Note that the customer says it is the same trouble again; a flag, not a judgement."""
    return _change(record, tr("Note “the same trouble again”"), job_id, says_same=int(same))


def tick_condition(record: ShopRecord, job_id: int, condition: str, happens: bool | None) -> Done:
    """Answer when the fault happens: True, never: False, not asked: None."""
    check_word(tr("when it happens"), condition, CONDITION_IDS)

    def work(deed: Deed) -> None:
        row = look.condition_row(deed, JobCondition, job_id, condition)
        answer = None if happens is None else {"happens": int(happens)}
        keep_answer(deed, JobCondition, row, {"job_id": job_id, "condition": condition}, answer)

    return record.do(tr("Answer when it happens"), work)


def write_code(record: ShopRecord, job_id: int, text: str, kind: str, stage: str) -> Done:
    """Write down a trouble code; refused with what is accepted where it is none."""
    code = read_code(text).code
    check_word(tr("the kind of a code"), kind, CODE_KINDS)
    check_word(tr("when a code was read"), stage, CODE_STAGES)

    def work(deed: Deed) -> None:
        if stage == "after repair":
            look.refuse_once_left(deed, job_id)
        if look.code_row(deed, job_id, code, kind, stage) is None:
            deed.add(TroubleCode, job_id=job_id, code=code, kind=kind, stage=stage)

    return record.do(tr("Write down {code}", code=code), work)


def strike_code(record: ShopRecord, row: int) -> Done:
    """Take a trouble code out; one read after the repair stays once the car has left."""

    def work(deed: Deed) -> None:
        job_id = look.job_of_code_after(deed, row)
        if job_id is not None:
            look.refuse_once_left(deed, job_id)
        deed.remove(TroubleCode, row)

    return record.do(tr("Take a code out"), work)


def write_finding(record: ShopRecord, job_id: int, words: str) -> Done:
    """Write down something that was seen."""
    if not words.strip():
        raise ShopTrouble(tr("There is nothing to write down yet."), do=tr("Type what was seen."))

    def work(deed: Deed) -> None:
        technician_is(deed, job_id, record.who)
        deed.add(JobCheck, job_id=job_id, kind="inspection", words=words.strip(), outcome="")

    return record.do(tr("Write down a finding"), work)


def strike_check(record: ShopRecord, row: int) -> Done:
    """Take a finding or a check out."""
    return record.do(tr("Take a finding out"), lambda deed: deed.remove(JobCheck, row))


def tick_check(record: ShopRecord, job_id: int, kind: str, words: str, outcome: str) -> Done:
    """Tick a check of a list: `done`, `not needed`, or nothing for not done yet."""
    check_word(tr("a list of checks"), kind, ("refit", "proof"))

    def work(deed: Deed) -> None:
        if kind == "proof":
            look.refuse_once_left(deed, job_id)
        # It may have been kept as it was spoken, or in other words.
        kept_as = dict.fromkeys((words, tr(words), *wordings(words)))
        found = (look.check_row(deed, job_id, kind, one) for one in kept_as)
        rows = [one for one in found if one is not None]
        row = rows[0] if rows else None
        for other in rows[1:]:  # one answer, however often it was asked for
            deed.remove(JobCheck, other)
        about = {"job_id": job_id, "kind": kind, "words": words}
        keep_answer(deed, JobCheck, row, about, {"outcome": outcome} if outcome else None)

    return record.do(tr("Tick a check"), work)


def name_cause(record: ShopRecord, job_id: int, words: str, shown: Said = None) -> Done:
    """Name the cause in a sentence; an empty one takes the cause back.

    A job that was said to be not caught stays so; its words say what was tried.
    """

    def work(deed: Deed) -> None:
        caught = look.cause_found(deed, job_id) != 0
        found = (1 if words.strip() else None) if caught else 0
        if words.strip():
            technician_is(deed, job_id, record.who)
        change_as_shown(deed, Job, job_id, shown, cause=words)
        deed.change(Job, job_id, cause_found=found)

    return record.do(tr("Name the cause"), work)


def take_not_caught_back(record: ShopRecord, job_id: int) -> Done:
    """Take "not caught" back: the words of the cause, if there are any, name it."""

    def work(deed: Deed) -> None:
        found = 1 if look.cause_words(deed, job_id).strip() else None
        deed.change(Job, job_id, cause_found=found)

    return record.do(tr("Take “not caught” back"), work)


def say_not_caught(record: ShopRecord, job_id: int) -> Done:
    """Say that the fault was not caught; what was tried stays in the cause's words."""

    def work(deed: Deed) -> None:
        technician_is(deed, job_id, record.who)
        deed.change(Job, job_id, cause_found=0)

    return record.do(tr("Say “not caught”"), work)


def write_correction(record: ShopRecord, job_id: int, words: str, shown: Said = None) -> Done:
    """Write down what was done."""
    return _change(record, tr("Write down the correction"), job_id, shown, correction=words)


def choose_system(record: ShopRecord, job_id: int, system: str) -> Done:
    """Choose the system that the job is about."""
    return _change(record, tr("Choose the system"), job_id, system=system)


def choose_technician(record: ShopRecord, job_id: int, person: int | None) -> Done:
    """Say who did the job."""
    return _change(record, tr("Say who did it"), job_id, technician_id=person)


def write_hours(
    record: ShopRecord,
    job_id: int,
    hours: float | None,
    unbilled: bool,
    shown: Shown[float | None] | None = None,
) -> Done:
    """Write down the hours, or those that nobody pays."""
    check_bounds(tr("That number of hours"), hours, MOST_HOURS)
    name = "unbilled_hours" if unbilled else "hours"

    def work(deed: Deed) -> None:
        if not unbilled:
            check_search(look.hours(deed, job_id).search, hours)
        change_as_shown(deed, Job, job_id, shown, **{name: hours})

    return record.do(tr("Write down the hours"), work)


def write_price(
    record: ShopRecord, job_id: int, cents: int | None, shown: Shown[int | None] | None = None
) -> Done:
    """Write down the price in cents."""
    check_bounds(tr("That price in cents"), cents, MOST_CENTS)
    return record.do(
        tr("Write down the price"),
        lambda deed: change_as_shown(deed, Job, job_id, shown, cents_in_words, price_cents=cents),
    )


def say_proof(record: ShopRecord, job_id: int, level: int | None) -> Done:
    """Say how far the repair was proved: 0 unproven to 4 same conditions.

    Refused where the level is not offered: "same conditions" with no condition told of, or with
    one that was not met; and once the car has left.
    """
    check_bounds(tr("That level of proof"), level, ProofLevel.SAME_CONDITIONS)

    def work(deed: Deed) -> None:
        look.refuse_once_left(deed, job_id)
        told = conditions_to_meet(conditions_of(deed.connection, job_id))
        not_met = look.conditions_not_met(deed, job_id)
        why_not = None if level is None else why_not_offered(ProofLevel(level), told, not_met)
        if why_not is not None:
            raise ShopTrouble(
                why_not.what, kept=tr("How far it was proved is as it was."), do=why_not.do
            )
        deed.change(Job, job_id, proof_level=level)

    return record.do(tr("Say how far it was proved"), work)


def say_declined(record: ShopRecord, job_id: int, words: str, shown: Said = None) -> Done:
    """Write down what was declined or left undone; "nothing" is an answer."""
    said = words.strip() or None
    return _change(record, tr("Write down what was declined"), job_id, shown, declined=said)


def hand_over(
    record: ShopRecord,
    job_id: int,
    odometer_out: int | None = None,
    missing: tuple[str, ...] = (),
    left_at: str = "",
    promise: PromiseThen | None = None,
) -> Done:
    """Hand the car over: the window starts now. Refused while one of the nine answers is missing.

    `missing` are the words of `open_answers`; the visit ends with its last job. `promise` says with
    which window it leaves; without one it keeps the window that it was written up with.
    """
    if missing:
        raise ShopTrouble(
            tr("Before the car leaves, say {listed}.", listed=listed(missing)),
            kept=tr("Everything so far is kept."),
        )
    check_reading(odometer_out)
    if left_at:
        check_moment(left_at)

    def work(deed: Deed) -> None:
        moment = left_at or record.clock().isoformat(timespec="seconds")
        visit = look.visit_of(deed, job_id)
        if look.left_at(deed, job_id) is not None:
            raise ShopTrouble(
                tr("The car was handed over already."), kept=tr("Its window stays as it was given.")
            )
        if moment[:10] < visit.came_at[:10]:
            raise ShopTrouble(
                tr(
                    "The car came on {came_at}; it cannot leave on {moment}.",
                    came_at=visit.came_at[:10],
                    moment=moment[:10],
                ),
                do=tr("Look at this computer's clock."),
            )
        window = {} if promise is None else promise(deed, job_id, moment)
        deed.change(Job, job_id, left_at=moment, odometer_out=odometer_out, **window)
        if look.open_jobs_of_visit(deed, visit.id, job_id) == 0:
            deed.change(Visit, visit.id, left_at=moment, odometer_out=odometer_out)

    return record.do(tr("Hand the car over"), work)


def keep_as_typed(record: ShopRecord, about: str, question: str) -> Done:
    """Answer a question about an odd entry with "right as typed"."""
    kept = kept_words(question)

    def work(deed: Deed) -> None:
        if look.answer_row(deed, about, kept) is None:
            deed.add(Answered, about=about, question=kept)

    return record.do(tr("Keep it as typed"), work)


def add_person(record: ShopRecord, name: str) -> Done:
    """Add someone of the shop, or bring them back."""
    name = plain_text(name).strip()
    if not name:
        raise ShopTrouble(tr("Who is it?"), do=tr("Type a name."))

    def work(deed: Deed) -> None:
        row = look.person_id(deed, name)
        if row is None:
            deed.add(Person, name=name)
        else:
            deed.change(Person, row, here=1)

    return record.do(tr("Add {name}", name=name), work)


def person_left(record: ShopRecord, person: int) -> Done:
    """Take someone off the list of people here; their jobs keep the name."""
    return record.do(tr("Take a person off"), lambda deed: deed.change(Person, person, here=0))


def _change(
    record: ShopRecord, words: str, job_id: int, shown: Shown[Any] | None = None, **values: Any
) -> Done:
    return record.do(words, lambda deed: change_as_shown(deed, Job, job_id, shown, **values))

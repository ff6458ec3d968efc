"""Writes plain jobs into the record, one deed for each, and decides about their returns."""

from __future__ import annotations

import random
from collections.abc import Iterable
from datetime import timedelta
from typing import Any

from demo_shop.job_story import CUSTOMERS, NEW_MAKER, NEW_OTHER, REMAN, USED
from demo_shop.people import COUNTER, HELPING_HAND, OWNER, SUPPLIERS, TECHNICIANS
from demo_shop.plain_asked import PlainAsked
from demo_shop.plain_bench import measure_pair
from demo_shop.plain_cars import PlainCar
from demo_shop.plain_jobs import PlainJob
from demo_shop.plain_judged import PlainJudge
from demo_shop.plain_people import PlainPeople
from demo_shop.storyteller import Storyteller
from demo_shop.written_followed import KIND_PROMISES
from desktop_app.parts_compared.stored import Pair, PartCondition
from desktop_app.repair_jobs.proof import CODES_READ, ProofLevel
from desktop_app.repair_jobs.self_tests_compared import OF_SYSTEM
from desktop_app.repair_jobs.stored import (
    CaughtHere,
    ConditionMet,
    Customer,
    Job,
    JobCheck,
    JobCondition,
    JobSymptom,
    SelfTests,
    TroubleCode,
    Vehicle,
    Visit,
)
from desktop_app.repair_jobs.stored_lookup import next_number
from desktop_app.repair_jobs.vehicle_identity import matching_plate
from desktop_app.returns_watched.actions import judge_return
from desktop_app.returns_watched.customer_actions import note_answer
from desktop_app.returns_watched.kind_windows import promised
from desktop_app.returns_watched.stored_returns import read_returns_of_job
from desktop_app.returns_watched.stored_windows import shop_promise
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.house_rules import HouseRules

_ORIGINS = (NEW_OTHER, NEW_MAKER, REMAN, USED, CUSTOMERS)
CAUGHT_HERE = 0.03
TESTS_WRITTEN = 0.8  # of the full trips: so often somebody wrote down how the car's own tests stand
ALL_RAN = "00 07 65 00"  # SAE J1979 service 01, PID 01: no code, every test that is fitted complete
_PROOF_WORDS = ("", "Works in the bay.", "Driven.", "A whole trip from cold.", "As told, no fault.")
_OWN_TEST_RAN = "A whole trip from cold; the car's own test ran."


class PlainRecord:
    """Puts plain jobs into the record that a storyteller writes."""

    def __init__(
        self, teller: Storyteller, people: dict[str, int], jobs: Iterable[PlainJob], seed: int
    ) -> None:
        self._teller, self._people = teller, people
        self._chance = random.Random(seed)
        self._bench = random.Random(f"{seed}/bench")
        self._judge = PlainJudge(teller, seed)
        self._who = PlainPeople(people, seed)
        self._hours: dict[int, float] = {}
        self._rows: dict[int, int] = {}
        # Nobody had laid old and new side by side where the wrong part was fitted.
        self._wrong_parts = {
            id(job.back_of) for job in jobs if job.reason and job.reason.cause_class == "wrong-part"
        }
        self._known_cars: set[int] = set()
        self._back_again: set[int] = set()

    def write(self, job: PlainJob) -> None:
        """Write a whole job as it is handed over."""
        teller, chance = self._teller, self._chance
        who = chance.choices((*TECHNICIANS, HELPING_HAND), (5, 4, 1))[0]
        teller.record.who = who
        made: list[int] = []

        def work(deed: Deed) -> None:
            made.append(self._job(deed, job, self._people[who]))

        if id(job.car) in self._known_cars:
            self._back_again.add(id(job))
        self._known_cars.add(id(job.car))
        teller.record.do("Write down a whole job", work)
        self._rows[id(job)] = made[0]

    def judge(self, job: PlainJob) -> None:
        """Decide about each earlier job that this one may be a return of."""
        if id(job) not in self._back_again:
            return
        later = self._rows[id(job)]
        teller = self._teller
        with teller.record.reading() as connection:
            rows = read_returns_of_job(connection, later)
        asked = {row.earlier_id for row in rows if row.judgement is None}
        back = None if job.back_of is None else self._rows[id(job.back_of)]
        if back is not None and job.reason is not None:
            self._judge.judge((back, later), job.reason, self._hours[id(job)])
        if job.beside is not None and self._chance.random() < 0.4:
            asked.add(self._rows[id(job.beside)])
        for earlier in sorted(asked - {back}):
            teller.do(
                OWNER, judge_return, earlier, later, "unrelated",
                why="Something else; our repair holds.", cause_class="new",
            )  # fmt: skip

    def changed(self, job: PlainJob) -> None:
        """Write down that what was promised after a comeback is done."""
        if job.back_of is not None:
            self._judge.change((self._rows[id(job.back_of)], self._rows[id(job)]))

    def asked(self, asked: PlainAsked) -> None:
        """Note what a customer said when the window had ended."""
        row = self._rows[id(asked.job)]
        self._teller.do(COUNTER, note_answer, row, asked.answer, odometer_told=asked.odometer)

    def _job(self, deed: Deed, job: PlainJob, technician: int) -> int:
        chance, fault = self._chance, job.fault
        visit, out = self._visit(deed, job)
        hours = round(chance.uniform(*fault.hours), 1)
        cents = round(chance.uniform(*fault.cents), -2)
        free = job.back_of is not None or not job.caught
        road = 0 if job.proof < 2 else chance.randrange(4, 26)
        every, unit = job.every or (None, None)
        self._hours[id(job)] = hours
        row = deed.add(
            Job,
            number=next_number(deed),
            visit_id=visit,
            concern=job.concern,
            says_same=int(job.back_of is not None),
            system=fault.system,
            cause_found=int(job.caught),
            cause=job.cause,
            correction=job.correction,
            technician_id=technician,
            hours=hours,
            search_hours=self._who.search_hours(hours),
            unbilled_hours=hours if free else None,
            price_cents=0 if free else int(cents),
            proof_level=job.proof,
            proof_words=_PROOF_WORDS[job.proof],
            proof_distance=float(road) if road else None,
            declined="nothing",
            left_at=job.left.isoformat(timespec="seconds"),
            odometer_out=out,
            fault_every=every,
            fault_every_unit=unit,
            **_window(job, ()),
        )
        self._who.name(deed, row, technician)
        self._details(deed, job, row)
        self._proof(deed, job, row)
        return row

    def _visit(self, deed: Deed, job: PlainJob) -> tuple[int, int]:
        car = job.car
        if car.row is None:
            self._add_car(deed, car)
        came = car.reading(job.came.date())
        out = max(came + self._chance.randrange(1, 20), car.reading(job.left.date()))
        values: dict[str, Any] = {
            "vehicle_id": car.row,
            "customer_id": car.customer_row,
            "came_at": job.came.isoformat(timespec="seconds"),
            "left_at": job.left.isoformat(timespec="seconds"),
            "odometer_in": came,
            "odometer_out": out,
        }
        return deed.add(Visit, **values), out

    def _add_car(self, deed: Deed, car: PlainCar) -> None:
        car.row = deed.add(
            Vehicle,
            vin=car.vin or None,
            plate=car.plate,
            plate_key=matching_plate(car.plate),
            description=car.description,
            odometer_unit="mi",
        )
        phone = f"555-01{self._chance.randrange(100):02d}"
        car.customer_row = deed.add(Customer, name=car.customer, phone=phone)

    def _details(self, deed: Deed, job: PlainJob, row: int) -> None:
        chance, fault = self._chance, job.fault
        for symptom in self._teller.symptoms(job.concern):
            deed.add(JobSymptom, job_id=row, symptom=symptom)
        for condition in dict.fromkeys(job.happens):
            deed.add(JobCondition, job_id=row, condition=condition, happens=1)
        if fault.codes and chance.random() < 0.75:
            code = chance.choice(fault.codes)
            deed.add(TroubleCode, job_id=row, code=code, kind="stored", stage="found")
        if _renewed(job) and (job.back_of is None or chance.random() < 0.5):
            supplier = chance.choices(SUPPLIERS, (5, 4, 3))[0]
            pair = deed.add(
                Pair,
                job_id=row,
                part_kind=_renewed(job),
                origin=chance.choices(_ORIGINS, (12, 5, 2, 1, 1))[0],
                supplier=supplier,
                lot=_lot(supplier, job) if self._bench.random() < 0.4 else "",
            )
            kind = self._teller.kinds[_renewed(job)]
            if kind.id in KIND_PROMISES:
                deed.change(Job, row, **_window(job, (kind.id,)))
            if id(job) not in self._wrong_parts:
                moment = job.left.isoformat(timespec="seconds")
                measure_pair(deed, pair, kind, self._bench, moment)
            if fault.terms:
                seen = {"side": "removed", "term": chance.choice(fault.terms)}
                deed.add(PartCondition, pair_id=pair, **seen)

    def _proof(self, deed: Deed, job: PlainJob, row: int) -> None:
        """Say what was met on the drive; now and then the proof failed before the car left."""
        tried = job.happens if job.proof == 4 else job.happens[:1] if job.proof > 1 else ()
        for condition in dict.fromkeys(tried):
            deed.add(ConditionMet, job_id=row, condition=condition, met=1)
        own_test = job.fault.system in OF_SYSTEM
        if job.proof > 2 and own_test and self._bench.random() < TESTS_WRITTEN:
            read = job.left - timedelta(minutes=30)
            moment = read.isoformat(timespec="seconds")
            deed.add(SelfTests, job_id=row, stage="after repair", typed=ALL_RAN, read_at=moment)
            deed.add(JobCheck, job_id=row, kind="proof", words=CODES_READ, outcome="done")
            if job.proof == ProofLevel.FULL_TRIP:
                deed.change(Job, row, proof_words=_OWN_TEST_RAN)
        if job.proof > 1 and self._bench.random() < CAUGHT_HERE:
            moment = (job.left - timedelta(hours=2)).isoformat(timespec="seconds")
            words = "The fault showed once more on the first drive; put right and driven again."
            deed.add(CaughtHere, job_id=row, caught_at=moment, words=words)


def _renewed(job: PlainJob) -> str:
    """Return the kind of part that a job renewed; empty where none."""
    if not job.caught:
        return ""
    return job.fault.kind or ("battery" if job.correction.startswith("Battery renewed") else "")


def _lot(supplier: str, job: PlainJob) -> str:
    """Return the lot of a supplier's part: the quarter in which it was made."""
    return f"{supplier[0]}-{job.left:%y}{(job.left.month + 2) // 3}"


def _window(job: PlainJob, kinds: tuple[str, ...]) -> dict[str, Any]:
    """Return the columns of the window that a job leaves with, by the kinds of part fitted."""
    found = promised(job.left.date(), kinds, KIND_PROMISES, shop_promise(HouseRules()))
    return {
        "window_days": found.window.days,
        "window_miles": int(found.window.miles),
        "window_rule": found.window.rule,
        "window_months": found.months,
        "window_from": found.said_by,
    }

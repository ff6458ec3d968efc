"""Writes plain jobs into the record, one deed for each, and decides about their returns."""

from __future__ import annotations

import random
from typing import Any

from demo_shop.job_story import CUSTOMERS, NEW_MAKER, NEW_OTHER, REMAN, USED
from demo_shop.people import HELPING_HAND, OWNER, SUPPLIERS, TECHNICIANS
from demo_shop.plain_cars import PlainCar
from demo_shop.plain_jobs import PlainJob
from demo_shop.storyteller import Storyteller
from desktop_app.parts_compared.stored import Pair, PartCondition
from desktop_app.repair_jobs.stored import (
    Customer,
    Job,
    JobCondition,
    JobSymptom,
    TroubleCode,
    Vehicle,
    Visit,
)
from desktop_app.repair_jobs.stored_lookup import next_number
from desktop_app.repair_jobs.vehicle_identity import matching_plate
from desktop_app.returns_watched.actions import judge_return
from desktop_app.returns_watched.stored_returns import read_returns_of_job
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.house_rules import HouseRules

_ORIGINS = (NEW_OTHER, NEW_MAKER, REMAN, USED, CUSTOMERS)
_PROOF_WORDS = ("", "Works in the bay.", "Driven.", "The car's own test ran.", "As told, no fault.")


class PlainRecord:
    """Puts plain jobs into the record that a storyteller writes."""

    def __init__(self, teller: Storyteller, people: dict[str, int], seed: int) -> None:
        self._teller, self._people = teller, people
        self._chance = random.Random(seed)
        self._rows: dict[int, int] = {}
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
            cost = 2_000 + 100 * self._chance.randrange(180)
            teller.do(
                OWNER, judge_return, back, later, job.reason.judgement,
                why=job.reason.why, cause_class=job.reason.cause_class, cost_cents=cost,
            )  # fmt: skip
        if job.beside is not None and self._chance.random() < 0.4:
            asked.add(self._rows[id(job.beside)])
        for earlier in sorted(asked - {back}):
            teller.do(
                OWNER, judge_return, earlier, later, "unrelated",
                why="Something else; our repair holds.", cause_class="new",
            )  # fmt: skip

    def _job(self, deed: Deed, job: PlainJob, technician: int) -> int:
        chance, fault = self._chance, job.fault
        visit, out = self._visit(deed, job)
        hours = round(chance.uniform(*fault.hours), 1)
        cents = round(chance.uniform(*fault.cents), -2)
        free = job.back_of is not None or not job.caught
        road = 0 if job.proof < 2 else chance.randrange(4, 26)
        rules = HouseRules()
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
            unbilled_hours=hours if free else None,
            price_cents=0 if free else int(cents),
            proof_level=job.proof,
            proof_words=_PROOF_WORDS[job.proof],
            proof_distance=float(road) if road else None,
            declined="nothing",
            left_at=job.left.isoformat(timespec="seconds"),
            odometer_out=out,
            window_days=rules.window_days,
            window_miles=rules.window_miles,
            window_rule=rules.window_rule,
        )
        self._details(deed, job, row)
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
        if fault.kind and job.caught and (job.back_of is None or chance.random() < 0.5):
            pair = deed.add(
                Pair,
                job_id=row,
                part_kind=fault.kind,
                origin=chance.choices(_ORIGINS, (12, 5, 2, 1, 1))[0],
                supplier=chance.choices(SUPPLIERS, (5, 4, 3))[0],
            )
            if fault.terms:
                seen = {"side": "removed", "term": chance.choice(fault.terms)}
                deed.add(PartCondition, pair_id=pair, **seen)

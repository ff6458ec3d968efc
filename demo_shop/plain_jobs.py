"""Two years of plain jobs from a seed: mostly one visit and nothing more, now and then a return."""

from __future__ import annotations

import random
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from typing import TypeVar

from demo_shop.plain_cars import PlainCar, plain_car
from demo_shop.plain_faults import PlainFault
from demo_shop.plain_faults_chassis import FAULTS
from demo_shop.plain_words import BackReason, PlainWords
from demo_shop.shop_calendar import ShopCalendar
from desktop_app.repair_jobs.road_test import EveryUnit
from desktop_app.repair_jobs.self_tests_compared import OF_SYSTEM

Day = TypeVar("Day", date, datetime)

DAYS_BACK = 728
FIRST_VISITS = 205
COMES_BACK = 0.07
COMES_FOR_ELSE = 0.1
COMES_LATELY = 0.4  # the same for cars whose window is open, so that the watch knows their miles
NOT_CAUGHT = 0.03


@dataclass(frozen=True, slots=True)
class PlainJob:
    """One plain job from the counter to the hand-over.

    `back_of` is the job that it is a comeback of, for the `reason`; `beside` an earlier one of
    the same car that it has nothing to do with; `judged` says whether that is decided by now.
    The fault came once in `every`, where the customer said so.
    """

    car: PlainCar
    fault: PlainFault
    came: datetime
    left: datetime
    concern: str
    happens: tuple[str, ...]
    cause: str
    correction: str
    caught: bool
    proof: int
    reason: BackReason | None = None
    back_of: PlainJob | None = None
    beside: PlainJob | None = None
    judged: bool = True
    every: tuple[float, EveryUnit] | None = None


class PlainYears:
    """Makes the plain jobs of two years; the same seed and day give the same jobs."""

    def __init__(self, seed: int, calendar: ShopCalendar) -> None:
        self._chance = random.Random(seed)
        self._calendar = calendar
        self._words = PlainWords(self._chance)
        self._cars: list[PlainCar] = []

    def jobs(self) -> list[PlainJob]:
        """Return the jobs in the order of their hand-over, all before today."""
        found: list[PlainJob] = []
        for day in self._first_days():
            job = self._first_visit(day)
            found.append(job)
            fate = self._chance.random()
            later = None
            if job.caught and fate < COMES_BACK:
                later = self._comeback(job)
            elif fate > 1 - (COMES_LATELY if self._is_recent(day) else COMES_FOR_ELSE):
                later = self._something_else(job)
            if later is not None:
                found.append(later)
        found += self._waiting()
        found += self._last_week()
        return sorted(found, key=lambda job: (job.left, job.car.plate))

    def _first_days(self) -> list[date]:
        """Working days, twice as thick in the last half year, and some of last week."""
        chance, today = self._chance, self._calendar.today
        ages = [chance.randrange(9, DAYS_BACK) for _ in range(FIRST_VISITS * 3 // 4)]
        ages += [chance.randrange(9, 182) for _ in range(FIRST_VISITS // 4)]
        days = [workday(today - timedelta(days=age)) for age in ages]
        days += [self._calendar.monday - timedelta(days=back) for back in (7, 6, 5, 4, 3)]
        return sorted(days)

    def _first_visit(self, day: date) -> PlainJob:
        chance = self._chance
        quiet = [car for car in self._cars if (day - car.last_left).days > 100]
        known = bool(quiet) and chance.random() < 0.22
        car = chance.choice(quiet) if known else self._new_car(day)
        faults = [fault for fault in FAULTS if fault.system not in car.repaired]
        return self._job(car, chance.choice(faults), day)

    def _comeback(self, job: PlainJob) -> PlainJob | None:
        most = min(85, int(2_800 / job.car.miles_a_day))
        day = workday(job.left.date() + timedelta(days=self._chance.randrange(3, most)))
        if day >= self._calendar.today - timedelta(days=10):
            return None
        return self._job(job.car, job.fault, day, back_of=job)

    def _something_else(self, job: PlainJob) -> PlainJob | None:
        until = self._calendar.today - timedelta(days=3)
        left = job.left.date()
        most = min(85, (until - left).days)
        if most <= 5:
            return None
        day = workday(left + timedelta(days=self._chance.randrange(5, most)))
        others = [fault for fault in FAULTS if fault.system not in job.car.repaired]
        return self._job(job.car, self._chance.choice(others), day, beside=job)

    def _waiting(self) -> list[PlainJob]:
        """Cars that came back and that nobody has judged yet: two lately, one weeks ago."""
        waiting: list[PlainJob] = []
        for back, age in ((2, 24), (4, 51), (15, 33)):
            day = self._calendar.workday_before_today(back)
            first = self._job(
                self._new_car(day - timedelta(days=age)),
                self._chance.choice(FAULTS[:10]),
                workday(day - timedelta(days=age)),
            )
            waiting += [first, self._job(first.car, first.fault, day, back_of=first, judged=False)]
        return waiting

    def _last_week(self) -> list[PlainJob]:
        """A car that came back last week and was judged at once."""
        day = self._calendar.monday - timedelta(days=6)
        before = workday(day - timedelta(days=38))
        first = self._job(self._new_car(before), self._chance.choice(FAULTS[:10]), before)
        return [first, self._job(first.car, first.fault, day, back_of=first)]

    def _is_recent(self, day: date) -> bool:
        return 12 <= (self._calendar.today - day).days <= 88

    def _new_car(self, day: date) -> PlainCar:
        car = plain_car(self._chance, 2001 + 3 * len(self._cars), day)
        self._cars.append(car)
        return car

    def _job(
        self,
        car: PlainCar,
        fault: PlainFault,
        day: date,
        back_of: PlainJob | None = None,
        beside: PlainJob | None = None,
        judged: bool = True,
    ) -> PlainJob:
        chance = self._chance
        came = self._calendar.moment(day, time(8 + chance.randrange(3), 5 * chance.randrange(12)))
        nights = chance.choices((0, 1, 2), (6, 3, 1))[0]
        last = self._calendar.workday_before_today()
        day_left = min(workday(day + timedelta(days=nights)), last)
        left = self._calendar.moment(day_left, time(14 + chance.randrange(4), chance.randrange(60)))
        concern, happens = self._words.concern(fault, again=back_of is not None)
        caught = back_of is not None or beside is not None or chance.random() >= NOT_CAUGHT
        cause, correction = self._words.repair(fault, caught)
        reason = None if back_of is None else self._words.back_reason(back_of.proof)
        if reason is not None:
            cause, correction = reason.found, reason.done
        car.repaired.add(fault.system)
        car.last_left = max(car.last_left, day_left)
        proof = chance.choices((0, 1, 2, 3, 4), (1, 3, 5, 3, 2))[0] if caught else 0
        if proof == 4 and not happens:
            proof = 3  # no condition was told of, so there was none to meet
        if proof == 3 and fault.system not in OF_SYSTEM:
            proof = 2  # the car has no test of its own that speaks of such work
        return PlainJob(
            car, fault, came, left, concern, happens, cause, correction, caught, proof,
            reason, back_of, beside, judged, self._words.every(concern),
        )  # fmt: skip


def workday(day: Day) -> Day:
    """Return the day, or the Friday before where it is a Saturday or a Sunday."""
    return day - timedelta(days=max(day.weekday() - 4, 0))

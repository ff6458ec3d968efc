"""Customers of plain jobs who were asked how the car does, when its window had ended."""

from __future__ import annotations

import random
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import datetime, time, timedelta

from demo_shop.plain_jobs import PlainJob, workday
from demo_shop.shop_calendar import ShopCalendar

SHARE, SINCE_DAYS = 0.35, 365
ANSWERS = {"fine": 12, "not reached": 5, "car is gone": 1}


@dataclass(frozen=True, slots=True)
class PlainAsked:
    """One customer who was asked; the odometer as told, None where it was not."""

    job: PlainJob
    at: datetime
    answer: str
    odometer: int | None = None


def plain_asked(
    jobs: Iterable[PlainJob], seed: int, calendar: ShopCalendar
) -> Iterator[PlainAsked]:
    """Give those who were asked in the last year: drawn by lot, whatever they would say."""
    chance = random.Random(seed)
    first = calendar.today - timedelta(days=SINCE_DAYS)
    for job in jobs:
        drawn, days = chance.random() < SHARE, chance.randrange(91, 97)
        answer = chance.choices(tuple(ANSWERS), tuple(ANSWERS.values()))[0]
        told, minute = chance.random() < 0.5, chance.randrange(60)
        day = workday(job.left.date() + timedelta(days=days))
        if not (drawn and job.caught and first <= day < calendar.today):
            continue
        if answer == "car is gone" and job.car.last_left > job.left.date():
            answer = "fine"  # it was seen here later
        reading = round(job.car.reading(day), -2) + 100 if told and answer == "fine" else None
        yield PlainAsked(job, calendar.moment(day, time(16, minute)), answer, reading)

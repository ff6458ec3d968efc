"""A large invented history of returns: unknown odometers, and one vehicle that stands for many."""

from __future__ import annotations

import random
import sqlite3
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import numpy as np

from desktop_app.commands.shop_place import new_place
from desktop_app.repair_jobs.trouble_code import code_book
from desktop_app.returns_watched.many_visits.visit_columns import NO_LEG, Places, VisitColumns
from desktop_app.shop_record.record_name import FILE_NAME

FIRST_DAY = date(2016, 11, 16)
DAYS = 3650
JOBS_A_CAR = 8
UNREAD = 0.1  # of all odometers
PLACEHOLDER = 0.01  # of all jobs are written on one vehicle "no plate"
SYSTEMS = ("ignition", "fuel", "brakes", "charging", "cooling", "steering", "driveline", "lights")
SYMPTOMS = 60
CODES = tuple(code for n in range(100, 900, 8) if code_book().family(code := f"P{n:04}") is None)

_VISIT = (
    "INSERT INTO visit (vehicle_id, came_at, left_at, odometer_in, brought_by) VALUES (?,?,?,?,'')"
)
_JOB = (
    "INSERT INTO job (number, visit_id, concern, says_same, system, cause_found, cause, correction,"
    " proof_level, proof_words, declined, left_at, odometer_out, window_days, window_miles,"
    " window_rule) VALUES (?,?,'misses when damp',?,?,1,'cap tracked','cap replaced',2,'',"
    "'nothing',?,?,90,3000,'first')"
)
_SYMPTOM = "INSERT INTO job_symptom (job_id, symptom, chosen) VALUES (?,?,0)"
_CODE = "INSERT INTO trouble_code (job_id, code, kind, stage) VALUES (?,?,'stored','found')"


def many_returns(folder: Path, jobs: int, seed: int = 11) -> None:
    """Fill a new folder with a shop of that many jobs over ten years, oldest first."""
    new_place(folder, lambda: datetime(2026, 11, 16, tzinfo=UTC)).close()
    raw = sqlite3.connect(folder / FILE_NAME)
    raw.execute("PRAGMA synchronous = OFF")
    chance = random.Random(seed)
    cars = max(1, jobs // JOBS_A_CAR)
    raw.executemany(
        "INSERT INTO vehicle (plate, plate_key, description, odometer_unit) VALUES (?,?,'car',?)",
        ((f"LH {n}", f"LH{n}", "km" if n % 5 == 0 else "mi") for n in range(cars)),
    )
    use = [chance.uniform(10, 50) for _ in range(cars)]
    for start in range(1, jobs + 1, 50_000):
        some = [_one(n, jobs, use, chance) for n in range(start, min(start + 50_000, jobs + 1))]
        raw.executemany(_VISIT, (row[0] for row in some))
        raw.executemany(_JOB, (row[1] for row in some))
        raw.executemany(_SYMPTOM, ((row[2], name) for row in some for name in row[3]))
        raw.executemany(_CODE, ((row[2], code) for row in some for code in row[4]))
    raw.commit()
    raw.execute("ANALYZE")
    raw.close()


def _one(
    number: int, jobs: int, use: list[float], chance: random.Random
) -> tuple[tuple, tuple, int, tuple[str, ...], tuple[str, ...]]:
    held = chance.random() < PLACEHOLDER
    car = 0 if held else chance.randrange(1, len(use)) if len(use) > 1 else 0
    since = (number * DAYS) // jobs
    came = FIRST_DAY + timedelta(days=since)
    left = came + timedelta(days=chance.randrange(4))
    miles = None if chance.random() < UNREAD else int(20_000 + since * use[car])
    if held:
        miles = chance.choice((None, chance.randrange(200_000)))
    out = None if miles is None else miles + 4
    visit = (1 + car, f"{came}T08:00:00+00:00", f"{left}T16:00:00+00:00", miles)
    system = chance.choice(SYSTEMS)
    same = int(chance.random() < 0.01)
    job = (f"J-{100 + number}", number, same, system, visit[2], out)
    symptoms = tuple({f"s{chance.randrange(SYMPTOMS)}" for _ in range(chance.choice((1, 1, 2)))})
    codes = (chance.choice(CODES),) if chance.random() < 0.5 else ()
    return visit, job, number, symptoms, codes


def by_time_alone(jobs: VisitColumns) -> VisitColumns:
    """Return the jobs as if no odometer could be read, which a join can do too."""
    unknown = Places(np.full(jobs.jobs, NO_LEG, np.int32), np.full(jobs.jobs, np.nan))
    return replace(jobs, came_with=unknown, left_with=unknown)

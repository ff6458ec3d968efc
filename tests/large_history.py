"""A large invented history, written quickly past the deeds, for benchmarks alone."""

from __future__ import annotations

import random
import sqlite3
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

from demo_shop.plain_faults_chassis import FAULTS
from desktop_app.commands.shop_place import kinds_of, new_place
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record_name import FILE_NAME
from desktop_app.symptom_search.stored_index import JobIndex
from desktop_app.symptom_search.vocabulary_file import shop_vocabulary

LAST_DAY = date(2026, 11, 16)
JOBS_A_CAR = 8
TAILS = ("", "since last week", "only now and then", "worse every day", "after the motorway")


def large_history(
    folder: Path, jobs: int = 100_000, seed: int = 7, *, searchable: bool = True
) -> None:
    """Fill a new folder with a shop of that many jobs over the ten years before LAST_DAY.

    Where nothing is searched for, the search index need not be written: it takes longest.
    """
    record = new_place(folder, lambda: datetime(2026, 11, 16, tzinfo=UTC))
    change_rule(record, "shop_name", "Ten Years")  # where no deed was done, the set-up page comes
    record.close()
    raw = sqlite3.connect(folder / FILE_NAME)
    raw.execute("PRAGMA synchronous = OFF")
    chance = random.Random(seed)
    cars = max(1, jobs // JOBS_A_CAR)
    raw.executemany(
        "INSERT INTO vehicle (plate, plate_key, description, odometer_unit) VALUES (?, ?, ?, 'mi')",
        ((f"LH {n}", f"LH{n}", f"{chance.choice('1234')}.{n % 9}-litre car") for n in range(cars)),
    )
    groups: dict[str, list[str]] = {}
    rows = [_job(number, cars, jobs, chance, groups) for number in range(1, jobs + 1)]
    raw.executemany(
        "INSERT INTO visit (vehicle_id, came_at, left_at, odometer_in, brought_by) "
        "VALUES (?, ?, ?, ?, '')",
        (row[0] for row in rows),
    )
    raw.executemany(
        "INSERT INTO job (number, visit_id, concern, says_same, system, cause_found, cause, "
        "correction, proof_level, proof_words, declined, left_at, odometer_out, window_days, "
        "window_miles, window_rule) VALUES (?,?,?,0,?,1,?,?,2,'','nothing',?,?,90,3000,'first')",
        (row[1] for row in rows),
    )
    raw.executemany(
        "INSERT INTO job_symptom (job_id, symptom, chosen) VALUES (?, ?, 0)",
        (pair for row in rows for pair in row[2]),
    )
    raw.executemany(
        "INSERT INTO trouble_code (job_id, code, kind, stage) VALUES (?, ?, 'stored', 'found')",
        (pair for row in rows for pair in row[3]),
    )
    raw.commit()
    raw.close()
    if searchable:
        _index(folder)


def _job(
    number: int, cars: int, jobs: int, chance: random.Random, groups: dict[str, list[str]]
) -> tuple[tuple, tuple, list[tuple], list[tuple]]:
    fault = chance.choice(FAULTS)
    when, _ = chance.choice(fault.whens)
    cause, correction = chance.choice(fault.fixes)
    words = f"{chance.choice(fault.heads)} {when}, {chance.choice(TAILS)}"
    day = LAST_DAY - timedelta(days=round((jobs - number) * 3650 / jobs))
    moment = f"{day.isoformat()}T08:00:00+00:00"
    miles = 20_000 + (number * 100_000) // jobs + chance.randrange(50)
    if words not in groups:
        groups[words] = [g.id for g in shop_vocabulary().groups_in(words)]
    job = (f"J-{100 + number}", number, words, fault.system, cause, correction, moment, miles)
    code = [(number, chance.choice(fault.codes))] if fault.codes else []
    visit = (1 + chance.randrange(cars), moment, moment, miles)
    return visit, job, [(number, group) for group in groups[words]], code


def _index(folder: Path) -> None:
    from desktop_app.commands.shop_place import open_place

    record = open_place(folder)
    with record.deed("Write the search index") as deed:
        JobIndex(kinds_of()).rebuild(deed.connection)
    record.close()

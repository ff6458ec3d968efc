"""How fast a table of jobs is read, against the csv module alone, and that memory stays flat."""

from __future__ import annotations

import csv
import random
import tracemalloc
from collections.abc import Callable
from datetime import date, timedelta
from pathlib import Path
from statistics import median
from time import perf_counter

from desktop_app.records_exchanged.everyday_headers import FIELDS
from desktop_app.records_exchanged.job_row import JobRow
from desktop_app.records_exchanged.table_files import open_table

ROUNDS = 9
JOBS = 20_000
# The survey and the reading each go through the file once: two times the peer are the floor.
GOAL = 10.0  # times the peer, which only cuts the lines into cells
MOST_GROWTH = 1.3  # of the memory, for ten times the rows
WORDS = ("stalls", "warm", "idle", "hunts", "drive", "misfire", "load", "noise", "fuel", "cold")


def history(file: Path, jobs: int) -> Path:
    """Write invented jobs as the contract names the columns."""
    chance = random.Random(5)

    def words(most: int) -> str:
        return " ".join(chance.choices(WORDS, k=chance.randint(3, most)))

    with file.open("w", newline="", encoding="utf-8") as out:
        writer = csv.writer(out)
        writer.writerow(FIELDS)
        for number in range(jobs):
            day = date(2015, 1, 1) + timedelta(days=3_600 * number // jobs)
            vin = "".join(chance.choices("ABCDEFGHJKLMNPRSTUVWXYZ0123456789", k=17))
            row = [f"J-{number}", day, day + timedelta(days=2), vin, f"AB {number % 9_999}"]
            row += [f"hatchback {1990 + number % 30}", chance.randrange(250_000), "mi"]
            row += [f"person {number % 7}", words(15), words(8), words(10)]
            row += [chance.choice(["", "P0300", "P0301 P0302", "P0420, P0171"]), "ignition"]
            row += ["spark-plug", f"N-{chance.randrange(5_000)}", f"depot {number % 9}", "new"]
            row += [f"{chance.randrange(2_000, 90_000) / 100:.2f}", number % 80 / 10, "", ""]
            writer.writerow(row)
    return file


def timed(work: Callable[[], object]) -> float:
    start = perf_counter()
    work()
    return perf_counter() - start


def read_all(file: Path) -> int:
    with open_table(file) as table:
        return sum(isinstance(row, JobRow) for row in table)


def peer_all(file: Path) -> int:
    with file.open(newline="", encoding="utf-8") as text:
        return sum(1 for _ in csv.reader(text)) - 1


def test_reading_a_history(tmp_path: Path) -> None:
    file = history(tmp_path / "jobs.csv", JOBS)
    assert read_all(file) == peer_all(file) == JOBS
    rounds = [(timed(lambda: read_all(file)), timed(lambda: peer_all(file))) for _ in range(ROUNDS)]
    ratio = median(ours / peer for ours, peer in rounds)
    rate = JOBS / median(ours for ours, _ in rounds)
    print(f"\n{rate:,.0f} rows a second, {ratio:.1f} times the csv module (goal {GOAL})")
    assert ratio < GOAL


def test_memory_stays_flat(tmp_path: Path) -> None:
    peaks = []
    for jobs in (6_000, 60_000):
        file = history(tmp_path / f"{jobs}.csv", jobs)
        tracemalloc.start()
        read_all(file)
        peaks.append(tracemalloc.get_traced_memory()[1])
        tracemalloc.stop()
    print(f"\n{peaks[0] / 1e6:.1f} MB at 6,000 rows, {peaks[1] / 1e6:.1f} MB at 60,000")
    assert peaks[1] < MOST_GROWTH * peaks[0] + 16_000_000  # what is remembered is bounded

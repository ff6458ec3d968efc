"""The returns among a million jobs against the joins of Polars and DuckDB on the same arrays.

Both are installed for benchmarks alone; without them these are left out.
"""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from statistics import median
from time import perf_counter
from typing import Any

import numpy as np
import pandas
import pytest

from desktop_app.commands.shop_place import open_place
from desktop_app.returns_watched.many_visits.many_candidates import many_candidates
from desktop_app.returns_watched.many_visits.visit_columns import VisitColumns
from desktop_app.returns_watched.stored_columns import read_columns
from desktop_app.returns_watched.window import LONG_WINDOW
from tests.benchmarks.many_returns import by_time_alone

PLACEHOLDER = 0.02  # of all jobs, one in fifty, are written on one vehicle "no plate"
ROUNDS = 3
REACH = LONG_WINDOW.days

JOIN = f"""
SELECT count(*) FROM (
    SELECT DISTINCT e.job, l.job FROM has e JOIN has l
    ON l.vehicle = e.vehicle AND l.trait = e.trait
    AND l.opened BETWEEN e.handed_over AND e.handed_over + {REACH}
    WHERE e.handed_over > 0 AND l.opened <> e.opened
)
"""


@pytest.fixture(scope="module")
def jobs(million: Path) -> VisitColumns:
    """The jobs as far as a join can judge them: by time, without odometers and hearsay."""
    record = open_place(million)
    with record.reading() as connection:
        found = by_time_alone(read_columns(connection, None, None, {}).jobs)
    record.close()
    chance = np.random.default_rng(5)
    vehicle = np.where(chance.random(found.jobs) < PLACEHOLDER, 0, found.vehicle).astype(np.int32)
    return replace(found, vehicle=vehicle, says_same=np.zeros(found.jobs, dtype=bool))


def test_the_returns_are_found_in_half_the_time_of_the_faster_join(jobs: VisitColumns) -> None:
    polars = pytest.importorskip("polars", reason="Polars is installed for benchmarks alone")
    duckdb = pytest.importorskip("duckdb", reason="DuckDB is installed for benchmarks alone")
    frame = polars.DataFrame(_columns(jobs))
    base = duckdb.connect()
    base.register("arrays", pandas.DataFrame(_columns(jobs)))
    base.execute("CREATE TABLE has AS SELECT * FROM arrays")
    rounds = []
    for _ in range(ROUNDS):
        ours, mine = _timed(lambda: len(many_candidates(jobs, LONG_WINDOW).earlier))
        theirs, first = _timed(lambda: _polars_join(polars, frame))
        others, second = _timed(lambda: base.execute(JOIN).fetchone()[0])
        assert mine == first == second
        rounds.append((ours, theirs, others))
    base.close()
    ours, *peers = (median(column) for column in zip(*rounds, strict=True))
    said = f"Polars {peers[0]:.2f} s, DuckDB {peers[1]:.2f} s"
    print(f"\n{jobs.jobs:,} jobs, {mine:,} pairs: {ours:.2f} s; {said}")
    assert ours < 0.5 * min(peers)


def _columns(jobs: VisitColumns) -> dict[str, Any]:
    of = jobs.trait_job
    return {
        "vehicle": jobs.vehicle[of],
        "trait": jobs.trait,
        "opened": jobs.opened[of],
        "handed_over": jobs.handed_over[of],
        "job": of,
    }


def _polars_join(polars: Any, frame: Any) -> int:
    col = polars.col
    pairs = (
        frame.lazy()
        .filter(col("handed_over") > 0)
        .join(frame.lazy(), on=["vehicle", "trait"], suffix="_later")
        .filter(
            col("opened_later") >= col("handed_over"),
            col("opened_later") <= col("handed_over") + REACH,
            col("opened_later") != col("opened"),
        )
        .select("job", "job_later")
        .unique()
    )
    return int(pairs.select(polars.len()).collect().item())


def _timed(work: Any) -> tuple[float, int]:
    start = perf_counter()
    found = work()
    return perf_counter() - start, found

"""How fast everything is written out, against the same bytes written plainly; memory stays flat."""

from __future__ import annotations

import csv
import os
import shutil
import sqlite3
import tracemalloc
from collections.abc import Callable
from pathlib import Path
from time import perf_counter

from desktop_app.commands.shop_place import open_place
from desktop_app.part_photos.stored import Photo
from desktop_app.records_exchanged.export_files import ExportTold, export_everything
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.record_name import FILE_NAME
from tests.large_history import large_history

ROUNDS = 5
GOAL = 3.0  # times the peer
PHOTOS, PHOTO_BYTES = 150, 2_500_000  # as a phone makes them, if few
JOBS = 20_000
MOST_GROWTH = 1.3  # of the memory, for ten times the jobs


def timed(work: Callable[[], object]) -> float:
    start = perf_counter()
    work()
    return perf_counter() - start


def exported(record: ShopRecord, to: Path) -> ExportTold:
    shutil.rmtree(to, ignore_errors=True)
    steps = export_everything(record, to)
    while True:
        try:
            next(steps)
        except StopIteration as end:
            told: ExportTold = end.value
            return told


def written_plainly(files: list[Path], root: Path, to: Path) -> None:
    """The peer: the same files read and written, a megabyte at a time, and nothing else."""
    shutil.rmtree(to, ignore_errors=True)
    for file in files:
        copy = to / file.relative_to(root)
        copy.parent.mkdir(parents=True, exist_ok=True)
        with file.open("rb") as origin, copy.open("wb") as out:
            while piece := origin.read(1 << 20):
                out.write(piece)


def test_a_shop_with_photos(tmp_path: Path) -> None:
    large_history(tmp_path / "shop", 500, searchable=False)
    record = open_place(tmp_path / "shop")
    kept = [record.photos.keep(os.urandom(PHOTO_BYTES)) for _ in range(PHOTOS)]
    facts = {"media_type": "image/jpeg", "size_bytes": PHOTO_BYTES, "width": 1, "height": 1}
    with record.deed("Photos") as deed:
        for job, sha256 in enumerate(kept, 1):
            deed.add(Photo, job_id=job, sha256=sha256, name="part.jpg", **facts)
    to = tmp_path / "export"
    told = exported(record, to)
    assert told.photos == PHOTOS
    files = [file for file in to.rglob("*") if file.is_file()]
    assert sum(file.stat().st_size for file in files) > PHOTOS * PHOTO_BYTES
    peer = tmp_path / "peer"
    rounds = [
        (timed(lambda: exported(record, to)), timed(lambda: written_plainly(files, to, peer)))
        for _ in range(ROUNDS)
    ]
    record.close()
    ours, plain = map(min, zip(*rounds, strict=True))  # the others were disturbed
    ratio, rate = ours / plain, told.bytes_written / ours / 1e6
    print(f"\nwith photos: {rate:,.0f} MB a second, {ratio:.2f} times plainly (goal {GOAL})")
    assert ratio < GOAL


def every_table(shop: Path, to: Path) -> None:
    """The peer: every table read by the sqlite3 module and written by the csv module."""
    to.mkdir(exist_ok=True)
    raw = sqlite3.connect(shop / FILE_NAME)
    names = [row[0] for row in raw.execute("SELECT name FROM sqlite_master WHERE type = 'table'")]
    for name in names:
        if not name.startswith(("job_text", "job_words", "sqlite")):
            with (to / f"{name}.csv").open("w", newline="", encoding="utf-8") as out:
                csv.writer(out).writerows(raw.execute(f"SELECT * FROM {name}"))
    joined = (
        "SELECT * FROM job JOIN visit ON visit.id = visit_id JOIN vehicle v ON v.id = vehicle_id"
    )
    with (to / "jobs.csv").open("w", newline="", encoding="utf-8") as out:
        csv.writer(out).writerows(raw.execute(joined))
    raw.close()


def test_a_long_history_without_photos(tmp_path: Path) -> None:
    shop = tmp_path / "shop"
    large_history(shop, JOBS, searchable=False)
    record = open_place(shop)
    told = exported(record, tmp_path / "export")
    assert told.jobs == JOBS
    rounds = [
        (
            timed(lambda: exported(record, tmp_path / "export")),
            timed(lambda: every_table(shop, tmp_path / "peer")),
        )
        for _ in range(ROUNDS)
    ]
    record.close()
    ours, plain = map(min, zip(*rounds, strict=True))
    ratio, rate = ours / plain, JOBS / ours
    print(f"\nwithout photos: {rate:,.0f} jobs a second, {ratio:.2f} times plain CSV (goal {GOAL})")
    assert ratio < GOAL


def test_memory_stays_flat(tmp_path: Path) -> None:
    peaks = []
    for jobs in (4_000, 40_000):
        large_history(tmp_path / str(jobs), jobs, searchable=False)
        record = open_place(tmp_path / str(jobs))
        exported(record, tmp_path / "export")  # what is loaded once is loaded now
        tracemalloc.start()
        exported(record, tmp_path / "export")
        peaks.append(tracemalloc.get_traced_memory()[1])
        tracemalloc.stop()
        record.close()
    print(f"\n{peaks[0] / 1e6:.1f} MB at 4,000 jobs, {peaks[1] / 1e6:.1f} MB at 40,000")
    assert peaks[1] < MOST_GROWTH * peaks[0] + 1_000_000

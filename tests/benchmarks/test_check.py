"""How long the check of a shop takes, against its database's own quick check and its photos hashed.

The peer sees 13 of 100 flipped bits. The goal is met by a shop with many photos, where hashing
them is most of the work; without any it is missed by far: history and rows are read by Python.
So only what was reached is asserted. From how many photos on the goal would be met is reckoned;
BENCHWITNESS_CHECK_PHOTOS sets how many there are.
"""

from __future__ import annotations

import hashlib
import os
import sqlite3
from collections.abc import Callable
from pathlib import Path
from statistics import median
from time import perf_counter

import pytest

from desktop_app.commands.shop_place import open_place
from desktop_app.commands.whole_check import whole_check
from desktop_app.shop_record.check import check_photos, check_record
from desktop_app.shop_record.record import FILE_NAME, ShopRecord
from tests.benchmarks.test_backup import PHOTO_BYTES, add_photos
from tests.benchmarks.test_import_writing import bring_in, history
from tests.benchmarks.written_history import written_history
from tests.shop_record.backed_up import through

JOBS = int(os.environ.get("BENCHWITNESS_CHECK_JOBS", "50000"))
PHOTOS = int(os.environ.get("BENCHWITNESS_CHECK_PHOTOS", "200"))
ROUNDS = 3
GOAL = 2.0  # times the peer
# Times a quick check, without photos: history and rows alone, and all that the command looks at.
# No goal, but what must not be lost again.
MOST_ROWS, MOST_ALL = 25.0, 35.0


@pytest.fixture(scope="module", params=["written", "imported"])
def shop(request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A shop whose jobs were written up one by one, and one that brought them in at once."""
    folder = tmp_path_factory.mktemp("checked")
    if request.param == "written":
        written_history(folder / "shop", JOBS)
    else:
        bring_in(history(folder / "jobs.csv", JOBS, "everyday"), folder / "shop")
    add_photos(folder / "shop", PHOTOS)
    return folder / "shop"


def quickly(shop: Path) -> None:
    raw = sqlite3.connect(shop / FILE_NAME)
    assert raw.execute("PRAGMA quick_check").fetchall() == [("ok",)]
    raw.close()


def hashed(photos: list[Path]) -> None:
    for photo in photos:
        with photo.open("rb") as file:
            assert hashlib.file_digest(file, "sha256").hexdigest() == photo.name


def seconds(work: Callable[[], object]) -> float:
    start = perf_counter()
    work()
    return perf_counter() - start


def whole(record: ShopRecord) -> None:
    checked = through(whole_check(record))
    assert checked.problems == ()
    assert checked.photos_checked == PHOTOS


def test_the_check_of_a_shop(shop: Path) -> None:
    record = open_place(shop)
    photos = sorted(shop.glob("photos/??/*"))
    named = [(photo.name, "a job") for photo in photos]
    times: dict[str, list[float]] = {}
    for _ in range(ROUNDS):
        for what, work in {
            "quick check": lambda: quickly(shop),
            "photos hashed": lambda: hashed(photos),
            "history and rows": lambda: through(check_record(record)),
            "photos held": lambda: through(check_photos(record.photos, named)),
            "all": lambda: whole(record),
        }.items():
            times.setdefault(what, []).append(seconds(work))
    record.close()
    took = {what: median(each) for what, each in times.items()}

    def ratio(ours: list[float], peer: list[float]) -> float:
        return median(one / other for one, other in zip(ours, peer, strict=True))

    bare = [all_ - held for all_, held in zip(times["all"], times["photos held"], strict=True)]
    both = [q + h for q, h in zip(times["quick check"], times["photos hashed"], strict=True)]
    rows = ratio(times["history and rows"], times["quick check"])
    without, with_them = ratio(bare, times["quick check"]), ratio(times["all"], both)
    # With n photos: bare + n * held <= GOAL * (quick + n * hashed).
    saved = (GOAL * took["photos hashed"] - took["photos held"]) / PHOTOS
    enough = (median(bare) - GOAL * took["quick check"]) / saved
    print(
        f"\n{JOBS:,} jobs: " + ", ".join(f"{what} {each:.2f} s" for what, each in took.items()),
        f"\nhistory and rows {rows:.1f} times a quick check, all without photos {without:.1f}, "
        f"with {PHOTOS} photos {with_them:.1f} times the peer (goal {GOAL}, reached from some "
        f"{enough:,.0f} photos on, {enough * PHOTO_BYTES / 1e9:.1f} GB)",
    )
    assert rows < MOST_ROWS
    assert without < MOST_ALL

"""How long the check of a shop takes, against its database's own quick check and its photos hashed.

The peer sees 13 of 100 flipped bits. The goal is for shops as they are: removed part and
replacement are photographed at most jobs, so photos are nearly all that there is to read. Here only
each fifth job has a single one. A shop without photos misses the goal by far: the quick check reads
pages in C, while each entry and row is held here by Python. Of that only what was reached is
asserted. What both take of the processor is printed beside: where others need it too, the seconds
say less.
"""

from __future__ import annotations

import hashlib
import os
import sqlite3
from pathlib import Path

import pytest

from desktop_app.commands.shop_place import open_place
from desktop_app.commands.whole_check import whole_check
from desktop_app.shop_record.checks.check import check_record
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.record_name import FILE_NAME
from tests.benchmarks.test_backup import PHOTO_BYTES, Took, add_photos
from tests.benchmarks.test_import_writing import bring_in, history
from tests.benchmarks.written_history import written_history
from tests.shop_record.backed_up import through

JOBS, PHOTOS = 1_000, 200  # as shops are, but for the photos: there are more
BARE_JOBS = int(os.environ.get("BENCHWITNESS_CHECK_JOBS", "50000"))
ROUNDS = 5
GOAL = 2.0  # times the peer
# Times a quick check, without photos: history and rows alone, and all that the command looks at.
# No goal, but what must not be lost again.
MOST_ROWS, MOST_ALL = 25.0, 35.0


@pytest.fixture(params=["written", "imported"])
def bare(request: pytest.FixtureRequest, tmp_path: Path) -> Path:
    """A shop whose jobs were written up one by one, and one that brought them in at once."""
    if request.param == "written":
        written_history(tmp_path / "shop", BARE_JOBS)
    else:
        bring_in(history(tmp_path / "jobs.csv", BARE_JOBS, "everyday"), tmp_path / "shop")
    return tmp_path / "shop"


def quickly(shop: Path) -> None:
    raw = sqlite3.connect(shop / FILE_NAME)
    assert raw.execute("PRAGMA quick_check").fetchall() == [("ok",)]
    raw.close()


def hashed(photos: list[Path]) -> None:
    for photo in photos:
        with photo.open("rb") as file:
            assert hashlib.file_digest(file, "sha256").hexdigest() == photo.name


def whole(record: ShopRecord, photos: int) -> None:
    checked = through(whole_check(record))
    assert checked.problems == ()
    assert checked.photos_checked == photos


def test_the_check_of_a_shop_as_shops_are(tmp_path: Path) -> None:
    written_history(tmp_path / "shop", JOBS)
    photos = add_photos(tmp_path / "shop", PHOTOS)
    record = open_place(tmp_path / "shop")
    ours, peer = Took(), Took()
    for _ in range(ROUNDS):
        peer.by(lambda: (quickly(tmp_path / "shop"), hashed(photos)))
        ours.by(lambda: whole(record, PHOTOS))
    record.close()
    print(
        f"\n{JOBS:,} jobs, {PHOTOS} photos ({PHOTOS * PHOTO_BYTES / 1e6:,.0f} MB): {ours}, quick "
        f"check and photos hashed {peer}: {ours.over(peer):.2f} times (goal {GOAL})"
    )
    assert ours.over(peer) <= GOAL


def test_the_check_of_a_shop_without_photos(bare: Path) -> None:
    record = open_place(bare)
    quick, rows, ours = Took(), Took(), Took()
    for _ in range(ROUNDS):
        quick.by(lambda: quickly(bare))
        rows.by(lambda: through(check_record(record)))
        ours.by(lambda: whole(record, 0))
    record.close()
    print(
        f"\n{BARE_JOBS:,} jobs: quick check {quick}, history and rows {rows}, all {ours}: "
        f"{rows.over(quick):.1f} and {ours.over(quick):.1f} times"
    )
    assert rows.over(quick) < MOST_ROWS
    assert ours.over(quick) < MOST_ALL

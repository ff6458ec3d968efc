"""How long backups take, against the least that could be done: VACUUM INTO and copied photos.

The peer puts what it writes on the disk too; it holds nothing against anything. Both work on a disk
of this computer, not in memory: that is where backups lie. The goal is for a shop of 1 GB as shops
are: some thousand jobs in a record of 13 MB, the rest photos as phones make them. A shop that is
nearly all record misses it, and says so: a backup reads the whole history again, each entry of it
in Python, before it counts; the peer reads none. Of that only what was reached is asserted. What
both take of the processor is printed beside: where others need it too, the seconds say less.
"""

from __future__ import annotations

import os
import shutil
import sqlite3
import tempfile
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import timedelta
from pathlib import Path
from statistics import median
from time import perf_counter, process_time

import pytest

from desktop_app.part_photos.stored import Photo
from desktop_app.shop_record.backups.backup import make_backup
from desktop_app.shop_record.backups.generations import make_generation
from desktop_app.shop_record.backups.restore import restore_backup
from desktop_app.shop_record.photos.photo_files import sync_folder
from desktop_app.shop_record.record import open_shop
from desktop_app.shop_record.record_name import FILE_NAME
from tests.benchmarks.written_history import written_history
from tests.conftest import NOON
from tests.shop_record.backed_up import through

ROOT = Path(__file__).resolve().parents[2]
ROUNDS = 5
PHOTO_BYTES = 3_000_000
NEW, TOMORROW = 10, NOON + timedelta(days=1)  # photos of a day


@dataclass(frozen=True)
class Shop:
    """A shop, and how many times the peer a backup of it may take."""

    jobs: int
    photos: int
    most: float
    folder: Path = Path()


SHOPS = {
    "as shops are": Shop(4_000, 330, 1.5),
    "nearly all record": Shop(30_000, 20, 5.0),  # 95 and 60 MB; no goal, but not to be lost again
}


class Took:
    """Seconds of the clock and of the processor, round by round."""

    def __init__(self) -> None:
        self.wall: list[float] = []
        self.cpu: list[float] = []

    def by(self, work: Callable[[], object]) -> None:
        os.sync()  # what was written before is nobody's debt
        start, busy = perf_counter(), process_time()
        work()
        self.wall.append(perf_counter() - start)
        self.cpu.append(process_time() - busy)

    def over(self, peer: Took) -> float:
        return median(one / other for one, other in zip(self.wall, peer.wall, strict=True))

    def __str__(self) -> str:
        return f"{median(self.wall):.2f} s ({median(self.cpu):.2f} of the processor)"


def add_photos(shop: Path, count: int) -> list[Path]:
    record = open_shop(shop, lambda: NOON)
    facts = {"media_type": "image/jpeg", "size_bytes": PHOTO_BYTES, "width": 1, "height": 1}
    kept = [record.photos.keep(os.urandom(PHOTO_BYTES)) for _ in range(count)]
    with record.deed("Photos") as deed:
        for job, sha256 in enumerate(kept, 1):
            deed.add(Photo, job_id=job, sha256=sha256, name="part.jpg", **facts)
    record.close()
    return [record.photos.path(sha256) for sha256 in kept]


@pytest.fixture(scope="module")
def disk() -> Iterator[Path]:
    """A folder on a disk."""
    with tempfile.TemporaryDirectory(prefix=".backups-timed-", dir=ROOT) as folder:
        yield Path(folder)


@pytest.fixture(scope="module", params=SHOPS)
def shop(request: pytest.FixtureRequest, disk: Path) -> Iterator[Shop]:
    """One of the shops, on the disk."""
    made = SHOPS[request.param]
    folder = disk / "shop"
    written_history(folder, made.jobs)
    add_photos(folder, made.photos)
    yield Shop(made.jobs, made.photos, made.most, folder)
    shutil.rmtree(folder)


def plainly(shop: Path, photos: list[Path], to: Path) -> None:
    """The peer: files as they are kept, on the disk under their names when it is done."""
    to.mkdir()
    raw = sqlite3.connect(shop / FILE_NAME)
    raw.execute("VACUUM INTO ?", (str(to / FILE_NAME),))
    raw.close()
    copies = [to / photo.relative_to(shop) for photo in photos]
    for photo, copy in zip(photos, copies, strict=True):
        copy.parent.mkdir(parents=True, exist_ok=True)
        shutil.copyfile(photo, copy)
    for file in (to / FILE_NAME, *copies):
        with file.open("rb+") as written:
            os.fsync(written.fileno())
    for folder in {to, to / "photos", *(copy.parent for copy in copies)}:
        sync_folder(folder)


def test_the_whole_shop_in_one_file(shop: Shop, disk: Path) -> None:
    photos = list(shop.folder.glob("photos/??/*"))
    ours, peer, back = Took(), Took(), Took()
    for _ in range(ROUNDS):
        ours.by(lambda: through(make_backup(shop.folder, disk / "b.zip", NOON)))
        peer.by(lambda: plainly(shop.folder, photos, disk / "plain"))
        back.by(lambda: through(restore_backup(disk / "b.zip", disk / "again", NOON)))
        size = (disk / "b.zip").stat().st_size / 1e6
        (disk / "b.zip").unlink()
        for folder in ("plain", "again"):
            shutil.rmtree(disk / folder)
    print(
        f"\nbackup of {size:,.0f} MB: {ours}, plainly {peer}: {ours.over(peer):.2f} times (at most "
        f"{shop.most}); restored and held: {back}"
    )
    assert ours.over(peer) <= shop.most


def test_generations(shop: Shop, disk: Path) -> None:
    """The first one copies all photos; one of a later day costs little, most of it to be sure."""
    base = disk / "backups"
    all_photos = list(shop.folder.glob("photos/??/*"))
    first, plain_first = Took(), Took()
    for _ in range(ROUNDS):
        shutil.rmtree(base, ignore_errors=True)
        first.by(lambda: through(make_generation(shop.folder, base, NOON)))
        plain_first.by(lambda: plainly(shop.folder, all_photos, disk / "plain"))
        shutil.rmtree(disk / "plain")
    new = add_photos(shop.folder, NEW)
    day, plain_day = Took(), Took()
    for _ in range(ROUNDS):
        shutil.copytree(base, disk / "copy")
        day.by(lambda: through(make_generation(shop.folder, disk / "copy", TOMORROW)))
        plain_day.by(lambda: plainly(shop.folder, new, disk / "plain"))
        for folder in ("plain", "copy"):
            shutil.rmtree(disk / folder)
    shutil.rmtree(base)
    print(
        f"\nfirst generation: {first}, plainly {plain_first}: {first.over(plain_first):.2f} times "
        f"(at most {shop.most}); a day's with {NEW} new photos: {day}, plainly {plain_day}: "
        f"{day.over(plain_day):.2f} times"
    )
    assert first.over(plain_first) <= shop.most

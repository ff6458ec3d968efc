"""How fast photos come from a phone, against what the disk alone takes in the same run."""

from __future__ import annotations

import http.client
import json
import os
import threading
from collections.abc import Callable, Iterator
from functools import partial
from pathlib import Path
from statistics import median
from tempfile import TemporaryDirectory
from time import perf_counter
from typing import Any

import pytest

from desktop_app.shop_record.photos.photo_files import sync_folder
from tests.part_photos.bench_pictures import encoded, noisy
from tests.part_photos.phone.open_page import OpenPage, open_page

ROUNDS = 9
PHOTOS, SIZE = 12, 4_000_000  # a technician's job, as a phone takes it
LEAST = 0.6  # of the disk's speed


@pytest.fixture
def disk() -> Iterator[Path]:
    """A folder on a disk and not in memory: there, nothing would cost anything."""
    with TemporaryDirectory(dir=Path(__file__).parent, prefix=".upload-") as folder:
        yield Path(folder)


def photos() -> list[bytes]:
    """Twelve photos that all differ; bytes behind a picture are kept with it."""
    photo = encoded(noisy(2000, 1500))
    assert len(photo) < SIZE
    return [photo + os.urandom(SIZE - len(photo)) for _ in range(PHOTOS)]


def seconds(work: Callable[[list[bytes]], None], contents: list[bytes]) -> float:
    """Time one call."""
    start = perf_counter()
    work(contents)
    return perf_counter() - start


def test_twelve_photos_come_as_fast_as_the_disk_nearly(benchmark: Any, disk: Path) -> None:
    def bare(contents: list[bytes]) -> None:
        for number, content in enumerate(contents):
            with (disk / f"bare-{number}").open("wb") as file:
                file.write(content)
                file.flush()
                os.fsync(file.fileno())
            (disk / f"bare-{number}").replace(disk / f"bare-{number}.kept")
            sync_folder(disk)

    shares, rates = [], []
    with open_page(disk / "shop") as page:
        for _ in range(ROUNDS):
            contents = photos()
            heads = [page.heads(content) for content in contents]  # the phone's own sums
            alone = seconds(bare, contents)
            sent = seconds(partial(_send, page, heads), contents)
            shares.append(alone / sent)
            rates.append(PHOTOS * SIZE / 1e6 / sent)
        assert len(page.tray.waiting()) == ROUNDS * PHOTOS
    benchmark.extra_info["of the disk's speed"] = round(median(shares), 2)
    benchmark.extra_info["MB a second"] = round(median(rates))
    benchmark.pedantic(lambda: None)
    assert median(shares) >= LEAST


def _send(page: OpenPage, heads: list[dict[str, str]], contents: list[bytes]) -> None:
    """Send as two phones do, each one photo after the other."""
    phones = [
        threading.Thread(target=_phone, args=(page, heads[one::2], contents[one::2]))
        for one in range(2)
    ]
    for phone in phones:
        phone.start()
    for phone in phones:
        phone.join()


def _phone(page: OpenPage, heads: list[dict[str, str]], contents: list[bytes]) -> None:
    for head, content in zip(heads, contents, strict=True):
        line = http.client.HTTPConnection(*page.at, timeout=30)
        line.request("PUT", "/photo", content, head)
        answer = line.getresponse()
        assert (answer.status, json.loads(answer.read())["bytes"]) == (200, SIZE)
        line.close()

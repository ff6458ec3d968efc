"""The demo shop, built once and opened, with what its tests ask of it again and again."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, datetime
from io import BytesIO
from pathlib import Path

import pytest
from PIL import Image

from demo_shop import darkroom
from demo_shop.bench_camera import card_photo
from demo_shop.build import build_demo
from demo_shop.darkroom import PhotoOrder
from demo_shop.darkroom import draw as drawn
from demo_shop.written_jobs import JOBS
from desktop_app.parts_compared.pair_view import PairView
from desktop_app.parts_compared.stored_pairs import pairs_of_job, read_pair
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.stored_facts import Facts, read_facts
from desktop_app.returns_watched.stored_returns import read_returns
from desktop_app.shop_record.record import ShopRecord, open_shop
from desktop_app.shop_record.step import Step

NOW = datetime(2026, 11, 18, 15, 0, tzinfo=UTC)
KEY_OF = {job.concern: job.key for job in JOBS}


@dataclass(frozen=True)
class Built:
    """The built shop, opened, with what the tests ask of it again and again."""

    record: ShopRecord
    steps: list[Step]
    facts: Facts
    returns: tuple[ReturnRow, ...]
    jobs: dict[str, JobView]
    pairs: dict[str, list[PairView]]

    def number(self, key: str) -> str:
        return self.jobs[key].number

    def keys_of(self, *judgements: str, in_window: bool | None = None) -> set[tuple[str, str]]:
        """Return the written pairs of jobs with one of these judgements, by their keys."""
        return {
            (KEY_OF[row.concern_then], KEY_OF[row.concern_now])
            for row in self.returns
            if row.judgement is not None
            and row.judgement.value in judgements
            and row.concern_then in KEY_OF
            and in_window in (None, row.in_window)
        }


def small_photo(order: PhotoOrder) -> bytes:
    """A picture of the order's own in no time: what is drawn has tests of its own.

    A part on a card is drawn in earnest, if small: it is measured in.
    """
    if order.on_card:
        return drawn(order)
    seed = order.seed
    file = BytesIO()
    Image.new("RGB", (16, 12), (seed % 256, seed // 256 % 256, seed // 65536 % 256)).save(
        file, "JPEG", comment=str(seed).encode()
    )
    return file.getvalue()


def build_small(folder: Path) -> list[Step]:
    """Build the demo with small photos and return its steps."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(darkroom, "draw", small_photo)
        patch.setattr(card_photo, "LONG_SIDE", 1600)
        return list(build_demo(folder, NOW, helpers=0))


def build(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Built]:
    """Build the demo once, with small photos, and open it."""
    folder = tmp_path_factory.mktemp("demo") / "shop"
    steps = build_small(folder)
    record = open_shop(folder, lambda: NOW)
    with record.reading() as connection:
        facts = read_facts(connection)
        ids = [said.id for said in facts.said.values()]
        views = [read_job(connection, job) for job in ids]
        jobs = {KEY_OF.get(view.concern, view.number): view for view in views}
        pairs = {
            key: [read_pair(connection, pair) for pair in pairs_of_job(connection, view.id)]
            for key, view in jobs.items()
        }
        returns = read_returns(connection)
    yield Built(record, steps, facts, returns, jobs, pairs)
    record.close()

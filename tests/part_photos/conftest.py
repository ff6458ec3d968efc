"""A shop with one job for the tests of photos."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from desktop_app.shop_record.record import ShopRecord, create_shop
from tests.part_photos.bench_pictures import job_with_no_photos, monday


@pytest.fixture
def record(tmp_path: Path) -> Iterator[ShopRecord]:
    """An empty shop on a Monday morning."""
    shop = create_shop(tmp_path / "shop", monday)
    yield shop
    shop.close()


@pytest.fixture
def job_id(record: ShopRecord) -> int:
    """A job to add photos to."""
    return job_with_no_photos(record)

"""What tests of photos on the screen share: a desk of a shop whose day is that of the pictures."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication

from desktop_app.shop_record.record import create_shop
from desktop_app.shop_window.desk import Desk
from tests.part_photos.bench_pictures import monday


@pytest.fixture
def desk(qapp: QApplication, tmp_path: Path) -> Iterator[Desk]:
    """A desk with an open shop."""
    record = create_shop(tmp_path / "shop", monday)
    desk = Desk(record)
    yield desk
    desk.errands.finish()
    record.close()

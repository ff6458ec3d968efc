"""The page for phones, open for one test."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.part_photos.phone.open_page import OpenPage, open_page


@pytest.fixture
def page(tmp_path: Path) -> Iterator[OpenPage]:
    """The page, open on this computer alone."""
    with open_page(tmp_path / "shop") as opened:
        yield opened

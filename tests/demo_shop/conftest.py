"""One demo shop for all the tests that read it."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from tests.demo_shop.built_demo import Built, build


@pytest.fixture(scope="session")
def built(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Built]:
    """The built shop, opened; nobody writes in it."""
    yield from build(tmp_path_factory)

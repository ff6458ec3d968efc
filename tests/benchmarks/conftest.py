"""What the benchmarks share: a shop with a large history, made once."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.benchmarks.many_returns import many_returns
from tests.large_history import large_history


@pytest.fixture(scope="session")
def large_shop(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A shop of 100,000 jobs."""
    folder = tmp_path_factory.mktemp("large") / "shop"
    large_history(folder, 100_000)
    return folder


@pytest.fixture(scope="session")
def middling_shop(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A shop of 10,000 jobs, to see whether a cost grows with the history."""
    folder = tmp_path_factory.mktemp("middling") / "shop"
    large_history(folder, 10_000)
    return folder


@pytest.fixture(scope="session")
def million(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A shop of a million jobs, with unknown odometers and a vehicle that stands for many."""
    folder = tmp_path_factory.mktemp("million") / "shop"
    many_returns(folder, 1_000_000)
    return folder


@pytest.fixture(scope="session")
def hundred_thousand(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The same with 100,000 jobs, for what would take a join an hour at a million."""
    folder = tmp_path_factory.mktemp("hundred_thousand") / "shop"
    many_returns(folder, 100_000)
    return folder

"""The demo shop written out and brought back: byte for byte, the jobs alone and everything."""

from __future__ import annotations

from contextlib import closing
from pathlib import Path

import pytest

from desktop_app.commands.shop_place import new_place
from desktop_app.records_exchanged.whole_actions import bring_back
from tests.demo_shop.built_demo import Built
from tests.records_exchanged.exported import export, files_of, walked
from tests.records_exchanged.importing import a_shop, bring_in


@pytest.fixture(scope="module")
def folder(built: Built, tmp_path_factory: pytest.TempPathFactory) -> Path:
    to = tmp_path_factory.mktemp("demo-export") / "out"
    export(built.record, to)
    return to


def test_the_jobs_alone_come_back_through_an_ordinary_import(
    built: Built, folder: Path, tmp_path: Path
) -> None:
    other = new_place(tmp_path / "shop", built.record.clock)  # no day of the demo is to come
    with closing(other):
        told = bring_in(other, (folder / "jobs.csv").read_bytes().decode())
        assert told.rejected == []
        export(other, tmp_path / "again")
    assert (tmp_path / "again" / "jobs.csv").read_bytes() == (folder / "jobs.csv").read_bytes()


def test_everything_comes_back(folder: Path, tmp_path: Path) -> None:
    for other in a_shop(tmp_path):
        walked(bring_back(other, folder))
        export(other, tmp_path / "again")
    assert files_of(tmp_path / "again") == files_of(folder)

"""A table brought in tells how far it is; what was turned away is never written over its source."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from desktop_app.records_exchanged.bringing_in_actions import bring_in, write_turned_away
from desktop_app.records_exchanged.stored_import import ReadWith
from desktop_app.records_exchanged.table_files import open_table
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble
from tests.records_exchanged.importing import a_shop, everything, lines


def reads() -> ReadWith:
    return ReadWith(lambda _: (), lambda _: (), {})


@pytest.fixture
def shop(tmp_path: Path) -> Iterator[ShopRecord]:
    yield from a_shop(tmp_path)


@pytest.fixture
def jobs(tmp_path: Path) -> Path:
    file = tmp_path / "jobs.csv"
    day = {"opened_on": "2024-01-05"}
    rows = [{"job_number": "J-1", **day}, {"job_number": "J-2", **day}, {"job_number": "J-3"}]
    file.write_bytes(lines(*rows).encode())
    return file


def test_it_tells_how_many_rows_are_done_and_that_it_is_finishing(
    shop: ShopRecord, jobs: Path
) -> None:
    heard: list[Step] = []
    with open_table(jobs) as table:
        told = bring_in(shop, table, reads, heard.append)
    assert (told.added, told.refused) == (2, 1)
    assert heard[0] == Step(0, 3, "0 of 3 rows")
    assert heard[-1] == Step(3, 3, "finishing")
    assert all(0 <= step.done <= step.of == 3 for step in heard)


def test_rows_are_told_as_they_are_read(
    shop: ShopRecord, jobs: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("desktop_app.records_exchanged.stored_import.AT_A_TIME", 1)
    heard: list[str] = []
    with open_table(jobs) as table:
        bring_in(shop, table, reads, lambda step: heard.append(step.words))
    assert heard[:3] == ["0 of 3 rows", "1 of 3 rows", "2 of 3 rows"]


def test_an_empty_table_is_no_division_by_nothing(shop: ShopRecord, tmp_path: Path) -> None:
    file = tmp_path / "none.csv"
    file.write_text("job_number,concern\n", "utf-8")
    heard: list[Step] = []
    with open_table(file) as table:
        assert bring_in(shop, table, reads, heard.append).read == 0
    assert {step.of for step in heard} == {1}


def test_a_trial_leaves_nothing_and_who_stops_it_takes_everything_back(
    shop: ShopRecord, jobs: Path
) -> None:
    before = everything(shop)

    def stop(step: Step) -> None:
        if step.done:
            raise KeyboardInterrupt

    with open_table(jobs) as table:
        assert bring_in(shop, table, reads, lambda _: None, dry_run=True).added == 2
        assert everything(shop) == before
        with pytest.raises(KeyboardInterrupt):
            bring_in(shop, table, reads, stop)
    assert everything(shop) == before


def test_what_was_turned_away_is_written_beside_and_never_over_the_file_it_came_from(
    shop: ShopRecord, jobs: Path, tmp_path: Path
) -> None:
    before, alias = jobs.read_bytes(), tmp_path / "alias.csv"
    alias.symlink_to(jobs)
    with open_table(jobs) as table:
        told = bring_in(shop, table, reads, lambda _: None)
        for place in (jobs, alias):
            with pytest.raises(ShopTrouble, match="is the file that the rows came from") as refused:
                write_turned_away(table, told, jobs, place)
            assert refused.value.kept == "It was left as it is."
        write_turned_away(table, told, jobs, tmp_path / "mend.csv")
    assert jobs.read_bytes() == before
    mend = (tmp_path / "mend.csv").read_text("utf-8").splitlines()
    assert len(mend) == 2
    assert mend[0].endswith(",why")
    assert mend[1].startswith("J-3,")
    assert "the day on which it came" in mend[1]

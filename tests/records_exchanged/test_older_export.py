"""An export that an older program wrote, without the tables and columns that came later."""

from __future__ import annotations

import csv
from collections.abc import Iterator
from pathlib import Path

import pytest
from sqlalchemy import select

from desktop_app.records_exchanged.export_names import IDS_GIVEN, LATER_TABLES, table_file
from desktop_app.records_exchanged.whole_actions import bring_back
from desktop_app.repair_jobs.stored import Job, JobPerson
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from tests.records_exchanged.exported import checked_anew, export, files_of, fill, walked
from tests.records_exchanged.importing import a_shop


@pytest.fixture(scope="module")
def shop(tmp_path_factory: pytest.TempPathFactory) -> Iterator[ShopRecord]:
    for record in a_shop(tmp_path_factory.mktemp("filled")):
        fill(record)
        yield record


@pytest.fixture
def older(shop: ShopRecord, tmp_path: Path) -> Path:
    folder = tmp_path / "out"
    export(shop, folder)
    for table in LATER_TABLES:
        (folder / table_file(table)).unlink()
    without_columns(folder / table_file("job"), ("work", "search_hours"))
    ids = (folder / IDS_GIVEN).read_text(encoding="utf-8").splitlines(keepends=True)
    left = [line for line in ids if not line.startswith(LATER_TABLES)]
    (folder / IDS_GIVEN).write_text("".join(left), encoding="utf-8", newline="")
    checked_anew(folder)
    return folder


def without_columns(file: Path, names: tuple[str, ...]) -> None:
    with file.open(encoding="utf-8-sig", newline="") as old:
        header, *rows = csv.reader(old)
    at = [place for place, name in enumerate(header) if name not in names]
    assert len(at) == len(header) - len(names)
    with file.open("w", encoding="utf-8", newline="") as new:
        csv.writer(new).writerows([[row[place] for place in at] for row in (header, *rows)])


def test_it_comes_back_with_nothing_where_it_knew_nothing(
    shop: ShopRecord, older: Path, tmp_path: Path
) -> None:
    for other in a_shop(tmp_path / "other"):
        told = walked(bring_back(other, older))
        with shop.reading() as first, other.reading() as second:
            wanted = select(Job).order_by(Job.id)
            kept = first.execute(wanted).mappings().all()
            came = second.execute(wanted).mappings().all()
            later = {"work": None, "search_hours": None}
            assert came == [{**row, **later} for row in kept]
            assert second.execute(select(JobPerson)).all() == []
        assert told.rows["job_person"] == 0
        again = tmp_path / "again"
        export(other, again)
        assert table_file("job_person") in files_of(again)


def test_a_column_that_must_say_something_is_still_asked_for(older: Path, tmp_path: Path) -> None:
    without_columns(older / table_file("job"), ("visit_id",))
    checked_anew(older)
    for other in a_shop(tmp_path / "other"):
        with pytest.raises(ShopTrouble, match="the column “visit_id” is missing"):
            walked(bring_back(other, older))

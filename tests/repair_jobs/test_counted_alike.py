"""Which jobs are counted: one rule, said in plain words and asked of the record itself."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st
from sqlalchemy import select

from desktop_app.repair_jobs.counted import BLANKS, is_counted
from desktop_app.repair_jobs.stored import Job
from desktop_app.repair_jobs.stored_counted import job_is_counted
from desktop_app.shop_record.record import ShopRecord, create_shop
from tests.watched_shop import job, vehicle

TEXTS = st.sampled_from(["", " ", BLANKS, "cap", " cap ", "\u2003cap", "\n"])
JOBS = st.tuples(
    st.sampled_from([None, 0, 1]),
    TEXTS,
    TEXTS,
    st.sampled_from([None, "inspection", "maintenance"]),
)


@pytest.fixture(scope="module")
def record(tmp_path_factory: pytest.TempPathFactory) -> Iterator[ShopRecord]:
    folder = tmp_path_factory.mktemp("counted") / "shop"
    shop = create_shop(folder, lambda: datetime(2026, 11, 16, 12, tzinfo=UTC))
    job(shop, vehicle(shop), "J-1", "2026-09-01", "2026-09-02")
    yield shop
    shop.close()


@given(JOBS)
def test_the_record_counts_as_the_rule_does(
    record: ShopRecord, said: tuple[int | None, str, str, str | None]
) -> None:
    names = ("cause_found", "cause", "correction", "work")
    with record.deed("Write it down") as deed:
        deed.change(Job, 1, **dict(zip(names, said, strict=True)))
    with record.reading() as connection:
        counted = connection.execute(select(Job.id).where(job_is_counted())).all()
    assert len(counted) == is_counted(*said)


def test_what_is_no_repair_is_not_counted() -> None:
    assert is_counted(1, "cap tracked", "cap replaced", None)
    assert is_counted(None, "cap tracked", "cap replaced", None)
    assert not is_counted(1, "cap tracked", "cap replaced", "maintenance")
    assert not is_counted(1, "cap tracked", "cap replaced", "inspection")
    assert not is_counted(0, "cap tracked", "cap replaced", None)
    assert not is_counted(1, BLANKS, "cap replaced", None)
    assert not is_counted(1, "cap tracked", "", None)

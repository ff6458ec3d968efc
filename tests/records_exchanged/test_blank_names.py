"""Words that stand where a name has to be: they join no two cars, and make no person."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from desktop_app.shop_record.record import ShopRecord
from tests.records_exchanged.importing import a_shop, bring_in, counts, lines
from tests.records_exchanged.tables import column, jobs_of
from tests.records_exchanged.test_writing import FIRST, rows


@pytest.fixture
def shop(tmp_path: Path) -> Iterator[ShopRecord]:
    yield from a_shop(tmp_path)


@pytest.mark.parametrize(
    "cell",
    ["UNKNOWN", "unknown", "n/a", "N.A.", "None", "TBC", "???", "-", "No  plate", "XXX", "000 000"],
)
def test_no_car_is_named_by_it(cell: str) -> None:
    assert (jobs_of(column("plate", cell))[0].plate, jobs_of(column("vin", cell))[0].vin) == (
        "",
        "",
    )


@pytest.mark.parametrize("cell", ["NO 1", "NONE 1", "X 1", "007", "1", "TEST 4", "N"])
def test_a_plate_stays_a_plate(cell: str) -> None:
    assert jobs_of(column("plate", cell))[0].plate == cell


@pytest.mark.parametrize("field", ["technician", "supplier"])
def test_nobody_is_named_by_it(field: str) -> None:
    words = ("n/a", "Unknown", "tbc", "?", "none", "Na", "Nil", "Sam")
    named = [getattr(job, field) for job in jobs_of(column(field, *words))]
    assert named == ["", "", "", "", "", "Na", "Nil", "Sam"]


def test_cars_without_a_name_stay_apart_and_have_no_returns(shop: ShopRecord) -> None:
    names = [("UNKNOWN", "n/a"), ("unknown", "N/A"), ("", "none"), ("", "None")]
    told = bring_in(
        shop,
        lines(
            *(
                {**FIRST, "job_number": f"U{n}", "opened_on": f"2024-01-{n:02}", "closed_on": ""}
                | {"vin": vin, "plate": plate, "technician": "n/a"}
                for n, (vin, plate) in enumerate(names, 1)
            )
        ),
    )
    assert counts(told) == (4, 0, 0, 0)
    assert rows(shop, "SELECT vin, plate FROM vehicle") == [(None, None)] * 4
    assert rows(shop, "SELECT name FROM person") == []

"""Which vehicle a row of an import means: the same that the counter would find."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from desktop_app.records_exchanged.job_row import JobRow
from desktop_app.records_exchanged.stored_known import Known
from desktop_app.repair_jobs.stored import Vehicle, Visit
from desktop_app.repair_jobs.stored_known_car import find_vehicle
from desktop_app.repair_jobs.vehicle_identity import matching_plate
from desktop_app.shop_record.record import ShopRecord
from tests.records_exchanged.importing import a_shop, bring_in, counts, lines
from tests.records_exchanged.tables import jobs_of
from tests.records_exchanged.test_writing import FIRST, rows

ONE, OTHER, SHORT = "1M8GDM9AXKP042788", "1M8GDM9AXKP042789", "KP042788"
# VIN as kept, plate as written, the days on which it came.
KEPT = [
    (ONE, "AB 12", ["2024-01-05"]),
    (None, "AB 12", ["2023-01-05"]),
    (None, "ab-12", []),
    (OTHER, "CD 34", ["2022-01-05", "2024-06-01"]),
    (OTHER, None, ["2024-03-01"]),
    (SHORT, "EF 56", ["2020-01-05"]),
    (ONE, "EF 56", ["2019-01-05"]),
    (None, "GH 78", []),
    (None, "gh78", []),
    (None, None, ["2024-01-05"]),
]


@pytest.fixture(scope="module")
def shop(tmp_path_factory: pytest.TempPathFactory) -> Iterator[ShopRecord]:
    for record in a_shop(tmp_path_factory.mktemp("vehicles")):
        with record.deed("Vehicles") as deed:
            for vin, plate, days in KEPT:
                key = matching_plate(plate) if plate else None
                named = {"vin": vin, "plate": plate, "plate_key": key}
                vehicle = deed.add(Vehicle, **named, odometer_unit="mi")
                for day in days:
                    unread = {"odometer_unread": "no time"}
                    deed.add(Visit, vehicle_id=vehicle, came_at=f"{day}T09:00:00+00:00", **unread)
        yield record


def row_naming(vin: str, plate: str) -> JobRow:
    [row] = jobs_of(lines({"job_number": "A1", "vin": vin, "plate": plate}))
    return row


@pytest.mark.parametrize("plate", ["", "AB 12", "a.b.1.2", "CD 34", "EF 56", "GH 78", "ZZ 99"])
@pytest.mark.parametrize("vin", ["", ONE, ONE.lower(), OTHER, SHORT, "1M8GDM9AXKP042790"])
def test_a_row_means_the_vehicle_that_the_counter_would_find(
    shop: ShopRecord, plate: str, vin: str
) -> None:
    row = row_naming(vin, plate)
    with shop.reading() as connection:
        found = Known(connection, [row]).vehicle_of(row)
        assert (found and found.id) == find_vehicle(connection, plate, vin)


def test_who_came_last_is_asked_of_the_rows_before_it_too(tmp_path: Path) -> None:
    """Two cars share a plate: a row with the plate alone means the one that came last by then."""
    vins = [{**FIRST, "vin": ""}, {**FIRST, "job_number": "A2", "vin": ONE, "plate": "AB 12"}]
    for shop in a_shop(tmp_path):
        bring_in(shop, lines(*vins))
        bring_in(
            shop,
            lines(
                {**FIRST, "job_number": "A3", "vin": OTHER, "opened_on": "2025-05-01"}
                | {"closed_on": "2025-05-02"},
                {**FIRST, "job_number": "A4", "opened_on": "2025-06-01", "closed_on": ""},
            ),
        )
        found = rows(
            shop,
            "SELECT v.vin FROM job JOIN visit ON visit.id = visit_id "
            "JOIN vehicle v ON v.id = vehicle_id WHERE number = 'A4'",
        )
        assert found == [(OTHER,)]


def test_a_visit_that_was_moved_to_another_day_is_no_visit_of_the_first(tmp_path: Path) -> None:
    for shop in a_shop(tmp_path):
        bring_in(shop, lines(FIRST))
        moved = {**FIRST, "opened_on": "2024-01-03"}
        told = bring_in(shop, lines(moved, {**FIRST, "job_number": "A2"}))
        assert counts(told) == (1, 1, 0, 0)
        assert rows(shop, "SELECT substr(came_at, 1, 10) FROM visit") == [
            ("2024-01-03",),
            ("2024-01-05",),
        ]

"""Filters by vehicle, system and day keep jobs out of what is found and of what is counted."""

from __future__ import annotations

from datetime import date

import pytest

from desktop_app.repair_jobs.stored import Job
from desktop_app.shop_record.deed import Deed
from desktop_app.symptom_search.filters import ALL_JOBS, Filters, vehicle_class
from desktop_app.symptom_search.find import find, vehicle_classes
from tests.symptom_search.conftest import OldJobs


@pytest.fixture
def two_cars(old_jobs: OldJobs) -> OldJobs:
    """J-001 on a diesel estate in March, J-002 on a coupé in August; both squeal."""
    estate = old_jobs.car(description="2.0-litre diesel estate, 2010s")
    coupe = old_jobs.car(description="1.8-litre coupé, 2000s")
    for car, left, system in (
        (estate, "2026-03-02T16:00:00+00:00", "brakes"),
        (coupe, "2026-08-03T16:00:00+00:00", "belt-drive"),
    ):
        old_jobs.job(
            "brakes squeal", car=car, left=left, system=system, correction="cleaned and greased"
        )
    return old_jobs


@pytest.mark.parametrize(
    ("kept", "numbers"),
    [
        (ALL_JOBS, ["J-002", "J-001"]),
        (Filters(vehicle="diesel estate"), ["J-001"]),
        (Filters(vehicle="Estate, DIESEL"), ["J-001"]),
        (Filters(vehicle="coupe"), ["J-002"]),
        (Filters(vehicle="pickup"), []),
        (Filters(system="brakes"), ["J-001"]),
        (Filters(system="cooling"), []),
        (Filters(since=date(2026, 8, 3)), ["J-002"]),
        (Filters(since=date(2026, 8, 4)), []),
        (Filters(until=date(2026, 3, 2)), ["J-001"]),
        (Filters(until=date(2026, 3, 1)), []),
        (Filters("estate", "brakes", date(2026, 1, 1), date(2026, 12, 31)), ["J-001"]),
        (Filters("estate", "belt-drive"), []),
    ],
)
def test_only_what_is_kept_is_found_and_counted(
    two_cars: OldJobs, kept: Filters, numbers: list[str]
) -> None:
    found = find(two_cars.record, two_cars.words, two_cars.kinds, "brakes squeal", kept=kept)
    assert sorted(hit.number for hit in found.hits) == sorted(numbers)
    assert found.counted == len(numbers)
    assert sum(len(fix.jobs) for fix in found.fixes) == len(numbers)


def test_a_car_that_is_kept_out_is_not_found_by_its_plate_either(old_jobs: OldJobs) -> None:
    car = old_jobs.car("AB12 CDE", description="estate")
    old_jobs.job("stalls", car=car)
    kept = Filters(vehicle="coupe")
    assert find(old_jobs.record, old_jobs.words, old_jobs.kinds, "ab12cde", kept=kept).hits == ()


def test_a_filter_is_felt_at_once_when_the_job_changes(two_cars: OldJobs) -> None:
    kept = Filters(system="cooling")
    search = (two_cars.record, two_cars.words, two_cars.kinds, "brakes squeal")
    assert find(*search, kept=kept).hits == ()

    def work(deed: Deed) -> None:
        deed.change(Job, 1, system="cooling")

    two_cars.record.do("Another system", work)
    assert [hit.number for hit in find(*search, kept=kept).hits] == ["J-001"]


def test_an_empty_filter_keeps_nothing_out() -> None:
    assert not ALL_JOBS
    assert not Filters(vehicle=" ,- ")
    assert Filters(system="brakes")
    assert Filters(until=date(2026, 1, 1))


@pytest.mark.parametrize(
    ("description", "means"),
    [
        ("1.8-litre compact hatchback, 1990s", "compact hatchback"),
        ("2.0-litre diesel estate, 2010s", "diesel estate"),
        ("Pickup 2004", "pickup"),
        ("", ""),
        ("1.6", ""),
        ("the red one that belongs to the bakery", ""),
    ],
)
def test_a_vehicle_is_of_the_class_that_its_description_tells(description: str, means: str) -> None:
    assert vehicle_class(description) == means


def test_the_classes_of_the_shop_are_offered_the_commonest_first(old_jobs: OldJobs) -> None:
    for description in ("1.2-litre van, 1990s", "2.0-litre estate", "1.4-litre estate", ""):
        old_jobs.car(description=description)
    assert vehicle_classes(old_jobs.record) == ("estate", "van")

"""A plate that comes again: the same car or another one, and nothing known is overwritten."""

from __future__ import annotations

from datetime import date

import pytest

from desktop_app.repair_jobs import actions, odometer_actions, vehicle_actions
from desktop_app.repair_jobs.job_view import JobView, VehicleSeen
from desktop_app.repair_jobs.known_car import KnownCar, Typed, against_the_same, news_of
from desktop_app.repair_jobs.stored import Vehicle
from desktop_app.repair_jobs.stored_known_car import find_vehicle, jobs_beside, read_known_car
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.returns_watched.stored_facts import read_facts
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble

VIN = "1M8GDM9AXKP042788"
OTHER = "11111111111111111"
VAN = VehicleSeen(1, "", "KM 77", "", "2.2-litre van", "km")
TODAY = date(2026, 11, 16)


def take_in(shop: ShopRecord, plate: str = "KM 77", day: str = "2026-07-01", **said: object) -> int:
    values = {"odometer": 180_000, "odometer_unit": "km", "description": "2.2-litre van"} | said
    came = f"{day}T09:00:00+00:00"
    words = WriteUp("grinds in third", plate=plate, came_at=came, **values)  # type: ignore[arg-type]
    made = actions.write_up(shop, words).made
    assert made is not None
    return made


def job(shop: ShopRecord, job_id: int) -> JobView:
    with shop.reading() as connection:
        return read_job(connection, job_id)


def cars(shop: ShopRecord) -> list[str]:
    """Return the vehicle of each job as the returns see it, oldest job first."""
    with shop.reading() as connection:
        return [one.vehicle for one in sorted(read_facts(connection).jobs, key=lambda j: j.number)]


@pytest.mark.parametrize(
    ("typed", "says"),
    [
        (Typed("KM 77"), []),
        (Typed("km77", description="van"), []),
        (
            Typed("KM 77", description="1.2-litre city car"),
            ["written down as “2.2-litre van”; that stays"],
        ),
        (Typed("KM 77", vin=VIN), ["no whole VIN"]),
        (Typed("KM 77", vin=VIN[:9]), []),
        (Typed("KM 77", odometer="20,100 mi"), ["counted in km"]),
        (Typed("KM 77", odometer="180,400 km"), []),
    ],
)
def test_what_speaks_against_the_same_car(typed: Typed, says: list[str]) -> None:
    against = against_the_same(KnownCar(VAN), typed, odd_odometer=False)
    assert len(against) == len(says)
    assert all(part in said for part, said in zip(says, against, strict=True))


def test_its_own_vin_decides_alone() -> None:
    known = KnownCar(VehicleSeen(1, VIN, "KM 77", "", "van", "km"), sold_on=date(2026, 7, 10))
    typed = Typed("AB 1", VIN.lower(), "city car", "3 mi")
    assert against_the_same(known, typed, odd_odometer=True) == ()
    assert len(against_the_same(known, Typed("KM 77"), odd_odometer=True)) == 2


def test_what_is_known_stays_and_what_was_missing_is_added() -> None:
    typed = Typed("km-77", VIN, "city car")
    assert news_of(VAN, typed) == {"vin": VIN}
    bare = VehicleSeen(1, VIN, "", "", "", "mi")
    assert news_of(bare, Typed("AB 1", "", "city car")) == {
        "plate": "AB 1",
        "plate_key": "AB1",
        "description": "city car",
    }


def test_another_spelling_or_description_leaves_the_old_sheets_as_they_were(
    shop: ShopRecord,
) -> None:
    first = take_in(shop)
    take_in(shop, "km77", "2026-08-01", vehicle_id=1, description="1.2-litre city car")
    assert job(shop, first).vehicle.name == "KM 77 · 2.2-litre van"


def test_another_car_on_the_plate_has_a_row_and_a_unit_of_its_own(shop: ShopRecord) -> None:
    first = take_in(shop)
    new = {"description": "1.2-litre city car", "odometer": 20_100, "odometer_unit": "mi"}
    second = take_in(shop, "KM 77", "2026-11-02", another_than=1, vin=VIN, **new)
    old, city = job(shop, first).vehicle, job(shop, second).vehicle
    assert (old.description, old.vin, old.odometer_unit) == ("2.2-litre van", "", "km")
    assert (city.description, city.vin, city.odometer_unit) == ("1.2-litre city car", VIN, "mi")
    assert len(set(cars(shop))) == 2
    with shop.reading() as connection:
        assert find_vehicle(connection, "KM 77") == city.id
    shop.undo()
    shop.redo()
    assert len(set(cars(shop))) == 2


def test_without_a_no_a_vin_on_a_plate_that_had_none_is_joined(shop: ShopRecord) -> None:
    take_in(shop)
    take_in(shop, "KM 77", "2026-11-02", vin=VIN)
    assert len(set(cars(shop))) == 1


def test_a_vin_of_another_car_is_refused_on_a_known_one(shop: ShopRecord) -> None:
    take_in(shop, vin=VIN)
    with pytest.raises(ShopTrouble, match="another car's"):
        take_in(shop, vehicle_id=1, vin=OTHER)


@pytest.mark.parametrize("moved", [0, 1], ids=["the earlier visit", "the later visit"])
def test_a_visit_that_was_another_cars_is_moved_and_brought_back(
    shop: ShopRecord, moved: int
) -> None:
    jobs = [take_in(shop), take_in(shop, day="2026-08-01", vehicle_id=1)]
    assert len(set(cars(shop))) == 1
    vehicle_actions.say_another_car(shop, job(shop, jobs[moved]).visit_id)
    assert len(set(cars(shop))) == 2
    own = job(shop, jobs[moved]).vehicle
    assert (own.plate, own.description, own.odometer_unit) == ("KM 77", "", "km")
    with shop.reading() as connection:
        assert jobs_beside(connection, own.id, job(shop, jobs[moved]).visit_id) == ()
    shop.undo()
    assert len(set(cars(shop))) == 1
    assert job(shop, jobs[moved]).vehicle.description == "2.2-litre van"


def test_a_car_with_one_visit_cannot_be_parted_from_itself(shop: ShopRecord) -> None:
    first = take_in(shop)
    with pytest.raises(ShopTrouble, match="no other visit"):
        vehicle_actions.say_another_car(shop, job(shop, first).visit_id)


def test_what_is_known_of_a_car_is_said_in_a_line(shop: ShopRecord) -> None:
    take_in(shop, customer="J. Ferrow", phone="555-0142")
    odometer_actions.note_vehicle_event(shop, 1, "sold", "2026-07-10")
    with shop.reading() as connection:
        known = read_known_car(connection, 1)
    assert (known.customer, known.phone) == ("J. Ferrow", "555-0142")
    assert known.in_words(TODAY) == (
        "KM 77 · 2.2-litre van · no VIN known · last here on 1 July 2026, 138 days ago · "
        "sold on 10 July 2026"
    )
    take_in(shop, day="2026-09-01", vehicle_id=1)
    with shop.reading() as connection:
        assert read_known_car(connection, 1).sold_on is None  # it was taken for the same since


def test_the_car_seen_last_is_meant_by_a_plate(shop: ShopRecord) -> None:
    take_in(shop, vin=VIN)
    take_in(shop, day="2026-08-01", vin=OTHER)
    take_in(shop, day="2026-09-01", vehicle_id=1)
    with shop.reading() as connection:
        assert find_vehicle(connection, "KM 77") == 1
        assert find_vehicle(connection, "KM 77", OTHER) == 2
        assert find_vehicle(connection, "KM 77", VIN[:8]) == 1


def test_a_car_that_never_came_is_not_the_one_seen_last(shop: ShopRecord) -> None:
    take_in(shop)
    with shop.deed("Write a car down") as deed:
        deed.add(Vehicle, plate="KM 77", plate_key="KM77", odometer_unit="km")
    with shop.reading() as connection:
        assert find_vehicle(connection, "km 77") == 1


def test_a_vin_is_found_past_what_no_text_can_hold(shop: ShopRecord) -> None:
    take_in(shop, vin=VIN)
    with shop.reading() as connection:
        assert find_vehicle(connection, vin=f"{VIN[:9]}\x00{VIN[9:]}") == 1
        assert find_vehicle(connection, "\x00\udcff", "\x00\udcff") is None


def test_readings_keep_their_numbers_when_their_unit_is_mended(shop: ShopRecord) -> None:
    first = take_in(shop)
    vehicle_actions.count_in(shop, 1, "mi")
    seen = job(shop, first)
    assert (seen.odometer_in, seen.vehicle.odometer_unit) == (180_000, "mi")
    with pytest.raises(ShopTrouble, match="leagues"):
        vehicle_actions.count_in(shop, 1, "leagues")

"""A plate that comes again: the same car or another one, and nothing known is overwritten."""

from __future__ import annotations

from datetime import date

import pytest

from desktop_app.repair_jobs import actions, odometer_actions, vehicle_actions
from desktop_app.repair_jobs.job_view import JobView, VehicleSeen
from desktop_app.repair_jobs.known_car import (
    KnownCar,
    StillHere,
    Typed,
    against_the_same,
    news_of,
)
from desktop_app.repair_jobs.stored import Vehicle
from desktop_app.repair_jobs.stored_known_car import find_vehicle, jobs_beside, read_known_car
from desktop_app.repair_jobs.stored_reading import read_job, read_vehicle
from desktop_app.repair_jobs.stored_same_plate import same_plate_asked
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


@pytest.mark.parametrize(
    ("last_on", "says"),
    [
        (None, ""),
        (TODAY, " · last here on 16 November 2026, today"),
        (date(2026, 11, 15), " · last here on 15 November 2026, yesterday"),
        (date(2026, 11, 14), " · last here on 14 November 2026, 2 days ago"),
        (date(2026, 11, 17), " · last here on 17 November 2026"),
    ],
)
def test_the_last_visit_is_said_with_its_age_unless_it_is_still_to_come(
    last_on: date | None, says: str
) -> None:
    known = KnownCar(VehicleSeen(1, VIN, "", "grey box", "", "mi"), last_on)
    assert known.in_words(TODAY) == f"grey box · VIN ends 042788{says}"


@pytest.mark.parametrize(
    ("numbers", "says"),
    [
        (("J-101",), "J-101 was not handed over."),
        (("J-101", "J-102"), "J-101, J-102 were not handed over."),
    ],
)
def test_a_car_that_is_still_here_is_asked_about_before_it_is_taken_in_again(
    numbers: tuple[str, ...], says: str
) -> None:
    asked = StillHere(1, TODAY, numbers).question()
    assert asked == (
        f"This car is in the shop since 16 November 2026: {says} "
        "Is this another concern of that visit?"
    )


def test_another_plate_of_a_car_that_its_vin_tells_is_news_and_its_tag_too() -> None:
    known = VehicleSeen(1, VIN, "KM 77", "", "van", "mi")
    assert news_of(known, Typed("AB 1", VIN), tag=" red box ") == {
        "plate": "AB 1",
        "plate_key": "AB1",
        "tag": "red box",
    }
    tagged = VehicleSeen(1, VIN, "KM 77", "grey box", "van", "mi")
    assert news_of(tagged, Typed("KM 77", VIN, "city car"), tag="red box") == {}
    assert news_of(tagged, Typed("", VIN)) == {}  # no plate was typed: it keeps its own


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


def test_a_car_that_was_undone_meanwhile_is_not_taken_in_again(shop: ShopRecord) -> None:
    with pytest.raises(ShopTrouble, match="no longer there"):
        take_in(shop, vehicle_id=99)


def plate_asked(shop: ShopRecord, job_id: int) -> int | None:
    """Return the other row of which a job's page asks whether it is the same car."""
    seen = job(shop, job_id)
    with shop.reading() as connection:
        other = same_plate_asked(connection, seen)
    return None if other is None else other.vehicle.id


def test_of_each_other_row_with_its_plate_is_asked_until_somebody_answers(
    shop: ShopRecord,
) -> None:
    take_in(shop)
    take_in(shop, "km-77", day="2026-08-01", another_than=1)  # that was said when it was taken in
    third = take_in(shop, day="2026-09-01")
    assert plate_asked(shop, 2) == 3
    assert plate_asked(shop, third) == 1
    vehicle_actions.say_two_cars(shop, job(shop, third).visit_id, 1)
    assert plate_asked(shop, third) == 2
    vehicle_actions.say_one_car(shop, 3, 2)
    assert plate_asked(shop, third) is None
    one, two, three = cars(shop)
    assert one != two == three
    shop.undo()
    assert plate_asked(shop, third) == 2


def test_a_plate_is_not_asked_about_where_two_vins_tell_or_there_is_none(
    shop: ShopRecord,
) -> None:
    for vin, plate in ((VIN, "KM 77"), (OTHER, "KM 77"), ("", ""), ("", " - ")):
        asked = take_in(shop, plate, vin=vin, tag="grey box")
        assert plate_asked(shop, asked) is None
    bare = take_in(shop)
    assert plate_asked(shop, bare) == 1


def test_what_is_known_of_a_car_is_changed_and_its_plate_found_in_any_spelling(
    shop: ShopRecord,
) -> None:
    take_in(shop, vin=VIN)
    vehicle_actions.change_vehicle(shop, 1, vin=f" {OTHER.lower()} ", tag=" grey box ")
    vehicle_actions.change_vehicle(shop, 1, plate="ab-12", description=" ")
    with shop.reading() as connection:
        car = read_vehicle(connection, 1)
        assert find_vehicle(connection, "AB 12") == find_vehicle(connection, vin=OTHER) == 1
        assert find_vehicle(connection, "KM 77") is None
    assert (car.vin, car.plate, car.tag, car.description) == (OTHER, "ab-12", "grey box", "")
    vehicle_actions.change_vehicle(shop, 1, vin="", plate=" ", tag="")
    with shop.reading() as connection:
        assert read_vehicle(connection, 1).name == "no plate"
        assert find_vehicle(connection, "ab 12") is None

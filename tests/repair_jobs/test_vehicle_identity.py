"""When two records mean one vehicle."""

from __future__ import annotations

import pytest

from desktop_app.repair_jobs.vehicle_identity import VehicleNames, same_vehicle, vehicle_keys

VIN = "1M8GDM9AXKP042788"
OTHER = "11111111111111111"


@pytest.mark.parametrize(
    ("one", "other", "says"),
    [
        (VehicleNames(VIN, "AB 12"), VehicleNames(VIN.lower(), "XY 9"), "same"),
        (VehicleNames("IM8GDM9AXKPO42788"), VehicleNames(VIN), "same"),
        (VehicleNames(VIN, "AB 12"), VehicleNames(OTHER, "AB 12"), "different"),
        (VehicleNames("", "ab-12"), VehicleNames("", "AB 12"), "same"),
        (VehicleNames("", "AB 12"), VehicleNames(VIN, "ab12"), "ask"),
        (VehicleNames("", "AB 12"), VehicleNames(VIN, ""), "different"),
        (VehicleNames("", ""), VehicleNames("", ""), "different"),
        (VehicleNames("KP042788"), VehicleNames("kp042788"), "same"),
        (VehicleNames("KP042788", "AB 12"), VehicleNames("KP042788"), "different"),
    ],
)
def test_the_vin_decides_and_else_the_plate(
    one: VehicleNames, other: VehicleNames, says: str
) -> None:
    assert same_vehicle(one, other) == says
    assert same_vehicle(other, one) == says


def test_without_a_plate_what_was_written_as_the_vin_tells_one_car_from_another() -> None:
    part, other = VehicleNames("kp 042788"), VehicleNames("X1")
    assert vehicle_keys([part, VehicleNames("KP042788"), other]) == (
        "as written:KP042788",
        "as written:KP042788",
        "as written:X1",
    )
    assert same_vehicle(part, other) == "different"


def test_a_vin_seen_later_takes_the_plate_along_until_someone_says_no() -> None:
    occasions = [VehicleNames("", "AB 12"), VehicleNames(VIN, "AB 12"), VehicleNames("", "AB 12")]
    assert set(vehicle_keys(occasions)) == {f"vin:{VIN}"}
    refused = frozenset({("AB12", VIN)})
    assert vehicle_keys(occasions, refused) == ("plate:AB12", f"vin:{VIN}", "plate:AB12")


def test_two_vehicles_on_one_plate_are_kept_apart_whoever_came_first() -> None:
    plain = [VehicleNames("", "AB 12")] * 3
    first, second, third = vehicle_keys(plain, apart=frozenset({(1, 0)}))
    assert first == "plate:AB12"
    assert second == third != first  # who comes later goes with whom the plate has now
    with_vin = [VehicleNames("", "AB 12"), VehicleNames(VIN, "ab12"), VehicleNames("", "AB 12")]
    assert vehicle_keys(with_vin, apart=frozenset({(0, 1)})) == (
        "plate:AB12",
        f"vin:{VIN}",
        f"vin:{VIN}",
    )


def test_a_plate_that_changed_hands_follows_the_vin_last_seen_on_it() -> None:
    occasions = [
        VehicleNames(VIN, "AB 12"),
        VehicleNames("", "AB 12"),
        VehicleNames(OTHER, "AB 12"),
        VehicleNames("", "AB 12"),
    ]
    assert vehicle_keys(occasions) == (f"vin:{VIN}",) * 2 + (f"vin:{OTHER}",) * 2

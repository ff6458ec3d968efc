"""A deed is one transaction with its entry; undo and redo bring back exactly what was."""

from __future__ import annotations

import pytest
from sqlalchemy import select

from desktop_app.repair_jobs.stored import Person, Vehicle
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.tables import HistoryEntry
from desktop_app.shop_record.trouble import ShopTrouble
from tests.past_any_deed import past_any_deed


def plates(shop: ShopRecord) -> list[str | None]:
    with shop.reading() as connection:
        return list(connection.execute(select(Vehicle.plate).order_by(Vehicle.id)).scalars())


def entries(shop: ShopRecord) -> int:
    with shop.reading() as connection:
        return len(connection.execute(select(HistoryEntry.seq)).all())


def add(shop: ShopRecord, plate: str) -> int:
    done = shop.do("Add a car", lambda d: d.add(Vehicle, plate=plate, odometer_unit="mi") and None)
    assert done.made is not None
    return done.made


def test_a_deed_says_what_it_touched_and_what_it_made(shop: ShopRecord) -> None:
    done = shop.do("Add a car", lambda d: d.add(Vehicle, plate="A 1", odometer_unit="mi") and None)
    assert done.words == "Add a car"
    assert done.touched == {"vehicle"}
    assert done.made == 1
    assert done.seq == 1


def test_a_deed_that_changes_nothing_leaves_no_entry(shop: ShopRecord) -> None:
    car = add(shop, "A 1")
    done = shop.do("Change the car", lambda d: d.change(Vehicle, car, plate="A 1"))
    assert done.seq is None
    assert entries(shop) == 1
    assert shop.can_undo() == "Add a car"


def test_a_deed_that_fails_leaves_nothing(shop: ShopRecord) -> None:
    def work(deed: Deed) -> None:
        deed.add(Vehicle, plate="A 1", odometer_unit="mi")
        raise ShopTrouble("no")

    with pytest.raises(ShopTrouble):
        shop.do("Add a car", work)
    assert plates(shop) == []
    assert entries(shop) == 0


def test_undo_and_redo_name_the_deed_and_reach_over_closing(shop: ShopRecord) -> None:
    car = add(shop, "A 1")
    shop.do("Change the car", lambda d: d.change(Vehicle, car, plate="B 2"))
    assert shop.can_undo() == "Change the car"
    assert shop.undo().words == "Change the car"
    assert plates(shop) == ["A 1"]
    assert shop.can_redo() == "Change the car"
    shop.redo()
    assert plates(shop) == ["B 2"]
    shop.undo()
    shop.undo()
    assert plates(shop) == []
    assert shop.can_undo() is None
    shop.redo()
    assert plates(shop) == ["A 1"]


def test_an_entry_that_is_not_there_cannot_be_taken_back(shop: ShopRecord) -> None:
    with pytest.raises(ShopTrouble, match="There is no entry 7 in the history"):
        shop.take_back(7)


def test_a_new_deed_ends_redo(shop: ShopRecord) -> None:
    add(shop, "A 1")
    shop.undo()
    add(shop, "B 2")
    assert shop.can_redo() is None
    with pytest.raises(ShopTrouble, match="nothing to redo"):
        shop.redo()


def test_a_removed_row_comes_back_under_its_own_id(shop: ShopRecord) -> None:
    car = add(shop, "A 1")
    shop.do("Take it out", lambda d: d.remove(Vehicle, car))
    shop.undo()
    with shop.reading() as connection:
        assert connection.execute(select(Vehicle.id, Vehicle.plate)).all() == [(car, "A 1")]


def test_undo_is_refused_where_someone_changed_the_value_since(shop: ShopRecord) -> None:
    car = add(shop, "A 1")
    shop.do("Change the car", lambda d: d.change(Vehicle, car, plate="B 2"))
    with past_any_deed(shop) as other:
        other.exec_driver_sql("UPDATE vehicle SET plate = 'C 3'")
    with pytest.raises(ShopTrouble, match="changed it since"):
        shop.undo()
    assert plates(shop) == ["C 3"]


def test_a_row_that_something_hangs_on_is_not_taken_away_by_undo(shop: ShopRecord) -> None:
    add(shop, "A 1")
    with past_any_deed(shop) as other:
        other.exec_driver_sql(
            "INSERT INTO vehicle_event (vehicle_id, kind, happened_on, note) "
            "VALUES (1, 'sold', '2026-01-01', '')"
        )
    with pytest.raises(ShopTrouble, match="hangs on it"):
        shop.undo()
    assert plates(shop) == ["A 1"]


def test_a_row_that_is_gone_is_said_in_words(shop: ShopRecord) -> None:
    with pytest.raises(ShopTrouble, match="no longer there"):
        shop.do("Change", lambda d: d.change(Person, 99, name="X"))


def test_the_entry_says_who_and_when(shop: ShopRecord) -> None:
    shop.who = "Odile"
    add(shop, "A 1")
    with shop.reading() as connection:
        entry = connection.execute(select(HistoryEntry.who, HistoryEntry.at)).one()
    assert entry.who == "Odile"
    assert entry.at == shop.clock().isoformat(timespec="seconds")


def test_followers_hear_of_deeds_and_of_undo(shop: ShopRecord) -> None:
    heard: list[tuple[str, bool]] = []
    shop.followers.append(
        lambda _c, changes: heard.extend((one.table, one.after is None) for one in changes)
    )
    add(shop, "A 1")
    shop.undo()
    assert heard == [("vehicle", False), ("vehicle", True)]

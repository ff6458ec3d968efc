"""One look at a record: what a page asks in many places is read in one go."""

from __future__ import annotations

import threading

import pytest
from sqlalchemy import Connection, func, select
from sqlalchemy.exc import DBAPIError

from desktop_app.repair_jobs.stored import Person
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble


def connection_of(shop: ShopRecord) -> Connection:
    """What one question is asked on."""
    with shop.reading() as connection:
        return connection


def people(shop: ShopRecord) -> int:
    with shop.reading() as connection:
        found = connection.execute(select(func.count(Person.id))).scalar_one()
    return int(found)


def ask_for_what_is_gone(shop: ShopRecord) -> None:
    with shop.reading() as connection:
        connection.execute(select(Person.id)).all()
        raise ShopTrouble("That pair is not in the record any more.")


def test_what_is_asked_within_a_look_is_asked_on_one_connection(shop: ShopRecord) -> None:
    with shop.one_look():
        first = connection_of(shop)
        with shop.one_look():
            assert connection_of(shop) is first
        assert connection_of(shop) is first
        assert not first.closed
    assert first.closed
    assert connection_of(shop) is not first


def test_another_thread_reads_for_itself(shop: ShopRecord) -> None:
    found: list[Connection] = []
    with shop.one_look():
        ours = connection_of(shop)
        other = threading.Thread(target=lambda: found.append(connection_of(shop)))
        other.start()
        other.join()
        assert found[0] is not ours
        assert found[0].closed


def test_a_deed_within_a_look_waits_for_nobody_and_is_seen_after_it(shop: ShopRecord) -> None:
    with shop.one_look():
        assert people(shop) == 0
        with shop.deed("Add Ana") as deed:
            deed.add(Person, name="Ana")
        assert people(shop) == 1


def test_after_a_question_that_failed_the_next_one_is_asked_anew(shop: ShopRecord) -> None:
    with shop.one_look():
        first = connection_of(shop)
        with pytest.raises(ShopTrouble), shop.reading():
            raise ShopTrouble("This can't be read.")
        assert connection_of(shop) is not first
        assert people(shop) == 0
    assert first.closed


def test_a_statement_that_is_refused_leaves_the_look_to_the_others(shop: ShopRecord) -> None:
    with shop.one_look():
        with pytest.raises((ShopTrouble, DBAPIError)), shop.reading() as connection:
            connection.exec_driver_sql("SELECT gone FROM nowhere")
        assert people(shop) == 0


def test_however_many_questions_fail_each_gives_back_what_it_asked_on(shop: ShopRecord) -> None:
    with shop.one_look():
        for _ in range(20):  # more than there are connections
            with pytest.raises((ShopTrouble, DBAPIError)), shop.reading() as connection:
                connection.exec_driver_sql("SELECT gone FROM nowhere")
        assert people(shop) == 0


def test_what_failed_within_a_look_holds_up_nobody_who_writes(shop: ShopRecord) -> None:
    def add() -> None:
        with shop.deed("Add Ana") as deed:
            deed.add(Person, name="Ana")

    with shop.one_look():
        assert people(shop) == 0
        with pytest.raises(ShopTrouble):
            ask_for_what_is_gone(shop)
        writer = threading.Thread(target=add)
        writer.start()
        writer.join()
        assert people(shop) == 1


def test_a_question_within_one_that_goes_on_ends_nothing(shop: ShopRecord) -> None:
    with shop.one_look(), shop.reading() as outer:
        with pytest.raises(ShopTrouble), shop.reading():
            raise ShopTrouble("This can't be read.")
        assert outer.execute(select(func.count(Person.id))).scalar_one() == 0

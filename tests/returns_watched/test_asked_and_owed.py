"""Customers that were asked, and money that suppliers owe: kept, ended, refused, undone."""

from __future__ import annotations

from datetime import date
from typing import Any

import pytest

from desktop_app.parts_compared.stored import Pair
from desktop_app.returns_watched import customer_actions, money_owed_actions
from desktop_app.returns_watched.customer_answers import Answer, CustomerSaid, odometer_question
from desktop_app.returns_watched.owed import Owed, State, What, still_owed_cents
from desktop_app.returns_watched.stored_customers_asked import (
    answers_of_job,
    read_answers,
    told_odometers,
)
from desktop_app.returns_watched.stored_money_owed import (
    money_still_owed,
    owed_for_job,
    parts_of_job,
)
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from tests.watched_shop import a_week_of_returns, as_made, job, vehicle

TODAY = date(2026, 11, 16)


@pytest.fixture
def gone(shop: ShopRecord) -> int:
    return a_week_of_returns(shop)["J-104"]


def _said(shop: ShopRecord, job_id: int) -> tuple[CustomerSaid, ...]:
    with shop.reading() as connection:
        return answers_of_job(connection, job_id)


def _owed(shop: ShopRecord, job_id: int) -> tuple[Owed, ...]:
    with shop.reading() as connection:
        return owed_for_job(connection, job_id)


@pytest.mark.parametrize("answer", list(Answer))
def test_each_answer_is_kept_with_who_and_when(shop: ShopRecord, gone: int, answer: Answer) -> None:
    shop.who = "Ana"
    done = customer_actions.note_answer(
        shop, gone, answer, odometer_told=119_000, words=" runs well "
    )
    assert _said(shop, gone) == (
        CustomerSaid(done.made or 0, gone, TODAY, answer, 119_000, "runs well", "Ana"),
    )
    shop.undo()
    assert _said(shop, gone) == ()


def test_answers_are_changed_and_taken_out_and_come_back(shop: ShopRecord, gone: int) -> None:
    made = customer_actions.note_answer(shop, gone, "not reached", on=date(2026, 11, 3)).made or 0
    customer_actions.note_answer(shop, gone, "fine")
    customer_actions.change_answer(shop, made, "same trouble")
    customer_actions.write_told_odometer(shop, made, 118_900)
    customer_actions.write_answer_words(shop, made, " again in the rain ")
    first, second = _said(shop, gone)
    assert (first.answer, first.odometer_told, first.words) == (
        Answer.SAME_TROUBLE,
        118_900,
        "again in the rain",
    )
    assert second.answer is Answer.FINE
    customer_actions.take_answer_out(shop, made)
    assert [one.answer for one in _said(shop, gone)] == [Answer.FINE]
    shop.undo()
    with shop.reading() as connection:
        assert read_answers(connection, None)[gone] == (first, second)


@pytest.mark.parametrize(
    ("ask", "says"),
    [
        (lambda s, j: customer_actions.note_answer(s, j, "happy"), "fine, same trouble"),
        (lambda s, j: customer_actions.note_answer(s, 99, "fine"), "no longer there"),
        (
            lambda s, j: customer_actions.note_answer(s, j, "fine", on=date(2026, 9, 1)),
            "2026-09-02 to 2026-11-16",
        ),
        (
            lambda s, j: customer_actions.note_answer(s, j, "fine", on=date(2026, 11, 17)),
            "2026-09-02 to 2026-11-16",
        ),
    ],
)
def test_what_cannot_have_been_said_is_refused(
    shop: ShopRecord, gone: int, ask: Any, says: str
) -> None:
    with pytest.raises(ShopTrouble, match=says):
        ask(shop, gone)
    assert _said(shop, gone) == ()


def test_no_odometer_was_told_below_nothing(shop: ShopRecord, gone: int) -> None:
    with pytest.raises(ShopTrouble, match="odometer reading is not accepted"):
        customer_actions.note_answer(shop, gone, "fine", odometer_told=-3)
    asked = customer_actions.note_answer(shop, gone, "fine").made
    assert asked is not None
    with pytest.raises(ShopTrouble, match="odometer reading is not accepted"):
        customer_actions.write_told_odometer(shop, asked, -7)
    with shop.reading() as connection:
        assert [one.odometer_told for one in answers_of_job(connection, gone)] == [None]


@pytest.mark.parametrize("mended", [None, 0, 1])
def test_of_two_odometers_told_on_one_day_the_last_one_holds(
    shop: ShopRecord, gone: int, mended: int | None
) -> None:
    told = [
        as_made(customer_actions.note_answer(shop, gone, "fine", on=TODAY, odometer_told=miles))
        for miles in (119_000, 119_500)
    ]
    customer_actions.note_answer(shop, gone, "fine", on=date(2026, 11, 3), odometer_told=118_900)
    if mended is not None:  # a row that is written again may be read in another place
        customer_actions.write_answer_words(shop, told[mended], "misheard")
    with shop.reading() as connection:
        [last] = told_odometers(connection, [gone], TODAY).values()
        [before] = told_odometers(connection, [gone], date(2026, 11, 15)).values()
    assert (last.on, last.value, last.source) == (TODAY, 119_500, "told")
    assert (before.on, before.value) == (date(2026, 11, 3), 118_900)


def test_nobody_is_asked_about_a_car_that_is_still_here(shop: ShopRecord) -> None:
    here = job(shop, vehicle(shop), "J-1", "2026-11-10")
    with pytest.raises(ShopTrouble, match="still in the shop"):
        customer_actions.note_answer(shop, here, "fine")


def test_three_answers_speak_of_the_car() -> None:
    assert [a.value for a in Answer if not a.speaks_of_the_car] == ["not reached", "car is gone"]


def test_a_told_odometer_below_the_hand_over_is_asked_about() -> None:
    assert odometer_question(118_000, 118_420, "mi") == (
        "Lower than when the car was here (118,420 mi). Was it heard right?"
    )
    assert odometer_question(118_420, 118_420, "mi") is None
    assert odometer_question(None, 118_420, "km") is None
    assert odometer_question(5, None, "km") is None


def test_money_is_owed_until_it_is_paid_or_refused(shop: ShopRecord, gone: int) -> None:
    with shop.deed("Name the part") as deed:
        deed.change(Pair, 1, supplier="Tin Supply", position="top")
    with shop.reading() as connection:
        assert parts_of_job(connection, gone) == ((1, "distributor rotor, top", "Tin Supply"),)
    made = money_owed_actions.write_owed(shop, 1, "core").made or 0
    money_owed_actions.write_owed(shop, 1, "claim", 12_000)
    money_owed_actions.write_owed_amount(shop, made, 3_500)
    money_owed_actions.write_next_step(shop, made, " send it back ")
    core, claim = _owed(shop, gone)
    assert core == Owed(
        made,
        1,
        "J-104",
        "distributor rotor, top",
        "Tin Supply",
        What.CORE,
        3_500,
        TODAY,
        State.OPEN,
        "send it back",
    )
    assert still_owed_cents((core, claim)) == (15_500, 0)
    money_owed_actions.set_owed_state(shop, made, "paid")
    assert _owed(shop, gone)[0].ended_on == TODAY
    with shop.reading() as connection:
        assert [one.what for one in money_still_owed(connection)] == [What.CLAIM]
    money_owed_actions.set_owed_state(shop, made, "asked")
    assert _owed(shop, gone)[0].ended_on is None
    shop.undo()
    assert _owed(shop, gone)[0].state is State.PAID
    money_owed_actions.take_owed_out(shop, made)
    assert [one.what for one in _owed(shop, gone)] == [What.CLAIM]


def test_an_amount_that_nobody_knows_is_counted_as_such() -> None:
    one = Owed(1, 1, "J-1", "rotor", "", What.CORE, None, date(2026, 11, 1), State.ASKED)
    assert still_owed_cents([one]) == (0, 1)
    assert one.days_open(TODAY) == 15


@pytest.mark.parametrize(
    ("owe", "says"),
    [
        (lambda s: money_owed_actions.write_owed(s, 1, "beer"), "core, claim"),
        (lambda s: money_owed_actions.write_owed(s, 1, "core", -1), "1,000,000.00"),
        (lambda s: money_owed_actions.write_owed(s, 99, "core"), "no longer there"),
        (lambda s: money_owed_actions.set_owed_state(s, 1, "soon"), "open, asked, paid, refused"),
        (lambda s: money_owed_actions.set_owed_state(s, 1, "paid"), "no longer there"),
    ],
)
def test_what_cannot_be_owed_is_refused(shop: ShopRecord, gone: int, owe: Any, says: str) -> None:
    with pytest.raises(ShopTrouble, match=says):
        owe(shop)
    assert _owed(shop, gone) == ()

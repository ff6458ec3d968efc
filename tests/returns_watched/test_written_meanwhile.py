"""What another desk wrote is not written over by a deed that was done on what a page showed."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

import pytest

from desktop_app.parts_compared.actions import lay_side_by_side
from desktop_app.repair_jobs import actions, odometer_actions, proof_actions
from desktop_app.repair_jobs.provocation import read_provoked
from desktop_app.repair_jobs.road_test import FaultEvery
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.returns_watched import customer_actions, money_owed_actions, window_actions
from desktop_app.returns_watched.kind_windows import Promise
from desktop_app.shop_record.past.history import last_number
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.written_meanwhile import Shown, WrittenMeanwhile

CAME, LEFT = "2026-11-11T09:00:00+00:00", "2026-11-12T09:00:00+00:00"


@dataclass
class Place:
    """A place on a page: the deed that writes it, what it held, theirs, mine, theirs in words."""

    write: Callable[..., Any]
    before: Any
    theirs: Any
    mine: Any
    told: str


def gone(shop: ShopRecord) -> None:
    """The car of the first job has left; its customer was asked, a core is owed."""
    lay_side_by_side(shop, 1, "alternator")
    actions.hand_over(shop, 1, 100_050, (), LEFT)
    customer_actions.note_answer(shop, 1, "fine")
    money_owed_actions.write_owed(shop, 1, "core", None)


def every(shop: ShopRecord, value: FaultEvery | None, **shown: Any) -> None:
    number, unit = (None, "km") if value is None else (value.number, value.unit)
    proof_actions.say_fault_every(shop, 1, number, unit, **shown)  # type: ignore[arg-type]


def odometer(shop: ShopRecord, value: tuple[int | None, str | None], **shown: Any) -> None:
    odometer_actions.change_odometer(shop, 1, value[0], value[1] or "", **shown)


PROMISES = (Promise(months=12), Promise(months=24), Promise(days=90))
HERE: dict[str, Place] = {
    "concern": Place(
        lambda s, v, **k: actions.write_concern(s, 1, v, **k), "misses", "in rain", "cold", "“in"
    ),
    "cause": Place(lambda s, v, **k: actions.name_cause(s, 1, v, **k), "", "rotor", "cap", "“rot"),
    "correction": Place(
        lambda s, v, **k: actions.write_correction(s, 1, v, **k), "", "rotor on", "x", "“rotor on”"
    ),
    "declined": Place(
        lambda s, v, **k: actions.say_declined(s, 1, v or "", **k), None, "tyres", "y", "“tyres”"
    ),
    "hours": Place(
        lambda s, v, **k: actions.write_hours(s, 1, v, False, **k), None, 1.5, 2.0, ": 1.5."
    ),
    "price": Place(
        lambda s, v, **k: actions.write_price(s, 1, v, **k), None, 123_450, 5, "1,234.50"
    ),
    "odometer in": Place(odometer, (100_000, None), (100_900, None), (100_100, None), ": 100,900."),
    "odometer unread": Place(odometer, (100_000, None), (None, "dead"), (100_100, None), "“dead”"),
    "driven": Place(
        lambda s, v, **k: proof_actions.write_distance(s, 1, v, **k), None, 42.0, 5.0, ": 42."
    ),
    "once in": Place(every, None, FaultEvery(40, "km"), FaultEvery(5, "days"), "40 kilometres"),
    "tried": Place(
        lambda s, v, **k: proof_actions.write_tried(s, 1, v, **k), "", "wet hill", "dry", "“wet"
    ),
    "self-tests": Place(
        lambda s, v, **k: proof_actions.type_self_tests(s, 1, "found", v, **k),
        *("", "8107E500", "0007E500", "“8107E500”"),
    ),
    "provoked": Place(
        lambda s, v, **k: proof_actions.write_provoked(s, 1, v, **k),
        None,
        read_provoked("37 in 10 min, then 0 in 10 min"),
        read_provoked("30 in 10 min, then 0 in 10 min"),
        "37 in 10 min",
    ),
    "kind's promise": Place(
        lambda s, v, **k: window_actions.promise_for_kind(s, "battery", v, **k),
        None,
        *PROMISES[1:],
        "24 calendar months",
    ),
    "shop's promise": Place(
        lambda s, v, **k: window_actions.promise_of_shop(s, v, **k),
        Promise(days=90, miles=3000),
        *PROMISES[:2],
        "12 calendar months",
    ),
}
GONE: dict[str, Place] = {
    "odometer out": Place(
        lambda s, v, **k: odometer_actions.change_odometer_out(s, 1, v, **k),
        *(100_050, 100_060, 100_070, ": 100,060."),
    ),
    "told odometer": Place(
        lambda s, v, **k: customer_actions.write_told_odometer(s, 1, v, **k),
        *(None, 100_200, 100_300, ": 100,200."),
    ),
    "customer's words": Place(
        lambda s, v, **k: customer_actions.write_answer_words(s, 1, v, **k),
        *("", "runs well", "hm", "“runs well”"),
    ),
    "amount": Place(
        lambda s, v, **k: money_owed_actions.write_owed_amount(s, 1, v, **k),
        *(None, 4500, 5000, ": 45.00."),
    ),
    "next step": Place(
        lambda s, v, **k: money_owed_actions.write_next_step(s, 1, v, **k),
        *("", "send it", "ask", "“send it”"),
    ),
}


@pytest.mark.parametrize("name", [*HERE, *GONE])
def test_the_second_desk_is_told_and_nothing_is_written_over(shop: ShopRecord, name: str) -> None:
    actions.write_up(shop, WriteUp("misses", plate="TH 1", odometer=100_000, came_at=CAME))
    if name in GONE:
        gone(shop)
    place = {**HERE, **GONE}[name]
    place.write(shop, place.theirs)
    with shop.reading() as connection:
        last = last_number(connection)
    with pytest.raises(WrittenMeanwhile) as refused:
        place.write(shop, place.mine, shown=Shown(place.before))
    assert place.told in refused.value.what
    with shop.reading() as connection:
        assert last_number(connection) == last
    place.write(shop, place.theirs, shown=Shown(place.before))  # both wrote the same
    place.write(shop, place.mine, shown=Shown(place.theirs))  # it was seen, and mine holds
    with shop.reading() as connection:
        assert last_number(connection) == last + 1

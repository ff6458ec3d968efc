"""Promises by shop, part kind and job: months counted out, the longest one, and what is kept."""

from __future__ import annotations

from datetime import date, timedelta
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from sqlalchemy import select

from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.actions import hand_over, write_up
from desktop_app.repair_jobs.stored import Job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.returns_watched.kind_windows import (
    Promise,
    Promised,
    promise_of,
    promise_words,
    promised,
)
from desktop_app.returns_watched.month_end import days_of_months, months_after
from desktop_app.returns_watched.stored_standing import read_standing
from desktop_app.returns_watched.stored_windows import (
    promise_at_hand_over,
    read_kind_windows,
    shop_promise,
)
from desktop_app.returns_watched.window import Window
from desktop_app.returns_watched.window_actions import (
    change_window,
    promise_for_kind,
    promise_of_shop,
)
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.house_rules import change_rule, read_rules
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.weekly_report.figures import ShopWords
from tests.watched_shop import job, vehicle

SHOP = Promise(days=90, miles=3000)
OUT = date(2026, 11, 10)


@pytest.mark.parametrize(
    ("day", "months", "ends"),
    [
        # Regulation (EEC, Euratom) 1182/71, Article 3 (2) (c), from memory: the same date, or the
        # last day of a month that has no such date.
        (date(2026, 1, 31), 1, date(2026, 2, 28)),
        (date(2024, 1, 31), 1, date(2024, 2, 29)),
        (date(2026, 1, 28), 1, date(2026, 2, 28)),
        (date(2026, 3, 31), 1, date(2026, 4, 30)),
        (date(2026, 2, 28), 1, date(2026, 3, 28)),
        (date(2024, 2, 29), 12, date(2025, 2, 28)),
        (date(2024, 2, 29), 48, date(2028, 2, 29)),
        (date(2026, 12, 15), 1, date(2027, 1, 15)),
        (date(2026, 11, 30), 3, date(2027, 2, 28)),
        (date(9999, 12, 1), 1, date.max),
    ],
)
def test_months_end_on_the_same_date_or_the_last_day_of_the_month(
    day: date, months: int, ends: date
) -> None:
    assert months_after(day, months) == ends


@given(st.dates(date(1990, 1, 1), date(2090, 12, 31)), st.integers(1, 60), st.integers(1, 60))
def test_more_months_never_end_sooner_and_none_is_skipped(day: date, some: int, more: int) -> None:
    end = months_after(day, some)
    assert (end.year * 12 + end.month) - (day.year * 12 + day.month) == some
    assert end.day == day.day or (end.day < day.day and (end + timedelta(days=1)).day == 1)
    assert months_after(day, some + more) > end
    assert 28 * some <= days_of_months(day, some) <= 31 * some


@pytest.mark.parametrize(
    ("kinds", "by_kind", "expected"),
    [
        ([], {}, Promised(Window(90, 3000), None, "shop")),
        (["rotor"], {}, Promised(Window(90, 3000), None, "shop")),
        (
            ["rotor"],
            {"rotor": Promise(months=12, miles=12_000)},
            Promised(Window(365, 12_000), 12, "part kind rotor"),
        ),
        # A shorter promise of a kind counts where all parts are of it …
        (["bulb"], {"bulb": Promise(days=30)}, Promised(Window(30, 0), None, "part kind bulb")),
        # … and not where another part has the shop's longer one.
        (
            ["bulb", "rotor"],
            {"bulb": Promise(days=30)},
            Promised(Window(90, 3000), None, "shop"),
        ),
        (
            ["bulb", "rotor"],
            {"bulb": Promise(days=30), "rotor": Promise(months=24)},
            Promised(Window(731, 0), 24, "part kind rotor"),
        ),
        # 24 months over 29 February 2028. Without a limit in time it is longer than any with one.
        (
            ["bulb", "rotor"],
            {"bulb": Promise(miles=5000), "rotor": Promise(months=24)},
            Promised(Window(0, 5000), None, "part kind bulb"),
        ),
        (
            ["bulb", "rotor"],
            {"bulb": Promise(days=90, miles=6000), "rotor": Promise(days=90, miles=3000)},
            Promised(Window(90, 6000), None, "part kind bulb"),
        ),
    ],
)
def test_the_longest_promise_counts(
    kinds: list[str], by_kind: dict[str, Promise], expected: Promised
) -> None:
    assert promised(OUT, kinds, by_kind, SHOP) == expected


@pytest.mark.parametrize(
    ("values", "says"),
    [
        ({}, "without any limit"),
        ({"days": 90, "months": 3}, "Days or months"),
        ({"days": 0}, "0 days"),
        ({"months": 121}, "121 months"),
        ({"miles": 200_001}, "200001 miles"),
    ],
)
def test_a_promise_that_cannot_be_kept_is_refused(values: dict[str, Any], says: str) -> None:
    with pytest.raises(ShopTrouble, match=says):
        Promise(**values)


@pytest.mark.parametrize(
    ("promise", "words"),
    [
        (Promise(months=1), "1 calendar month"),
        (
            Promise(months=24, miles=12_000),
            "24 calendar months or 12,000 miles, whichever ends first",
        ),
        (Promise(days=90, miles=1, rule="both"), "90 days and 1 mile, until both have ended"),
    ],
)
def test_a_promise_is_said_in_words(promise: Promise, words: str) -> None:
    assert promise.in_words() == words


def _window(shop: ShopRecord, job_id: int) -> tuple[Any, ...]:
    with shop.reading() as connection:
        return tuple(
            connection.execute(
                select(
                    Job.window_days,
                    Job.window_miles,
                    Job.window_rule,
                    Job.window_months,
                    Job.window_from,
                ).where(Job.id == job_id)
            ).one()
        )


def _leaves(shop: ShopRecord, job_id: int, on: str = "2026-01-31") -> None:
    hand_over(shop, job_id, left_at=f"{on}T16:00:00+00:00", promise=promise_at_hand_over)


def test_a_job_keeps_the_window_that_it_was_handed_over_with(shop: ShopRecord) -> None:
    promise_for_kind(shop, "distributor-rotor", Promise(months=1, miles=5000))
    car = vehicle(shop)
    one = job(shop, car, "J-1", "2026-01-30", kinds=["distributor-rotor"])
    _leaves(shop, one)
    given_then = (28, 5000, "first", 1, "part kind distributor-rotor")
    assert _window(shop, one) == given_then
    promise_for_kind(shop, "distributor-rotor", Promise(days=10))
    change_rule(shop, "window_days", 30)
    assert _window(shop, one) == given_then
    with shop.reading() as connection:
        said = read_standing(connection, one, date(2026, 2, 1)).promise
    assert said == "It is the promise for distributor rotor, said as 1 calendar month."
    two = job(shop, car, "J-2", "2026-02-10")
    _leaves(shop, two, "2026-02-10")
    assert _window(shop, two) == (30, 3000, "first", None, "shop")


def test_a_hand_over_undone_takes_its_window_back(shop: ShopRecord) -> None:
    promise_for_kind(shop, "distributor-rotor", Promise(months=12))
    one = job(shop, vehicle(shop), "J-1", "2026-01-30", kinds=["distributor-rotor"])
    before = _window(shop, one)
    _leaves(shop, one)
    assert _window(shop, one) != before
    shop.undo()
    assert _window(shop, one) == before


def test_what_was_given_to_a_job_alone_stays(shop: ShopRecord) -> None:
    promise_for_kind(shop, "distributor-rotor", Promise(months=12))
    one = job(shop, vehicle(shop), "J-1", "2026-01-30", kinds=["distributor-rotor"])
    change_window(shop, one, "", 6000, "first")
    _leaves(shop, one)
    assert _window(shop, one) == (0, 6000, "first", None, "job")


def test_a_part_that_was_not_fitted_promises_nothing(shop: ShopRecord) -> None:
    promise_for_kind(shop, "distributor-rotor", Promise(months=12))
    one = job(shop, vehicle(shop), "J-1", "2026-01-30", kinds=["distributor-rotor"])
    with shop.deed("Stop the part") as deed:
        deed.change(Pair, 1, fitted=0)
    _leaves(shop, one)
    assert _window(shop, one) == (90, 3000, "first", None, "shop")


def test_a_kinds_promise_can_be_changed_and_taken_back(shop: ShopRecord) -> None:
    promise_for_kind(shop, "alternator", Promise(months=12))
    promise_for_kind(shop, "alternator", Promise(months=24, miles=24_000))
    with shop.reading() as connection:
        assert read_kind_windows(connection) == {"alternator": Promise(months=24, miles=24_000)}
    promise_for_kind(shop, "alternator", None)
    promise_for_kind(shop, "alternator", None)
    with shop.reading() as connection:
        assert read_kind_windows(connection) == {}
    with pytest.raises(ShopTrouble, match="Which part kind"):
        promise_for_kind(shop, " ", Promise(days=1))


@pytest.mark.parametrize(("days", "miles"), [("", ""), (0, None)])
def test_a_job_window_without_any_limit_is_refused(shop: ShopRecord, days: Any, miles: Any) -> None:
    one = job(shop, vehicle(shop), "J-1", "2026-01-30")
    with pytest.raises(ShopTrouble, match="never ends"):
        change_window(shop, one, days, miles, "first")


@pytest.mark.parametrize(
    ("theirs", "says"),
    [
        (lambda shop, one: _leaves(shop, one), "was handed over on 2026-"),
        (lambda shop, one: shop.undo(), "is no longer there"),
    ],
    ids=["the car leaves", "the writing up is undone"],
)
def test_a_window_is_not_changed_past_what_another_desk_did_meanwhile(
    shop: ShopRecord, monkeypatch: pytest.MonkeyPatch, theirs: Any, says: str
) -> None:
    said = WriteUp("it misses", plate="TIN 1", odometer=9, came_at="2026-01-30T09:00:00+00:00")
    one = write_up(shop, said).made
    assert one is not None
    do = ShopRecord.do

    def theirs_first(record: ShopRecord, *said: Any) -> Done:
        monkeypatch.setattr(ShopRecord, "do", do)
        theirs(shop, one)
        return do(record, *said)

    monkeypatch.setattr(ShopRecord, "do", theirs_first)
    with pytest.raises(ShopTrouble, match=says):
        change_window(shop, one, 30, "", "first")
    with pytest.raises(ShopTrouble, match="is no longer there"):
        change_window(shop, 99, 30, "", "first")


def test_a_promise_in_months_lasts_at_most_so_many_days() -> None:
    assert [Promise(months=m).most_days for m in (1, 2, 3, 12, 24)] == [31, 62, 92, 366, 731]
    assert Promise(days=90).most_days == 90
    assert Promise(miles=3000).most_days == 0


@given(st.dates(date(2000, 1, 1), date(2090, 1, 1)), st.integers(1, 60))
def test_no_hand_over_gives_more_days_than_the_most(day: date, months: int) -> None:
    assert days_of_months(day, months) <= Promise(months=months).most_days


@pytest.mark.parametrize(
    ("promise", "written_up", "left_with"),
    [
        # 31 January and one month is the last of February.
        (
            Promise(months=1, miles=3000),
            (31, 3000, "first", 1, None),
            (28, 3000, "first", 1, "shop"),
        ),
        (Promise(days=90), (90, 0, "first", None, None), (90, 0, "first", None, "shop")),
        (Promise(miles=3000), (0, 3000, "first", None, None), (0, 3000, "first", None, "shop")),
        (
            Promise(months=12, miles=9000, rule="both"),
            (366, 9000, "both", 12, None),
            (365, 9000, "both", 12, "shop"),
        ),
    ],
)
def test_the_shops_promise_can_have_months_or_one_limit_alone(
    shop: ShopRecord,
    promise: Promise,
    written_up: tuple[object, ...],
    left_with: tuple[object, ...],
) -> None:
    promise_of_shop(shop, promise)
    with shop.reading() as connection:
        assert shop_promise(read_rules(connection)) == promise
    said = WriteUp(
        concern="it misses", plate="TIN 1", odometer=9, came_at="2026-01-30T09:00:00+00:00"
    )
    one = write_up(shop, said).made
    assert one is not None
    assert _window(shop, one) == written_up
    _leaves(shop, one)
    assert _window(shop, one) == left_with
    promise_of_shop(shop, Promise(days=10))
    assert _window(shop, one) == left_with
    shop.undo()
    with shop.reading() as connection:
        assert shop_promise(read_rules(connection)) == promise


def test_a_job_may_be_given_months_of_its_own(shop: ShopRecord) -> None:
    one = job(shop, vehicle(shop), "J-1", "2026-01-30")
    change_window(shop, one, "", 6000, "first", "1")
    assert _window(shop, one) == (31, 6000, "first", 1, "job")
    _leaves(shop, one)
    assert _window(shop, one) == (28, 6000, "first", 1, "job")


@pytest.mark.parametrize(
    ("said_by", "months", "says"),
    [
        ("job", None, "It was given to this job alone."),
        ("shop", 1, "It is the shop's promise, said as 1 calendar month."),
        (
            *("part kind brake-pads", 24),
            "It is the promise for brake pads, said as 24 calendar months.",
        ),
        (None, 24, ""),
        ("of an older program", None, ""),
    ],
)
def test_it_says_whose_promise_a_jobs_window_is(
    said_by: str | None, months: int | None, says: str
) -> None:
    assert promise_words(said_by, months) == says


@pytest.mark.parametrize(
    ("kept", "words"),
    [
        ((90, 0, 3000, "first"), "90 days or 3,000 miles, whichever ends first"),
        ((366, 12, 12_000, "first"), "12 calendar months or 12,000 miles, whichever ends first"),
        ((366, 12, 0, "first"), "12 calendar months"),
        ((0, 0, 3000, "both"), "3,000 miles"),
    ],
)
def test_what_is_kept_as_numbers_is_the_promise_in_words(
    kept: tuple[int, int, int, str], words: str
) -> None:
    assert promise_of(*kept).in_words() == words
    shop = ShopWords("Tin Heron Garage", "mi", "$", "A4", kept[0], kept[2], kept[3], kept[1])
    assert shop.promise == promise_of(*kept)

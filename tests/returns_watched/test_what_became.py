"""One rule for what became of a job: its page, the watch, the rates and the week's book agree."""

from __future__ import annotations

from datetime import date
from typing import Any

import pytest

from desktop_app.repair_jobs.who_actions import choose_work
from desktop_app.returns_watched.customer_actions import note_answer
from desktop_app.returns_watched.honest_numbers.counted_jobs import CountedJobs
from desktop_app.returns_watched.stored_rates import read_counted_jobs
from desktop_app.returns_watched.stored_returns import read_waiting, read_watch
from desktop_app.returns_watched.stored_standing import read_standing
from desktop_app.returns_watched.stored_watch_place import read_watch_place
from desktop_app.returns_watched.told_actions import judge_told
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.weekly_report.actions import look_at_week
from desktop_app.weekly_report.week import read_week
from desktop_app.weekly_report.year_behind import JobDone
from tests.watched_shop import as_made, job, judge_return, vehicle

SUNDAY = date(2026, 11, 15)
BOTH: dict[str, Any] = {"window_days": 90, "window_miles": 3000, "window_rule": "both"}
MISFIRE: dict[str, Any] = {"symptoms": ["misfire"]}


def on_page(shop: ShopRecord, job_id: int) -> str:
    with shop.reading() as connection:
        return read_standing(connection, job_id, SUNDAY).standing.value


def in_book(shop: ShopRecord) -> dict[str, JobDone]:
    return {job.number: job for job in look_at_week(shop, read_week("2026-W46")).year.jobs}


def rates(shop: ShopRecord) -> CountedJobs:
    with shop.reading() as connection:
        return read_counted_jobs(connection, "technician", SUNDAY)


def watched(shop: ShopRecord) -> dict[str, float | None]:
    with shop.reading() as connection:
        return {one.job: one.miles_left for one in read_watch(connection, SUNDAY)}


def in_watch(shop: ShopRecord) -> dict[str, tuple[bool, bool, date | None]]:
    with shop.reading() as connection:
        return {
            one.job: (one.came_back, one.waits, one.told_since)
            for one in read_watch(connection, SUNDAY)
        }


def test_a_window_that_both_limits_must_end_is_open_until_its_miles_are_read(
    shop: ShopRecord,
) -> None:
    car = vehicle(shop)
    first = job(shop, car, "J-1", "2026-03-01", "2026-03-02", 10_000, **BOTH)
    job(shop, car, "J-2", "2026-11-01", "2026-11-02", 10_500, system="brakes")
    assert watched(shop)["J-1"] == 2500
    assert on_page(shop, first) == "under watch"
    assert (in_book(shop)["J-1"].settled, in_book(shop)["J-1"].state) == (False, "open")
    assert rates(shop).settled.tolist() == [False, False]
    job(shop, car, "J-3", "2026-11-10", "2026-11-11", 13_500, system="body")
    assert "J-1" not in watched(shop)
    assert on_page(shop, first) == "seen fine"
    assert (in_book(shop)["J-1"].settled, in_book(shop)["J-1"].state) == (True, "seen fine")
    assert rates(shop).settled.tolist() == [True, False, False]


def test_a_window_without_a_limit_in_time_settles_once_its_miles_are_driven(
    shop: ShopRecord,
) -> None:
    car = vehicle(shop)
    job(shop, car, "J-1", "2026-03-01", "2026-03-02", 10_000, window_days=0)
    assert rates(shop).settled.tolist() == [False]
    job(shop, car, "J-2", "2026-06-01", None, 13_100, system="brakes")
    assert rates(shop).settled.tolist() == [True]
    assert in_book(shop)["J-1"].settled


def test_the_same_trouble_told_by_telephone_waits(shop: ShopRecord) -> None:
    first = job(shop, vehicle(shop), "J-1", "2026-06-01", "2026-06-02", 10_000)
    note_answer(shop, first, "same trouble", on=date(2026, 7, 1))
    assert on_page(shop, first) == "under watch"
    assert (in_book(shop)["J-1"].settled, in_book(shop)["J-1"].state) == (False, "maybe")
    assert in_book(shop)["J-1"].well_until is None
    found = rates(shop)
    assert (found.waiting.tolist(), found.settled.tolist()) == ([True], [False])
    note_answer(shop, first, "fine", on=date(2026, 11, 2))  # it may have been mended elsewhere
    assert in_book(shop)["J-1"].state == "maybe"
    assert rates(shop).settled.tolist() == [False]
    with shop.reading() as connection:
        [told] = read_waiting(connection, date(2026, 11, 14))
    judge_told(shop, first, told.asked_id, "unrelated", by="Ana")
    assert on_page(shop, first) == in_book(shop)["J-1"].state == "seen fine"
    assert rates(shop).settled.tolist() == [True]


def test_a_visit_for_something_else_does_not_end_what_was_told(shop: ShopRecord) -> None:
    car = vehicle(shop)
    first = job(shop, car, "J-1", "2026-10-20", "2026-10-20", 10_000, **MISFIRE)
    note_answer(shop, first, "same trouble", on=date(2026, 10, 30))
    job(shop, car, "J-2", "2026-11-02", "2026-11-02", 10_400, system="tyres", concern="tyres")
    today = date(2026, 11, 14)
    with shop.reading() as connection:
        back, watch = read_waiting(connection, today), read_watch_place(connection, today)
    assert on_page(shop, first) == "under watch"
    assert in_book(shop)["J-1"].state == "maybe"
    assert rates(shop).waiting.tolist()[0] is True
    assert {one.job: one.waits for one in watch.jobs} == {"J-1": True, "J-2": False}
    assert [(row.later, row.waits) for row in back] == [("told 2026-10-30", True)]
    assert watch.to_ask[0].why == (
        "Told: the same trouble, on 30 October 2026. Seen on 2 November 2026, not judged against "
        "this job: have the car in, or judge under It's Back what was told."
    )
    later = job(shop, car, "J-3", "2026-11-04", None, 10_500, **MISFIRE)
    with shop.reading() as connection:  # a visit that waits to be judged speaks for it
        assert [row.later for row in read_waiting(connection, today)] == ["J-3"]
        assert read_watch_place(connection, today).to_ask == ()
    judge_return(shop, first, later, "unrelated")
    with shop.reading() as connection:  # and one that has nothing to do with it does not
        assert {one.job: one.waits for one in read_watch_place(connection, today).jobs}["J-1"]
        assert {row.later for row in read_waiting(connection, today)} == {"told 2026-10-30", "J-3"}


def test_the_same_trouble_told_after_the_window_is_not_all_well(shop: ShopRecord) -> None:
    first = job(shop, vehicle(shop), "J-1", "2026-06-01", "2026-06-02", 10_000)
    note_answer(shop, first, "same trouble", on=date(2026, 10, 1))
    assert on_page(shop, first) == in_book(shop)["J-1"].state == "came back after the window"
    assert rates(shop).came_later.tolist() == [True]


@pytest.mark.parametrize(
    ("judgement", "cause", "state"),
    [
        ("same symptom", None, "came back"),
        ("same part", "other-use", "came back, not ours"),
        ("cannot tell", None, "came back, cannot tell"),
        ("unrelated", None, "nothing heard"),
    ],
)
def test_what_was_told_and_judged_counts_alike_everywhere(
    shop: ShopRecord, judgement: str, cause: str | None, state: str
) -> None:
    car = vehicle(shop, odometer_unit="km")
    first = job(shop, car, "J-1", "2026-06-01", "2026-06-02", 10_000)
    told = {"on": date(2026, 7, 1), "odometer_told": 11_609}
    asked = as_made(note_answer(shop, first, "same trouble", **told))
    judge_told(shop, first, asked, judgement, cause_class=cause, by="Ana")
    assert on_page(shop, first) == in_book(shop)["J-1"].state == state
    found, job_done = rates(shop), in_book(shop)["J-1"]
    assert found.came_back.tolist() == [job_done.came_back] == [state == "came back"]
    assert (found.not_ours | found.cannot_tell).tolist() == [state[9:11] in (", ",)]
    assert found.settled.tolist() == [job_done.settled]
    assert not found.waiting.any()
    if job_done.came_back:
        assert (job_done.back_after, found.back_after.tolist()) == (29, [29])
        assert job_done.back_miles == pytest.approx(999.8, abs=0.1)  # 1,609 km


def test_what_was_told_too_far_away_is_beyond_the_window_everywhere(shop: ShopRecord) -> None:
    first = job(shop, vehicle(shop), "J-1", "2026-06-01", "2026-06-02", 10_000)
    told = {"on": date(2026, 7, 1), "odometer_told": 13_001}
    asked = as_made(note_answer(shop, first, "same trouble", **told))
    for _ in range(2):
        assert on_page(shop, first) == in_book(shop)["J-1"].state == "came back after the window"
        assert rates(shop).came_later.tolist() == [True]
        judge_told(shop, first, asked, "same symptom", by="Ana")


def test_a_judged_visit_speaks_for_what_was_told_and_counts_once(shop: ShopRecord) -> None:
    car = vehicle(shop)
    first = job(shop, car, "J-1", "2026-10-20", "2026-10-20", 10_000, **MISFIRE)
    asked = as_made(note_answer(shop, first, "same trouble", on=date(2026, 11, 10)))
    judge_told(shop, first, asked, "same symptom", by="Ana")
    assert look_at_week(shop, read_week("2026-W46")).counted_as("comeback") == 1
    assert in_watch(shop)["J-1"] == (True, False, None)
    later = job(shop, car, "J-2", "2026-11-12", None, 10_400, **MISFIRE)
    assert look_at_week(shop, read_week("2026-W46")).as_json()["waiting"] == 1
    assert in_book(shop)["J-1"].state == "came back"
    judge_return(shop, first, later, "same symptom")
    found = look_at_week(shop, read_week("2026-W46"))
    assert found.counted_as("comeback") == 1
    assert [one.row.later for one in found.year.returns] == ["J-2"]
    assert (in_book(shop)["J-1"].back_after, rates(shop).back_after.tolist()[0]) == (23, 23)


@pytest.mark.parametrize("judged", [False, True])
def test_a_return_after_the_window_has_its_own_word(shop: ShopRecord, judged: bool) -> None:
    car = vehicle(shop)
    first = job(shop, car, "J-1", "2026-05-01", "2026-05-02", 10_000, **MISFIRE)
    later = job(shop, car, "J-2", "2026-08-05", "2026-08-06", 10_800, **MISFIRE)
    if judged:
        judge_return(shop, first, later, "same symptom")
    assert on_page(shop, first) == in_book(shop)["J-1"].state == "came back after the window"
    assert in_book(shop)["J-1"].settled
    found = rates(shop)
    assert (found.came_later[0], found.came_back[0], found.settled[0]) == (True, False, True)


def test_an_unrelated_visit_after_the_window_is_seen_fine(shop: ShopRecord) -> None:
    car = vehicle(shop)
    first = job(shop, car, "J-1", "2026-05-01", "2026-05-02", 10_000, **MISFIRE)
    later = job(shop, car, "J-2", "2026-08-05", "2026-08-06", 10_800, **MISFIRE)
    judge_return(shop, first, later, "unrelated")
    assert on_page(shop, first) == in_book(shop)["J-1"].state == "seen fine"
    assert not rates(shop).came_later.any()


def test_what_the_customer_said_and_miles_that_ended_it_are_seen_alike(shop: ShopRecord) -> None:
    told = job(shop, vehicle(shop), "J-1", "2026-05-01", "2026-05-02", 10_000)
    note_answer(shop, told, "fine", on=date(2026, 8, 20))
    car = vehicle(shop, plate="TIN 02")
    driven = job(shop, car, "J-2", "2026-05-01", "2026-05-02", 10_000)
    job(shop, car, "J-3", "2026-07-01", "2026-07-01", 13_500, system="brakes")
    unread = vehicle(shop, plate="TIN 03")
    seen = job(shop, unread, "J-4", "2026-05-01", "2026-05-02")
    job(shop, unread, "J-5", "2026-09-01", "2026-09-01", system="brakes")
    for job_id, number in ((told, "J-1"), (driven, "J-2"), (seen, "J-4")):
        assert on_page(shop, job_id) == in_book(shop)[number].state == "seen fine", number


def test_a_return_that_is_not_ours_leaves_the_rate_whole(shop: ShopRecord) -> None:
    car = vehicle(shop)
    first = job(shop, car, "J-1", "2026-05-01", "2026-05-02", 10_000, **MISFIRE)
    later = job(shop, car, "J-2", "2026-05-20", "2026-05-21", 10_100, **MISFIRE)
    judge_return(shop, first, later, "same symptom", cause_class="other-use")
    assert on_page(shop, first) == in_book(shop)["J-1"].state == "came back, not ours"
    assert not in_book(shop)["J-1"].settled
    found = rates(shop)
    assert found.not_ours.tolist() == [True, False]
    assert (found.settled.tolist(), found.waiting.any()) == ([False, True], False)


def test_a_car_that_is_gone_is_lost_sight_of_everywhere(shop: ShopRecord) -> None:
    gone = job(shop, vehicle(shop), "J-1", "2026-05-01", "2026-05-02", 10_000)
    note_answer(shop, gone, "car is gone", on=date(2026, 6, 1))
    late = job(shop, vehicle(shop, plate="TIN 02"), "J-2", "2026-05-01", "2026-05-02", 10_000)
    note_answer(shop, late, "car is gone", on=date(2026, 8, 1))
    assert on_page(shop, gone) == in_book(shop)["J-1"].state == "lost sight"
    assert on_page(shop, late) == in_book(shop)["J-2"].state == "nothing heard"
    assert rates(shop).lost_sight.tolist() == [True, False]
    # The book and the rates take the same jobs for settled, and watch them as long.
    counted = [job.settled for job in in_book(shop).values()]
    assert rates(shop).settled.tolist() == counted == [False, True]


def test_what_is_left_of_the_miles_is_not_known_before_somebody_reads_them(
    shop: ShopRecord,
) -> None:
    car = vehicle(shop)
    job(shop, car, "J-1", "2026-10-01", "2026-10-01", 10_000)
    with shop.reading() as connection:
        [one] = read_watch(connection, SUNDAY)
    assert one.not_read_since
    assert one.as_json()["miles_left"] is None
    assert one.expected_close is not None
    job(shop, car, "J-2", "2026-11-01", None, 10_400, system="brakes")
    assert watched(shop) == {"J-1": 2600}


@pytest.mark.parametrize("how", ["seen", "told"])
def test_a_judged_comeback_is_not_taken_out_of_the_rate_as_maintenance(
    shop: ShopRecord, how: str
) -> None:
    car = vehicle(shop)
    first = job(shop, car, "J-1", "2026-10-20", "2026-10-20", 10_000, **MISFIRE)
    choose_work(shop, first, "inspection")
    choose_work(shop, first, None)
    if how == "seen":
        later = job(shop, car, "J-2", "2026-11-02", None, 10_400, **MISFIRE)
        judge_return(shop, first, later, "same part")
    else:
        asked = as_made(note_answer(shop, first, "same trouble", on=date(2026, 10, 30)))
        judge_told(shop, first, asked, "same part", by="Ana")
    with pytest.raises(ShopTrouble, match="as maintenance no rate would hold it"):
        choose_work(shop, first, "maintenance")
    shop.undo()
    choose_work(shop, first, "maintenance")

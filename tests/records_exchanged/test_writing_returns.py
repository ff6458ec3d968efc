"""A return that a row says is kept only where the engine of returns would count it."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from pathlib import Path
from typing import Any

import pytest

from desktop_app.records_exchanged.stored_export_jobs import jobs_told
from desktop_app.repair_jobs.actions import hand_over, write_up
from desktop_app.repair_jobs.stored import Job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.returns_watched import judging_actions
from desktop_app.returns_watched.stored_check import record_problems
from desktop_app.returns_watched.stored_doubts import record_doubts
from desktop_app.returns_watched.stored_returns import find_returns
from desktop_app.shop_record.record import ShopRecord
from tests.records_exchanged.importing import a_shop, bring_in, counts, everything, lines
from tests.records_exchanged.test_writing import BACK, FIRST, rows

ONE, OTHER = "1M8GDM9AXKP042788", "1M8GDM9AXKP042789"
TWO_CARS = "That job is another car's, by VIN and plate; a return is of the same car."
NO_CAR = "This row names no car; a return needs its plate or VIN."
ONE_DAY = "Both came on one day; where no time of day tells more, that is one visit."


@pytest.fixture
def shop(tmp_path: Path) -> Iterator[ShopRecord]:
    yield from a_shop(tmp_path)


def kept_returns(shop: ShopRecord) -> int:
    """How many of the returns that are kept the engine shows, all of them or it is a fault."""
    with shop.reading() as connection:
        shown = list(find_returns(connection, date(2000, 1, 1), None, {}).rows())
    judged = [row for row in shown if row.judgement]
    assert rows(shop, "SELECT count(*) FROM return_link") == [(len(judged),)]
    return len(judged)


@pytest.mark.parametrize(
    ("first", "back", "why"),
    [
        ({}, {"plate": "ZZ 9"}, TWO_CARS),
        ({"vin": ONE}, {"vin": OTHER}, TWO_CARS),
        ({"vin": ONE}, {"vin": OTHER, "plate": "ZZ 9"}, TWO_CARS),
        ({}, {"plate": ""}, NO_CAR),
        ({"vin": ONE}, {"plate": "unknown"}, NO_CAR),
        ({}, {"opened_on": "2024-01-06", "closed_on": "2024-01-06", "plate": "ZZ 9"}, TWO_CARS),
        ({"closed_on": "2024-01-05"}, {"opened_on": "2024-01-05"}, ONE_DAY),
        ({"closed_on": "2024-01-05"}, {"opened_on": "2024-01-05", "odometer": "50001"}, ONE_DAY),
    ],
)
def test_a_return_that_none_can_see_is_refused(
    shop: ShopRecord, first: dict[str, Any], back: dict[str, Any], why: str
) -> None:
    row = {**BACK, **back}
    for content in (lines({**FIRST, **first}, row), lines(row), lines(row, {**FIRST, **first})):
        told = bring_in(shop, content)
        [refused] = told.rejected
        assert (refused.column, refused.value, refused.why) == ("return_of", "A1", why)
        assert rows(shop, "SELECT number FROM job") == [("A1",)]
        assert kept_returns(shop) == 0
    assert counts(bring_in(shop, lines({**row, "return_of": "", "judgement": ""})))[0] == 1
    before = everything(shop)
    assert counts(bring_in(shop, lines(row))) == (0, 0, 0, 1)
    assert everything(shop) == before


@pytest.mark.parametrize(
    ("first", "back"),
    [
        ({}, {}),
        ({"vin": ONE}, {}),
        ({}, {"vin": ONE}),
        ({"vin": ONE}, {"vin": ONE, "plate": "ZZ 9"}),
        ({}, {"opened_on": "2024-01-06"}),
        ({"plate": "n/a"}, {"plate": "unknown"}),  # nothing but the row says that it is one car
    ],
)
def test_a_return_of_the_same_car_is_kept_and_shown(
    shop: ShopRecord, first: dict[str, Any], back: dict[str, Any]
) -> None:
    content = lines({**FIRST, **first}, {**BACK, **back})
    assert counts(bring_in(shop, content)) == (2, 0, 0, 0)
    assert kept_returns(shop) == 1
    assert counts(bring_in(shop, content)) == (0, 0, 2, 0)


def test_a_plate_that_the_row_brings_joins_the_cars(shop: ShopRecord) -> None:
    """The car was known by its VIN alone; this row says that its plate is the first job's."""
    known = {**FIRST, "job_number": "A0", "vin": ONE, "plate": "", "opened_on": "2024-01-01"}
    bring_in(shop, lines({**known, "closed_on": "2024-01-01", "odometer": "49000"}, FIRST))
    assert counts(bring_in(shop, lines({**BACK, "vin": ONE}))) == (1, 0, 0, 0)
    assert kept_returns(shop) == 1


@pytest.mark.parametrize("day", ["2024-01-04", "2024-01-05"])
def test_a_return_stays_one_when_its_day_is_corrected(shop: ShopRecord, day: str) -> None:
    bring_in(shop, lines({**FIRST, "closed_on": "2024-01-05"}, BACK))
    told = bring_in(shop, lines({**BACK, "return_of": "", "judgement": "", "opened_on": day}))
    assert [one.why for one in told.rejected] == [
        "It is a return of A1, and would no longer be one on that day."
    ]
    assert kept_returns(shop) == 1


@pytest.mark.parametrize(
    ("change", "says"),
    [
        ("UPDATE visit SET vehicle_id = 2 WHERE id = 2", "stand on two vehicles"),
        ("UPDATE job SET visit_id = 1 WHERE number = 'A2'", "both came on 2024-01-05"),
    ],
)
def test_a_return_that_is_none_any_more_is_found_by_the_check(
    shop: ShopRecord, change: str, says: str
) -> None:
    bring_in(shop, lines({**FIRST, "closed_on": "2024-01-05"}, BACK))
    bring_in(shop, lines({**FIRST, "job_number": "A0", "plate": "QQ 1"}))
    today = shop.clock().date()
    with shop.reading() as connection:
        assert list(record_doubts(connection, today)) == []
    with shop.deed("Changed") as deed:
        deed.connection.exec_driver_sql(change)
    with shop.reading() as connection:
        [doubt] = list(record_doubts(connection, today))
        assert list(record_problems(connection)) == []  # no damage: deeds can lead there
    assert doubt.where == "return_link row 1, job A2"
    assert says in doubt.what


def test_another_judgement_of_an_import_is_not_confirmed_by_who_saw_the_one_before(
    shop: ShopRecord,
) -> None:
    bring_in(shop, lines(FIRST, BACK))
    judging_actions.say_also(shop, 1, 2, ["same part"])
    shop.who = "Ana"
    judging_actions.look_again(shop, 1, 2)
    beside = "SELECT judgement, also, second_look IS NULL FROM return_link"
    bring_in(shop, lines(FIRST, BACK))
    assert rows(shop, beside) == [("same symptom", '["same part"]', 0)]
    bring_in(shop, lines(FIRST, {**BACK, "judgement": "same part"}))
    assert rows(shop, beside) == [("same part", None, 1)]


def test_days_to_come_are_refused(shop: ShopRecord) -> None:
    told = bring_in(shop, lines({**FIRST, "opened_on": "2062-01-05", "closed_on": ""}))
    told2 = bring_in(shop, lines({**FIRST, "closed_on": "2026-11-17"}))
    assert [(one.column, one.value) for one in (*told.rejected, *told2.rejected)] == [
        ("opened_on", "2062-01-05"),
        ("closed_on", "2026-11-17"),
    ]
    assert "by the clock of this computer it is 2026-11-16" in told.rejected[0].why
    assert counts(bring_in(shop, lines({**FIRST, "closed_on": "2026-11-16"})))[0] == 1


@pytest.mark.parametrize(
    ("said", "whys"),
    [
        (
            [{**FIRST, "opened_on": "", "closed_on": ""}, BACK],
            [
                "A job that is new here needs the day on which it came.",
                "A1 is refused too (row 2).",
            ],
        ),
        ([{**FIRST, "odometer": "x"}, BACK], [None, "A1 is refused too (row 2)."]),
        (
            [{**BACK, "return_of": "B9"}, {**BACK, "job_number": "A3", "return_of": "A2"}],
            ["No job has this number, neither here nor in the file.", "A2 is refused too (row 2)."],
        ),
        ([{**BACK, "return_of": "A2"}], ["A job can't be its own return."]),
        (
            [BACK, {**FIRST, "return_of": "A2"}],
            [
                "A1 (row 3) names this job as the earlier one in its turn.",
                "A2 (row 2) names this job as the earlier one in its turn.",
            ],
        ),
    ],
)
def test_why_the_earlier_job_is_not_there_is_said_as_it_is(
    shop: ShopRecord, said: list[dict[str, Any]], whys: list[str | None]
) -> None:
    told = bring_in(shop, lines(*said))
    assert [one.row for one in told.rejected] == list(range(2, 2 + len(said)))
    for one, why in zip(told.rejected, whys, strict=True):
        assert why in (None, one.why)
        assert one.column == ("odometer" if why is None else one.column)
    assert rows(shop, "SELECT number FROM job") == []


def test_a_known_job_is_not_its_own_return_either(shop: ShopRecord) -> None:
    bring_in(shop, lines(FIRST))
    [refused] = bring_in(shop, lines({**FIRST, "return_of": "A1"})).rejected
    assert refused.why == "A job can't be its own return."


def test_all_that_is_wrong_with_a_row_by_itself_is_said_at_once(shop: ShopRecord) -> None:
    days = {"opened_on": "2031-01-05", "closed_on": "2031-01-06"}
    told = bring_in(shop, lines({**FIRST, **days, "return_of": "A1", "judgement": "bad luck"}))
    assert [one.column for one in told.rejected] == [*days, "return_of", "judgement"]
    assert counts(told)[3] == 4
    assert (told.read, told.refused) == (1, 1)


def back_the_same_day(shop: ShopRecord) -> None:
    """Write up A1, which leaves at ten, and A2, which comes at three, as the window does."""
    for number, came, left in (("A1", "08", "10"), ("A2", "15", "")):
        known = next(iter(rows(shop, "SELECT max(id) FROM vehicle")))[0]
        said = WriteUp(
            "misfires",
            vehicle_id=known,
            plate="AB 12",
            odometer=50_000,
            came_at=f"2024-01-05T{came}:00:00+00:00",
        )
        job = write_up(shop, said).made
        assert job is not None
        with shop.deed("Name it") as deed:
            deed.change(Job, job, number=number)
        if left:
            hand_over(shop, job, left_at=f"2024-01-05T{left}:00:00+00:00")


def test_a_return_of_one_day_is_kept_where_the_record_has_its_times(shop: ShopRecord) -> None:
    back_the_same_day(shop)
    said = {"job_number": "A2", "return_of": "A1", "judgement": "same symptom"}
    for dated in ({}, {"opened_on": "2024-01-05"}):  # said again, it stays
        assert not bring_in(shop, lines({**said, **dated})).rejected
        assert kept_returns(shop) == 1
    # A row that says another day of its coming knows no more than that day.
    (refused,) = bring_in(shop, lines({**said, "opened_on": "2024-01-04"})).rejected
    assert refused.why == "That job must be closed before this one comes."


def test_a_table_of_days_leaves_out_what_times_of_day_alone_tell(shop: ShopRecord) -> None:
    back_the_same_day(shop)
    bring_in(shop, lines({"job_number": "A2", "return_of": "A1", "judgement": "same symptom"}))
    with shop.reading() as connection:
        (told,) = jobs_told(connection)
    assert list(told.returns) == []

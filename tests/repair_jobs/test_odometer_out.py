"""The odometer with which a car leaves: asked about, answered, and mended after the hand-over."""

from __future__ import annotations

import re
from datetime import date

import pytest

from desktop_app.repair_jobs import actions, odometer_actions
from desktop_app.repair_jobs.stored import Job, Visit
from desktop_app.repair_jobs.stored_questions import (
    OdometerAsked,
    about_odometer_out,
    odometer_out_asked,
)
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble

TODAY = date(2026, 11, 16)


@pytest.fixture
def job_id(shop: ShopRecord) -> int:
    made = actions.write_up(shop, WriteUp("misses", plate="TH 1", odometer=84_210)).made
    assert made is not None
    return made


def asked(shop: ShopRecord, job_id: int, reading: int) -> OdometerAsked:
    with shop.reading() as connection:
        return odometer_out_asked(connection, read_job(connection, job_id), reading, TODAY)


def outs(shop: ShopRecord, job_id: int) -> tuple[int | None, int | None]:
    with shop.reading() as connection:
        job = read_job(connection, job_id)
        visit = connection.execute(
            Visit.__table__.select().where(Visit.__table__.c.id == job.visit_id)
        ).one()
    return job.odometer_out, visit.odometer_out


def test_an_odometer_out_below_the_one_in_is_asked_about(shop: ShopRecord, job_id: int) -> None:
    odd = asked(shop, job_id, 84_100).asked
    assert odd is not None
    assert "84,100 mi, but on 16 November 2026 it said 84,210 mi" in odd
    assert asked(shop, job_id, 84_215).asked is None
    with shop.reading() as connection:
        about = about_odometer_out(read_job(connection, job_id))
    actions.keep_as_typed(shop, about, odd)
    assert asked(shop, job_id, 84_100).asked is None


def test_a_swapped_digit_out_has_a_reading_that_fits(shop: ShopRecord, job_id: int) -> None:
    assert 84_215 in [one.value for one in asked(shop, job_id, 48_215).proposals]


def driven(shop: ShopRecord, job_id: int, miles: float) -> None:
    with shop.deed("Drive it") as deed:
        deed.change(Job, job_id, proof_level=2, proof_distance=miles)


def test_a_slip_after_a_drive_is_meant_to_go_on_by_it(shop: ShopRecord, job_id: int) -> None:
    driven(shop, job_id, 12)
    assert [one.value for one in asked(shop, job_id, 84_120).proposals] == [84_220]
    assert asked(shop, job_id, 84_222) == OdometerAsked()


@pytest.mark.parametrize("miles", [None, 12, 40])
@pytest.mark.parametrize(
    "typed", [84_120, 84_100, 84_200, 84_202, 84_012, 48_222, 94_222, 842_250, 8_422]
)
def test_the_question_names_the_readings_that_are_offered(
    shop: ShopRecord, job_id: int, typed: int, miles: float | None
) -> None:
    if miles is not None:
        driven(shop, job_id, miles)
    odd = asked(shop, job_id, typed)
    assert odd.asked is not None
    named = re.findall(r"([0-9,]+) mi would fit", odd.asked)
    assert named == [f"{one.value:,}" for one in odd.proposals]


def test_an_answer_holds_though_the_drive_is_written_down_later(
    shop: ShopRecord, job_id: int
) -> None:
    odd = asked(shop, job_id, 84_120).asked
    with shop.reading() as connection:
        about = about_odometer_out(read_job(connection, job_id))
    assert odd is not None
    actions.keep_as_typed(shop, about, odd)
    driven(shop, job_id, 12)
    assert asked(shop, job_id, 84_120) == OdometerAsked()


def test_a_drive_that_the_odometer_does_not_show_is_asked_about(
    shop: ShopRecord, job_id: int
) -> None:
    assert asked(shop, job_id, 84_210).asked is None
    driven(shop, job_id, 12)
    same = asked(shop, job_id, 84_210)
    assert same.proposals == ()
    assert same.asked == (
        "12 mi were driven, but the odometer out, 84,210 mi, is the same as when it came in. "
        "Is that the reading after the drive?"
    )
    assert "only 3 mi more than when it came in" in (asked(shop, job_id, 84_213).asked or "")
    assert asked(shop, job_id, 84_221).asked is None  # each reading is cut to whole miles
    with shop.reading() as connection:
        about = about_odometer_out(read_job(connection, job_id))
    actions.keep_as_typed(shop, about, same.asked)
    assert asked(shop, job_id, 84_210).asked is None


def test_what_it_left_with_is_mended_for_the_job_and_its_visit(
    shop: ShopRecord, job_id: int
) -> None:
    with pytest.raises(ShopTrouble, match="still here"):
        odometer_actions.change_odometer_out(shop, job_id, 84_215)
    actions.hand_over(shop, job_id, 84_100)
    odometer_actions.change_odometer_out(shop, job_id, 84_215)
    assert outs(shop, job_id) == (84_215, 84_215)
    shop.undo()
    assert outs(shop, job_id) == (84_100, 84_100)


def test_an_earlier_job_of_the_visit_is_mended_alone(shop: ShopRecord, job_id: int) -> None:
    second = actions.add_job(shop, 1, "squeals").made
    assert second is not None
    actions.hand_over(shop, job_id, 84_100)
    odometer_actions.change_odometer_out(shop, job_id, 84_212)
    actions.hand_over(shop, second, 84_220)
    odometer_actions.change_odometer_out(shop, job_id, 84_214)
    assert outs(shop, job_id) == (84_214, 84_220)


def test_a_job_that_left_unread_is_mended_while_its_visit_goes_on(
    shop: ShopRecord, job_id: int
) -> None:
    actions.add_job(shop, 1, "squeals")
    actions.hand_over(shop, job_id)
    odometer_actions.change_odometer_out(shop, job_id, 84_212)
    assert outs(shop, job_id) == (84_212, None)


@pytest.mark.parametrize("source", ["told", "estimated"])
def test_a_drive_is_held_against_no_reading_that_nobody_read(
    shop: ShopRecord, job_id: int, source: str
) -> None:
    driven(shop, job_id, 12)
    assert asked(shop, job_id, 84_210).asked is not None
    odometer_actions.say_how_read(shop, 1, source)
    assert asked(shop, job_id, 84_210) == OdometerAsked()

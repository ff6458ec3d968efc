"""A slip of the hand is found again from what the car is known to drive."""

from __future__ import annotations

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.repair_jobs.odometer import OdometerReading, OdometerReplaced
from desktop_app.repair_jobs.odometer_questions import odometer_proposals, odometer_questions
from desktop_app.repair_jobs.odometer_slip import a_digit_short, in_the_other_unit, slips
from desktop_app.repair_jobs.rate_of_use import Stretch, rate_of_use

START = date(2026, 3, 2)
BEFORE = OdometerReading(START, 79_900)
RATE = rate_of_use([Stretch(400, 12_000)])


def found(typed: int, days: int = 60) -> list[tuple[int, str]]:
    reading = OdometerReading(START + timedelta(days), typed)
    return [(slip.value, slip.words) for slip in slips(reading, BEFORE, RATE)]


@pytest.mark.parametrize(
    ("typed", "meant", "why"),
    [
        (18_240, 81_240, "two digits swapped"),
        (881_240, 81_240, "a digit doubled"),
        (381_000, 81_000, "a digit too many"),
        (61_240, 81_240, "one digit misread"),
    ],
)
def test_the_reading_that_was_meant_is_proposed(typed: int, meant: int, why: str) -> None:
    assert (meant, why) in found(typed)


def test_of_two_slips_that_lead_to_one_reading_the_likelier_is_named_once() -> None:
    assert [why for value, why in found(811_140) if value == 81_140] == ["a digit doubled"]


def test_what_nobody_could_read_holds_no_slip() -> None:
    unread = OdometerReading(START + timedelta(60), None)
    assert slips(unread, BEFORE, RATE) == slips(BEFORE, unread, RATE) == ()
    assert not a_digit_short(unread, BEFORE)
    assert not a_digit_short(BEFORE, unread)
    assert in_the_other_unit(unread, BEFORE) is None


def test_where_many_readings_would_fit_none_is_proposed() -> None:
    assert found(812_490) == []  # 81,249, 81,240, 81,290 and 81,490
    short = OdometerReading(START + timedelta(60), 8_124)
    assert a_digit_short(short, BEFORE)
    asked = odometer_questions(short, [BEFORE], short.on)
    assert asked[0].endswith("It has a digit less than before: is one missing?")


def test_the_likeliest_comes_first_and_says_what_it_would_mean() -> None:
    first = slips(OdometerReading(START + timedelta(60), 18_240), BEFORE, RATE)[0]
    assert (first.value, first.words) == (81_240, "two digits swapped")
    assert first.miles_a_day == pytest.approx(1340 / 60)


def test_nothing_is_proposed_that_the_car_would_never_drive() -> None:
    # 97,900 would be 300 miles a day for a car that does 30.
    assert all(value != 97_900 for value, _ in found(79_790, days=60))


def test_a_plain_reading_has_no_proposals() -> None:
    plain = OdometerReading(START + timedelta(60), 81_240)
    assert odometer_proposals(plain, [BEFORE]) == ()


def test_a_replaced_odometer_is_counted_over() -> None:
    change = OdometerReplaced(START + timedelta(10), 80_200, 0)
    reading = OdometerReading(START + timedelta(60), 1_402)  # 1,042 was meant
    assert odometer_proposals(reading, [BEFORE], [change]) == ()  # it fits as it is
    after = OdometerReading(START + timedelta(60), 1_400)
    lower = OdometerReading(START + timedelta(90), 1_240)
    assert odometer_questions(lower, [BEFORE, after], lower.on, [change]) == (
        "The odometer says 1,240 mi, but on 1 May 2026 it said 1,400 mi. Was it replaced, or is a "
        "digit wrong? It fits if 1,400 mi was to be 1,040 mi.",
    )


@given(st.integers(0, 9_999_999), st.integers(0, 2_000))
def test_every_proposal_fits_the_history(typed: int, days: int) -> None:
    reading = OdometerReading(START + timedelta(days), typed)
    for each in slips(reading, BEFORE, RATE):
        miles = each.value - 79_900
        assert 0 <= miles <= 400 * max(days, 1)
        assert each.value != typed

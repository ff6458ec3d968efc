"""What is asked about an odd odometer reading; none is ever refused."""

from __future__ import annotations

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.repair_jobs.odometer import OdometerReading, OdometerReplaced
from desktop_app.repair_jobs.odometer_questions import (
    day_and_month,
    odometer_proposals,
    odometer_questions,
    question_of_words,
    reading_in_words,
)

TODAY = date(2026, 9, 28)
BEFORE = OdometerReading(date(2026, 3, 2), 118_420)


def asked(value: float | None, on: date = TODAY, unit: str = "mi") -> str:
    reading = OdometerReading(on, value, "km" if unit == "km" else "mi")
    return " ".join(odometer_questions(reading, [BEFORE], TODAY))


def test_a_plain_reading_is_not_asked_about() -> None:
    assert asked(121_600) == ""
    assert asked(None) == ""


@pytest.mark.parametrize(
    ("words", "number"),
    [
        *(
            ("about 118,420 they say", 118_420),
            ("odo 118 420", 118_420),
            ("dead at 100200", 100_200),
        ),
        *(("dead since 2025", None), ("display dead", None), ("3 of 6 figures", None)),
        *(("dead since 2019, about 84120", 84_120), ("dead since 11/16/2026", None)),
        *(("0000", None), ("call 555123456789", None)),
    ],
)
def test_four_figures_among_the_words_may_be_the_reading(words: str, number: int | None) -> None:
    assert reading_in_words(words) == number


def test_a_lower_reading_names_the_earlier_one_and_its_day() -> None:
    assert asked(118_000) == (
        "The odometer says 118,000 mi, but on 2 March 2026 it said 118,420 mi. "
        "Was it replaced, or is a digit wrong?"
    )


def test_too_many_miles_a_day_are_counted_out() -> None:
    said = asked(125_000, date(2026, 3, 5))
    assert said.startswith(
        "That is 6,580 mi in 3 days, more than 400 mi a day: on 2 March 2026 it said 118,420 mi."
    )


def test_too_many_miles_within_a_day_are_counted_out() -> None:
    for day in (date(2026, 3, 2), date(2026, 3, 3)):
        said = asked(118_920, day)
        assert said.startswith("That is 500 mi in one day, more than 400 mi a day: on 2 March 2026")


def test_the_words_under_which_an_answer_is_kept_stay_as_they_were() -> None:
    about = (OdometerReading(date(2026, 3, 5), 125_000), [BEFORE], TODAY)
    assert odometer_questions(*about, as_kept=True) == (
        "That is 6,580 mi in 3 days, more than 400 mi a day. Is a digit wrong?",
    )


def test_figures_among_the_words_are_offered_in_the_cars_unit() -> None:
    assert question_of_words("about 118,420", 118_420, "km") == (
        "No reading is kept, because “about 118,420”. Does the odometer say 118,420 km?"
    )


def test_a_day_is_said_short_where_there_is_little_room() -> None:
    assert [day_and_month(day) for day in (TODAY, date(2026, 3, 2))] == ["28 Sep", "2 Mar"]


def test_an_earlier_slip_explains_a_reading_only_where_it_leads_to_it() -> None:
    older = OdometerReading(date(2025, 9, 1), 111_000)
    misread = OdometerReading(date(2026, 3, 2), 181_420)
    now = OdometerReading(TODAY, 112_000)  # lower than each reading that 181,420 may have been
    [question] = odometer_questions(now, [older, misread], TODAY)
    assert "was to be" not in question


def test_a_digit_too_many_is_guessed() -> None:
    assert "121,600 mi would fit (a digit doubled)." in asked(1_216_600)


def test_the_other_unit_is_guessed() -> None:
    km = asked(196_000, date(2026, 4, 1))
    assert km.endswith("121,789 mi would fit (read in km).")


def test_a_day_to_come_is_asked_about() -> None:
    assert (
        asked(121_600, date(2026, 9, 29))
        == "29 September 2026 is still to come. Is the date right?"
    )


def test_a_known_replacement_leaves_nothing_to_ask() -> None:
    change = OdometerReplaced(date(2026, 6, 10), None, None)
    reading = OdometerReading(TODAY, 41_000)
    assert odometer_questions(reading, [BEFORE], TODAY, [change]) == ()


def test_seven_digits_are_asked_about_even_on_the_first_visit() -> None:
    questions = odometer_questions(OdometerReading(TODAY, 1_184_200), [], TODAY)
    assert len(questions) == 1
    assert "One too many?" in questions[0]


def test_a_told_reading_is_asked_about_beyond_what_it_may_be_off_by() -> None:
    near = OdometerReading(TODAY, 118_000, source="told")
    assert odometer_questions(near, [BEFORE], TODAY) == ()
    lower = OdometerReading(TODAY, 117_000, source="told")
    assert odometer_questions(lower, [BEFORE], TODAY)[0].startswith(
        "117,000 mi was told, but on 2 March 2026 it said 118,420 mi."
    )
    guessed = OdometerReading(TODAY, 117_000, source="estimated")
    assert odometer_questions(guessed, [BEFORE], TODAY) == ()


def test_kilometres_told_for_miles_are_offered_as_miles() -> None:
    before = OdometerReading(date(2026, 9, 14), 84_850)
    told = OdometerReading(TODAY, 136_900, source="told")
    assert "52,050 mi in 14 days" in odometer_questions(told, [before], TODAY)[0]
    assert [(one.value, one.why) for one in odometer_proposals(told, [before])] == [
        (85_066, "told in km")
    ]


def test_the_earlier_reading_may_be_the_wrong_one() -> None:
    older = OdometerReading(date(2025, 9, 1), 111_000)
    misread = OdometerReading(date(2026, 3, 2), 181_420)
    questions = odometer_questions(OdometerReading(TODAY, 121_600), [older, misread], TODAY)
    assert questions == (
        "The odometer says 121,600 mi, but on 2 March 2026 it said 181,420 mi. Was it replaced, "
        "or is a digit wrong? It fits if 181,420 mi was to be 118,420 mi.",
    )


@given(st.one_of(st.none(), st.floats(0, 1e9)), st.dates(), st.sampled_from(["mi", "km"]))
def test_no_reading_is_ever_refused(value: float | None, on: date, unit: str) -> None:
    assert all(q.endswith(("?", ".")) for q in [asked(value, on, unit)] if q)

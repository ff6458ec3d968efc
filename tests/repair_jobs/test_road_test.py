"""What a quiet drive and a fault made on purpose are worth, in figures and in words."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.repair_jobs.chance_words import percent
from desktop_app.repair_jobs.provocation import (
    Provoked,
    luck_of,
    provoked_sentence,
    read_provoked,
)
from desktop_app.repair_jobs.road_test import EVERY_UNITS, FaultEvery, road_test_worth
from desktop_app.repair_jobs.road_test_words import DrivenUnder, read_every, worth_in_words
from desktop_app.shop_record.trouble import ShopTrouble


def test_once_in_forty_miles_needs_a_hundred_and_twenty() -> None:
    said = worth_in_words(FaultEvery(40, "mi"), 20, "mi")
    assert said == (
        "If it came once in 40 miles, 20 miles without it happen by luck in 61 % of cases with "
        "nothing repaired (37 % to 78 % if the customer is out by a factor of 2). About 120 miles "
        "without it would leave 5 %. That is not provable on a road test: agree on a day to ask, "
        "or make it happen on purpose."
    )


def test_a_long_drive_after_a_frequent_fault_leaves_little_to_luck() -> None:
    said = worth_in_words(FaultEvery(4, "mi"), 31, "mi")
    assert said.endswith("That leaves little to luck.")
    short = worth_in_words(FaultEvery(4, "mi"), 6, "mi")
    assert short.endswith("About 12 miles without it would leave 5 %.")


def test_once_a_week_is_asked_for_later_by_the_cars_own_use() -> None:
    said = worth_in_words(FaultEvery(7, "days"), 10, "mi", miles_a_day=250 / 7)
    assert "96 % of cases" in said
    assert "About 749 miles" in said
    assert "agree on a day to ask, in about 21 days of this car's use" in said
    unknown = worth_in_words(FaultEvery(7, "days"), 10, "mi")
    assert unknown.startswith("It came once in 7 days, but how far this car goes in a day")


def test_of_drives_the_proof_is_one() -> None:
    said = worth_in_words(FaultEvery(5, "drives"), 12, "km")
    assert "once in 5 drives, one quiet drive happens by luck in 82 %" in said
    assert "About 15 drives without it would leave 5 %" in said


def test_one_mile_without_the_fault_happens_and_two_happen() -> None:
    one, two = (worth_in_words(FaultEvery(4, "mi"), far, "mi") for far in (1, 2))
    assert "1 mile without it happens by luck" in one
    assert "2 miles without it happen by luck" in two


def test_a_drive_that_lacked_a_condition_is_given_no_chance() -> None:
    every = FaultEvery(4, "mi")
    lacked = worth_in_words(every, 31, "mi", under=DrivenUnder(("damp",), ("cold",)))
    assert lacked.startswith(
        "Not met on the drive: damp. So the quiet drive says nothing of the fault. "
    )
    assert "by luck" not in lacked
    unsaid = worth_in_words(every, 31, "mi", under=DrivenUnder((), ("cold",)))
    assert unsaid.startswith("Nobody said whether the drive had cold; only if it had, this holds. ")
    assert "by luck" in unsaid
    not_driven = worth_in_words(every, None, "mi", under=DrivenUnder(("damp",)))
    assert "Not met" not in not_driven


def test_what_nobody_said_is_not_worked_out() -> None:
    assert worth_in_words(None, 20, "mi") == ""
    undriven = worth_in_words(FaultEvery(4, "mi"), None, "mi")
    assert undriven == "If it came once in 4 miles, about 12 miles without it would leave 5 %."


@given(
    st.floats(0.01, 5000),
    st.sampled_from(EVERY_UNITS),
    st.floats(0, 500),
    st.floats(1, 300),
)
def test_the_cars_unit_makes_no_difference(
    number: float, unit: str, driven: float, rate: float
) -> None:
    every = FaultEvery(number, unit)  # type: ignore[arg-type]
    miles = road_test_worth(every, driven, "mi", rate)
    kilometres = road_test_worth(every, driven * 1.609344, "km", rate)
    assert miles is not None
    assert kilometres is not None
    assert miles.luck == pytest.approx(kilometres.luck, rel=1e-9, abs=1e-12)
    assert miles.luck_low is not None
    assert miles.luck is not None
    assert miles.luck_high is not None
    assert 0 <= miles.luck_low <= miles.luck <= miles.luck_high <= 1


@pytest.mark.parametrize(
    ("typed", "read"),
    [
        ("40", 40),
        (" 0,5 ", 0.5),
        ("0.333", 0.333),
        ("1,000", 1000),
        ("12,500", 12500),
        ("1,000.5", 1000.5),
        ("", None),
        ("  ", None),
    ],
)
def test_how_often_it_came_is_read(typed: str, read: float | None) -> None:
    assert read_every(typed) == read


@pytest.mark.parametrize("typed", ["0", "often", "-3", "once in 40", "nan", "1e9", "1,0000"])
def test_what_is_no_number_is_refused(typed: str) -> None:
    with pytest.raises(ShopTrouble, match="does not say how often"):
        read_every(typed)


def test_equal_times_halve_the_luck_with_each_count() -> None:
    """37 against 0 in equal times has the chance 0.5^37, 5 against 0 has 3 %."""
    assert luck_of(Provoked(37, 10, 0, 10)) == pytest.approx(0.5**37)
    assert luck_of(Provoked(5, 10, 0, 10)) == pytest.approx(0.03125)
    assert "decisive" in provoked_sentence(Provoked(37, 10, 0, 10))
    assert "3.1 % of cases; this is fair" in provoked_sentence(Provoked(5, 10, 0, 10))
    assert "weak" in provoked_sentence(Provoked(2, 10, 0, 10))


def test_what_still_comes_is_never_called_cured() -> None:
    said = provoked_sentence(Provoked(37, 10, 2, 10))
    assert "It still comes, less often: it is not cured." in said
    same = provoked_sentence(Provoked(3, 10, 3, 10))
    assert "no less often than luck allows" in same
    never = provoked_sentence(Provoked(0, 10, 0, 10))
    assert "proves nothing" in never


@given(st.integers(0, 60), st.integers(0, 60), st.floats(0.1, 500), st.floats(0.1, 500))
def test_the_chance_is_the_binomial_one(before: int, after: int, first: float, then: float) -> None:
    """Against scipy's binomial distribution (the conditional test of two Poisson counts)."""
    from scipy.stats import binom

    wanted = binom.cdf(after, before + after, then / (first + then))
    assert luck_of(Provoked(before, first, after, then)) == pytest.approx(wanted, rel=1e-8)


@given(
    st.integers(0, 9999),
    st.integers(1, 999_900),
    st.integers(0, 9999),
    st.integers(1, 999_900),
)
def test_a_count_is_kept_as_it_is_typed(before: int, first: int, after: int, then: int) -> None:
    provoked = Provoked(before, first / 100, after, then / 100)
    assert read_provoked(provoked.typed()) == provoked


@pytest.mark.parametrize(
    "typed",
    ["37 in 10 min, 0 in 10 min", "37 times in 10 minutes then 0 times in 10 minutes",
     "37 in 10 min; then 0 in 10 min.", " 37  in 10min, after: 0 in 10min"],
)  # fmt: skip
def test_a_count_is_read_as_people_type_it(typed: str) -> None:
    assert read_provoked(typed) == Provoked(37, 10, 0, 10)


@pytest.mark.parametrize("typed", ["37", "often, then never", "3 in 0 min, 0 in 5 min"])
def test_what_is_no_count_is_refused_with_what_is_accepted(typed: str) -> None:
    with pytest.raises(ShopTrouble) as refused:
        read_provoked(typed)
    assert refused.value.do


@pytest.mark.parametrize(
    ("share", "said"), [(0.61, "61 %"), (0.05, "5 %"), (0.00001, "below 0.1 %"), (0.0312, "3.1 %")]
)
def test_chances_are_said_in_per_cent(share: float, said: str) -> None:
    assert percent(share) == said

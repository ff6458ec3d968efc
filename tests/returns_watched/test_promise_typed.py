"""A promise as it is typed: a comma before three digits sets thousands apart, and nothing else."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.repair_jobs.distance import to_miles
from desktop_app.returns_watched.kind_windows import Promise
from desktop_app.returns_watched.promise_typed import (
    promise_in_words,
    promise_typed,
    shown_distance,
)
from desktop_app.shop_record.trouble import ShopTrouble


@pytest.mark.parametrize(
    "typed", ["1,5", "12,34", "0,5", "90,", ",5", "1,,500", "1,50", "1.5", "12 0", "1,5000"]
)
def test_what_is_no_whole_number_is_refused(typed: str) -> None:
    for words in ((typed, "", ""), ("", typed, ""), ("90", "", typed)):
        with pytest.raises(ShopTrouble, match="is not accepted for"):
            promise_typed(*words, "first", "mi")


@given(st.integers(1, 200_000))
def test_a_distance_is_read_as_it_is_shown(miles: int) -> None:
    for typed in (str(miles), f"{miles:,}", f" {miles:,} ".replace(",", "\u00a0")):
        assert promise_typed("", "", typed, "first", "mi").miles == miles


@given(st.integers(1, 200_000))
def test_what_is_shown_in_kilometres_would_be_kept_as_it_is(miles: int) -> None:
    assert round(to_miles(shown_distance(miles, "km"), "km")) == miles
    assert shown_distance(miles, "mi") == miles


@pytest.mark.parametrize(
    ("promise", "says"),
    [
        (Promise(days=90), "90 days"),
        (Promise(days=90, miles=3107), "90 days or 5,000 km, whichever ends first"),
        (Promise(miles=3000), "3,000 miles (4,828 km)"),
        (Promise(miles=3001), "4,830 km"),
        (Promise(miles=1), "2 km"),
    ],
)
def test_a_promise_is_said_in_kilometres_unless_it_is_round_in_miles_alone(
    promise: Promise, says: str
) -> None:
    assert promise_in_words(promise, "km") == says
    assert promise_in_words(promise, "mi") == promise.in_words()

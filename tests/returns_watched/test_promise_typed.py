"""A promise as it is typed: a comma before three digits sets thousands apart, and nothing else."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.returns_watched.promise_typed import promise_typed
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

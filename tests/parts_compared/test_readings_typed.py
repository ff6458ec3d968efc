"""Readings typed into one field: however they are parted, each is one reading."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.parts_compared.readings_typed import (
    MOST_READINGS,
    as_field,
    read_readings,
    split_readings,
)
from desktop_app.shop_record.trouble import ShopTrouble
from tests.parts_compared.invented_kinds import dimension


@pytest.mark.parametrize(
    ("typed", "readings"),
    [
        ("14.2; 14.3 14.3", ("14.2", "14.3", "14.3")),
        ("14,2 14,3", ("14,2", "14,3")),
        ("14.2\n14.3;", ("14.2", "14.3")),
        ("1 1/2 in; 38.1", ("1 1/2 in", "38.1")),
        ("0.30 + 0.15; 0.45", ("0.30 + 0.15", "0.45")),
        ("two piece", ("two piece",)),
        (" ; ", ()),
    ],
)
def test_readings_are_parted(typed: str, readings: tuple[str, ...]) -> None:
    assert split_readings(typed) == readings


def test_more_readings_than_are_kept_are_refused() -> None:
    with pytest.raises(ShopTrouble, match=f"{MOST_READINGS} at most are kept"):
        read_readings("14.2; " * (MOST_READINGS + 1), dimension(), "mm")
    assert len(read_readings("14.2; " * MOST_READINGS, dimension(), "mm")) == MOST_READINGS


@given(st.lists(st.sampled_from(["14.2", "14,3 mm", "1 1/2 in"]), max_size=5))
def test_a_field_that_shows_what_was_kept_is_read_as_it_was(typed: list[str]) -> None:
    assert split_readings(as_field(typed)) == tuple(typed)

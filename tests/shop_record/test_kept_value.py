"""What comes out of the record is taken as it is kept, or told as damage; never guessed at."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, date, datetime
from typing import Any

import pytest

from desktop_app.shop_record.kept_value import (
    kept_day,
    kept_moment,
    kept_tick,
    kept_whole,
    kept_word,
    row_place,
)
from desktop_app.shop_record.trouble import ShopDamaged


def test_what_a_deed_keeps_comes_out_as_it_is() -> None:
    assert kept_day("2026-11-16") == kept_day("2026-11-16T12:00:00+00:00") == date(2026, 11, 16)
    assert kept_moment("2026-11-16T12:00:00+00:00") == datetime(2026, 11, 16, 12, tzinfo=UTC)
    assert kept_word("both", ("first", "both"), "a rule") == "both"
    assert (kept_tick(1, "a tick"), kept_tick(0, "a tick")) == (True, False)
    assert kept_whole(3, 0, 3, "a level") == 3


@pytest.mark.parametrize("kept", ["", "soon", "20261116", "2026-W47-1", "1899-12-31", "2026-02-30"])
def test_a_day_that_would_be_sorted_wrongly_is_none(kept: str) -> None:
    for read in (kept_day, kept_moment):
        with pytest.raises(ShopDamaged):
            read(kept)


@pytest.mark.parametrize(
    ("read", "says"),
    [
        (lambda at: kept_day("soon", at), "“soon” where a day should be"),
        (lambda at: kept_moment("2026-11-16T9", at), "“2026-11-16T9” where a moment should be"),
        (lambda at: kept_word("or", ("first", "both"), "a rule", at), "“or” where a rule should"),
        (lambda at: kept_tick(2, "a tick", at), "“2” where a tick should be"),
        (lambda at: kept_whole(4, 0, 3, "a level", at), "“4” where a level should be"),
    ],
)
def test_what_no_deed_keeps_is_told_with_its_place(read: Callable[[str], Any], says: str) -> None:
    with pytest.raises(ShopDamaged) as told:
        read(row_place("visit", 12, "J-101"))
    assert says in told.value.what
    assert "(visit row 12, job J-101)" in told.value.what
    with pytest.raises(ShopDamaged) as told:
        read("")
    assert "(" not in told.value.what

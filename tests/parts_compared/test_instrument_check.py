"""When an instrument was last checked: a day, or nothing, and overdue after twelve months."""

from __future__ import annotations

from datetime import date

import pytest

from desktop_app.parts_compared.instruments.instrument_check import (
    check_words,
    is_overdue,
    read_check_day,
)
from desktop_app.shop_record.trouble import ShopTrouble

TODAY = date(2026, 2, 28)


@pytest.mark.parametrize(
    ("typed", "kept"),
    [("", None), ("  ", None), (" 2026-02-28 ", "2026-02-28"), ("2025-3-4", "2025-03-04")],
)
def test_a_day_or_nothing_is_taken(typed: str, kept: str | None) -> None:
    assert read_check_day(typed, TODAY) == kept


@pytest.mark.parametrize(
    ("typed", "says"),
    [
        ("yesterday", "“yesterday” is not a day."),
        ("2025-02-30", "“2025-02-30” is not a day."),
        ("2025-02", "“2025-02” is not a day."),
        ("25-02-03", "“25-02-03” is not a day."),
        ("2025-a-b", "“2025-a-b” is not a day."),
        ("2026-03-01", "2026-03-01 has not come yet."),
    ],
)
def test_what_is_no_day_is_refused_with_what_is_accepted(typed: str, says: str) -> None:
    with pytest.raises(ShopTrouble) as refused:
        read_check_day(typed, TODAY)
    assert refused.value.what == says
    assert refused.value.do == "Accepted: year, month and day like 2026-02-28, or nothing."


@pytest.mark.parametrize(
    ("checked_on", "overdue"),
    [(None, False), ("2025-03-01", False), ("2025-02-28", True), ("2024-12-31", True)],
)
def test_a_check_is_overdue_after_twelve_months(checked_on: str | None, overdue: bool) -> None:
    assert is_overdue(checked_on, TODAY) is overdue


def test_the_drawer_says_when_and_whether_that_is_too_long_ago() -> None:
    said = [check_words(day, TODAY) for day in (None, "2025-12-01", "2024-12-01")]
    assert said == ["never noted", "2025-12-01", "2024-12-01: check overdue"]

"""The days that are asked about, as they are typed."""

from __future__ import annotations

from datetime import date

import pytest

from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.symptom_search.time_asked import first_day, last_day, years_before


@pytest.mark.parametrize(
    ("typed", "first", "last"),
    [
        ("2024", date(2024, 1, 1), date(2024, 12, 31)),
        (" 2024-02 ", date(2024, 2, 1), date(2024, 2, 29)),
        ("2023-2", date(2023, 2, 1), date(2023, 2, 28)),
        ("2024-05-09", date(2024, 5, 9), date(2024, 5, 9)),
        ("", None, None),
        ("  ", None, None),
    ],
)
def test_a_year_a_month_or_a_day_has_both_its_ends(
    typed: str, first: date | None, last: date | None
) -> None:
    assert (first_day(typed), last_day(typed)) == (first, last)


@pytest.mark.parametrize("typed", ["24", "2024-13", "2024-02-30", "May", "0000", "2024-0", "٢٠٢٤"])
def test_what_is_no_day_is_refused_with_what_is_accepted(typed: str) -> None:
    with pytest.raises(ShopTrouble) as refused:
        first_day(typed)
    assert "2024-05-31" in refused.value.sentence()


def test_a_leap_day_has_its_day_in_every_year() -> None:
    assert years_before(date(2024, 2, 29), 1) == date(2023, 2, 28)
    assert years_before(date(2026, 11, 16), 3) == date(2023, 11, 16)

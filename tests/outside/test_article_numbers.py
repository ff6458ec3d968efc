"""Article numbers against published ones and against another computation of their check digit."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from stdnum import ean

from desktop_app.part_photos.codes.article_number import (
    LENGTHS,
    as_printed,
    check_digit,
    is_article_number,
)


@pytest.mark.parametrize(
    "number",
    [
        "6291041500213",  # GS1's worked example of the check digit: sum 57, so 3 (recalled)
        "9506000134352",  # GS1's sample article (recalled)
        "4006381333931",  # widely published example of an EAN-13 (recalled)
        "036000291452",  # widely published example of a UPC-A (recalled)
        "73513537",  # widely published example of an EAN-8 (recalled)
        "10614141000415",  # GS1's sample of a carton (recalled)
    ],
)
def test_published_numbers_have_the_check_digit_they_carry(number: str) -> None:
    assert is_article_number(number)
    assert not is_article_number(number[:-1] + str((int(number[-1]) + 1) % 10))


@given(st.sampled_from(LENGTHS).flatmap(lambda n: st.text("0123456789", min_size=n, max_size=n)))
def test_the_check_digit_is_that_of_python_stdnum(digits: str) -> None:
    assert check_digit(digits[:-1]) == ean.calc_check_digit(digits[:-1])
    assert is_article_number(digits) == ean.is_valid(digits)


@pytest.mark.parametrize(
    "text", ["", "4006", "40063813339310000", "४००६३८१३३३९३१", "40063813339-1"]
)
def test_what_is_no_such_number_is_none(text: str) -> None:
    assert not is_article_number(text)


@pytest.mark.parametrize(
    ("number", "printed"),
    [
        ("0036000291452", "036000291452"),
        ("00036000291452", "036000291452"),
        ("04006381333931", "4006381333931"),
        ("036000291452", "036000291452"),
        ("73513537", "73513537"),
    ],
)
def test_a_number_is_shown_as_it_stands_under_its_bars(number: str, printed: str) -> None:
    assert as_printed(number) == printed
    assert is_article_number(printed)

"""A TOML text from outside is read within limits that keep the reader from being kept busy."""

from __future__ import annotations

import re

import pytest

from desktop_app.shop_record.toml_text import MOST_DOTS, MOST_LETTERS, toml_values

DOTS = "." * (MOST_DOTS + 1)


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("#" * (MOST_LETTERS + 1), "more than 1,000,000 letters"),
        (f"a = 1\nb{'.b' * (MOST_DOTS + 1)} = 2", "too many dots (at line 2"),
        ("a = ", "Invalid value"),
    ],
)
def test_what_is_too_long_or_too_deep_is_refused(text: str, says: str) -> None:
    with pytest.raises(ValueError, match=re.escape(says)):
        toml_values(text)


@pytest.mark.parametrize("text", [f'a = "{DOTS}"', f"a = 1  # {DOTS}", f"'{DOTS}' = 1"])
def test_dots_that_part_no_key_are_only_dots(text: str) -> None:
    assert len(toml_values(text)) == 1


def test_as_many_letters_as_are_allowed_are_read() -> None:
    assert toml_values("#" * MOST_LETTERS) == {}

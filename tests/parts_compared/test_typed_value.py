"""Values as people type them."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.parts_compared.typed_value import ValueRefused, typed_value, unit_question


@pytest.mark.parametrize(
    ("text", "unit", "value"),
    [
        ("12.7", "mm", 12.7),
        ("12,7", "mm", 12.7),
        ("0.500 in", "mm", 12.7),
        ("0,5 pulgadas", "mm", 12.7),
        ("12 grados", "deg", 12.0),
        ("1/2 in", "mm", 12.7),
        ('3/8"', "mm", 9.525),
        ('1 1/2"', "mm", 38.1),
        ('1-1/2"', "mm", 38.1),
        ("0.30+0.15", "mm", 0.45),
        (" 0,30 + 0,15 mm", "mm", 0.45),
        ("2.5cm", "mm", 25.0),
        ("5100 ohm", "kohm", 5.1),
        ("5.1k", "ohm", 5100.0),
        ("5,1 kΩ", "kohm", 5.1),
        ("35°", "deg", 35.0),
        ("-5", "deg", -5.0),
        ("4", "n", 4.0),
        ("2.1 bar", "kPa", 210.0),
        ("12 mV", "V", 0.012),
    ],
)
def test_understood(text: str, unit: str, value: float) -> None:
    assert typed_value(text, unit) == pytest.approx(value, rel=1e-12)


@pytest.mark.parametrize(
    ("text", "value"),
    [('3/8"', 9.525), ("0.3 in", 7.62), ("1/64 in", 0.396875), ("0.30+0.15", 0.45), ("9,53", 9.53)],
)
def test_kept_to_the_last_figure(text: str, value: float) -> None:
    assert typed_value(text, "mm") == value


@pytest.mark.parametrize(
    ("text", "unit"),
    [
        ("", "mm"),
        ("twelve", "mm"),
        ("12.7 kg", "mm"),
        ("-1", "mm"),
        ("1/0", "mm"),
        ("1.5", "n"),
        ("1e400", "mm"),
        ("9" * 500, "mm"),
        ("nan", "mm"),
        ("1.234,5", "mm"),
        ("1 2 3", "mm"),
        ("+", "mm"),
        ("5 in", "deg"),
        ("9999999", "mm"),
    ],
)
def test_refused_with_what_is_accepted(text: str, unit: str) -> None:
    with pytest.raises(ValueRefused) as refused:
        typed_value(text, unit)
    assert "Accepted: " in refused.value.sentence()


@given(st.text(max_size=60), st.sampled_from(["mm", "n", "deg", "kohm", "word", "g/s"]))
def test_anything_typed_is_a_number_or_refused(text: str, unit: str) -> None:
    try:
        value = typed_value(text, unit)
    except ValueRefused:
        return
    assert abs(value) <= 1e6


@pytest.mark.parametrize(
    ("value", "other", "typical", "asked"),
    [
        (12.7, 0.5, None, True),
        (0.5, 12.7, None, True),
        (12.7, 12.6, None, False),
        (5.0, 10.0, None, False),
        (0.5, None, (10.0, 20.0), True),
        (330.0, None, (10.0, 20.0), True),
        (15.0, None, (10.0, 20.0), False),
        (0.5, None, None, False),
        (0.0, 1.0, None, False),
    ],
)
def test_mixed_up_inches_are_asked_about(
    value: float, other: float | None, typical: tuple[float, float] | None, asked: bool
) -> None:
    assert (unit_question(value, other, typical) is not None) is asked

"""Units against their definitions."""

from __future__ import annotations

import pytest

from desktop_app.repair_jobs.distance import from_miles, mm_to_inch, to_miles

# The international yard and pound agreement of 1959, as in NIST SP 811, Appendix B: the mile is
# 1.609344 km and the inch 25.4 mm, both exactly. The other figures follow from them.


def test_the_mile_is_exact() -> None:
    assert from_miles(1, "km") == 1.609344
    assert from_miles(12_000, "km") == pytest.approx(19_312.128, rel=1e-12)
    assert to_miles(20_000, "km") == pytest.approx(12_427.42384474668, rel=1e-12)


def test_the_inch_is_exact() -> None:
    assert mm_to_inch(25.4) == 1
    assert mm_to_inch(0.889) == pytest.approx(0.035, rel=1e-12)
    assert mm_to_inch(1.1) == pytest.approx(0.043307, abs=5e-7)


def test_an_odometer_message_in_km_gives_the_published_kilometres() -> None:
    # SAE J1979 PID A6 counts tenths of a kilometre (formula from memory): 00 12 D6 87.
    km = 0x0012D687 / 10
    assert km == 123_456.7
    assert to_miles(km, "km") == pytest.approx(76_712.43686868685, rel=1e-12)

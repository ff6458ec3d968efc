"""Stacking of tolerances, by worst case and by root of the sum of squares, against examples."""

from __future__ import annotations

import pytest

from desktop_app.parts_compared.part_sets.set_room import Share, room_of


def test_three_blocks_in_a_housing() -> None:
    # A general tutorial on tolerance analysis (read on the web, in inches); elementary, recomputed.
    room = room_of(
        (
            Share("housing", 4.020, 0.005),
            Share("first block", 2.000, 0.005, times=-1),
            Share("second block", 1.500, 0.003, times=-1),
            Share("third block", 0.500, 0.002, times=-1),
        )
    )
    assert room.value == pytest.approx(0.020, abs=1e-9)
    assert room.worst == pytest.approx(0.015, abs=1e-9)
    assert room.lowest == pytest.approx(0.005, abs=1e-9)
    assert room.highest == pytest.approx(0.035, abs=1e-9)
    assert room.usual == pytest.approx(0.007937253933, abs=1e-9)


def test_a_rotor_in_its_cap() -> None:
    # Invented readings, worked by hand: 28.40 - 27.45 with play of the bushing, bend of the shaft,
    # seat of the cap and the tool on both parts.
    half_widths = (0.03, 0.03, 0.08, 0.03, 0.10)
    values = (28.40, 27.45, 0.0, 0.0, 0.0)
    room = room_of(
        Share(str(number), value, half, times=-1 if number == 1 else 1)
        for number, (value, half) in enumerate(zip(values, half_widths, strict=True))
    )
    assert room.value == pytest.approx(0.95, abs=1e-9)
    assert room.worst == pytest.approx(0.27, abs=1e-9)
    # sqrt(0.03**2 + 0.03**2 + 0.08**2 + 0.03**2 + 0.10**2)
    assert room.usual == pytest.approx(0.138202749611, abs=1e-9)

"""Readings typed into one field: however they are parted, each is one reading."""

from __future__ import annotations

import pytest

from desktop_app.parts_compared.readings_typed import split_readings


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

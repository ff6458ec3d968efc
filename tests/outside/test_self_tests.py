"""The car's own tests against the byte layout of SAE J1979 / ISO 15031-5, service 01 PID 01.

The layout of the bytes is from memory of the standard. The first row's bytes are the example of
the standard as public tests of such readers carry it; what they mean was worked out by the layout.
"""

from __future__ import annotations

import pytest

from desktop_app.repair_jobs.self_tests import SelfTestState, decode, read_bytes

ALL_SPARK = {
    *("misfire", "fuel-system", "components", "catalyst", "heated-catalyst", "evaporative"),
    *("secondary-air", "filter-or-refrigerant", "oxygen-sensor", "oxygen-sensor-heater"),
    "egr-vvt",
}


def named(typed: str, state: SelfTestState) -> set[str]:
    """Name the tests of a state."""
    return {one for one, is_so in decode(read_bytes(typed)).states.items() if is_so is state}


@pytest.mark.parametrize(
    ("typed", "lamp", "codes", "compression", "complete", "waiting"),
    [
        (
            *("83 33 FF 63", True, 3, False),
            {"evaporative", "secondary-air", "filter-or-refrigerant", "egr-vvt"},
            *[{"misfire", "fuel-system", "catalyst", "heated-catalyst", "oxygen-sensor"}
              | {"oxygen-sensor-heater"}],
        ),
        (
            *("00 07 65 00", False, 0, False),
            *[{"misfire", "fuel-system", "components", "catalyst", "evaporative"}
              | {"oxygen-sensor", "oxygen-sensor-heater"}],
            set(),
        ),
        ("FF 77 FF FF", True, 127, False, set(), ALL_SPARK),
        (
            *("00 0F E1 00", False, 0, True),
            *[{"misfire", "fuel-system", "components", "nmhc-catalyst", "exhaust-gas-sensor"}
              | {"particulate-filter", "egr-vvt"}],
            set(),
        ),
    ],
)  # fmt: skip
def test_the_bytes_say_what_the_standard_says(
    typed: str, lamp: bool, codes: int, compression: bool, complete: set[str], waiting: set[str]
) -> None:
    read = decode(read_bytes(typed))
    assert (read.lamp_on, read.codes, read.compression) == (lamp, codes, compression)
    assert named(typed, SelfTestState.COMPLETE) == complete
    assert named(typed, SelfTestState.NOT_RUN) == waiting
    assert not read.free_bits

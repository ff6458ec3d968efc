"""Breakdown of air against published formulas and the sphere-gap tables.

"Read": seen in a public reproduction; "recalled": known from memory. Three checks stand side by
side here (Paschen's law, the uniform-field formulas, the tables for spheres); none of them
validates a rotor tip or a plug electrode, whose fields are uneven.
"""

from __future__ import annotations

import math

import pytest

from desktop_app.parts_compared.air_breakdown import (
    LEAST_BAR_CM,
    air_breakdown_kv,
    even_field_kv,
    pressure_at_20_bar,
)
from desktop_app.parts_compared.compressed_air import Air

SEA_LEVEL_KPA = 101.325


def paschen_volts(torr_cm: float, a: float = 15.0, b: float = 365.0, gamma: float = 0.01) -> float:
    """Paschen's law for air, B pd / (ln(A pd) - ln ln(1 + 1/gamma)); a check, not the method."""
    return b * torr_cm / (math.log(a * torr_cm) - math.log(math.log(1 + 1 / gamma)))


def sister_kv(delta_cm: float) -> float:
    """24.22 delta d + 6.08 sqrt(delta d): Naidu and Kamaraju, ch. 2 (recalled)."""
    return 24.22 * delta_cm + 6.08 * math.sqrt(delta_cm)


def open_air_kv(gap_mm: float) -> float:
    found = air_breakdown_kv(gap_mm, SEA_LEVEL_KPA, 20.0)
    assert found is not None
    return found


@pytest.mark.parametrize(("mm", "kv"), [(1, 4.607360), (5, 17.124519), (10, 31.447143)])
def test_the_uniform_field_formula(mm: float, kv: float) -> None:
    # Kuffel, Zaengl and Kuffel, 2nd ed. 2000, ch. 5, at 1.01325 bar (recalled).
    assert open_air_kv(mm) == pytest.approx(kv, rel=1e-6)


@pytest.mark.parametrize(("mm", "kv"), [(0.5, 2.570529), (1, 4.344665), (5, 16.409209), (10, 30.3)])
def test_the_sister_formula_lies_close_by(mm: float, kv: float) -> None:
    # Naidu and Kamaraju, ch. 2 (recalled), and its worked problem's 43.45 kV/cm at 1 mm.
    assert sister_kv(mm / 10) == pytest.approx(kv, rel=1e-6)
    assert open_air_kv(mm) == pytest.approx(kv, rel=0.08)


@pytest.mark.parametrize(("cm", "kv_per_cm"), [(0.1, 43.45), (20, 25.58)])
def test_the_mean_field_of_the_worked_problem(cm: float, kv_per_cm: float) -> None:
    # Naidu and Kamaraju, ch. 2 (question read in an excerpt, answers recalled).
    assert sister_kv(cm) / cm == pytest.approx(kv_per_cm, abs=0.005)
    assert open_air_kv(cm * 10) / cm == pytest.approx(kv_per_cm, rel=0.08)


# IEC 60052:2002 / IEEE Std 4, 5 cm spheres, transcribed by J. Lux 1998 (transcription read,
# standard not). Stated accuracy 3 % for gaps below half the diameter.
FIVE_CM_SPHERES = [(5, 17.4), (10, 32.0), (20, 57.5)]


@pytest.mark.parametrize(("mm", "kv"), FIVE_CM_SPHERES)
def test_spheres_of_five_centimetres(mm: float, kv: float) -> None:
    assert open_air_kv(mm) == pytest.approx(kv, rel=0.03)


@pytest.mark.parametrize(("mm", "kv"), FIVE_CM_SPHERES[:2])
def test_the_chosen_formula_lies_nearer_the_table_than_its_sister(mm: float, kv: float) -> None:
    # 1.6 to 1.7 % and 5.3 to 5.7 % below the table (computed; to 0.1 of a per cent).
    assert 1.5 <= 100 * (1 - open_air_kv(mm) / kv) <= 1.8
    assert 5.2 <= 100 * (1 - sister_kv(mm / 10) / kv) <= 5.8


@pytest.mark.parametrize(("mm", "low", "high"), [(5, 16.8, 16.9), (10, 31.2, 31.7)])
def test_larger_spheres(mm: float, low: float, high: float) -> None:
    # As above, 10 to 25 cm spheres; the transcription's columns run together, hence a range.
    assert low * 0.97 <= open_air_kv(mm) <= high * 1.03


def test_an_older_table() -> None:
    # Peek, Dielectric Phenomena, 1914, 5 cm spheres at 10 mm (read, secondary).
    assert open_air_kv(10) == pytest.approx(31.8, rel=0.03)
    # At 1 mm his 4.95 kV lies 7 % higher: short gaps are where the formulas and tables part most.
    assert open_air_kv(1) == pytest.approx(4.95, rel=0.08)


def test_relative_air_density() -> None:
    # (p/760)(293/(273 + T)): IEC 60052 by way of J. Lux's pages (read, secondary). Kelvins here
    # start at 273.15, which is 5 parts in 100,000 at 40 C.
    at_20 = pressure_at_20_bar(SEA_LEVEL_KPA, 20)
    assert at_20 == pytest.approx(1.01325, rel=1e-12)
    assert pressure_at_20_bar(SEA_LEVEL_KPA, 40) / at_20 == pytest.approx(0.9361022364, rel=5e-5)


@pytest.mark.parametrize(
    ("delta", "factor"),
    [
        *((0.7, 0.72), (0.75, 0.77), (0.8, 0.82), (0.85, 0.86), (0.9, 0.91)),
        *((0.95, 0.95), (1, 1), (1.05, 1.05), (1.1, 1.09), (1.15, 1.12)),
    ],
)
def test_thinner_air_withstands_less(delta: float, factor: float) -> None:
    # Sphere-gap correction of IEC 60052 by way of J. Lux's pages (read, secondary), to 0.01; IEC
    # prints 1.13 at 1.15 (recalled), so that one line gets 0.02.
    found = air_breakdown_kv(10, SEA_LEVEL_KPA * delta, 20)
    assert found is not None
    allowed = 0.02 if delta == 1.15 else 0.01
    assert found / open_air_kv(10) == pytest.approx(factor, abs=allowed + 0.002)


def test_paschen_at_a_millimetre() -> None:
    # J. Lux, high-voltage pages 1998, A 15, B 365 per cm Torr, gamma 0.01 (read).
    assert paschen_volts(76) == pytest.approx(5034.989, rel=1e-6)
    assert paschen_volts(760) == pytest.approx(35_509.33, rel=1e-6)
    # The law with textbook constants and the uniform-field formula agree within 15 %.
    assert open_air_kv(1) == pytest.approx(paschen_volts(76) / 1000, rel=0.15)
    assert open_air_kv(10) == pytest.approx(paschen_volts(760) / 1000, rel=0.15)


def test_the_minimum_of_paschens_curve_is_outside_the_formula() -> None:
    # Algebra of the law: pd = e/A ln(1 + 1/gamma). These constants give 305 V at 0.836 Torr cm and
    # do NOT reproduce the measured minimum of air, 327 V (read) at 0.567 Torr cm (recalled).
    least = math.e / 15 * math.log(101)
    assert least == pytest.approx(0.8363465491, rel=1e-9)
    assert paschen_volts(least) == pytest.approx(305.2664904356, rel=1e-9)
    for torr_cm in (0.567, least):
        bar_cm = torr_cm * 1.01325 / 760
        assert bar_cm < LEAST_BAR_CM
        assert even_field_kv(bar_cm) is None
    lowest = even_field_kv(LEAST_BAR_CM)
    assert lowest is not None
    assert lowest > 0.327


@pytest.mark.parametrize(
    ("ratio", "exponent", "pressure", "temperature"),
    [
        (10, 1.3, 19.9526231497, 1.9952623150),
        (10, 1.35, 22.3872113857, 2.2387211386),
        (10, 1.4, 25.1188643151, 2.5118864315),
        (9, 1.32, 18.1802609455, 2.0200289939),
    ],
)
def test_polytropic_compression(
    ratio: float, exponent: float, pressure: float, temperature: float
) -> None:
    # By the definition p v**n = constant, computed.
    squeezed = Air(101.325, 20).compressed(ratio, exponent)
    assert squeezed.pressure_kpa / 101.325 == pytest.approx(pressure, rel=1e-9)
    assert (squeezed.temperature_c + 273.15) / 293.15 == pytest.approx(temperature, rel=1e-9)


def test_compression_by_ten_in_figures() -> None:
    squeezed = Air(101.325, 20).compressed(10)
    assert squeezed.pressure_kpa == pytest.approx(2021.6995, rel=1e-7)
    assert squeezed.temperature_c + 273.15 == pytest.approx(584.9111, rel=1e-7)


def test_a_plug_in_open_air() -> None:
    # A vehicle-electronics textbook's abstract (read): 0.6 mm in open air, 2 to 3 kV; an order of
    # magnitude only.
    assert 2 <= open_air_kv(0.6) <= 3.5

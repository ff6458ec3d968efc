"""Fuel trims over air flow."""

from __future__ import annotations

import random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.parts_compared.bench_sums.sums_offered import work_out
from desktop_app.parts_compared.bench_sums.trim_fit import fit_trim, total_trim
from desktop_app.shop_record.trouble import ShopTrouble


def said(flow: str, short: str, long: str) -> str:
    return work_out("fuel-trim-split", {"flow": flow, "short": short, "long": long}).sentence


def test_both_trims_multiply() -> None:
    assert total_trim(0.10, 0.10) == pytest.approx(0.21)


def test_a_leak_behind_the_sensor() -> None:
    fit = fit_trim([3.5, 30], [0.24, 0.035], 0.02)
    assert fit.air == pytest.approx(0.81, abs=0.005)
    assert fit.share == pytest.approx(0.008, abs=0.0005)
    sentence = said("3.5; 30", "24; 3.5", "0; 0")
    assert "0.8 g/s (± 0.2)" in sentence
    assert "leak behind the sensor" in sentence
    assert "take a third" in sentence


def test_falling_short_under_load() -> None:
    assert fit_trim([3.5, 60], [0.04, 0.19], 0.02).air < 0
    sentence = said("3.5 20 60", "4 12 19", "0 0 0")
    assert "fuel delivery under load" in sentence
    assert "third" not in sentence


def test_fuel_that_comes_in_beside_the_injection() -> None:
    assert "purge" in said("3.5 12 30", "-20 -6 -2", "0 0 0")


def test_the_same_share_at_every_flow() -> None:
    sentence = said("3.5 12 30", "0 1 0", "12 12 12")
    assert "no air beside the sensor" in sentence
    assert "stay at every flow" in sentence


@given(
    air=st.floats(-2, 2),
    share=st.floats(-0.2, 0.2),
    flows=st.lists(st.integers(20, 900), min_size=2, max_size=8, unique=True),
)
def test_the_law_put_in_comes_out(air: float, share: float, flows: list[int]) -> None:
    real = [one / 10 for one in flows]
    fit = fit_trim(real, [share + air / one for one in real], 0.02)
    assert fit.air == pytest.approx(air, abs=1e-6)
    assert fit.share == pytest.approx(share, abs=1e-6)


@given(st.floats(0.001, 0.1), st.floats(1.01, 5))
def test_worse_readings_never_say_more(off: float, worse: float) -> None:
    trims = [0.20, 0.09, 0.04]
    fine = fit_trim([3.5, 12, 30], trims, off, 0.2)
    coarse = fit_trim([3.5, 12, 30], trims, off * worse, 0.2)
    assert coarse.air_doubt >= fine.air_doubt * 0.999


def test_the_interval_holds_the_truth_nineteen_times_in_twenty() -> None:
    dice, inside, flows = random.Random(9), 0, [3.5, 8.0, 15.0, 30.0]
    for _ in range(4000):
        trims = [0.01 + 0.8 / flow + dice.gauss(0, 0.01) for flow in flows]
        fit = fit_trim(flows, trims, 0.0196)
        inside += abs(fit.air - 0.8) <= fit.air_doubt
    # The usual spread is trusted to a quarter only, so that the interval is a little wide.
    assert 0.94 < inside / 4000 < 0.985


@pytest.mark.parametrize(
    "typed",
    [
        {"flow": "3.5", "short": "4", "long": "0"},
        {"flow": "3.5; 4", "short": "4; 5", "long": "0; 0"},
        {"flow": "3.5; 30", "short": "4", "long": "0; 0"},
        {"flow": "0; 30", "short": "4; 5", "long": "0; 0"},
        {"flow": "3.5; 30", "short": "4; 500", "long": "0; 0"},
    ],
)
def test_too_little_to_split_is_refused(typed: dict[str, str]) -> None:
    with pytest.raises(ShopTrouble) as caught:
        work_out("fuel-trim-split", typed)
    assert "Accepted: " in caught.value.sentence()

"""What is left of a pad."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.parts_compared.bench_sums.pad_life import Wear
from desktop_app.parts_compared.bench_sums.sums_offered import work_out
from desktop_app.shop_record.trouble import ShopTrouble

PADS = {"first": "11.0", "now": "4.0", "limit": "2.0", "distance": "21400"}


def test_a_rate_and_what_is_left() -> None:
    wear = Wear(11.0, 4.0, 2.0, 21_400)
    assert 1000 * wear.rate == pytest.approx(0.327, abs=0.0005)
    assert wear.left() == pytest.approx(6114, abs=1)
    found = work_out("pad-life", PADS)
    assert "0.33 mm in 1000 miles" in found.sentence
    assert "after about 6110 miles more" in found.sentence


def test_the_thinnest_decides_and_unlike_pads_are_asked_about() -> None:
    found = work_out("pad-life", {**PADS, "now": "6.5; 4,0; 6.1"})
    assert found.value == pytest.approx(6114, abs=1)
    assert "slides" in found.sentence


@pytest.mark.parametrize(
    ("now", "said"), [("1.9", "has to be replaced"), ("2.02", "may already be at the limit")]
)
def test_at_the_limit_nothing_is_promised(now: str, said: str) -> None:
    found = work_out("pad-life", {**PADS, "now": now})
    assert said in found.sentence
    assert "more" not in found.sentence


@given(st.floats(2.1, 10.5), st.floats(0.01, 0.4))
def test_a_coarser_tool_widens_the_answer(now: float, off: float) -> None:
    wear = Wear(11.0, now, 2.0, 20_000)
    assert wear.left_doubt(2 * off) == pytest.approx(2 * wear.left_doubt(off))
    # The slope against a small step.
    step = 1e-6
    slope = (Wear(11.0, now + step, 2.0, 20_000).left() - wear.left()) / step
    assert wear.left_doubt(1.0) >= abs(slope) * 0.999


@given(st.floats(2.1, 10.0), st.floats(0.01, 0.5))
def test_a_thinner_pad_never_lasts_longer(now: float, less: float) -> None:
    assert Wear(11.0, now - less, 2.0, 20_000).left() < Wear(11.0, now, 2.0, 20_000).left()


def test_inches_and_millimetres_give_one_answer() -> None:
    inches = {**PADS, "first": "11/25.4", "now": "4.0"}
    with pytest.raises(ShopTrouble):
        work_out("pad-life", inches)
    both = work_out("pad-life", {**PADS, "first": "0.4 in", "now": '0.15"', "limit": "0.1 in"})
    plain = work_out("pad-life", {**PADS, "first": "10.16", "now": "3.81", "limit": "2.54"})
    assert both.value == pytest.approx(plain.value)


@pytest.mark.parametrize(
    ("field", "text"),
    [("now", "11.0"), ("now", "12"), ("limit", "12"), ("distance", "0"), ("now", "")],
)
def test_what_gives_no_rate_is_refused(field: str, text: str) -> None:
    with pytest.raises(ShopTrouble) as caught:
        work_out("pad-life", {**PADS, field: text})
    assert "Accepted: " in caught.value.sentence()

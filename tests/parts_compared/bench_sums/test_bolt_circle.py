"""The bolt circle from neighbouring studs."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.parts_compared.bench_sums.bolt_circle import bolt_circle
from desktop_app.parts_compared.bench_sums.sums_offered import work_out
from desktop_app.shop_record.trouble import ShopTrouble


@pytest.mark.parametrize(
    ("studs", "factor"),
    # 1 / sin(pi / n): exact for 3, 4 and 6, the golden section's for 5.
    [
        (3, 2 / math.sqrt(3)),
        (4, math.sqrt(2)),
        (5, 2 * math.sqrt(2 / (5 - math.sqrt(5)))),
        (6, 2.0),
        (8, math.sqrt(4 + 2 * math.sqrt(2))),
    ],
)
def test_the_side_of_a_regular_polygon(studs: int, factor: float) -> None:
    assert bolt_circle(1.0, studs) == pytest.approx(factor, rel=1e-12)


def test_five_studs() -> None:
    assert bolt_circle(1.0, 5) == pytest.approx(1.7013, abs=5e-5)
    assert bolt_circle(63.5, 5) == pytest.approx(108.0, abs=0.05)


@given(st.integers(3, 8), st.floats(50, 200))
def test_studs_drawn_on_a_circle_give_it_back(studs: int, diameter: float) -> None:
    places = [
        (diameter / 2 * math.cos(2 * math.pi * i / studs),
         diameter / 2 * math.sin(2 * math.pi * i / studs)) for i in range(2)
    ]  # fmt: skip
    assert bolt_circle(math.dist(*places), studs) == pytest.approx(diameter)


def test_near_circles_are_told_apart_only_as_far_as_the_readings_go() -> None:
    typed = {"studs": "5", "chord": "63.5; 63.48; 63.52"}
    near = work_out("bolt-circle", {**typed, "wanted": "107.95"})
    assert "don't speak against 107.95 mm" in near.sentence
    other = work_out("bolt-circle", {**typed, "wanted": "110"})
    assert "not that circle" in other.sentence
    assert near.expanded is not None
    assert near.expanded < 0.3


def test_readings_that_scatter_widen_the_answer() -> None:
    calm = work_out("bolt-circle", {"studs": "5", "chord": "63.5; 63.5", "chord_doubt": "0.05"})
    wild = work_out("bolt-circle", {"studs": "5", "chord": "63.0; 64.0", "chord_doubt": "0.05"})
    assert calm.expanded is not None
    assert wild.expanded is not None
    assert wild.expanded > 4 * calm.expanded


@pytest.mark.parametrize("studs", ["2", "9", "5.5", "five", "4 5", ""])
def test_three_to_eight_studs(studs: str) -> None:
    with pytest.raises(ShopTrouble, match="studs or holes"):
        work_out("bolt-circle", {"studs": studs, "chord": "63.5"})


@pytest.mark.parametrize(
    ("wanted", "says"),
    [("100", "larger than 100 mm: not that circle"), ("120", "smaller than 120 mm"),
     ("108", "don't speak against 108 mm")],
)  # fmt: skip
def test_a_wanted_circle_is_spoken_against_or_not(wanted: str, says: str) -> None:
    typed = {"chord": "63.5; 63.5; 63.5", "studs": "5", "wanted": wanted}
    assert says in work_out("bolt-circle", typed).sentence
